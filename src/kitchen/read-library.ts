import { checkRecipe } from "../recipe/check-recipe.ts";
import { type DangerOf, type ParsedFile, TABLES_FILE } from "../recipe/library.ts";
import { readRecipe } from "../recipe/read-recipe.ts";
import { readTables } from "../recipe/read-tables.ts";
import { problemLine } from "../recipe/read-yaml.ts";
import { KINDS } from "./stages/kinds.ts";

/**
 * Parses one file of the recipes folder: the tables by their name, anything else as a recipe.
 * The result is plain data, so it may be kept as JSON under a digest of the text.
 */
export function parseLibraryFile(name: string, text: string): ParsedFile {
  if (name === TABLES_FILE) {
    const read = readTables(text, name);
    if (read.ok) return { name, tables: read.tables, problems: [] };
    return { name, problems: read.problems.map(problemLine) };
  }
  const read = readRecipe(text, name, KINDS);
  if (read.ok) return { name, recipe: read.recipe, problems: [] };
  return { name, problems: read.problems.map(problemLine) };
}

/** The first danger the safety check finds, and how many more there are. */
export const shelfDanger: DangerOf = (recipe, tables) => {
  const dangers = checkRecipe(recipe, tables, KINDS).filter((found) => found.severity === "danger");
  const [first, ...more] = dangers;
  if (!first) return undefined;
  return more.length === 0 ? first.message : `${first.message}; and ${more.length} more`;
};
