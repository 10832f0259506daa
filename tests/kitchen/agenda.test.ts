import { describe, expect, it } from "vitest";
import { agenda, comeDue, stageClock } from "../../src/kitchen/agenda.ts";
import { at, Story } from "./story.ts";

function keysDue(story: Story, minute: number): string[] {
  return comeDue(story.state, at(minute)).flatMap((fact) =>
    fact.type === "due" ? [fact.key] : [],
  );
}

describe("what comes due", () => {
  it("is the half and the end of a process, each recorded once with its true time", () => {
    const story = new Story();
    const load = story.loads(60, story.begins(0, "dilled-green-beans"), 8);
    story.says(70, "boiling", { covered: true });
    expect(agenda(story.state, at(70))[0]?.at).toBe(at(77.5));
    const facts = story.passes(120);
    const due = facts.filter((fact) => fact.type === "due");
    expect(due.map((fact) => [fact.key, fact.t])).toEqual([
      [`${load.id}/process/half/1`, at(77.5)],
      [`${load.id}/process/end/1`, at(85)],
    ]);
    expect(story.passes(121).filter((fact) => fact.type === "due")).toEqual([]);
  });

  it("is not the end of a process while a gap in it waits for its answer", () => {
    const story = new Story();
    const load = story.loads(60, story.begins(0, "dilled-green-beans"), 8);
    story.says(70, "boiling", { covered: true });
    const gap = { from: at(72), to: at(80), cause: "closed", byWall: false } as const;
    story.happened(80, { type: "gap", ...gap });
    expect(keysDue(story, 200)).toEqual([`${load.id}/process/half/1`]);
    story.passes(200);
    story.says(201, "yes");
    expect(keysDue(story, 201)).toEqual([`${load.id}/process/end/1`]);
  });

  it("is the end of two hours off the process, counted in total", () => {
    const story = new Story();
    const load = story.loads(60, story.begins(0, "dilled-green-beans"), 8);
    story.says(70, "boiling", { covered: true });
    story.says(75, "boil-lost");
    story.says(135, "boiling", { covered: true });
    story.says(140, "boil-lost");
    const off = agenda(story.state, at(140)).find((item) => item.what === "off");
    expect(off?.key).toBe(`${load.id}/process/off/2`);
    expect(Math.round(((off?.at ?? 0) - at(140)) / 60_000)).toBe(60);
  });

  it("is both ends of a rest's window, the first as an alarm", () => {
    const story = new Story();
    const batch = story.begins(0, "bread-and-butter-pickles");
    story.happened(40, { type: "stage-done", owner: batch.id, stage: "slice" });
    const items = agenda(story.state, at(41)).filter((item) => item.run?.id === "salt-and-chill");
    expect(items.map(({ what, at: t, rank }) => [what, t, rank])).toEqual([
      ["min", at(40 + 180), "alarm"],
      ["max", at(40 + 240), "alarm"],
    ]);
  });

  it("is the moment to start what should be ready with a rest beside it", () => {
    const story = new Story();
    const batch = story.begins(0, "bread-and-butter-pickles");
    story.happened(40, { type: "stage-done", owner: batch.id, stage: "slice" });
    const start = agenda(story.state, at(41)).find((item) => item.what === "start");
    expect(start).toMatchObject({ at: at(40 + 180 - 25), rank: "prompt" });
  });

  it("is a check of a long stage at each of its times, one after the other", () => {
    const story = new Story();
    const batch = story.begins(0, "cucumber-seed");
    story.happened(20, { type: "stage-done", owner: batch.id, stage: "scoop" });
    const first = story.passes(24 * 60).filter((fact) => fact.type === "due");
    expect(first.map((fact) => fact.key.split("/")[2])).toEqual(["check"]);
    const second = story.passes(26 * 60).filter((fact) => fact.type === "due");
    expect(second.map((fact) => fact.key.split("/")[2]).sort()).toEqual(["check", "min"]);
  });

  it("does not light the canner while a ferment's end cannot be foreseen", () => {
    const story = new Story();
    const batch = story.begins(0, "sauerkraut");
    for (const stage of ["shred", "pack-crock"]) {
      story.happened(10, { type: "stage-done", owner: batch.id, stage });
    }
    story.passes(30 * 24 * 60);
    expect(story.state.loads).toEqual({});
    story.happened(30 * 24 * 60, { type: "stage-done", owner: batch.id, stage: "ferment" });
    story.passes(30 * 24 * 60 + 1);
    expect(Object.keys(story.state.loads)).toHaveLength(1);
  });

  it("forgets the alarms of what was abandoned", () => {
    const story = new Story();
    const batch = story.begins(0, "dilled-green-beans");
    story.loads(60, batch, 8);
    story.says(70, "boiling", { covered: true });
    story.passes(90);
    expect(story.state.ringing).not.toEqual([]);
    story.says(91, "abandon", {}, { confirmed: true });
    expect(story.state.ringing).toEqual([]);
    expect(agenda(story.state, at(91))).toEqual([]);
  });

  it("shows a stopped clock where the boil was lost", () => {
    const story = new Story();
    const load = story.loads(60, story.begins(0, "dilled-green-beans"), 8);
    story.says(70, "boiling", { covered: true });
    const process = () => load.stages.find((run) => run.id === "process");
    expect(stageClock(process() as never)).toMatchObject({ dueAt: at(85), lost: false });
    story.says(75, "boil-lost");
    expect(stageClock(process() as never)).toMatchObject({ lost: true });
  });
});
