import { findRecipe, recipeNames } from "../../recipe/find-recipe.ts";
import type { Library } from "../../recipe/library.ts";
import type { GaugeKind, Recipe } from "../../recipe/recipe.ts";
import type { Units } from "../../reckon/metric-words.ts";
import { quoted } from "../../reckon/quantity.ts";
import type { Result } from "../../reckon/result.ts";
import { fail, ok } from "../../reckon/result.ts";
import type { CannerHolds } from "../call/kitchen-options.ts";
import { nearestName } from "../call/nearest.ts";

/** What the commands about recipes need from outside. */
export type RecipeIo = {
  /** All recipes; with `only` an id, the others may be missing. */
  library(only?: string): Promise<Library> | Library;
  /** The text of a file; at most one byte more than `mostBytes` is read. May throw. */
  readFile(path: string, mostBytes?: number): Promise<string> | string;
  /** The recorded kitchen; reading it takes a journal, so only where a call does not say enough. */
  kitchen(): Promise<KeptKitchen> | KeptKitchen;
};

/** What in the recorded kitchen decides a process; empty where there is none. */
export type KeptKitchen = {
  altitudeFt?: number;
  /** How far that altitude may be off, feet. */
  altitudeUncertaintyFt?: number;
  gauge?: GaugeKind;
  cannerHolds?: CannerHolds;
  units?: Units;
};

/** The recipe with an id or name, or an error line that names the nearest. */
export function recipeNamed(library: Library, said: string): Result<Recipe> {
  const recipes = [...library.recipes.values()];
  const found = findRecipe(recipes, said);
  if (found) return ok(found);
  const fault = library.problems.find((problem) => problem.startsWith(`${said.trim()}.y`));
  if (fault) return fail(`${quoted(said)} cannot be used: ${fault}`);
  const byName = new Map(
    recipes.flatMap((r) => recipeNames(r).map((name) => [name, r.id] as const)),
  );
  const nearest = nearestName(said.trim().toLowerCase(), byName.keys());
  const mend = nearest
    ? `did you mean ${byName.get(nearest)}?`
    : "brinebell recipes lists them all";
  return fail(`no recipe is called ${quoted(said)}; ${mend}`);
}
