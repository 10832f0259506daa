/** Which readings of a load speak against its process: by unit, by value, and by when. */
import { describe, expect, it } from "vitest";
import { lowReadings, lowReadingWords, markOf } from "../../src/kitchen/loads/low-readings.ts";
import { runOfRole } from "../../src/kitchen/owners.ts";
import type { Load } from "../../src/kitchen/state.ts";
import { verdictOf } from "../../src/review/verdict.ts";
import { Story } from "./story.ts";

/** Twenty minutes from 100 to 120, in kitchen minutes, by a method. */
function timed(method: NonNullable<Load["terms"]>["method"], altitudeFt = 6200): Load {
  const story = new Story(altitudeFt);
  const load = structuredClone(story.loads(60, story.begins(0, "dilled-green-beans"), 8));
  const { terms } = load;
  const kept = runOfRole(load, "treatment")?.kept;
  if (!terms || !kept) throw new Error("no process");
  load.terms = { ...terms, method, altitudeFt, pressurePsi: method === "pressure" ? 14 : null };
  load.gauge = null;
  kept.needMinutes = 20;
  kept.stretches = [{ from: minute(100) }];
  return load;
}

const minute = (value: number): number => value * 60_000;
const read = (load: Load, at: number, value: number, unit = "psi") => {
  load.readings.push({ at: minute(at), what: "probe", value, unit });
};
const values = (load: Load) => lowReadings(load).map(({ value }) => value);

describe("the mark of a process", () => {
  it("is its pressure by the gauge that is there", () => {
    const load = timed("pressure");
    expect(markOf(load)).toEqual({ unit: "psi", least: 14 });
    load.gauge = { kind: "dial", testedSeason: 2027, readsHighPsi: 1 };
    expect(markOf(load)).toEqual({ unit: "psi", least: 15 });
    const none = timed("pressure");
    if (none.terms) none.terms.pressurePsi = null;
    expect(markOf(none)).toBeUndefined();
    expect(lowReadings(none)).toEqual([]);
  });

  it.each(["boiling-water", "steam"] as const)(
    "is three degrees under the boil in %s",
    (method) => {
      // Water boils at 212 F at sea level, by definition of the scale.
      expect(markOf(timed(method, 0))?.unit).toBe("F");
      expect(markOf(timed(method, 0))?.least).toBeCloseTo(209, 0);
      const low = markOf(timed(method, 6200))?.least ?? 0;
      expect(low).toBeGreaterThan(196);
      expect(low).toBeLessThan(199);
    },
  );

  it("is 180 degrees for a pasteurization, and none without terms", () => {
    expect(markOf(timed("low-temperature"))).toEqual({ unit: "F", least: 180 });
    const bare = timed("pressure");
    bare.terms = null;
    expect(markOf(bare)).toBeUndefined();
  });
});

describe("a reading counts against a process", () => {
  it("from just under the mark, in the mark's unit", () => {
    const load = timed("pressure");
    read(load, 105, 14);
    read(load, 106, 13.9);
    read(load, 107, 11, "F");
    expect(values(load)).toEqual([13.9]);
  });

  it("between its start and its end, and neither before nor after", () => {
    const load = timed("pressure");
    for (const [at, value] of [
      [99, 1],
      [100, 2],
      [100.1, 3],
      [119.9, 4],
      [120, 5],
      [130, 6],
    ] as const)
      read(load, at, value);
    expect(values(load)).toEqual([3, 4]);
  });

  it("only in the stretch that counts, up to where that was lost", () => {
    const load = timed("pressure");
    const kept = runOfRole(load, "treatment")?.kept;
    if (kept) kept.stretches = [{ from: minute(80), to: minute(90), ended: "lost" }];
    read(load, 85, 7);
    read(load, 95, 8);
    expect(values(load)).toEqual([7]);
    kept?.stretches.push({ from: minute(100) });
    expect(values(load)).toEqual([]);
    if (kept) kept.stretches = [];
    expect(values(load)).toEqual([]);
  });

  it("the earliest first, whatever order they were written in", () => {
    const load = timed("pressure");
    read(load, 110, 9);
    read(load, 105, 10);
    expect(values(load)).toEqual([10, 9]);
  });

  it("and is told with what it was to be", () => {
    const load = timed("pressure");
    const psi = { at: 0, what: "probe", value: 11, unit: "psi" };
    expect(lowReadingWords(load, psi)).toBe("read 11 pounds, under the 14 to be kept");
    const boil = lowReadingWords(timed("boiling-water"), { ...psi, value: 190, unit: "F" });
    expect(boil).toMatch(/^read 190 F, under the 19\d\.\d to be kept$/);
  });
});

describe("a batch with such a reading", () => {
  it("is not as tested by its own record, and says why", () => {
    const story = new Story(6200);
    const batch = story.begins(0, "dilled-green-beans");
    const load = story.loads(60, batch, 8);
    story.says(70, "boiling", { covered: true });
    const { terms } = load;
    const state = structuredClone(story.state);
    const own = state.loads[load.id];
    const found = own && state.batches[own.batch];
    if (!own || !found || !terms) throw new Error("no load");
    const from = runOfRole(own, "treatment")?.kept?.stretches[0]?.from ?? 0;
    own.readings.push({ at: from + 60_000, what: "probe", value: 190, unit: "F" });
    own.unloadedAt = from + 3_600_000;
    const reasons = verdictOf(state, found, own.unloadedAt).reasons.join();
    expect(reasons).toContain("process-short: read 190 F, under the");
  });
});
