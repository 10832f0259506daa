import { describe, expect, it } from "vitest";
import { parseCannerHolds } from "../../src/commands/call/kitchen-options.ts";
import { checkCommand } from "../../src/commands/recipes/check.ts";
import type { RecipeIo } from "../../src/commands/recipes/recipe-io.ts";
import { recipesCommand } from "../../src/commands/recipes/recipes.ts";
import { reckonJars, reckonProcess } from "../../src/commands/reckon/reckon-recipe.ts";
import { recipeFile, wholeLibrary } from "../recipe/library-files.ts";

const library = wholeLibrary();
library.problems.push("worse.yaml:1: class: invalid option");
const mine = recipeFile("pickled-beets.yaml").replace("4 cups, role: acid", "2 cups, role: acid");

const io: RecipeIo = {
  library: () => library,
  readFile: (path) => {
    if (path === "mine.yaml") return mine;
    if (path === "broken.yaml") return "id: [";
    if (path === "tables.yaml") return recipeFile("tables.yaml");
    if (path === "big.yaml") return "a: ".repeat(3_500_000);
    throw new Error("no such file");
  },
  kitchen: () => ({}),
};

const words = (line: string) => line.split(" ");

describe("brinebell recipes", () => {
  it("lists every recipe", async () => {
    const { code, stdout } = await recipesCommand(["--json"], io);
    expect(code).toBe(0);
    const rows = JSON.parse(stdout) as { id: string; methods: string[] }[];
    expect(rows.map((row) => row.id)).toEqual([...library.recipes.keys()]);
    expect(rows.find((row) => row.id === "snap-beans")?.methods).toEqual([
      "pressure",
      "refrigerator",
    ]);
  });

  it("shows one worked out for this kitchen", async () => {
    const call =
      "pickled-beets --altitude 6200ft --jar quart --for 14lb --canner-holds 9pint,7quart";
    const { code, stdout } = await recipesCommand([...words(call), "--json"], io);
    expect(code).toBe(0);
    const shown = JSON.parse(stdout);
    expect(shown).toMatchObject({
      id: "pickled-beets",
      method: "boiling-water",
      process: { minutes: 45, jar: "quart", band: "above 6,000 ft" },
      scaled: { factor: 2, jars: { expected: 8 }, loads: 2 },
    });
    const text = await recipesCommand(words(call), io);
    expect(text.stdout).toMatch(/^Process: 45 min, boiling-water, hot pack, quart$/m);
    expect(text.stdout).toMatch(/^ {2}8 cups .*vinegar, 5 percent/m);
  });

  it("takes the recorded kitchen's altitude and gauge", async () => {
    const kitchen = () => ({ altitudeFt: 6200, gauge: "dial" as const });
    const { stdout } = await recipesCommand(["snap-beans", "--json"], { ...io, kitchen });
    expect(JSON.parse(stdout).process).toMatchObject({ minutes: 20, pressurePsi: 14 });
  });

  it("counts canner loads only for what goes through a canner", async () => {
    for (const [call, loads] of [
      ["pickled-beets --canner-holds 9 --json", 1],
      ["pickled-beets --method refrigerator --canner-holds 9 --json", null],
      ["fermented-dills --method ferment --canner-holds 9 --json", null],
    ] as const) {
      const { stdout } = await recipesCommand(words(call), io);
      expect(JSON.parse(stdout).scaled, call).toMatchObject({ loads });
    }
  });

  it("without an altitude shows no time and says what is missing", async () => {
    const { code, stdout } = await recipesCommand(["pickled-beets", "--json"], io);
    expect(code).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ process: null, reason: /altitude/ });
  });

  it.each([
    ["pickled-beets --altitude 100ft --jar half-gallon", 1, /not tested/],
    ["pickled-beets --altitude 12000ft", 1, /above 10,000 ft/],
    ["pickled-beets --altitude 6200", 2, /unit/],
    ["pickled-beets --for -3lb", 2, /negative/],
    ["pickled-beets --jar bucket", 2, /none of half-pint/],
    ["pickeld-beets", 2, /did you mean pickled-beets/],
    ["pickled-beets extra", 2, /one recipe at a time/],
    ["dilled-green-beans --jar quart", 1, /quart jars were not tested/],
    ["dilled-green-beans --pack hot", 1, /no hot pack was tested/],
    ["dilled-green-beans --at 11psi", 1, /no pressure process was tested/],
    ["snap-beans --jar half-gallon", 1, /largest is quart/],
    ["sauerkraut --method ferment --at 11psi", 1, /only in a pressure canner/],
    ["pickled-beets --for 99999lb", 2, /more than any kitchen/],
    ["pickled-beets --canner-holds 0", 2, /not a number of jars/],
    ["--jra pint", 2, /did you mean --jar/],
  ])("%s ends with %i", async (line, code, says) => {
    const result = await recipesCommand(words(line), io);
    expect(result.code).toBe(code);
    expect(result.stderr).toMatch(says);
    expect(result.stderr.trimEnd().split("\n")).toHaveLength(1);
    expect(result.stdout).toBe("");
  });
});

