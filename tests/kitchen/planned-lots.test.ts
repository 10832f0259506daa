/** Lots of the day's plan that come due share their pots as those a person begins do. */
import { describe, expect, it } from "vitest";
import type { PlannedItem } from "../../src/kitchen/events.ts";
import { at, Story } from "./story.ts";

function planned(minute: number, ...varieties: string[]): Parameters<Story["happened"]>[1] {
  const items = varieties.map((variety, n): PlannedItem => {
    const lot = { recipe: "dilled-green-beans", variety, weightLb: 3, beginAt: at(minute) };
    return { id: `P${n + 1}`, title: `${variety} dilled green beans`, ...lot };
  });
  const finishAt = at(600);
  return { type: "day-planned", items, agreedAt: finishAt, finishAt, finishBy: null, quiet: null };
}

function lotsIn({ state }: Story): (string | null)[][] {
  return Object.values(state.batches).map(({ lots }) => lots.map(({ variety }) => variety));
}

describe("lots that are planned for the same minute", () => {
  it("begin as one batch, though hands are busy from the first of them on", () => {
    const story = new Story();
    story.happened(0, planned(60, "Provider", "Dragon Tongue", "Blue Lake"));
    story.passes(61);
    expect(lotsIn(story)).toEqual([["Provider", "Dragon Tongue", "Blue Lake"]]);
  });

  it("join the pots of a batch that a person began", () => {
    const story = new Story();
    story.happened(0, planned(10, "Blue Lake"));
    story.says(0, "begin", { recipe: "dilled-green-beans", variety: "Provider", weightLb: 4 });
    story.says(9, "done", { target: "trim" });
    story.passes(11);
    expect(lotsIn(story)).toEqual([["Provider", "Blue Lake"]]);
  });

  it("get pots of their own where the brine was made without them: nobody is asked", () => {
    const story = new Story();
    story.happened(0, planned(60, "Blue Lake"));
    story.says(0, "begin", { recipe: "dilled-green-beans", variety: "Provider", weightLb: 4 });
    story.says(5, "begin", { named: "brine" });
    story.says(20, "boiling", { target: "brine" });
    story.says(25, "done", { target: "trim" });
    const brine = Object.values(story.state.batches)[0]?.stages.find(({ id }) => id === "brine");
    expect(brine?.state).toBe("complete");
    story.passes(61);
    expect(lotsIn(story)).toEqual([["Provider"], ["Blue Lake"]]);
  });
});
