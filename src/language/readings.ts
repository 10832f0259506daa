import type { Intent } from "../kitchen/command.ts";
import type { Match } from "./grammar/matcher.ts";
import { MOST_STRANGE, type Passed, startsFrom, tailsOf } from "./grammar/passing-over.ts";
import {
  type BookRun,
  candidatePhrases,
  type MeaningPhrase,
  type PhraseBook,
} from "./grammar/phrase-book.ts";
import { MEANINGS } from "./intents/all.ts";

/** One way to read an utterance, or one clause of it, as a command. */
export type Reading = {
  of: MeaningPhrase;
  match: Match;
  cost: number;
  hedged: boolean;
};

/** What readings may skip: side remarks, or one unexpected word. */
type Leave = { asides: boolean; strangers: boolean };

/** Whether the one is better than the other: cheaper or, at equal cost, earlier in the order. */
function beats(one: Reading, other: Reading | undefined): boolean {
  if (!other) return true;
  return one.cost < other.cost || (one.cost === other.cost && one.of.order < other.of.order);
}

/**
 * Every way phrases match from one place on; each place is looked at once. Unexpected words are
 * skipped only for meanings that forgive them.
 */
function matchesAt(run: BookRun, book: PhraseBook, start: number, strangers: boolean) {
  const before = run.matches[start];
  if (before) return before;
  const found: BookRun["matches"][number] = [];
  for (const { of, last } of candidatePhrases(book, run)) {
    if (start > last || (strangers && !MEANINGS[of.intent].forgiving)) continue;
    if (!of.phrase.mayBegin(run, start)) continue;
    for (const match of of.phrase.match(run, start)) {
      if (match.next !== start) found.push({ of, match });
    }
  }
  run.matches[start] = found;
  return found;
}

/** Every way phrases match from one of these places on. */
function* readingsFrom(
  starts: ReadonlyMap<number, Passed>,
  run: BookRun,
  book: PhraseBook,
  strangers = false,
): Generator<Reading> {
  for (const [start, passed] of starts) {
    if (start >= run.words.length) continue;
    for (const { of, match } of matchesAt(run, book, start, strangers)) {
      yield { of, match, cost: passed.cost + match.cost, hedged: passed.hedged };
    }
  }
}

/** True where side remarks open places that were not open without them. */
function leavesMore(
  starts: ReadonlyMap<number, Passed>,
  tails: readonly (number | undefined)[],
  run: BookRun,
  book: PhraseBook,
): boolean {
  if (starts.size > startsFrom(0, run, book, false).size) return true;
  return tailsOf(run, book, false).some(
    (tail, at) => tail === undefined && tails[at] !== undefined,
  );
}

/** The best command that covers the whole utterance. */
export function wholeReading(
  run: BookRun,
  book: PhraseBook,
  leave: Leave,
  refused: (intent: Intent) => boolean,
): Reading | undefined {
  const tails = tailsOf(run, book, leave.asides);
  const starts = startsFrom(0, run, book, leave.asides);
  if (leave.asides && !leavesMore(starts, tails, run, book)) return undefined;
  let best: Reading | undefined;
  for (const reading of readingsFrom(starts, run, book, leave.strangers)) {
    const tail = tails[reading.match.next];
    if (tail === undefined) continue;
    const whole = { ...reading, cost: reading.cost + tail };
    if (leave.strangers && whole.cost >= MOST_STRANGE) continue;
    if (beats(whole, best) && !refused(whole.of.intent)) best = whole;
  }
  return best;
}

/** The best reading of each intent, by where it ends, of a clause that begins at these places. */
export function clauseReadings(
  starts: ReadonlyMap<number, Passed>,
  run: BookRun,
  book: PhraseBook,
): Map<number, Map<string, Reading>> {
  const byEnd = new Map<number, Map<string, Reading>>();
  for (const reading of readingsFrom(starts, run, book)) {
    let here = byEnd.get(reading.match.next);
    if (!here) {
      here = new Map();
      byEnd.set(reading.match.next, here);
    }
    if (beats(reading, here.get(reading.of.intent))) here.set(reading.of.intent, reading);
  }
  return byEnd;
}
