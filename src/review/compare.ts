/** Lots of one recipe side by side: yield, jars, departures, time, and what tasters said. */

import { batchDeviations } from "../kitchen/deviations.ts";
import { loadsOf, lotCounts } from "../kitchen/jars/canner-room.ts";
import { type LotOf, lotsIn, readyOf } from "../kitchen/jars/lots.ts";
import { rulesOf } from "../kitchen/stages/kinds.ts";
import type { Batch, StageRun, State } from "../kitchen/state.ts";
import { wallOf } from "../kitchen/state.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import { JAR_CUPS } from "../recipe/jar-volume.ts";
import { dateOf } from "./dates.ts";
import { shownBatches } from "./shelf/pantry.ts";
import {
  looseVotes,
  type PairResult,
  pairResults,
  type ScoreTable,
  scoreTables,
} from "./shelf/tasting.ts";
import { judgeBatch } from "./verdict.ts";

export type LotLine = {
  batch: string;
  variety: string;
  begun: string;
  weightLb: number | null;
  jar: string | null;
  jars: number;
  sealed: number;
  failed: number;
  /** Pints filled for each pound, whatever the size of the jars; null where either is unknown. */
  pintsPerLb: number | null;
  deviations: string[];
  handsOnMinutes: number;
  verdict: string;
};

export type Comparison = {
  recipe: string;
  title: string;
  lots: LotLine[];
  pairs: PairResult[];
  /** Preferences that named no other lot, so that they count in no pair. */
  loose: { variety: string; count: number }[];
  scores: ScoreTable[];
  caution: string;
};

const CAUTION =
  "Tastings count as not blind unless jars were served unmarked and in changing order. One " +
  "person's repeats are one voice, and jars of one batch say nothing about another year's.";

/** Minutes in which the work needed hands: preparing, filling, checking. */
export function handsOnMinutes(state: State, batch: Batch): number {
  const took = (run: StageRun): number => {
    if (rulesOf(run.spec).shelf !== "hands" || run.startedAt === undefined) return 0;
    return ((run.endedAt ?? run.startedAt) - run.startedAt) / MINUTE_MS;
  };
  const own = batch.stages.reduce((sum, run) => sum + took(run), 0);
  const loads = loadsOf(state, batch).flatMap((load) => {
    const sharing = Math.max(1, new Set(load.parts.map((part) => part.batch)).size);
    return load.stages.map((run) => took(run) / sharing);
  });
  return Math.round(own + loads.reduce((sum, minutes) => sum + minutes, 0));
}

/** A lot is identified by its variety, or by its id where it has none. */
function lotName({ lot }: LotOf): string {
  return lot.variety ?? `batch ${lot.id}`;
}

function lotLine(state: State, one: LotOf, now: number): LotLine {
  const { batch, lot } = one;
  const deviations = batchDeviations(state, batch, now, lot);
  const counts = lotCounts(state, batch, lot);
  const jars = batch.option ? counts.processed : readyOf(lot).length;
  const { weightLb } = lot;
  const pints = batch.jar ? (jars * JAR_CUPS[batch.jar]) / JAR_CUPS.pint : null;
  return {
    batch: lot.id,
    variety: lotName(one),
    begun: dateOf(wallOf(state, batch.begunAt), state.zone),
    weightLb,
    jar: batch.jar,
    jars,
    sealed: counts.sealed,
    failed: counts.failed,
    pintsPerLb: weightLb && pints !== null ? Math.round((pints / weightLb) * 100) / 100 : null,
    deviations: deviations.map((one) => one.code),
    handsOnMinutes: Math.round(handsOnMinutes(state, batch) / batch.lots.length),
    verdict: judgeBatch(state, batch, deviations, lot).verdict,
  };
}

/** Compares the lots of one recipe; `season` narrows to batches begun in that year. */
export function compareLots(
  state: State,
  recipe: string,
  now: number,
  season?: number,
): Comparison | undefined {
  const all = shownBatches(state).filter((batch) => batch.recipe.id === recipe);
  const batches = all.filter((batch) => {
    if (batch.state === "abandoned") return false;
    const begun = dateOf(wallOf(state, batch.begunAt), state.zone);
    return season === undefined || begun.startsWith(String(season));
  });
  const [first] = batches;
  if (!first) return undefined;
  const lots = batches.flatMap(lotsIn).filter(({ lot }) => lot.abandonedAt === undefined);
  const nameOf = new Map(lots.map((one) => [one.lot.id, lotName(one)]));
  const things = [...new Set(nameOf.values())];
  const votes = state.preferences.flatMap(({ at, batch, over, taster }) => {
    const thing = nameOf.get(batch);
    const other = over === null ? null : nameOf.get(over);
    // A preference over something that is not compared here says nothing about these.
    if (thing === undefined || other === undefined || other === thing) return [];
    return [{ at, thing, over: other, taster }];
  });
  const tastings = state.tastings.flatMap(({ at, batch, taster, scores }) => {
    const thing = nameOf.get(batch);
    return thing === undefined ? [] : [{ at, thing, taster, scores }];
  });
  const loose = new Map<string, number>();
  for (const vote of looseVotes(things, votes)) {
    loose.set(vote.thing, (loose.get(vote.thing) ?? 0) + 1);
  }
  return {
    recipe,
    title: first.recipe.title,
    lots: lots.map((one) => lotLine(state, one, now)),
    pairs: pairResults(things, votes),
    loose: [...loose].map(([variety, count]) => ({ variety, count })),
    scores: scoreTables(things, tastings),
    caution: CAUTION,
  };
}