describe("brinebell check", () => {
  it("passes the library's own recipes and tables", async () => {
    const { code, stdout } = await checkCommand(
      ["sauerkraut", "berry-jam", "tables.yaml", "--json"],
      io,
    );
    expect(code).toBe(0);
    expect(JSON.parse(stdout)).toEqual([
      { file: "sauerkraut", ok: true, findings: [] },
      { file: "berry-jam", ok: true, findings: [] },
      { file: "tables.yaml", ok: true, findings: [] },
    ]);
  });

  it("ends with 1 where a recipe is a danger, with rule, place, reason and source", async () => {
    const { code, stdout } = await checkCommand(["mine.yaml", "--json"], io);
    expect(code).toBe(1);
    const [checked] = JSON.parse(stdout);
    expect(checked).toMatchObject({ file: "mine.yaml", ok: false });
    expect(checked.findings[0]).toEqual({
      rule: "vinegar-diluted",
      severity: "danger",
      where: expect.stringMatching(/^ingredients\.vinegar, line \d+$/),
      message: expect.stringMatching(/50 percent/),
      source: expect.stringMatching(/Guide 6/),
    });
    expect((await checkCommand(["mine.yaml"], io)).stdout).toMatch(/danger vinegar-diluted at/);
  });

  it("finds a file that is not a recipe, with its line", async () => {
    const { code, stdout } = await checkCommand(["broken.yaml", "big.yaml", "--json"], io);
    expect(code).toBe(1);
    const rules = JSON.parse(stdout).map(
      (one: { findings: { rule: string }[] }) => one.findings[0]?.rule,
    );
    expect(rules).toEqual(["recipe-form", "recipe-form"]);
  });

  it.each([
    ["nowhere.yaml", 3, /cannot be read/],
    ["pickeld-beets", 2, /did you mean pickled-beets/],
    ["", 2, /name a recipe or a file/],
  ])("%s ends with %i", async (line, code, says) => {
    const result = await checkCommand(line === "" ? [] : words(line), io);
    expect(result.code).toBe(code);
    expect(result.stderr).toMatch(says);
  });
});

describe("brinebell reckon process", () => {
  it("prints the tested time with its fields", async () => {
    const call = "--recipe snap-beans --jar quart --altitude 6200 ft --gauge dial --json";
    const { code, stdout } = await reckonProcess(words(call), io);
    expect(code).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({
      value: 25,
      unit: "min",
      range: null,
      estimate: false,
      pressurePsi: 14,
      band: "6,001-8,000 ft",
      jarTested: "quart",
      source: expect.stringMatching(/Guide 4/),
    });
  });

  it("says where the time is published, and plainly where it is from memory", async () => {
    const call = "--recipe choice-salsa --altitude 6200 ft";
    const { stdout } = await reckonProcess([...words(call), "--json"], io);
    expect(JSON.parse(stdout)).toMatchObject({
      locator: { publication: "National Center for Home Food Preservation" },
      reading: "remembered",
      notes: expect.arrayContaining([
        expect.stringMatching(/from memory: compare it with your own/),
      ]),
    });
    const shown = await recipesCommand(words("choice-salsa --altitude 6200 ft"), io);
    expect(shown.stdout).toMatch(/time is from memory: compare it with your own guide/);
    const read = await recipesCommand(words("dilled-green-beans --altitude 6200 ft"), io);
    expect(read.stdout).toMatch(/Guide 6, 2015 edition, Pickled\s+Dilled Beans, p. 6-14/);
    expect(read.stdout).not.toMatch(/from memory/);
  });

  it("takes --at as the pressure process that has such a setting", async () => {
    for (const [at, minutes] of [
      ["6psi", 20],
      ["11psi", 15],
    ]) {
      const call = `--recipe crushed-tomatoes --at ${at} --gauge dial --altitude 0ft --json`;
      const { stdout } = await reckonProcess(words(call), io);
      expect(JSON.parse(stdout)).toMatchObject({ method: "pressure", value: minutes });
    }
    const shown = await recipesCommand(
      words("crushed-tomatoes --at 11psi --gauge dial --altitude 0ft --json"),
      io,
    );
    expect(JSON.parse(shown.stdout)).toMatchObject({ process: { minutes: 15, pressurePsi: 11 } });
  });

  it.each([
    ["--recipe dilled-green-beans --jar quart --altitude 0ft", 1, /not tested/],
    ["--recipe snap-beans --jar pint --altitude 9000ft --gauge dial", 1, /above 8,000 ft/],
    ["--recipe cucumber-seed --altitude 0ft", 1, /no canner process/],
    ["--recipe pickled-beets --at 11psi --altitude 0ft", 1, /no pressure process was tested/],
    [
      "--recipe crushed-tomatoes --at 11psi --method boiling-water --altitude 0ft",
      1,
      /11 psi can be set only in a pressure canner/,
    ],
    ["--recipe worse --jar pint --altitude 0ft", 2, /cannot be used: worse.yaml:1: class/],
    ["--recipe snap-beans --jar pint --altitude 0ft", 2, /--gauge dial or --gauge weighted/],
    ["--recipe snap-beans --jar pint", 2, /--altitude is missing/],
    ["--jar pint --altitude 0ft", 2, /--recipe is missing/],
  ])("%s ends with %i", async (line, code, says) => {
    const result = await reckonProcess(words(line), io);
    expect(result.code).toBe(code);
    expect(result.stderr).toMatch(says);
  });
});

