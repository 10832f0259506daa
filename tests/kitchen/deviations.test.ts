import { describe, expect, it } from "vitest";
import { batchDeviations } from "../../src/kitchen/deviations.ts";
import type { Batch } from "../../src/kitchen/state.ts";
import { verdictOf } from "../../src/review/verdict.ts";
import { at, Story } from "./story.ts";

function codesOf(story: Story, batch: Batch, minute = 2000): string[] {
  return batchDeviations(story.state, batch, at(minute)).map((one) => one.code);
}

function processed() {
  const story = new Story();
  const batch = story.begins(0, "dilled-green-beans");
  const load = story.loads(60, batch, 8);
  story.says(70, "boiling", { covered: true });
  return { story, batch, load };
}

/** The proper end of a load, from its full time onward. */
function finished(story: Story, from: number) {
  story.passes(from);
  story.says(from, "yes");
  story.says(from, "done", { target: "heat off" });
  story.says(from + 6, "done", { target: "jars" });
  story.says(from + 13 * 60, "sealed", { all: true });
}

describe("deviations worked out from the record", () => {
  it("are none where everything went by the recipe", () => {
    const { story, batch } = processed();
    finished(story, 86);
    expect(codesOf(story, batch)).toEqual([]);
    expect(verdictOf(story.state, batch, at(2000)).verdict).toBe("as-tested");
  });

  it("are a loss and its restart, two codes for one incident", () => {
    const { story, batch } = processed();
    story.says(75, "boil-lost");
    expect(codesOf(story, batch)).toEqual(["boil-lost"]);
    story.says(77, "boiling", {});
    expect(codesOf(story, batch)).toEqual(["boil-lost", "process-restarted"]);
  });

  it("vanish with a correction that takes their cause away", () => {
    const { story, batch } = processed();
    story.says(75, "boil-lost");
    story.says(76, "undo", {}, { confirmed: true });
    expect(codesOf(story, story.batch(batch.id))).toEqual([]);
  });

  it("ignore ten minutes over the time, and call more process-long", () => {
    for (const [off, expected] of [
      [95, []],
      [96, ["process-long"]],
    ] as const) {
      const { story, batch } = processed();
      finished(story, off);
      expect(codesOf(story, batch)).toEqual(expected);
    }
  });

  it("are a jar count that does not add up, once the batch is complete", () => {
    const { story, batch, load } = processed();
    finished(story, 86);
    story.happened(2000, { type: "set-aside", batch: batch.id, count: 0 });
    const sealed = batch.lots[0]?.jars.find((jar) => jar.load === load.id);
    if (sealed) delete sealed.seal;
    expect(codesOf(story, batch)).toEqual(["jar-count"]);
  });

  it("are critical factors nobody confirmed, but not of a batch that was abandoned", () => {
    const story = new Story();
    const batch = story.begins(0, "dilled-green-beans");
    story.happened(5, { type: "abandoned", batch: batch.id });
    expect(codesOf(story, batch)).toEqual([]);
  });

  it("are a changed ingredient, which is then not the tested recipe", () => {
    const { story, batch } = processed();
    story.happened(71, { type: "ingredient-changed", batch: batch.id, detail: "half the vinegar" });
    finished(story, 86);
    expect(codesOf(story, batch)).toEqual(["ingredient-changed"]);
    expect(verdictOf(story.state, batch, at(2000)).verdict).toBe("not-as-tested");
  });

  it("are marked where a report was written more than a minute after it happened", () => {
    const { story, batch } = processed();
    story.says(80, "boil-lost", { at: "2027-08-14T09:15:00" });
    expect(codesOf(story, batch)).toEqual(["boil-lost", "written-late"]);
  });

  it("carry what was done about them", () => {
    const { story, batch } = processed();
    story.says(75, "done", { target: "jars" }, { confirmed: true });
    const before = batchDeviations(story.state, batch, at(76));
    expect(before).toMatchObject([{ code: "process-short", disposition: "undecided" }]);
    story.says(77, "disposition", { what: "freeze" });
    const after = batchDeviations(story.state, batch, at(78));
    expect(after).toMatchObject([{ code: "process-short", disposition: "freeze" }]);
  });
});

describe("pickles in water that is kept below the boil", () => {
  it("are softer where it was too hot", () => {
    const { story, batch, load } = processed();
    finished(story, 86);
    const hot = { at: at(72), what: "canner", value: 187, unit: "F" };
    load.readings.push(hot, { ...hot, value: 185 }, { ...hot, value: 190, unit: "psi" });
    const high = () => {
      return batchDeviations(story.state, batch, at(900)).filter(({ code }) => {
        return code === "temperature-high";
      });
    };
    expect(high()).toEqual([]);
    if (load.terms) load.terms = { ...load.terms, method: "low-temperature" };
    expect(high()).toMatchObject([
      { detail: "187 F: softer pickles", at: at(72), stage: "process" },
    ]);
  });
});
