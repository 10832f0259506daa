import { describe, expect, it } from "vitest";
import { windowGate } from "../../src/plan/window-gate.ts";
import { pickles } from "./sample-day.ts";

const { stages } = pickles("a", "Bread-and-butter pickles");

describe("the gate before a short window", () => {
  it("asks for everything the hot syrup leads to: slices drained, canner and hands free", () => {
    expect(windowGate(stages, "syrup")).toEqual({ done: ["drain"], free: ["hands", "canner"] });
  });

  it("asks for the canner before jars are filled", () => {
    const gate = windowGate(stages, "fill");
    expect(gate).toEqual({ done: [], free: ["canner", "burner", "hands"] });
  });

  it("asks nothing of a stage that can wait", () => {
    expect(windowGate(stages, "slice")).toBeNull();
    expect(windowGate(stages, "chill")).toBeNull();
  });
});
