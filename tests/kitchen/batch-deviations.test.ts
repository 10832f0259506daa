/** Each departure of a batch from its recipe: when it is one, when it is not, and what it says. */
import { describe, expect, it } from "vitest";
import { batchDeviations } from "../../src/kitchen/deviations.ts";
import { potOf } from "../../src/kitchen/spoken-names.ts";
import type { Batch, StageRun, State, Stretch } from "../../src/kitchen/state.ts";
import { at, Story } from "./story.ts";

const NOW = 5000;

function begun(recipe = "bread-and-butter-pickles") {
  const story = new Story();
  return { state: story.state, batch: story.begins(0, recipe) };
}

function departed({ state, batch }: { state: State; batch: Batch }, now = NOW) {
  return batchDeviations(state, batch, at(now));
}

const details = (kitchen: { state: State; batch: Batch }, now = NOW) => {
  return departed(kitchen, now).map(({ code, detail }) => `${code}: ${detail}`);
};

function stageOf(batch: Batch, kind: string): StageRun {
  const run = batch.stages.find(({ spec }) => spec.kind === kind);
  if (!run) throw new Error(`no ${kind}`);
  return run;
}

describe("a stage with a window", () => {
  /** Slices in salt for so many minutes; three to four hours are asked. */
  function rested(minutes: number | undefined, window = { minMinutes: 180, maxMinutes: 240 }) {
    const kitchen = begun();
    const run = stageOf(kitchen.batch, "rest");
    run.spec = { ...run.spec, window };
    run.startedAt = at(10);
    run.state = minutes === undefined ? "running" : "complete";
    if (minutes !== undefined) run.endedAt = at(10 + minutes);
    return { ...kitchen, run };
  }

  it.each([
    [119, "rest-short: 119 min of at least 3 h", 129],
    [120, "rest-short: 2 h of at least 3 h", 130],
    [121, "rest-short: 2 h 1 min of at least 3 h", 131],
    [241, "rest-long: 4 h 1 min of at most 4 h", 250],
  ])("departs from it after %d minutes", (minutes, said, when) => {
    const kitchen = rested(minutes);
    expect(details(kitchen)).toEqual([said]);
    expect(departed(kitchen)).toMatchObject([
      { stage: kitchen.run.id, at: at(when), disposition: "carried-on" },
    ]);
  });

  it.each([180, 240])("keeps it to the minute: %d", (minutes) => {
    expect(departed(rested(minutes))).toEqual([]);
  });

  it("runs too long while nobody ends it, and is never too short before", () => {
    expect(departed(rested(undefined), 100)).toEqual([]);
    expect(details(rested(undefined), 251)).toEqual(["rest-long: 4 h 1 min of at most 4 h"]);
  });

  it("has no longest time where the window is one number", () => {
    expect(departed(rested(500, { minMinutes: 180, maxMinutes: 180 }))).toEqual([]);
  });

  it("is not judged before it began, nor where it was left out", () => {
    const waiting = rested(10);
    delete waiting.run.startedAt;
    expect(departed(waiting)).toEqual([]);
    const left = rested(10);
    left.run.state = "skipped";
    expect(details(left)).toEqual([`skipped: ${left.run.spec.title} left out`]);
    expect(departed(left)).toMatchObject([{ at: at(20), stage: left.run.id }]);
    delete left.run.endedAt;
    expect(departed(left, 77)).toMatchObject([{ at: at(77) }]);
    left.run.spec = { ...left.run.spec, optional: true };
    expect(departed(left)).toEqual([]);
  });

  it("is listed with the others in the order in which they happened", () => {
    const kitchen = rested(241);
    kitchen.batch.changes.push({ at: at(300), detail: "late" }, { at: at(5), detail: "early" });
    kitchen.batch.late.push({ at: at(20), written: at(25), what: "salt" });
    expect(details(kitchen)).toEqual([
      "ingredient-changed: early",
      "written-late: salt: written 5 min after",
      "rest-long: 4 h 1 min of at most 4 h",
      "ingredient-changed: late",
    ]);
  });
});

