/** Commands are put together in one place. */
import { expect, it } from "vitest";
import { commandOf, withSlots } from "../../src/kitchen/command.ts";

it("is certain, unless another certainty is given", () => {
  expect(commandOf("hold", { target: "beets" })).toEqual({
    intent: "hold",
    slots: { target: "beets" },
    confidence: 1,
  });
  expect(commandOf("undo", {}, { confidence: 0.4 }).confidence).toBe(0.4);
});

it("takes slots over those it had, and keeps the others", () => {
  const told = commandOf("jars-filled", { target: "beets", count: 6 }, { confidence: 0.7 });
  expect(withSlots(told, { count: 7 })).toEqual({
    intent: "jars-filled",
    slots: { target: "beets", count: 7 },
    confidence: 0.7,
  });
});
