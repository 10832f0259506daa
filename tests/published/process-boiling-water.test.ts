// data table
import { describe, expect, it } from "vitest";
import { chooseProcess } from "../../src/recipe/choose-process.ts";
import type { JarSize, Pack } from "../../src/recipe/recipe.ts";
import { recipeOf, wholeLibrary } from "../recipe/library-files.ts";

/**
 * Every boiling-water time, typed in from the publications and not from the recipe files.
 * "memory" marks a figure that was not read again when this list was typed.
 */

const GUIDE = "USDA Complete Guide to Home Canning, 2015";
/** Read in copies of the guide of 1994 (with two of later wording), not in that of 2015. */
const COPY = "USDA Complete Guide to Home Canning, copies of 1994";
const THREE = [1000, 6000];
const FOUR = [1000, 3000, 6000];

type Row = [recipe: string, pack: Pack, jars: JarSize[], minutes: number[], source: string];

const ROWS: Row[] = [
  ["bread-and-butter-pickles", "hot", ["pint", "quart"], [10, 15, 20], `${GUIDE}, p. 6-9`],
  ["quick-fresh-pack-dills", "raw", ["pint"], [10, 15, 20], `${GUIDE}, p. 6-10`],
  ["quick-fresh-pack-dills", "raw", ["quart"], [15, 20, 25], `${GUIDE}, p. 6-10`],
  ["fermented-dills", "raw", ["pint"], [10, 15, 20], `${GUIDE}, p. 6-7`],
  ["fermented-dills", "raw", ["quart"], [15, 20, 25], `${GUIDE}, p. 6-7`],
  ["sweet-gherkins", "raw", ["pint"], [5, 10, 15], `${GUIDE}, p. 6-10`],
  ["quick-sweet-pickles", "hot", ["pint", "quart"], [5, 10, 15], `${GUIDE}, p. 6-12`],
  ["quick-sweet-pickles", "raw", ["pint"], [10, 15, 20], `${GUIDE}, p. 6-12`],
  ["quick-sweet-pickles", "raw", ["quart"], [15, 20, 25], `${GUIDE}, p. 6-12`],
  ["dilled-green-beans", "raw", ["pint"], [5, 10, 15], `${GUIDE}, p. 6-14`],
  ["pickled-beets", "hot", ["pint", "quart"], [30, 35, 40, 45], `${GUIDE}, p. 6-15`],
  ["sauerkraut", "hot", ["pint"], [10, 15, 15, 20], `${GUIDE}, p. 6-8`],
  ["sauerkraut", "hot", ["quart"], [15, 20, 20, 25], `${GUIDE}, p. 6-8`],
  ["sauerkraut", "raw", ["pint"], [20, 25, 30, 35], `${GUIDE}, p. 6-8`],
  ["sauerkraut", "raw", ["quart"], [25, 30, 35, 40], `${GUIDE}, p. 6-8`],
  ["pickle-relish", "hot", ["half-pint", "pint"], [10, 15, 20], `${GUIDE}, p. 6-28`],
  ["crushed-tomatoes", "hot", ["pint"], [35, 40, 45, 50], `${GUIDE}, p. 3-7`],
  ["crushed-tomatoes", "hot", ["quart"], [45, 50, 55, 60], `${GUIDE}, p. 3-7`],
  ["whole-tomatoes", "hot", ["pint"], [40, 45, 50, 55], `${GUIDE}, p. 3-9`],
  ["whole-tomatoes", "raw", ["pint"], [40, 45, 50, 55], `${GUIDE}, p. 3-9`],
  ["whole-tomatoes", "hot", ["quart"], [45, 50, 55, 60], `${GUIDE}, p. 3-9`],
  ["whole-tomatoes", "raw", ["quart"], [45, 50, 55, 60], `${GUIDE}, p. 3-9`],
  ["whole-tomatoes-in-juice", "hot", ["pint", "quart"], [85, 90, 95, 100], `${GUIDE}, p. 3-10`],
  ["whole-tomatoes-in-juice", "raw", ["pint", "quart"], [85, 90, 95, 100], `${GUIDE}, p. 3-10`],
  ["whole-tomatoes-no-liquid", "raw", ["pint", "quart"], [85, 90, 95, 100], `${GUIDE}, p. 3-11`],
  ["tomato-juice", "hot", ["pint"], [35, 40, 45, 50], `${GUIDE}, p. 3-5`],
  ["tomato-juice", "hot", ["quart"], [40, 45, 50, 55], `${GUIDE}, p. 3-5`],
  ["peaches", "hot", ["pint"], [20, 25, 30, 35], `${GUIDE}, p. 2-19`],
  ["peaches", "hot", ["quart"], [25, 30, 35, 40], `${GUIDE}, p. 2-19`],
  ["peaches", "raw", ["pint"], [25, 30, 35, 40], `${GUIDE}, p. 2-19`],
  ["peaches", "raw", ["quart"], [30, 35, 40, 45], `${GUIDE}, p. 2-19`],
  ["pears", "hot", ["pint"], [20, 25, 30, 35], `${GUIDE}, p. 2-19`],
  ["pears", "hot", ["quart"], [25, 30, 35, 40], `${GUIDE}, p. 2-19`],
  ["sliced-apples", "hot", ["pint", "quart"], [20, 25, 30, 35], `${GUIDE}, p. 2-7`],
  ["applesauce", "hot", ["pint"], [15, 20, 20, 25], `${GUIDE}, p. 2-7`],
  ["applesauce", "hot", ["quart"], [20, 25, 30, 35], `${GUIDE}, p. 2-7`],
  ["apple-butter", "hot", ["half-pint", "pint"], [5, 10, 15], `${GUIDE}, p. 2-6`],
  ["apple-butter", "hot", ["quart"], [10, 15, 20], `${GUIDE}, p. 2-6`],
  ["berry-jam", "hot", ["half-pint", "pint"], [5, 10, 15], `${GUIDE}, p. 7-6`],
  ["peach-jam", "hot", ["half-pint", "pint"], [5, 10, 15], `${GUIDE}, p. 7-6`],
  ["apricot-jam", "hot", ["half-pint", "pint"], [5, 10, 15], `${GUIDE}, p. 7-6`],
  ["apple-jelly", "hot", ["half-pint"], [5, 10, 15], `${GUIDE}, p. 7-5`],
  ["grape-jelly", "hot", ["half-pint"], [5, 10, 15], `${GUIDE}, p. 7-5`],
  ["chile-salsa", "hot", ["pint"], [15, 20, 25], `${GUIDE}, p. 3-21`],
  ["choice-salsa", "hot", ["half-pint", "pint"], [15, 20, 25], "NCHFP; above 1,000 ft memory"],
  ["cranberry-sauce", "hot", ["half-pint", "pint"], [15, 20, 20, 25], "NCHFP, cranberry sauce"],
  ["rhubarb", "hot", ["pint", "quart"], [15, 20, 25], `${GUIDE}, p. 2-22`],
  ["whole-berries", "hot", ["pint", "quart"], [15, 20, 20, 25], `${GUIDE}, p. 2-10`],
  ["whole-berries", "raw", ["pint"], [15, 20, 20, 25], `${GUIDE}, p. 2-10`],
  ["whole-berries", "raw", ["quart"], [20, 25, 30, 35], `${GUIDE}, p. 2-10`],
  ["tomato-vegetable-juice", "hot", ["pint"], [35, 40, 45, 50], `${GUIDE}, p. 3-6`],
  ["tomato-vegetable-juice", "hot", ["quart"], [40, 45, 50, 55], `${GUIDE}, p. 3-6`],
  ["tomato-sauce", "hot", ["pint"], [35, 40, 45, 50], `${COPY}, standard tomato sauce`],
  ["tomato-sauce", "hot", ["quart"], [40, 45, 50, 55], `${COPY}, standard tomato sauce`],
  ["plums", "hot", ["pint"], [20, 25, 30, 35], `${COPY}, Guide 2:23`],
  ["plums", "raw", ["pint"], [20, 25, 30, 35], `${COPY}, Guide 2:23`],
  ["plums", "hot", ["quart"], [25, 30, 35, 40], `${COPY}, Guide 2:23`],
  ["plums", "raw", ["quart"], [25, 30, 35, 40], `${COPY}, Guide 2:23`],
  ["cherries", "hot", ["pint"], [15, 20, 20, 25], `${COPY}, cherries, whole`],
  ["cherries", "hot", ["quart"], [20, 25, 30, 35], `${COPY}, cherries, whole`],
  ["cherries", "raw", ["pint", "quart"], [25, 30, 35, 40], `${COPY}, cherries, whole`],
  ["corn-relish", "hot", ["half-pint", "pint"], [15, 20, 25], `${COPY}, pickled corn relish`],
  ["piccalilli", "hot", ["half-pint", "pint"], [5, 10, 15], `${COPY}, Guide 6:18`],
  ["zucchini-bread-and-butters", "hot", ["pint", "quart"], [10, 15, 20], `${COPY}, Guide 6`],
  ["pickled-cauliflower", "hot", ["half-pint", "pint"], [10, 15, 20], `${COPY}, Guide 6`],
  ["pickled-carrots", "hot", ["half-pint", "pint"], [15, 20, 25], "NCHFP, in copies"],
  ["pickled-pearl-onions", "hot", ["pint"], [10, 15, 20], "NCHFP, in copies"],
  ["pickled-asparagus", "raw", ["pint"], [10, 15, 20], "So Easy to Preserve, 2020, in a copy"],
  ["tomatillo-salsa", "hot", ["pint"], [15, 20, 25], `${GUIDE}, p. 3-22, in a copy`],
  ["apple-juice", "hot", ["pint", "quart"], [5, 10, 15], `${COPY}, apple juice`],
  ["pickled-hot-peppers", "raw", ["half-pint", "pint"], [10, 15, 20], `${COPY}, Guide 6`],
];

