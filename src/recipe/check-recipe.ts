import type { Kinds } from "./kind-in-recipe.ts";
import type { ProcessTables } from "./process-table.ts";
import type { Pack, Recipe } from "./recipe.ts";
import * as acidRules from "./rules/acid-rules.ts";
import { addedInWords } from "./rules/added-rules.ts";
import type { CheckedRecipe, Finding, Rule } from "./rules/finding.ts";
import * as foodRules from "./rules/food-rules.ts";
import * as ingredientRules from "./rules/ingredient-rules.ts";
import { keepingOf } from "./rules/keeping.ts";
import * as keepingRules from "./rules/keeping-rules.ts";
import * as processRules from "./rules/process-rules.ts";
import { spokenHazards } from "./rules/spoken-rules.ts";
import * as stageRules from "./rules/stage-rules.ts";
import * as wordRules from "./rules/word-rules.ts";

const RULES: readonly Rule[] = [
  processRules.noTestedSource,
  processRules.unknownSource,
  foodRules.lowAcidBoilingWater,
  processRules.untestedProcess,
  foodRules.untestedFood,
  foodRules.untestedForm,
  foodRules.untestedTitle,
  foodRules.unsound,
  processRules.jarTooLarge,
  processRules.headspace,
  processRules.steamTooLong,
  processRules.pasteurization,
  processRules.sterileJars,
  acidRules.vinegarStrength,
  acidRules.vinegarDiluted,
  acidRules.homeBrine,
  acidRules.unweighedProduce,
  acidRules.lowAcidShare,
  acidRules.citrusShort,
  acidRules.tomatoAcid,
  ingredientRules.fermentSalt,
  ingredientRules.limeRinses,
  ingredientRules.pasteurizedSalt,
  ingredientRules.alkali,
  ingredientRules.thickener,
  keepingRules.underOil,
  ingredientRules.oil,
  ingredientRules.canningPowder,
  keepingRules.shelfWithoutProcess,
  keepingRules.eggsAndDairy,
  keepingRules.bakedInJars,
  keepingRules.fermentTooWarm,
  keepingRules.fermentTooSalty,
  wordRules.minutesInStage,
  wordRules.headspaceSaid,
  wordRules.jarSaid,
  spokenHazards,
  addedInWords,
  stageRules.restWindow,
  stageRules.fermentTemperature,
  stageRules.criticalAsked,
  stageRules.factorRewritten,
  stageRules.oneBatch,
];

const RANKS = { danger: 0, warning: 1, note: 2 } as const;

/** The recipe without what belongs to another pack. */
function madeBy(recipe: Recipe, pack: Pack): Recipe {
  const mine = recipe.ingredients.filter((one) => !one.pack || one.pack === pack);
  return { ...recipe, ingredients: mine };
}

function subjectOf(recipe: Recipe, tables: ProcessTables, kinds: Kinds): CheckedRecipe {
  const known = recipe.processes.flatMap((option) => {
    const table = tables.tables[option.table];
    if (!table) return [];
    const formula = table.formula ? tables.formulas[table.formula] : undefined;
    return [{ option, table, formula, made: madeBy(recipe, option.pack) }];
  });
  const keeping = keepingOf(recipe, kinds);
  return { recipe, tables, kinds, known, keeping, shelf: keeping.place === "shelf" };
}

/**
 * The safety check: everything in a recipe that departs from what was tested, the dangers first.
 * It finds faults; an empty list means that none of these was found, not that the food is safe.
 *
 * @param lines where the recipe's parts stand in its file, to name the line of each finding.
 */
export function checkRecipe(
  recipe: Recipe,
  tables: ProcessTables,
  kinds: Kinds,
  lines: Readonly<Record<string, number>> = {},
): Finding[] {
  const subject = subjectOf(recipe, tables, kinds);
  const all = RULES.flatMap((rule) => rule(subject));
  // A fault that two packs share is reported once.
  const told = new Set<string>();
  const findings = all.filter(({ rule, where, message }) => {
    const key = `${rule} ${where} ${message}`;
    return !told.has(key) && told.add(key);
  });
  const placed = findings.map((finding) => {
    const line = lines[finding.where];
    return line === undefined ? finding : { ...finding, where: `${finding.where}, line ${line}` };
  });
  return placed.sort((a, b) => RANKS[a.severity] - RANKS[b.severity]);
}

/** True where nothing found is a danger. */
export function passes(findings: readonly Finding[]): boolean {
  return findings.every((finding) => finding.severity !== "danger");
}
