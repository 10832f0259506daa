import { gramsOf } from "../reckon/measure.ts";
import { ML_PER_CUP } from "../reckon/units.ts";
import { type Amount, parseAmount } from "./amount.ts";
import { PIECE_GRAMS } from "./foods/foods.ts";
import { foodsNamed } from "./foods/name-foods.ts";
import type { Ingredient, Recipe } from "./recipe.ts";

/** Which end of a range is meant: the one that makes the recipe look worse. */
type End = "low" | "high";

/** An ingredient written by the jar goes into every jar of the yield. */
function batchAmount(
  recipe: Recipe,
  one: Ingredient,
): { amount: Amount; times: number } | undefined {
  const whole = one.amount === undefined ? undefined : parseAmount(one.amount);
  if (whole) return { amount: whole, times: 1 };
  const { jars } = recipe.yield;
  const written = jars && one.perJar?.[jars.size];
  const amount = written ? parseAmount(written) : undefined;
  return amount && jars ? { amount, times: jars.count } : undefined;
}

/**
 * Cups of a liquid in the whole batch, by its weight where it is weighed. Undefined where nobody
 * can tell: bottles, or an amount for a jar other than the yield's.
 */
export function cupsInBatch(recipe: Recipe, one: Ingredient, end: End): number | undefined {
  const found = batchAmount(recipe, one);
  if (!found || found.amount.kind === "count") return undefined;
  const quantity = found.amount[end] * found.amount.perUnit * found.times;
  if (found.amount.kind === "volume") return quantity / ML_PER_CUP;
  return quantity / (gramsOf(ML_PER_CUP, one.name) ?? ML_PER_CUP);
}

/**
 * Grams in the whole batch: weights as written, measures by household weights, else as heavy as
 * water. Undefined for pieces whose weight is not published.
 */
export function gramsInBatch(recipe: Recipe, one: Ingredient, end: End): number | undefined {
  const found = batchAmount(recipe, one);
  if (!found) return undefined;
  const quantity = found.amount[end] * found.amount.perUnit * found.times;
  if (found.amount.kind === "mass") return quantity;
  if (found.amount.kind === "volume") return gramsOf(quantity, one.name) ?? quantity;
  const weights = foodsNamed(one.name).map((food) => PIECE_GRAMS[food.name]);
  return weights.every((grams) => grams !== undefined) && weights.length > 0
    ? quantity * Math.max(...weights)
    : undefined;
}
