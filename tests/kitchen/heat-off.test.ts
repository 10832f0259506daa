/** What a loss does to a load, before its time is full, at the very moment, and after. */
import { describe, expect, it } from "vitest";
import { loseProcess, turnOff, uncover } from "../../src/kitchen/loads/heat-off.ts";
import { runOf, runOfRole } from "../../src/kitchen/owners.ts";
import type { Load } from "../../src/kitchen/state.ts";
import { at, Story } from "./story.ts";

/** Beans that boil since minute 70; their time is full at minute 85. */
function boiling(until = 70): { story: Story; load: Load } {
  const story = new Story();
  const load = story.loads(60, story.begins(0, "dilled-green-beans"), 8);
  story.says(70, "boiling", { covered: true });
  if (until > 70) story.passes(until);
  return { story, load };
}

function process(load: Load) {
  const run = runOfRole(load, "treatment");
  if (!run?.kept) throw new Error("no process");
  return { run, kept: run.kept };
}

describe("a loss", () => {
  it("within the time ends the stretch, settles what was heard, and quiets what rings", () => {
    const { story, load } = boiling();
    load.heard.push({ at: at(72), text: "x", strength: "suspicion", about: "boil" });
    load.column = 1;
    load.hot = 1;
    story.state.ringing.push(`${load.id}/process/full`);
    expect(loseProcess(story.state, load, at(75), "lost")).toBe(true);
    expect(process(load).kept.stretches).toEqual([{ from: at(70), to: at(75), ended: "lost" }]);
    expect(load.heard[0]?.settledAt).toBe(at(75));
    expect([load.column, load.hot, load.covered]).toEqual([undefined, undefined, true]);
    expect(story.state.ringing).toEqual([]);
    expect(process(load).run.state).toBe("running");
  });

  it("before there was anything to lose changes nothing", () => {
    const story = new Story();
    const load = story.loads(60, story.begins(0, "dilled-green-beans"), 8);
    expect(loseProcess(story.state, load, at(65), "lost")).toBe(false);
    delete runOfRole(load, "treatment")?.kept;
    expect(loseProcess(story.state, load, at(65), "lost")).toBe(false);
    load.stages = [];
    expect(loseProcess(story.state, load, at(65), "lost")).toBe(false);
  });

  it("of the cover leaves the lids uncovered, counted once", () => {
    const { story, load } = boiling();
    loseProcess(story.state, load, at(75), "uncovered");
    expect([load.covered, load.uncoveredTimes]).toEqual([false, 1]);
    uncover(load);
    expect(load.uncoveredTimes).toBe(1);
    load.covered = true;
    uncover(load);
    expect(load.uncoveredTimes).toBe(2);
  });

  it("from the full time on is how every process ends", () => {
    for (const minute of [85, 86]) {
      const { story, load } = boiling(90);
      expect(process(load).run.state).toBe("complete");
      expect(loseProcess(story.state, load, at(minute), "lost")).toBe(true);
      const end = { from: at(70), to: at(minute), ended: "out" };
      expect(process(load).kept.stretches).toEqual([end]);
      expect(process(load).run.state).toBe("complete");
      expect(loseProcess(story.state, load, at(95), "lost")).toBe(false);
    }
  });

  it("that is told late puts back a time that had seemed full, with what came after it", () => {
    const { story, load } = boiling(90);
    expect(runOf(load, "heat-off")?.state).toBe("running");
    expect(loseProcess(story.state, load, at(84), "lost")).toBe(true);
    expect(process(load).run.state).toBe("running");
    expect(process(load).run.endedAt).toBeUndefined();
    expect(runOf(load, "heat-off")?.state).toBe("waiting");
    expect(runOf(load, "canner")?.state).toBe("complete");
  });

  it("of jars that are out leaves the stages as they were", () => {
    const { story, load } = boiling(90);
    load.unloadedAt = at(91);
    expect(loseProcess(story.state, load, at(80), "lost")).toBe(true);
    expect(process(load).run.state).toBe("complete");
  });
});

describe("the heat going off", () => {
  it("within the time is a loss, and no step is done", () => {
    const { story, load } = boiling();
    expect(turnOff(story.state, load, at(75))).toBe(true);
    expect(process(load).kept.stretches.at(-1)?.ended).toBe("off");
    expect(runOf(load, "heat-off")?.state).toBe("waiting");
  });

  it("after it is the next step, never before that began", () => {
    const { story, load } = boiling(90);
    expect(turnOff(story.state, load, at(91))).toBe(true);
    expect(runOf(load, "heat-off")).toMatchObject({ state: "complete", endedAt: at(91) });
    const early = boiling(90);
    expect(turnOff(early.story.state, early.load, at(80))).toBe(true);
    expect(runOf(early.load, "heat-off")?.state).toBe("waiting");
  });

  it("takes a boil back that nobody confirmed yet", () => {
    const story = new Story();
    const load = story.loads(60, story.begins(0, "dilled-green-beans"), 8);
    story.says(70, "boiling", {});
    expect(process(load).kept.unconfirmedAt).toBe(at(70));
    turnOff(story.state, load, at(71));
    expect(process(load).kept.unconfirmedAt).toBeUndefined();
    expect(turnOff(story.state, load, at(72))).toBe(false);
  });

  it("breaks a vent that was under way, and none that is over", () => {
    const pressed = () => {
      const story = new Story();
      const [canner] = story.state.kitchen.canners;
      const gauge = { kind: "weighted" } as const;
      story.happened(0, { type: "gauge-set", canner: canner?.id ?? "", gauge });
      const load = story.loads(60, story.begins(0, "snap-beans"), 8);
      story.says(70, "venting");
      return { story, load, vent: runOfRole(load, "venting") };
    };
    const { story, load, vent } = pressed();
    expect(turnOff(story.state, load, at(75))).toBe(true);
    expect(vent?.kept?.stretches).toEqual([{ from: at(70), to: at(75), ended: "off" }]);
    const over = pressed();
    over.story.passes(85);
    expect(over.vent?.state).toBe("complete");
    expect(turnOff(over.story.state, over.load, at(86))).toBe(false);
    expect(over.vent?.kept?.stretches.at(-1)?.to).toBeUndefined();
  });
});
