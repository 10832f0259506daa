/** Lots that shared their pots: a row for each, and counts that follow from their own jars. */
import { parse } from "csv-parse/sync";
import { beforeAll, describe, expect, it } from "vitest";
import { reviewCommand } from "../../src/commands/record/review.ts";
import { historyOf, type KitchenEvent } from "../../src/kitchen/events.ts";
import { replay } from "../../src/kitchen/evolve.ts";
import type { State } from "../../src/kitchen/state.ts";
import { MINUTE_MS, parseIso } from "../../src/kitchen/time.ts";
import { batchLog } from "../../src/review/batch-log.ts";
import { compareLots } from "../../src/review/compare.ts";
import { handsOn } from "../../src/review/hands-needed.ts";
import { batchPage } from "../../src/review/pages/batch-page.ts";
import { comparePage } from "../../src/review/pages/compare-page.ts";
import { seasonPage } from "../../src/review/pages/season-page.ts";
import { seasonOf } from "../../src/review/season.ts";
import { readScript } from "../../src/session/rehearsal/rehearsal-script.ts";
import { Rehearsal } from "../../src/session/rehearsal/rehearse.ts";
import { opening, ZONE } from "./demo-season.ts";
import { ioFor, LIBRARY } from "./kitchen-files.ts";
import { kitchenFolder } from "./kitchen-folder.ts";

/** Eight, six and six pints in loads of nine: three loads of three lots. */
const SATURDAY = `
0:00 start dilly beans with four pounds of Provider
+0:01 start dilly beans with three pounds of Dragon Tongue
+0:01 start dilly beans with three pounds of Blue Lake
+0:01 [cook until done]
`;

let events: KitchenEvent[];
let state: State;
let now: number;
const [PROVIDER, DRAGON, BLUE] = ["270814-1", "270814-2", "270814-3"] as const;

beforeAll(async () => {
  const script = readScript(SATURDAY);
  if (!script.ok) throw new Error(script.message);
  const rehearsal = new Rehearsal({
    library: LIBRARY,
    recipes: [],
    begin: {},
    startMs: parseIso("2027-08-14T08:00:00", ZONE) ?? 0,
    zone: ZONE,
    setUp: [],
    demoAltitudeFt: 6200,
    version: "0.0.0",
    script: script.lines,
  });
  const { kitchen, trouble } = await rehearsal.play();
  if (trouble) throw new Error(trouble);
  const own = new Set(["opened", "closed"]);
  const played = historyOf(kitchen.session.state).filter((event) => !own.has(event.type));
  now = (played.at(-1)?.t ?? 0) + 48 * 60 * MINUTE_MS;
  const later = { t: now, w: now };
  events = [
    ...opening(played[0]?.t ?? 0),
    ...played,
    { type: "jar-opened", batch: PROVIDER, count: 2, jars: [3, 5], ...later, cmd: "a" },
    {
      type: "spoiled",
      batch: PROVIDER,
      load: null,
      count: 1,
      jars: [7],
      sign: "off",
      ...later,
      cmd: "b",
    },
    { type: "tasted", batch: DRAGON, taster: "anna", scores: { crunch: 4 }, ...later, cmd: "c" },
    { type: "preferred", batch: DRAGON, over: PROVIDER, taster: "anna", ...later, cmd: "d" },
  ];
  state = replay(events);
});

function logOf(id: string) {
  const batch = state.batches[PROVIDER];
  const lot = batch?.lots.find((one) => one.id === id);
  if (!batch || !lot) throw new Error(`no lot ${id}`);
  return batchLog(state, batch, now, lot);
}

