import { describe, expect, it } from "vitest";
import { chooseProcess } from "../../src/recipe/choose-process.ts";
import type { JarSize } from "../../src/recipe/recipe.ts";
import { recipeOf, wholeLibrary } from "../recipe/library-files.ts";

const library = wholeLibrary();

/**
 * Atmospheric steam: boiling-water times, 45 minutes at most with the altitude's addition.
 * Oklahoma State University Extension, atmospheric steam canners. The last altitude band each
 * tomato product keeps is worked out from the times of Guide 3.
 */
const STEAM: [recipe: string, jar: JarSize, highestFt: number | null][] = [
  ["crushed-tomatoes", "pint", 6000],
  ["crushed-tomatoes", "quart", 1000],
  ["whole-tomatoes", "pint", 3000],
  ["whole-tomatoes", "quart", 1000],
  ["whole-tomatoes-in-juice", "pint", null],
  ["whole-tomatoes-no-liquid", "quart", null],
  ["tomato-juice", "pint", 6000],
  ["tomato-juice", "quart", 3000],
  ["pickled-beets", "pint", 10_000],
  ["applesauce", "quart", 10_000],
];

describe("atmospheric steam", () => {
  for (const [id, jar, highestFt] of STEAM) {
    it(`${id} in ${jar} jars: ${highestFt === null ? "never" : `to ${highestFt} ft`}`, () => {
      const recipe = recipeOf(library, id);
      const at = (altitudeFt: number) =>
        chooseProcess(recipe, library.tables, { altitudeFt, jar, method: "steam" });
      if (highestFt === null) {
        expect(at(0).ok).toBe(false);
        return;
      }
      const water = chooseProcess(recipe, library.tables, {
        altitudeFt: highestFt,
        jar,
        method: "boiling-water",
      });
      const steam = at(highestFt);
      if (!steam.ok || !water.ok) throw new Error("steam was refused");
      expect(steam.terms.minutes).toBe(water.terms.minutes);
      expect(steam.terms.minutes).toBeLessThanOrEqual(45);
      expect(steam.terms.coverIn).toBe(0);
      expect(at(highestFt + 1).ok).toBe(false);
    });
  }

  it("raw peaches in quarts reach exactly 45 minutes above 6,000 ft", () => {
    const choice = chooseProcess(recipeOf(library, "peaches"), library.tables, {
      altitudeFt: 6001,
      jar: "quart",
      pack: "raw",
      method: "steam",
    });
    expect(choice).toMatchObject({ ok: true, terms: { minutes: 45 } });
  });

  it("never takes low-acid food", () => {
    for (const recipe of library.recipes.values()) {
      if (recipe.class !== "low-acid") continue;
      const wish = { altitudeFt: 0, method: "steam" } as const;
      expect(chooseProcess(recipe, library.tables, wish).ok, recipe.id).toBe(false);
    }
  });
});

/**
 * Low-temperature pasteurization: 180 to 185 F for 30 minutes, where the recipe offers it.
 * National Center for Home Food Preservation; USDA Complete Guide, Guide 6.
 */
describe("low-temperature pasteurization", () => {
  const offered = [
    "bread-and-butter-pickles",
    "fermented-dills",
    "quick-fresh-pack-dills",
    "quick-sweet-pickles",
    "sweet-gherkins",
  ];

  it("is offered by the five cucumber pickles and by no other recipe", () => {
    const found = [...library.recipes.values()]
      .filter((recipe) => {
        const wish = { altitudeFt: 0, method: "low-temperature" } as const;
        return chooseProcess(recipe, library.tables, wish).ok;
      })
      .map((recipe) => recipe.id);
    expect(found).toEqual(offered);
  });

  for (const id of offered) {
    it(`${id}: 30 minutes at any altitude`, () => {
      for (const altitudeFt of [-200, 0, 6200, 10_000]) {
        const wish = { altitudeFt, jar: "pint", method: "low-temperature" } as const;
        expect(chooseProcess(recipeOf(library, id), library.tables, wish)).toMatchObject({
          ok: true,
          terms: { minutes: 30, pressurePsi: null, sterileJars: false, coverIn: 1 },
        });
      }
    });
  }
});
