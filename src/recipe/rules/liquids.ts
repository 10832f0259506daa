import { VINEGAR_PERCENT } from "../../reckon/trade-numbers.ts";
import { cupsInBatch } from "../batch-amount.ts";
import { foodsNamed, withoutDenied } from "../foods/name-foods.ts";
import type { Ingredient, Recipe } from "../recipe.ts";
import { withDigits } from "./said-numbers.ts";

const SOAKING = /soak|chill|stand|rins|hold|crisp/i;
const DRAINED = /\b(drain|pour(ed)? off|rins)/i;
const LIQUID = /\b(juice|wine|beer|cider|broth|stock|brine|milk|liquid)\b/i;
const NO_LIQUID = /\b(salt|sugar|acid|spices?|lime|lemon)\b/i;
const NAMED_PERCENT = /(\d+(?:\.\d+)?)[- ]?(?:%|per ?cent)/;

export const isVinegar = (one: Ingredient) => one.role === "acid" && /vinegar/i.test(one.name);

/** Water by any name and in any role: melted ice dilutes too. */
export function isWater(one: Ingredient): boolean {
  if (/\b(salt|salted|sugar|acid|lime) water\b/i.test(one.name)) return true;
  return foodsNamed(one.name).some(({ kind }) => kind === "water") && !NO_LIQUID.test(one.name);
}

/** The strength in the vinegar's name, else the one written beside it, percent. */
export function strengthOf({ name, strengthPercent }: Ingredient): number | undefined {
  if (strengthPercent === undefined) return undefined;
  const said = NAMED_PERCENT.exec(withDigits(name))?.[1];
  return said === undefined ? strengthPercent : Math.min(strengthPercent, Number(said));
}

/** Cups of 5 percent vinegar with as much acid as what is certain to go into the jar. */
export function vinegarCups(recipe: Recipe): number {
  return recipe.ingredients
    .filter((one) => isVinegar(one) && !one.optional && !SOAKING.test(one.into ?? ""))
    .reduce((sum, one) => {
      const cups = cupsInBatch(recipe, one, "low") ?? 0;
      return sum + (cups * (strengthOf(one) ?? 0)) / VINEGAR_PERCENT;
    }, 0);
}

/** True for a liquid in which the food is only soaked, and that a stage drains off again. */
function isDrainedOff(recipe: Recipe, one: Ingredient): boolean {
  if (!SOAKING.test(one.into ?? "")) return false;
  return recipe.stages.some((stage) => DRAINED.test(`${stage.title} ${stage.say}`));
}

/** Cups of everything that thins the acid, as far as it is measured. */
export function thinningCups(recipe: Recipe): number {
  return thinningLiquids(recipe).reduce(
    (sum, one) => sum + (cupsInBatch(recipe, one, "high") ?? 0),
    0,
  );
}

/** Everything that thins the acid: water and other liquids, whatever their role. */
export function thinningLiquids(recipe: Recipe): Ingredient[] {
  return recipe.ingredients.filter((one) => {
    const liquid = LIQUID.test(withoutDenied(one.name)) && !NO_LIQUID.test(one.name);
    const thins = isWater(one) ? !isVinegar(one) : liquid && one.role !== "acid";
    return thins && !isDrainedOff(recipe, one);
  });
}
