import { chooseProcess, processOptions } from "./choose-process.ts";
import type { ProcessTables } from "./process-table.ts";
import type { Recipe } from "./recipe.ts";

/** Every recipe the kitchen knows, with the tested tables, as one value. */
export type Library = {
  recipes: ReadonlyMap<string, Recipe>;
  tables: ProcessTables;
  /** What could not be read or does not fit together, one line each. */
  problems: string[];
};

/** One file of the recipes folder as read: plain data that may be kept as JSON. */
export type ParsedFile = {
  name: string;
  recipe?: Recipe;
  tables?: ProcessTables;
  /** Each `file:line: what is wrong`. */
  problems: string[];
  /** True for a file the build did not see, so that nobody has checked its recipe yet. */
  unchecked?: boolean;
};

/** The danger the safety check finds in a recipe; undefined where it finds none. */
export type DangerOf = (recipe: Recipe, tables: ProcessTables) => string | undefined;

/** The most bytes a recipe may have; no real one comes near it. */
export const MOST_RECIPE_BYTES = 200_000;

/** Name of the file that holds the tested tables. */
export const TABLES_FILE = "tables.yaml";

const NO_TABLES: ProcessTables = {
  tables: {},
  schedules: {},
  formulas: {},
  topFt: { bands: 0, dial: 0, weighted: 0 },
};

/** Options of a recipe that no tested table covers, one line each. */
function unanswered(name: string, recipe: Recipe, tables: ProcessTables): string[] {
  if (!recipe.tested) return [];
  return recipe.processes.flatMap(({ method, pack, table }) => {
    const gauge = method === "pressure" ? "dial" : undefined;
    const wish = { altitudeFt: 0, method, pack, gauge } as const;
    if (!tables.tables[table]) return [`${name}: no tested table is called ${table}`];
    const choice = chooseProcess(recipe, tables, wish);
    return choice.ok ? [] : [`${name}: ${choice.reason}`];
  });
}

/** A recipe as it may be used: one with a danger in it no longer counts as tested. */
function heldToCheck(recipe: Recipe, tables: ProcessTables, dangerOf: DangerOf): Recipe {
  const heldBack = recipe.tested ? dangerOf(recipe, tables) : undefined;
  return heldBack === undefined ? recipe : { ...recipe, tested: false, heldBack };
}

/**
 * Puts parsed files together. A recipe whose id is taken, or whose tables are missing, is left out
 * and named in `problems`; the others are usable. What the build did not check is checked by
 * `dangerOf`, and a recipe with a danger is a refrigerator food.
 */
export function libraryOf(files: readonly ParsedFile[], dangerOf?: DangerOf): Library {
  const recipes = new Map<string, Recipe>();
  const problems = files.flatMap((file) => file.problems);
  const tables = files.find((file) => file.tables)?.tables;
  if (!tables) problems.push(`${TABLES_FILE}: the tested process tables are missing`);
  const usable = tables ?? NO_TABLES;
  for (const { name, recipe: written, unchecked } of files) {
    if (!written) continue;
    const recipe = unchecked && dangerOf ? heldToCheck(written, usable, dangerOf) : written;
    const faults = unanswered(name, recipe, usable);
    if (recipes.has(recipe.id)) faults.push(`${name}: the id ${recipe.id} is another file's`);
    problems.push(...faults);
    if (faults.length === 0) recipes.set(recipe.id, recipe);
  }
  const sorted = [...recipes].sort(([a], [b]) => (a < b ? -1 : 1));
  return { recipes: new Map(sorted), tables: usable, problems };
}

/** The methods a recipe can be kept by, the first its default. */
export function methodsOf(recipe: Recipe): string[] {
  return [...new Set([...processOptions(recipe).map((o) => o.method), recipe.keptAs])];
}
