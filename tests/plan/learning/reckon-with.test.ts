import { describe, expect, it } from "vitest";
import type { Batch, State } from "../../../src/kitchen/state.ts";
import { reckonWith } from "../../../src/plan/learning/learned-report.ts";
import { cooked } from "./made-up-cook.ts";

const usual = { slice: 25, boil: 20, pack: 30 };

/** What a sixth batch after days like these is begun with. */
function said(slices: readonly number[], weightLb = 5): string | undefined {
  const days = [...slices.map((slice) => ({ ...usual, slice })), { ...usual, weightLb }];
  const state: State = cooked(days, { unfinished: false });
  const last = Object.values(state.batches).at(-1) as Batch;
  // The last one has only begun.
  return reckonWith({ ...state, batches: { ...state.batches, [last.id]: begun(last) } }, last);
}

function begun(batch: Batch): Batch {
  return { ...batch, state: "running" };
}

describe("what to reckon with", () => {
  it("is the stage that takes longer here, how long, and how often that was seen", () => {
    const text = said([40, 42, 39, 41, 40]);
    expect(text).toMatch(/^Reckon with about (thirty|forty).* minutes for this: slice\. /);
    expect(text).toContain("So it was the last five times; by the recipe it is twenty-five.");
  });

  it("is nothing where the cook is as fast as the recipe, or faster", () => {
    expect(said([25, 26, 24, 25, 25])).toBeUndefined();
    expect(said([15, 16, 14, 15, 15])).toBeUndefined();
  });

  it("is nothing after a single time", () => {
    expect(said([45])).toBeUndefined();
  });

  it("is for the weight there is", () => {
    expect(said([40, 42, 39, 41, 40], 10)).toContain("by the recipe it is fifty.");
  });
});
