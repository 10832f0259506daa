import { MINUTE_MS } from "../../src/kitchen/time.ts";
import type { PlanBatch, PlanRequest, PlanStage, PlanUse } from "../../src/plan/plan-request.ts";
import { windowGate } from "../../src/plan/window-gate.ts";

type Shared = PlanUse | "hands";

/** What a stage has to wait for before it may start. */
type Wait = { kind: "stage"; stage: string } | { kind: "free"; what: Shared };

/**
 * The gate rule, by what has happened so far (`startedMs`, `endedMs`, `nowMs` of the request): a
 * stage that opens a short window starts only when all it leads to is ready or surely will be,
 * and while the window is open, the hands and the canner it leads to are kept for it. Empty where
 * the stage may start. Throws a RangeError on an unknown batch or stage.
 */
export function waitsFor(request: PlanRequest, batchId: string, stageId: string): Wait[] {
  const batch = request.batches.find(({ id }) => id === batchId);
  const stage = batch?.stages.find(({ id }) => id === stageId);
  if (!batch || !stage) throw new RangeError(`the plan has no ${stageId} of ${batchId}`);
  const gate = windowGate(batch.stages, stageId);
  const waits: Wait[] = (gate?.done ?? [])
    .filter(
      (before) =>
        !isDone(
          request,
          batch.stages.find(({ id }) => id === before),
        ),
    )
    .map((before) => ({ kind: "stage", stage: before }));
  const needs = new Map<Shared, number>();
  for (const { what, withinMinutes } of gate?.free ?? []) needs.set(what, withinMinutes);
  for (const use of stage.uses) needs.set(use, 0);
  if (stage.hands !== "none") needs.set("hands", 0);
  for (const [what, within] of needs) {
    const units = what === "hands" ? (request.resources.hands ?? 1) : request.resources[what];
    if (units !== undefined && taken(request, what, batch, within) >= units)
      waits.push({ kind: "free", what });
  }
  return waits;
}

/** Whether it has ended, or has a window and has gone on long enough. */
function isDone(request: PlanRequest, stage: PlanStage | undefined): boolean {
  if (!stage || stage.endedMs !== undefined) return true;
  if (stage.startedMs === undefined || !stage.window) return false;
  return nowOf(request) - stage.startedMs >= stage.window.minMinutes * MINUTE_MS;
}

function nowOf(request: PlanRequest): number {
  return request.nowMs ?? request.startMs;
}

/** Units that will still be in use after this many minutes, or are kept for another open window. */
function taken(request: PlanRequest, what: Shared, batch: PlanBatch, within: number): number {
  let units = 0;
  for (const other of request.batches) {
    for (const stage of other.stages) {
      if (stage.startedMs === undefined) continue;
      if (uses(stage, what) && !freeBy(stage, nowOf(request) + within * MINUTE_MS)) units += 1;
      else if (other !== batch && keeps(other, stage, what)) units += 1;
    }
  }
  return units;
}

function uses(stage: PlanStage, what: Shared): boolean {
  return what === "hands" ? stage.hands === "all" : stage.uses.includes(what);
}

/** Whether it has ended, or is sure to have ended by then even on a slow day. */
function freeBy(stage: PlanStage, ms: number): boolean {
  if (stage.endedMs !== undefined) return true;
  const minutes = stage.window?.maxMinutes ?? stage.p90Minutes ?? stage.minutes;
  return (stage.startedMs ?? 0) + minutes * MINUTE_MS < ms;
}

/** True while the stage runs or its window is open, and what it leads to needs the thing. */
function keeps(batch: PlanBatch, stage: PlanStage, what: Shared): boolean {
  const gate = windowGate(batch.stages, stage.id);
  if (!gate?.free.some((need) => need.what === what)) return false;
  if (stage.endedMs === undefined) return true;
  return batch.stages.some(
    (next) => next.startedMs === undefined && next.after.some((link) => link.stage === stage.id),
  );
}
