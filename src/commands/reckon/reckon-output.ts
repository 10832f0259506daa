import type { Reckoned } from "../../reckon/reckoned.ts";
import { rounded, withCommas } from "../../reckon/reckoned.ts";

/** How many decimals a value is shown with, by its unit; JSON has four. */
const DECIMALS: Record<string, number> = {
  F: 1,
  kPa: 2,
  psi: 2,
  ft: 0,
  "%": 2,
  g: 1,
  min: 1,
  jars: 0,
};
const JSON_DECIMALS = 4;

function shown(value: number, unit: string): string {
  return withCommas(value, DECIMALS[unit] ?? 2);
}

/** Extra fields as plain lines, by name; what is not listed appears only in JSON. */
const EXTRA_LINES: Record<string, (value: number) => string> = {
  celsius: (value) => `${value.toFixed(1)} C`,
  psi: (value) => `${value.toFixed(2)} psi`,
  salometer: (value) => `${value.toFixed(1)} degrees salometer`,
  gramsPerLitre: (value) => `${value.toFixed(1)} g of salt in a liter of brine`,
  tablespoons: (value) => `${value.toFixed(1)} tablespoons of canning salt`,
  millilitres: (value) => `${withCommas(value)} mL of syrup`,
  waterPhasePercent: (value) => `${value.toFixed(2)} % of the water phase`,
  acidGramsPerKg: (value) => `${value.toFixed(1)} g of acetic acid for each kg of produce`,
  ph: (value) => `pH about ${value.toFixed(1)}`,
  heatingMinutes: (value) => `${value.toFixed(1)} min of it up to the hottest reading`,
  loads: (value) => `${value} canner ${value === 1 ? "load" : "loads"}`,
};

function isPair(value: unknown): value is [number, number] {
  return Array.isArray(value) && value.length === 2 && value.every((one) => Number.isFinite(one));
}

function jsonValue(value: unknown): unknown {
  if (typeof value === "number") return rounded(value, JSON_DECIMALS);
  return isPair(value) ? value.map((one) => rounded(one, JSON_DECIMALS)) : value;
}

/** One line of JSON: value, unit, range, estimate, source, notes and the kind's own fields. */
export function reckonedJson(reckoned: Reckoned): string {
  const entries = Object.entries(reckoned).map(([key, value]) => [key, jsonValue(value)]);
  return `${JSON.stringify(Object.fromEntries(entries))}\n`;
}

/** The same as plain lines, the value first. */
export function reckonedText(reckoned: Reckoned): string {
  const { value, unit, range, estimate, source, notes, ...extra } = reckoned;
  const about = estimate ? ", an estimate" : "";
  const lines = [`${shown(value, unit)} ${unit}${about}`];
  if (range && range[1] > range[0]) {
    lines.push(`range ${shown(range[0], unit)} to ${shown(range[1], unit)} ${unit}`);
  }
  for (const [key, one] of Object.entries(extra as Record<string, unknown>)) {
    const line = EXTRA_LINES[key];
    if (line && typeof one === "number") lines.push(line(one));
    if (key === "phRange" && isPair(one)) {
      lines.push(`pH range ${one[0].toFixed(1)} to ${one[1].toFixed(1)}, an estimate`);
    }
  }
  lines.push(`source: ${source}`, ...notes.map((note) => `note: ${note}`));
  return `${lines.join("\n")}\n`;
}
