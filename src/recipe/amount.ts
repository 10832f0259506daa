import { readNumber } from "../reckon/quantity.ts";
import { ML_PER_CUP, UNITS } from "../reckon/units.ts";

/**
 * Amounts as recipes write them, taken apart into number and unit: `4 1/2 cups`,
 * `8 to 16 heads`, `6 lb`. A unit that is not a measure counts as pieces of that thing.
 */

export type Amount = {
  low: number;
  /** Same as `low` unless a range was written. */
  high: number;
  /** The unit's own name as written in the singular: `cup`, `lb`, `head`. */
  unit: string;
  kind: "volume" | "mass" | "count";
  /** Milliliters, grams or pieces in one unit. */
  perUnit: number;
};

/** Singular of a counted thing: `heads` becomes `head`, `berries` `berry`. */
function singular(word: string): string {
  if (/ies$/.test(word)) return word.replace(/ies$/, "y");
  return /[^s]s$/.test(word) ? word.slice(0, -1) : word;
}

/** Plural of a counted thing, for a count other than one. */
export function plural(word: string, count: number): string {
  if (count <= 1 || word === "") return word;
  if (/[^aeiou]y$/.test(word)) return word.replace(/y$/, "ies");
  return /(s|x|ch|sh|[^aeiou]o)$/.test(word) ? `${word}es` : `${word}s`;
}

/** Takes an amount apart; undefined where there is no number, or none from 0 to 100,000. */
export function parseAmount(text: string): Amount | undefined {
  if (text.length > 60) return undefined;
  const first = readNumber(text.trim());
  if (!first) return undefined;
  const range = /^\s*(?:to|-|–)\s*(?=\d)/.exec(first.rest);
  const second = range ? readNumber(first.rest.slice(range[0].length)) : undefined;
  const { rest } = second ?? first;
  const low = first.value;
  const high = second?.value ?? low;
  const word = rest.trim();
  if (!(low > 0) || high < low || high > 100_000 || !/^[a-zA-Z -]*$/.test(word)) return undefined;
  const known = UNITS.get(word.toLowerCase());
  if (known && (known.kind === "volume" || known.kind === "mass")) {
    return { low, high, unit: singular(word), kind: known.kind, perUnit: known.factor };
  }
  return known ? undefined : { low, high, unit: singular(word), kind: "count", perUnit: 1 };
}

/** Cups of a volume, the higher end of a range; undefined for weights and counts. */
export function cupsOf(text: string | undefined): number | undefined {
  const amount = text === undefined ? undefined : parseAmount(text);
  return amount?.kind === "volume" ? (amount.high * amount.perUnit) / ML_PER_CUP : undefined;
}
