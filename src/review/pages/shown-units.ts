/** Readings of thermometers and gauges in the units of the kitchen, for scales and tables. */
import type { Units } from "../../reckon/metric-words.ts";
import { celsiusOf, KPA_PER_PSI } from "../../reckon/units.ts";

type Quantity = { value: number; unit: string };

/** A reading as the record has it, in F or psi, as the kitchen reads it. */
export function quantityOf(value: number, unit: string, units: Units | undefined): Quantity {
  const tenths = (number: number) => Math.round(number * 10) / 10;
  if (units !== "metric") return { value, unit: unit === "F" ? "°F" : unit };
  if (unit === "F") return { value: tenths(celsiusOf(value)), unit: "°C" };
  if (unit === "psi") return { value: tenths(value * KPA_PER_PSI), unit: "kPa" };
  return { value, unit };
}

export function quantityWords(value: number, unit: string, units: Units | undefined): string {
  const said = quantityOf(value, unit, units);
  return `${said.value} ${said.unit}`;
}
