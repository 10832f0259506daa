/** What was learned, laid out for people and for other programs. */

import { weightLb } from "../../kitchen/jars/lots.ts";
import type { Batch, State } from "../../kitchen/state.ts";
import { isoWithOffset } from "../../kitchen/time.ts";
import { countWords, numberWords } from "../../reckon/number-words.ts";
import { rounded } from "../../reckon/reckoned.ts";
import type { StageTime } from "../stage-times.ts";
import {
  type LearnedTime,
  type Lessons,
  learnedMinutes,
  lessonsOf,
  usefulBurnerWatts,
} from "./learn.ts";

type LearnedStage = LearnedTime & {
  /** Null for what the canner does, whatever is in the jars. */
  recipe: string | null;
  stage: string;
  title: string;
  /** The weight it is for, pounds: the recipe's own amount. */
  weightLb: number;
  /** All of it in one line. */
  sentence: string;
};

type LearnedReport = {
  stages: LearnedStage[];
  burner: { usefulWatts: number; range: [number, number]; n: number } | null;
  /** Times that were too long or too short to be believed, and were not learned from. */
  doubtful: {
    batch: string;
    stage: string;
    at: string;
    minutes: number;
    plannedMinutes: number;
  }[];
  lines: string[];
};

/** Typical, yours and the spread of one recipe's own stages, most often seen first. */
export function learnedOf(state: State, recipeId: string): LearnedStage[] {
  return stagesOf(state, lessonsOf(state), recipeId);
}

/**
 * What was learned about every stage, most often seen first, and about the burner; and what was
 * left out.
 */
export function learnedReport(state: State): LearnedReport {
  const lessons = lessonsOf(state);
  const stages = stagesOf(state, lessons);
  const fit = usefulBurnerWatts(lessons);
  const burner = fit ? { usefulWatts: fit.watts, range: fit.range, n: fit.n } : null;
  const doubtful = lessons.times
    .filter((time) => time.doubtful)
    .map(({ batch, stage, endedAt, minutes, plannedMinutes }) => ({
      batch,
      stage: stage.id,
      at: isoWithOffset(Math.round(endedAt), state.zone),
      minutes: rounded(minutes, 1),
      plannedMinutes: rounded(plannedMinutes, 1),
    }));
  return { stages, burner, doubtful, lines: linesOf(stages, burner, doubtful) };
}

/** Named are differences that were seen so often and are so large (our choice). */
const OFTEN = 2;
const LARGE_SHARE = 1.25;
const LARGE_MINUTES = 5;

/**
 * What to reckon with in a batch that begins: the stage in which this cook or stove takes most
 * beyond what its recipe says, in one sentence; undefined where nothing stands out.
 */
export function reckonWith(state: State, batch: Batch): string | undefined {
  const lessons = lessonsOf(state);
  const altitudeFt = state.kitchen.altitudeFt ?? 0;
  const longer = batch.recipe.stages.flatMap((stage) => {
    const time = learnedMinutes(lessons, batch.recipe, stage, weightLb(batch), { altitudeFt });
    if (!time || time.n < OFTEN) return [];
    const { typicalMinutes: typical, yoursMinutes: yours } = time;
    const isLarge = yours >= typical * LARGE_SHARE && yours - typical >= LARGE_MINUTES;
    return isLarge ? [{ stage, time, more: yours - typical }] : [];
  });
  const [most] = longer.sort((a, b) => b.more - a.more);
  if (!most) return undefined;
  const { stage, time } = most;
  const { n, yoursMinutes, typicalMinutes } = time;
  return (
    `Reckon with about ${countWords(Math.floor(yoursMinutes), "minute")} for this: ` +
    `${stage.title}. So it was the last ${numberWords(n)} times; by the recipe it is ` +
    `${numberWords(Math.round(typicalMinutes))}.`
  );
}

function stagesOf(state: State, lessons: Lessons, only?: string): LearnedStage[] {
  const altitudeFt = state.kitchen.altitudeFt ?? 0;
  const newest = new Map<string, StageTime>();
  for (const time of lessons.times) if (!time.doubtful) newest.set(time.group, time);
  const stages: LearnedStage[] = [];
  for (const { group, recipe, stage } of newest.values()) {
    const [head = ""] = group.split("/");
    const ofRecipe = head === recipe.id;
    if (only !== undefined && !(ofRecipe && recipe.id === only)) continue;
    const weightLb = recipe.yield.weightLb;
    const where = { altitudeFt, ...(ofRecipe ? {} : { method: head }) };
    const time = learnedMinutes(lessons, recipe, stage, weightLb, where);
    if (!time) continue;
    const title = `${ofRecipe ? recipe.title : `${head} canner`}, ${stage.title}`;
    const typical = `typical ${Math.round(time.typicalMinutes)} min`;
    const sentence = `${title}: ${typical}, yours ${aboutHowLong(time)}`;
    const about = { recipe: ofRecipe ? recipe.id : null, stage: stage.id, title, weightLb };
    stages.push({ ...about, ...time, sentence });
  }
  return stages.sort((a, b) => b.n - a.n || a.title.localeCompare(b.title, "en"));
}

/** "25 min, most often 20 to 32": an estimate and its range, as whole minutes. */
function aboutHowLong({ yoursMinutes, range, n }: LearnedTime): string {
  const [low, high] = range.map((minutes) => Math.round(minutes));
  const from = n === 0 ? "by the recipe" : n === 1 ? "from one time" : `from ${n} times`;
  return `about ${Math.round(yoursMinutes)} min, most often ${low} to ${high} (${from})`;
}

function linesOf(
  stages: readonly LearnedStage[],
  burner: LearnedReport["burner"],
  doubtful: LearnedReport["doubtful"],
): string[] {
  if (stages.length === 0) return ["Nothing learned yet: no batch is finished."];
  const lines = stages.map((one) => one.sentence);
  if (burner) {
    const [low, high] = burner.range;
    lines.push(
      `The stove puts about ${burner.usefulWatts} W into a pot ` +
        `(${low} to ${high}, from ${burner.n} ${burner.n === 1 ? "boil" : "boils"}).`,
    );
  }
  for (const { batch, stage, minutes, plannedMinutes } of doubtful) {
    const why = `${Math.round(minutes)} min for a planned ${Math.round(plannedMinutes)}`;
    lines.push(`Left out: ${batch}, ${stage}: ${why}.`);
  }
  return lines;
}
