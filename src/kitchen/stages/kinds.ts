/** The stage kinds by name. A new kind is a file beside this one and a line here. */
import type { StageRole } from "../../recipe/kind-in-recipe.ts";
import type { Stage, StageKind } from "../../recipe/recipe.ts";
import { cool } from "./cool.ts";
import { cure } from "./cure.ts";
import { depressurize } from "./depressurize.ts";
import { dry } from "./dry.ts";
import { ferment } from "./ferment.ts";
import { fill } from "./fill.ts";
import { handsOn } from "./hands-on.ts";
import { heat } from "./heat.ts";
import { process } from "./process.ts";
import { rest } from "./rest.ts";
import type { StageRules } from "./rules.ts";
import { sealCheck } from "./seal-check.ts";
import { store } from "./store.ts";
import { vent } from "./vent.ts";

export const KINDS: Record<StageKind, StageRules> = {
  "hands-on": handsOn,
  rest,
  heat,
  fill,
  vent,
  process,
  depressurize,
  cool,
  "seal-check": sealCheck,
  ferment,
  dry,
  cure,
  store,
};

type OfKind = Pick<Stage, "kind">;

export function rulesOf(stage: OfKind): StageRules {
  return KINDS[stage.kind];
}

export function hasRole(stage: OfKind, role: StageRole): boolean {
  return rulesOf(stage).role === role;
}

/**
 * Whether it is a stage that a recipe may list, but that the load goes through and not its batch.
 */
export function isOfCanner(stage: OfKind): boolean {
  return rulesOf(stage).ofCanner !== null;
}
