import type { Intent } from "../../kitchen/command.ts";
import type { Joined } from "../grammar/bags.ts";
import { startsFrom, tailsOf } from "../grammar/passing-over.ts";
import type { BookRun, PhraseBook } from "../grammar/phrase-book.ts";
import { MEANINGS } from "../intents/all.ts";
import { clauseReadings, type Reading } from "../readings.ts";
import { isTarget } from "../values/named-recipe.ts";

/**
 * Utterances of two clauses, where the whole does not match a phrase: "I missed that, say it
 * again", "the beets, how long have they got". Only what both clauses agree on is taken; whatever
 * else stands in an utterance has to be a known side remark.
 */

/** Longer utterances are stories. */
const MOST_WORDS = 24;
const CLAUSE_COST = 0.5;

/** The slots a reading fills. */
export function slotsOf(reading: Reading): Record<string, unknown> {
  const slots: Record<string, unknown> = { ...reading.of.set };
  for (const { slot, value } of reading.match.captures) slots[slot] = value;
  return slots;
}

function givesWay(one: Intent, other: Intent): boolean {
  const { givesWay: to } = MEANINGS[one];
  return to === "all" || to?.includes(other) === true;
}

/** Both clauses' slots together; undefined where they differ on one. */
function merged(
  one: Record<string, unknown>,
  other: Record<string, unknown>,
): Record<string, unknown> | undefined {
  const all: Record<string, unknown> = { ...one };
  for (const [slot, value] of Object.entries(other)) {
    if (all[slot] === undefined) all[slot] = value;
    else if (JSON.stringify(all[slot]) !== JSON.stringify(value)) return undefined;
  }
  return all;
}

/** "The beets, how long have they got": a name and then what is asked or said of it. */
function aboutTopic(first: Reading, second: Reading): Record<string, unknown> | undefined {
  if (first.of.intent !== "focus" || !MEANINGS[second.of.intent].topical) {
    return undefined;
  }
  const topic = slotsOf(first).target;
  const slots = slotsOf(second);
  return isTarget(topic) && slots.target === undefined ? { ...slots, target: topic } : undefined;
}

function joined(first: Reading, second: Reading): Joined | undefined {
  const [a, b] = [first.of.intent, second.of.intent];
  const hedged = first.hedged || second.hedged;
  if (a === b) {
    const slots = merged(slotsOf(first), slotsOf(second));
    return slots && { intent: a, slots, hedged };
  }
  const about = aboutTopic(first, second);
  if (about) return { intent: b, slots: about, hedged };
  if (givesWay(a, b)) return { intent: b, slots: slotsOf(second), hedged };
  if (givesWay(b, a)) return { intent: a, slots: slotsOf(first), hedged };
  return undefined;
}

/** The command that two clauses form together, where they form one. */
export function joinedReading(
  run: BookRun,
  book: PhraseBook,
  refused: (intent: Intent) => boolean,
): Joined | undefined {
  if (run.words.length > MOST_WORDS) return undefined;
  const tails = tailsOf(run, book, true);
  const firsts = clauseReadings(startsFrom(0, run, book, true), run, book);
  let best: { joined: Joined; cost: number } | undefined;
  for (const [at, heads] of firsts) {
    if (at >= run.words.length) continue;
    for (const [end, seconds] of clauseReadings(startsFrom(at, run, book, true), run, book)) {
      const tail = tails[end];
      if (tail === undefined) continue;
      for (const first of heads.values()) {
        if (first.of.open) continue;
        for (const second of seconds.values()) {
          const cost = first.cost + second.cost + tail + CLAUSE_COST;
          if (best && best.cost <= cost) continue;
          const found = joined(first, second);
          if (found && !refused(found.intent)) best = { joined: found, cost };
        }
      }
    }
  }
  return best?.joined;
}
