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
const NO_MATCHERS: Matcher[] = [];

/** Compiled phrases of one grammar. */
export class Grammar {
  private readonly lists = new Map<string, Matcher>();
  private readonly facts: PatternFacts;
  /** Every word of every phrase compiled so far. */
  readonly vocabulary = new Set<string>();

  /** @throws Error naming the phrase when a phrase is not well formed or names no known list. */
  constructor(lists: Readonly<Record<string, readonly string[]>>) {
    this.facts = new PatternFacts(lists);
    for (const [name, pattern] of this.facts.parsed) {
      this.lists.set(name, this.remembered(name, this.compile(pattern)));
    }
  }

  /** A matcher for one phrase, with what it can begin with and what it cannot do without. */
  phrase(source: string): { matcher: Matcher; firsts: Set<string> | undefined; needs: Needs } {
    const pattern = parsePattern(source);
    return {
      matcher: this.compile(pattern),
      firsts: this.facts.firsts(pattern),
      needs: this.facts.needs(pattern),
    };
  }

  private compile(pattern: Pattern): Matcher {
    switch (pattern.is) {
      case "word":
        this.vocabulary.add(pattern.word);
        return wordMatcher(pattern.word);
      case "slot":
        return slotMatcher(pattern.slot, pattern.kind);
      case "fixed": {
        const captures = [{ slot: pattern.slot, value: pattern.value }];
        return (_run, at) => [{ next: at, captures, cost: 0 }];
      }
      case "list": {
        const { name } = pattern;
        this.facts.list(name);
        return (run, at) => this.lists.get(name)!(run, at);
      }
      case "choice":
        return this.compileChoice(pattern.of);
      case "sequence":
        return sequenceMatcher(pattern.parts.map((part) => this.compile(part)));
    }
  }

  /** Choices between plain words and short phrases are looked up by their first word. */
  private compileChoice(of: readonly Pattern[]): Matcher {
    const byWord = new Map<string, Matcher[]>();
    const others: { matcher: Matcher; needs: Needs }[] = [];
    for (const one of of) {
      const matcher = this.compile(one);
      const first = one.is === "sequence" ? one.parts[0] : one;
      if (first?.is === "word") {
        const known = byWord.get(first.word);
        if (known) known.push(matcher);
        else byWord.set(first.word, [matcher]);
      } else others.push({ matcher, needs: this.facts.needs(one) });
    }
    return (run, at) => {
      let found: Match[] = NONE;
      if (byWord.size > 0) {
        for (const place of run.skips[at]!) {
          const alt = run.alts[place.at];
          for (const matcher of byWord.get(run.words[place.at] ?? "") ?? NO_MATCHERS) {
            found = merge(found, later(matcher(run, place.at), place.cost));
          }
          for (const matcher of (alt && byWord.get(alt)) || NO_MATCHERS) {
            found = merge(found, later(matcher(run, place.at), place.cost));
          }
        }
      }
      for (const { matcher, needs } of others) {
        if (couldMatch(needs, run.has)) found = merge(found, matcher(run, at));
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
