/**
 * The course of the day: when each step of what runs, or is planned, is to begin. It is worked out
 * from the log by whoever can search for a plan, and is never written down; where there is none,
 * steps are expected by their usual lengths (`expected.ts`).
 */
import type { PlannedStep } from "../facts/fields.ts";
import { runOf } from "../owners.ts";
import type { Batch, StageRun, State } from "../state.ts";

/** The step a batch's stage is at: of several loads, the first whose jars have not gone in. */
export function courseStep(
  state: State,
  batch: Batch,
  { id }: Pick<StageRun, "id">,
): PlannedStep | undefined {
  const steps = state.course?.filter((one) => one.batch === batch.id && one.stage === id) ?? [];
  const gone = batch.loads.filter((load) => state.loads[load]?.loadedAt !== undefined).length;
  return steps.find(({ load = 1 }) => load > gone) ?? steps.at(-1);
}

/** The steps that were agreed to, of an item or a batch of the plan, are its batch's. */
export function agreeTo(state: State, planned: string, id: string): void {
  state.course =
    state.course?.map((one) => (one.batch === planned ? { ...one, batch: id } : one)) ?? null;
  const batch = state.batches[id];
  const steps = state.dayPlan?.steps.filter((one) => one.batch === planned) ?? [];
  if (batch && steps.length > 0) batch.agreed = steps.map((step) => ({ ...step, batch: id }));
}

/** When a stage was to go on by the plan that was agreed to; `load` from 1. */
export function agreedStep(
  { agreed = [] }: Batch,
  stage: string,
  load?: number,
): PlannedStep | undefined {
  const own = agreed.filter((one) => one.stage === stage);
  return own.find((one) => (one.load ?? 1) === (load ?? 1));
}

/** When a waiting item is to begin by the course of the day; undefined where it does not say. */
export function courseBegin(state: State, batch: Batch, run: StageRun): number | undefined {
  return runOf(batch, run.id)?.state === "complete"
    ? undefined
    : courseStep(state, batch, run)?.from;
}
