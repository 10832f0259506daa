import { describe, expect, it } from "vitest";
import { agenda } from "../../src/kitchen/agenda.ts";
import { nightUntil } from "../../src/kitchen/nights.ts";
import { initialState, type State } from "../../src/kitchen/state.ts";
import { play } from "../scenarios/play.ts";
import { at, EIGHT, Story } from "./story.ts";

const HOUR = 60;
const MORNING = 22.5 * HOUR;

function stateAt(zone: string, quiet: State["kitchen"]["quiet"]): State {
  const state = initialState();
  return { ...state, zone, kitchen: { ...state.kitchen, quiet } };
}

const USUAL = initialState().kitchen.quiet;

describe("the night", () => {
  const denver = stateAt("America/Denver", USUAL);

  it("is from half past nine to half past six, where nobody has said otherwise", () => {
    expect(nightUntil(denver, at(13.4 * HOUR))).toBeUndefined();
    expect(nightUntil(denver, at(13.5 * HOUR))).toBe(at(MORNING));
    expect(nightUntil(denver, at(MORNING) - 1)).toBe(at(MORNING));
    expect(nightUntil(denver, at(MORNING))).toBeUndefined();
  });

  it("can be switched off", () => {
    expect(nightUntil(stateAt("America/Denver", null), at(18 * HOUR))).toBeUndefined();
  });

  it("ends at its hour by the wall where the clocks are set back in it", () => {
    const eve = Date.parse("2027-11-06T23:00:00-06:00");
    const morning = Date.parse("2027-11-07T06:30:00-07:00");
    expect(nightUntil(denver, eve)).toBe(morning);
  });
});

describe("what comes due at night", () => {
  it("is told in the morning where it can wait: the seals", () => {
    const story = new Story();
    const load = story.loads(60, story.begins(0, "dilled-green-beans"), 8);
    story.says(70, "boiling", { covered: true });
    story.says(86, "done", { target: "heat off" });
    story.happened(240, { type: "unloaded", load: load.id, early: false });
    story.passes(240);
    const seals = agenda(story.state, at(241)).find(({ what }) => what === "min");
    expect(seals).toMatchObject({ at: at(240 + 12 * HOUR), tellAt: at(MORNING) });
  });

  it("rings at any hour where a process hangs on it, or somebody asked for it", async () => {
    const evening = { from: "2027-08-14T20:30:00" };
    const script = "0:00 set an eggs timer for three hours\n+0:00 [cook until done]";
    const { said } = await play("dilled-green-beans", script, evening);
    const alarms = said.filter(({ rank }) => rank === "alarm");
    const times = (text: RegExp) =>
      alarms.filter((one) => text.test(one.text)).map((one) => one.at);
    expect(times(/eggs timer/)[0]).toContain("T23:30:00");
    expect(times(/time is full/)[0]?.slice(11, 13)).toBe("22");
    expect(times(/lift the jars/)).not.toEqual([]);
  });

  it("is told the evening before where it closes before the morning", () => {
    const story = new Story();
    const batch = story.begins(0, "dry-beans");
    const soak = batch.stages.find(({ spec }) => spec.kind === "rest");
    story.passes(30);
    for (const run of batch.stages) {
      if (run === soak) break;
      story.happened(40, { type: "stage-done", owner: batch.id, stage: run.id });
    }
    expect(soak?.state).toBe("running");
    const evening = agenda(story.state, at(50)).find(({ what }) => what === "evening");
    expect(evening?.at).toBe(EIGHT + 13 * HOUR * 60_000);
  });
});
