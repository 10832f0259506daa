/** The stage kinds by name. A new kind is a file beside this one and a line here. */
import type { StageKind } from "../../recipe/recipe.ts";
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
