import { processOptions } from "../../recipe/choose-process.ts";
import type { Library } from "../../recipe/library.ts";
import { methodsOf } from "../../recipe/library.ts";
import { sourceLine } from "../../recipe/process-table.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { wordsIn } from "../../reckon/metric-words.ts";
import { quoted } from "../../reckon/quantity.ts";
import { CALLS } from "../call/calls.ts";
import type { CommandResult } from "../call/command-result.ts";
import { failed } from "../call/command-result.ts";
import { readKitchenOptions } from "../call/kitchen-options.ts";
import { isOn, parseOptions } from "../call/options.ts";
import { type RecipeIo, recipeNamed } from "./recipe-io.ts";
import { recipeText } from "./recipe-text.ts";
import { type WorkedOut, workOut } from "./work-out-recipe.ts";

function listed(recipe: Recipe) {
  const { id, title, names, tested } = recipe;
  return {
    id,
    title,
    names,
    class: recipe.class,
    methods: methodsOf(recipe),
    packs: [...new Set(processOptions(recipe).map((p) => p.pack))],
    jars: recipe.jars,
    tested,
    source: sourceLine(recipe.source),
  };
}

function listText(library: Library): string {
  const rows = [...library.recipes.values()].map(listed);
  const wide = Math.max(...rows.map((row) => row.id.length), 0);
  const lines = rows.map((row) => {
    const jars = row.jars.length > 0 ? `; ${row.jars.join(", ")}` : "";
    return `${row.id.padEnd(wide)}  ${row.title}: ${row.methods[0]}${jars}`;
  });
  return `${lines.join("\n")}\n`;
}

function showJson(worked: WorkedOut): string {
  const { recipe, refused: _refused, ...rest } = worked;
  return `${JSON.stringify({ ...recipe, ...rest })}\n`;
}

/**
 * `brinebell recipes [ID]`: every recipe, or one scaled to what was picked, with its tested process
 * in this kitchen. Codes: 0 done, 1 what was asked for was never tested, 2 wrong usage.
 */
export async function recipesCommand(args: string[], io: RecipeIo): Promise<CommandResult> {
  const options = parseOptions(args, CALLS.recipes.options);
  if (!options.ok) return failed(2, `recipes: ${options.error}`);
  const [said, stray] = options.value.words;
  if (stray !== undefined) {
    return failed(2, `recipes: ${quoted(stray)}: one recipe at a time; put a name in quotes`);
  }
  const wish = readKitchenOptions(options.value);
  if (!wish.ok) return failed(2, `recipes: ${wish.error}`);
  const json = isOn(options.value, "json");
  const library = await io.library();
  const stderr = library.problems.map((problem) => `brinebell recipes: ${problem}\n`).join("");
  if (said === undefined) {
    const rows = [...library.recipes.values()].map(listed);
    const stdout = json ? `${JSON.stringify(rows)}\n` : listText(library);
    return { code: 0, stdout, stderr, ...(json ? { forPrograms: true } : {}) };
  }
  const found = recipeNamed(library, said);
  if (!found.ok) return failed(2, `recipes: ${found.error}`);
  const kitchen = await io.kitchen();
  const worked = workOut(found.value, library, wish.value, kitchen);
  if (worked.refused) return failed(1, `recipes: ${worked.reason}`);
  return {
    code: 0,
    stdout: json ? showJson(worked) : recipeText(worked, (text) => wordsIn(kitchen.units, text)),
    stderr,
    ...(json ? { forPrograms: true } : {}),
  };
}
