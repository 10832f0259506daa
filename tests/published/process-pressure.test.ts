// data table
import { describe, expect, it } from "vitest";
import { chooseProcess } from "../../src/recipe/choose-process.ts";
import type { GaugeKind, JarSize, Pack } from "../../src/recipe/recipe.ts";
import { recipeOf, wholeLibrary } from "../recipe/library-files.ts";

/**
 * Every pressure process, typed in from the publications and not from the recipe files.
 * "memory" marks a figure that was not read again when this list was typed.
 */

const GUIDE = "USDA Complete Guide to Home Canning, 2015";
/** Read in copies of the guide of 1994, not in that of 2015. */
const COPY = "USDA Complete Guide to Home Canning, copies of 1994";
const library = wholeLibrary();

/** Both ends of each band, and the pressure printed for it. */
const LOW_ACID: Record<GaugeKind, [altitudeFt: number, psi: number][]> = {
  dial: [
    [-50, 11],
    [0, 11],
    [2000, 11],
    [2001, 12],
    [4000, 12],
    [4001, 13],
    [6000, 13],
    [6001, 14],
    [8000, 14],
  ],
  weighted: [
    [-50, 10],
    [0, 10],
    [1000, 10],
    [1001, 15],
    [10_000, 15],
  ],
};
const ACID_FRUIT: typeof LOW_ACID = {
  dial: [
    [-50, 6],
    [0, 6],
    [2000, 6],
    [2001, 7],
    [4000, 7],
    [4001, 8],
    [6000, 8],
    [6001, 9],
    [8000, 9],
  ],
  weighted: [
    [-50, 5],
    [0, 5],
    [1000, 5],
    [1001, 10],
    [10_000, 10],
  ],
};
const HIGHEST: Record<GaugeKind, number> = { dial: 8000, weighted: 10_000 };
const GAUGES: GaugeKind[] = ["dial", "weighted"];

type Row = [recipe: string, packs: Pack[], times: Partial<Record<JarSize, number>>, source: string];

const LOW_ACID_ROWS: Row[] = [
  ["snap-beans", ["hot", "raw"], { pint: 20, quart: 25 }, `${GUIDE}, Guide 4 p. 4-8`],
  ["carrots", ["hot", "raw"], { pint: 25, quart: 30 }, `${GUIDE}, Guide 4 p. 4-10`],
  ["whole-kernel-corn", ["hot", "raw"], { pint: 55, quart: 85 }, `${GUIDE}, Guide 4 p. 4-11`],
  ["beets", ["hot"], { pint: 30, quart: 35 }, `${GUIDE}, Guide 4 p. 4-9`],
  ["dry-beans", ["hot"], { pint: 75, quart: 90 }, `${GUIDE}, Guide 4 p. 4-5`],
  ["asparagus", ["hot", "raw"], { pint: 30, quart: 40 }, `${GUIDE}, Guide 4 p. 4-5`],
  ["meat-chunks", ["hot", "raw"], { pint: 75, quart: 90 }, `${GUIDE}, Guide 5 p. 5-6`],
  ["chicken", ["hot", "raw"], { pint: 75, quart: 90 }, `${GUIDE}, Guide 5 p. 5-5`],
  ["chicken-with-bones", ["hot", "raw"], { pint: 65, quart: 75 }, `${GUIDE}, Guide 5 p. 5-5`],
  ["fish", ["raw"], { pint: 100 }, `${GUIDE}, Guide 5 p. 5-10`],
  ["stock", ["hot"], { pint: 20, quart: 25 }, `${GUIDE}, Guide 5 p. 5-7`],
  ["ground-meat", ["hot"], { pint: 75, quart: 90 }, `${GUIDE}, Guide 5 p. 5-6`],
  ["chili-con-carne", ["hot"], { pint: 75 }, `${GUIDE}, Guide 5 p. 5-8`],
  ["green-peas", ["hot", "raw"], { pint: 40, quart: 40 }, `${COPY}, peas`],
  ["lima-beans", ["hot"], { pint: 40, quart: 50 }, `${COPY}, fresh lima beans`],
  ["greens", ["hot"], { pint: 70, quart: 90 }, `${COPY}, spinach and other greens`],
  ["okra", ["hot"], { pint: 25, quart: 40 }, `${COPY}, okra`],
  ["peppers", ["hot"], { "half-pint": 35, pint: 35 }, `${COPY}, peppers`],
  ["potatoes", ["hot"], { pint: 35, quart: 40 }, `${COPY}, white potatoes`],
  ["sweet-potatoes", ["hot"], { pint: 65, quart: 90 }, `${COPY}, sweet potatoes`],
  ["squash-cubes", ["hot"], { pint: 55, quart: 90 }, `${COPY}, pumpkins and winter squash`],
];

