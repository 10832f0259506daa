/** Seed lots: what their germination tests show, how thickly to sow, how long they last. */
import { wallFor } from "../../kitchen/places.ts";
import type { SeedLot, State } from "../../kitchen/state.ts";
import { wilsonInterval } from "../../reckon/statistics/preference.ts";
import { dateOf } from "../dates.ts";
import { SEED_LIFE_SOURCE, SEED_LIFE_YEARS } from "./seed-life.ts";

type Germination = {
  on: string;
  sprouted: number;
  of: number;
  days: number | null;
  /** Share that sprouted, and its 95 % interval (Wilson). */
  share: number;
  interval: [number, number];
  /**
   * How many times as thickly to sow as good seed: by the share, and at worst; null where unknown.
   */
  sowTimes: number | null;
  sowTimesAtWorst: number | null;
  sentence: string;
};

export type SeedReport = Omit<SeedLot, "tests" | "savedAt"> & {
  saved: string;
  tests: Germination[];
  /** Expected life in years, shortest and longest published; null for a crop not in the lists. */
  lifeYears: [number, number] | null;
  lifeSource: string | null;
  /** The years after which the lists call it old, first and last. */
  oldAfter: [number, number] | null;
};

/** With fewer seeds than this, a test tells little: 9 of 10 may be 60 % or 98 %. */
const FEW_SEEDS = 50;
/** A lower bound under this gives no usable sowing rate. */
const LEAST_SHARE = 0.05;

function percent(share: number): number {
  return Math.round(share * 100);
}

function times(share: number): number | null {
  return share < LEAST_SHARE ? null : Math.round((1 / share) * 10) / 10;
}

/** What a test shows in which `sprouted` of `of` seeds (at least one) came up. */
export function germinationOf(sprouted: number, of: number): Omit<Germination, "on" | "days"> {
  const share = sprouted / of;
  const interval = wilsonInterval(sprouted, of);
  const sowTimes = times(share);
  const sowTimesAtWorst = times(interval[0]);
  const range = `${percent(interval[0])} to ${percent(interval[1])} %`;
  const parts = [`${sprouted} of ${of} sprouted: ${percent(share)} %, in truth ${range}`];
  if (sowTimes === null) parts.push("too little to sow; save or buy fresh seed");
  else if (sowTimesAtWorst === null) {
    parts.push(`sow ${sowTimes} times as thickly, or test more seeds: at worst hardly any sprout`);
  } else if (sowTimesAtWorst > 1.1) {
    parts.push(`sow ${sowTimes} times as thickly, ${sowTimesAtWorst} times to be safe`);
  }
  if (of < FEW_SEEDS) parts.push(`${of} seeds tell little; 50 or more tell more`);
  return { sprouted, of, share, interval, sowTimes, sowTimesAtWorst, sentence: parts.join("; ") };
}

/** Published life of a crop's seed, by its name in singular or plural; undefined for others. */
export function seedLife(crop: string): readonly [number, number] | undefined {
  const words = crop.toLowerCase().split(/[^a-z]+/);
  for (const word of words.reverse()) {
    for (const name of [word, word.replace(/s$/, ""), word.replace(/oes$/, "o")]) {
      if (Object.hasOwn(SEED_LIFE_YEARS, name)) return SEED_LIFE_YEARS[name];
    }
  }
  return undefined;
}

/** A lot with what its tests show, and how long it lasts. */
export function seedReport(state: State, lot: SeedLot): SeedReport {
  const { tests, savedAt, ...rest } = lot;
  const saved = dateOf(savedAt, state.zone);
  const life = seedLife(lot.crop);
  const year = Number(saved.slice(0, 4));
  return {
    ...rest,
    saved,
    tests: tests.map(({ at, sprouted, of, days }) => ({
      on: dateOf(wallFor(state, lot.id, at), state.zone),
      days,
      ...germinationOf(sprouted, of),
    })),
    lifeYears: life ? [life[0], life[1]] : null,
    lifeSource: life ? SEED_LIFE_SOURCE : null,
    oldAfter: life ? [year + life[0], year + life[1]] : null,
  };
}

export function seedReports(state: State): SeedReport[] {
  return Object.values(state.seeds).map((lot) => seedReport(state, lot));
}
