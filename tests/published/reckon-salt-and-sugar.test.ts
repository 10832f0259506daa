import { describe, expect, it } from "vitest";
import { brine, brineDensityGPerL, saltGrams } from "../../src/reckon/salt.ts";
import { syrup, syrupDensityGPerMl } from "../../src/reckon/syrup.ts";
import { G_PER_LB, ML_PER_CUP, ML_PER_PINT, ML_PER_QUART } from "../../src/reckon/units.ts";
import { good } from "../reckon/good-result.ts";

const grams = (value: number) => ({ kind: "mass" as const, value });
const millilitres = (value: number) => ({ kind: "volume" as const, value });
const cups = (count: number) => millilitres(count * ML_PER_CUP);

describe("brine", () => {
  // Density of sodium chloride solutions at 20 C, kg/m3 by percent (laboratory tables).
  it.each([
    [1, 1005.3],
    [2, 1012.2],
    [4, 1026.8],
    [6, 1041.3],
    [8, 1055.9],
    [10, 1070.7],
    [12, 1085.7],
    [14, 1100.9],
    [16, 1116.2],
    [18, 1131.9],
    [20, 1147.8],
    [22, 1164.0],
    [24, 1180.4],
    [26, 1197.2],
  ])("has the printed density at %d %%", (percent, density) => {
    expect(Math.abs(brineDensityGPerL(percent) - density)).toBeLessThan(0.25);
  });

  // Salometer at 60 F, brine tables of the meat and pickle trades: degrees, percent by weight.
  it.each([
    [10, 2.639],
    [20, 5.279],
    [30, 7.919],
    [40, 10.558],
    [50, 13.198],
    [60, 15.837],
    [70, 18.477],
    [80, 21.116],
    [90, 23.756],
    [100, 26.395],
  ])("shows %d degrees at the printed percent", (degrees, percent) => {
    const salt = (percent / (100 - percent)) * 1000;
    const made = good(brine(grams(salt - 1e-6), grams(1000)));
    expect(made.value).toBeCloseTo(percent, 4);
    expect(Math.abs(made.salometer - degrees)).toBeLessThan(0.01);
  });

  // USDA Farmers' Bulletin 1438, Making Fermented Pickles: its table counts 26.5 % as 100 degrees.
  it.each([
    [4, 1.06],
    [20, 5.3],
    [40, 10.6],
    [60, 15.9],
    [80, 21.2],
  ])("is within half a degree of the bulletin at %d degrees", (degrees, percent) => {
    const salt = (percent / (100 - percent)) * 1000;
    expect(Math.abs(good(brine(grams(salt), grams(1000))).salometer - degrees)).toBeLessThan(0.5);
  });

  it("makes about 10 % and 40 degrees of one pound in nine pints, as the bulletin says", () => {
    const made = good(brine(grams(G_PER_LB), millilitres(9 * ML_PER_PINT)));
    expect(made.value).toBeCloseTo(9.6, 1);
    expect(Math.abs(made.salometer - 40)).toBeLessThan(4);
  });

  // An old household table: ounces of salt to a gallon of water. It runs up to half a point under.
  it.each([
    [1, 4 / 3],
    [2, 8 / 3],
    [3, 4],
    [4, 16 / 3],
    [5, 20 / 3],
    [10, 14.25],
    [15, 68 / 3],
  ])("makes %d %% of the table's %d ounces in a gallon, to half a point", (percent, ounces) => {
    const salt = grams((ounces * G_PER_LB) / 16);
    const made = good(brine(salt, millilitres(4 * ML_PER_QUART)));
    expect(Math.abs(made.value - percent)).toBeLessThan(0.5);
  });

  it("tells apart the three things called five percent", () => {
    const added = good(brine(grams(50), millilitres(1000)));
    expect(added.value).toBeCloseTo(4.77, 2);
    expect(added.notes.join(" ")).toContain("percent of the finished brine's weight");
    // 50 g in a litre of finished brine is 4.841 % by weight.
    const inBrine = good(brine(grams(4.841), grams(95.159)));
    expect(inBrine.gramsPerLitre).toBeCloseTo(50, 1);
  });
});

describe("salt by the spoon", () => {
  // USDA Complete Guide, Guide 6, sauerkraut: 3/4 cup for 25 lb, 3 tablespoons for 5 lb. The cup
  // of salt at 292 g is USDA Standard Reference's.
  it("makes kraut of 1.9 and 2.4 percent", () => {
    const threeQuarterCup = saltGrams(cups(0.75), "table-salt").value;
    const threeSpoons = saltGrams(cups(3 / 16), "table-salt").value;
    expect((100 * threeQuarterCup) / (25 * G_PER_LB)).toBeCloseTo(1.93, 2);
    expect((100 * threeSpoons) / (5 * G_PER_LB)).toBeCloseTo(2.41, 2);
  });

  // Guide 6, fermented dills: 1/2 cup of salt in 8 cups of water (and 1/4 cup of vinegar).
  it("makes the guide's dill brine about 7 percent", () => {
    const made = good(brine(cups(0.5), cups(8.25), "table-salt"));
    expect(made.value).toBeCloseTo(6.97, 1);
    expect(made.range?.[0]).toBeLessThan(6.6);
    expect(made.estimate).toBe(true);
  });
});

describe("syrup", () => {
  // Density of sucrose solutions at 20 C, g/mL at 10 to 60 % (sugar tables).
  it.each([
    [10, 1.0381],
    [20, 1.081],
    [30, 1.127],
    [40, 1.1764],
    [50, 1.2296],
    [60, 1.2865],
  ])("has the printed density at %d %%", (percent, density) => {
    expect(Math.abs(syrupDensityGPerMl(percent) - density)).toBeLessThan(0.0001);
  });

  // USDA Complete Guide, Guide 2, syrups for 9 pints and for 7 quarts: cups of water and sugar,
  // and the name's percent. The name is 1 to 4 points above the true percent.
  it.each([
    [10, 6.5, 0.75],
    [20, 5.75, 1.5],
    [30, 5.25, 2.25],
    [10, 10.5, 1.25],
    [20, 9, 2.25],
    [30, 8.25, 3.75],
  ])("is one to four points under the guide's %d %% syrup", (label, water, sugar) => {
    const under = label - good(syrup(cups(sugar), cups(water))).value;
    expect(under).toBeGreaterThan(0.5);
    expect(under).toBeLessThan(4);
  });

  // Cups of syrup from 4 cups of water, as printed in preserving texts (the last from memory).
  it.each([
    [1 / 2, 4.25],
    [1, 4.75],
    [1.75, 5],
    [2.75, 5.33],
    [4, 6],
  ])("fills the printed volume with %d cups of sugar", (sugar, filled) => {
    const made = good(syrup(cups(sugar), cups(4)));
    expect(Math.abs(made.millilitres / ML_PER_CUP - filled)).toBeLessThan(0.25);
  });
});
