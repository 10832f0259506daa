import type { HouseholdWeight } from "./household-weights.ts";
import { HOUSEHOLD_WEIGHTS } from "./household-weights.ts";
import type { Quantity } from "./quantity.ts";
import type { Reckoned } from "./reckoned.ts";
import type { Result } from "./result.ts";
import { fail, ok } from "./result.ts";
import { ML_PER_CUP } from "./units.ts";

/** Water at 20 °C, g/mL. */
const WATER_G_PER_ML = 0.9982;

/** Saturated at 60 °F: 100 degrees of the salometer are this percent of salt by weight. */
const SATURATED_PERCENT = 26.395;

export const SALT_KINDS = [
  "canning-salt",
  "table-salt",
  "coarse-kosher-salt",
  "flake-salt",
] as const;
type SaltKind = (typeof SALT_KINDS)[number];

const BRINE_SOURCE =
  "salt solution densities at 20 C (laboratory tables); salometer at 60 F, 100 degrees = 26.395 %";

/** Grams of salt or water in an amount, with the range that a volume of salt may weigh. */
type Grams = { value: number; range: [number, number] | null; note: string | null };

function rowOf(kind: SaltKind): HouseholdWeight {
  const row = HOUSEHOLD_WEIGHTS.find(({ id }) => id === kind);
  if (!row) throw new Error(`no household weight for ${kind}`);
  return row;
}

/** Grams of a salt given by weight or by volume; a volume carries the range of a cup's weight. */
export function saltGrams(salt: Pick<Quantity, "kind" | "value">, kind: SaltKind): Grams {
  if (salt.kind === "mass") return { value: salt.value, range: null, note: null };
  const row = rowOf(kind);
  const cups = salt.value / ML_PER_CUP;
  const perCup = row.gPerCup ?? 0;
  const [least, most] = row.cupRangeG ?? [perCup, perCup];
  return {
    value: cups * perCup,
    range: [cups * least, cups * most],
    note:
      `salt by volume, taken as ${kind.replaceAll("-", " ")} at ${perCup} g a cup ` +
      `(${least} to ${most}); weigh it to be sure`,
  };
}

/** Grams of water given by weight or by volume at 20 °C. */
export function waterGrams(water: Pick<Quantity, "kind" | "value">): number {
  return water.kind === "mass" ? water.value : water.value * WATER_G_PER_ML;
}

/**
 * Density of a salt solution at 20 °C, g/L, for a percent by weight from 0 to 26; within
 * 0.23 g/L of the printed table.
 */
export function brineDensityGPerL(percent: number): number {
  const w = percent / 100;
  return 998.2 + 708.676 * w + 126.83 * w ** 2 + 350.017 * w ** 3;
}

type Brine = Reckoned & { salometer: number; gramsPerLitre: number };

/** Strength of a brine of salt dissolved in water: percent by weight, salometer and g/L. */
export function brine(
  salt: Pick<Quantity, "kind" | "value">,
  water: Pick<Quantity, "kind" | "value">,
  kind: SaltKind = "canning-salt",
): Result<Brine> {
  const grams = saltGrams(salt, kind);
  const waterG = waterGrams(water);
  if (!(waterG > 0))
    return fail("--water: without water there is no brine; give how much, such as 2L");
  const percentOf = (g: number) => (100 * g) / (g + waterG);
  const value = percentOf(grams.value);
  if (value > SATURATED_PERCENT) {
    return fail(
      `--salt: that is ${value.toFixed(1)} % salt; water holds no more than ` +
        `${SATURATED_PERCENT.toFixed(1)} %: less salt or more water`,
    );
  }
  const notes = ["percent of the finished brine's weight: salt over salt and water together"];
  if (grams.note) notes.push(grams.note);
  notes.push("a cannery's salometer may count 25 % as 100 degrees; this one is 26.395 %");
  return ok({
    value,
    unit: "%",
    range: grams.range ? [percentOf(grams.range[0]), percentOf(grams.range[1])] : null,
    estimate: grams.range !== null,
    source: BRINE_SOURCE,
    notes,
    salometer: (100 * value) / SATURATED_PERCENT,
    gramsPerLitre: (value / 100) * brineDensityGPerL(value),
  });
}

/** What a salt percent is a percent of. */
export const SALT_BASES = ["produce", "brine", "water"] as const;
type SaltBasis = (typeof SALT_BASES)[number];

const BASIS_NOTES: Record<SaltBasis, string> = {
  produce: "percent of the produce's weight: salt for every 100 g of what is salted",
  brine: "percent of the finished brine's weight, made from that much water",
  water: "grams of salt for every 100 mL of water, before it is dissolved",
};

/** The highest possible salt percentage, by basis. */
const MOST_PERCENT: Record<SaltBasis, number> = {
  produce: 50,
  brine: SATURATED_PERCENT,
  water: 35.8,
};

/**
 * Salt for a percent, grams. A weight is produce to be salted unless `basis` says otherwise; a
 * volume is water for a brine. The basis is always named in the notes.
 */
export function saltFor(
  percent: number,
  amount: Pick<Quantity, "kind" | "value">,
  basis: SaltBasis = amount.kind === "mass" ? "produce" : "brine",
): Result<Reckoned & { tablespoons: number; basis: SaltBasis }> {
  const most = MOST_PERCENT[basis];
  if (!(percent > 0 && percent <= most)) {
    return fail(`--percent: ${percent} % is not possible for ${basis} (0 to ${most} %); check it`);
  }
  if (!(amount.value > 0)) return fail("--for: nothing to salt; give how much, such as 12lb or 2L");
  if (basis === "produce" && amount.kind !== "mass") {
    return fail("--for: produce is salted by weight; give pounds or kilograms, such as 12lb");
  }
  const share = percent / 100;
  const grams = {
    produce: () => share * amount.value,
    brine: () => (share / (1 - share)) * waterGrams(amount),
    water: () => share * (amount.kind === "mass" ? amount.value / WATER_G_PER_ML : amount.value),
  }[basis]();
  const row = rowOf("canning-salt");
  return ok({
    value: grams,
    unit: "g",
    range: null,
    estimate: false,
    source: `arithmetic; tablespoons of canning salt at ${row.gPerTbsp} g (${row.source})`,
    notes: [
      BASIS_NOTES[basis],
      "weigh it: a cup of salt is 135 to 300 g by its crystal; no less than a tested ferment says",
    ],
    tablespoons: grams / (row.gPerTbsp ?? 1),
    basis,
  });
}
