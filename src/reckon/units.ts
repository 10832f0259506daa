// data table
/** Units of quantities, with what one of each is in the base unit of its kind. */

export type QuantityKind =
  | "length"
  | "temperature"
  | "pressure"
  | "mass"
  | "volume"
  | "duration"
  | "power";

/** The unit a quantity's `value` is in, by kind. */
export const BASE_UNITS = {
  length: "ft",
  temperature: "C",
  pressure: "kPa",
  mass: "g",
  volume: "mL",
  duration: "min",
  power: "W",
} as const satisfies Record<QuantityKind, string>;

/** What a kind is called in a message, and how one is written. */
export const KIND_WORDS: Record<QuantityKind, { name: string; examples: string }> = {
  length: { name: "a height", examples: "6200ft or 1890m" },
  temperature: { name: "a temperature", examples: "203F or 95C" },
  pressure: { name: "a pressure", examples: "11psi or 75kPa" },
  mass: { name: "a weight", examples: "12lb or 5.4kg" },
  volume: { name: "a volume", examples: "2L or 3 1/2 cups" },
  duration: { name: "a length of time", examples: "45min or 6h" },
  power: { name: "a power", examples: "2500W or 9000BTU/h" },
};

// Exact by definition (NIST Special Publication 811): foot, pound, US gallon and inch of water
// aside, everything here follows from 0.3048 m, 453.59237 g and 3785.411784 mL.
export const FT_PER_M = 1 / 0.3048;
export const MM_PER_IN = 25.4;
export const PT_PER_MM = 72 / MM_PER_IN;
export const G_PER_LB = 453.59237;
const ML_PER_GALLON = 3785.411784;
export const ML_PER_QUART = ML_PER_GALLON / 4;
export const ML_PER_PINT = ML_PER_GALLON / 8;
export const ML_PER_CUP = ML_PER_GALLON / 16;
export const ML_PER_TBSP = ML_PER_GALLON / 256;
export const ML_PER_TSP = ML_PER_GALLON / 768;
export const KPA_PER_PSI = 6.894757293168;

type Unit = { kind: QuantityKind; factor: number; offset?: number };

const NAMES: [QuantityKind, number, string][] = [
  ["length", 1, "ft foot feet '"],
  ["length", (FT_PER_M * MM_PER_IN) / 1000, "inch inches"],
  ["length", FT_PER_M / 100, "centimeter centimeters centimetre centimetres cm"],
  ["length", FT_PER_M / 1000, "millimeter millimeters millimetre millimetres mm"],
  ["length", FT_PER_M, "m metre metres meter meters"],
  ["pressure", KPA_PER_PSI, "psi psig psia"],
  ["pressure", 1, "kpa kilopascal kilopascals"],
  ["pressure", 0.1, "hpa mbar millibar millibars mb"],
  ["pressure", 0.001, "pa"],
  ["pressure", 100, "bar"],
  ["pressure", 3.386389, "inhg"],
  ["mass", 1, "g gram grams"],
  ["mass", 0.001, "mg"],
  ["mass", 1000, "kg kilo kilos kilogram kilograms"],
  ["mass", G_PER_LB, "lb lbs pound pounds"],
  ["mass", G_PER_LB / 16, "oz ounce ounces"],
  ["volume", 1, "ml millilitre millilitres milliliter milliliters"],
  ["volume", 1000, "l litre litres liter liters"],
  ["volume", ML_PER_TSP, "tsp teaspoon teaspoons"],
  ["volume", ML_PER_TBSP, "tbsp tbs tablespoon tablespoons"],
  ["volume", ML_PER_CUP, "cup cups"],
  ["volume", ML_PER_PINT, "pint pints pt pts"],
  ["volume", ML_PER_QUART, "quart quarts qt qts"],
  ["volume", ML_PER_GALLON, "gal gals gallon gallons"],
  ["volume", ML_PER_GALLON / 128, "fl_oz floz fluid_ounce fluid_ounces"],
  ["duration", 1 / 60, "s sec secs second seconds"],
  ["duration", 1, "min mins minute minutes"],
  ["duration", 60, "h hr hrs hour hours"],
  ["duration", 1440, "d day days"],
  ["power", 1, "w watt watts"],
  ["power", 1000, "kw kilowatt kilowatts"],
  ["power", 0.29307107, "btu/h btu/hr btuh btu"],
];

/** Every unit by its lower-case name; `value in base = said * factor + offset`. */
export const UNITS: ReadonlyMap<string, Unit> = new Map<string, Unit>([
  ...NAMES.flatMap(([kind, factor, names]) =>
    names.split(" ").map((name): [string, Unit] => [name.replaceAll("_", " "), { kind, factor }]),
  ),
  ["c", { kind: "temperature", factor: 1, offset: 0 }],
  ["celsius", { kind: "temperature", factor: 1, offset: 0 }],
  ["f", { kind: "temperature", factor: 5 / 9, offset: -160 / 9 }],
  ["fahrenheit", { kind: "temperature", factor: 5 / 9, offset: -160 / 9 }],
]);

export function celsiusOf(fahrenheit: number): number {
  return ((fahrenheit - 32) * 5) / 9;
}

export function fahrenheitOf(celsius: number): number {
  return (celsius * 9) / 5 + 32;
}