describe("a pot that has to hold its boil", () => {
  function boiled(stretches: Stretch[], more: Partial<StageRun> = {}, holdMinutes = 5) {
    const kitchen = begun("carrots");
    const run = stageOf(kitchen.batch, "heat");
    const { heat } = run.spec;
    if (!heat) throw new Error("no heat");
    run.spec = { ...run.spec, heat: { ...heat, holdMinutes } };
    const kept = { needMinutes: 5, stretches, gaps: [] };
    Object.assign(run, { state: "running", startedAt: at(0), kept, ...more });
    return { ...kitchen, run };
  }
  const lost = { from: at(10), to: at(12.25), ended: "lost" } as const;

  it("lost it after so many minutes, and what becomes of it is open while it runs", () => {
    const kitchen = boiled([lost]);
    expect(departed(kitchen)).toEqual([
      {
        code: "boil-lost",
        stage: kitchen.run.id,
        at: at(12.25),
        detail: "lost after 2.3 of 5 min",
        disposition: "undecided",
      },
    ]);
    const over = boiled([lost], { state: "complete", endedAt: at(30) });
    expect(departed(over)).toMatchObject([{ disposition: "carried-on" }]);
  });

  it("has nothing to lose where it need only come to the boil", () => {
    expect(departed(boiled([lost], {}, 0))).toEqual([]);
  });

  it("was taken off before its time", () => {
    const short = { state: "complete", endedShort: true, endedAt: at(13.7) } as const;
    const kitchen = boiled([{ from: at(10) }], short);
    expect(details(kitchen)).toEqual([`skipped: ${kitchen.run.spec.title}: 3 of 5 min`]);
    expect(departed(kitchen)).toMatchObject([{ at: at(13.7), stage: kitchen.run.id }]);
    expect(departed(boiled([{ from: at(10) }], { ...short, endedShort: false }))).toEqual([]);
    const { endedAt: _, ...open } = short;
    expect(departed(boiled([{ from: at(10) }], open))).toEqual([]);
  });

  it("tells of a loss where it was left out, too", () => {
    const kitchen = boiled([lost], { state: "skipped", endedAt: at(30) });
    expect(details(kitchen)).toEqual([
      "boil-lost: lost after 2.3 of 5 min",
      `skipped: ${kitchen.run.spec.title} left out`,
    ]);
  });
});

describe("a critical factor", () => {
  /** All factors hold but what is set here; the stage that asks for the vinegar ended at 30. */
  function factored(state: Batch["state"] = "running") {
    const kitchen = begun("dilled-green-beans");
    const { batch } = kitchen;
    for (const { id } of batch.recipe.critical) {
      batch.confirmed.push({ factor: id, held: true, at: at(5), round: 0 });
    }
    const asking = batch.stages.find(({ spec }) => spec.asks.includes("vinegar-5-percent"));
    if (!asking) throw new Error("nothing asks");
    Object.assign(asking, { state: "complete", startedAt: at(0), endedAt: at(30) });
    batch.state = state;
    const answer = (factor: string, held: boolean | null) => {
      batch.confirmed = batch.confirmed.filter((one) => one.factor !== factor);
      if (held !== null) batch.confirmed.push({ factor, held, at: at(8), round: 0 });
    };
    return { ...kitchen, asking, answer };
  }
  const of = (kitchen: { state: State; batch: Batch }) =>
    departed(kitchen).filter(({ code }) => code !== "jar-count");

  it("that holds is no departure", () => {
    expect(of(factored("complete"))).toEqual([]);
  });

  it("that was answered no is one from then on", () => {
    const kitchen = factored();
    kitchen.answer("vinegar-5-percent", false);
    expect(of(kitchen)).toMatchObject([
      {
        code: "critical-unrecorded",
        at: at(8),
        detail: "vinegar-5-percent: answered no",
        stage: kitchen.asking.id,
      },
    ]);
  });

  it("has a code of its own for headspace", () => {
    const kitchen = factored();
    kitchen.answer("headspace", false);
    expect(of(kitchen)).toMatchObject([{ code: "headspace", detail: "headspace: answered no" }]);
  });

  it("that nobody confirmed is one once the batch is complete, and not of one given up", () => {
    const unsaid = (state: Batch["state"]) => {
      const kitchen = factored(state);
      kitchen.answer("vinegar-5-percent", null);
      return kitchen;
    };
    expect(of(unsaid("running"))).toEqual([]);
    expect(of(unsaid("abandoned"))).toEqual([]);
    const kitchen = unsaid("complete");
    kitchen.batch.endedAt = at(900);
    const said = "vinegar-5-percent: nobody confirmed it";
    expect(of(kitchen)).toMatchObject([{ code: "critical-unrecorded", at: at(30), detail: said }]);
    delete kitchen.asking.endedAt;
    expect(of(kitchen)).toMatchObject([{ at: at(900) }]);
    delete kitchen.batch.endedAt;
    expect(of(kitchen)).toMatchObject([{ at: kitchen.batch.begunAt }]);
    kitchen.asking.state = "running";
    expect(of(kitchen)).toEqual([]);
  });

  it("that no stage asks about is not missed", () => {
    const kitchen = factored("complete");
    kitchen.answer("vinegar-5-percent", null);
    kitchen.asking.spec = { ...kitchen.asking.spec, asks: [] };
    expect(of(kitchen)).toEqual([]);
    kitchen.answer("vinegar-5-percent", false);
    expect(of(kitchen)).toMatchObject([{ stage: null, code: "critical-unrecorded" }]);
  });

  it("that does not apply to this process is none, whatever was said", () => {
    const kitchen = factored();
    // Jars need no sterilizing where the process takes ten minutes.
    kitchen.answer("sterile-jars", false);
    expect(kitchen.batch.recipe.critical.map(({ id }) => id)).toContain("sterile-jars");
    expect(of(kitchen)).toEqual([]);
  });

  it.each([
    [null, "vinegar-5-percent: confirmed, then in doubt"],
    [false, "vinegar-5-percent: confirmed, then denied"],
  ])("that was taken back stays in the record: %s", (held, detail) => {
    const kitchen = factored();
    const factor = "vinegar-5-percent";
    kitchen.batch.reopened.push({ factor, held, at: at(40), saidAt: at(5), round: 0 });
    const { id: stage } = kitchen.asking;
    expect(of(kitchen)).toEqual([
      { code: "contradicted", stage, at: at(40), detail, disposition: "carried-on" },
    ]);
  });
});

