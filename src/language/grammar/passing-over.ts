import { TELLING } from "../guards.ts";
import type { Phrase, Run } from "./matcher.ts";

/** Words that are skipped: between the words of a phrase, before it and after it. */

/** Phrases of skippable words by their first word. */
export type SkipTable = ReadonlyMap<string, readonly string[][]>;

/** Everything that may be skipped. */
export type Passable = {
  fillers: SkipTable;
  openers: SkipTable;
  hedges: SkipTable;
  /** Side remarks: whole clauses that say nothing the kitchen has to know. */
  aside: Phrase;
};

const FILLER_COST = 0.05;
const ASIDE_COST = 0.1;
const HEDGE_COST = 2;
/** An unexpected word; two of them are too many. */
const STRANGER_COST = 3;
export const MOST_STRANGE = 2 * STRANGER_COST;

/** The cost of reaching a place; `hedged` where a doubt was skipped on the way. */
export type Passed = { cost: number; hedged: boolean };

function skipsFrom(words: readonly string[], at: number, table: SkipTable): number[] {
  const found = table.get(words[at] ?? "") ?? [];
  return found
    .filter((phrase) => phrase.every((word, step) => words[at + step] === word))
    .map((phrase) => at + phrase.length);
}

/**
 * For each place, the places reachable by skipping fillers, itself first. `strangers` also lets
 * other words be skipped, at a price that allows one of them.
 */
export function skipsOf(
  words: readonly string[],
  book: Pick<Passable, "fillers">,
  strangers: boolean,
): { at: number; cost: number }[][] {
  const skips: { at: number; cost: number }[][] = [];
  for (let at = words.length; at >= 0; at -= 1) {
    const reached = [{ at, cost: 0 }];
    for (const next of skipsFrom(words, at, book.fillers)) {
      for (const place of skips[next] ?? []) {
        if (reached.some((known) => known.at === place.at)) continue;
        reached.push({ at: place.at, cost: place.cost + FILLER_COST });
      }
    }
    if (strangers && at < words.length && !TELLING.has(words[at] ?? "")) {
      reached.push({ at: at + 1, cost: STRANGER_COST });
    }
    skips[at] = reached;
  }
  return skips;
}

/**
 * Where a phrase may begin, counted from a place on: after fillers, politeness and hedges in any
 * mixture, and after side remarks where those are allowed.
 */
export function startsFrom(
  from: number,
  run: Run,
  book: Passable,
  asides: boolean,
): Map<number, Passed> {
  const starts = new Map<number, Passed>([[from, { cost: 0, hedged: false }]]);
  for (let at = from; at < run.words.length; at += 1) {
    const here = starts.get(at);
    if (!here) continue;
    const reach = (next: number, more: number, hedged = here.hedged) => {
      const cost = here.cost + more;
      if (cost < (starts.get(next)?.cost ?? Number.POSITIVE_INFINITY)) {
        starts.set(next, { cost, hedged });
      }
    };
    for (const place of run.skips[at] ?? []) reach(place.at, place.cost);
    for (const next of skipsFrom(run.words, at, book.openers)) reach(next, FILLER_COST);
    for (const next of skipsFrom(run.words, at, book.hedges)) reach(next, HEDGE_COST, true);
    if (asides) {
      for (const { next, cost } of book.aside.match(run, at)) reach(next, cost + ASIDE_COST);
    }
  }
  return starts;
}

/**
 * The cost of skipping everything from each place to the end; undefined where that cannot be done.
 */
export function tailsOf(run: Run, book: Passable, asides: boolean): (number | undefined)[] {
  const end = run.words.length;
  const tails: (number | undefined)[] = [];
  tails[end] = 0;
  for (let at = end - 1; at >= 0; at -= 1) {
    let least: number | undefined;
    const reach = (next: number, more: number) => {
      const rest = tails[next];
      if (rest !== undefined && (least === undefined || rest + more < least)) least = rest + more;
    };
    for (const place of run.skips[at] ?? []) if (place.at > at) reach(place.at, place.cost);
    if (asides) {
      for (const { next, cost } of book.aside.match(run, at)) {
        if (next > at) reach(next, cost + ASIDE_COST);
      }
    }
    tails[at] = least;
  }
  return tails;
}
