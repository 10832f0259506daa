import { type Pattern, parsePattern, plainWordsOf } from "./pattern.ts";
import { type Needs, PatternFacts } from "./pattern-facts.ts";
import { optionNumber, type WordGroup, type WordPlaces } from "./word-places.ts";

/**
 * Matches phrases against words. Every list and slot is read at most once at each place of an
 * utterance, so the number of words bounds the work, whatever the phrases look like.
 */

type SlotValue = unknown;
export type SlotCapture = { slot: string; value: SlotValue };

/**
 * One way to read some words: where it ends, which slots it filled, and how much it had to assume.
 */
export type Match = { next: number; captures: readonly SlotCapture[]; cost: number };

/** What reads the values of slots; `cost` is 0 for a sure reading. */
export type SlotReader = (kind: string, at: number) => readonly SlotMatch[];
export type SlotMatch = { value: SlotValue; next: number; cost: number };

/** One utterance being matched. */
export type Run = {
  words: readonly string[];
  /** The other word a contraction can stand for, at the same places. */
  alts: readonly (string | undefined)[];
  /** Where the words of both lists stand. */
  places: WordPlaces;
  /** Places reachable from each place by skipping words that say nothing. */
  skips: readonly (readonly { at: number; cost: number }[])[];
  read: SlotReader;
  /** What each list matched at each place so far; empty at the start. */
  lists: (Map<string, Match[]> | undefined)[];
};

type Matcher = (run: Run, at: number) => Match[];

const NO_CAPTURES: readonly SlotCapture[] = [];
const NONE: Match[] = [];

/** By its end, what plain words match that were said in a row. */
const plainly: Match[][] = [];

function plainMatch(next: number): Match[] {
  plainly[next] ??= [{ next, captures: NO_CAPTURES, cost: 0 }];
  return plainly[next];
}

/** One of several options: what it can begin with, and its matcher once it has been tried. */
class Option {
  private readonly id = optionNumber();
  private compiled: Matcher | undefined;
  /** Null where it can begin with a slot or be empty. */
  private begins: ReadonlySet<string> | null | undefined;
  private pieces: readonly (WordGroup | undefined)[] | undefined;
  /** The smallest set of words one of which has to occur; null where none is known. */
  private key: WordGroup | null | undefined;

  constructor(
    private readonly grammar: Grammar,
    private readonly pattern: Pattern,
  ) {}

  private get required(): readonly (WordGroup | undefined)[] {
    this.pieces ??= this.grammar.facts.required(this.pattern).map(({ group }) => group);
    return this.pieces;
  }

  /** False where the words it most needs are missing, which rules out most options at once. */
  isLikely({ places }: Run): boolean {
    if (this.key === undefined) {
      const groups = this.required.flatMap((group) => group ?? []);
      this.key = groups.sort((a, b) => a.words.size - b.words.size)[0] ?? null;
    }
    return this.key === null || places.mayHave(this.key);
  }

  /**
   * The last place from which on the pieces it requires stand in their order; -1 where they do not.
   */
  lastStart(run: Run): number {
    if (!this.isLikely(run)) return -1;
    const { places } = run;
    const known = places.start(this.id);
    if (known !== undefined) return known;
    const found = this.lastFrom(run, run.words.length);
    places.keepStart(this.id, found);
    return found;
  }

  /** The same for words that end at a place. */
  lastFrom({ places }: Run, end: number): number {
    let at = end;
    for (let index = this.required.length - 1; index >= 0 && at >= 0; index -= 1) {
      const group = this.required[index];
      at = group ? places.lastOf(group, at) : at - 1;
    }
    return at;
  }

  mayBegin(run: Run, at: number): boolean {
    if (this.begins === undefined) this.begins = this.grammar.facts.begins(this.pattern) ?? null;
    if (this.begins === null) return at <= this.lastStart(run);
    for (const place of run.skips[at]!) {
      const alt = run.alts[place.at];
      if (
        this.begins.has(run.words[place.at] ?? "") ||
        (alt !== undefined && this.begins.has(alt))
      ) {
        return at <= this.lastStart(run);
      }
    }
    return false;
  }

