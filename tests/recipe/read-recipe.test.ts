import { describe, expect, it } from "vitest";
import { KINDS } from "../../src/kitchen/stages/kinds.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { readTables } from "../../src/recipe/read-tables.ts";
import { recipeFile } from "./library-files.ts";

const good = recipeFile("bread-and-butter-pickles.yaml");

/** The good recipe with one thing changed; throws where the thing is not there. */
function changed(from: string, to: string): string {
  if (!good.includes(from)) throw new Error(`the recipe has no ${from}`);
  return good.replace(from, to);
}

function problems(text: string) {
  const read = readRecipe(text, "kitchen.yaml", KINDS);
  return read.ok ? [] : read.problems;
}

/** The line a text stands on, counted from 1. */
function lineOf(text: string, part: string): number {
  return text.slice(0, text.indexOf(part)).split("\n").length;
}

describe("a good recipe", () => {
  it("is read with its defaults filled in", () => {
    const read = readRecipe(good, "kitchen.yaml", KINDS);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const { recipe } = read;
    expect(recipe.tested).toBe(true);
    expect(recipe.scaling).toBe("proportional");
    expect(recipe.stages.map((s) => s.kind).slice(-4)).toEqual([
      "process",
      "cool",
      "seal-check",
      "cure",
    ]);
    const stage = (id: string) => recipe.stages.find((s) => s.id === id);
    expect(stage("slice")).toMatchObject({ after: [], attended: true, start: "auto", asks: [] });
    expect(stage("salt-and-chill")).toMatchObject({
      after: [{ stage: "slice" }],
      window: { minMinutes: 180, maxMinutes: 240 },
      attended: false,
    });
    expect(stage("syrup")).toMatchObject({
      start: "word",
      heat: { until: "boil", holdMinutes: 10 },
      uses: ["burner"],
    });
    expect(stage("cool")?.window).toEqual({ minMinutes: 720, maxMinutes: 1440 });
    expect(recipe.critical.map((factor) => factor.id)).toEqual([
      "vinegar-5-percent",
      "hot-pack-hot",
      "headspace",
      "new-lids",
    ]);
  });

  it("is plain data: it is the same after a trip through JSON", () => {
    const read = readRecipe(good, "kitchen.yaml", KINDS);
    expect(JSON.parse(JSON.stringify(read))).toEqual(read);
  });

  it("is the same with a byte-order mark and CRLF line ends", () => {
    const windows = readRecipe(`\ufeff${good.replaceAll("\n", "\r\n")}`, "kitchen.yaml", KINDS);
    expect(windows).toEqual(readRecipe(good, "kitchen.yaml", KINDS));
  });

  it("keeps the lines of its parts for the check to point to", () => {
    const read = readRecipe(good, "kitchen.yaml", KINDS);
    if (!read.ok) throw new Error("not read");
    expect(read.lines["stages.syrup"]).toBe(lineOf(good, "id: syrup"));
    expect(read.lines["ingredients.vinegar"]).toBe(lineOf(good, "{id: vinegar"));
  });
});

describe("a recipe that does not fit is refused with file, line and reason", () => {
  const cases: [what: string, from: string, to: string, at: string, says: RegExp][] = [
    ["an unknown kind", "kind: rest", "kind: nap", "kind: nap", /kind: invalid option/],
    ["an unknown key", "headspaceIn", "headSpace", "headSpace", /headSpace: this key is not known/],
    ["a wrong type", "weightLb: 6", "weightLb: six", "weightLb: six", /expected number/],
    ["no number at all", "weightLb: 6", "weightLb: .nan", "weightLb: .nan", /expected number/],
    ["an endless weight", "weightLb: 6", "weightLb: .inf", "weightLb: .inf", /expected number/],
    ["no time", "typical: 40 min", "typical: 0 min", "typical: 0 min", /is not a duration/],
    ["negative time", "typical: 40 min", "typical: -4 min", "typical: -4 min", /is not a duration/],
    ["huge time", "typical: 40 min", "typical: 99999 d", "typical: 99999 d", /is not a duration/],
    ["NaN minutes", "typical: 40 min", "typical: .nan", "typical: .nan", /needs its unit/],
    ["a bare number", "typical: 40 min", "typical: 40", "typical: 40", /needs its unit/],
    ["a window backwards", "3 h to 4 h", "4 h to 3 h", "window: 4 h", /is not a window/],
    ["a missing stage", "[drain, syrup]", "[drain, sirup]", "after: [drain", /no stage is called/],
    ["an unknown question", "[vinegar-5-percent]", "[vinegar]", "asks: [vinegar]", /no critical/],
    ["an unknown caution", "[hot-sugar]", "[hot-soup]", "cautions: [hot-soup]", /no caution/],
    ["no amount", "amount: 6 lb", "amount: some", "amount: some", /is not an amount/],
    ["an escape", "title: drain", 'title: "dr\\e[2Jain"', 'title: "dr', /control or hidden/],
    ["a bell", "title: drain", 'title: "dr\\aain"', 'title: "dr', /control or hidden/],
    ["hidden text", "title: drain", 'title: "dr\\u202Eain"', 'title: "dr', /control or hidden/],
    ["a merge key", "start: word", "<<: {start: word}", "<<:", /<<: this key is not known/],
  ];
  for (const [what, from, to, at, says] of cases) {
    it(what, () => {
      const text = changed(from, to);
      const found = problems(text);
      expect(found.map((p) => p.message).join("; ")).toMatch(says);
      expect(found[0]).toMatchObject({ file: "kitchen.yaml", line: lineOf(text, at) });
    });
  }

  it("a stage that comes after itself, naming those in the circle and no others", () => {
    const text = changed("  - id: slice\n", "  - id: slice\n    after: drain\n");
    const [problem] = problems(text);
    expect(problem?.message).toBe(
      "stage slice: comes after itself, by way of slice, salt-and-chill, drain",
    );
    expect(problem?.line).toBe(lineOf(text, "after: drain"));
  });

  it("an id used twice", () => {
    expect(problems(changed("id: drain", "id: slice"))[0]?.message).toMatch(/used twice/);
  });

  it("a process without its seal check", () => {
    const text = changed("  - {kind: seal-check, cautions: [never-taste]}\n", "");
    expect(problems(text)[0]?.message).toMatch(/one seal-check stage; this one has 0/);
  });

  it("minutes in a stage that is not a process", () => {
    const text = changed("typical: 40 min", "typical: 40 min\n    minutes: 40");
    expect(problems(text)[0]?.message).toMatch(/typical: 20 min/);
  });

  it("a file cut short", () => {
    for (let length = 1; length < good.length; length += 97) {
      const read = readRecipe(good.slice(0, length), "kitchen.yaml", KINDS);
      // A cut may leave a valid, shorter recipe only where just the last stage is missing.
      if (read.ok) expect(length).toBeGreaterThanOrEqual(good.indexOf("\n  - kind: cure"));
      else expect(read.problems.length).toBeGreaterThan(0);
    }
  });

  it.each([
    ["nothing", ""],
    ["a list", "- a\n- b\n"],
    ["a word", "pickles"],
    ["two documents", `${good}\n---\n${good}`],
    ["binary", "\u0000\u0001\u0002"],
  ])("%s", (_what, text) => {
    expect(problems(text).length).toBeGreaterThan(0);
  });
});

