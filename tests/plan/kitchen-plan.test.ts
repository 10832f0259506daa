import { describe, expect, it } from "vitest";
import { planKitchen } from "../../src/plan/kitchen-plan.ts";
import { seededRandom } from "../../src/plan/solver/random.ts";
import { beans, day, EIGHT, faults, MINUTE, pickles } from "./sample-day.ts";

const effort = (nodeBudget = 100_000) => ({ random: seededRandom(3), nodeBudget });

const FIVE = [
  pickles("a", "Bread-and-butter pickles"),
  pickles("b", "Sweet pickles", 50),
  beans("c", "Provider"),
  beans("d", "Blue Lake"),
  beans("e", "Dragon Tongue"),
];

describe("a day in the kitchen", () => {
  it("of one batch is as long as its stages, and nothing would shorten it", () => {
    const request = day([pickles("a", "Bread-and-butter pickles")]);
    const plan = planKitchen(request, effort());
    const boil = 35 - 5;
    const minutes = 40 + 180 + boil + 15 + 75;
    expect(plan).toMatchObject({ feasible: true, proved: true, minutes });
    expect(faults(request, plan.tasks)).toEqual([]);
    expect(plan.finishMs).toBe(EIGHT + minutes * MINUTE);
    expect(plan.why).toEqual([
      "one more of anything would save nothing: Bread-and-butter pickles takes 5 h 40 min " +
        "from its first stage to its last",
    ]);
  });

  it("of five batches keeps every window and says what a second canner would save", () => {
    const request = day(FIVE);
    const plan = planKitchen(request, effort());
    expect(plan.feasible && plan.proved).toBe(true);
    expect(plan.atLeastMinutes).toBe(plan.minutes);
    expect(faults(request, plan.tasks)).toEqual([]);
    const said = plan.why.find((sentence) => sentence.includes("canner"));
    expect(said).toMatch(
      /^the canner is busy from \d\d:\d\d to \d\d:\d\d: a second canner would save [\dhmin ]+$/,
    );
    const twoCanners = { ...request.resources, canner: 2 };
    const richer = planKitchen({ ...request, resources: twoCanners }, effort());
    const saved = plan.minutes - richer.minutes;
    const hours = saved >= 60 ? `${Math.floor(saved / 60)} h` : "";
    const rest = saved % 60 > 0 ? `${saved % 60} min` : "";
    expect(said).toContain(`would save ${[hours, rest].filter(Boolean).join(" ")}`);
  });

  it("splits what the canner cannot hold into loads, one after the other", () => {
    const batch = { ...beans("c", "Provider"), jars: { count: 20, perLoad: 9 } };
    const request = day([batch]);
    const { tasks, feasible } = planKitchen(request, effort());
    expect(feasible).toBe(true);
    expect(faults(request, tasks)).toEqual([]);
    const loads = tasks.filter(({ stage }) => stage === "process");
    expect(loads.map(({ load }) => load)).toEqual([1, 2, 3]);
    expect(loads[1]!.startMs).toBeGreaterThanOrEqual(loads[0]!.endMs);
    const fills = tasks.filter(({ stage }) => stage === "fill");
    expect(fills.map(({ startMs, endMs }) => (endMs - startMs) / MINUTE)).toEqual([10, 10, 5]);
    expect(tasks.filter(({ stage }) => stage === "trim")).toHaveLength(1);
  });

  it("plans what opens a short window by its longest time, not its usual one", () => {
    const { tasks } = planKitchen(day([pickles("a", "Sweet pickles")]), effort());
    const syrup = tasks.find(({ stage }) => stage === "syrup")!;
    expect((syrup.endMs - syrup.startMs) / MINUTE).toBe(35);
  });

  it("leaves the quiet hours alone", () => {
    const request = day(FIVE.slice(0, 3), { quiet: [[300, 420]] });
    const plan = planKitchen(request, effort());
    expect(plan.feasible).toBe(true);
    expect(faults(request, plan.tasks)).toEqual([]);
  });

  it("uses the time up to the requested finish to reduce waiting", () => {
    const batches = FIVE.slice(0, 3);
    const short = planKitchen(day(batches), effort());
    const finishByMs = short.finishMs + 90 * MINUTE;
    const request = day(batches, { finishByMs });
    const calm = planKitchen(request, effort());
    expect(faults(request, calm.tasks)).toEqual([]);
    expect(calm.finishMs).toBeLessThanOrEqual(finishByMs);
    expect(calm.idleMinutes).toBeLessThanOrEqual(short.idleMinutes);
    const hasty = planKitchen({ ...request, prefer: "short" }, effort());
    expect(hasty.minutes).toBe(short.minutes);
  });

  it("gives the same answer twice", () => {
    expect(planKitchen(day(FIVE), effort(5000))).toEqual(planKitchen(day(FIVE), effort(5000)));
  });
});

