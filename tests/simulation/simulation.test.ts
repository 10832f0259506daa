import { beforeAll, describe, expect, it } from "vitest";
import type { Library } from "../../src/recipe/library.ts";
import { loadLibrary } from "../../src/session/reading/load-library.ts";
import { readScript } from "../../src/session/rehearsal/rehearsal-script.ts";
import { waitText } from "./cook.ts";
import { dice } from "./dice.ts";
import { shrink } from "./shrink.ts";
import { runScript, runSeed } from "./simulation.ts";
import { slowObjections } from "./slow-reading.ts";

const KITCHENS = 10;
let library: Library;

beforeAll(async () => {
  library = await loadLibrary(["recipes"], {});
});

/** A day of beans from the first word to the seal check, as a script. */
const BEAN_DAY = [
  "+0:25 done",
  "+0:30 the brine is boiling",
  "+0:20 the canner's ready",
  "+0:20 8 pints filled, new lids",
  "+0:01 yes",
  "+0:01 yes",
  "+0:01 yes",
  "+0:05 the jars are in",
  "+0:20 it's boiling and the lids are covered",
  "+0:12 set a timer for three minutes for the bread",
  "+0:10 yes",
  "+0:01 heat's off",
  "+0:06 the jars are out",
  "+13:00 all sealed",
];
const BEANS = ["dilled-green-beans", "--altitude", "6200ft", "--from", "2027-08-14T08:00:00"];

describe("simulated kitchens", () => {
  it("keep their clocks and their log, whatever happens", { timeout: 120_000 }, async () => {
    for (let seed = 1; seed <= KITCHENS; seed++) {
      const run = await runSeed(seed, library);
      expect(run.broken, `seed ${seed}\n${run.script.join("\n")}`).toBeUndefined();
    }
  });

  it("play the same way again from the same seed", async () => {
    const [one, other] = [await runSeed(7, library), await runSeed(7, library)];
    expect(other).toEqual(one);
  });

  it("say what rehearse can play", async () => {
    const run = await runSeed(11, library);
    expect(readScript(run.script.join("\n")).ok).toBe(true);
    expect(await runScript(run.args, run.script, library)).toBeUndefined();
  });

  it("survive a death at every single write of a day", { timeout: 120_000 }, async () => {
    for (let write = 1; write <= 12; write++) {
      for (const half of ["", "half of "]) {
        for (let at = 0; at < BEAN_DAY.length; at += 5) {
          const death = `+0:00:01 [dies at ${half}write ${write}]`;
          const day = [...BEAN_DAY.slice(0, at), death, ...BEAN_DAY.slice(at)];
          expect(await runScript(BEANS, day, library), `write ${write} at ${at}`).toBeUndefined();
        }
      }
    }
  });

  it.each([
    "[crash]",
    "[closed for 0:20]",
    "[asleep for 2d 0:00]",
    "[stands still for 0:01]",
    "[power cut for 1:00]",
    "[clock set -13:00]",
    "[write fails]",
    "[sync fails]",
    "[torn line]",
    "[repeated line]",
    "[another program]",
    "[disk full]",
    "[disk slow by 0:00:02]",
    "[microphone gone]",
    "[hears 40% yes]",
    "[voice hangs]",
    "[voice late]",
  ])("survive %s between steps", { timeout: 60_000 }, async (fault) => {
    for (let at = 0; at <= BEAN_DAY.length; at += 3) {
      const day = [...BEAN_DAY.slice(0, at), `+0:00:01 ${fault}`, ...BEAN_DAY.slice(at)];
      expect(await runScript(BEANS, day, library), `after line ${at}`).toBeUndefined();
    }
  });
});

describe("the slow reading", () => {
  const row = (type: string, t: number, more: object) => ({ type, t, w: t, cmd: `c${t}`, ...more });
  const minute = 60_000;
  const terms = { method: "boiling-water", minutes: 15, pressurePsi: null, altitudeFt: 6200 };
  const parts = [{ batch: "b", jars: 8, first: 1 }];
  const day = (boil: number, lost: number | undefined, out: number) => [
    row("batch-begun", 0, { batch: "b", pack: "raw", recipe: { critical: [{ id: "lids" }] } }),
    row("load-opened", 0, { load: "L", batch: "b", terms, gauge: null }),
    row("confirmed", 1, { batch: "b", factor: "lids", held: true }),
    row("loaded", 2, { load: "L", parts }),
    row("boil", boil * minute, { owner: "L", stage: "process", covered: true }),
    ...(lost === undefined
      ? []
      : [row("boil-lost", lost * minute, { owner: "L", uncovered: false })]),
    row("end-answer", (out - 1) * minute, { load: "L", yes: true }),
    row("unloaded", out * minute, { load: "L", early: false }),
  ];

  it("has nothing against a whole record", () => {
    expect(slowObjections(day(20, undefined, 40), "b")).toEqual([]);
  });

  it("objects to a minute too few, and to a boil that was lost", () => {
    expect(slowObjections(day(20, undefined, 34), "b")).toEqual(["L held 840 of 900 s"]);
    expect(slowObjections(day(20, 30, 40), "b")).toEqual(["L held 600 of 900 s"]);
  });

  it("objects to what nobody watched, unless somebody vouched for it", () => {
    const gap = row("gap", 30 * minute, { from: 25 * minute, to: 30 * minute });
    const rows = day(20, undefined, 40);
    const within = [...rows.slice(0, 5), gap, ...rows.slice(5)];
    expect(slowObjections(within, "b")).toEqual(["L held 600 of 900 s"]);
    const vouched = row("vouched", 31 * minute, { load: "L", held: true });
    expect(slowObjections([...within.slice(0, 6), vouched, ...within.slice(6)], "b")).toEqual([]);
  });

  it("objects to what was not confirmed", () => {
    const rows = day(20, undefined, 40).filter((one) => one.type !== "confirmed");
    expect(slowObjections(rows, "b")).toEqual(["lids was not confirmed"]);
  });
});

describe("shrinking", () => {
  it("finds the shortest script that is still broken", async () => {
    const lines = Array.from({ length: 60 }, (_, at) => `line ${at}`);
    const broken = async (kept: string[]) => kept.includes("line 7") && kept.includes("line 41");
    expect(await shrink(lines, broken)).toEqual(["line 7", "line 41"]);
  });

  it("writes times that a script can have", () => {
    expect(waitText(0)).toBe("+0:00:00");
    expect(waitText(59_001)).toBe("+0:01:00");
    expect(waitText(86_400_000 * 2 + 3_661_000)).toBe("+2d 1:01:01");
  });

  it("draws every number of its dice evenly", () => {
    const chance = dice(3);
    const seen = new Array(6).fill(0);
    for (let roll = 0; roll < 6000; roll++) seen[chance.whole(0, 5)] += 1;
    for (const count of seen) expect(Math.abs(count - 1000)).toBeLessThan(200);
  });
});
