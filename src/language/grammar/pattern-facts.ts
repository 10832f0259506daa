import { type Pattern, parsePattern } from "./pattern.ts";
import { type WordGroup, wordGroup } from "./word-places.ts";

/** Words of which a text must contain at least one to match; undefined where nothing is known. */
export type Needs = ReadonlySet<string> | undefined;

/** A piece that cannot be left out, and the words of which one has to be said for it. */
type Required = { part: Pattern; group?: WordGroup };

/** Words needed for a slot of a kind to be filled at all. */
const LENGTH_WORDS = "second seconds minute minutes hour hours day days week weeks".split(" ");
const NUMBER_WORDS = [
  "0 zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen",
  "sixteen seventeen eighteen nineteen twenty thirty forty fourty fifty sixty seventy eighty",
  "ninety hundred thousand dozen couple pair half quarter quarters",
].flatMap((line) => line.split(" "));
const SLOT_NEEDS: Readonly<Record<string, readonly string[]>> = {
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
  produce: "pound pounds kilo kilos kilogram ounce ounces gram grams".split(" "),
  scores: NUMBER_WORDS,
  count: [...NUMBER_WORDS, "a", "an", "another"],
  size: "pint pints quart quarts halfpint half quarter gallon gallons ounce".split(" "),
  pinged: "pinged popped ping".split(" "),
};

/**
 * What can be known about phrases before any words are seen: what they can begin with and which
 * words they require. That alone rules out most phrases. Lists are read when first needed.
 */
export class PatternFacts {
  private readonly parsed = new Map<string, Pattern>();
  private readonly wanted = new Map<string, readonly string[] | undefined>();
  private readonly begun = new Map<string, { words: Set<string>; open: boolean }>();
  private readonly being: string[] = [];

  constructor(private readonly lists: Readonly<Record<string, string>>) {}

  /** A list's pattern. @throws Error when no list has the name. */
  list(name: string): Pattern {
    const known = this.parsed.get(name);
    if (known) return known;
    const source = Object.hasOwn(this.lists, name) ? this.lists[name] : undefined;
    if (!source) throw new Error(`no list is named <${name}>; lists are in intents/`);
    const pattern = parsePattern(source);
    this.parsed.set(name, pattern);
    return pattern;
  }

  /** Looks into a list, which may not contain itself. @throws Error when it does. */
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

  /** The smallest set of words one of which has to occur. */
  needs(pattern: Pattern): Needs {
    const words = this.needed(pattern);
    return words && new Set(words);
  }

  /** What has to stand in the words, in order, for a pattern to match. */
  required(pattern: Pattern): Required[] {
    const parts = pattern.is === "sequence" ? pattern.parts : [pattern];
    return parts.flatMap((part): Required[] => {
      if (part.is === "sequence") return this.required(part);
      if (this.canBeEmpty(part)) return [];
      const group = this.groupOf(part);
      return [group ? { group, part } : { part }];
    });
  }

  private readonly groups = new Map<string, WordGroup | undefined>();

  /** Pieces that are written alike share their group. */
  private groupOf(pattern: Pattern): WordGroup | undefined {
    const key = pattern.is === "word" ? pattern.word : JSON.stringify(pattern);
    if (!this.groups.has(key)) {
      const needs = this.needs(pattern);
      this.groups.set(key, needs && wordGroup(needs));
    }
    return this.groups.get(key);
  }

  private needed(pattern: Pattern): readonly string[] | undefined {
    switch (pattern.is) {
      case "word":
        return [pattern.word];
      case "slot":
        return SLOT_NEEDS[pattern.kind];
      case "fixed":
        return undefined;
      case "list":
        return this.listNeeds(pattern.name);
      case "sequence": {
        let least: readonly string[] | undefined;
        for (const part of pattern.parts) {
          const words = this.needed(part);
          if (words && (!least || words.length < least.length)) least = words;
        }
        return least;
      }
      case "choice":
        return this.neededOfAny(pattern.of);
    }
  }

  /** A choice needs a word that any of its options needs. */
  private neededOfAny(of: readonly Pattern[]): readonly string[] | undefined {
    const all: string[] = [];
    for (let index = of.length - 1; index >= 0; index -= 1) {
      const words = this.needed(of[index]!);
      if (!words) return undefined;
      for (const word of words) all.push(word);
    }
    return all;
  }

  private listNeeds(name: string): readonly string[] | undefined {
    if (!this.wanted.has(name)) {
      this.wanted.set(
        name,
        this.within(name, (pattern) => this.needed(pattern)),
      );
    }
    return this.wanted.get(name);
  }
}
