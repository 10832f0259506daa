/** A recipe, a weight and a variety as a batch of the day, in the kitchen there is. */

import { expectedJars } from "../kitchen/decide/decide-batch.ts";
import type { QuietHours } from "../kitchen/events.ts";
import { sum } from "../kitchen/jars/lots.ts";
import { listed } from "../kitchen/spoken-names.ts";
import { KINDS } from "../kitchen/stages/kinds.ts";
import { instantOf, localFields, MINUTE_MS } from "../kitchen/time.ts";
import {
  chooseProcess,
  defaultJar,
  type ProcessWish,
  processOptions,
} from "../recipe/choose-process.ts";
import { type Answered, gateFood } from "../recipe/foods/food-gate.ts";
import { gateRefusal, nameQuestion } from "../recipe/foods/gate-words.ts";
import type { Library } from "../recipe/library.ts";
import type { GaugeKind, JarSize, ProcessTerms, Recipe, Stage } from "../recipe/recipe.ts";
import { recipeFor } from "../recipe/recipe-for.ts";
import type { DayBatch, StageLength } from "./day-batches.ts";
import { type Lessons, learnedMinutes } from "./learning/learn.ts";
import type { PlanBatch } from "./plan-request.ts";

export type CanningFacts = {
  altitudeFt: number;
  altitudeUncertaintyFt: number;
  gauge: GaugeKind;
  /** Jars of a size that one load takes. */
  holds: (jar: JarSize) => number;
  /** What was said before about names that are also a food's. */
  answered?: Answered;
  /** The jar, pack and process asked for, for every batch; otherwise the recipe's usual ones. */
  wish?: Pick<ProcessWish, "jar" | "pack" | "method" | "atPsi">;
};

export type Wanted = { id: string; recipe: Recipe; variety: string | null; weightLb: number };

const DAY_MINUTES = 24 * 60;
/** The least number of nights kept quiet, besides those of the longest stage. */
const LEAST_NIGHTS = 4;
/** Of more lots than this, the number is told in place of their names. */
const MOST_NAMED = 2;

/** What a batch of the day is called: "Provider dilled green beans". */
export function wantedLabel(recipe: Recipe, variety: string | null): string {
  const title = recipe.title.charAt(0).toLowerCase() + recipe.title.slice(1);
  return variety ? `${variety} ${title}` : title;
}

/** What lots that share their pots are called: "Provider and Blue Lake dilled green beans". */
export function lotsLabel(recipe: Recipe, varieties: readonly (string | null)[]): string {
  const named = varieties.flatMap((one) => one ?? []);
  const few = named.length === varieties.length && named.length <= MOST_NAMED;
  if (few) return wantedLabel(recipe, listed(named));
  if (varieties.length < 2) return wantedLabel(recipe, null);
  return `${varieties.length} lots of ${wantedLabel(recipe, null)}`;
}

/** Why a variety cannot be planned: it is another food, or may be. */
function oddVariety(
  { recipe, variety }: Wanted,
  library: Library,
  answered: Answered | undefined,
): string | undefined {
  const gate = variety === null ? undefined : gateFood(library, recipe, variety, answered);
  if (gate?.is === "name-or-food")
    return `${nameQuestion(gate)} To settle that, begin a batch of it once.`;
  return gate && gateRefusal(library, recipe, gate);
}

/**
 * The batch made the recipe's usual way, or why it cannot be made here; `untested` where the food
 * is the reason.
 */
export function wantedBatch(
  wanted: Wanted,
  library: Library,
  kitchen: CanningFacts,
): { ok: true; batch: DayBatch } | { ok: false; error: string; untested?: true } {
  const { id, weightLb, variety } = wanted;
  const odd = oddVariety(wanted, library, kitchen.answered);
  if (odd !== undefined) return { ok: false, error: odd, untested: true };
  const label = wantedLabel(wanted.recipe, variety);
  const way = wayOf(wanted.recipe, library, kitchen);
  if ("error" in way) return { ok: false, error: way.error };
  const { recipe, terms } = way;
  const jar = (terms && kitchen.wish?.jar) ?? defaultJar(recipe) ?? null;
  const count = expectedJars(recipe, { variety, weightLb, pickedAt: null }, jar);
  const perLoad = jar ? kitchen.holds(jar) : 0;
  if (terms && jar && perLoad < 1) {
    return { ok: false, error: `no canner here holds ${jar} jars for ${label}` };
  }
  const jars = terms && count !== null ? { count, perLoad } : null;
  const lots = [{ id, variety, weightLb, jars: jars && count }];
  return { ok: true, batch: { id, label, recipe, lots, jar, terms, jars } };
}

function wayOf(
  recipe: Recipe,
  library: Library,
  { altitudeFt, altitudeUncertaintyFt, gauge, wish }: CanningFacts,
): { recipe: Recipe; terms: ProcessTerms | null } | { error: string } {
  if (processOptions(recipe).length === 0)
    return { recipe: recipeFor(recipe, KINDS, recipe.keptAs), terms: null };
  const here = { altitudeFt, altitudeUncertaintyFt, gauge };
  const choice = chooseProcess(recipe, library.tables, { ...wish, ...here });
  if (!choice.ok) return { error: `${recipe.title}: ${choice.reason}` };
  const { terms } = choice;
  return { recipe: recipeFor(recipe, KINDS, terms.method, terms.pack), terms };
}

/**
 * A stage's usual minutes for the pounds of its lots, learned here where there is something to
 * learn from. Handwork without minutes for each pound takes every lot as long as it would alone.
 */
export function stageLength(
  lessons: Lessons | undefined,
  { recipe, lots }: Pick<DayBatch, "recipe"> & { lots: readonly { weightLb: number }[] },
  stage: Stage,
  altitudeFt: number,
): StageLength {
  const pounds = sum(lots, ({ weightLb }) => weightLb);
  const known = lessons && learnedMinutes(lessons, recipe, stage, pounds, { altitudeFt });
  if (known && known.n > 0) return { minutes: known.yoursMinutes, p90Minutes: known.p90Minutes };
  if (stage.attended && stage.minutesPerLb === undefined) {
    return { minutes: stage.typicalMinutes * Math.max(1, lots.length) };
  }
  const beyond = Math.max(0, pounds - recipe.yield.weightLb);
  return { minutes: stage.typicalMinutes + (stage.minutesPerLb ?? 0) * beyond };
}

/**
 * Hours of the night as minutes from the start, one span for each night that a plan of these
 * batches reaches, plus some `more`.
 */
export function quietSpans(
  { fromMinute, toMinute }: QuietHours,
  startMs: number,
  zone: string,
  batches: readonly PlanBatch[],
  more = 0,
): [number, number][] {
  const { year, month, day: today } = localFields(startMs, zone);
  // By the wall: on the day the clocks change, a night is not as far off as on others.
  const from = (day: number, minute: number) => {
    const fields = { year, month, day: today + day, hour: 0, minute, second: 0 };
    return Math.round((instantOf(fields, zone) - startMs) / MINUTE_MS);
  };
  const until = toMinute + (toMinute <= fromMinute ? DAY_MINUTES : 0);
  const longest = Math.max(
    0,
    ...batches.flatMap((one) => one.stages.map((s) => (s.afterwards ? 0 : s.minutes))),
  );
  const nights = LEAST_NIGHTS + more + Math.floor(longest / DAY_MINUTES);
  const spans: [number, number][] = [];
  for (let day = -1; day < nights; day++) {
    const end = from(day, until);
    if (end > 0) spans.push([Math.max(0, from(day, fromMinute)), end]);
  }
  return spans;
}
