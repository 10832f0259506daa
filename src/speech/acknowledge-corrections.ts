/** Answers to taking something back, and to a requested warning. */

import { stageClock } from "../kitchen/agenda.ts";
import { describe } from "../kitchen/decide/decide-corrections.ts";
import type { FactOf } from "../kitchen/events.ts";
import { historyOf } from "../kitchen/events.ts";
import { ownerOf, runOf } from "../kitchen/owners.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import { at } from "./acknowledge-signs.ts";
import { durationWords } from "./spoken-time.ts";
import type { Told } from "./told.ts";

/** Says what was taken back, or put back where an undo was undone. */
export function withdrawnSentence({ before, state }: Told, cmd: string): string {
  const events = historyOf(before).filter((event) => event.cmd === cmd);
  const back = events.find((event) => event.type === "withdrawn");
  if (back?.type !== "withdrawn") return `Taken back: ${describe(before, events)}.`;
  const again = historyOf(before).filter((event) => event.cmd === back.target);
  return `Put back: ${describe(state, again)}.`;
}

/** "I'll tell you five minutes before process ends, at five to eleven." */
export function warningSentence(
  told: Told,
  { owner, stage, minutes }: FactOf<"warning-set">,
): string {
  const run = runOf(ownerOf(told.state, owner), stage);
  if (!run) return "";
  const clock = stageClock(run);
  const before = durationWords(minutes * MINUTE_MS);
  const when = clock ? `, ${at(told, clock.dueAt - minutes * MINUTE_MS)}` : "";
  return `I'll tell you ${before} before ${run.spec.title} ends${when}.`;
}
