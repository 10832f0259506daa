import { recipeNames } from "../find-recipe.ts";
import type { Library } from "../library.ts";
import type { Neighbor, ProcessTable, ProcessTables } from "../process-table.ts";
import type { Recipe } from "../recipe.ts";
import type { Food } from "./foods.ts";
import { readSaidFood, type SaidFood } from "./said-food.ts";
import { neighborOf, neighborSaid, producedFoods, testedFor } from "./tested-foods.ts";

/** What recipes call themselves, and which come closest to a food that none was tested for. */

/** Forms with names of their own: nobody who says peaches means the jam. */
const PRODUCTS = ["jam", "jelly", "butter", "sauce", "salsa", "relish", "juice", "stock"];

/** The tested tables of a recipe's processes. */
export function tablesOf(recipe: Recipe, { tables }: ProcessTables): ProcessTable[] {
  return recipe.processes.flatMap(({ table }) => tables[table] ?? []);
}

/** A title's words before "in" or "without" something. */
export function titleWords(title: string): string {
  return title.split(/\b(?:in|with|without|packed|from)\b/i)[0] ?? "";
}

type Called = { all: SaidFood; title: SaidFood };

const called = new WeakMap<Recipe, Called>();

/** What a recipe calls itself, in all its names and in its title alone. */
export function callsItself(recipe: Recipe): Called {
  const known = called.get(recipe);
  if (known) return known;
  const found = {
    all: readSaidFood(recipeNames(recipe).join(", ")),
    title: readSaidFood(titleWords(recipe.title)),
  };
  called.set(recipe, found);
  return found;
}

/** True where the recipe is made in all of these forms, by any of its names. */
export function hasForms(recipe: Recipe, forms: ReadonlySet<string>): boolean {
  const own = callsItself(recipe).all.forms;
  return [...forms].every((form) => own.has(form));
}

/** Foods the recipe cannot be made without, besides those it is named for. */
export function needsBeside(recipe: Recipe): Food[] {
  const { main } = producedFoods(recipe);
  const needed = recipe.ingredients.filter((one) => one.role === "produce" && !one.optional);
  const foods = producedFoods({ ...recipe, ingredients: needed }).all;
  return foods.filter((food) => !main.includes(food));
}

/**
 * True where a food is what the recipe is made of, not what it merely contains: beets, not onions.
 */
export function isMain(recipe: Recipe, food: Food): boolean {
  const { main, all } = producedFoods(recipe);
  return main.includes(food) || !all.includes(food);
}

/** True for a recipe that saves seed and preserves no food. */
export function isSeed(recipe: Recipe): boolean {
  return recipe.class === "seed";
}

/** True for what is named for its form: a jam, a sauce. */
export function isProduct(recipe: Recipe): boolean {
  return PRODUCTS.some((form) => callsItself(recipe).title.forms.has(form));
}

/** How near a recipe is to an untested food: it mentions the food, has its form, shares words. */
function nearness(recipe: Recipe, tables: ProcessTables, food: Food, said: SaidFood): number {
  const own = tablesOf(recipe, tables);
  const spoken = own.filter((table) => neighborOf(table, food)).length / (own.length || 1);
  const form = said.forms.size > 0 && hasForms(recipe, said.forms) ? 2 : 0;
  const names = new Set(callsItself(recipe).all.words);
  const shared = said.words.filter((word) => names.has(word)).length;
  const { main } = producedFoods(recipe);
  const berry = main.some(({ name }) => name === "berry") && food.name.endsWith("berry");
  const named = main.some(({ name }) => food.name.includes(name));
  const kin = berry || named ? 1 : main.some(({ kind }) => kind === food.kind) ? 0.25 : 0;
  return spoken + form + shared / 2 + (spoken + form + shared > 0 ? kin : 0);
}

const nearOf = ({ near }: { near: number }) => near;

/** Recipes of tested food that lie near an untested one, the nearest first. */
export function nearTo(library: Library, food: Food, said: SaidFood): Recipe[] {
  return [...library.recipes.values()]
    .filter((recipe) => !isSeed(recipe) && recipe.processes.length > 0)
    .map((recipe) => ({ recipe, near: nearness(recipe, library.tables, food, said) }))
    .filter(({ near }, _, all) => near >= 0.75 && near >= 0.8 * Math.max(...all.map(nearOf)))
    .sort((a, b) => b.near - a.near)
    .map(({ recipe }) => recipe);
}

/** Ids of the recipes that were tested for a food and are made of it, in whatever form. */
export function insteadOf(library: Library, food: Food): string[] {
  return [...library.recipes.values()]
    .filter((one) => !isSeed(one) && testedFor(one, library.tables, food) && isMain(one, food))
    .map(({ id }) => id);
}

/** The reason most specific to the food, from the first recipes that have one. */
export function reasonAgainst(
  groups: readonly (readonly Recipe[])[],
  tables: ProcessTables,
  food: Food,
  said: string,
): Neighbor | undefined {
  for (const recipes of groups) {
    const found = recipes
      .flatMap((recipe) => tablesOf(recipe, tables))
      .flatMap((table) => neighborOf(table, food) ?? neighborSaid(table, said) ?? []);
    found.sort((a, b) => a.foods.length - b.foods.length);
    if (found[0]) return found[0];
  }
  return undefined;
}
