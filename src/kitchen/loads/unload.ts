/** Lifting the jars out, on a person's word or because they leave a process that was too short. */

import { runOfRole } from "../owners.ts";
import { quiet } from "../settle.ts";
import { finish, isOver, reopen, skipStage } from "../stage-run.ts";
import { rulesOf } from "../stages/kinds.ts";
import type { Load, State } from "../state.ts";
import { lose } from "../unbroken-time.ts";

/** The jars come out: stages of the load that are not done by now never will be. */
export function unload(state: State, load: Load, event: { t: number; early: boolean }): void {
  load.unloadedAt = event.t;
  load.early = event.early;
  const process = runOfRole(load, "treatment");
  // The jars came out before the end of a time that had seemed full: so it was not full.
  if (process?.state === "complete" && (process.endedAt ?? 0) > event.t) reopen(process, "running");
  if (process?.kept) lose(process.kept, event.t, "out");
  for (const run of load.stages) {
    if (rulesOf(run.spec).ofCanner === "after") break;
    if (isOver(run)) continue;
    const done = run.spec.step === "unload" || (run === process && run.startedAt !== undefined);
    if (done) finish(run, event.t);
    else skipStage(run, event.t);
  }
  quiet(state, `${load.id}/`);
}
