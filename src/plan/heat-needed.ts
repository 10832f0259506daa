/** The heat a pot of a recipe takes up before it boils, for learning what a burner is worth. */
import { parseAmount } from "../recipe/amount.ts";
import type { Ingredient, Recipe, Stage } from "../recipe/recipe.ts";
import { boilingPointF } from "../reckon/boiling.ts";
import { heatCapacityJPerK } from "../reckon/heat-up.ts";
import { gramsOf } from "../reckon/measure.ts";
import { celsiusOf } from "../reckon/units.ts";

/** Temperature of tap water and of vinegar from the shelf, °C, where nobody measured. */
const USUAL_START_C = 18;
/** Steel in a pot for each gram in it, as in the heat-up estimate. */
const POT_SHARE = 0.2;
/** A gram of dissolved sugar takes as much heat as this many grams of water. */
const SUGAR_AS_WATER = 0.3;

export type ScaledPot = {
  /** How many times the recipe's own amounts are in the pot. */
  factor: number;
  altitudeFt: number;
  /** Temperature the pot began at, °C. */
  fromC?: number;
};

/** Grams of water that take as much heat as an ingredient; spices and salt do not count. */
function asWaterG(ingredient: Ingredient): number {
  const amount = parseAmount(ingredient.amount ?? "");
  if (!amount || amount.kind === "count") return 0;
  const { role } = ingredient;
  const quantity = ((amount.low + amount.high) / 2) * amount.perUnit;
  if (role === "sugar") {
    const grams = amount.kind === "mass" ? quantity : gramsOf(quantity, "sugar");
    return SUGAR_AS_WATER * (grams ?? quantity);
  }
  return role === "water" || role === "acid" ? quantity : 0;
}

/**
 * Joules from the pot's start to its boil; undefined where the recipe does not say what is in the
 * pot, or it was hot before.
 */
export function joulesToBoil(recipe: Recipe, stage: Stage, pot: ScaledPot): number | undefined {
  if (stage.heat?.until !== "boil" || !stage.pot) return undefined;
  const first = recipe.stages.find((one) => one.heat && one.pot === stage.pot);
  if (first?.id !== stage.id) return undefined;
  const waterG = recipe.ingredients
    .filter((one) => one.into === stage.pot)
    .reduce((sum, one) => sum + asWaterG(one), 0);
  if (waterG <= 0) return undefined;
  const factor = recipe.scaling === "one-batch" ? Math.min(1, pot.factor) : pot.factor;
  const grams = waterG * factor;
  const rise = celsiusOf(boilingPointF(pot.altitudeFt)) - (pot.fromC ?? USUAL_START_C);
  return heatCapacityJPerK({ waterG: grams, potG: grams * POT_SHARE }) * Math.max(1, rise);
}
