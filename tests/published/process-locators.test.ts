import { describe, expect, it } from "vitest";
import type { TableRow } from "../../src/recipe/process-table.ts";
import { readTables } from "../../src/recipe/read-tables.ts";
import { PROVENANCES } from "../../src/recipe/recipe.ts";
import { recipeFile, wholeLibrary } from "../recipe/library-files.ts";

const tables = Object.values(wholeLibrary().tables.tables);
const rows = tables.flatMap((table) => table.rows.map((row) => ({ table: table.id, ...row })));
const counts = PROVENANCES.map((reading) => {
  return `${rows.filter((row) => row.reading === reading).length} ${reading}`;
});

/** Pages of each guide of the edition of 2015, from its own table of contents. */
const LAST_PAGE: Record<string, number> = {
  "Guide 2": 32,
  "Guide 3": 26,
  "Guide 4": 21,
  "Guide 5": 14,
  "Guide 6": 35,
  "Guide 7": 13,
};

/** Tables that were read only in copies of the guide of 1994, most in two or more. */
const OLDER = (
  "corn-relish piccalilli zucchini-bread-and-butters pickled-cauliflower pickled-hot-peppers " +
  "tomato-sauce plums cherries-hot cherries-raw apple-juice peas-pressure lima-beans-pressure " +
  "greens-pressure okra-pressure peppers-pressure potatoes-pressure sweet-potatoes-pressure " +
  "squash-cubes-pressure tomato-sauce-pressure"
).split(" ");
const isOlder = (id: string) =>
  rows.some(({ table, locator }) => table === id && locator.edition === "1994");

const named = ({ table, jars, minutes }: TableRow & { table: string }) =>
  `${table}, ${jars.join(" and ")}, ${minutes.join("/")}`;

describe(`where the ${rows.length} rows of the tables stand: ${counts.join(", ")}`, () => {
  it("every row names its publication, and the guide's its edition, guide, table and page", () => {
    for (const row of rows) {
      const { publication, guide, edition, section, table, page } = row.locator;
      expect(publication, named(row)).toMatch(/USDA Complete Guide|National Center/);
      expect(table ?? section, named(row)).toBeDefined();
      if (!publication.startsWith("USDA")) continue;
      // What was not found in the guide of 2015 was read in a copy of an older one.
      if (row.reading === "copied" && edition === "1994") continue;
      expect(edition, named(row)).toBe("2015");
      for (const one of page?.split(", ") ?? ["no page"]) {
        const [number, onPage] = one.split("-");
        expect(`Guide ${number}`, named(row)).toBe(guide);
        expect(Number(onPage), named(row)).toBeLessThanOrEqual(LAST_PAGE[guide ?? ""] ?? 0);
      }
    }
  });

  it("what is remembered is these rows and no others", () => {
    expect(rows.filter((row) => row.reading === "remembered").map(named)).toEqual([
      "choice-salsa, half-pint and pint, 15/20/25",
      "tomato-juice-pressure, pint and quart, 10",
    ]);
  });

  it("what is read in a copy is these rows and no others", () => {
    const copied = rows.filter((row) => row.reading === "copied");
    expect(copied.filter(({ locator }) => locator.edition !== "1994").map(named)).toEqual([
      "pickled-carrots, half-pint and pint, 15/20/25",
      "pickled-pearl-onions, pint, 10/15/20",
      "pickled-asparagus, pint, 10/15/20",
      "tomatillo-salsa, pint, 15/20/25",
      "tomatoes-in-water-pressure, pint and quart, 1",
      "tomato-vegetable-juice-pressure, pint and quart, 10",
      "cherries-hot-pressure, quart, 10",
    ]);
    expect([...new Set(copied.map(({ table }) => table))].filter(isOlder)).toEqual(OLDER);
  });
});

describe("the reader of the tables refuses", () => {
  const text = recipeFile("tables.yaml");
  const problems = (from: string, to: string) => {
    expect(text).toContain(from);
    const read = readTables(text.replace(from, to), "tables.yaml");
    return read.ok ? [] : read.problems.map(({ message }) => message);
  };

  it("a remembered row that does not say what of it is remembered", () => {
    expect(problems(', memory: "the times above 1,000 ft"}', "}")).toEqual([
      expect.stringMatching(/choice-salsa rows 0: a remembered row, and no other, names/),
    ]);
  });

  it("a row that was read and says that some of it is remembered", () => {
    expect(problems('page: "6-14"}', 'page: "6-14", memory: the headspace}')).toEqual([
      expect.stringMatching(/dilled-beans rows 0: a remembered row, and no other/),
    ]);
  });

  it("a table without a reading, and one of another name", () => {
    expect(problems("    reading: read\n", "")).not.toEqual([]);
    expect(problems("reading: read\n", "reading: heard\n")).not.toEqual([]);
  });
});
