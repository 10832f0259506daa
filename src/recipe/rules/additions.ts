import { withoutDenied } from "../foods/name-foods.ts";
import type { Ingredient } from "../recipe.ts";

/*
 * What goes into a jar and is not its food, known by its name: each has a rule of its own.
 */

/** Flour, starch, and the grains and noodles that release it. */
const THICKENERS = [
  "flour cornflour roux starch cornstarch arrowroot tapioca masa semolina farina xanthan guar",
  "rice barley oats quinoa couscous bulgur millet polenta cornmeal grits pasta macaroni noodles?",
  "dumplings? bread breadcrumbs? crackers? tortillas? gelatine? gelatin agar psyllium chia",
];
const THICKENING = new RegExp(`\\b(${THICKENERS.join(" ").replaceAll(" ", "|")})\\b`, "i");
const FATS = [
  "oil lard shortening ghee margarine tallow suet schmaltz mayonnaise bacon",
  "butter(?!\\W?(?:beans?|nuts?|lettuce)) cream(?!\\W?(?:of\\Wtartar|style|corn))",
];
const FAT = new RegExp(`\\b(${FATS.join(" ").replaceAll(" ", "|")})\\b`, "i");
const LIMES = [
  "(pickling|hydrated|slaked) lime|calcium hydroxide|cal",
  "lime\\b.*\\b(grade|crisp\\w*|powder)",
];
const LIME_NAME = new RegExp(`\\b(${LIMES.join("|")})\\b`, "i");
const ALKALI = /\b(baking soda|bicarbonate|washing soda|lye|sodium hydroxide|potash)\b/i;

const CANNING_POWDER = /\b(aspirins?|(acetyl)?salicylic( acid)?|(canning|preserving) powder)\b/i;

export function isThickener(one: Ingredient): boolean {
  if (one.role === "thickener") return true;
  return one.role !== "acid" && THICKENING.test(withoutDenied(one.name));
}

export function isFat(one: Ingredient): boolean {
  return one.role === "fat" || FAT.test(withoutDenied(one.name));
}

export function isLime(one: Ingredient): boolean {
  return one.role === "lime" || LIME_NAME.test(one.name);
}

export function isAlkali(one: Ingredient): boolean {
  return ALKALI.test(withoutDenied(one.name));
}

/** True for what is judged as an addition, not by the food in its name: olive oil, rice flour. */
export function isAddition(one: Ingredient): boolean {
  return isThickener(one) || isFat(one) || isLime(one) || isAlkali(one);
}

/** Aspirin and salicylic acid under any name: a preservative that preserves nothing. */
export function isCanningPowder(one: Ingredient): boolean {
  return CANNING_POWDER.test(withoutDenied(one.name));
}
