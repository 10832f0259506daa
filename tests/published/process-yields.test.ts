import { describe, expect, it } from "vitest";
import { publishedYield } from "../../src/recipe/jar-volume.ts";
import { recipeOf, wholeLibrary } from "../recipe/library-files.ts";

const library = wholeLibrary();

/** Pounds of produce for seven quarts and nine pints. USDA Complete Guide, Guides 2, 3 and 4. */
const LOADS: [recipe: string, sevenQuartsLb: number, ninePintsLb: number][] = [
  ["snap-beans", 14, 9],
  ["beets", 21, 13.5],
  ["carrots", 17.5, 11],
  ["whole-kernel-corn", 31.5, 20],
  ["asparagus", 24.5, 16],
  ["dry-beans", 5, 3.25],
  ["whole-tomatoes", 21, 13],
  ["crushed-tomatoes", 22, 14],
  ["tomato-juice", 23, 14],
  ["sliced-apples", 19, 12.25],
  ["applesauce", 21, 13.5],
  ["peaches", 17.5, 11],
  ["pears", 17.5, 11],
  ["whole-berries", 12, 8],
  ["rhubarb", 10.5, 7],
  ["green-peas", 31.5, 20],
  ["lima-beans", 28, 18],
  ["greens", 28, 18],
  ["okra", 11, 7],
  ["potatoes", 20, 13],
  ["sweet-potatoes", 17.5, 11],
  ["squash-cubes", 16, 10],
  ["tomato-sauce", 35, 21],
  ["plums", 14, 9],
  ["cherries", 17.5, 11],
];

/** Jars of one recipe's own amount. USDA Complete Guide, Guides 2, 6 and 7. */
const YIELDS: [recipe: string, weightLb: number, jars: number, size: "pint" | "quart"][] = [
  ["bread-and-butter-pickles", 6, 8, "pint"],
  ["dilled-green-beans", 4, 8, "pint"],
  ["pickled-beets", 7, 8, "pint"],
  ["sauerkraut", 25, 9, "quart"],
];

describe("produce for a canner load is as published", () => {
  for (const [id, quartsLb, pintsLb] of LOADS) {
    it(id, () => {
      const recipe = recipeOf(library, id);
      expect(publishedYield(recipe, "quart")).toEqual({ weightLb: quartsLb, jars: 7 });
      expect(publishedYield(recipe, "pint")).toEqual({ weightLb: pintsLb, jars: 9 });
    });
  }
});

describe("a recipe's own yield is as published", () => {
  for (const [id, weightLb, jars, size] of YIELDS) {
    it(id, () => {
      expect(publishedYield(recipeOf(library, id), size)).toEqual({ weightLb, jars });
    });
  }
});
