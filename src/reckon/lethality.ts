import type { Reckoned } from "./reckoned.ts";
import { FOR_THE_RECORD } from "./reckoned.ts";
import type { Result } from "./result.ts";
import { fail, ok } from "./result.ts";
import { median } from "./statistics/median.ts";
import type { LogReading } from "./temperature-log.ts";
import { fahrenheitOf } from "./units.ts";

/** Reference temperature, °C, and the difference that changes the rate tenfold, °C. */
type LethalReference = { temperatureC: number; zC: number };

/** Minutes at the reference temperature that one minute at `temperatureC` counts for. */
export function lethalRate(temperatureC: number, reference: LethalReference): number {
  return 10 ** ((temperatureC - reference.temperatureC) / reference.zC);
}

/**
 * Integral of the lethal rate over a stretch in which the temperature changes evenly: exact,
 * where the trapezoid on the rate overstates every ramp (by 9 % on a coarse log).
 */
function segmentMinutes(from: LogReading, to: LogReading, reference: LethalReference): number {
  const span = to.minutes - from.minutes;
  const rate = lethalRate(from.temperatureC, reference);
  const d = (Math.LN10 * (to.temperatureC - from.temperatureC)) / reference.zC;
  const mean = Math.abs(d) < 1e-6 ? 1 + d / 2 : Math.expm1(d) / d;
  return span * rate * mean;
}

/** A stretch without readings this many times the usual one is a gap. */
const GAP_FACTOR = 2.5;
const SHORTEST_GAP_MIN = 2;
const LONGEST_STRETCH_MIN = 60;

/** The longest stretch between readings that still counts as watched, minutes. */
function longestWatched(readings: readonly LogReading[]): number {
  const spans: number[] = [];
  for (let i = 1; i < readings.length; i++) {
    spans.push((readings[i]?.minutes ?? 0) - (readings[i - 1]?.minutes ?? 0));
  }
  // Of two in the middle, the shorter: otherwise a gap in a short log would be measured by itself.
  const sorted = spans.sort((a, b) => a - b);
  const usual = Math.max(SHORTEST_GAP_MIN, GAP_FACTOR * (sorted[(sorted.length - 1) >> 1] ?? 0));
  return Math.min(LONGEST_STRETCH_MIN, usual);
}

const HAMPEL_HALF_WIDTH = 2;
const HAMPEL_SIGMAS = 3;
/** A reading closer than this to its neighbors' median is never called an outlier, °C. */
const SMALLEST_OUTLIER_C = 5;

/** Readings far from the median of the two before and two after (Hampel's test), by index. */
function outliersOf(readings: readonly LogReading[]): Set<number> {
  const found = new Set<number>();
  for (let i = HAMPEL_HALF_WIDTH; i < readings.length - HAMPEL_HALF_WIDTH; i++) {
    const near = readings
      .slice(i - HAMPEL_HALF_WIDTH, i + HAMPEL_HALF_WIDTH + 1)
      .map(({ temperatureC }) => temperatureC);
    const middle = median(near);
    const spread = 1.4826 * median(near.map((value) => Math.abs(value - middle)));
    const off = Math.abs((readings[i]?.temperatureC ?? middle) - middle);
    if (off > Math.max(SMALLEST_OUTLIER_C, HAMPEL_SIGMAS * spread)) found.add(i);
  }
  // Too near an end for that test: a reading unlike both its neighbors, which are alike.
  const ends = readings.length > 2 * HAMPEL_HALF_WIDTH ? [1, readings.length - 2] : [];
  for (const i of ends) if (isSpike(readings, i)) found.add(i);
  return found;
}

function isSpike(readings: readonly LogReading[], index: number): boolean {
  const [before, here, after] = [-1, 0, 1].map((step) => readings[index + step]?.temperatureC);
  if (before === undefined || here === undefined || after === undefined) return false;
  const [up, down] = [here - before, here - after];
  const least = Math.max(SMALLEST_OUTLIER_C, HAMPEL_SIGMAS * Math.abs(before - after));
  return up * down > 0 && Math.min(Math.abs(up), Math.abs(down)) > least;
}

