import { chooseProcess, processOptions } from "../recipe/choose-process.ts";
import type { Library } from "../recipe/library.ts";
import { methodsOf } from "../recipe/library.ts";
import { sourceLine } from "../recipe/process-table.ts";
import type { Method, ProcessTerms, Recipe } from "../recipe/recipe.ts";
import { recipeFor } from "../recipe/recipe-for.ts";
import { type Scaled, scaleRecipe } from "../recipe/scale.ts";
import { quoted } from "../reckon/quantity.ts";
import type { CommandResult } from "./command-result.ts";
import { failed } from "./command-result.ts";
import {
  holdsOf,
  KITCHEN_OPTIONS,
  type KitchenWish,
  readKitchenOptions,
} from "./kitchen-options.ts";
import { isOn, parseOptions } from "./options.ts";
import { type RecipeIo, recipeNamed } from "./recipe-io.ts";
import { recipeText } from "./recipe-text.ts";

const USAGE =
  "brinebell recipes [ID] [--altitude Q] [--jar SIZE] [--pack raw|hot] [--method M] [--for Q]\n" +
  "  [--gauge dial|weighted] [--at Q] [--canner-holds N] [--json]\n" +
  "lists the recipes, or shows one worked out for this kitchen\n";

/** A recipe worked out: the recipe of the chosen method and pack, its amounts, its process. */
export type WorkedOut = {
  recipe: Recipe;
  method: Method;
  scaled: Scaled;
  /** The tested process; null where there is none, with the reason. */
  process: ProcessTerms | null;
  reason: string | null;
  /** True where what was asked for was never tested, rather than something left unsaid. */
  refused: boolean;
};

function listed(recipe: Recipe) {
  const { id, title, names, tested } = recipe;
  return {
    id,
    title,
    names,
    class: recipe.class,
    methods: methodsOf(recipe),
    packs: [...new Set(recipe.processes.map((p) => p.pack))],
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

function workOut(recipe: Recipe, library: Library, wish: KitchenWish, io: RecipeIo): WorkedOut {
  const options = processOptions(recipe);
  const first = options.find((o) => !wish.method || o.method === wish.method) ?? options[0];
  const method = wish.method ?? first?.method ?? recipe.keptAs;
  const pack = wish.pack ?? first?.pack;
  const chosen = recipeFor(recipe, method, pack);
  const { forLb, jar } = wish;
  const holds = wish.cannerHolds ?? io.kitchen?.cannerHolds;
  const plain = scaleRecipe(chosen, { forLb, jar });
  const scaled = scaleRecipe(chosen, { forLb, jar, cannerHolds: holdsOf(holds, plain.jar) });
  const altitudeFt = wish.altitudeFt ?? io.kitchen?.altitudeFt;
  const gauge = wish.gauge ?? io.kitchen?.gauge;
  const base = { recipe: chosen, method, scaled, process: null, refused: false };
  if (method === recipe.keptAs) {
    return { ...base, reason: `kept as ${recipe.keptAs}: no canner process` };
  }
  if (altitudeFt === undefined) {
    const reason = "the time depends on the altitude: add --altitude, as --altitude 6200ft";
    return { ...base, reason };
  }
  const choice = chooseProcess(recipe, library.tables, { ...wish, altitudeFt, gauge });
  if (choice.ok) return { ...base, process: choice.terms, reason: null };
  const asked = wish.jar ?? wish.pack ?? wish.method ?? wish.atPsi ?? wish.altitudeFt;
  const refused = choice.missing === undefined && asked !== undefined;
  return { ...base, reason: choice.reason, refused };
}

function showJson(worked: WorkedOut): string {
  const { recipe, refused: _refused, ...rest } = worked;
  return `${JSON.stringify({ ...recipe, ...rest })}\n`;
}

/**
 * `brinebell recipes [ID]`: every recipe, or one scaled to what was picked with its tested process
 * in this kitchen. Codes: 0 done, 1 what was asked for was never tested, 2 the call is off.
 */
export async function recipesCommand(args: string[], io: RecipeIo): Promise<CommandResult> {
  const kinds = { ...KITCHEN_OPTIONS, json: "switch", help: "switch" } as const;
  const options = parseOptions(args, kinds);
  if (!options.ok) return failed(2, `recipes: ${options.error}`);
  if (isOn(options.value, "help")) return { code: 0, stdout: USAGE, stderr: "" };
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
    return { code: 0, stdout: json ? `${JSON.stringify(rows)}\n` : listText(library), stderr };
  }
  const found = recipeNamed(library, said);
  if (!found.ok) return failed(2, `recipes: ${found.error}`);
  const worked = workOut(found.value, library, wish.value, io);
  if (worked.refused) return failed(1, `recipes: ${worked.reason}`);
  return { code: 0, stdout: json ? showJson(worked) : recipeText(worked), stderr };
}
