/** Which batch a question is about. */
import type { Meant } from "../../kitchen/command.ts";
import { ownerIds, standsFor } from "../../kitchen/meant.ts";
import { activeOwners, isLoad, type Owner } from "../../kitchen/owners.ts";
import { rulesOf } from "../../kitchen/stages/kinds.ts";
import type { Batch, StageRun, State } from "../../kitchen/state.ts";

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

/** A pot on the stove: the one that was named, else the first. */
export function heatedOnStove(
  state: State,
  ref: Meant | undefined,
): { owner: Owner; run: StageRun } | undefined {
  const pots = runningBatches(state).flatMap((owner) =>
    owner.stages
      .filter((run) => run.state === "running" && rulesOf(run.spec).thermometer === "pot")
      .map((run) => ({ owner, run })),
  );
  const named = [...(ref?.running ?? []), ...(ref?.vessels ?? []), ...(ref?.parts ?? [])];
  return pots.find(({ owner, run }) => standsFor(named, owner, run)) ?? pots[0];
}
