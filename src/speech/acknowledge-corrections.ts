/** What is answered to a correction, and to a warning that was asked for. */
import { stageClock } from "../kitchen/agenda.ts";
import { describe } from "../kitchen/decide/decide-corrections.ts";
import type { DatedFact } from "../kitchen/events.ts";
import { ownerOf, runOf } from "../kitchen/owners.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import { changedSentence } from "./acknowledge-begin.ts";
import { at, type Told } from "./acknowledge-signs.ts";
import { durationWords } from "./spoken-time.ts";

type Correction = Extract<
  DatedFact,
  { type: "withdrawn" | "batch-changed" | "stage-skipped" | "amended" }
>;

/** What is answered to what changes an earlier word or the recipe's way. */
export function correctionSentence(told: Told, fact: Correction): string {
  switch (fact.type) {
    case "withdrawn":
      return withdrawnSentence(told, fact.target);
    case "batch-changed":
      return changedSentence(told, fact.batch);
    case "stage-skipped":
      return "Left out. The log says so.";
    case "amended":
      return `Corrected: ${at(told, fact.t)}.`;
  }
}

/** What was taken back, or put back where that was itself a taking back. */
function withdrawnSentence({ before, state }: Told, cmd: string): string {
  const events = before.history.filter((event) => event.cmd === cmd);
  const back = events.find((event) => event.type === "withdrawn");
  if (back?.type !== "withdrawn") return `Taken back: ${describe(before, events)}.`;
  const again = before.history.filter((event) => event.cmd === back.target);
  return `Put back: ${describe(state, again)}.`;
}

/** "I'll tell you five minutes before process ends, at five to eleven." */
export function warningSentence(
  told: Told,
  { owner, stage, minutes }: Extract<DatedFact, { type: "warning-set" }>,
): string {
  const run = runOf(ownerOf(told.state, owner), stage);
  if (!run) return "";
  const clock = stageClock(run);
  const before = durationWords(minutes * MINUTE_MS);
  const when = clock ? `, ${at(told, clock.dueAt - minutes * MINUTE_MS)}` : "";
  return `I'll tell you ${before} before ${run.spec.title} ends${when}.`;
}
