/** What is said at closing: that the clocks are kept, and what keeps running. */

import { stageClock } from "../../kitchen/agenda.ts";
import { activeOwners, isLoad } from "../../kitchen/owners.ts";
import { ownerName, timerName } from "../../kitchen/spoken-names.ts";
import { type State, wallOf } from "../../kitchen/state.ts";
import { upToMinute } from "../../kitchen/time.ts";
import { durationWords, momentWords } from "../../speech/spoken-time.ts";

/** What runs, each in a few words with when its clock is due; empty in an empty kitchen. */
export function running(state: State, now: number): string[] {
  const stages = activeOwners(state).flatMap((owner) => {
    if (!isLoad(owner) && owner.state === "abandoned") return [];
    const run = owner.stages.find((one) => one.state === "running");
    if (!run) return isLoad(owner) ? [] : [ownerName(state, owner)];
    const clock = stageClock(run);
    return [`${ownerName(state, owner)}, ${run.spec.title}${clock ? due(clock) : ""}`];
  });
  function due({ dueAt, lost }: { dueAt: number; lost: boolean }): string {
    if (lost) return ", stopped";
    const when = momentWords(upToMinute(wallOf(state, dueAt)), wallOf(state, now), state.zone);
    return dueAt > now ? `, due ${when}` : `, due since ${durationWords(now - dueAt)}`;
  }
  const timers = Object.values(state.timers)
    .filter((timer) => timer.state === "running")
    .map((timer) => `${timerName(timer)}${due({ dueAt: timer.endsAt, lost: false })}`);
  return [...stages, ...timers];
}

/** The lines left in the terminal after closing; a log that was not written keeps nothing. */
export function farewell(state: State, now: number, notRecorded = false): string[] {
  const list = running(state, now);
  if (notRecorded) {
    const lost = "Brinebell is closed. The log could not be written: what was said last is lost.";
    return [lost, ...list.map((one) => `  ${one}`)];
  }
  if (list.length === 0) return ["Brinebell is closed. Nothing is running."];
  return [
    "Brinebell is closed; the clocks are kept. Open it again to go on. Running on:",
    ...list.map((one) => `  ${one}`),
  ];
}
