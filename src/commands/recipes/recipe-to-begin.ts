import { gateBegin } from "../../recipe/foods/food-gate.ts";
import { untestedWords } from "../../recipe/foods/gate-words.ts";
import type { Library } from "../../recipe/library.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { recipeNamed } from "./recipe-io.ts";

/**
 * The recipe that a call is to begin, by its id or name. The name of a food that nothing was tested
 * for is refused (code 1) with the closest that was tested; any other unknown name is wrong usage
 * (code 2).
 */
export function recipeToBegin(
  library: Library,
  said: string,
): { ok: true; recipe: Recipe } | { ok: false; code: 1 | 2; error: string } {
  const found = recipeNamed(library, said);
  if (found.ok) return { ok: true, recipe: found.value };
  const gate = gateBegin(library, said);
  if (gate.is === "untested") return { ok: false, code: 1, error: untestedWords(library, gate) };
  return { ok: false, code: 2, error: found.error };
}
