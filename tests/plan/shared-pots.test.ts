/** Lots of one recipe are planned as they are made: one brine, and loads filled up across lots. */
import { describe, expect, it } from "vitest";
import { type PlanIo, planCommand } from "../../src/commands/day/plan.ts";
import { sharingPots } from "../../src/plan/shared-pots.ts";
import type { CanningFacts } from "../../src/plan/wanted-batch.ts";
import { wantedBatch } from "../../src/plan/wanted-batch.ts";
import { wholeLibrary } from "../recipe/library-files.ts";

const LIBRARY = wholeLibrary();
const KITCHEN = ["--altitude", "6200ft", "--canner-holds", "9pint", "--gauge", "dial"];
const START = ["--start", "2027-08-14T08:00:00"];
const io: PlanIo = {
  library: async () => LIBRARY,
  kitchen: async () => undefined,
  zone: "America/Denver",
  nowMs: Date.UTC(2027, 7, 14, 12),
  elapsedMs: () => 0,
  record: {} as PlanIo["record"],
};
const THREE = [
  "dilled-green-beans 4lb Provider",
  "dilled-green-beans 3lb Dragon Tongue",
  "dilled-green-beans 3lb Blue Lake",
];

type Report = {
  minutes: number;
  batches: { id: string; label: string; lots: { variety: string; jars: number }[] }[];
  loads: { load: number; jars: { lot: string; jars: number }[] }[];
  saving: { minutes: number; handsMinutes: number; loads: number } | null;
  tasks: {
    batch: string;
    stage: string;
    load?: number;
    kind: string;
    start: string;
    end: string;
  }[];
  why: string[];
};

async function plan(...lots: string[]): Promise<Report> {
  const { stdout, stderr } = await planCommand([...lots, ...KITCHEN, ...START, "--json"], io);
  expect(stderr).toBe("");
  return JSON.parse(stdout);
}

function minutesOf({ tasks }: Report, stage: string): number[] {
  return tasks
    .filter((task) => task.stage === stage)
    .map(({ start, end }) => (Date.parse(end) - Date.parse(start)) / 60_000);
}

describe("three lots of beans", () => {
  it("have one brine, and the hands' work of all of them", async () => {
    const report = await plan(...THREE);
    expect(report.batches.map(({ label }) => label)).toEqual(["3 lots of dilled green beans"]);
    expect(minutesOf(report, "brine")).toEqual([15]);
    // 25 minutes for four pounds, and 5 for each of six more; 20 of filling for each lot, over
    // loads of 9, 9 and 2 of 20 jars, in steps of five minutes.
    expect(minutesOf(report, "trim")).toEqual([55]);
    expect(minutesOf(report, "fill")).toEqual([30, 30, 10]);
  });

  it("fill up their loads across lots", async () => {
    const { loads } = await plan(...THREE);
    const counts = loads.map(({ jars }) =>
      jars.map((one) => `${one.jars} ${one.lot.split(":")[1]}`),
    );
    expect(counts).toEqual([
      ["8 Provider", "1 Dragon Tongue"],
      ["5 Dragon Tongue", "4 Blue Lake"],
      ["2 Blue Lake"],
    ]);
  });

  it("are told in text with what goes into each load", async () => {
    const { stdout } = await planCommand([...THREE, ...KITCHEN, ...START], io);
    expect(stdout).toMatch(/fill, load 2 \(30 min\): 5 Dragon Tongue, 4 Blue Lake/);
    expect(stdout).toMatch(/sharing pots saves \d+ minutes of work and no load against each lot/);
  });
});

describe("what sharing saves", () => {
  it("is the loads that fill up, the work at pots, and the day", async () => {
    const small = [
      "dilled-green-beans 1lb Provider",
      "dilled-green-beans 1.5lb Dragon Tongue",
      "dilled-green-beans 2lb Blue Lake",
    ];
    const together = await plan(...small);
    // Two, three and four pints are one load of nine in place of three.
    expect(together.loads).toHaveLength(1);
    expect(together.saving?.loads).toBe(2);
    expect(together.saving?.minutes).toBeGreaterThan(0);
    // Two loads less to lower in and to lift out, and two brines less to put on.
    expect(together.saving?.handsMinutes).toBeGreaterThanOrEqual(2 * (5 + 5 + 5));
  });

  it("is nothing where there is nothing to share", async () => {
    expect((await plan("dilled-green-beans 4lb Provider")).saving).toBeNull();
    const apart = await plan("dilled-green-beans 4lb Provider", "pickled-beets 7lb");
    expect(apart.saving).toBeNull();
    expect(apart.batches).toHaveLength(2);
    expect(apart.why.join(" ")).not.toMatch(/sharing/);
  });
});

describe("lots that are put up in another way", () => {
  const facts: CanningFacts = {
    altitudeFt: 6200,
    altitudeUncertaintyFt: 0,
    gauge: "dial",
    holds: () => 9,
  };
  const made = (id: string, recipe: string, wish: CanningFacts["wish"]) => {
    const found = LIBRARY.recipes.get(recipe);
    if (!found) throw new Error(`no ${recipe}`);
    const wanted = { id, recipe: found, variety: id, weightLb: 4 };
    const batch = wantedBatch(wanted, LIBRARY, wish ? { ...facts, wish } : facts);
    if (!batch.ok) throw new Error(batch.error);
    return batch.batch;
  };
  const together = (...batches: ReturnType<typeof made>[]) => {
    return sharingPots(batches).map(({ lots }) => lots.map(({ id }) => id));
  };

  it("stay apart by jar", () => {
    const [a, b, c] = (["pint", "quart", "pint"] as const).map((jar, at) => {
      return made(`Lot${at}`, "pickled-beets", { jar });
    });
    expect(a && b && c && together(a, b, c)).toEqual([["Lot0", "Lot2"], ["Lot1"]]);
  });

  it("stay apart by pack", () => {
    const raw = made("Provider", "snap-beans", { pack: "raw" });
    const hot = made("Blue Lake", "snap-beans", { pack: "hot" });
    expect(together(raw, hot)).toEqual([["Provider"], ["Blue Lake"]]);
    expect(together(raw, { ...raw, id: "x" })).toHaveLength(1);
  });

  it("stay apart by recipe", () => {
    const beets = made("Chioggia", "pickled-beets", undefined);
    const beans = made("Provider", "dilled-green-beans", undefined);
    expect(together(beets, beans)).toHaveLength(2);
  });
});