describe("a count of jars that does not add up", () => {
  function counted(state: Batch["state"]) {
    const kitchen = begun("dilled-green-beans");
    Object.assign(kitchen.batch, {
      state,
      endedAt: at(900),
      recipe: bare(kitchen.batch),
    });
    const jar = { filledFrom: 0, filledAt: 0 };
    const jars = Array.from({ length: 8 }, (_, i) => ({ ...jar, id: `${i}`, number: i + 1 }));
    Object.assign(kitchen.batch.lots[0] ?? {}, { jars });
    return kitchen;
  }
  const bare = ({ recipe }: Batch) => ({ ...recipe, critical: [] });

  it("is told once the batch is complete", () => {
    expect(departed(counted("running"))).toEqual([]);
    const kitchen = counted("complete");
    expect(departed(kitchen)).toMatchObject(
      [{ code: "jar-count", at: at(900), stage: null, detail: /^8 filled, but/ }].map((one) => ({
        ...one,
        detail: expect.stringMatching(one.detail),
      })),
    );
    delete kitchen.batch.endedAt;
    expect(departed(kitchen)).toMatchObject([{ at: 0 }]);
  });

  it("is none of what goes into no canner", () => {
    const kitchen = counted("complete");
    kitchen.batch.option = null;
    expect(departed(kitchen)).toEqual([]);
  });
});

