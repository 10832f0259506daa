/** How long a stage should take by its recipe, for the weight there is. */
import { hasRole, rulesOf } from "../../kitchen/stages/kinds.ts";
import type { Recipe, Stage } from "../../recipe/recipe.ts";
import { joulesToBoil, type ScaledPot } from "../heat-needed.ts";

/**
 * Whether a stage's length depends on the cook and the stove. That of a process, a vent, a wait and
 * whatever else guards the jar or the food never does.
 */
export function isLearnable(stage: Stage): boolean {
  if (!rulesOf(stage).learned) return false;
  // Turning the heat off is the end of a process, not work.
  return rulesOf(stage).plan.burner || (stage.attended && stage.typicalMinutes > 1);
}

/** Minutes held at the boil after it is reached: the recipe's own, and not learned. */
export function holdMinutes(stage: Stage): number {
  return stage.heat?.holdMinutes ?? 0;
}

/** How many times the recipe's own amount is made. */
export function scaleFactor(recipe: Recipe, weightLb: number | null): number {
  return (weightLb ?? recipe.yield.weightLb) / recipe.yield.weightLb;
}

/**
 * Minutes of a stage without its hold: with what the recipe adds for each pound, by the number of
 * jars for filling, by the heat needed for a pot of known contents, and otherwise as written.
 */
export function plannedMinutes(
  recipe: Recipe,
  stage: Stage,
  weightLb: number | null,
  pot?: Pick<ScaledPot, "altitudeFt" | "fromC">,
): number {
  const own = Math.max(1, stage.typicalMinutes - holdMinutes(stage));
  const factor = scaleFactor(recipe, weightLb);
  if (stage.minutesPerLb !== undefined) {
    const beyond = (factor - 1) * recipe.yield.weightLb;
    return Math.max(own + stage.minutesPerLb * beyond, own * Math.min(1, factor));
  }
  if (hasRole(stage, "filling")) return own * factor;
  const now = joulesToBoil(recipe, stage, { factor, altitudeFt: 0, ...pot });
  const usual = joulesToBoil(recipe, stage, { factor: 1, altitudeFt: 0 });
  return now === undefined || usual === undefined ? own : (own * now) / usual;
}
