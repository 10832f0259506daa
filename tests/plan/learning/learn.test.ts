import { describe, expect, it } from "vitest";
import type { KitchenEvent } from "../../../src/kitchen/events.ts";
import { historyOf } from "../../../src/kitchen/events.ts";
import { replay } from "../../../src/kitchen/evolve.ts";
import {
  type LearnedTime,
  learnedMinutes,
  lessonsOf,
  usefulBurnerWatts,
} from "../../../src/plan/learning/learn.ts";
import { learnedReport } from "../../../src/plan/learning/learned-report.ts";
import { seededRandom } from "../../../src/plan/solver/random.ts";
import type { Recipe, Stage } from "../../../src/recipe/recipe.ts";
import { recipeOf, wholeLibrary } from "../../recipe/library-files.ts";
import { play } from "../../scenarios/play.ts";
import { cooked, type Day, PICKLES } from "./made-up-cook.ts";

function stageOf(recipe: Recipe, id: string): Stage {
  const found = recipe.stages.find((one) => one.id === id);
  if (!found) throw new Error(`no stage ${id}`);
  return found;
}

function learned(state: Parameters<typeof lessonsOf>[0], id: string, weightLb = 5): LearnedTime {
  const time = learnedMinutes(lessonsOf(state), PICKLES, stageOf(PICKLES, id), weightLb);
  if (!time) throw new Error(`${id} is not learnable`);
  return time;
}

/** Normal numbers from uniform ones, by sums of twelve. */
function normal(random: () => number): number {
  let sum = -6;
  for (let i = 0; i < 12; i++) sum += random();
  return sum;
}

const PLAIN: Day = { slice: 25, boil: 20, pack: 30 };

describe("what a kitchen has learned", () => {
  it("is the recipe's typical time before anything was cooked", () => {
    const slice = learned(cooked([]), "slice");
    expect(slice).toMatchObject({ typicalMinutes: 25, yoursMinutes: 25, n: 0 });
    expect(slice.range[0]).toBeLessThan(25);
    expect(slice.p90Minutes).toBe(slice.range[1]);
  });

  it("moves part of the way after one batch and nearly all of it after ten", () => {
    const slow = { ...PLAIN, slice: 40 };
    const one = learned(cooked([slow]), "slice").yoursMinutes;
    const ten = learned(cooked(Array(10).fill(slow)), "slice").yoursMinutes;
    expect(one).toBeGreaterThan(29);
    expect(one).toBeLessThan(37);
    expect(ten).toBeGreaterThan(38.5);
    expect(ten).toBeLessThanOrEqual(40);
  });

  it("expects a slow cook to be slow at other stages too, with less certainty", () => {
    const state = cooked(Array(5).fill({ ...PLAIN, slice: 40 }));
    const lessons = lessonsOf(state);
    const other = { ...stageOf(PICKLES, "pack"), id: "peel", typicalMinutes: 30 };
    const recipe = { ...PICKLES, id: "other-pickles", stages: [other] };
    const time = learnedMinutes(lessons, recipe, other, 5);
    expect(time?.n).toBe(0);
    expect(time?.yoursMinutes).toBeGreaterThan(31);
  });

  it("goes by weight: twice the pounds do not make a slower cook", () => {
    const state = cooked(Array(6).fill({ ...PLAIN, slice: 50, weightLb: 10 }));
    expect(learned(state, "slice", 10)).toMatchObject({ typicalMinutes: 50, yoursMinutes: 50 });
    expect(learned(state, "slice", 5)).toMatchObject({ typicalMinutes: 25, yoursMinutes: 25 });
  });

  it("leaves out a forgotten report and stages reported together, and says so", () => {
    const state = cooked([PLAIN, PLAIN, { ...PLAIN, slice: 300 }, { ...PLAIN, pack: 1 }]);
    expect(learned(state, "slice")).toMatchObject({ n: 3, yoursMinutes: 25 });
    expect(learned(state, "pack").n).toBe(3);
    expect(learnedReport(state).doubtful).toMatchObject([
      { batch: "day-3", stage: "slice", minutes: 300, plannedMinutes: 25 },
      { batch: "day-4", stage: "pack", minutes: 1, plannedMinutes: 30 },
    ]);
  });

  it("takes nothing from rehearsals, and nothing from a batch that is not finished", () => {
    const slow = Array(4).fill({ ...PLAIN, slice: 50 });
    expect(learned(cooked(slow, { rehearsal: true }), "slice").n).toBe(0);
    expect(learned(cooked(slow, { unfinished: true }), "slice").n).toBe(0);
  });

  it("does not count the time a batch was held", () => {
    const from = Date.parse("2027-06-05T14:10:00Z");
    const held = (type: "held" | "resumed", minutes: number): KitchenEvent => {
      const ms = from + minutes * 60_000;
      return { type, batch: "day-1", cmd: `h${minutes}`, t: ms, w: ms };
    };
    const more = [held("held", 0), held("resumed", 30)];
    const state = cooked([{ ...PLAIN, slice: 55 }], { more });
    const [slice] = lessonsOf(state).times.filter((time) => time.stage.id === "slice");
    expect(slice?.minutes).toBeCloseTo(25, 5);
  });

  it("never learns a rest, a process, a vent, cooling, curing, drying or a ferment", () => {
    const state = cooked(Array(8).fill({ ...PLAIN, salt: 235 }));
    const lessons = lessonsOf(state);
    expect(lessons.times.some((time) => time.stage.kind === "rest")).toBe(false);
    const guarded = [
      ...["rest", "process", "vent", "depressurize", "cool", "ferment", "dry", "cure", "store"],
    ] as const;
    for (const recipe of wholeLibrary().recipes.values()) {
      for (const stage of recipe.stages) {
        const time = learnedMinutes(lessons, recipe, stage, null);
        if ((guarded as readonly string[]).includes(stage.kind)) expect(time).toBeUndefined();
        else if (stage.attended && stage.typicalMinutes > 1)
          expect(time?.typicalMinutes).toBeGreaterThan(0);
      }
    }
  });

  it("keeps a hold at the boil as in the recipe, however fast the pot is", () => {
    const fast = learned(cooked(Array(9).fill({ ...PLAIN, boil: 8 })), "brine");
    expect(fast.typicalMinutes).toBe(25);
    expect(fast.yoursMinutes).toBeGreaterThanOrEqual(5 + 8);
    expect(fast.yoursMinutes).toBeLessThan(5 + 10);
    expect(fast.range[0]).toBeGreaterThan(5);
  });
});

