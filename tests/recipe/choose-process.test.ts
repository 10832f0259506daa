import { describe, expect, it } from "vitest";
import {
  bandLabel,
  chooseProcess,
  defaultJar,
  type ProcessWish,
} from "../../src/recipe/choose-process.ts";
import { memoryNote } from "../../src/recipe/process-table.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { recipeOf, wholeLibrary } from "./library-files.ts";

const library = wholeLibrary();
const { tables } = library;

function choose(id: string, wish: Partial<ProcessWish> = {}, change: Partial<Recipe> = {}) {
  return chooseProcess({ ...recipeOf(library, id), ...change }, tables, { altitudeFt: 0, ...wish });
}

function reason(...call: Parameters<typeof choose>): string {
  const choice = choose(...call);
  return choice.ok ? `found ${choice.terms.minutes} min` : choice.reason;
}

describe("the tested process is looked up", () => {
  it("in a mountain kitchen at 6,200 ft", () => {
    expect(choose("dilled-green-beans", { altitudeFt: 6200 })).toMatchObject({
      ok: true,
      terms: {
        minutes: 15,
        band: "above 6,000 ft",
        jar: "pint",
        pack: "raw",
        method: "boiling-water",
        altitudeFt: 6200,
        table: "dilled-beans",
      },
    });
  });

  it("and says where the row stands, how it was read, and what of it is from memory", () => {
    expect(choose("dilled-green-beans")).toMatchObject({
      terms: {
        source:
          "USDA Complete Guide to Home Canning, Guide 6, 2015 edition, Pickled Dilled Beans, " +
          "p. 6-14",
        locator: { guide: "Guide 6", edition: "2015", page: "6-14" },
        reading: "read",
      },
    });
    expect(choose("choice-salsa")).toMatchObject({
      terms: {
        source:
          "National Center for Home Food Preservation, choice salsa " +
          "(from memory: the times above 1,000 ft)",
        reading: "remembered",
      },
    });
  });

  it("and a row of its own says so where its table was read and it was not", () => {
    const at = (atPsi: number) =>
      choose("whole-tomatoes", { altitudeFt: 0, method: "pressure", gauge: "weighted", atPsi });
    expect(at(10)).toMatchObject({ terms: { minutes: 10, reading: "read" } });
    expect(at(15)).toMatchObject({
      terms: { minutes: 1, reading: "copied", source: expect.stringMatching(/read in a copy/) },
    });
  });

  it("terms of a journal from before readings were kept say nothing of memory", () => {
    expect(memoryNote({})).toBeUndefined();
    expect(memoryNote({ reading: "copied" })).toBeUndefined();
    expect(memoryNote({ reading: "remembered" })).toMatch(/compare it with your own guide/);
  });

  it("with the first pack listed where none is named", () => {
    expect(choose("sauerkraut")).toMatchObject({ terms: { pack: "hot" } });
    expect(choose("sauerkraut", { pack: "raw" })).toMatchObject({ terms: { pack: "raw" } });
  });

  it("in the recipe's usual jar where none is named", () => {
    expect(defaultJar(recipeOf(library, "crushed-tomatoes"))).toBe("pint");
    expect(defaultJar(recipeOf(library, "berry-jam"))).toBe("half-pint");
    expect(defaultJar(recipeOf(library, "cucumber-seed"))).toBeUndefined();
  });
});

describe("jars", () => {
  it("smaller than tested take the next larger tested jar's time", () => {
    const half = { jar: "half-pint", jarTested: "pint", minutes: 35 };
    expect(choose("crushed-tomatoes", { jar: "half-pint" })).toMatchObject({ terms: half });
    const between = { jar: "pint-and-half", jarTested: "quart", minutes: 45 };
    expect(choose("crushed-tomatoes", { jar: "pint-and-half" })).toMatchObject({ terms: between });
  });

  it("larger than tested are refused", () => {
    expect(reason("crushed-tomatoes", { jar: "half-gallon" })).toMatch(/largest is quart/);
    expect(reason("dilled-green-beans", { jar: "quart" })).toMatch(/largest is pint/);
    const wish = { jar: "quart", method: "low-temperature" } as const;
    expect(reason("sweet-gherkins", wish)).toMatch(/largest is pint/);
  });
});

