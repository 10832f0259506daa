/**
 * How long the stages of finished batches really took, as far as the journal shows it. One cook
 * has one pair of hands: a minute in which several stages waited for them belongs to the one that
 * was finished first.
 */

import { loadsOf } from "../kitchen/jars/canner-room.ts";
import { weightLb } from "../kitchen/jars/lots.ts";
import { hasRole, isOfCanner, rulesOf } from "../kitchen/stages/kinds.ts";
import { type Batch, type Load, type StageRun, type State, wallOf } from "../kitchen/state.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import type { Recipe, Stage } from "../recipe/recipe.ts";
import { lengthOf, type Span, without } from "../reckon/spans.ts";
import { celsiusOf } from "../reckon/units.ts";
import { joulesToBoil } from "./heat-needed.ts";
import { isLearnable, plannedMinutes, scaleFactor } from "./learning/planned-minutes.ts";

/**
 * Over this many times the plan, somebody forgot to say it was done; under that share, several
 * reports came at once.
 */
const FORGOTTEN_TIMES = 3;
const TOLD_AT_ONCE_SHARE = 0.2;

export type StageTime = {
  /** Names stages that are the same work: of one recipe, or of the canner by method. */
  group: string;
  batch: string;
  recipe: Recipe;
  stage: Stage;
  weightLb: number | null;
  /** Wall instant it ended, ms. */
  endedAt: number;
  /** Minutes it took and should have taken, without a hold at the boil. */
  minutes: number;
  plannedMinutes: number;
  /** Watts that warmed the pot, without losses, where the recipe says what was in it. */
  usefulWatts?: number;
  /** Too long or too short to be believed: kept, and not learned from. */
  doubtful: boolean;
};

type Work = { batch: Batch; load?: Load; run: StageRun; span: Span };

/** The group of a stage: a canner's stages are the same work whatever recipe is in the jars. */
export function groupOf(recipe: Recipe, stage: Stage, method: string | undefined): string {
  const ofRecipe = !isOfCanner(stage) && recipe.stages.some((one) => one.id === stage.id);
  return ofRecipe ? `${recipe.id}/${stage.id}` : `${method ?? "canner"}/${stage.id}`;
}

/** Every learnable stage that finished batches went through, in the order they ended. */
export function stageTimes(state: State): StageTime[] {
  const taken: Span[] = [];
  const times: StageTime[] = [];
  for (const work of works(state)) {
    let spans = without([work.span], holdsOf(work.batch));
    if (!rulesOf(work.run.spec).plan.burner) {
      spans = without(
        spans,
        taken.filter(({ to }) => to > work.span.from),
      );
      taken.push(...spans);
    }
    const minutes = lengthOf(spans) / MINUTE_MS;
    const ended = work.load ? work.load.state === "complete" : work.batch.state === "complete";
    if (ended && !inSeveralGoes(work)) times.push(timeOf(state, work, minutes));
  }
  return times;
}

/** Whether jars were filled for several loads, hours apart: the time between is not work. */
function inSeveralGoes({ batch, run }: Work): boolean {
  return hasRole(run.spec, "filling") && batch.loads.length > 1;
}

function works(state: State): Work[] {
  const list: Work[] = [];
  const add = (batch: Batch, run: StageRun, load?: Load) => {
    const span = spanOf(run);
    if (span && isLearnable(run.spec)) list.push({ batch, run, span, ...(load ? { load } : {}) });
  };
  const seen = new Set<string>();
  for (const batch of Object.values(state.batches)) {
    if (batch.rehearsal) continue;
    for (const run of batch.stages) add(batch, run);
    for (const load of loadsOf(state, batch)) {
      if (seen.has(load.id)) continue;
      seen.add(load.id);
      for (const run of load.stages) add(batch, run, load);
    }
  }
  return list.sort((a, b) => a.span.to - b.span.to);
}

/** From its start to its end or, for a pot that comes to a boil, to the first sign. */
function spanOf(run: StageRun): Span | undefined {
  if (run.state !== "complete" || run.startedAt === undefined) return undefined;
  const sign = run.kept?.stretches[0]?.from;
  const to = sign ?? run.endedAt;
  return to === undefined || to < run.startedAt ? undefined : { from: run.startedAt, to };
}

function holdsOf({ holds }: Batch): Span[] {
  return holds.map(({ from, to = Number.POSITIVE_INFINITY }) => ({ from, to }));
}

/** The pot's temperature before it was lit, where somebody reported it. */
function startC(batch: Batch, run: StageRun): number | undefined {
  const start = run.startedAt ?? 0;
  const reading = batch.readings.find(({ at, what, unit }) => {
    const near = Math.abs(at - start) <= 3 * MINUTE_MS;
    return near && unit === "F" && (what === run.spec.pot || what === run.id);
  });
  return reading && celsiusOf(reading.value);
}

function timeOf(state: State, work: Work, minutes: number): StageTime {
  const { batch, load, run } = work;
  const { recipe } = batch;
  const pounds = weightLb(batch);
  const stage = run.spec;
  const altitudeFt = batch.terms?.altitudeFt ?? state.kitchen.altitudeFt ?? 0;
  const fromC = startC(batch, run);
  const pot = { altitudeFt, ...(fromC === undefined ? {} : { fromC }) };
  const planned = plannedMinutes(recipe, stage, pounds, pot);
  const factor = scaleFactor(recipe, pounds);
  const joules = load ? undefined : joulesToBoil(recipe, stage, { ...pot, factor });
  const ratio = minutes / planned;
  return {
    group: groupOf(recipe, stage, load?.terms?.method),
    batch: batch.id,
    recipe,
    stage,
    weightLb: pounds,
    endedAt: wallOf(state, work.span.to),
    minutes,
    plannedMinutes: planned,
    ...(joules === undefined || minutes <= 0 ? {} : { usefulWatts: joules / (minutes * 60) }),
    doubtful: ratio > FORGOTTEN_TIMES || ratio < TOLD_AT_ONCE_SHARE,
  };
}