const FRUIT = `${GUIDE}, Guide 2 pp. 2-31 and 2-32`;
const ACID_ROWS: Row[] = [
  ["applesauce", ["hot"], { pint: 8, quart: 10 }, FRUIT],
  ["sliced-apples", ["hot"], { pint: 8, quart: 8 }, FRUIT],
  ["rhubarb", ["hot"], { pint: 8, quart: 8 }, FRUIT],
  ["whole-berries", ["hot"], { pint: 8, quart: 8 }, FRUIT],
  ["whole-berries", ["raw"], { pint: 8, quart: 10 }, FRUIT],
  ["peaches", ["hot", "raw"], { pint: 10, quart: 10 }, FRUIT],
  ["pears", ["hot"], { pint: 10, quart: 10 }, FRUIT],
  ["plums", ["hot", "raw"], { pint: 10, quart: 10 }, FRUIT],
  ["cherries", ["hot"], { pint: 8, quart: 10 }, FRUIT],
  ["cherries", ["raw"], { pint: 10, quart: 10 }, FRUIT],
];

function checkRows(rows: Row[], pressures: typeof LOW_ACID): void {
  for (const [id, packs, times, source] of rows) {
    for (const pack of packs) {
      for (const gauge of GAUGES) {
        it(`${id}, ${pack} pack, ${gauge} gauge (${source})`, () => {
          const recipe = recipeOf(library, id);
          for (const [jar, minutes] of Object.entries(times) as [JarSize, number][]) {
            const at = (altitudeFt: number) =>
              chooseProcess(recipe, library.tables, {
                altitudeFt,
                jar,
                pack,
                gauge,
                method: "pressure",
              });
            for (const [altitudeFt, pressurePsi] of pressures[gauge]) {
              expect(at(altitudeFt), `${jar} at ${altitudeFt} ft`).toMatchObject({
                ok: true,
                terms: { minutes, pressurePsi, gauge, jar, pack, coverIn: 0, sterileJars: false },
              });
            }
            expect(at(HIGHEST[gauge] + 1).ok, "past the last band").toBe(false);
          }
        });
      }
    }
  }
}

describe("low-acid food by pressure is as published", () => {
  checkRows(LOW_ACID_ROWS, LOW_ACID);
});

describe("acid fruit by pressure is as published", () => {
  checkRows(ACID_ROWS, ACID_FRUIT);
});

/** Minutes of the rows printed for one jar: lowest pressure, middle, and 15 psi weighted. */
type Alternatives = [recipe: string, pack: Pack, low: number, middle: number, high: number, string];

const TOMATO_ROWS: Alternatives[] = [
  ["crushed-tomatoes", "hot", 20, 15, 10, `${GUIDE}, Guide 3 p. 3-7`],
  ["whole-tomatoes", "hot", 15, 10, 1, `${GUIDE}, Guide 3 p. 3-9; 1 min in copies of it`],
  ["whole-tomatoes", "raw", 15, 10, 1, `${GUIDE}, Guide 3 p. 3-9; 1 min in copies of it`],
  ["whole-tomatoes-in-juice", "hot", 40, 25, 15, `${GUIDE}, Guide 3 p. 3-10`],
  ["whole-tomatoes-in-juice", "raw", 40, 25, 15, `${GUIDE}, Guide 3 p. 3-10`],
  ["whole-tomatoes-no-liquid", "raw", 40, 25, 15, `${GUIDE}, Guide 3 p. 3-11`],
  ["tomato-sauce", "hot", 20, 15, 10, `${COPY}, standard tomato sauce`],
  ["tomato-vegetable-juice", "hot", 20, 15, 10, `${GUIDE}, Guide 3 p. 3-6; 10 min in copies`],
  ["tomato-juice", "hot", 20, 15, 10, `${GUIDE}, Guide 3 p. 3-5; 10 min memory`],
];