describe("what a burner is worth", () => {
  /** 8 cups from 18 to 100 C with the pot's steel: joules a minute of so many watts bring. */
  const JOULES = 8 * 236.588 * (4.186 + 0.2 * 0.46) * 82;
  const boilAt = (watts: number) => JOULES / watts / 60;

  it("is found from the boils of pots whose contents the recipe states", () => {
    const state = cooked(Array(12).fill({ ...PLAIN, boil: boilAt(900) }));
    const found = usefulBurnerWatts(lessonsOf(state));
    expect(found?.n).toBe(12);
    expect(found?.watts).toBeGreaterThan(880);
    expect(found?.watts).toBeLessThan(930);
    expect(found?.range[0]).toBeLessThan(900);
    expect(found?.range[1]).toBeGreaterThan(900);
  });

  it("predicts a pot of another recipe: more water takes longer, a mountain boil less", () => {
    const lessons = lessonsOf(cooked(Array(12).fill({ ...PLAIN, boil: boilAt(500) })));
    const dilled = recipeOf(wholeLibrary(), "dilled-green-beans");
    const brine = stageOf(dilled, "brine");
    const known = learnedMinutes(lessons, dilled, brine, 4);
    const double = learnedMinutes(lessons, dilled, brine, 8);
    const high = learnedMinutes(lessons, dilled, brine, 4, { altitudeFt: 6200 });
    expect(known?.n).toBe(0);
    expect(known?.yoursMinutes).toBeGreaterThan(boilAt(500) * 0.9);
    expect(known?.yoursMinutes).toBeLessThan(boilAt(500) * 1.1);
    expect(double?.yoursMinutes).toBeCloseTo(2 * (known?.yoursMinutes ?? 0), 0);
    expect(high?.yoursMinutes).toBeLessThan(known?.yoursMinutes ?? 0);
    const hot = learnedMinutes(lessons, dilled, brine, 4, { fromC: 60 });
    expect(hot?.yoursMinutes).toBeLessThan(0.6 * (known?.yoursMinutes ?? 0));
  });
});