describe("the minutes that hands were needed", () => {
  it("are without the waits for the canner", () => {
    // 55 of trimming; for each of three loads 20 of filling, 10 at the canner, 5 of checking.
    const hands = handsOn(state);
    const all = [PROVIDER, DRAGON, BLUE].map(hands);
    expect(all.reduce((a, b) => a + b)).toBeCloseTo(55 + 3 * (20 + 10 + 5), 6);
    const fill = state.batches[PROVIDER]?.stages.find(({ id }) => id === "fill");
    expect(((fill?.endedAt ?? 0) - (fill?.startedAt ?? 0)) / MINUTE_MS).toBe(180);
  });

  it("are shared out by jars: the batch's over all of them, a load's over its own", () => {
    const hands = handsOn(state);
    // Loads of 8 + 1, 5 + 4 and 2 jars.
    const [batch, load] = [55 + 60, 15];
    expect(hands(PROVIDER)).toBeCloseTo((8 / 20) * batch + (8 / 9) * load, 6);
    expect(hands(DRAGON)).toBeCloseTo((6 / 20) * batch + (1 / 9 + 5 / 9) * load, 6);
    expect(hands(BLUE)).toBeCloseTo((6 / 20) * batch + (4 / 9 + 1) * load, 6);
  });

  it("count a lot that has none as none", () => {
    expect(handsOn(state)("270814-9")).toBe(0);
  });
});

describe("a row for each lot", () => {
  it("has what was opened without what was spoiled, and its own tastings", () => {
    expect(logOf(PROVIDER)).toMatchObject({
      opened: [{ count: 2, jars: [3, 5] }],
      spoiled: [{ count: 1, jars: [7] }],
      tastings: [],
      jars: { filled: 8, sealed: 7, spoiled: 1 },
      sharesWith: [DRAGON, BLUE],
    });
    expect(logOf(DRAGON)).toMatchObject({
      opened: [],
      tastings: [{ taster: "anna", scores: { crunch: 4 } }],
      preferred: [{ taster: "anna", over: PROVIDER }],
    });
  });

  it("names its loads alone", () => {
    expect(logOf(PROVIDER).loads).toHaveLength(1);
    expect(logOf(BLUE).loads).toHaveLength(2);
  });
});

describe("varieties rolled up", () => {
  it("have the seal rate with its 95 % interval by Wilson, and jars a pound", () => {
    const found = compareLots(state, "dilled-green-beans", now);
    const [provider] = found?.varieties ?? [];
    // A spoiled jar did seal. Wilson for 8 of 8: 8 / (8 + 1.96²) = 0.676 to 1.
    expect(provider).toMatchObject({
      variety: "Provider",
      lots: 1,
      weightLb: 4,
      jars: 8,
      jarsPerLb: 2,
      opened: 2,
      spoiled: 1,
      seal: { of: 8, sealed: 8 },
    });
    expect(provider?.seal?.interval[0]).toBeCloseTo(0.676, 3);
  });

  it("take the lots of several batches together, and leave out those given up", () => {
    const twice = replay([...events, ...again(events)]);
    const at = now + 20 * 24 * 60 * MINUTE_MS;
    const lines = seasonOf(twice, 2027, at).varieties;
    expect(lines.map(({ variety, lots, jars }) => [variety, lots, jars])).toEqual([
      ["Provider", 2, 16],
      ["Dragon Tongue", 2, 12],
      ["Blue Lake", 2, 12],
    ]);
    const given = replay([
      ...events,
      { type: "lot-abandoned", batch: BLUE, t: now, w: now, cmd: "e" },
    ]);
    const left = seasonOf(given, 2027, now).varieties;
    expect(left.map(({ variety }) => variety)).toEqual(["Provider", "Dragon Tongue"]);
  });
});

/** The same Saturday ten days later, under ids of its own. */
function again(all: readonly KitchenEvent[]): KitchenEvent[] {
  const shift = 10 * 24 * 60 * MINUTE_MS;
  return all
    .filter(({ type }) => type !== "kitchen-set")
    .map((event) => {
      const text = JSON.stringify(event).replace(/270814-/g, "270824-");
      const one = JSON.parse(text) as KitchenEvent;
      return { ...one, t: one.t + shift, w: one.w + shift, cmd: `${one.cmd}-again` };
    });
}

