import type { Neighbor, ProcessTable, ProcessTables } from "../process-table.ts";
import type { ProcessOption, Recipe } from "../recipe.ts";
import { type Food, isLowAcid, isNoFood } from "./foods.ts";
import { foodsNamed } from "./name-foods.ts";

/** True where one of the words begins a word of the text, whatever its case. */
export function saidIn(text: string, words: readonly string[]): boolean {
  return words.some((word) => new RegExp(`\\b${word}`, "i").test(text));
}

/** The table's reason against a food, by the food's own name. */
export function neighborOf(table: ProcessTable, { name }: Food): Neighbor | undefined {
  return table.notOf.find(({ foods }) => foods.includes(name));
}

/** The table's reason against what a text says about a tested food: dried, creamed, ground. */
export function neighborSaid(table: ProcessTable, text: string): Neighbor | undefined {
  return table.notOf.find(({ words }) => saidIn(text, words));
}

/**
 * Whether a process was tested for a food: by its name, or by a kind that the table names. A kind
 * excludes near neighbors and, for an acid food, anything that may pass pH 4.6.
 */
export function wasTested(table: ProcessTable, food: Food): boolean {
  if (table.of.includes(food.name)) return true;
  if (neighborOf(table, food)) return false;
  const byKind = table.of.includes(food.kind);
  return byKind && (table.classes.includes("low-acid") || !isLowAcid(food));
}

type Produced = { main: readonly Food[]; all: readonly Food[] };

const produced = new WeakMap<Recipe, Produced>();

/** The foods in the produce a recipe names first, and in all the produce it names. */
export function producedFoods(recipe: Recipe): Produced {
  const known = produced.get(recipe);
  if (known) return known;
  const found = readProduced(recipe);
  produced.set(recipe, found);
  return found;
}

function readProduced(recipe: Recipe): Produced {
  const named = recipe.ingredients
    .filter(({ role }) => role === "produce")
    .map((one) => foodsNamed(one.name).filter((food) => !isNoFood(food)));
  const all = [...new Set(named.flat())];
  const first = named.find((foods) => foods.length > 0) ?? [];
  // A plant's seed goes by the plant's name, its pods do not.
  return first.length > 0 ? { main: first, all } : { main: foodsNamed(recipe.title), all };
}

/** Whether a recipe's own foods include it; `berries` stands for each berry that a table names. */
function stand(own: readonly Food[], food: Food): boolean {
  if (own.includes(food)) return true;
  if (food.kind === "broth") return own.some(({ kind }) => kind === "bone");
  if (food.name === "tomato juice") return own.some(({ name }) => name === "tomato");
  return own.some(({ name }) => name === "berry") && /(?:berry|currant)$/.test(food.name);
}

/**
 * The processes of a recipe that were tested for a food: its table names the food, and so does
 * the recipe, where the table serves several recipes. A table with a formula is one recipe's.
 */
export function optionsFor(recipe: Recipe, tables: ProcessTables, food: Food): ProcessOption[] {
  const own = producedFoods(recipe).all;
  return recipe.processes.filter((option) => {
    const table = tables.tables[option.table];
    if (!table) return false;
    const broth = food.kind === "broth" && table.of.includes("bone");
    return (broth || wasTested(table, food)) && (!!table.formula || stand(own, food));
  });
}

/** Whether a recipe was tested for a food; one without a process takes what it is named for. */
export function testedFor(recipe: Recipe, tables: ProcessTables, food: Food): boolean {
  if (recipe.processes.length > 0) return optionsFor(recipe, tables, food).length > 0;
  const { main, all } = producedFoods(recipe);
  return main.includes(food) || all.includes(food);
}
