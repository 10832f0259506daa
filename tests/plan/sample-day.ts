import type { PlanBatch, PlanRequest, PlanStage, PlanTask } from "../../src/plan/plan-request.ts";

/** Saturday 2027-08-14, 08:00 in the mountain kitchen (UTC-6 in summer). */
export const EIGHT = Date.parse("2027-08-14T08:00:00-06:00");
export const ZONE = "America/Denver";
export const MINUTE = 60_000;

function stage(
  id: string,
  kind: PlanStage["kind"],
  minutes: number,
  more: Partial<PlanStage>,
): PlanStage {
  return { id, kind, minutes, hands: "none", uses: [], after: [], ...more };
}

/** Salted and chilled 3 to 4 h, packed hot, then into the canner within five minutes. */
export function pickles(id: string, label: string, sliceMinutes = 40): PlanBatch {
  const stages = [
    stage("slice", "hands-on", sliceMinutes, { hands: "all" }),
    stage("chill", "rest", 180, {
      uses: ["fridge"],
      after: [{ stage: "slice", atMostMinutes: 60 }],
      window: { minMinutes: 180, maxMinutes: 240 },
    }),
    stage("syrup", "heat", 25, {
      p90Minutes: 35,
      hands: "start",
      uses: ["burner"],
      after: [{ stage: "slice" }],
    }),
    stage("drain", "hands-on", 10, { hands: "all", after: [{ stage: "chill" }] }),
    stage("fill", "fill", 15, {
      hands: "all",
      after: [
        { stage: "drain", atMostMinutes: 30 },
        { stage: "syrup", atMostMinutes: 5 },
      ],
    }),
    ...canned(75),
  ];
  return { id, label, stages };
}

/** Raw packed: trimmed, filled, canned. */
export function beans(id: string, label: string): PlanBatch {
  const stages = [
    stage("trim", "hands-on", 45, { hands: "all" }),
    stage("fill", "fill", 20, { hands: "all", after: [{ stage: "trim", atMostMinutes: 240 }] }),
    ...canned(95),
  ];
  return { id, label, stages };
}

function canned(minutes: number): PlanStage[] {
  return [
    stage("process", "process", minutes, {
      hands: { startMinutes: 5, endMinutes: 10 },
      uses: ["canner", "burner"],
      after: [{ stage: "fill", atMostMinutes: 5 }],
    }),
    stage("cool", "cool", 720, {
      after: [{ stage: "process", atMostMinutes: 0 }],
      afterwards: true,
    }),
  ];
}

export function day(batches: readonly PlanBatch[], more: Partial<PlanRequest> = {}): PlanRequest {
  const resources = { hands: 1, canner: 1, burner: 4, fridge: 4 };
  return { batches, resources, startMs: EIGHT, zone: ZONE, ...more };
}

/** What is wrong with a plan, judging by its times alone; empty where nothing is. */
export function faults(request: PlanRequest, tasks: readonly PlanTask[]): string[] {
  const found: string[] = [];
  const spans = (what: string) =>
    tasks.flatMap((task) => {
      if (what === "hands") return task.attended;
      const own: [number, number][] = [[task.startMs, task.endMs]];
      return task.uses.some((use) => use === what) ? own : [];
    });
  for (const [what, units] of Object.entries(request.resources)) {
    const all = spans(what);
    for (const [at] of all) {
      const held = all.filter(([from, to]) => from <= at && at < to).length;
      if (held > units) found.push(`${what}: ${held} of ${units} at ${at}`);
    }
  }
  for (const [from, to] of request.quiet ?? []) {
    for (const [a, b] of spans("hands"))
      if (a < EIGHT + to * MINUTE && b > EIGHT + from * MINUTE) found.push(`hands at ${a}`);
  }
  for (const task of tasks) {
    const batch = request.batches.find(({ id }) => id === task.batch)!;
    const own = batch.stages.find(({ id }) => id === task.stage)!;
    const minutes = (task.endMs - task.startMs) / MINUTE;
    if (own.window && (minutes < own.window.minMinutes || minutes > own.window.maxMinutes))
      found.push(`${task.stage} of ${task.batch} takes ${minutes} min`);
    for (const { stage: before, atLeastMinutes = 0, atMostMinutes = 1e6 } of own.after) {
      const earlier = tasks.filter(
        (other) =>
          other.batch === task.batch &&
          other.stage === before &&
          (other.load === undefined || task.load === undefined || other.load === task.load),
      );
      for (const { endMs } of earlier) {
        const gap = (task.startMs - endMs) / MINUTE;
        if (gap < atLeastMinutes || gap > atMostMinutes)
          found.push(`${task.stage} of ${task.batch} is ${gap} min after ${before}`);
      }
    }
  }
  return found;
}
