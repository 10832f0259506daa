/**
 * What to expect of a stage when little is known: each group of observations is drawn toward the
 * overall mean, the more so the fewer it has. Values are ln(actual minutes / planned minutes).
 */
import { median } from "../../reckon/statistics/median.ts";
import { studentTQuantile } from "../../reckon/statistics/student-t.ts";

/** How far people differ from a recipe's typical time, and stages of one person among them. */
const PERSON_VARIANCE = 0.25 ** 2;
const STAGE_VARIANCE = 0.25 ** 2;
/** Inverse gamma belief about the scatter of one stage from day to day: about a fifth. */
const SCATTER = { a: 2, b: 2 * 0.2 ** 2 };
/** From this many observations up, the median resists a bad day better than the mean. */
const MEDIAN_FROM = 8;

/** A mean of all groups with its own variance, and the scatter within a group. */
export type Pool = { mean: number; meanVariance: number; within: number; freedom: number };

/** The middle of what comes next, and the range that holds four in five. */
export type Expected = { middle: number; low: number; high: number };

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** The pool of several groups of observations, in any order; empty groups count for nothing. */
export function poolOf(groups: readonly (readonly number[])[]): Pool {
  const filled = groups.filter((group) => group.length > 0);
  let { a, b } = SCATTER;
  for (const group of filled) {
    const mean = meanOf(group);
    a += (group.length - 1) / 2;
    b += group.reduce((sum, value) => sum + (value - mean) ** 2, 0) / 2;
  }
  const within = b / a;
  let precision = 1 / PERSON_VARIANCE;
  let weighted = 0;
  for (const group of filled) {
    const weight = 1 / (STAGE_VARIANCE + within / group.length);
    precision += weight;
    weighted += weight * meanOf(group);
  }
  return { mean: weighted / precision, meanVariance: 1 / precision, within, freedom: 2 * a };
}

/**
 * The next observation of a group that has shown `own` so far; `towards` is what it is drawn to,
 * where something better than the pool's mean is known.
 */
export function expectNext(
  own: readonly number[],
  pool: Pool,
  towards: { mean: number; variance: number } = { mean: pool.mean, variance: pool.meanVariance },
): Expected {
  const n = own.length;
  const ownVariance = n > 0 ? pool.within / n : 0;
  const share = n > 0 ? STAGE_VARIANCE / (STAGE_VARIANCE + ownVariance) : 0;
  const seen = n >= MEDIAN_FROM ? median(own) : n > 0 ? meanOf(own) : 0;
  const middle = share * seen + (1 - share) * towards.mean;
  const level = n > 0 ? share * ownVariance : STAGE_VARIANCE;
  const spread = Math.sqrt(pool.within + level + (1 - share) ** 2 * towards.variance);
  const reach = spread * studentTQuantile(0.9, pool.freedom);
  return { middle, low: middle - reach, high: middle + reach };
}
