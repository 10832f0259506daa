/** Which stages somebody has to watch, and what the program has to stay for. */

import { activeOwners, isLoad, type Owner } from "./owners.ts";
import { ownerName, timerName } from "./spoken-names.ts";
import { rulesOf } from "./stages/kinds.ts";
import type { StageRun, State } from "./state.ts";

/** The stages that must be kept now: a process or a vent that runs, or may. */
export function watchedRuns(state: State): { owner: Owner; run: StageRun }[] {
  return activeOwners(state).flatMap((owner) =>
    owner.stages.flatMap((run) => {
      const may = run.state === "running" || run.kept?.unconfirmedAt !== undefined;
      return may && rulesOf(run.spec).watched ? [{ owner, run }] : [];
    }),
  );
}

/** A process or a vent is running, or may be: the length of a gap would matter. */
export function mustBeKept(state: State): boolean {
  return watchedRuns(state).length > 0;
}

/**
 * What runs here toward an end that somebody waits for, so that the program has to stay: a
 * process or a vent, a rest or a cooling, a timer. Ferments, cures and stores go on by the date.
 * The first is named, where there is one.
 */
export function waitedFor(state: State): string | undefined {
  const [kept] = watchedRuns(state);
  if (kept) return `${kept.run.spec.title} of ${ownerName(state, kept.owner)} must be watched`;
  for (const owner of activeOwners(state)) {
    if (!isLoad(owner) && owner.state === "abandoned") continue;
    const run = owner.stages.find((one) => one.state === "running" && isTimed(one));
    if (run) return `${run.spec.title} of ${ownerName(state, owner)} runs`;
  }
  const timer = Object.values(state.timers).find((one) => one.state === "running");
  return timer && `${timerName(timer)} runs`;
}

/** Something came due and nobody has answered it. */
export function ringsUnanswered(state: State): boolean {
  return state.ringing.length > 0;
}

/** Its end comes by itself, within a day or so. */
function isTimed({ spec }: StageRun): boolean {
  const { clock, date, plan } = rulesOf(spec);
  return clock !== "none" && date === null && plan.foreseeable;
}