  match(run: Run, at: number): Match[] {
    this.compiled ??= this.grammar.compile(this.pattern);
    return this.compiled(run, at);
  }
}

const NO_OPTIONS: Option[] = [];

/** What is known about a phrase before it is compiled, which happens when it is first tried. */
export class Phrase {
  private whole: { pattern: Pattern; option: Option } | undefined;
  /** Words at least one of which has to occur. */
  readonly needs: Needs;

  constructor(
    private readonly grammar: Grammar,
    private readonly source: string,
  ) {
    const words = plainWordsOf(source);
    this.needs = words ? new Set(words) : grammar.facts.needs(this.read.pattern);
  }

  /** Parsed late: most phrases are ruled out by a word they need. */
  private get read(): { pattern: Pattern; option: Option } {
    if (!this.whole) {
      const pattern = parsePattern(this.source);
      this.whole = { pattern, option: new Option(this.grammar, pattern) };
    }
    return this.whole;
  }

  /**
   * The last place from which on the pieces it requires stand in their order; -1 where they do not.
   */
  lastStart(run: Run): number {
    return this.read.option.lastStart(run);
  }

  /** False where its pieces do not stand in their order between two places. */
  mayStandIn(run: Run, from: number, end: number): boolean {
    return this.read.option.lastFrom(run, end) >= from;
  }

  /** False where the phrase cannot begin here. */
  mayBegin(run: Run, at: number): boolean {
    return this.read.option.mayBegin(run, at);
  }

  /** All ways to read the words from this place on. */
  match(run: Run, at: number): Match[] {
    return this.read.option.match(run, at);
  }
}

/** Phrases of one grammar. */
export class Grammar {
  private readonly lists = new Map<string, Matcher>();
  readonly facts: PatternFacts;

  constructor(lists: Readonly<Record<string, string>>) {
    this.facts = new PatternFacts(lists);
  }

  phrase(source: string): Phrase {
    return new Phrase(this, source);
  }

  private list(name: string): Matcher {
    let matcher = this.lists.get(name);
    if (!matcher) {
      matcher = this.remembered(name, this.compile(this.facts.list(name)));
      this.lists.set(name, matcher);
    }
    return matcher;
  }

  /** One option, made once for each place it is written in. */
  private option(pattern: Pattern): Option {
    let option = this.options.get(pattern);
    if (!option) {
      option = new Option(this, pattern);
      this.options.set(pattern, option);
    }
    return option;
  }

  private readonly options = new Map<Pattern, Option>();

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
    const byWord = new Map<string, Option[]>();
    const others: Option[] = [];
    for (const pattern of of) {
      const option = this.option(pattern);
      const first = pattern.is === "sequence" ? pattern.parts[0] : pattern;
      if (first?.is !== "word") others.push(option);
      else {
        const known = byWord.get(first.word);
        if (known) known.push(option);
        else byWord.set(first.word, [option]);
      }
    }
    return (run, at) => {
      let found: Match[] = NONE;
      if (byWord.size > 0) {
        for (const place of run.skips[at]!) {
          const alt = run.alts[place.at];
          for (const option of byWord.get(run.words[place.at] ?? "") ?? NO_OPTIONS) {
            found = merge(found, later(option.match(run, place.at), place.cost));
          }
          for (const option of (alt && byWord.get(alt)) || NO_OPTIONS) {
            found = merge(found, later(option.match(run, place.at), place.cost));
          }
        }
      }
      for (const option of others) {
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

function later(matches: Match[], cost: number): Match[] {
  return cost === 0 ? matches : matches.map((match) => ({ ...match, cost: match.cost + cost }));
}

/** Keeps the cheapest match for each end; of equals, the first. */
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
      return plainMatch(at + 1);
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
    let here = plainMatch(at);
    for (const part of parts) {
      let after: Match[] = NONE;
      for (const before of here) {
        const found = part(run, before.next);
        if (found.length > 0) after = merge(after, joinAll(before, found));
      }
      if (after.length === 0) return NONE;
      here = after;
    }
    return here;
  };
}

function joinAll(before: Match, found: Match[]): Match[] {
  if (before.cost === 0 && before.captures.length === 0) return found;
  return found.map((match) => joinMatches(before, match));
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
