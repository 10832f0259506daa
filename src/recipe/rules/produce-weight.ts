import { G_PER_LB } from "../../reckon/units.ts";
import { gramsInBatch } from "../batch-amount.ts";
import { type Food, isLowAcid, isNoFood } from "../foods/foods.ts";
import { foodsNamed } from "../foods/name-foods.ts";
import type { TestedFormula } from "../process-table.ts";
import type { FoodClass, Ingredient, Recipe } from "../recipe.ts";
import { isAddition } from "./additions.ts";

/** Foods that season a jar, and the classes whose tested recipes put them in. */
const SEASONINGS: readonly string[] = ["garlic", "pepper"];
export const SEASONED: readonly FoodClass[] = ["acidified", "ferment", "low-acid"];
/**
 * The largest share of the produce's weight that is still a seasoning; next to nothing elsewhere.
 */
const SEASONING_SHARE = { seasoned: 0.02, other: 0.002 };

/** True for a food that seasons a jar in small amounts. */
export function isSeasoningFood({ name }: Food): boolean {
  return SEASONINGS.includes(name);
}

/** The foods an ingredient brings in; the lemon in an acid is there only for its juice. */
export function foodsOf(one: Ingredient): readonly Food[] {
  if (isAddition(one)) return [];
  const named = foodsNamed(one.name).filter((food) => !isNoFood(food));
  return one.role === "acid" ? named.filter(isLowAcid) : named;
}

/** Grams of what the recipe calls its produce, the measure for what is little and what is much. */
export function mainGrams(recipe: Recipe): number {
  const main = recipe.ingredients.filter((one) => one.role === "produce");
  return gramsOfAll(recipe, main) || recipe.yield.weightLb * G_PER_LB;
}

/** True for a little garlic or pepper that the recipe calls a spice: not a second food. */
export function isSeasoning(recipe: Recipe, one: Ingredient): boolean {
  const foods = foodsOf(one);
  if (one.role !== "spice" || !foods.every(isSeasoningFood)) return false;
  const grams = gramsInBatch(recipe, one, "high");
  if (grams === undefined) return false;
  const share = SEASONED.includes(recipe.class) ? SEASONING_SHARE.seasoned : SEASONING_SHARE.other;
  return grams <= share * mainGrams(recipe);
}

/** Juice, cider and broth thin the acid; they are measured against it as water is. */
function isLiquid(one: Ingredient): boolean {
  return /\b(juice|cider|broth|stock)\b/i.test(one.name);
}

/** What is weighed against the acid: every food, whatever its role and whether or not optional. */
export function produceOf(recipe: Recipe): Ingredient[] {
  return recipe.ingredients.filter(
    (one) =>
      (one.role === "produce" || (foodsOf(one).length > 0 && !isLiquid(one))) &&
      !isSeasoning(recipe, one),
  );
}

function gramsOfAll(recipe: Recipe, chosen: Ingredient[]): number {
  return chosen.reduce((sum, one) => sum + (gramsInBatch(recipe, one, "high") ?? 0), 0);
}

/** Total produce, grams; from the yield where none of it has a weight. */
export function produceGrams(recipe: Recipe): number {
  return gramsOfAll(recipe, produceOf(recipe)) || recipe.yield.weightLb * G_PER_LB;
}

/** The part of the produce that brings no acid of its own, grams. */
export function lowAcidGrams(recipe: Recipe): number {
  return gramsOfAll(
    recipe,
    produceOf(recipe).filter((one) => foodsOf(one).some(isLowAcid)),
  );
}

/** Produce less what the tested recipe allows besides, times how often the recipe is made. */
export function countedGrams(recipe: Recipe, { besides = {}, produceLb }: TestedFormula): number {
  const extra = (one: Ingredient) => foodsOf(one).map(({ name }) => besides[name]);
  const all = produceOf(recipe);
  const main = all.filter((one) => !extra(one).length || extra(one).includes(undefined));
  const times = gramsOfAll(recipe, main) / (produceLb * G_PER_LB);
  const letIn = Object.entries(besides).map(([food, lb]) => {
    const own = all.filter((one) => !main.includes(one) && foodsOf(one)[0]?.name === food);
    return Math.min(gramsOfAll(recipe, own), lb * G_PER_LB * times);
  });
  return produceGrams(recipe) - letIn.reduce((sum, grams) => sum + grams, 0);
}
