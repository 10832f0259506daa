import { describe, expect, it } from "vitest";
import { farewell } from "../../../src/session/view/farewell.ts";
import { Story } from "../../kitchen/story.ts";

describe("what is left in the terminal after closing", () => {
  const story = new Story();
  story.begins(0, "dilled-green-beans");

  it("says that the clocks are kept, and what keeps running", () => {
    const [first, ...rest] = farewell(story.state, 0);
    expect(first).toContain("the clocks are kept");
    expect(rest.join()).toContain("dilled green beans");
  });

  it("does not claim to keep anything where the log could not be written", () => {
    const lines = farewell(story.state, 0, true);
    expect(lines[0]).toContain("could not be written");
    expect(lines.join()).not.toContain("kept");
  });
});
