/** Says in words what the one key would do, or which words to say where it does nothing. */

import { filled, ready } from "../../kitchen/jars/lots.ts";
import { activeOwners, isLoad, type Owner } from "../../kitchen/owners.ts";
import type { ShelfItem } from "../../kitchen/shelves.ts";
import { leadName } from "../../kitchen/spoken-names.ts";
import { hasRole, rulesOf } from "../../kitchen/stages/kinds.ts";
import type { Load, StageRun, State } from "../../kitchen/state.ts";

/** Exactly what Space or Enter on an empty line will report. */
export function keyWords(state: State, { owner, run, offer }: ShelfItem): string {
  const what = offer === "begin" ? `begin: ${run.spec.title}` : doneWords(state, owner, run);
  const several = activeOwners(state).filter((one) => !isLoad(one)).length > 1;
  return several ? `${what} (${leadName(state, owner)})` : what;
}

function doneWords(state: State, owner: Owner, run: StageRun): string {
  if (isLoad(owner)) {
    if (run.spec.step === "canner") return "the canner is ready";
    if (run.spec.step === "load") {
      return `the ${readyFor(state, owner)} filled jars are in`;
    }
    if (run.spec.step === "heat-off") return "heat is off";
    return rulesOf(run.spec).shows.done ?? `${run.spec.title}: done`;
  }
  if (hasRole(run.spec, "filling")) {
    return filled(owner) > 0 ? "all jars are filled" : "asks how many jars are filled";
  }
  return `${run.spec.title}: done`;
}

/** How many jars stand filled of the batch that a load was opened for. */
function readyFor(state: State, load: Load): number {
  const batch = state.batches[load.batch];
  return batch ? ready(batch) : 0;
}

/** Jars cannot go in before it is known how many there are. */
export function needsWords(state: State, { owner, run }: ShelfItem): boolean {
  return isLoad(owner) && run.spec.step === "load" && readyFor(state, owner) === 0;
}

/** What to say where the key does nothing. */
export function wordsNeeded(state: State, owner?: Owner, run?: StageRun): string {
  if (run?.spec.step === "unload") return "Say the jars are out, or press =";
  if (run?.spec.step === "load") return "Say how many jars are filled";
  if (owner && run) return rulesOf(run.spec).shows.needed ?? "Say what happened";
  if (activeOwners(state).length === 0) return "Type what you want to make, then Enter";
  return "Nothing for your hands now. Say what happens, or what now";
}
