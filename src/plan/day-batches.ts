/**
 * A recipe, a weight and a kitchen as the planner sees them: stages with lengths, hands, what they
 * occupy, and how soon one must follow another.
 */
import { cool as cooling } from "../kitchen/stages/cool.ts";
import { heat } from "../kitchen/stages/heat.ts";
import { hasRole, isOfCanner, rulesOf } from "../kitchen/stages/kinds.ts";
import { process } from "../kitchen/stages/process.ts";
import type { JarSize, ProcessTerms, Recipe, Stage } from "../recipe/recipe.ts";
import {
  CANNER_WARM_UP_MINUTES,
  COME_UP_MINUTES,
  COOL_HOURS,
  HOT_WITHIN_MINUTES,
  LID_WAIT_MINUTES,
  LOAD_MINUTES,
  SETTLE_MINUTES,
  STAND_HOURS,
  TO_PRESSURE_MINUTES,
  TO_ZERO_MINUTES,
  UNLOAD_MINUTES,
  VENT_MINUTES,
} from "../reckon/trade-numbers.ts";
import { CANNER_STAGE } from "./plan-loads.ts";
import type { PlanAfter, PlanBatch, PlanLot, PlanStage, PlanUse } from "./plan-request.ts";

/**
 * How long a stage takes here: typical minutes, and the minutes that are enough nine times in ten.
 */
export type StageLength = { minutes: number; p90Minutes?: number };

export type DayBatch = {
  id: string;
  label: string;
  /** As one batch makes it; see `recipeFor`. */
  recipe: Recipe;
  lots: readonly PlanLot[];
  jar: JarSize | null;
  /** Null where it goes through no canner. */
  terms: ProcessTerms | null;
  jars: { count: number; perLoad: number } | null;
};

const HEAT_OFF_MINUTES = 1;

/**
 * @param lengthOf minutes of an attended or heating stage, learned where there is something to
 * learn from; never called for a process, a vent, a rest or cooling.
 */
export function dayBatch(batch: DayBatch, lengthOf: (stage: Stage) => StageLength): PlanBatch {
  const { recipe, terms } = batch;
  const own = recipe.stages.filter((stage) => {
    return !isOfCanner(stage) && rulesOf(stage).ends !== "date";
  });
  const stages = own.map((stage) => ownStage(stage, recipe, terms, lengthOf));
  return {
    id: batch.id,
    label: batch.label,
    lots: batch.lots,
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
  const learned = rulesOf(stage).learned;
  const length: StageLength = learned ? lengthOf(stage) : { minutes: stage.typicalMinutes };
  const after = stage.after.map((link) => linkOf(link.stage, stage, recipe, terms, link));
  if (hasRole(stage, "filling") && terms) after.push({ stage: CANNER_STAGE });
  return {
    id: stage.id,
    kind: stage.kind,
    ...(stage.pot === undefined ? {} : { pot: stage.pot }),
    ...length,
    hands: stage.attended ? "all" : rulesOf(stage).plan.hands,
    uses: stage.uses.map((use): PlanUse => (use === "refrigerator" ? "fridge" : use)),
    after,
    ...(stage.window ? { window: stage.window } : {}),
  };
}

/**
 * How soon a stage follows another: hot food goes into jars at once, and what has been on the heat
 * stands no longer than food may stand warm.
 */
function linkOf(
  before: string,
  stage: Stage,
  recipe: Recipe,
  terms: ProcessTerms | null,
  link: { atLeastMinutes?: number; atMostMinutes?: number },
): PlanAfter {
  const from = recipe.stages.find((one) => one.id === before);
  const heated = from !== undefined && rulesOf(from).plan.burner;
  const warm = heated || from?.uses.includes("burner") ? STAND_HOURS.usual * 60 : undefined;
  // A raw pack's brine is kept hot or brought back to a boil; hot-packed food is filled at once.
  const atOnce = heated && hasRole(stage, "filling") && terms?.pack === "hot";
  const atMost = link.atMostMinutes ?? (atOnce ? HOT_WITHIN_MINUTES : warm);
  return {
    stage: before,
    ...(link.atLeastMinutes === undefined ? {} : { atLeastMinutes: link.atLeastMinutes }),
    ...(atMost === undefined ? {} : { atMostMinutes: atMost }),
  };
}

/** Minutes from the first jar going into the canner: to the heat going off, and to the last out. */
function cannerMinutes(terms: ProcessTerms): { heatOff: number; out: number } {
  const pressure = terms.method === "pressure";
  const comeUp = COME_UP_MINUTES + (pressure ? VENT_MINUTES + TO_PRESSURE_MINUTES : 0);
  const down = pressure ? TO_ZERO_MINUTES + LID_WAIT_MINUTES : SETTLE_MINUTES;
  const heatOff = LOAD_MINUTES + comeUp + terms.minutes;
  return { heatOff, out: heatOff + HEAT_OFF_MINUTES + down + UNLOAD_MINUTES };
}

/** The canner is occupied from loading to unloading, with hands needed at both ends. */
function cannerStagesOf(recipe: Recipe, terms: ProcessTerms): PlanStage[] {
  const fill = recipe.stages.find((stage) => hasRole(stage, "filling"));
  const cool = recipe.stages.find((stage) => hasRole(stage, "cooling"));
  const window = cool?.window;
  const { heatOff, out } = cannerMinutes(terms);
  return [
    {
      id: CANNER_STAGE,
      kind: heat.kind,
      minutes: CANNER_WARM_UP_MINUTES,
      hands: "start",
      uses: ["canner", "burner"],
      after: [],
    },
    {
      id: process.kind,
      kind: process.kind,
      minutes: out,
      hands: { startMinutes: LOAD_MINUTES, endMinutes: UNLOAD_MINUTES },
      uses: ["canner", "burner"],
      after: fill ? [{ stage: fill.id, atMostMinutes: HOT_WITHIN_MINUTES }] : [],
      moments: [
        { what: "load", minute: 0 },
        { what: "heat-off", minute: heatOff },
        { what: "lift-out", minute: out - UNLOAD_MINUTES },
      ],
    },
    {
      id: cooling.kind,
      kind: cooling.kind,
      minutes: COOL_HOURS.min * 60,
      hands: "none",
      uses: [],
      after: [{ stage: process.kind, atMostMinutes: 0 }],
      ...(window ? { window, minutes: window.minMinutes } : {}),
      afterwards: true,
    },
  ];
}
