/** Which batch a question is about. */
import type { Meant } from "../../kitchen/command.ts";
import { ownerIds } from "../../kitchen/meant.ts";
import { activeOwners, isLoad } from "../../kitchen/owners.ts";
import type { Batch, State } from "../../kitchen/state.ts";

/** Batches with something still to do. */
export function runningBatches(state: State): Batch[] {
  return activeOwners(state).filter((one): one is Batch => !isLoad(one));
}

/** The batch that was named, else the one in focus, else the oldest that runs. */
export function batchInMind(state: State, ref: Meant | undefined): Batch | undefined {
  const batches = runningBatches(state);
  const named = ownerIds(ref?.running ?? []);
  const batch = batches.find(({ id }) => named.has(id));
  return batch ?? batches.find(({ id }) => id === state.focus) ?? batches[0];
}
