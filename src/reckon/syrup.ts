import type { Quantity } from "./quantity.ts";
import type { Reckoned } from "./reckoned.ts";
import type { Result } from "./result.ts";
import { fail, ok } from "./result.ts";
import { waterGrams } from "./salt.ts";
import { ML_PER_CUP } from "./units.ts";

/** Granulated sugar, grams a cup: USDA Standard Reference household weights. */
const SUGAR_G_PER_CUP = 200;

/** The most sugar water holds at room temperature, percent by weight. */
const SATURATED_PERCENT = 67;

function sugarGrams(sugar: Pick<Quantity, "kind" | "value">): number {
  return sugar.kind === "mass" ? sugar.value : (sugar.value / ML_PER_CUP) * SUGAR_G_PER_CUP;
}

/**
 * Density of a sugar solution at 20 °C, g/mL, for a percent by weight from 0 to 60; within
 * 0.00005 of the printed sucrose table.
 */
export function syrupDensityGPerMl(percent: number): number {
  const w = percent / 100;
  return 0.99823 + 0.38484 * w + 0.1366 * w ** 2 + 0.03799 * w ** 3;
}

/** Sugar in a syrup, percent by weight, and the volume it makes at 20 °C, mL. */
export function syrup(
  sugar: Pick<Quantity, "kind" | "value">,
  water: Pick<Quantity, "kind" | "value">,
): Result<Reckoned & { millilitres: number }> {
  const sugarG = sugarGrams(sugar);
  const waterG = waterGrams(water);
  if (!(waterG > 0))
    return fail("--water: without water there is no syrup; give how much, such as 2L");
  const value = (100 * sugarG) / (sugarG + waterG);
  const notes = [
    "percent of the syrup's weight; the names in guides (light, medium) run 1 to 4 points higher",
  ];
  if (sugar.kind === "volume") notes.push(`sugar taken at ${SUGAR_G_PER_CUP} g a cup`);
  if (value > SATURATED_PERCENT) {
    notes.push(`over ${SATURATED_PERCENT} % the sugar dissolves only while hot`);
  }
  return ok({
    value,
    unit: "%",
    range: null,
    estimate: false,
    source:
      "arithmetic; USDA Standard Reference weight of a cup of sugar; sucrose densities at 20 C",
    notes,
    millilitres: (sugarG + waterG) / syrupDensityGPerMl(Math.min(value, SATURATED_PERCENT)),
  });
}
