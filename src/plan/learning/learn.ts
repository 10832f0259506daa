/**
 * How long this cook and this stove really take, from what finished batches took: drawn toward the
 * recipe's typical time while little is known, with a range. Only handwork and coming to a boil are
 * learned; a process, a vent, a wait, cooling and curing never are.
 */

import { rulesOf } from "../../kitchen/stages/kinds.ts";
import type { State } from "../../kitchen/state.ts";
import { processOptions } from "../../recipe/choose-process.ts";
import type { Recipe, Stage } from "../../recipe/recipe.ts";
import { expectedEfficiency, learnEfficiency, priorEfficiency } from "../../reckon/burner.ts";
import { rounded } from "../../reckon/reckoned.ts";
import { joulesToBoil } from "../heat-needed.ts";
import { groupOf, type StageTime, stageTimes } from "../stage-times.ts";
import { holdMinutes, isLearnable, plannedMinutes, scaleFactor } from "./planned-minutes.ts";
import { type Expected, expectNext, type Pool, poolOf } from "./shrinkage.ts";

export type LearnedTime = {
  /** The recipe's own time, for this weight. */
  typicalMinutes: number;
  /** What to expect here. */
  yoursMinutes: number;
  /** Four in five lie inside it. */
  range: [number, number];
  /** Nine in ten take no longer. */
  p90Minutes: number;
  /** How many times this stage was seen. */
  n: number;
};

/** What the journal shows, worked out once for many questions. */
export type Lessons = {
  times: StageTime[];
  /** ln(actual / planned) of believable times by group. */
  ratios: Map<string, number[]>;
  hands: Pool;
  heat: Pool;
  /** Useful watts of every pot whose contents the recipe states. */
  watts: number[];
};

/** What affects a stage besides its recipe and weight. */
type Circumstances = {
  altitudeFt?: number;
  /** Temperature a pot begins at, °C. */
  fromC?: number;
  /** How the jars are processed, where it is not the recipe's first way. */
  method?: string;
};

/** Learns from a kitchen's state; rehearsals and unfinished batches do not count. */
export function lessonsOf(state: State): Lessons {
  const times = stageTimes(state);
  const ratios = new Map<string, number[]>();
  const groups = { hands: new Map<string, number[]>(), heat: new Map<string, number[]>() };
  const watts: number[] = [];
  for (const time of times) {
    if (time.doubtful) continue;
    const own = ratios.get(time.group) ?? [];
    own.push(Math.log(time.minutes / time.plannedMinutes));
    ratios.set(time.group, own);
    groups[rulesOf(time.stage).plan.burner ? "heat" : "hands"].set(time.group, own);
    if (time.usefulWatts !== undefined) watts.push(time.usefulWatts);
  }
  return {
    times,
    ratios,
    hands: poolOf([...groups.hands.values()]),
    heat: poolOf([...groups.heat.values()]),
    watts,
  };
}

/**
 * What to expect of a recipe's or a canner's stage for a weight in pounds; undefined for stages
 * whose time is not up to the cook. Minutes include a pot's hold at the boil.
 */
export function learnedMinutes(
  lessons: Lessons,
  recipe: Recipe,
  stage: Stage,
  weightLb: number | null,
  where: Circumstances = {},
): LearnedTime | undefined {
  if (!isLearnable(stage)) return undefined;
  const { altitudeFt = 0, fromC } = where;
  const pot = { altitudeFt, ...(fromC === undefined ? {} : { fromC }) };
  const planned = plannedMinutes(recipe, stage, weightLb, pot);
  const method = where.method ?? processOptions(recipe)[0]?.method;
  const own = lessons.ratios.get(groupOf(recipe, stage, method)) ?? [];
  const factor = scaleFactor(recipe, weightLb);
  const joules = joulesToBoil(recipe, stage, { ...pot, factor });
  const expected =
    joules === undefined
      ? expectNext(own, rulesOf(stage).plan.burner ? lessons.heat : lessons.hands)
      : expectBoil(own, lessons, joules / (planned * 60));
  const hold = holdMinutes(stage);
  const minutes = (log: number) => rounded(planned * Math.exp(log) + hold, 1);
  return {
    typicalMinutes: rounded(planned + hold, 1),
    yoursMinutes: minutes(expected.middle),
    range: [minutes(expected.low), minutes(expected.high)],
    p90Minutes: minutes(expected.high),
    n: own.length,
  };
}

/** A pot of known contents is drawn toward what the burner did for other pots. */
function expectBoil(own: readonly number[], lessons: Lessons, typicalWatts: number): Expected {
  const belief = learnEfficiency(priorEfficiency(typicalWatts), lessons.watts);
  const variance = belief.b / (belief.a * belief.k);
  return expectNext(own, lessons.heat, { mean: Math.log(typicalWatts) - belief.mu, variance });
}

/** Useful watts of a burner never timed: 2,500 W of gas. */
const USUAL_USEFUL_WATTS = 2500 * 0.42;

/**
 * Watts of this stove that reach a pot, from every boil of known contents; the middle and the 90 %
 * range of the next one. Undefined before the first.
 */
export function usefulBurnerWatts(
  lessons: Lessons,
): { watts: number; range: [number, number]; n: number } | undefined {
  const n = lessons.watts.length;
  if (n === 0) return undefined;
  const prior = priorEfficiency(USUAL_USEFUL_WATTS);
  const { middle, low, high } = expectedEfficiency(learnEfficiency(prior, lessons.watts));
  return { watts: Math.round(middle), range: [Math.round(low), Math.round(high)], n };
}
