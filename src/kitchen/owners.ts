/** Looking up batches, loads and their stages by id. */

import type { LoadStep } from "../recipe/choices.ts";
import type { StageRole } from "../recipe/kind-in-recipe.ts";
import { hasRole } from "./stages/kinds.ts";
import type { Batch, Load, StageRun, State } from "./state.ts";

export type Owner = Batch | Load;

export function isLoad(owner: Owner): owner is Load {
  return "canner" in owner;
}

export function ownerOf(state: State, id: string): Owner | undefined {
  return state.batches[id] ?? state.loads[id];
}

export function runOf(owner: Owner | undefined, stage: string): StageRun | undefined {
  return owner?.stages.find((run) => run.id === stage);
}

/** A load's run of one of its own steps. */
export function runOfStep(owner: Owner | undefined, step: LoadStep): StageRun | undefined {
  return owner?.stages.find((run) => run.spec.step === step);
}

export function runOfRole(owner: Owner, role: StageRole): StageRun | undefined {
  return owner.stages.find((run) => hasRole(run.spec, role));
}

/** Whether a load's process has had its sign, or is over: its terms stand, and can only go up. */
export function hasBegun(load: Load): boolean {
  const process = runOfRole(load, "treatment");
  return (process?.kept?.stretches.length ?? 0) > 0 || load.unloadedAt !== undefined;
}

/** Batches and loads with something still to do, oldest first. */
export function activeOwners(state: State): Owner[] {
  const owners: Owner[] = [];
  for (const id of state.active) {
    const owner = ownerOf(state, id);
    if (owner) owners.push(owner);
  }
  return owners;
}

/** Loads that occupy a canner: from lighting it to lifting the jars out. */
export function inCanner(state: State): Load[] {
  return activeOwners(state).filter(
    (owner): owner is Load => isLoad(owner) && owner.unloadedAt === undefined,
  );
}
