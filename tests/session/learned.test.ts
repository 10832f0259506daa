import { describe, expect, it } from "vitest";
import type { DatedFact } from "../../src/kitchen/events.ts";
import { reckoned } from "../../src/session/wants.ts";
import { cooked } from "../plan/learning/made-up-cook.ts";
import { saturdayKitchen } from "../scenarios/saturday-kitchen.ts";

describe("what was learned of the times here", () => {
  it.each(["what did you learn", "what have you learned about my stove", "how slow am I"])(
    "is told to %j, and nothing is changed",
    (words) => {
      const kitchen = saturdayKitchen();
      const events = kitchen.session.state.history.length;
      const { lines, refused } = kitchen.session.hear(words);
      expect(refused).toBe(false);
      expect(lines.join(" ")).toContain("Nothing learned yet: no batch is finished.");
      expect(kitchen.session.state.history).toHaveLength(events);
    },
  );
});

describe("a batch that begins", () => {
  it("is told what to reckon with, and nothing else that happens is", () => {
    const day = { slice: 45, boil: 20, pack: 30 };
    const state = cooked([day, day, day, day]);
    const begun = { type: "batch-begun", batch: "day-4" } as DatedFact;
    const ended = { type: "stage-done", owner: "day-4", stage: "pack", t: 0 } as const;
    expect(reckoned(state, [begun, ended])).toEqual([
      { rank: "answer", text: expect.stringContaining("So it was the last four times") },
    ]);
    expect(reckoned(state, [ended])).toEqual([]);
  });
});
