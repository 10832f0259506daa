import { describe, expect, it } from "vitest";
import { apply } from "../../src/kitchen/evolve.ts";
import { readyAt } from "../../src/kitchen/settle.ts";
import type { Load } from "../../src/kitchen/state.ts";
import { at, Story } from "./story.ts";

function stateOf(load: Load, stage: string): string | undefined {
  return load.stages.find((run) => run.id === stage)?.state;
}

describe("what follows by itself", () => {
  it("is that the next stage begins when the one before is done", () => {
    const story = new Story();
    const batch = story.begins(0, "bread-and-butter-pickles");
    story.happened(40, { type: "stage-done", owner: batch.id, stage: "slice" });
    const chill = batch.stages.find((run) => run.id === "salt-and-chill");
    expect(chill).toMatchObject({ state: "running", startedAt: at(40) });
  });

  it("is not that a stage begins by itself if it waits for a person's word", () => {
    const story = new Story();
    const batch = story.begins(0, "dilled-green-beans");
    story.passes(200);
    expect(batch.stages.find((run) => run.id === "brine")?.state).toBe("waiting");
  });

  it("is that a hold after the boil ends by itself, at its own time", () => {
    const story = new Story();
    const batch = story.begins(0, "snap-beans");
    story.happened(60, { type: "stage-done", owner: batch.id, stage: "trim" });
    story.happened(70, { type: "boil", owner: batch.id, stage: "boil", covered: null });
    story.happened(90, { type: "note", owner: null, text: "later" });
    const boil = batch.stages.find((run) => run.id === "boil");
    expect(boil).toMatchObject({ state: "complete", endedAt: at(75) });
  });

  it.each([
    ["a note is written", { type: "note", owner: null, text: "later" }],
    ["something is corrected", { type: "withdrawn", target: "nothing" }],
  ] as const)("is that a stage begins at its time, though only %s after it", (_, fact) => {
    const story = new Story();
    const { id } = story.begins(0, "bread-and-butter-pickles");
    story.happened(40, { type: "stage-done", owner: id, stage: "slice" });
    const { cmd } = story.events.at(-1) ?? { cmd: "" };
    const { state } = story;
    const chill = () => state.batches[id]?.stages.find((run) => run.id === "salt-and-chill");
    apply(state, { type: "amended", target: cmd, t: at(100), cmd: "later", w: at(41) });
    expect(chill()).toMatchObject({ state: "waiting" });
    apply(state, { ...fact, t: at(120), cmd: "last", w: at(120) });
    expect(chill()).toMatchObject({ state: "running", startedAt: at(100) });
  });

  it("is never that a stage ends inside a time that nobody was there for", () => {
    const story = new Story();
    const load = story.loads(60, story.begins(0, "dilled-green-beans"), 8);
    story.says(70, "boiling", { covered: true });
    const gap = { from: at(80), to: at(100), cause: "asleep", byWall: false } as const;
    story.happened(100, { type: "gap", ...gap });
    expect(stateOf(load, "process")).toBe("running");
  });

  it("is that a process that was complete before a gap stays complete", () => {
    const story = new Story();
    const load = story.loads(60, story.begins(0, "dilled-green-beans"), 8);
    story.says(70, "boiling", { covered: true });
    const gap = { from: at(86), to: at(100), cause: "asleep", byWall: false } as const;
    story.happened(100, { type: "gap", ...gap });
    expect(stateOf(load, "process")).toBe("complete");
    expect(load.stages.find((run) => run.id === "process")?.endedAt).toBe(at(85));
  });

  it("does not fill jars before a canner can take them", () => {
    const story = new Story();
    const batch = story.begins(0, "dilled-green-beans");
    for (const stage of ["trim", "brine"]) {
      story.happened(30, { type: "stage-done", owner: batch.id, stage });
    }
    const fill = batch.stages.find((run) => run.id === "fill");
    expect(fill?.state).toBe("waiting");
    expect(readyAt(story.state, batch, fill as never, at(30))).toBeUndefined();
    const [load] = Object.values(story.state.loads);
    story.happened(60, { type: "stage-done", owner: load?.id ?? "", stage: "canner" });
    expect(fill).toMatchObject({ state: "running", startedAt: at(60) });
  });

  it("begins nothing for a held batch, while its clocks keep running", () => {
    const story = new Story();
    const batch = story.begins(0, "bread-and-butter-pickles");
    story.happened(10, { type: "held", batch: batch.id });
    story.happened(40, { type: "stage-done", owner: batch.id, stage: "slice" });
    const chill = batch.stages.find((run) => run.id === "salt-and-chill");
    expect(chill?.state).toBe("waiting");
    story.happened(50, { type: "resumed", batch: batch.id });
    expect(chill).toMatchObject({ state: "running" });
  });

  it("completes a batch after its seal check, and lets storing go on as a date", () => {
    const story = new Story();
    const batch = story.begins(0, "dilled-green-beans");
    const load = story.loads(60, batch, 8);
    story.says(70, "boiling", { covered: true });
    story.passes(86);
    story.says(90, "done", { target: "jars" });
    story.says(90 + 13 * 60, "sealed", { all: true });
    expect(load.state).toBe("complete");
    expect(batch).toMatchObject({ state: "complete", endedAt: at(90 + 13 * 60) });
    expect(batch.stages.find((run) => run.id === "store")?.state).toBe("running");
    expect(story.state.active).toEqual([]);
  });

  it("reopens a process that a late report shows was not complete", () => {
    const story = new Story();
    const load = story.loads(60, story.begins(0, "dilled-green-beans"), 8);
    story.says(70, "boiling", { covered: true });
    story.passes(86);
    story.says(87, "done", { target: "heat off" });
    expect(stateOf(load, "settle")).toBe("running");
    story.says(88, "boil-lost", { at: "2027-08-14T09:20:00" });
    expect(stateOf(load, "process")).toBe("running");
    expect(stateOf(load, "heat-off")).toBe("waiting");
    expect(stateOf(load, "settle")).toBe("waiting");
  });
});