describe("altitude", () => {
  it("uncertain across a band's edge takes the higher band", () => {
    const sure = choose("pickled-beets", { altitudeFt: 5900 });
    const doubtful = choose("pickled-beets", { altitudeFt: 5900, altitudeUncertaintyFt: 150 });
    expect(sure).toMatchObject({ terms: { minutes: 40 } });
    expect(doubtful).toMatchObject({ terms: { minutes: 45, altitudeFt: 5900 } });
  });

  it("between two whole feet counts as the higher band", () => {
    expect(choose("pickled-beets", { altitudeFt: 6000.4 })).toMatchObject({
      terms: { minutes: 45 },
    });
  });

  it("unknown or impossible is refused", () => {
    expect(reason("pickled-beets", { altitudeFt: Number.NaN })).toMatch(/altitude is not known/);
    expect(reason("pickled-beets", { altitudeFt: 0, altitudeUncertaintyFt: Number.NaN })).toMatch(
      /altitude is not known/,
    );
    expect(reason("pickled-beets", { altitudeFt: Number.POSITIVE_INFINITY })).toMatch(/not known/);
    expect(reason("pickled-beets", { altitudeFt: -5000 })).toMatch(/no kitchen stands/);
  });

  it("is labeled as tables print it", () => {
    expect([0, 1, 2].map((i) => bandLabel([1000, 6000], i))).toEqual([
      "0-1,000 ft",
      "1,001-6,000 ft",
      "above 6,000 ft",
    ]);
    expect(bandLabel([], 0)).toBe("all altitudes");
  });
});

describe("pressure", () => {
  const method = "pressure" as const;

  it("asks for the gauge and never assumes one", () => {
    const choice = choose("snap-beans");
    expect(choice).toMatchObject({ ok: false, missing: "gauge" });
    expect(reason("snap-beans")).toMatch(/which gauge/);
  });

  it("takes the first tested setting and says there are others", () => {
    const choice = choose("crushed-tomatoes", { method, gauge: "dial", altitudeFt: 6200 });
    expect(choice).toMatchObject({
      terms: {
        minutes: 20,
        pressurePsi: 9,
        note: "the first of the tested settings: 20 min at 9 psi, 15 min at 14 psi",
      },
    });
  });

  it("takes a setting by its pressure here before its pressure at sea level", () => {
    const gauge = "weighted" as const;
    const at = (atPsi: number, altitudeFt: number) =>
      choose("crushed-tomatoes", { method, gauge, atPsi, altitudeFt });
    expect(at(10, 500)).toMatchObject({ terms: { minutes: 15, pressurePsi: 10 } });
    expect(at(10, 5000)).toMatchObject({ terms: { minutes: 20, pressurePsi: 10 } });
    expect(at(15, 500)).toMatchObject({ terms: { minutes: 10 } });
    expect(at(15, 5000)).toMatchObject({ terms: { minutes: 15 } });
  });

  it("refuses a setting nobody tested and lists those there are", () => {
    const wish = { method, gauge: "dial", atPsi: 10 } as const;
    expect(reason("crushed-tomatoes", wish)).toMatch(/20 min at 6 psi, 15 min at 11 psi/);
  });
});

describe("nothing tested means no process", () => {
  it("for a recipe without a source", () => {
    expect(reason("pickled-beets", {}, { tested: false })).toMatch(/keep it in the refrigerator/);
  });

  it("for seed", () => {
    expect(reason("cucumber-seed")).toMatch(/no canner process/);
  });

  it("for a method or pack the recipe lacks", () => {
    expect(reason("snap-beans", { method: "boiling-water" })).toMatch(/no boiling water process/);
    expect(reason("pickled-beets", { method: "low-temperature" })).toMatch(/no low-temperature/);
    expect(reason("pears", { pack: "raw" })).toMatch(/no raw pack was tested/);
    expect(reason("pickled-beets", { method: "ferment" })).toMatch(/no ferment process/);
  });

  it("for a recipe that points to another food's table", () => {
    const jam = [{ method: "boiling-water", pack: "hot", table: "jam" }] as const;
    expect(reason("snap-beans", {}, { processes: [...jam] })).toMatch(/not for low-acid food/);
    const none = [{ method: "boiling-water", pack: "hot", table: "nonesuch" }] as const;
    expect(reason("pickled-beets", {}, { processes: [...none] })).toMatch(/no tested table/);
  });

  it("for pasteurization slipped into a recipe that does not offer it", () => {
    const { processes } = recipeOf(library, "pickled-beets");
    const added = {
      method: "low-temperature",
      pack: "hot",
      table: "pasteurized-cucumbers",
    } as const;
    const wish = { method: "low-temperature" } as const;
    expect(reason("pickled-beets", wish, { processes: [...processes, added] })).toMatch(
      /was not tested/,
    );
  });

  it("for minutes somebody wrote beside the table: the table's are used", () => {
    const { processes } = recipeOf(library, "pickled-beets");
    const written = processes.map((p) => ({ ...p, writtenMinutes: 5 }));
    expect(choose("pickled-beets", {}, { processes: written })).toMatchObject({
      terms: { minutes: 30 },
    });
  });
});
