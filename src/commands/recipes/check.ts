import { KINDS } from "../../kitchen/stages/kinds.ts";
import { checkRecipe, passes } from "../../recipe/check-recipe.ts";
import { findRecipe } from "../../recipe/find-recipe.ts";
import type { Library } from "../../recipe/library.ts";
import { MOST_RECIPE_BYTES, TABLES_FILE } from "../../recipe/library.ts";
import type { FileProblem } from "../../recipe/read-yaml.ts";
import type { Finding } from "../../recipe/rules/finding.ts";
import { quoted } from "../../reckon/quantity.ts";
import { CALLS } from "../call/calls.ts";
import type { CommandResult } from "../call/command-result.ts";
import { failed } from "../call/command-result.ts";
import { isOn, parseOptions } from "../call/options.ts";
import { type RecipeIo, recipeNamed } from "./recipe-io.ts";

type Checked = { file: string; ok: boolean; findings: Finding[] };

/** Whether a word names a file rather than a recipe. */
function looksLikeFile(word: string): boolean {
  return word === "-" || /[/\\]/.test(word) || /\.ya?ml$/i.test(word);
}

/** A file that is not a valid recipe, as findings: each problem with its line. */
function formFindings(problems: readonly FileProblem[]): Finding[] {
  return problems.map(({ line, message }) => ({
    rule: "recipe-form",
    severity: "danger",
    where: `line ${line}`,
    message,
    source: "the form of a recipe file",
  }));
}

function checkedOf(file: string, findings: Finding[]): Checked {
  return { file, ok: passes(findings), findings };
}

async function checkText(file: string, text: string, library: Library): Promise<Checked> {
  if (file.replace(/^.*[/\\]/, "") === TABLES_FILE) {
    const { readTables } = await import("../../recipe/read-tables.ts");
    const read = readTables(text, file);
    return checkedOf(file, read.ok ? [] : formFindings(read.problems));
  }
  const { readRecipe } = await import("../../recipe/read-recipe.ts");
  const read = readRecipe(text, file, KINDS);
  if (!read.ok) return checkedOf(file, formFindings(read.problems));
  return checkedOf(file, checkRecipe(read.recipe, library.tables, KINDS, read.lines));
}

async function checkWord(
  word: string,
  library: Library,
  io: RecipeIo,
): Promise<Checked | CommandResult> {
  const known = looksLikeFile(word) ? undefined : findRecipe(library.recipes.values(), word);
  if (known) return checkedOf(word, checkRecipe(known, library.tables, KINDS));
  let text: string;
  try {
    text = await io.readFile(word, MOST_RECIPE_BYTES);
  } catch (error) {
    if (!looksLikeFile(word)) {
      const named = recipeNamed(library, word);
      return failed(2, `check: ${named.ok ? quoted(word) : named.error}`);
    }
    const reason = error instanceof Error ? error.message : String(error);
    return failed(3, `check: ${quoted(word)} cannot be read (${reason}); check the path`);
  }
  return checkText(word, text, library);
}

/** One file's findings as lines: what, where, why, and who says so. */
function checkedText({ file, ok, findings }: Checked): string {
  const head = `${file}: ${ok ? "passes" : "danger"}`;
  const lines = findings.map(
    ({ severity, rule, where, message, source }) =>
      `  ${severity} ${rule} at ${where}: ${message} [${source}]`,
  );
  return [head, ...lines, ""].join("\n");
}

/**
 * `brinebell check FILE-OR-ID...`: the safety check of recipe files, or of recipes of the library.
 * Codes: 0 no danger found, 1 danger, 2 wrong usage, 3 a file cannot be read.
 */
export async function checkCommand(args: string[], io: RecipeIo): Promise<CommandResult> {
  const options = parseOptions(args, CALLS.check.options);
  if (!options.ok) return failed(2, `check: ${options.error}`);
  const { words } = options.value;
  if (words.length === 0) return failed(2, "check: name a recipe or a file to check");
  const library = await io.library();
  const all: Checked[] = [];
  for (const word of words) {
    const one = await checkWord(word, library, io);
    if ("code" in one) return one;
    all.push(one);
  }
  const json = isOn(options.value, "json");
  const stdout = json ? `${JSON.stringify(all)}\n` : all.map(checkedText).join("");
  const code = all.every((one) => one.ok) ? 0 : 1;
  return { code, stdout, stderr: "", ...(json ? { forPrograms: true } : {}) };
}
