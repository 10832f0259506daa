/** Lots of one recipe side by side: yield, jars, departures, time, and what tasters said. */

import { lotsIn } from "../kitchen/jars/lots.ts";
import { wallFor } from "../kitchen/places.ts";
import type { State } from "../kitchen/state.ts";
import { dateOf } from "./dates.ts";
import { type LotLine, lineName, lotLines, type VarietyLine, varietiesOf } from "./lot-lines.ts";
import { shownBatches } from "./shelf/pantry.ts";
import {
  looseVotes,
  type PairResult,
  pairResults,
  type ScoreTable,
  scoreTables,
} from "./shelf/tasting.ts";

export type Comparison = {
  recipe: string;
  title: string;
  lots: LotLine[];
  /** The same, each variety over all its batches. */
  varieties: VarietyLine[];
  pairs: PairResult[];
  /** Preferences that named no other lot, so that they count in no pair. */
  loose: { variety: string; count: number }[];
  scores: ScoreTable[];
  caution: string;
};

const CAUTION =
  "Tastings count as not blind unless jars were served unmarked and in changing order. One " +
  "person's repeats are one voice, and jars of one batch say nothing about another year's.";

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
    const begun = dateOf(wallFor(state, batch.id, batch.begunAt), state.zone);
    return season === undefined || begun.startsWith(String(season));
  });
  const [first] = batches;
  if (!first) return undefined;
  const lots = batches.flatMap(lotsIn).filter(({ lot }) => lot.abandonedAt === undefined);
  const nameOf = new Map(lots.map((one) => [one.lot.id, lineName(one)]));
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
  const lines = lotLines(state, lots, now);
  return {
    recipe,
    title: first.recipe.title,
    lots: lines,
    varieties: varietiesOf(lines),
    pairs: pairResults(things, votes),
    loose: [...loose].map(([variety, count]) => ({ variety, count })),
    scores: scoreTables(things, tastings),
    caution: CAUTION,
  };
}
