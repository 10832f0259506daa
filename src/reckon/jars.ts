import type { Reckoned } from "./reckoned.ts";
import type { Result } from "./result.ts";
import { fail, ok } from "./result.ts";

/** Spread of one kitchen's yield around the published figure, as a log standard deviation. */
const LOG_SD = 0.2;
/** Ninety percent of a normal distribution lie within this many standard deviations. */
const NINETY = 1.645;

type JarsQuestion = {
  weightLb: number;
  /** The published amount: these pounds fill this many jars of the size asked for. */
  publishedLb: number;
  publishedJars: number;
  /** Jars of that size the canner holds. */
  cannerHolds?: number;
  /** Where the published amount is from. */
  source: string;
};

type JarsReckoned = Reckoned & {
  /** Canner loads for `value` jars; null where the canner is not given. */
  loads: number | null;
  /** Jars and lids to have ready: the high end of the range. */
  jarsToReady: number;
};

/**
 * Jars a weight of produce fills, by the published pounds per load, to the nearest jar, with the
 * range that nine kitchens in ten fall into.
 */
export function jarsFromProduce(question: JarsQuestion): Result<JarsReckoned> {
  const { weightLb, publishedLb, publishedJars, cannerHolds } = question;
  if (!(weightLb > 0))
    return fail("--for: without produce there are no jars; give its weight, such as 12lb");
  if (cannerHolds !== undefined && !(Number.isInteger(cannerHolds) && cannerHolds > 0)) {
    return fail("--canner-holds: a canner holds whole jars; give how many, such as 7");
  }
  const exact = (weightLb * publishedJars) / publishedLb;
  const value = Math.max(1, Math.round(exact));
  const low = Math.max(1, Math.floor(exact * Math.exp(-NINETY * LOG_SD)));
  const high = Math.max(value, Math.ceil(exact * Math.exp(NINETY * LOG_SD)));
  return ok({
    value,
    unit: "jars",
    range: [low, high],
    estimate: true,
    source: question.source,
    notes: [
      `have ${high} jars and lids ready; a last jar that will not fill goes in the refrigerator`,
    ],
    loads: cannerHolds === undefined ? null : Math.ceil(value / cannerHolds),
    jarsToReady: high,
  });
}
