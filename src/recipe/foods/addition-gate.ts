import { type ProcessTables, sourceLine } from "../process-table.ts";
import type { FoodClass, Ingredient, Recipe } from "../recipe.ts";
import { isAlkali, isFat, isLime, isThickener } from "../rules/additions.ts";
import { isSeasoningFood, SEASONED } from "../rules/produce-weight.ts";
import { type Food, isLowAcid } from "./foods.ts";
import { foodsNamed } from "./name-foods.ts";
import { tablesOf } from "./near-recipes.ts";
import { readSaidFood } from "./said-food.ts";
import { neighborOf, testedFor } from "./tested-foods.ts";

/**
 * Something a person says they added (`I put a banana in`), checked against the recipe: part of it,
 * a seasoning, or a change to what was tested.
 */
type AdditionGate =
  /** In the recipe already, by the ingredient's id; more of it than written is still a change. */
  | { is: "in-recipe"; said: string; ingredient: string }
  /** A spice, an herb, a clove of garlic: it does not change what was tested. */
  | { is: "seasoning"; said: string }
  /** Not what was tested: the jars are refrigerator food. `food` is absent for starch and fat. */
  | { is: "changes"; said: string; food?: Food; why: string; source: string }
  /** Names no known food: it has to be asked about, never ignored. */
  | { is: "unknown"; said: string };

/** Salt, sugar and acid: the rules that measure them judge how much there is. */
const MEASURED =
  /\b(?:vinegar|lemon juice|lime juice|citric acid|salt|sugar|honey|pectin|spices?)\b/i;
const WATER = /\b(?:water|ice)\b/i;
const ACIDIFIED: readonly FoodClass[] = ["acidified", "tomato", "ferment"];

const PRINCIPLES = "USDA Complete Guide to Home Canning, Guide 1";

/** Why starch, fat, lime and soda change a jar; undefined for anything else. */
function additive(one: Ingredient): string | undefined {
  if (isThickener(one)) return "Starch and flour slow the heat on its way into the jar.";
  if (isFat(one)) return "Fat slows the heat and keeps the acid from the food.";
  if (isAlkali(one)) return "Soda takes away the acid that keeps the jar safe.";
  if (isLime(one)) return "Lime takes away acid, unless a tested recipe soaks in it and rinses.";
  return undefined;
}

function untestedWith(recipe: Recipe, tables: ProcessTables, food: Food): string {
  const own = tablesOf(recipe, tables);
  const said = own.map((table) => neighborOf(table, food)).find((found) => found !== undefined);
  if (said) return said.why;
  const acid = isLowAcid(food) ? " It counts as low in acid." : "";
  const tested = own[0] ? ` The time was tested for ${own[0].food}, without it.` : "";
  return `There is no ${food.name} in this recipe.${tested}${acid}`;
}

/** Why starch, fat, lime or soda named in the words changes a recipe that has none of its sort. */
function strangeAdditive(recipe: Recipe, said: string): string | undefined {
  const why = additive({ id: "said", name: said, role: "other" });
  const own = recipe.ingredients.filter((one) => one.role !== "produce");
  return why && !own.some((one) => additive(one) === why) ? why : undefined;
}

/** Whether the words name starch, fat, lime or soda that the recipe does not have. */
export function isAdditive(recipe: Recipe, said: string): boolean {
  return strangeAdditive(recipe, said) !== undefined;
}

/**
 * Checks something said to be added against a recipe and its tables. Of several things the worst
 * counts: a change before an unknown, an unknown before what belongs in it.
 */
export function gateAddition(recipe: Recipe, tables: ProcessTables, said: string): AdditionGate {
  const why = strangeAdditive(recipe, said);
  if (why) return { is: "changes", said, why, source: PRINCIPLES };
  const { mentions, foodlike } = readSaidFood(said);
  const stranger = mentions.find(({ food }) => !belongs(recipe, tables, food, said));
  if (stranger) {
    const { food } = stranger;
    const [table] = tablesOf(recipe, tables);
    const source = table ? sourceLine(table.source) : PRINCIPLES;
    return { is: "changes", said, food, why: untestedWith(recipe, tables, food), source };
  }
  if (foodlike.length > 0) return { is: "unknown", said };
  const first = mentions[0]?.food;
  if (first) return placed(recipe, first, said);
  if (MEASURED.test(said) || foodsNamed(said).some(({ kind }) => kind !== "water")) {
    return { is: "seasoning", said };
  }
  if (!WATER.test(said)) return { is: "unknown", said };
  return watered(recipe, said);
}

/** Whether it is in the recipe, or allowed by its tables. */
export function isOwnFood(recipe: Recipe, tables: ProcessTables, food: Food): boolean {
  const named = recipe.ingredients.some((one) => foodsNamed(one.name).includes(food));
  return named || testedFor(recipe, tables, food);
}

/** Whether it is in the recipe, allowed by its tables, or a clove where tested recipes use one. */
export function belongs(recipe: Recipe, tables: ProcessTables, food: Food, said = ""): boolean {
  return isOwnFood(recipe, tables, food) || mayBeSeasoned(recipe, food, said);
}

/** More than seasons a jar. */
const IN_BULK = /\b(?:heads?|bulbs?|cups?|pounds?)\b/i;

function mayBeSeasoned(recipe: Recipe, food: Food, said = ""): boolean {
  return isSeasoningFood(food) && !IN_BULK.test(said) && SEASONED.includes(recipe.class);
}

function placed(recipe: Recipe, food: Food, said: string): AdditionGate {
  const one = recipe.ingredients.find(({ name }) => foodsNamed(name).includes(food));
  if (one) return { is: "in-recipe", said, ingredient: one.id };
  if (mayBeSeasoned(recipe, food)) return { is: "seasoning", said };
  const main = recipe.ingredients.find(({ role }) => role === "produce");
  return { is: "in-recipe", said, ingredient: main?.id ?? recipe.id };
}

/** Added water thins acid where there is some; elsewhere it only covers what is in the jar. */
function watered(recipe: Recipe, said: string): AdditionGate {
  const water = recipe.ingredients.find(({ role }) => role === "water");
  if (water) return { is: "in-recipe", said, ingredient: water.id };
  if (!ACIDIFIED.includes(recipe.class)) return { is: "seasoning", said };
  const why = "Water thins the acid, and this recipe was tested without it.";
  return { is: "changes", said, why, source: PRINCIPLES };
}
