/** What commands print of a metric kitchen: no pounds, inches, Fahrenheit or cups are left. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type CommandResult, inItsUnits } from "../../src/commands/call/command-result.ts";
import { RUNNERS } from "../../src/commands/command-table.ts";
import { machineFor } from "../../src/commands/machine.ts";
import { theLibrary } from "../scenarios/play.ts";

const top = mkdtempSync(join(tmpdir(), "metric-"));
const home = join(top, "kitchen");
afterAll(() => rmSync(top, { recursive: true }));

/** Jars keep the names of their sizes, and a gauge's own pounds stand beside the kilopascals. */
const LEFT = new RegExp(
  [
    "°F|\\b\\d+ ?F\\b|\\bFahrenheit\\b",
    "\\b(?:inch(?:es)?|feet|foot|ft|psi|lbs?|oz|ounces?|cups?|gallons?)\\b",
    "(?<!pascals \\(\\d+(?:\\.\\d+)? )\\bpounds?\\b(?! weight)",
    "\\bquarts? (?:of|for)\\b",
  ].join("|"),
  "i",
);

async function printed(name: keyof typeof RUNNERS, ...args: string[]): Promise<string> {
  const result = await RUNNERS[name](args, machineFor(home, "1", "test"));
  const { stdout, stderr } = await inItsUnits(result as CommandResult);
  return stdout + stderr;
}

const DAYS = `0:00 start the dilly beans, four pounds of Provider
0:02 start the snap beans, nine pounds
0:03 note: the beans were 5 inches long
+0:01 [cook until done]
`;

/** A recipe that most rules find something in. */
const DOUBTFUL = `id: doubtful
title: Doubtful beans
class: acidified
source: {publication: our own kitchen}
tested: false
yield: {produce: beans, weightLb: 4, jars: {count: 8, size: pint}}
headspaceIn: 0.5
jars: [pint, half-gallon]
ingredients:
  - {id: beans, name: green beans, amount: 4 lb, role: produce}
  - {id: onions, name: onions, amount: 3 onions, role: produce}
  - {id: vinegar, name: "vinegar, 4 percent", amount: 1 cup, role: acid, strengthPercent: 4}
  - {id: water, name: water, amount: 2 quarts, role: water}
processes: []
keptAs: refrigerator
stages:
  - {id: fill, kind: fill, title: fill, say: "Fill to 1 inch below the rim.", typical: 9 min}
  - {kind: store, say: Into the refrigerator., window: 1 d to 4 wk}
`;

beforeAll(async () => {
  const script = join(top, "day.txt");
  writeFileSync(script, DAYS);
  writeFileSync(join(top, "doubtful.yaml"), DOUBTFUL);
  const day = await printed("rehearse", "--script", script, "--altitude", "6200ft");
  expect(day).toContain("Provider");
  const set = ["--units", "metric", "--altitude", "6200ft", "--reads-high", "1psi"];
  await printed("kitchen", ...set, "--gauge", "dial");
}, 60_000);

describe("a metric kitchen", () => {
  const calls: [string, () => Promise<string>, RegExp][] = [
    ["its settings", () => printed("kitchen"), /1,890 meters/],
    ["a plan", () => printed("plan", "dilled-green-beans 2kg", "snap-beans 4kg"), /From/],
    [
      "a plan that does not fit",
      () => printed("plan", "snap-beans 9kg", "--altitude", "3000m"),
      /plan: .*2,438 meters/,
    ],
    [
      "a recipe at no kitchen's altitude",
      () => printed("recipes", "beets", "--altitude", "9000m"),
      /meters/,
    ],
    [
      "a tested time",
      () => printed("reckon", "process", "--recipe", "snap-beans", "--jar", "pint"),
      /kilopascals/,
    ],
    [
      "jars",
      () =>
        printed("reckon", "jars", "--recipe", "berry-jam", "--for", "4kg", "--jar", "half-pint"),
      /jars/,
    ],
    ["the batches", () => printed("review"), /Provider/],
    ["the season", () => printed("review", "--season", "2027"), /2027/],
    ["lots side by side", () => printed("review", "--compare", "dilled-green-beans"), /kilo/],
    ["the pantry", () => printed("pantry"), /On the shelf/],
    ["seeds", () => printed("seeds"), /seed/],
    ["reminders", () => printed("reminders"), /due/],
    ["own words", () => printed("words"), /./],
    ["a doubtful recipe", () => printed("check", join(top, "doubtful.yaml")), /warning/],
  ];

  it.each(calls)("prints %s in metric units alone", async (_name, call, shows) => {
    const text = await call();
    expect(text).toMatch(shows);
    expect(text).not.toMatch(LEFT);
  });

  it("prints a batch, as text, page and Markdown, and its labels", async () => {
    const ids = (await printed("review")).match(/^\d{6}-\d+/gm) ?? [];
    expect(ids.length).toBe(2);
    for (const id of ids) {
      for (const form of [[], ["--markdown"], ["--html", "-"]]) {
        const text = await printed("review", id, ...form);
        expect(text.replace(/<style>[\s\S]*?<\/style>/g, "")).not.toMatch(LEFT);
      }
      const labels = await printed("labels", id);
      expect(labels).toContain("put up");
      expect(labels).not.toMatch(LEFT);
    }
  });

  it.each([...theLibrary().recipes.keys()])(
    "prints %s, and what is said of its file",
    async (id) => {
      expect(await printed("recipes", id)).not.toMatch(LEFT);
      expect(await printed("check", id)).not.toMatch(LEFT);
    },
  );

  it("leaves what is for programs as it is", async () => {
    expect(JSON.parse(await printed("recipes", "snap-beans", "--json"))).toHaveProperty("id");
    expect(await printed("review", "--csv")).toContain("weight_lb");
  });
});
