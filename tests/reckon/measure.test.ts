import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findHouseholdWeight } from "../../src/reckon/household-weights.ts";
import { formatAmount, formatGrams, formatVolume, formatWeight } from "../../src/reckon/measure.ts";
import { parseQuantity } from "../../src/reckon/quantity.ts";
import { ML_PER_CUP, ML_PER_TSP } from "../../src/reckon/units.ts";
import { good } from "./good-result.ts";

const cups = (count: number) => formatVolume(count * ML_PER_CUP);

/** Milliliters of what was written. */
function read(text: string): number {
  return good(parseQuantity(text, ["volume"], "test")).value;
}

describe("a volume in kitchen measures", () => {
  it.each([
    [3.5, "3 1/2 cups"],
    [4.5, "4 1/2 cups"],
    [1 / 3, "1/3 cup"],
    [1, "1 cup"],
    [0.25, "1/4 cup"],
    [1.125, "1 cup + 2 tablespoons"],
    [1 / 8, "2 tablespoons"],
    [1 / 16, "1 tablespoon"],
    [1.5 / 16, "1 1/2 tablespoons"],
    [1 / 48, "1 teaspoon"],
    [1 / 96, "1/2 teaspoon"],
    [1 / 384, "1/8 teaspoon"],
    [1 / 2000, "a pinch (under 1/8 teaspoon)"],
    [25, "6 quarts + 1 cup"],
    [0, "none"],
  ])("of %d cups is %s", (count, said) => {
    expect(cups(count)).toBe(said);
  });

  it("is within 7 % of the amount from a quarter cup up, within 10 % from a teaspoon up", () => {
    fc.assert(
      fc.property(fc.double({ min: ML_PER_TSP, max: 20_000, noNaN: true }), (ml) => {
        const most = ml >= ML_PER_CUP / 4 ? 0.07 : 0.1;
        expect(Math.abs(read(formatVolume(ml)) / ml - 1)).toBeLessThan(most);
      }),
      { numRuns: 500 },
    );
  });

  it("of acid is never less than the amount, nor much more", () => {
    fc.assert(
      fc.property(fc.double({ min: ML_PER_TSP, max: 20_000, noNaN: true }), (ml) => {
        const measured = read(formatVolume(ml, { atLeast: true }));
        expect(measured).toBeGreaterThanOrEqual(ml * 0.99999);
        expect(measured).toBeLessThan(ml * 1.26);
      }),
    );
  });
});

describe("amounts with grams beside", () => {
  it.each([
    ["1/2 cup", "canning or pickling salt", "1/2 cup (148 g)"],
    ["4 1/2 cups", "sugar", "4 1/2 cups (900 g)"],
    ["2 tbsp", "mustard seed", "2 tablespoons (22 g)"],
    ["4 cups", "cider vinegar", "4 cups (956 g)"],
    ["3 tbsp", "dill heads", "3 tablespoons"],
    ["6 lb", "pickling cucumbers", "6 lb (2,720 g)"],
    ["3 lb 4 oz", "onions", "3 lb 4 oz (1,475 g)"],
    ["40 g", "salt", "1 1/2 oz (40 g)"],
    ["5 g", "salt", "5 g"],
  ])("%s of %s is written %s", (amount, ingredient, said) => {
    const quantity = good(parseQuantity(amount, ["mass", "volume"], "test"));
    expect(formatAmount(quantity, ingredient)).toBe(said);
  });

  it("rounds ounces up into the next pound", () => {
    expect(formatWeight(16 * 28.3495 * 1.999)).toBe("2 lb (907 g)");
    expect(formatWeight(1805)).toBe("4 lb (1,805 g)");
    expect(formatGrams(3.13)).toBe("3.1 g");
  });

  it("finds the row of the longest name", () => {
    expect(findHouseholdWeight("5% cider vinegar")?.id).toBe("cider-vinegar");
    expect(findHouseholdWeight("white vinegar, 5 %")?.id).toBe("vinegar");
    expect(findHouseholdWeight("coarse kosher salt")?.id).toBe("coarse-kosher-salt");
    expect(findHouseholdWeight("salt")?.id).toBe("canning-salt");
    expect(findHouseholdWeight("packed brown sugar")?.id).toBe("brown-sugar");
    expect(findHouseholdWeight("whole-kernel corn")?.id).toBe("corn");
    expect(findHouseholdWeight("pickling lime")).toBeUndefined();
  });
});
