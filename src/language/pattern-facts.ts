import { type Pattern, parsePattern } from "./pattern.ts";
import { wordSet } from "./word-set.ts";

/** Words of which a text must hold at least one to match; undefined where nothing is known. */
export type Needs = ReadonlySet<string> | undefined;

/** Words that must be there for a slot of a kind to be filled at all. */
const LENGTH_WORDS = wordSet("second seconds minute minutes hour hours day days week weeks");
/** Behind a figure anything may be a number; "0" stands for every word that begins with one. */
export const ANY_FIGURE = "0";
const NUMBER_WORDS = wordSet(
  "0 zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen",
  "sixteen seventeen eighteen nineteen twenty thirty forty fourty fifty sixty seventy eighty",
  "ninety hundred thousand dozen couple pair half quarter quarters",
);
const SLOT_NEEDS: Readonly<Record<string, ReadonlySet<string>>> = {
  duration: LENGTH_WORDS,
  length: LENGTH_WORDS,
  more: LENGTH_WORDS,
  lasting: LENGTH_WORDS,
  ago: LENGTH_WORDS,
  number: NUMBER_WORDS,
  temperature: NUMBER_WORDS,
  whole: NUMBER_WORDS,
  jars: NUMBER_WORDS,
  "jar-list": NUMBER_WORDS,
  scores: NUMBER_WORDS,
  count: new Set([...NUMBER_WORDS, "a", "an", "another"]),
  size: wordSet("pint pints quart quarts halfpint half quarter gallon gallons ounce"),
  pinged: wordSet("pinged popped ping"),
};

const NOTHING_KNOWN = Number.POSITIVE_INFINITY;

/**
 * What can be known of phrases before any words are seen: what they can begin with and which
 * words they cannot do without. Most phrases are ruled out by that alone. Lists are read when
 * first asked for.
 */
export class PatternFacts {
  private readonly parsed = new Map<string, Pattern>();
  private readonly needed = new Map<string, Needs>();
  private readonly counted = new Map<string, number>();
  private readonly begun = new Map<string, { words: Set<string>; open: boolean }>();
  private readonly being: string[] = [];

  constructor(private readonly lists: Readonly<Record<string, readonly string[]>>) {}

  /** A list's pattern. @throws Error when no list has the name. */
  list(name: string): Pattern {
    const known = this.parsed.get(name);
    if (known) return known;
    const phrases = Object.hasOwn(this.lists, name) ? this.lists[name] : undefined;
    if (!phrases) throw new Error(`no list is named <${name}>; lists are in phrases/`);
    const pattern: Pattern = { is: "choice", of: phrases.map(parsePattern) };
    this.parsed.set(name, pattern);
    return pattern;
  }

  /** Looks into a list, which may not hold itself. @throws Error when it does. */
  private within<T>(name: string, look: (pattern: Pattern) => T): T {
    if (this.being.includes(name)) throw new Error(`list <${name}> names itself`);
    this.being.push(name);
    const found = look(this.list(name));
    this.being.pop();
    return found;
  }

  /** The words a pattern begins with; undefined where a slot can be first, or it can be empty. */
  begins(pattern: Pattern): ReadonlySet<string> | undefined {
    if (this.canBeEmpty(pattern)) return undefined;
    if (pattern.is === "list") {
      const { words, open } = this.listFirsts(pattern.name);
      return open ? undefined : words;
    }
    const into = new Set<string>();
    return this.collectFirsts(pattern, into) ? undefined : into;
  }

  private collectFirsts(pattern: Pattern, into: Set<string>): boolean {
    switch (pattern.is) {
      case "word":
        into.add(pattern.word);
        return false;
      case "slot":
        return true;
      case "fixed":
        return false;
      case "list": {
        const { words, open } = this.listFirsts(pattern.name);
        for (const word of words) into.add(word);
        return open;
      }
      case "choice": {
        let open = false;
        for (const one of pattern.of) open = this.collectFirsts(one, into) || open;
        return open;
      }
      case "sequence":
        for (const part of pattern.parts) {
          if (this.collectFirsts(part, into)) return true;
          if (!this.canBeEmpty(part)) return false;
        }
        return false;
    }
  }

