import { describe, expect, it } from "vitest";
import { acidAtEquilibrium, vinegarDensityGPerMl } from "../../src/reckon/acid.ts";
import type { Acid } from "../../src/reckon/charge-balance.ts";
import { ACETIC, CITRIC, PHOSPHORIC, solvePh } from "../../src/reckon/charge-balance.ts";
import { G_PER_LB, ML_PER_CUP } from "../../src/reckon/units.ts";
import { good } from "../reckon/good-result.ts";

// pKa from memory of the standard tables.
const PHTHALIC: Acid = { pKas: [2.95, 5.408], charge: 0 };
const TARTARIC: Acid = { pKas: [3.033, 4.366], charge: 0 };

describe("buffer standards of NIST, 25 C (from memory)", () => {
  it.each([
    ["potassium hydrogen phthalate, 0.05 m", PHTHALIC, 0.05, 0.05, 4.005],
    ["phosphates, 0.025 and 0.025 m", PHOSPHORIC, 0.05, 0.075, 6.865],
    ["phosphates, 0.008695 and 0.03043 m", PHOSPHORIC, 0.039125, 0.069555, 7.413],
    ["potassium dihydrogen citrate, 0.05 m", CITRIC, 0.05, 0.05, 3.776],
    ["potassium hydrogen tartrate, 0.0341 m", TARTARIC, 0.0341, 0.0341, 3.557],
    ["potassium hydrogen tartrate, 0.01 m", TARTARIC, 0.01, 0.01, 3.639],
    ["acetic acid and acetate, 0.1 and 0.1 m", ACETIC, 0.2, 0.1, 4.65],
    ["acetic acid and acetate, 0.01 and 0.01 m", ACETIC, 0.02, 0.01, 4.715],
  ] as const)("%s", (_, acid, molal, strongIons, ph) => {
    expect(Math.abs(solvePh([{ acid, molal }], strongIons).ph - ph)).toBeLessThan(0.02);
  });
});

describe("acetic acid by itself", () => {
  // Textbook values (0.1, 0.01 and 1 M; from memory), the others by the plain equilibrium.
  it.each([
    [1, 2.38],
    [0.5, 2.53],
    [0.1, 2.88],
    [0.05, 3.03],
    [0.01, 3.39],
    [0.001, 3.91],
  ])("at %d mol/kg has the textbook pH", (molal, ph) => {
    expect(Math.abs(solvePh([{ acid: ACETIC, molal }], 0).ph - ph)).toBeLessThan(0.006);
  });

  it("makes 5 % vinegar of pH 2.4, a household figure", () => {
    const vinegar = good(
      acidAtEquilibrium({ vinegarMl: 1000, strengthPercent: 5, waterG: 0, produce: [] }),
    );
    expect(vinegar.ph).toBe(2.4);
  });

  // Density of acetic acid at 20 C, g/mL (CRC Handbook): 1, 5 and 10 % by weight.
  it.each([
    [1, 0.9996],
    [5, 1.0052],
    [10, 1.0121],
  ])("weighs as printed at %d %%", (percent, density) => {
    expect(Math.abs(vinegarDensityGPerMl(percent) - density)).toBeLessThan(0.0003);
  });
});

describe("pickles", () => {
  // USDA Complete Guide, Guide 6, bread-and-butter pickles: 6 lb cucumbers, 3 lb onions, 4 cups
  // of 5 % vinegar, 4 1/2 cups of sugar.
  const breadAndButter = {
    vinegarMl: 4 * ML_PER_CUP,
    strengthPercent: 5,
    waterG: 0,
    sugarG: 900,
    produce: [
      { name: "cucumbers", grams: 6 * G_PER_LB },
      { name: "onions", grams: 3 * G_PER_LB },
    ],
  };

  it("has the acid of the guide's recipe by mass balance", () => {
    const made = good(acidAtEquilibrium(breadAndButter));
    expect(made.value).toBeCloseTo(0.797, 2);
    expect(made.waterPhasePercent).toBeCloseTo(1, 1);
  });

  // FDA approximate pH of foods: dill pickles 3.20-3.70, pickled cucumbers 4.20-4.60.
  it("has a pH range inside what FDA lists for pickles", () => {
    const made = good(acidAtEquilibrium(breadAndButter));
    expect(made.ph).toBe(3.8);
    expect(made.phRange?.[0]).toBeGreaterThanOrEqual(3.2);
    expect(made.phRange?.[1]).toBeLessThanOrEqual(4.6);
  });

  // USDA ARS, Raleigh: cucumbers brought to 1.1 % acetic acid come to about pH 3.5, and acetic
  // acid alone does not bring them to 3.3.
  it("puts cucumbers at 1.1 % acetic acid near the pH measured", () => {
    const cucumbers = { name: "cucumbers", grams: 550 };
    const made = good(
      acidAtEquilibrium({ vinegarMl: 224, strengthPercent: 5, waterG: 226, produce: [cucumbers] }),
    );
    expect(made.value).toBeCloseTo(1.12, 1);
    expect(made.phRange?.[0]).toBeLessThanOrEqual(3.5);
    expect(made.phRange?.[1]).toBeGreaterThanOrEqual(3.5);
    expect(made.ph).toBeGreaterThan(3.3);
  });

  it("still reckons a badly diluted brine under 4.6, and says that proves nothing", () => {
    const cut = { ...breadAndButter, vinegarMl: 2 * ML_PER_CUP, waterG: 473 };
    const made = good(acidAtEquilibrium(cut));
    expect(made.ph).toBeLessThan(4.6);
    expect(made.notes.join(" ")).toContain("never a reason to change a tested process");
    expect(made.notes.join(" ")).toContain("a badly diluted brine still reckons under 4.6");
  });
});
