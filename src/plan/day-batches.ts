/**
 * A recipe, a weight and a kitchen as the planner sees them: stages with lengths, hands, what they
 * occupy, and how soon one must follow another.
 */
import {
  CANNER_WARM_UP_MINUTES,
  LID_WAIT_MINUTES,
  LOAD_KINDS,
  SETTLE_MINUTES,
  VENT_MINUTES,
} from "../kitchen/loads/canner-stages.ts";
import { KINDS } from "../kitchen/stages/kinds.ts";
import type { ProcessTerms, Recipe, Stage } from "../recipe/recipe.ts";
import type { PlanAfter, PlanBatch, PlanStage, PlanUse } from "./plan-request.ts";

/** How long a stage takes here: typical minutes, and what nine times of ten is enough. */
export type StageLength = { minutes: number; p90Minutes?: number };

export type DayBatch = {
  id: string;
  label: string;
  /** As one batch makes it: see `recipeFor`. */
  recipe: Recipe;
  weightLb: number;
  /** Null where it goes through no canner. */
  terms: ProcessTerms | null;
  jars: { count: number; perLoad: number } | null;
};

/** Lifting jars in, and lifting them out, minutes of hands. */
const LOAD_MINUTES = 5;
const UNLOAD_MINUTES = 5;
const HEAT_OFF_MINUTES = 1;
/** From the lid going on to a full boil or steady steam. */
const COME_UP_MINUTES = 20;
const TO_PRESSURE_MINUTES = 5;
/** A pressure canner coming to zero by itself. */
const TO_ZERO_MINUTES = 45;
/** A filled jar, and food that is to be packed hot, wait no longer than this. */
const HOT_WITHIN_MINUTES = 10;
/** A canner that is hot stands so no longer than this: its water boils away. Our choice. */
const WARM_WITHIN_MINUTES = 120;

/**
 * @param lengthOf minutes of an attended or heating stage, learned where there is something to
 *   learn from; never asked for a process, a vent, a rest or a cooling.
 */
export function dayBatch(batch: DayBatch, lengthOf: (stage: Stage) => StageLength): PlanBatch {
  const { recipe, terms } = batch;
  const own = recipe.stages.filter((stage) => {
    return !LOAD_KINDS.has(stage.kind) && KINDS[stage.kind].ends !== "date";
  });
  const stages = own.map((stage) => ownStage(stage, recipe, terms, lengthOf));
  return {
    id: batch.id,
    label: batch.label,
    stages: terms ? [...stages, ...cannerStagesOf(recipe, terms)] : stages,
    ...(batch.jars ? { jars: batch.jars } : {}),
  };
}

function ownStage(
  stage: Stage,
  recipe: Recipe,
  terms: ProcessTerms | null,
  lengthOf: (stage: Stage) => StageLength,
): PlanStage {
  const learned = KINDS[stage.kind].learned;
  const length: StageLength = learned ? lengthOf(stage) : { minutes: stage.typicalMinutes };
  const after = stage.after.map((link) => linkOf(link.stage, stage, recipe, terms, link));
  if (stage.kind === "fill" && terms) {
    after.push({ stage: "canner", atMostMinutes: WARM_WITHIN_MINUTES });
  }
  return {
    id: stage.id,
    kind: stage.kind,
    ...length,
    hands: stage.attended ? "all" : stage.kind === "heat" ? "start" : "none",
    uses: stage.uses.map((use): PlanUse => (use === "refrigerator" ? "fridge" : use)),
    after,
    ...(stage.window ? { window: stage.window } : {}),
  };
}

/** How soon a stage follows another: hot food goes into jars at once. */
function linkOf(
  before: string,
  stage: Stage,
  recipe: Recipe,
  terms: ProcessTerms | null,
  link: { atLeastMinutes?: number; atMostMinutes?: number },
): PlanAfter {
  const from = recipe.stages.find((one) => one.id === before);
  const hot = stage.kind === "fill" && from?.kind === "heat";
  // A raw pack's brine is kept hot or brought back to a boil; hot-packed food is filled at once.
  const atOnce = hot && terms?.pack === "hot" ? HOT_WITHIN_MINUTES : undefined;
  const atMost = link.atMostMinutes ?? atOnce;
  return {
    stage: before,
    ...(link.atLeastMinutes === undefined ? {} : { atLeastMinutes: link.atLeastMinutes }),
    ...(atMost === undefined ? {} : { atMostMinutes: atMost }),
  };
}

/** Minutes a load holds the canner, from the first jar going in to the last coming out. */
export function cannerMinutes(terms: ProcessTerms): number {
  const pressure = terms.method === "pressure";
  const comeUp = COME_UP_MINUTES + (pressure ? VENT_MINUTES + TO_PRESSURE_MINUTES : 0);
  const down = pressure ? TO_ZERO_MINUTES + LID_WAIT_MINUTES : SETTLE_MINUTES;
  return LOAD_MINUTES + comeUp + terms.minutes + HEAT_OFF_MINUTES + down + UNLOAD_MINUTES;
}

/** The canner is one occupation from loading to unloading, with hands at both ends. */
function cannerStagesOf(recipe: Recipe, terms: ProcessTerms): PlanStage[] {
  const fill = recipe.stages.find((stage) => stage.kind === "fill");
  const cool = recipe.stages.find((stage) => stage.kind === "cool");
  const window = cool?.window ?? { minMinutes: 12 * 60, maxMinutes: 24 * 60 };
  return [
    {
      id: "canner",
      kind: "heat",
      minutes: CANNER_WARM_UP_MINUTES,
      hands: "start",
      uses: [],
      after: [],
    },
    {
      id: "process",
      kind: "process",
      minutes: cannerMinutes(terms),
      hands: { startMinutes: LOAD_MINUTES, endMinutes: UNLOAD_MINUTES + HEAT_OFF_MINUTES },
      uses: ["canner", "burner"],
      after: fill ? [{ stage: fill.id, atMostMinutes: HOT_WITHIN_MINUTES }] : [],
    },
    {
      id: "cool",
      kind: "cool",
      minutes: window.minMinutes,
      hands: "none",
      uses: [],
      after: [{ stage: "process", atMostMinutes: 0 }],
      window,
      afterwards: true,
    },
  ];
}
