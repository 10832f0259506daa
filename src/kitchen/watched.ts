/** What somebody has to watch. */
import { activeOwners, type Owner } from "./owners.ts";
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
