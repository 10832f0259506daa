import { describe, expect, it } from "vitest";
import { gaugeYear, questions, questionToAsk } from "../../src/kitchen/questions/questions.ts";
import { at, Story, told } from "./story.ts";

function kinds(story: Story): string[] {
  return questions(story.state).map((one) => one.kind);
}

describe("questions that guard safety", () => {
  it("ask for the altitude until it is known, and never assume it", () => {
    const story = new Story(null);
    story.begins(0, "dilled-green-beans");
    expect(kinds(story)[0]).toBe("altitude");
    expect(Object.values(story.state.loads)).toEqual([]);
    expect(story.says(1, "answer", { value: 6200 }).kind).toBe("done");
    expect(story.state.kitchen.altitudeFt).toBe(6200);
    expect(Object.values(story.state.loads)).toHaveLength(1);
  });

  it("ask about a factor only when its stage's turn has come, and one at a time", () => {
    const story = new Story();
    story.begins(0, "dilled-green-beans");
    expect(kinds(story)).toEqual([]);
    story.says(1, "begin", { named: "brine" });
    expect(kinds(story)).toEqual(["factor"]);
    story.says(2, "answer", { value: 5 });
    expect(kinds(story)).toEqual([]);
  });

  it("are answered by the one asked last, where none is urgent", () => {
    const story = new Story();
    const batch = story.begins(0, "dilled-green-beans");
    story.says(1, "begin", { named: "brine" });
    story.happened(20, { type: "stage-done", owner: batch.id, stage: "trim" });
    story.happened(20, { type: "boil", owner: batch.id, stage: "brine", covered: null });
    story.happened(21, { type: "jars-filled", batch: batch.id, count: 8, size: null });
    story.passes(22);
    const [open] = questions(story.state);
    expect(open?.detail).toBe("headspace");
    story.says(23, "answer", { value: 0.5 });
    expect(batch.confirmed.map((one) => one.factor)).toEqual(["headspace"]);
  });

  it("do not hide behind each other forever: an unanswered one is skipped after a while", () => {
    const story = new Story();
    const batch = story.begins(0, "dilled-green-beans");
    story.says(1, "begin", { named: "brine" });
    story.happened(2, { type: "jars-filled", batch: batch.id, count: 8, size: null });
    expect(questionToAsk(story.state, at(3))).toBeUndefined();
    expect(questionToAsk(story.state, at(7))?.detail).toBe("headspace");
  });

  it("put what a running process depends on before everything else", () => {
    const story = new Story();
    const batch = story.begins(0, "dilled-green-beans");
    const load = story.loads(60, batch, 8);
    story.says(61, "boiling", {});
    expect(kinds(story)[0]).toBe("cover");
    story.says(62, "yes");
    expect(kinds(story)).toEqual([]);
    const gap = { from: at(65), to: at(72), cause: "crashed", byWall: false } as const;
    story.happened(72, { type: "gap", ...gap });
    story.passes(72);
    expect(kinds(story)[0]).toBe("gap");
    expect(load.id).toBe(questions(story.state)[0]?.about);
  });

  it("outlive a crash, since they follow from what is written", () => {
    const story = new Story();
    const batch = story.begins(0, "dilled-green-beans");
    story.loads(60, batch, 8);
    story.says(61, "boiling", {});
    expect(told(story.says(90, "yes"))).toContain("cover");
  });

  it("are not answered by a yes before they were asked", () => {
    const story = new Story();
    const batch = story.begins(0, "dilled-green-beans");
    story.happened(1, { type: "stage-begun", owner: batch.id, stage: "brine" });
    expect(kinds(story)).toEqual(["factor"]);
    expect(told(story.says(1, "yes"))).toBe("tell");
  });

  it("name the batch they are about where several run", () => {
    const story = new Story();
    story.begins(0, "dilled-green-beans", { variety: "Provider" });
    story.says(1, "begin", { named: "brine" });
    expect(questions(story.state)[0]?.text).toMatch(/^What percent is the vinegar/);
    story.begins(2, "pickled-beets");
    expect(questions(story.state)[0]?.text).toMatch(/^Provider: What percent/);
  });

  it("ask about a dial again each season", () => {
    const story = new Story();
    story.happened(0, {
      type: "gauge-set",
      canner: "canner",
      gauge: { kind: "dial", testedSeason: 2026, readsHighPsi: 0 },
    });
    story.begins(0, "snap-beans");
    expect(kinds(story)).toContain("gauge-tested");
    expect(gaugeYear(story.state, at(0))).toBe(2027);
  });
});
