/** An amount in another unit; between weight and volume only for things of known weight. */
import type { CommandOf } from "../../kitchen/command.ts";
import { findHouseholdWeight, gramsPerMl } from "../../reckon/household-weights.ts";
import { UNITS } from "../../reckon/units.ts";

const ABROAD: Record<string, string> = {
  foot: "feet",
  inch: "inches",
  psi: "pounds of pressure",
  kpa: "kilopascals",
  ml: "milliliters",
  fahrenheit: "degrees Fahrenheit",
  celsius: "degrees Celsius",
};

function words(value: number, unit: string): string {
  const rounded = Number(value.toPrecision(3));
  const many = ABROAD[unit] ?? `${unit}s`;
  return `${rounded} ${rounded === 1 && ABROAD[unit] === undefined ? unit : many}`;
}

/** An ounce of what is measured in cups is a fluid one. */
function kindOf(unit: string, beside: string): string {
  const fluid = unit === "ounce" && UNITS.get(beside)?.kind === "volume";
  return fluid ? "fluid ounce" : unit;
}

export function converted({ slots }: Pick<CommandOf<"convert">, "slots">): string {
  const { value, of } = slots;
  const [from, to] = of
    ? [slots.from, slots.to]
    : [kindOf(slots.from, slots.to), kindOf(slots.to, slots.from)];
  const [one, other] = [UNITS.get(from), UNITS.get(to)];
  if (!one || !other) return "I don't know that unit.";
  const base = value * one.factor + (one.offset ?? 0);
  const name = of ? ` of ${of}` : "";
  const is = value === 1 || one.kind === "temperature" ? "is" : "are";
  const asked = `${words(value, from)}${name} ${is}`;
  if (one.kind === other.kind) {
    return `${asked} ${words((base - (other.offset ?? 0)) / other.factor, to)}.`;
  }
  const kinds = new Set([one.kind, other.kind]);
  if (!kinds.has("mass") || !kinds.has("volume")) return "Those two don't measure the same thing.";
  const weight = of ? findHouseholdWeight(of) : undefined;
  if (!weight) {
    return `That depends on what it is${of ? `, and I don't know what ${of} weighs` : ""}.`;
  }
  const perMl = gramsPerMl(weight);
  const told = one.kind === "mass" ? base / perMl : base * perMl;
  return `${asked} about ${words(told / other.factor, to)}. By ${weight.source}.`;
}