  private listFirsts(name: string): { words: Set<string>; open: boolean } {
    let known = this.begun.get(name);
    if (!known) {
      const words = new Set<string>();
      const open = this.within(name, (pattern) => this.collectFirsts(pattern, words));
      known = { words, open };
      this.begun.set(name, known);
    }
    return known;
  }

  private canBeEmpty(pattern: Pattern): boolean {
    switch (pattern.is) {
      case "word":
      case "slot":
        return false;
      case "fixed":
        return true;
      case "list":
        return this.canBeEmpty(this.list(pattern.name));
      case "choice":
        return pattern.of.some((one) => this.canBeEmpty(one));
      case "sequence":
        return pattern.parts.every((part) => this.canBeEmpty(part));
    }
  }

  /** The fewest words of which one has to be said. */
  needs(pattern: Pattern): Needs {
    const into = new Set<string>();
    return this.collectNeeds(pattern, into) ? into : undefined;
  }

  /** For each piece that cannot be left out, the words of which one has to be said. */
  required(pattern: Pattern): ReadonlySet<string>[] {
    const parts = pattern.is === "sequence" ? pattern.parts : [pattern];
    return parts.flatMap((part) => {
      if (part.is === "sequence") return this.required(part);
      return this.needs(part) ?? [];
    });
  }

  private collectNeeds(pattern: Pattern, into: Set<string>): boolean {
    if (this.countNeeds(pattern) === NOTHING_KNOWN) return false;
    switch (pattern.is) {
      case "word":
        into.add(pattern.word);
        return true;
      case "slot":
        for (const word of SLOT_NEEDS[pattern.kind] ?? []) into.add(word);
        return true;
      case "fixed":
        return false;
      case "list":
        for (const word of this.listNeeds(pattern.name) ?? []) into.add(word);
        return true;
      case "choice":
        for (const one of pattern.of) this.collectNeeds(one, into);
        return true;
      case "sequence": {
        let least: Pattern | undefined;
        let fewest = NOTHING_KNOWN;
        for (const part of pattern.parts) {
          const count = this.countNeeds(part);
          if (count < fewest) {
            fewest = count;
            least = part;
          }
        }
        return least !== undefined && this.collectNeeds(least, into);
      }
    }
  }

  /** How many words `needs` would hold at most, without gathering them. */
  private countNeeds(pattern: Pattern): number {
    switch (pattern.is) {
      case "word":
        return 1;
      case "slot":
        return SLOT_NEEDS[pattern.kind]?.size ?? NOTHING_KNOWN;
      case "fixed":
        return NOTHING_KNOWN;
      case "list": {
        let count = this.counted.get(pattern.name);
        if (count === undefined) {
          count = this.within(pattern.name, (inner) => this.countNeeds(inner));
          this.counted.set(pattern.name, count);
        }
        return count;
      }
      case "sequence": {
        let fewest = NOTHING_KNOWN;
        for (const part of pattern.parts) fewest = Math.min(fewest, this.countNeeds(part));
        return fewest;
      }
      case "choice": {
        let all = 0;
        for (const one of pattern.of) {
          all += this.countNeeds(one);
          if (all === NOTHING_KNOWN) return all;
        }
        return all;
      }
    }
  }

  private listNeeds(name: string): Needs {
    if (!this.needed.has(name)) {
      this.needed.set(
        name,
        this.within(name, (pattern) => this.needs(pattern)),
      );
    }
    return this.needed.get(name);
  }
}

/** True unless the words cannot match what needs these. */
export function couldMatch(needs: Needs, said: ReadonlySet<string>): boolean {
  if (!needs) return true;
  for (const word of said) if (needs.has(word)) return true;
  return false;
}