const library = wholeLibrary();

/** Both ends of each band of a table, with the minutes printed for it. */
function bandEnds(minutes: number[]): [altitudeFt: number, minutes: number][] {
  const edges = minutes.length === 3 ? THREE : FOUR;
  return minutes.flatMap((value, index): [number, number][] => [
    [index === 0 ? 0 : (edges[index - 1] ?? 0) + 1, value],
    [edges[index] ?? 10_000, value],
  ]);
}

describe("boiling-water times are those of the publications", () => {
  for (const [id, pack, jars, minutes, source] of ROWS) {
    for (const jar of jars) {
      it(`${id}, ${pack} pack, ${jar} (${source})`, () => {
        const recipe = recipeOf(library, id);
        const at = (altitudeFt: number) =>
          chooseProcess(recipe, library.tables, { altitudeFt, jar, pack, method: "boiling-water" });
        for (const [altitudeFt, printed] of [
          ...bandEnds(minutes),
          [-100, minutes[0] ?? 0],
        ] as const) {
          const choice = at(altitudeFt);
          expect(choice, `${altitudeFt} ft`).toMatchObject({
            ok: true,
            terms: { minutes: printed, jar, jarTested: jar, pack, pressurePsi: null, gauge: null },
          });
          if (!choice.ok) continue;
          expect(choice.terms.coverIn).toBe(printed > 30 ? 2 : 1);
          expect(choice.terms.sterileJars).toBe(printed < 10);
          expect(choice.terms.waterStartF).toBe(pack === "raw" ? 140 : 180);
        }
        expect(at(10_001).ok).toBe(false);
      });
    }
  }

  it("tomato and vegetable juice blend, pints and quarts (Guide 3 p. 3-6)", () => {
    const table = library.tables.tables["tomato-vegetable-juice"];
    expect(table?.bandEdgesFt).toEqual(FOUR);
    expect(table?.rows).toMatchObject([
      { jars: ["pint"], minutes: [35, 40, 45, 50] },
      { jars: ["quart"], minutes: [40, 45, 50, 55] },
    ]);
  });

  it("every boiling-water option of the library is in this list", () => {
    const listed = new Set(ROWS.map(([id, pack]) => `${id} ${pack}`));
    const offered = [...library.recipes.values()].flatMap((recipe) =>
      recipe.processes
        .filter((option) => option.method === "boiling-water")
        .map((option) => `${recipe.id} ${option.pack}`),
    );
    expect(offered.filter((option) => !listed.has(option))).toEqual([]);
  });
});

describe("headspace is that of the publications", () => {
  // Jams, jellies, apple butter, tomato sauce and apple juice 1/4 in; everything else by boiling water 1/2 in (Guide 1).
  const quarter = [
    "apple-butter",
    "berry-jam",
    "peach-jam",
    "apricot-jam",
    "apple-jelly",
    "grape-jelly",
    "tomato-sauce",
    "apple-juice",
  ];
  for (const id of new Set(ROWS.map(([recipe]) => recipe))) {
    it(id, () => {
      expect(recipeOf(library, id).headspaceIn).toBe(quarter.includes(id) ? 0.25 : 0.5);
    });
  }
});
