/**
 * One season in numbers: what was put up, what it took, what departed from recipes, what was eaten.
 */

import { batchDeviations } from "../kitchen/deviations.ts";
import { jarCounts } from "../kitchen/jars/canner-room.ts";
import { type LotOf, lotsIn, sum, weightLb } from "../kitchen/jars/lots.ts";
import { wallFor } from "../kitchen/places.ts";
import { type Batch, type State, wallOf } from "../kitchen/state.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import { AVOIDING } from "./avoiding.ts";
import { addDays, dateOf, daysBetween } from "./dates.ts";
import { type LotLine, lotLines, type VarietyLine, varietiesOf } from "./lot-lines.ts";
import { openedOf, shownBatches } from "./shelf/pantry.ts";
import { shelfJars } from "./shelf/shelf-jars.ts";
import { judgeBatch } from "./verdict.ts";

type MethodLine = {
  method: string;
  batches: number;
  weightLb: number;
  /** Jars that are or were on the shelf, by size, and all others kept cold. */
  shelfJars: Record<string, number>;
  coldJars: number;
  handsOnHours: number;
  hours: number;
};

type UseLine = {
  recipe: string;
  title: string;
  variety: string | null;
  putUp: number;
  opened: number;
  left: number;
  days: number;
  /** What the use so far says about next year: an estimate, or why it is too early for one. */
  advice: string;
};

/** What was learned about this kitchen's own durations, in words. */
type Learned = { stage: string; sentence: string };

export type Season = {
  year: number;
  batches: number;
  verdicts: Record<string, number>;
  methods: MethodLine[];
  deviations: { code: string; count: number; batches: number; avoiding: string }[];
  lost: { failed: number; broken: number; discarded: number; spoiled: number };
  learned: Learned[];
  /** The lots of each variety together. */
  varieties: VarietyLine[];
  use: UseLine[];
};

/** Where the jars of each lot belong, worked out once. */
type Shelves = ReadonlyMap<string, ReturnType<typeof shelfJars>>;

function yearOf(state: State, batch: Batch): number {
  return Number(dateOf(wallFor(state, batch.id, batch.begunAt), state.zone).slice(0, 4));
}

/** Batches begun in a calendar year of the kitchen's zone. */
export function batchesOfSeason(state: State, year: number): Batch[] {
  return shownBatches(state).filter((batch) => yearOf(state, batch) === year);
}

export function seasonOf(
  state: State,
  year: number,
  now: number,
  learned: readonly Learned[] = [],
): Season {
  const batches = batchesOfSeason(state, year);
  const lots = batches.flatMap(lotsIn);
  const lines = lotLines(state, lots, now);
  const shelves = new Map(lots.map((one) => [one.lot.id, shelfJars(state, one, now)]));
  const season: Season = {
    year,
    batches: batches.length,
    verdicts: {},
    methods: [],
    deviations: [],
    lost: { failed: 0, broken: 0, discarded: 0, spoiled: 0 },
    learned: [...learned],
    varieties: varietiesOf(lines),
    use: eatenOf(state, lots, shelves, now),
  };
  const codes = new Map<string, { count: number; batches: Set<string> }>();
  for (const batch of batches) {
    const { verdict, deviations } = judgedOnce(state, batch, lines, now);
    season.verdicts[verdict] = (season.verdicts[verdict] ?? 0) + 1;
    for (const code of deviations) {
      const known = codes.get(code) ?? { count: 0, batches: new Set() };
      known.count += 1;
      known.batches.add(batch.id);
      codes.set(code, known);
    }
    addMethod(season, batch, { now, lines, shelves });
    const counts = jarCounts(state, batch);
    season.lost.failed += counts.failed;
    season.lost.broken += counts.broken;
    season.lost.spoiled += counts.spoiled;
  }
  season.deviations = [...codes]
    .map(([code, { count, batches: of }]) => {
      return { code, count, batches: of.size, avoiding: AVOIDING[code] ?? "" };
    })
    .sort((a, b) => b.count - a.count || (a.code < b.code ? -1 : 1));
  season.methods.sort((a, b) => b.batches - a.batches || (a.method < b.method ? -1 : 1));
  return season;
}

/** The verdict on a whole batch and its departures; of a batch of one lot, those of the lot. */
function judgedOnce(
  state: State,
  batch: Batch,
  lines: readonly LotLine[],
  now: number,
): Pick<LotLine, "verdict" | "deviations"> {
  const only = batch.lots.length === 1 && lines.find((line) => line.batch === batch.id);
  if (only) return only;
  const deviations = batchDeviations(state, batch, now);
  const codes = deviations.map(({ code }) => code);
  return { verdict: judgeBatch(state, batch, deviations).verdict, deviations: codes };
}

