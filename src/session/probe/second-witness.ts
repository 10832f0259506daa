/** A probe beside the person: what it sees may contradict a report. */

import { askYes, type Decision, type Wish } from "../../kitchen/decide/decision.ts";
import type { DatedFact } from "../../kitchen/events.ts";

/** Another observer: says why a report should be doubted, if it should be. */
export type SecondWitness = {
  doubts(facts: readonly DatedFact[], now: number): string | undefined;
};

/** A report that a probe contradicts needs a yes, and the log then says so. */
export function doubted(
  second: SecondWitness,
  outcome: Decision,
  wish: Wish,
  now: number,
): Decision {
  const doubt = outcome.kind === "done" ? second.doubts(outcome.facts, now) : undefined;
  if (outcome.kind !== "done" || doubt === undefined) return outcome;
  if (!wish.confirmed) return askYes(wish, doubt);
  const told: DatedFact = { type: "note", owner: null, text: `said although: ${doubt}`, t: now };
  return { ...outcome, facts: [...outcome.facts, told] };
}
