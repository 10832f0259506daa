import { KINDS } from "../../src/kitchen/stages/kinds.ts";
import { checkRecipe } from "../../src/recipe/check-recipe.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import type { Finding } from "../../src/recipe/rules/finding.ts";
import { recipeFile, wholeLibrary } from "./library-files.ts";

export const library = wholeLibrary();

export type Change = [from: string | RegExp, to: string];

/** What the check finds in a recipe of the library after changes to its text. */
export function found(id: string, ...changes: Change[]): Finding[] {
  let text = recipeFile(`${id}.yaml`);
  for (const [from, to] of changes) {
    const after = text.replace(from, to);
    if (after === text) throw new Error(`${id} has no ${from}`);
    text = after;
  }
  const read = readRecipe(text, `${id}.yaml`, KINDS);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return checkRecipe(read.recipe, library.tables, KINDS, read.lines);
}

/** The rules of the findings of one severity. */
export function rules(findings: Finding[], severity: Finding["severity"] = "danger"): string[] {
  return findings.filter((f) => f.severity === severity).map((f) => f.rule);
}

/** One more ingredient, as `name, amount` in a role. */
export function added(name: string, amount: string, role = "other", more = ""): Change {
  const line = `  - {id: more, name: "${name}", amount: ${amount}, role: ${role}${more}}`;
  return ["ingredients:\n", `ingredients:\n${line}\n`];
}
