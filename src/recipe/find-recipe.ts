import type { Recipe } from "./recipe.ts";

/** A name without case, punctuation and plural: `Bread-and-Butters` is `bread and butter`. */
function key(name: string): string {
  return name
    .toLowerCase()
    .replace(/&/g, " and ")
    .replace(/[^a-z0-9]+/g, " ")
    .trim()
    .split(" ")
    .map((word) => (/[^su]s$/.test(word) ? word.slice(0, -1) : word))
    .join(" ");
}

/** Everything a recipe is called: its id, its title, its everyday names. */
export function recipeNames(recipe: Recipe): string[] {
  return [recipe.id, recipe.title.toLowerCase(), ...recipe.names];
}

/**
 * The recipe with an id or name, whatever its case, hyphens or plural; undefined where no recipe,
 * or more than one, has it.
 */
export function findRecipe(recipes: Iterable<Recipe>, said: string): Recipe | undefined {
  const wanted = key(said);
  if (wanted === "") return undefined;
  const all = [...recipes];
  const byId = all.find((recipe) => recipe.id === said.trim() || key(recipe.id) === wanted);
  if (byId) return byId;
  const found = all.filter((recipe) => recipeNames(recipe).some((name) => key(name) === wanted));
  return found.length === 1 ? found[0] : undefined;
}
