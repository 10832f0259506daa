import { KINDS } from "../../kitchen/stages/kinds.ts";
import {
  chooseProcess,
  methodMeant,
  processOptions,
  refusedAnywhere,
  whyOffTheShelf,
} from "../../recipe/choose-process.ts";
import type { Library } from "../../recipe/library.ts";
import type { Method, ProcessTerms, Recipe } from "../../recipe/recipe.ts";
import { recipeFor } from "../../recipe/recipe-for.ts";
import { type Scaled, scaleRecipe } from "../../recipe/scale.ts";
import { altitudeOfCall, holdsOf, type KitchenWish } from "../call/kitchen-options.ts";
import type { KeptKitchen } from "./recipe-io.ts";

/** A recipe worked out: for the chosen method and pack, with its amounts and its process. */
export type WorkedOut = {
  recipe: Recipe;
  method: Method;
  scaled: Scaled;
  /** The tested process; null where there is none, with the reason. */
  process: ProcessTerms | null;
  reason: string | null;
  /**
   * True where what was asked for was never tested, not where something is missing from the call.
   */
  refused: boolean;
};

/** Whether something particular was asked for in the process, beyond the kitchen's altitude. */
function isParticular({ jar, pack, method, atPsi }: KitchenWish): boolean {
  return [jar, pack, method, atPsi].some((one) => one !== undefined);
}

/** Works a recipe out for a kitchen: method, pack, amounts, and the tested process or why none. */
export function workOut(
  recipe: Recipe,
  library: Library,
  wish: KitchenWish,
  kitchen: KeptKitchen,
): WorkedOut {
  const options = processOptions(recipe);
  const meant = methodMeant(options, wish);
  const first = options.find((o) => o.method === meant) ?? options[0];
  const method = meant ?? recipe.keptAs;
  const pack = wish.pack ?? first?.pack;
  const chosen = recipeFor(recipe, KINDS, method, pack);
  const { forLb, jar } = wish;
  const isCanned = options.some((option) => option.method === method);
  const holds = isCanned ? (wish.cannerHolds ?? kitchen.cannerHolds) : undefined;
  const plain = scaleRecipe(chosen, { forLb, jar });
  const scaled = scaleRecipe(chosen, { forLb, jar, cannerHolds: holdsOf(holds, plain.jar) });
  const { altitudeFt, altitudeUncertaintyFt } = altitudeOfCall(wish, kitchen);
  const gauge = wish.gauge ?? kitchen.gauge;
  const base = { recipe: chosen, method, scaled, process: null, refused: false };
  if (method === recipe.keptAs && wish.atPsi === undefined) {
    const listed = !recipe.tested && recipe.processes.length > 0;
    const reason = listed ? whyOffTheShelf(recipe) : `kept as ${recipe.keptAs}: no canner process`;
    return { ...base, reason };
  }
  if (altitudeFt === undefined) {
    const never = isParticular(wish)
      ? refusedAnywhere(recipe, library.tables, { ...wish, gauge })
      : undefined;
    if (never !== undefined) return { ...base, reason: never, refused: true };
    const reason = "the time depends on the altitude: add it, such as --altitude 6200ft";
    return { ...base, reason };
  }
  const here = { altitudeFt, altitudeUncertaintyFt, gauge };
  const choice = chooseProcess(recipe, library.tables, { ...wish, ...here });
  if (choice.ok) return { ...base, process: choice.terms, reason: null };
  const refused =
    choice.missing === undefined && (isParticular(wish) || wish.altitudeFt !== undefined);
  return { ...base, reason: choice.reason, refused };
}
