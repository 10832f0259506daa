import { describe, expect, it } from "vitest";
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
