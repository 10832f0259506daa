/** Amounts in the measures a kitchen has: cups, tablespoons, fractions, followed by grams. */

import { findHouseholdWeight, gramsPerMl } from "./household-weights.ts";
import type { Quantity } from "./quantity.ts";
import { withCommas } from "./reckoned.ts";
import { G_PER_LB, ML_PER_CUP, ML_PER_QUART, ML_PER_TBSP, ML_PER_TSP } from "./units.ts";

type Measure = { one: string; many: string; ml: number; fractions: readonly number[] };

const QUART: Measure = { one: "quart", many: "quarts", ml: ML_PER_QUART, fractions: [0, 1 / 2] };
const CUP: Measure = {
  one: "cup",
  many: "cups",
  ml: ML_PER_CUP,
  fractions: [0, 1 / 4, 1 / 3, 1 / 2, 2 / 3, 3 / 4],
};
const TABLESPOON: Measure = {
  one: "tablespoon",
  many: "tablespoons",
  ml: ML_PER_TBSP,
  fractions: [0, 1 / 2],
};
const TEASPOON: Measure = {
  one: "teaspoon",
  many: "teaspoons",
  ml: ML_PER_TSP,
  fractions: [0, 1 / 8, 1 / 4, 1 / 2, 3 / 4],
};

const SMALLEST_ML = ML_PER_TSP / 8;
/** Measuring by cup and spoon is no finer than this; within it, fewer measures are better. */
const CLOSE_ENOUGH = 0.02;

const FRACTION_WORDS: [number, string][] = [
  [1 / 8, "1/8"],
  [1 / 4, "1/4"],
  [1 / 3, "1/3"],
  [1 / 2, "1/2"],
  [2 / 3, "2/3"],
  [3 / 4, "3/4"],
];

/** A count with its fraction as on a measuring cup: `3 1/2`, `1/8`. */
function mixedNumber(count: number): string {
  const whole = Math.floor(count + 1e-6);
  const rest = count - whole;
  const fraction = FRACTION_WORDS.find(([value]) => Math.abs(value - rest) < 1e-6)?.[1];
  if (!fraction) return String(whole);
  return whole === 0 ? fraction : `${whole} ${fraction}`;
}

function spoken(count: number, measure: Measure): string {
  return `${mixedNumber(count)} ${count > 1 + 1e-6 ? measure.many : measure.one}`;
}

/** Level measures: an amount a hair short of a cup is a cup. */
const HAIR = 0.99;

/**
 * Which measure to use for an amount; the smaller one that makes up the rest, and how much of that:
 * no more than the step between the large one's marks.
 */
function measuresFor(volumeMl: number): { large: Measure; small: Measure | null; mostMl: number } {
  if (volumeMl >= 12 * ML_PER_CUP * HAIR) {
    return { large: QUART, small: CUP, mostMl: ML_PER_QUART };
  }
  if (volumeMl >= (ML_PER_CUP / 4) * HAIR) {
    return { large: CUP, small: TABLESPOON, mostMl: ML_PER_CUP / 4 };
  }
  if (volumeMl >= ML_PER_TBSP * HAIR) {
    return { large: TABLESPOON, small: TEASPOON, mostMl: ML_PER_TBSP };
  }
  return { large: TEASPOON, small: null, mostMl: 0 };
}

/** Counts of a measure near an amount: every fraction from one whole below to one above. */
function counts(measure: Measure, volumeMl: number): number[] {
  const whole = Math.floor(volumeMl / measure.ml + 1e-9);
  return [whole - 1, whole, whole + 1]
    .flatMap((count) => measure.fractions.map((fraction) => count + fraction))
    .filter((count) => count > 0);
}

/** `baseMl` is what the large measure takes of it. */
type Candidate = { ml: number; baseMl: number; parts: string[]; pieces: number };

