import { readdirSync, readFileSync } from "node:fs";
import { parseLibraryFile } from "../../src/kitchen/read-library.ts";
import { type Library, libraryOf } from "../../src/recipe/library.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";

const FOLDER = new URL("../../recipes/", import.meta.url);

/** The text of a file of the recipes folder. */
export function recipeFile(name: string): string {
  return readFileSync(new URL(name, FOLDER), "utf8");
}

/** The library as the recipes folder holds it. */
export function wholeLibrary(): Library {
  const names = readdirSync(FOLDER).filter((name) => name.endsWith(".yaml"));
  return libraryOf(names.map((name) => parseLibraryFile(name, recipeFile(name))));
}

/** A recipe of the library; throws where there is none. */
export function recipeOf(library: Library, id: string): Recipe {
  const recipe = library.recipes.get(id);
  if (!recipe) throw new Error(`no recipe ${id}: ${library.problems.join("; ")}`);
  return recipe;
}