/** Total minutes, and the total with stretches longer than `watched` left out. */
function totals(
  readings: readonly LogReading[],
  reference: LethalReference,
  watched: number,
): { all: number; credited: number } {
  let all = 0;
  let credited = 0;
  for (let i = 1; i < readings.length; i++) {
    const from = readings[i - 1];
    const to = readings[i];
    if (!from || !to) continue;
    const minutes = segmentMinutes(from, to, reference);
    all += minutes;
    if (to.minutes - from.minutes <= watched) credited += minutes;
  }
  return { all, credited };
}

function gapNotes(readings: readonly LogReading[], watched: number): string[] {
  const notes: string[] = [];
  for (let i = 1; i < readings.length; i++) {
    const from = readings[i - 1]?.minutes ?? 0;
    const to = readings[i]?.minutes ?? 0;
    if (to - from > watched) {
      notes.push(
        `gap of ${(to - from).toFixed(1)} min from minute ${from.toFixed(1)}: not counted`,
      );
    }
  }
  return notes;
}

/** Notes of one sort beyond this many are summed up in one. */
const MOST_NOTES = 5;

function shortened(notes: string[], what: string): string[] {
  if (notes.length <= MOST_NOTES) return notes;
  return [...notes.slice(0, MOST_NOTES), `and ${notes.length - MOST_NOTES} more ${what}`];
}

type Lethality = Reckoned & {
  /** Minutes up to the hottest reading, and after it. */
  heatingMinutes: number;
  coolingMinutes: number;
};

/**
 * Lethality of a temperature log, minutes at the reference temperature: the exact integral of a
 * log-linear rate between readings. `value` is the least that the log shows: gaps count as nothing,
 * and readings unlike their neighbors count only where leaving them out gives no less. The range
 * runs from there to the total with gaps bridged and such readings left out. Errors: a z or
 * reference out of range.
 */
export function lethality(
  readings: readonly LogReading[],
  reference: LethalReference,
): Result<Lethality> {
  if (!(reference.zC >= 2 && reference.zC <= 60)) {
    return fail("--z: 4 to 108 F (2 to 60 C) is what z can be; for example 18F or 10C");
  }
  if (!(reference.temperatureC >= 30 && reference.temperatureC <= 150)) {
    return fail(
      "--reference: 86 to 302 F (30 to 150 C) is what a reference can be; for example 250F",
    );
  }
  const watched = longestWatched(readings);
  const outliers = outliersOf(readings);
  const kept = readings.filter((_, index) => !outliers.has(index));
  const every = totals(readings, reference, watched);
  const without = totals(kept, reference, watched);
  const value = Math.min(every.credited, without.credited);
  const most = Math.max(without.all, value);
  const gaps = gapNotes(readings, watched);
  const odd = [...outliers].map((index) => {
    const { minutes = 0, temperatureC = 0 } = readings[index] ?? {};
    const fahrenheit = fahrenheitOf(temperatureC).toFixed(1);
    return `reading of ${fahrenheit} F at minute ${minutes.toFixed(1)} is unlike its neighbors`;
  });
  const hottest = kept.reduce((best, one) => (one.temperatureC >= best.temperatureC ? one : best));
  const heating = totals(
    kept.filter(({ minutes }) => minutes <= hottest.minutes),
    reference,
    watched,
  ).credited;
  return ok({
    value,
    unit: "min",
    range: [value, most],
    estimate: true,
    source: "general method: integral of 10^((T - reference) / z), exact between readings",
    notes: [
      FOR_THE_RECORD,
      "holds where the probe was, which may not be the coldest place in the jar",
      ...shortened(gaps, "gaps"),
      ...shortened(odd, "odd readings"),
    ],
    heatingMinutes: heating,
    coolingMinutes: without.credited - heating,
  });
}