function candidates(volumeMl: number): Candidate[] {
  const { large, small, mostMl } = measuresFor(volumeMl);
  return counts(large, volumeMl).flatMap((count) => {
    const base = count * large.ml;
    const pieces = Number.isInteger(count) ? 1 : 2;
    const parts = [spoken(count, large)];
    const alone: Candidate = { ml: base, baseMl: base, parts, pieces };
    if (!small || volumeMl <= base) return [alone];
    const filled = counts(small, volumeMl - base)
      .filter((extra) => extra * small.ml < mostMl)
      .map((extra) => ({
        ml: base + extra * small.ml,
        baseMl: base,
        parts: [...alone.parts, spoken(extra, small)],
        pieces: pieces + 2 + (Number.isInteger(extra) ? 0 : 1),
      }));
    return [alone, ...filled];
  });
}

/**
 * A volume in mL as measured out in a kitchen: `3 1/2 cups`, `1/4 cup + 1 tablespoon`,
 * `1/8 teaspoon`; within 2 %, or as near as cups and spoons can come (7 % from a quarter cup up).
 * With `atLeast`, never less than the amount, as acid and salt need.
 */
export function formatVolume(volumeMl: number, options: { atLeast?: boolean } = {}): string {
  if (!(volumeMl > 0)) return "none";
  if (volumeMl < SMALLEST_ML * 0.98) {
    return options.atLeast ? "1/8 teaspoon" : "a pinch (under 1/8 teaspoon)";
  }
  const low = options.atLeast ? volumeMl * (1 - 1e-6) : 0;
  const error = (one: Candidate) => Math.abs(one.ml - volumeMl) / volumeMl;
  const usable = candidates(volumeMl).filter((one) => one.ml >= low);
  const close = usable.filter((one) => error(one) <= CLOSE_ENOUGH);
  const ranked = close.length > 0 ? close : usable;
  const nearer = (a: Candidate, b: Candidate) => {
    const by = error(a) - error(b);
    return Math.abs(by) < 1e-9 ? 0 : by;
  };
  const simpler = (a: Candidate, b: Candidate) => a.pieces - b.pieces;
  const [first, then] = close.length > 0 ? [simpler, nearer] : [nearer, simpler];
  ranked.sort((a, b) => first(a, b) || then(a, b) || b.baseMl - a.baseMl);
  return ranked[0]?.parts.join(" + ") ?? `${Math.ceil(volumeMl)} mL`;
}

/** Grams as a kitchen scale shows them: `1.2 g`, `148 g`, `1,475 g`. */
export function formatGrams(grams: number): string {
  if (grams < 10) return `${Math.round(grams * 10) / 10} g`;
  const step = grams < 1000 ? 1 : 5;
  return `${withCommas(Math.round(grams / step) * step)} g`;
}

/** A weight as read off a scale: `3 lb 4 oz (1,475 g)`, `12 lb (5,445 g)`, `1 1/2 oz (43 g)`. */
export function formatWeight(grams: number): string {
  const pounds = Math.floor(grams / G_PER_LB + 1e-6);
  const ounces = ((grams - pounds * G_PER_LB) / G_PER_LB) * 16;
  const halves = Math.round(ounces * 2) / 2;
  const shown = pounds > 0 ? Math.round(ounces) : halves;
  const whole = shown >= 16 ? pounds + 1 : pounds;
  const rest = shown >= 16 ? 0 : shown;
  const said = [whole > 0 ? `${whole} lb` : "", rest > 0 ? `${mixedNumber(rest)} oz` : ""]
    .filter((part) => part !== "")
    .join(" ");
  return said === "" ? formatGrams(grams) : `${said} (${formatGrams(grams)})`;
}

/** Grams in a spooned or poured volume of an ingredient; undefined where nobody weighed it. */
export function gramsOf(volumeMl: number, ingredient: string): number | undefined {
  const row = findHouseholdWeight(ingredient);
  return row ? volumeMl * gramsPerMl(row) : undefined;
}

/** An ingredient's amount in kitchen measures, followed by grams: `1/2 cup (148 g)`. */
export function formatAmount(
  amount: Pick<Quantity, "kind" | "value">,
  ingredient: string,
  options: { atLeast?: boolean } = {},
): string {
  if (amount.kind === "mass") return formatWeight(amount.value);
  const said = formatVolume(amount.value, options);
  const grams = gramsOf(amount.value, ingredient);
  return grams === undefined ? said : `${said} (${formatGrams(grams)})`;
}
