import { describe, expect, it } from "vitest";
import type { KitchenEvent } from "../../../src/kitchen/events.ts";
import { replay } from "../../../src/kitchen/evolve.ts";
import { parseIso } from "../../../src/kitchen/time.ts";
import { germinationOf, seedLife, seedReports } from "../../../src/review/shelf/seeds.ts";
import { opening, ZONE } from "../demo-season.ts";

const SAVED = parseIso("2027-10-09T12:00:00", ZONE) ?? 0;

function kitchen(more: KitchenEvent[] = []) {
  return replay([
    ...opening(SAVED),
    {
      type: "seed-saved",
      seed: "271009-S1",
      crop: "beans",
      variety: "Provider",
      isolation: null,
      fermentDays: null,
      dryWeightG: 210,
      storage: null,
      batch: null,
      cmd: "s",
      t: SAVED,
      w: SAVED,
    },
    ...more,
  ]);
}

function test(on: string): KitchenEvent {
  const t = parseIso(on, ZONE) ?? 0;
  return {
    type: "germination",
    seed: "271009-S1",
    sprouted: 18,
    of: 20,
    days: 7,
    cmd: on,
    t,
    w: t,
  };
}

describe("a germination test", () => {
  // Newcombe 1998 and the reference's check values, to four places.
  it.each([
    [18, 20, 0.699, 0.9721],
    [9, 10, 0.5958, 0.9821],
    [45, 50, 0.7864, 0.9565],
    [0, 20, 0, 0.1611],
    [10, 10, 0.7225, 1],
  ])("%i of %i has Wilson's interval", (sprouted, of, low, high) => {
    const [from, to] = germinationOf(sprouted, of).interval;
    expect(from).toBeCloseTo(low, 3);
    expect(to).toBeCloseTo(high, 3);
  });

  it("says how much more thickly to sow, likely and at worst", () => {
    const result = germinationOf(18, 20);
    expect(result.sowTimes).toBe(1.1);
    expect(result.sowTimesAtWorst).toBe(1.4);
    expect(result.sentence).toContain("1.4 times to be safe");
  });

  it("says that ten seeds tell little, and not to sow where none of twenty sprouted", () => {
    expect(germinationOf(9, 10).sentence).toContain("10 seeds tell little");
    expect(germinationOf(0, 20)).toMatchObject({ sowTimes: null, sowTimesAtWorst: null });
    expect(germinationOf(0, 20).sentence).toContain("too little to sow");
  });
});

describe("a seed lot", () => {
  it("has its crop's published life, by singular, plural or a longer name", () => {
    expect(seedLife("beans")).toEqual([3, 4]);
    expect(seedLife("Tomatoes")).toEqual([3, 5]);
    expect(seedLife("snap bean")).toEqual([3, 4]);
    expect(seedLife("constructor")).toBeUndefined();
    expect(seedLife("rutabaga")).toBeUndefined();
  });

  it("keeps the lot, its dates and its tests", () => {
    const [lot] = seedReports(kitchen([test("2028-02-20T12:00:00")]));
    expect(lot).toMatchObject({ saved: "2027-10-09", lifeYears: [3, 4], oldAfter: [2030, 2031] });
    expect(lot?.tests).toMatchObject([{ on: "2028-02-20", sprouted: 18, of: 20, days: 7 }]);
  });
});