describe("what is printed", () => {
  it("has a row for each lot on the batch's page, and names the others on a lot's own", () => {
    const batch = state.batches[PROVIDER];
    if (!batch) throw new Error("no batch");
    const whole = batchPage(state, batch, now);
    for (const lot of ["Provider", "Dragon Tongue", "Blue Lake"]) {
      expect(whole).toContain(`<th scope="row" role="rowheader">${lot}</th>`);
      expect(whole).toContain(`<h2>Jars of ${lot}</h2>`);
    }
    const one = batchPage(state, batch, now, batch.lots.slice(1, 2));
    expect(one).toContain("Dilled green beans, Dragon Tongue: batch 270814-2");
    expect(one).toContain("<dt>Shared its pots with</dt><dd>270814-1, 270814-3</dd>");
    expect(one).toContain("crunch 4 (anna)");
    expect(one).toContain("liked better than 270814-1 (anna)");
    expect(one).not.toContain("<h2>Opened</h2>");
    expect(whole).toContain("P3, P5");
    // What they shared stands once on the page of all of them.
    expect(whole.match(/boil the brine<\/th>/g)).toHaveLength(1);
  });

  it("has the varieties on the pages of the season and of the comparison", () => {
    const season = seasonPage(seasonOf(state, 2027, now));
    const found = compareLots(state, "dilled-green-beans", now);
    for (const page of [season, found ? comparePage(found) : ""]) {
      expect(page).toContain("8 of 8 sealed: 100 %, between 68 and 100 %");
    }
  });

  it("has every lot in text, CSV and Markdown by the batch's id, and one by its own", async () => {
    const { folder, done } = kitchenFolder(events);
    const io = ioFor(folder, "2027-08-20T12:00:00");
    const run = async (...args: string[]) => (await reviewCommand(args, io)).stdout;
    try {
      const rows: Record<string, string>[] = parse(await run(PROVIDER, "--csv"), { columns: true });
      expect(new Set(rows.map(({ batch }) => batch))).toEqual(new Set([PROVIDER, DRAGON, BLUE]));
      expect(rows.filter(({ row }) => row === "opened")).toMatchObject([
        { value: "2", detail: "3 5" },
      ]);
      expect(rows.filter(({ row }) => row === "tasting")).toMatchObject([
        { name: "crunch", value: "4" },
      ]);
      const markdown = await run("Dragon Tongue", "--markdown");
      expect(markdown.match(/^# /gm)).toHaveLength(1);
      expect(markdown).toContain("Shared its pots with 270814-1, 270814-3");
      expect(markdown).toContain("crunch 4 (anna)");
      const text = await run(PROVIDER);
      expect(text).toContain("opened 2 jars: 3, 5");
      expect(text).toContain("(Blue Lake, 3 lb)  270814-3");
      const all: Record<string, string>[] = parse(await run("--csv"), { columns: true });
      expect(all.map(({ opened, shares_with }) => [opened, shares_with])).toEqual([
        ["2", "270814-2 270814-3"],
        ["0", "270814-1 270814-3"],
        ["0", "270814-1 270814-2"],
      ]);
      const compared = await run("--compare", "dilly beans", "--csv");
      const lines: Record<string, string>[] = parse(compared, { columns: true });
      expect(lines.map(({ row, variety }) => `${row} ${variety}`)).toEqual([
        ...["lot Provider", "lot Dragon Tongue", "lot Blue Lake"],
        ...["variety Provider", "variety Dragon Tongue", "variety Blue Lake"],
        "score Dragon Tongue",
      ]);
      expect(lines[3]).toMatchObject({ sealed: "8", checked: "8", seal_low: "0.676", opened: "2" });
      const season = await run("--season", "2027", "--csv");
      expect(parse(season, { columns: true })).toHaveLength(3);
    } finally {
      done();
    }
  });
});