function addMethod(
  season: Season,
  batch: Batch,
  { now, lines, shelves }: { now: number; lines: readonly LotLine[]; shelves: Shelves },
): void {
  const method =
    batch.option?.method ?? (batch.recipe.tested ? batch.recipe.keptAs : "refrigerator");
  let line = season.methods.find((one) => one.method === method);
  if (!line) {
    line = {
      method,
      batches: 0,
      weightLb: 0,
      shelfJars: {},
      coldJars: 0,
      handsOnHours: 0,
      hours: 0,
    };
    season.methods.push(line);
  }
  const tenths = (value: number) => Math.round(value * 10) / 10;
  line.batches += 1;
  line.weightLb = tenths(line.weightLb + (weightLb(batch) ?? 0));
  const its = lines.filter((one) => batch.lots.some(({ id }) => id === one.batch));
  const hands = sum(its, ({ handsOnMinutes }) => handsOnMinutes);
  line.handsOnHours = tenths(line.handsOnHours + hands / 60);
  const end = batch.endedAt ?? now;
  line.hours = tenths(line.hours + (end - batch.begunAt) / (60 * MINUTE_MS));
  const lots = batch.lots.flatMap(({ id }) => shelves.get(id) ?? []);
  season.lost.discarded += sum(lots, ({ discarded }) => discarded);
  for (const group of lots.flatMap(({ groups }) => groups)) {
    if (group.keep !== "shelf") line.coldJars += group.jars;
    else {
      const size = batch.jar ?? "jar";
      line.shelfJars[size] = (line.shelfJars[size] ?? 0) + group.jars;
    }
  }
}

/** After this many days, what was eaten says something about a year. */
const EARLIEST_DAYS = 120;
const YEAR_DAYS = 365;

type Use = UseLine & { first: string; last: string };

function eatenOf(state: State, lots: readonly LotOf[], shelves: Shelves, now: number): UseLine[] {
  const today = dateOf(wallOf(state, now), state.zone);
  const lines = new Map<string, Use>();
  for (const { batch, lot } of lots) {
    const groups = shelves.get(lot.id)?.groups ?? [];
    const sealed = groups.filter((group) => group.sealed);
    const putUp = sealed.reduce((sum, group) => sum + group.jars, 0);
    if (putUp === 0) continue;
    const key = `${batch.recipe.id}\n${lot.variety ?? ""}\n${batch.jar ?? ""}`;
    const begun = dateOf(wallFor(state, batch.id, batch.endedAt ?? batch.begunAt), state.zone);
    const line = lines.get(key) ?? {
      recipe: batch.recipe.id,
      title: `${batch.recipe.title}${batch.jar ? `, ${batch.jar}s` : ""}`,
      variety: lot.variety,
      putUp: 0,
      opened: 0,
      left: 0,
      days: 0,
      advice: "",
      first: begun,
      last: "",
    };
    line.putUp += putUp;
    line.opened += Math.min(putUp, openedOf(lot));
    if (begun < line.first) line.first = begun;
    for (const { left } of lot.jars) {
      if (!left) continue;
      const on = dateOf(wallFor(state, batch.id, left.at), state.zone);
      if (on > line.last) line.last = on;
    }
    lines.set(key, line);
  }
  return [...lines.values()].map(({ first, last, ...line }) => {
    line.left = line.putUp - line.opened;
    const until = line.left === 0 && last ? last : today;
    line.days = Math.max(1, daysBetween(first, until));
    return { ...line, advice: adviceOn(line, addDays(first, EARLIEST_DAYS) > today) };
  });
}

function adviceOn({ putUp, opened, left, days }: UseLine, early: boolean): string {
  if (left > 0 && early) return "too early to tell";
  const year = Math.round((opened * YEAR_DAYS) / Math.min(days, YEAR_DAYS));
  if (left === 0 && days < YEAR_DAYS * 0.9) {
    return `gone in ${days} days: about ${year} would last a year (an estimate)`;
  }
  if (opened === 0) return `none opened in ${days} days: put up fewer`;
  if (year < putUp * 0.75) return `about ${year} eaten a year: fewer would do (an estimate)`;
  if (year > putUp * 1.25) return `at this pace a year takes about ${year} (an estimate)`;
  return "about right";
}