describe("tomatoes by pressure have the published alternatives, for pints or quarts", () => {
  for (const [id, pack, low, middle, high, source] of TOMATO_ROWS) {
    for (const jar of ["pint", "quart"] as const) {
      it(`${id}, ${pack} pack, ${jar} (${source})`, () => {
        const recipe = recipeOf(library, id);
        const at = (altitudeFt: number, gauge: GaugeKind, atPsi?: number) =>
          chooseProcess(recipe, library.tables, {
            altitudeFt,
            jar,
            pack,
            gauge,
            atPsi,
            method: "pressure",
          });
        for (const [altitudeFt, pressurePsi] of ACID_FRUIT.dial) {
          const terms = { minutes: low, pressurePsi };
          expect(at(altitudeFt, "dial")).toMatchObject({ ok: true, terms });
          expect(at(altitudeFt, "dial", pressurePsi)).toMatchObject({ ok: true, terms });
        }
        for (const [altitudeFt, pressurePsi] of LOW_ACID.dial) {
          const terms = { minutes: middle, pressurePsi };
          expect(at(altitudeFt, "dial", pressurePsi)).toMatchObject({ ok: true, terms });
          expect(at(altitudeFt, "dial", 11)).toMatchObject({ ok: true, terms });
        }
        for (const altitudeFt of [0, 1000]) {
          for (const [psi, minutes] of [
            [5, low],
            [10, middle],
            [15, high],
          ] as const) {
            const terms = { minutes, pressurePsi: psi };
            expect(at(altitudeFt, "weighted", psi)).toMatchObject({ ok: true, terms });
          }
        }
        for (const altitudeFt of [1001, 10_000]) {
          const ten = { minutes: low, pressurePsi: 10 };
          const fifteen = { minutes: middle, pressurePsi: 15 };
          expect(at(altitudeFt, "weighted", 10)).toMatchObject({ ok: true, terms: ten });
          expect(at(altitudeFt, "weighted", 15)).toMatchObject({ ok: true, terms: fifteen });
        }
        expect(at(500, "dial", 10).ok).toBe(false);
        expect(at(8001, "dial").ok).toBe(false);
      });
    }
  }
});

describe("the list", () => {
  it("has every pressure option of the library", () => {
    const listed = new Set([
      ...[...LOW_ACID_ROWS, ...ACID_ROWS].flatMap(([id, packs]) =>
        packs.map((one) => `${id} ${one}`),
      ),
      ...TOMATO_ROWS.map(([id, pack]) => `${id} ${pack}`),
    ]);
    const offered = [...library.recipes.values()].flatMap(({ id, processes }) =>
      processes.filter(({ method }) => method === "pressure").map(({ pack }) => `${id} ${pack}`),
    );
    expect(offered.filter((option) => !listed.has(option))).toEqual([]);
  });
});

describe("tables without a recipe of their own are as published", () => {
  const low: [table: string, jars: JarSize[], minutes: number, source: string][] = [
    ["ground-meat-pressure", ["pint"], 75, `${GUIDE}, Guide 5 p. 5-6`],
    ["ground-meat-pressure", ["quart"], 90, `${GUIDE}, Guide 5 p. 5-6`],
    ["soup-pressure", ["pint"], 60, `${GUIDE}, Guide 4 p. 4-18`],
    ["soup-pressure", ["quart"], 75, `${GUIDE}, Guide 4 p. 4-18`],
    ["seafood-soup-pressure", ["pint", "quart"], 100, `${GUIDE}, Guide 4 p. 4-18`],
    ["chili-con-carne-pressure", ["pint"], 75, `${GUIDE}, Guide 5 p. 5-8`],
    ["mexican-tomato-sauce-pressure", ["pint"], 20, `${GUIDE}, Guide 3 p. 3-15`],
    ["mexican-tomato-sauce-pressure", ["quart"], 25, `${GUIDE}, Guide 3 p. 3-15`],
  ];
  for (const [id, jars, minutes, source] of low) {
    it(`${id}, ${jars.join(" and ")} (${source})`, () => {
      const rows = library.tables.tables[id]?.rows ?? [];
      expect(rows).toContainEqual(
        expect.objectContaining({ jars, minutes: [minutes], schedule: "low-acid" }),
      );
    });
  }
  const fruit: [table: string, jars: JarSize[], minutes: number][] = [
    ["cherries-hot-pressure", ["pint"], 8],
    ["cherries-hot-pressure", ["quart"], 10],
    ["cherries-raw-pressure", ["pint", "quart"], 10],
  ];
  for (const [id, jars, minutes] of fruit) {
    it(`${id}, ${jars.join(" and ")} (${FRUIT})`, () => {
      const rows = library.tables.tables[id]?.rows ?? [];
      expect(rows).toContainEqual(
        expect.objectContaining({ jars, minutes: [minutes], schedule: "low-pressure" }),
      );
    });
  }
  it("tomato and vegetable juice blend (Guide 3 p. 3-6)", () => {
    const rows = library.tables.tables["tomato-vegetable-juice-pressure"]?.rows;
    expect(rows).toMatchObject([
      { jars: ["pint", "quart"], minutes: [20], schedule: "low-pressure" },
      { jars: ["pint", "quart"], minutes: [15], schedule: "low-acid" },
      { jars: ["pint", "quart"], minutes: [10], schedule: "weight-15" },
    ]);
  });
});

describe("headspace by pressure is as published", () => {
  for (const [id] of LOW_ACID_ROWS) {
    it(`${id}: ${id.startsWith("chicken") ? "1 1/4" : "1"} in`, () => {
      expect(recipeOf(library, id).headspaceIn).toBe(id.startsWith("chicken") ? 1.25 : 1);
    });
  }
});
