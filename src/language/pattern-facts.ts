import { type Pattern, parsePattern } from "./pattern.ts";

/** Words of which a text must hold at least one to match; undefined where nothing is known. */
export type Needs = ReadonlySet<string> | undefined;

/** Words that must be there for a slot of a kind to be filled at all. */
const LENGTH_WORDS = new Set(
  "second seconds minute minutes hour hours day days week weeks".split(" "),
);
const SLOT_NEEDS: Readonly<Record<string, ReadonlySet<string>>> = {
  duration: LENGTH_WORDS,
  length: LENGTH_WORDS,
  more: LENGTH_WORDS,
  lasting: LENGTH_WORDS,
  ago: LENGTH_WORDS,
};

/**
 * What can be known of phrases before any words are seen: what they can begin with and which
 * words they cannot do without. Most phrases are ruled out by that alone.
 */
export class PatternFacts {
  readonly parsed = new Map<string, Pattern>();
  private readonly needed = new Map<string, Needs>();

  /** @throws Error naming the phrase or list that is not well formed, unknown or names itself. */
  constructor(lists: Readonly<Record<string, readonly string[]>>) {
    for (const [name, phrases] of Object.entries(lists)) {
      this.parsed.set(name, { is: "choice", of: phrases.map(parsePattern) });
    }
    for (const name of this.parsed.keys()) this.checkCycles(name, []);
  }

  /** A list's pattern. @throws Error when no list has the name. */
  list(name: string): Pattern {
    const found = this.parsed.get(name);
    if (!found) throw new Error(`no list is named <${name}>; lists are in phrases/`);
    return found;
  }

  private checkCycles(name: string, path: readonly string[]): void {
    if (path.includes(name)) throw new Error(`list <${name}> names itself`);
    const visit = (pattern: Pattern): void => {
      if (pattern.is === "list") this.checkCycles(pattern.name, [...path, name]);
      else if (pattern.is === "sequence") pattern.parts.forEach(visit);
      else if (pattern.is === "choice") pattern.of.forEach(visit);
    };
    visit(this.list(name));
  }

  /** The words a pattern can begin with; undefined where it can begin with a slot. */
  firsts(pattern: Pattern): Set<string> | undefined {
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
      case "list":
        return this.collectFirsts(this.list(pattern.name), into);
      case "choice":
        return pattern.of.map((one) => this.collectFirsts(one, into)).some(Boolean);
      case "sequence":
        for (const part of pattern.parts) {
          if (this.collectFirsts(part, into)) return true;
          if (!this.canBeEmpty(part)) return false;
        }
        return false;
    }
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
    switch (pattern.is) {
      case "word":
        return new Set([pattern.word]);
      case "slot":
        return Object.hasOwn(SLOT_NEEDS, pattern.kind) ? SLOT_NEEDS[pattern.kind] : undefined;
      case "fixed":
        return undefined;
      case "list":
        return this.listNeeds(pattern.name);
      case "sequence":
        return pattern.parts
          .map((part) => this.needs(part))
          .reduce(
            (least, one) => (!least || (one && one.size < least.size) ? one : least),
            undefined,
          );
      case "choice": {
        const all = pattern.of.map((one) => this.needs(one));
        return all.includes(undefined)
          ? undefined
          : new Set(all.flatMap((one) => [...(one ?? [])]));
      }
    }
  }

  private listNeeds(name: string): Needs {
    if (!this.needed.has(name)) this.needed.set(name, this.needs(this.list(name)));
    return this.needed.get(name);
  }
}

/** True unless the words cannot match what needs these. */
export function couldMatch(needs: Needs, said: ReadonlySet<string>): boolean {
  if (!needs) return true;
  for (const word of said) if (needs.has(word)) return true;
  return false;
}