describe("a file made to harm is refused at once", () => {
  const bomb = [
    "a: &a [x, x, x, x, x, x, x, x, x]",
    ...["b", "c", "d", "e", "f", "g", "h"].map((name, index) => {
      const one = String.fromCharCode(97 + index);
      return `${name}: &${name} [${Array(9).fill(`*${one}`).join(", ")}]`;
    }),
  ].join("\n");

  it.each([
    ["ten megabytes", "a: ".repeat(3_500_000), /longer than/],
    ["a bomb of aliases", bomb, /anchors|aliases/],
    ["brackets without end", "[".repeat(30_000), /nested/],
    ["dashes without end", "- ".repeat(15_000), /nested/],
    [
      "maps without end",
      Array.from({ length: 240 }, (_, i) => `${" ".repeat(i)}a:`).join("\n"),
      /nested/,
    ],
    ["thousands of commas", `[${",".repeat(30_000)}]`, /commas/],
    ["thousands of lines", "a\n".repeat(10_000), /lines/],
    ["a tag", good.replace("amount: 6 lb", "amount: !!js/function x"), /tag/],
    ["a key given twice", `${good}title: again\n`, /title is written twice/],
  ])(
    "%s",
    (_what, text, says) => {
      const found = problems(text);
      expect(found[0]?.message).toMatch(says);
      expect(found.length).toBeLessThanOrEqual(20);
    },
    5000,
  );

  it.each(["__proto__", "constructor", "prototype"])("the key %s, anywhere", (key) => {
    for (const text of [
      `${good}${key}: {tested: true}\n`,
      good.replace("yield:\n", `yield:\n  ${key}: {a: 1}\n`),
    ]) {
      expect(problems(text)[0]?.message).toBe(`the key ${key} is not read`);
    }
    expect(Object.keys(Object.prototype)).toEqual([]);
  });

  it("an id that names an object's own workings", () => {
    const text = changed("table: bread-and-butter}", "table: constructor}");
    expect(problems(text)[0]?.message).toMatch(/id is taken/);
    expect(problems(changed("[knife]", "[constructor]"))[0]?.message).toMatch(/id is taken/);
  });

  it("messages carry nothing a terminal would obey", () => {
    const [problem] = problems(`${good}"\\e[2Jkey": 1\n`);
    expect(problem?.message).not.toMatch(/\u001b/);
  });
});

describe("the tables file", () => {
  const tables = recipeFile("tables.yaml");

  it("is read", () => {
    expect(readTables(tables, "tables.yaml").ok).toBe(true);
  });

  it.each([
    ["a time too few", "minutes: [30, 35, 40, 45]", "minutes: [30, 35, 40]", /3 times for 4 bands/],
    ["a pressure without schedule", ", schedule: low-acid}", "}", /names its schedule/],
    ["an unknown source", "source: pickles\n", "source: pikles\n", /no source is called pikles/],
    ["an unknown schedule", "schedule: weight-15", "schedule: weight-16", /no schedule is called/],
    ["no minutes", "minutes: [5, 10, 15]", "minutes: [0, 10, 15]", /minutes/],
  ])("with %s is refused", (_what, from, to, says) => {
    const read = readTables(tables.replace(from, to), "tables.yaml");
    expect(read.ok ? "" : read.problems.map((p) => p.message).join()).toMatch(says);
  });
});