describe("the kept kitchen", () => {
  const kept = { altitudeFt: 6200, gauge: "dial" as const, cannerHolds: { pint: 7 } };

  it("gives reckon process the altitude and the gauge that a call leaves out", async () => {
    const call = "--recipe snap-beans --jar pint --json";
    const { stdout } = await reckonProcess(words(call), { ...io, kitchen: () => kept });
    expect(JSON.parse(stdout)).toMatchObject({ altitudeFt: 6200, gauge: "dial", pressurePsi: 14 });
  });

  it("gives an uncertain altitude to reckon process and recipes alike", async () => {
    const vague = { altitudeFt: 1000, altitudeUncertaintyFt: 100 };
    const kitchen = () => vague;
    const call = "--recipe dilled-green-beans --jar pint --json";
    const process = JSON.parse((await reckonProcess(words(call), { ...io, kitchen })).stdout);
    expect(process.value).toBe(10);
    expect(process.notes.join()).toContain("off by 100 ft: the higher end counts");
    const shown = await recipesCommand(["dilled-green-beans", "--json"], { ...io, kitchen });
    expect(JSON.parse(shown.stdout).process).toMatchObject({ minutes: 10 });
    const exact = await reckonProcess(words(`${call} --altitude 1000ft`), { ...io, kitchen });
    expect(JSON.parse(exact.stdout)).toMatchObject({ value: 5 });
  });

  it("gives reckon jars what the canner holds", async () => {
    const call = "--recipe pickled-beets --for 35lb --jar pint --json";
    const { stdout } = await reckonJars(words(call), { ...io, kitchen: () => kept });
    const { value, loads } = JSON.parse(stdout);
    expect(loads).toBe(Math.ceil(value / 7));
  });

  it("is not read where a call leaves nothing out", async () => {
    const kitchen = () => {
      throw new Error("the journal was read");
    };
    for (const call of [
      "--recipe snap-beans --jar pint --altitude 0ft --gauge dial",
      "--recipe pickled-beets --jar pint --altitude 0ft",
    ]) {
      expect((await reckonProcess(words(call), { ...io, kitchen })).code).toBe(0);
    }
  });
});

describe("brinebell reckon jars", () => {
  it("counts jars and loads", async () => {
    const call = "--recipe crushed-tomatoes --for 44lb --jar quart --canner-holds 7 --json";
    const { code, stdout } = await reckonJars(words(call), io);
    expect(code).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ value: 14, unit: "jars", loads: 2, estimate: true });
  });

  it.each([
    ["--recipe pickled-beets --jar pint", 2, /--for is missing/],
    ["--recipe pickled-beets --for 7 --jar pint", 2, /unit/],
    ["--recipe bean-seed --for 7lb", 1, /not kept in jars/],
    ["--recipe snap-beans --for 14lb --jar half-gallon", 1, /largest is quart/],
    [
      "--recipe snap-beans --for 14lb --jar quart --canner-holds 9pint",
      2,
      /nothing about quart jars/,
    ],
  ])("%s ends with %i", async (line, code, says) => {
    const result = await reckonJars(words(line), io);
    expect(result.code).toBe(code);
    expect(result.stderr).toMatch(says);
  });
});

describe("what a canner holds", () => {
  it.each([
    ["9", { any: 9 }],
    ["9pint,7quart", { pint: 9, quart: 7 }],
    ["9 pints, 7 quarts", { pint: 9, quart: 7 }],
  ])("%s", (text, holds) => {
    expect(parseCannerHolds(text)).toEqual({ ok: true, value: holds });
  });

  it.each(["", "0", "-1", "9.5", "many", "9bucket", "9,7", "9pint,7pint", "1000"])(
    "%s is refused",
    (text) => {
      expect(parseCannerHolds(text).ok).toBe(false);
    },
  );
});
