import { describe, expect, it } from "vitest";
import { filledFrom } from "../../../src/kitchen/loads/standing.ts";
import { at, Story } from "../story.ts";

describe("the first of the jars just told of was filled", () => {
  it("as long ago as filling takes, but not before the last jars went in or it began", () => {
    const story = new Story();
    const batch = story.begins(0, "dilled-green-beans");
    const load = story.loads(60, batch, 8);
    const fill = batch.stages.find(({ spec }) => spec.kind === "fill");
    if (!fill) throw new Error("nothing is filled");
    const usual = fill.spec.typicalMinutes;
    fill.startedAt = at(0);
    expect(filledFrom(story.state, batch, fill, at(60 + usual + 5))).toBe(at(65));
    expect(filledFrom(story.state, batch, fill, at(65))).toBe(at(60));
    delete load.loadedAt;
    fill.startedAt = at(62);
    expect(filledFrom(story.state, batch, fill, at(65))).toBe(at(62));
  });
});
