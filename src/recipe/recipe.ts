import type { LoadStep } from "./choices.ts";
import type * as shape from "./recipe-shape.ts";

/**
 * A recipe as the kitchen uses it: plain data, read from one YAML file by `read-recipe.ts`. The
 * types follow from `recipe-shape.ts`.
 */

export type { GaugeKind, JarSize, Method, Pack, Provenance, StageKind } from "./choices.ts";
export { GAUGE_KINDS, JAR_SIZES, METHODS, PACKS, PROVENANCES, STAGE_KINDS } from "./choices.ts";

export type FoodClass = shape.Infer<typeof shape.foodClass>;
export type Locator = shape.Infer<typeof shape.locator>;
export type Ingredient = shape.Infer<typeof shape.ingredient>;
export type After = shape.Infer<typeof shape.after>;
/** `step` is set for a load's own steps alone, never by a recipe. */
export type Stage = shape.Infer<typeof shape.stage> & { step?: LoadStep };
export type CriticalFactor = shape.Infer<typeof shape.criticalFactor>;
export type ProcessOption = shape.Infer<typeof shape.processOption>;
export type Recipe = shape.Infer<typeof shape.recipe>;
export type ProcessTerms = shape.Infer<typeof shape.processTerms>;
