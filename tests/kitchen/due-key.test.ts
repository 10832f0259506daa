import { describe, expect, it } from "vitest";
import {
  isDueOf,
  planKey,
  readStageDue,
  STAGE_DUES,
  stageDueKey,
} from "../../src/kitchen/due-key.ts";
import { play } from "../scenarios/play.ts";

describe("the key of a due moment", () => {
  it("says which stage it belongs to, whatever comes due and however often", () => {
    for (const what of STAGE_DUES) {
      const of = { owner: "270814-L1", stage: "process", what };
      expect(readStageDue(stageDueKey(of))).toEqual(of);
      expect(readStageDue(stageDueKey(of, "0.1", 3))).toEqual(of);
    }
  });

  it("of a plan or a timer belongs to no stage", () => {
    expect(readStageDue(planKey({ id: "P1" }))).toBeUndefined();
    expect(readStageDue("270814-T1")).toBeUndefined();
  });

  it("belongs to its owner and stage, and to none whose name merely begins the same way", () => {
    const key = stageDueKey({ owner: "270814-L1", stage: "cool", what: "min" });
    expect(isDueOf(key, "270814-L1")).toBe(true);
    expect(isDueOf(key, "270814-L1", "cool")).toBe(true);
    expect(isDueOf(key, "270814-L1", "coo")).toBe(false);
    expect(isDueOf(key, "270814-L")).toBe(false);
  });

  it("is one of these for everything that came due on a day with the canner", async () => {
    const { journal } = await play("snap-beans");
    const keys = journal.flatMap((event) => (event.type === "due" ? [String(event.key)] : []));
    expect(keys.length).toBeGreaterThan(3);
    expect(keys.filter((key) => !readStageDue(key))).toEqual([]);
  });
});
