/** The jars of a lot one by one: what each is called, where it is, and what became of it. */

import { batchDeviations } from "../../kitchen/deviations.ts";
import type { Jar } from "../../kitchen/jars/jar.ts";
import { shortForms } from "../../kitchen/jars/jar-ids.ts";
import type { LotOf } from "../../kitchen/jars/lots.ts";
import { type Deviation, type State, wallOf } from "../../kitchen/state.ts";
import { isoWithOffset } from "../../kitchen/time.ts";
import { dateOf } from "../dates.ts";
import { type Judged, jarJudge } from "../verdict.ts";
import { type PlacedJar, placedJars } from "./shelf-jars.ts";
import { type Tasting, tastingOf } from "./tasting.ts";

/** A jar as in the published JSON. */
export type JarRecord = {
  id: string;
  /** What can be said for it: "clover 42". */
  short: string;
  /** On its lid; null where it is not known which jar this is. */
  mark: string | null;
  /** The day its lot was begun. */
  putUp: string;
  load: string | null;
  /** Its place in the load; null where it was never told. */
  position: number | null;
  fate: "shelf" | "cold" | "opened" | "spoiled" | "discarded" | "given";
  /** When what became of it happened; null for a jar that is still kept. */
  fateAt: string | null;
  /** What else was reported about it, here or in another data folder. */
  also?: { fate: "opened" | "given" | "discarded"; at: string }[];
  place: string | null;
  verdict: string;
  reasons: string[];
};

/** Where jars of some fate stand, unless they were put somewhere by name. */
const USUAL_PLACE = { shelf: "pantry", refrigerate: "refrigerator", freeze: "freezer" } as const;
const COLD_PLACES: ReadonlySet<string> = new Set(["refrigerator", "freezer"]);

/** What who asks has worked out already. */
type AtHand = { shortOf?: (jar: Jar) => string; deviations?: readonly Deviation[] };

function deviationsOf(state: State, { batch, lot }: LotOf, now: number): Deviation[] {
  return batchDeviations(state, batch, now, lot);
}

/**
 * Every jar of a lot in the order of their numbers, without those that were emptied to be filled
 * again.
 */
export function jarRecords(
  state: State,
  one: LotOf,
  now: number,
  { shortOf = shortForms(state), deviations = deviationsOf(state, one, now) }: AtHand = {},
): JarRecord[] {
  const { batch, lot } = one;
  const judge = jarJudge(state, batch, deviations);
  const placed = new Map(placedJars(state, one, now, judge).map((each) => [each.jar, each]));
  const judgedOf = (jar: Jar) => placed.get(jar)?.judged ?? judge(lot, jar);
  return one.lot.jars
    .filter(({ gone }) => gone?.what !== "again")
    .sort((a, b) => a.number - b.number)
    .map((jar) => recordOf(state, one, jar, { judgedOf, placed: placed.get(jar), shortOf }));
}

/** A jar with what happened to it, for one who asks for it alone. */
export type JarReport = JarRecord & {
  batch: string;
  title: string;
  variety: string | null;
  filledAt: string;
  loadedAt: string | null;
  unloadedAt: string | null;
  tastings: Tasting[];
};

/** What is known of one jar; undefined for one that was emptied to be filled again. */
export function jarReport(
  state: State,
  one: LotOf & { jar: Jar },
  now: number,
): JarReport | undefined {
  const { batch, lot, jar } = one;
  const record = jarRecords(state, one, now).find(({ id }) => id === jar.id);
  const iso = (t: number) => isoWithOffset(Math.round(wallOf(state, t)), state.zone);
  const maybe = (t: number | undefined) => (t === undefined ? null : iso(t));
  const load = jar.load === undefined ? undefined : state.loads[jar.load];
  const tastings = state.tastings.filter((tasting) => {
    return tasting.batch === lot.id && tasting.jars?.includes(jar.number);
  });
  return (
    record && {
      ...record,
      batch: lot.id,
      title: batch.recipe.title,
      variety: lot.variety,
      filledAt: iso(jar.filledFrom),
      loadedAt: maybe(load?.loadedAt),
      unloadedAt: maybe(load?.unloadedAt),
      tastings: tastings.map((one) => tastingOf(state, one)),
    }
  );
}

type Known = {
  judgedOf: (jar: Jar) => Judged;
  placed: PlacedJar | undefined;
  shortOf: (jar: Jar) => string;
};

function recordOf(
  state: State,
  one: LotOf,
  jar: Jar,
  { judgedOf, placed, shortOf }: Known,
): JarRecord {
  const { batch, lot } = one;
  const { fate, at } = fateOf(jar, placed);
  const iso = (t: number) => isoWithOffset(Math.round(wallOf(state, t)), state.zone);
  const also = besides(jar, at);
  const judged = judgedOf(jar);
  const failed = jar.seal === "failed";
  return {
    id: jar.id,
    short: shortOf(jar),
    mark: jar.number > 0 && !jar.guessed ? `${lot.mark}${jar.number}` : null,
    putUp: dateOf(wallOf(state, lot.addedAt), state.zone),
    load: jar.load ?? null,
    position: null,
    fate,
    fateAt: at === undefined ? null : iso(at),
    ...(also ? { also: also.map((one) => ({ fate: one.what, at: iso(one.at) })) } : {}),
    place: placeOf(state, one, jar, placed, fate),
    verdict: failed && batch.option ? "not-as-tested" : judged.verdict,
    reasons: failed ? ["did not seal", ...judged.reasons] : judged.reasons,
  };
}

/** What was reported about a jar besides its fate. */
function besides({ left, also = [] }: Jar, at: number | undefined): Jar["also"] {
  const all = [...(left && left.at !== at ? [left] : []), ...also];
  return all.length > 0 ? all : undefined;
}

function fateOf(jar: Jar, placed: PlacedJar | undefined): { fate: JarRecord["fate"]; at?: number } {
  const { gone, left, place } = jar;
  if (gone?.what === "spoiled") return { fate: "spoiled", at: gone.at };
  if (gone?.what === "broken") return { fate: "discarded", at: gone.at };
  if (left) return { fate: left.what, at: left.at };
  if (placed?.keep === "discarded") return { fate: "discarded" };
  if (gone) return { fate: "cold", at: gone.at };
  if (place !== undefined && COLD_PLACES.has(place)) return { fate: "cold" };
  const cold = placed?.keep === "refrigerate" || placed?.keep === "freeze";
  return { fate: cold ? "cold" : "shelf" };
}

function placeOf(
  state: State,
  { lot }: LotOf,
  jar: Jar,
  placed: PlacedJar | undefined,
  fate: JarRecord["fate"],
): string | null {
  if (fate !== "shelf" && fate !== "cold") return null;
  if (jar.place !== undefined) return jar.place;
  if (!placed || placed.keep === "discarded") return null;
  if (placed.keep === "waiting") return state.places[lot.id] ?? null;
  if (placed.keep === "shelf") return state.places[lot.id] ?? USUAL_PLACE.shelf;
  return USUAL_PLACE[placed.keep];
}
