import { type Pattern, parsePattern } from "./pattern.ts";
import { couldMatch, type Needs, PatternFacts } from "./pattern-facts.ts";

/**
 * Matches phrases against words. Every list and slot is read at most once at each place of an
 * utterance, so the work is bounded by the number of words, whatever the phrases look like.
 */

export type SlotValue = unknown;
export type Capture = { slot: string; value: SlotValue };

/** A way to read some words: where it ends, what it filled, and how much it had to assume. */
export type Match = { next: number; captures: readonly Capture[]; cost: number };

/** What reads the values of slots; `cost` is 0 for a sure reading. */
export type SlotReader = (kind: string, at: number) => readonly SlotMatch[];
export type SlotMatch = { value: SlotValue; next: number; cost: number };

/** One utterance being matched. */
export type Run = {
  words: readonly string[];
  /** The other word a contraction can stand for, at the same places. */
  alts: readonly (string | undefined)[];
  /** All of both. */
  has: ReadonlySet<string>;
  /** Places reachable from each place by passing over words that say nothing. */
  skips: readonly (readonly { at: number; cost: number }[])[];
  read: SlotReader;
  /** What each list matched at each place so far; empty at the start. */
  lists: (Map<string, Match[]> | undefined)[];
};

type Matcher = (run: Run, at: number) => Match[];

const NO_CAPTURES: readonly Capture[] = [];
const NONE: Match[] = [];

/** One of several: what it can begin with, and its matcher once it has been tried. */
class Option {
  private compiled: Matcher | undefined;
  /** Null where it can begin with a slot or be empty. */
  private begins: ReadonlySet<string> | null | undefined;

  constructor(
    private readonly grammar: Grammar,
    private readonly pattern: Pattern,
  ) {}

  mayBegin(run: Run, at: number): boolean {
    if (this.begins === undefined) this.begins = this.grammar.facts.begins(this.pattern) ?? null;
    if (this.begins === null) return true;
    for (const place of run.skips[at]!) {
      if (this.begins.has(run.words[place.at] ?? "")) return true;
      const alt = run.alts[place.at];
      if (alt !== undefined && this.begins.has(alt)) return true;
    }
    return false;
  }

  match(run: Run, at: number): Match[] {
    this.compiled ??= this.grammar.compile(this.pattern);
    return this.compiled(run, at);
  }
}

/** What is known of a phrase before it is compiled, which happens when it is first tried. */
export class Phrase {
  private readonly option: Option;
  private required: ReadonlySet<string>[] | undefined;

  constructor(
    private readonly grammar: Grammar,
    private readonly pattern: Pattern,
    /** Words of which one has to be said. */
    readonly needs: Needs,
  ) {
    this.option = new Option(grammar, pattern);
  }

  /** False where a piece it cannot do without is not among these words. */
  couldMatch(said: ReadonlySet<string>): boolean {
    this.required ??= this.grammar.facts.required(this.pattern);
    return this.required.every((one) => couldMatch(one, said));
  }

  /** False where the phrase cannot begin here. */
  mayBegin(run: Run, at: number): boolean {
    return this.option.mayBegin(run, at);
  }

  /** All ways to read the words from this place on. */
  match(run: Run, at: number): Match[] {
    return this.option.match(run, at);
  }
}

/** Phrases of one grammar. */
export class Grammar {
  private readonly lists = new Map<string, Matcher>();
  readonly facts: PatternFacts;

  constructor(lists: Readonly<Record<string, readonly string[]>>) {
    this.facts = new PatternFacts(lists);
  }

  /** @throws Error naming the phrase when it is not well formed or names no known list. */
  phrase(source: string): Phrase {
    const pattern = parsePattern(source);
    return new Phrase(this, pattern, this.facts.needs(pattern));
  }

  private list(name: string): Matcher {
    let matcher = this.lists.get(name);
    if (!matcher) {
      matcher = this.remembered(name, this.compile(this.facts.list(name)));
      this.lists.set(name, matcher);
    }
    return matcher;
  }

  compile(pattern: Pattern): Matcher {
    switch (pattern.is) {
      case "word":
        return wordMatcher(pattern.word);
      case "slot":
        return slotMatcher(pattern.slot, pattern.kind);
      case "fixed": {
        const captures = [{ slot: pattern.slot, value: pattern.value }];
        return (_run, at) => [{ next: at, captures, cost: 0 }];
      }
      case "list": {
        const { name } = pattern;
        let list: Matcher | undefined;
        return (run, at) => {
          list ??= this.list(name);
          return list(run, at);
        };
      }
      case "choice":
        return this.compileChoice(pattern.of);
      case "sequence":
        return sequenceMatcher(pattern.parts.map((part) => this.compile(part)));
    }
  }

  /** Choices are looked up by the words they can begin with, and compiled when first tried. */
  private compileChoice(of: readonly Pattern[]): Matcher {
    const options = of.map((pattern) => new Option(this, pattern));
    return (run, at) => {
      let found: Match[] = NONE;
      for (const option of options) {
        if (option.mayBegin(run, at)) found = merge(found, option.match(run, at));
      }
      return found;
    };
  }

  private remembered(name: string, matcher: Matcher): Matcher {
    return (run, at) => {
      let here = run.lists[at];
      if (!here) {
        here = new Map();
        run.lists[at] = here;
      }
      const known = here.get(name);
      if (known) return known;
      const found = matcher(run, at);
      here.set(name, found);
      return found;
    };
  }
}

/** Keeps the cheapest match for each end, the first of equals. */
function merge(into: Match[], more: Match[]): Match[] {
  if (more.length === 0) return into;
  if (into.length === 0) return more;
  const merged = [...into];
  for (const match of more) {
    const index = merged.findIndex((known) => known.next === match.next);
    if (index < 0) merged.push(match);
    else if (match.cost < merged[index]!.cost) merged[index] = match;
  }
  return merged;
}

function wordMatcher(word: string): Matcher {
  return (run, at) => {
    if (run.words[at] === word || run.alts[at] === word) {
      return [{ next: at + 1, captures: NO_CAPTURES, cost: 0 }];
    }
    const places = run.skips[at]!;
    for (let index = 1; index < places.length; index += 1) {
      const place = places[index]!;
      if (run.words[place.at] === word || run.alts[place.at] === word) {
        return [{ next: place.at + 1, captures: NO_CAPTURES, cost: place.cost }];
      }
    }
    return NONE;
  };
}

function slotMatcher(slot: string, kind: string): Matcher {
  return (run, at) => {
    let found: Match[] = NONE;
    for (const place of run.skips[at]!) {
      const matches = run.read(kind, place.at).map(({ value, next, cost }) => ({
        next,
        captures: [{ slot, value }],
        cost: cost + place.cost,
      }));
      found = merge(found, matches);
    }
    return found;
  };
}

function sequenceMatcher(parts: readonly Matcher[]): Matcher {
  return (run, at) => {
    let here: Match[] = [{ next: at, captures: NO_CAPTURES, cost: 0 }];
    for (const part of parts) {
      let after: Match[] = NONE;
      for (const before of here) {
        const found = part(run, before.next);
        if (found.length > 0)
          after = merge(
            after,
            found.map((match) => joinMatches(before, match)),
          );
      }
      if (after.length === 0) return NONE;
      here = after;
    }
    return here;
  };
}

function joinMatches(before: Match, after: Match): Match {
  const captures =
    before.captures.length === 0
      ? after.captures
      : after.captures.length === 0
        ? before.captures
        : [...before.captures, ...after.captures];
  return { next: after.next, captures, cost: before.cost + after.cost };
}
