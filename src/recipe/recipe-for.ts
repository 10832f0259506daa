import { CAUTIONS } from "./cautions.ts";
import type { Kinds } from "./kind-in-recipe.ts";
import type { After, Method, Pack, Recipe, Stage } from "./recipe.ts";

export const CANNER_METHODS: readonly Method[] = [
  "boiling-water",
  "steam",
  "pressure",
  "low-temperature",
];

function belongs(stage: Stage, method: Method, pack: Pack | undefined, kinds: Kinds): boolean {
  if (kinds[stage.kind].ofCanner !== null && !CANNER_METHODS.includes(method)) return false;
  const { packs, methods } = stage.onlyFor ?? {};
  if (methods && !methods.includes(method)) return false;
  return !packs || pack === undefined || packs.includes(pack);
}

/** What a stage follows once other stages are removed: their own predecessors replace them. */
function rewire(after: After[], stages: Map<string, Stage>, kept: Set<string>): After[] {
  return after.flatMap((link): After[] => {
    if (kept.has(link.stage)) return [link];
    const gone = stages.get(link.stage);
    return gone ? rewire(gone.after, stages, kept) : [];
  });
}

/**
 * What a recipe says about storing the jars was written for processed ones; without a process they
 * go into the refrigerator. "Tested for this mix" is dropped where it was not.
 */
function unprocessed(recipe: Recipe, method: Method, stage: Stage, kinds: Kinds): Stage {
  if (recipe.processes.length === 0) return stage;
  const bare = !recipe.tested || method === "refrigerator";
  const cautions = recipe.tested
    ? stage.cautions
    : stage.cautions.filter((caution) => caution !== CAUTIONS["tested-only"]);
  const { sayUnprocessed } = kinds[stage.kind].usual;
  return { ...stage, cautions, ...(sayUnprocessed && bare ? { say: sayUnprocessed } : {}) };
}

/**
 * A recipe as one batch makes it: without the stages, ingredients and critical factors of
 * another pack or method, the remaining stages joined up again.
 */
export function recipeFor(recipe: Recipe, kinds: Kinds, method: Method, pack?: Pack): Recipe {
  const stages = recipe.stages.filter((stage) => belongs(stage, method, pack, kinds));
  if (stages.length === recipe.stages.length && !recipe.ingredients.some((i) => i.pack)) {
    return recipe;
  }
  const all = new Map(recipe.stages.map((stage) => [stage.id, stage]));
  const kept = new Set(stages.map((stage) => stage.id));
  const asked = new Set(stages.flatMap((stage) => stage.asks));
  return {
    ...recipe,
    ingredients: recipe.ingredients.filter((i) => !i.pack || !pack || i.pack === pack),
    critical: recipe.critical.filter((factor) => asked.has(factor.id)),
    stages: stages.map((stage) => ({
      ...unprocessed(recipe, method, stage, kinds),
      after: unique(rewire(stage.after, all, kept)),
    })),
  };
}

function unique(after: After[]): After[] {
  const seen = new Set<string>();
  return after.filter((link) => !seen.has(link.stage) && seen.add(link.stage));
}
