import { describe, expect, it } from "vitest";
import { windowGate } from "../../src/plan/window-gate.ts";
import { pickles } from "./sample-day.ts";

const { stages } = pickles("a", "Bread-and-butter pickles");

describe("the gate before a short window", () => {
  it("requires everything the hot syrup leads to, by when it may be needed on a quick day", () => {
    expect(windowGate(stages, "syrup")).toEqual({
      done: [],
      meanwhile: ["drain"],
      free: [
        { what: "hands", withinMinutes: 0, neededMinutes: 25 },
        { what: "canner", withinMinutes: 24, neededMinutes: 40 },
      ],
    });
  });

  it("requires slow steps to be done first", () => {
    const slow = stages.map((stage) => (stage.id === "drain" ? { ...stage, minutes: 20 } : stage));
    expect(windowGate(slow, "syrup")?.done).toEqual(["drain"]);
    expect(windowGate(slow, "drain")?.done).toEqual([]);
  });

  it("requires the canner before jars are filled", () => {
    const free = windowGate(stages, "fill")?.free.map(({ what }) => what);
    expect(free).toEqual(["canner", "burner", "hands"]);
  });

  it("requires nothing for a stage that can wait", () => {
    expect(windowGate(stages, "slice")).toBeNull();
    expect(windowGate(stages, "chill")).toBeNull();
  });
});