describe("a day that does not fit", () => {
  it("says what stands in the way, when it would be done, and which batch to leave out", () => {
    const batches = FIVE.slice(0, 2);
    const finishByMs = planKitchen(day(batches), effort()).finishMs - 5 * MINUTE;
    const plan = planKitchen(day(batches, { finishByMs }), effort());
    expect(plan).toMatchObject({ feasible: false, proved: true, tasks: [] });
    expect(plan.why).toHaveLength(3);
    expect(plan.why[0]).toMatch(/Bread-and-butter pickles \(.*\).* with a finish by \d\d:\d\d: /);
    expect(plan.why[1]).toMatch(/^all of it would be done by \d\d:\d\d at the earliest$/);
    expect(plan.why[2]).toMatch(/^without Bread-and-butter pickles it fits, done by \d\d:\d\d$/);
  });

  it("never breaks a window for quiet hours: it says that they stand in the way", () => {
    const quiet = Array.from({ length: 8 }, (_, q) => [30 + 200 * q, 215 + 200 * q] as const);
    const finishByMs = EIGHT + 1600 * MINUTE;
    const request = day([pickles("a", "Sweet pickles")], { quiet, finishByMs });
    const { feasible, why } = planKitchen(request, effort());
    expect(feasible).toBe(false);
    expect(why[0]).toMatch(
      /^Sweet pickles \(.*\) cannot be kept with a finish by 10:40 on the next day and the quiet/,
    );
    expect(why[1]).toMatch(/^all of it would be done by 1\d:\d\d on the next day at the earliest$/);
    expect(why[2]).toBe("without the quiet hours it would be done by 13:40");
  });

  it("says so where a batch of many loads would have to wait too long", () => {
    const batch = { ...beans("c", "Provider"), jars: { count: 60, perLoad: 9 } };
    const { feasible, why } = planKitchen(day([batch]), effort());
    expect(feasible).toBe(false);
    expect(why[0]).toBe(
      "Provider (trim, fill, process) cannot be kept: fill within 4 h of trim, " +
        "process within 5 min of fill",
    );
    expect(why[1]).toMatch(/^27 jars of Provider would fit, done by \d\d:\d\d$/);
  });
});

describe("a day that has begun", () => {
  const batches = FIVE.slice(0, 2);
  const morning = planKitchen(day(batches), effort());

  it("keeps what has happened and plans the rest from now", () => {
    const first = morning.tasks[0]!;
    const facts = new Map([[`${first.batch}/${first.stage}`, first]]);
    const nowMs = first.startMs + 63 * MINUTE;
    const begun = batches.map((batch) => ({
      ...batch,
      stages: batch.stages.map((stage) =>
        facts.has(`${batch.id}/${stage.id}`)
          ? { ...stage, startedMs: first.startMs, endedMs: nowMs - 3 * MINUTE }
          : stage,
      ),
    }));
    const request = day(begun, { nowMs });
    const plan = planKitchen(request, effort());
    expect(plan.feasible).toBe(true);
    expect(faults(request, plan.tasks)).toEqual([]);
    const [kept, ...rest] = plan.tasks;
    expect(kept).toMatchObject({ startMs: first.startMs, endMs: nowMs - 3 * MINUTE });
    for (const task of rest) expect(task.startMs).toBeGreaterThanOrEqual(nowMs);
  });

  it("waits for work that takes longer than expected", () => {
    const begun = batches.map((batch, b) => ({
      ...batch,
      stages: batch.stages.map((stage, s) =>
        b === 0 && s === 0 ? { ...stage, startedMs: EIGHT } : stage,
      ),
    }));
    const nowMs = EIGHT + 100 * MINUTE;
    const plan = planKitchen(day(begun, { nowMs }), effort());
    const slice = plan.tasks.find(({ batch, stage }) => batch === "a" && stage === "slice")!;
    expect(slice).toMatchObject({ startMs: EIGHT, endMs: nowMs + 5 * MINUTE });
    for (const task of plan.tasks)
      if (task !== slice && task.hands) expect(task.startMs).toBeGreaterThanOrEqual(slice.endMs);
  });
});