describe("learning from simulated cooks whose truth is known", () => {
  /** Days of a cook whose own and stage factors are given, with a day's scatter of a fifth. */
  function days(
    random: () => number,
    count: number,
    truth: { slice: number; pack: number },
  ): Day[] {
    const scatter = () => Math.exp(0.2 * normal(random));
    return Array.from({ length: count }, () => {
      const forgotten = random() < 0.05 ? 6 : 1;
      return {
        slice: 25 * truth.slice * scatter() * forgotten,
        boil: 20 * scatter(),
        pack: 30 * truth.pack * scatter(),
      };
    });
  }

  it("errs less than the plan and the plain mean, and its range holds about four of five", () => {
    const random = seededRandom(20270814);
    const errors = { plan: 0, raw: 0, shrunk: 0 };
    let inside = 0;
    let count = 0;
    for (let cook = 0; cook < 150; cook++) {
      const person = 0.25 * normal(random);
      const truth = {
        slice: Math.exp(person + 0.25 * normal(random)),
        pack: Math.exp(person + 0.25 * normal(random)),
      };
      const seen = days(random, 1 + (cook % 3), truth);
      const state = cooked(seen);
      for (const id of ["slice", "pack"] as const) {
        const planned = id === "slice" ? 25 : 30;
        const time = learned(state, id);
        const believed = seen.map((day) => day[id]).filter((m) => m < 3 * planned);
        const logs = believed.map((m) => Math.log(m / planned));
        const raw = logs.length > 0 ? logs.reduce((a, b) => a + b, 0) / logs.length : 0;
        const real = Math.log(truth[id]);
        errors.plan += Math.abs(real);
        errors.raw += Math.abs(raw - real);
        errors.shrunk += Math.abs(Math.log(time.yoursMinutes / planned) - real);
        const next = planned * truth[id] * Math.exp(0.2 * normal(random));
        if (next >= time.range[0] && next <= time.range[1]) inside++;
        count++;
      }
    }
    expect(errors.shrunk).toBeLessThan(errors.raw);
    expect(errors.shrunk).toBeLessThan(0.7 * errors.plan);
    expect(inside / count).toBeGreaterThan(0.74);
    expect(inside / count).toBeLessThan(0.93);
  });
});

describe("one pair of hands", () => {
  it("goes to the stage that was finished first, where two waited for it", () => {
    const state = cooked([PLAIN]);
    const shift = state.history
      .filter((event) => event.type !== "opened" && event.type !== "kitchen-set")
      .map(
        (event) => JSON.parse(JSON.stringify(event).replaceAll("day-1", "day-2")) as KitchenEvent,
      )
      .map((event) => {
        const late = event.type === "stage-done" && event.stage === "slice" ? 20 : 0;
        const after = event.type === "batch-begun" ? 0 : 20;
        const by = Math.max(late, after) * 60_000;
        return { ...event, cmd: `${event.cmd}b`, t: event.t + by, w: event.w + by };
      });
    const both = replay([...historyOf(state), ...shift].sort((a, b) => a.w - b.w));
    const slices = lessonsOf(both).times.filter((time) => time.stage.id === "slice");
    expect(slices.map((time) => Math.round(time.minutes))).toEqual([25, 20]);
  });
});

describe("the report of what was learned", () => {
  it("has typical, yours and the spread of each stage, and the stove", () => {
    const state = cooked(Array(4).fill({ slice: 32, boil: 26, pack: 30 }));
    const report = learnedReport(state);
    expect(report.stages.map((one) => one.stage).sort()).toEqual(["brine", "pack", "slice"]);
    const slice = report.stages.find((one) => one.stage === "slice");
    expect(slice).toMatchObject({ recipe: "shelf-pickles", n: 4, typicalMinutes: 25 });
    expect(slice?.range[0]).toBeLessThan(slice?.yoursMinutes ?? 0);
    expect(report.burner?.n).toBe(4);
    expect(report.lines.join("\n")).toMatch(/slice: typical 25 min, yours about 3\d min, most/);
    expect(learnedReport(cooked([])).lines).toEqual(["Nothing learned yet: no batch is finished."]);
  });
});

describe("a whole day with the canner", () => {
  it("teaches every attended stage and heating, with the times the ideal cook took", async () => {
    const played = await play("dilled-green-beans", undefined, { altitude: "6200ft" });
    const events = played.journal.map(({ at: _at, written: _written, ...event }) => {
      return { ...event, ...(event.type === "opened" ? { rehearsal: false } : {}) };
    });
    const { times } = lessonsOf(replay(events as unknown as KitchenEvent[]));
    const minutes = Object.fromEntries(times.map((one) => [one.group, Math.round(one.minutes)]));
    expect(minutes).toMatchObject({
      "dilled-green-beans/trim": 25,
      "dilled-green-beans/brine": 15,
      "dilled-green-beans/fill": 20,
      "boiling-water/canner": 60,
      "boiling-water/load": 5,
      "boiling-water/come-up": 20,
      "boiling-water/unload": 5,
    });
    expect(times.map((one) => one.stage.kind)).not.toContain("process");
    expect(times.map((one) => one.stage.kind)).not.toContain("rest");
    expect(times.every((one) => !one.doubtful)).toBe(true);
  });
});