describe("what happened to the clock, the disk and the altitude", () => {
  /** A batch from minute 0 to its end at minute 900. */
  function ended() {
    const kitchen = begun("dilled-green-beans");
    Object.assign(kitchen.batch, { endedAt: at(900), begunAt: at(10) });
    return kitchen;
  }

  it.each([
    [9, []],
    [10, ["clock-changed: the wall clock was set back 2 h"]],
    [900, ["clock-changed: the wall clock was set back 2 h"]],
    [901, []],
  ])("concerns a batch from its beginning to its end: a clock set at %d", (minute, said) => {
    const kitchen = ended();
    kitchen.state.clockSets.push({ at: at(minute), byMs: at(0) - at(120) });
    expect(details(kitchen)).toEqual(said);
  });

  it("concerns one that runs up to now, forward or back", () => {
    const kitchen = ended();
    delete kitchen.batch.endedAt;
    kitchen.state.clockSets.push({ at: at(950), byMs: at(61) - at(0) });
    expect(details(kitchen, 949)).toEqual([]);
    expect(details(kitchen, 950)).toEqual(["clock-changed: the wall clock was set forward 61 min"]);
  });

  it.each([
    [0, 9, 0],
    [0, 10, 1],
    [20, 30, 1],
    [900, 950, 1],
    [901, 950, 0],
  ])("concerns it where the disk refused from %d to %d", (from, to, times) => {
    const kitchen = ended();
    kitchen.state.logFailures.push({ from: at(from), to: at(to), events: 3 });
    const said = "log-not-written: 3 events written late: the disk refused them";
    expect(details(kitchen)).toEqual(Array(times).fill(said));
    if (times > 0) expect(departed(kitchen)).toMatchObject([{ at: at(from) }]);
  });

  type Doubt = State["doubts"][number];
  function doubted(...doubts: Partial<Doubt>[]) {
    const kitchen = ended();
    kitchen.batch.loads.push("L9");
    for (const one of doubts) {
      const doubt = { at: at(50), detail: "the altitude", owner: null, atFt: 6200, ...one };
      kitchen.state.doubts.push(doubt);
    }
    return departed(kitchen).map(({ code, at: when, detail, disposition }) => {
      return [code, when, detail, disposition];
    });
  }

  it("leaves the altitude open until one is given, where the time depends on it", () => {
    const doubt = (what: string) => [["altitude-doubt", at(50), "the altitude", what]];
    expect(doubted({ why: "denied" })).toEqual(doubt("undecided"));
    expect(doubted({ why: "untested" })).toEqual(doubt("undecided"));
    expect(doubted({ why: "denied", settledFt: 6200 })).toEqual(doubt("carried-on"));
    expect(doubted({ why: "no-boil" })).toEqual(doubt("carried-on"));
    expect(doubted({})).toEqual(doubt("carried-on"));
    expect(doubted({ at: at(9), why: "denied" })).toEqual([]);
  });

  it("tells a doubt once where a boil was confirmed after all", () => {
    const again = { why: "no-boil" } as const;
    expect(doubted(again, { why: "denied" })).toHaveLength(1);
    expect(doubted(again, { why: "denied", detail: "another" })).toHaveLength(2);
    expect(doubted({ why: "denied" }, { why: "untested" })).toHaveLength(2);
  });

  it("concerns the loads that it is told of, whenever that is", () => {
    const then = { why: "then", at: at(5000) } as const;
    expect(doubted({ ...then, owner: "L9" })).toMatchObject([
      ["altitude-doubt", at(5000), "the altitude", "undecided"],
    ]);
    expect(doubted({ ...then, owner: "L8" })).toEqual([]);
    expect(doubted({ why: "then", at: at(50), owner: null })).toEqual([]);
  });
});

describe("a crock that is too warm", () => {
  function warm(value: number, minute = 20, more: Partial<Batch["readings"][number]> = {}) {
    const kitchen = begun("fermented-dills");
    const run = stageOf(kitchen.batch, "ferment");
    Object.assign(run, { state: "complete", startedAt: at(10), endedAt: at(30) });
    const { window: _, ...spec } = run.spec;
    run.spec = { ...spec, temperatureF: { min: 70, max: 75 } };
    kitchen.batch.readings.push({ at: at(minute), what: potOf(run), value, unit: "F", ...more });
    return { ...kitchen, run };
  }

  it("is told for each reading above what its recipe allows", () => {
    const kitchen = warm(80);
    expect(departed(kitchen)).toEqual([
      {
        code: "temperature-high",
        stage: kitchen.run.id,
        at: at(20),
        detail: "80 F: 75 F at most is asked",
        disposition: "carried-on",
      },
    ]);
    expect(departed(warm(75))).toEqual([]);
  });

  it.each([
    [9, 0],
    [10, 1],
    [30, 1],
    [31, 0],
  ])("counts from its beginning to its end: minute %d", (minute, times) => {
    expect(departed(warm(80, minute))).toHaveLength(times);
  });

  it("counts while nobody ended it, in degrees, and of this pot", () => {
    const running = warm(80, 400);
    delete running.run.endedAt;
    expect(departed(running)).toHaveLength(1);
    expect(departed(warm(80, 20, { unit: "psi" }))).toEqual([]);
    expect(departed(warm(80, 20, { what: "kitchen" }))).toEqual([]);
    const waiting = warm(80);
    delete waiting.run.startedAt;
    expect(departed(waiting)).toEqual([]);
  });
});
