/**
 * Amounts as recipes write them (`4 1/2 cups`, `8 to 16 heads`, `6 lb`), taken apart into number
 * and unit. Volumes are US customary measures: cup 236.588 mL (NIST Handbook 44).
 */

export type MeasureKind = "volume" | "weight" | "count";

export type Measure = {
  low: number;
  /** Same as `low` unless a range was written. */
  high: number;
  /** The unit's own name: `cup`, `lb`, `head`; empty for a bare count. */
  unit: string;
  kind: MeasureKind;
  /** Milliliters, grams or pieces in one unit. */
  perUnit: number;
};

const CUP_ML = 236.588;
const POUND_G = 453.592;

const UNITS: Record<string, { unit: string; kind: MeasureKind; perUnit: number }> = {};

function define(kind: MeasureKind, unit: string, perUnit: number, ...names: string[]): void {
  for (const name of [unit, ...names]) UNITS[name] = { unit, kind, perUnit };
}

define("volume", "tsp", CUP_ML / 48, "teaspoon", "teaspoons");
define("volume", "tbsp", CUP_ML / 16, "tablespoon", "tablespoons");
define("volume", "cup", CUP_ML, "cups");
define("volume", "pint", 2 * CUP_ML, "pints");
define("volume", "quart", 4 * CUP_ML, "quarts", "qt");
define("volume", "gallon", 16 * CUP_ML, "gallons", "gal");
define("volume", "mL", 1, "ml");
define("volume", "L", 1000, "l", "liter", "liters", "litre", "litres");
define("weight", "oz", POUND_G / 16, "ounce", "ounces");
define("weight", "lb", POUND_G, "pound", "pounds");
define("weight", "g", 1, "gram", "grams");
define("weight", "kg", 1000, "kilogram", "kilograms");

const NUMBER = String.raw`(?:(\d+)\s+)?(\d+)\/(\d+)|(\d+(?:\.\d+)?)`;
const AMOUNT = new RegExp(`^(?:${NUMBER})(?:\\s*(?:to|-|–)\\s*(?:${NUMBER}))?\\s*([a-zA-Z -]*)$`);

function numberOf(parts: (string | undefined)[]): number | undefined {
  const [whole, over, under, plain] = parts;
  if (plain !== undefined) return Number(plain);
  if (over === undefined || under === undefined || Number(under) === 0) return undefined;
  return Number(whole ?? 0) + Number(over) / Number(under);
}

/** Singular of a counted thing: `heads` becomes `head`, `berries` `berry`. */
function singular(word: string): string {
  if (/ies$/.test(word)) return word.replace(/ies$/, "y");
  return /[^s]s$/.test(word) ? word.slice(0, -1) : word;
}

/**
 * Takes an amount apart. Any word that is no measure counts as pieces of that thing. Undefined
 * where there is no number, or it is zero or above 100,000.
 */
export function parseAmount(text: string): Measure | undefined {
  if (text.length > 60) return undefined;
  const match = AMOUNT.exec(text.trim());
  if (!match) return undefined;
  const low = numberOf(match.slice(1, 5));
  if (low === undefined) return undefined;
  const high = numberOf(match.slice(5, 9)) ?? low;
  if (!(low > 0) || high < low || high > 100_000) return undefined;
  const word = (match[9] ?? "").trim();
  const known = UNITS[word] ?? UNITS[word.toLowerCase()];
  if (known) return { low, high, ...known };
  return { low, high, unit: singular(word), kind: "count", perUnit: 1 };
}

/** Cups of an amount of volume; undefined for weights and counts. The higher end of a range. */
export function cupsOf(text: string | undefined): number | undefined {
  const measure = text === undefined ? undefined : parseAmount(text);
  if (measure?.kind !== "volume") return undefined;
  return (measure.high * measure.perUnit) / CUP_ML;
}

/** Pounds of an amount of weight; undefined for volumes and counts. */
export function poundsOf(text: string | undefined): number | undefined {
  const measure = text === undefined ? undefined : parseAmount(text);
  if (measure?.kind !== "weight") return undefined;
  return (measure.high * measure.perUnit) / POUND_G;
}
