/** When the stages of a batch are likely to end, by their usual lengths and shortest rests. */
import { CANNER_WARM_UP_MINUTES, HOT_CANNER_MINUTES } from "../../reckon/trade-numbers.ts";
import { allFilled, ready, weightLb } from "../jars/lots.ts";
import { openLoad } from "../loads/open-load.ts";
import { inCanner, runOf, runOfRole } from "../owners.ts";
import { needsHotCanner } from "../settle.ts";
import { isOver } from "../stage-run.ts";
import { hasRole, isOfCanner, rulesOf } from "../stages/kinds.ts";
import type { Batch, Load, StageRun, State } from "../state.ts";
import { MINUTE_MS } from "../time.ts";

/** Minutes a stage usually takes, for the weight there is. */
export function usualMinutes(batch: Batch, { spec }: Pick<StageRun, "spec">): number {
  const beyond = (weightLb(batch) ?? 0) - batch.recipe.yield.weightLb;
  return spec.typicalMinutes + (spec.minutesPerLb ?? 0) * Math.max(0, beyond);
}

/** Minutes until a stage of a batch is likely to be over; Infinity where nobody can foresee it. */
export function minutesLeft(batch: Batch, now: number): (stage: string) => number {
  const known = new Map<string, number>();
  const until = (id: string): number => {
    const found = known.get(id);
    if (found !== undefined) return found;
    known.set(id, 0);
    const run = runOf(batch, id);
    if (!run || isOver(run) || isOfCanner(run.spec)) return 0;
    // It ends when somebody finds it ready, give or take days: there is no countdown to it.
    if (!rulesOf(run.spec).plan.foreseeable) {
      known.set(id, Number.POSITIVE_INFINITY);
      return Number.POSITIVE_INFINITY;
    }
    const length = run.spec.window?.minMinutes ?? usualMinutes(batch, run);
    const left =
      run.state === "running" && run.startedAt !== undefined
        ? Math.max(0, length - (now - run.startedAt) / MINUTE_MS)
        : Math.max(0, ...run.spec.after.map((after) => until(after.stage))) + length;
    known.set(id, left);
    return left;
  };
  return until;
}

/** Minutes until a canner is likely to be hot for the next jars of a batch. */
export function minutesToHot(state: State, batch: Batch, now: number): number {
  const open = openLoad(state, batch);
  const canner = open && runOf(open, "canner");
  if (canner) {
    if (canner.state !== "running" || canner.startedAt === undefined) return 0;
    return Math.max(0, canner.spec.typicalMinutes - (now - canner.startedAt) / MINUTE_MS);
  }
  const busy = inCanner(state);
  if (busy.length < state.kitchen.canners.length) return CANNER_WARM_UP_MINUTES;
  return Math.min(...busy.map((load) => minutesToOut(load, now))) + HOT_CANNER_MINUTES;
}

/** Minutes until the jars of a load are likely to be out. */
export function minutesToOut(load: Load, now: number): number {
  let minutes = 0;
  for (const run of load.stages) {
    if (isOver(run) || rulesOf(run.spec).ofCanner === "after") continue;
    const length =
      run.kept?.needMinutes || Math.max(run.spec.window?.minMinutes ?? 0, run.spec.typicalMinutes);
    const from = run.kept ? run.kept.stretches.at(-1)?.from : run.startedAt;
    const had = run.state === "running" && from !== undefined ? (now - from) / MINUTE_MS : 0;
    minutes += Math.max(0, length - had);
  }
  return minutes;
}

/**
 * Of a hot pack with more jars than one load takes: the stage that heats what is left, and when it
 * is to be on so that its jars are filled as the canner comes free. Undefined where none is.
 */
export function heatsAgain(
  state: State,
  batch: Batch,
  now: number,
): { run: StageRun; at: number; load: number } | undefined {
  const fill = runOfRole(batch, "filling");
  const inside = inCanner(state).find(({ loadedAt, parts }) => {
    return loadedAt !== undefined && parts.some((part) => part.batch === batch.id);
  });
  if (batch.option?.pack !== "hot" || fill?.state !== "running" || !inside) return undefined;
  if (allFilled(batch) || ready(batch) > 0) return undefined;
  const run = batch.stages.find((one) => {
    const packed = fill.spec.after.some(({ stage }) => stage === one.id);
    return packed && isOver(one) && !hasRole(one.spec, "filling") && needsHotCanner(batch, one);
  });
  if (!run) return undefined;
  const minutes = minutesToOut(inside, now) - usualMinutes(batch, run);
  return { run, at: now + Math.max(0, minutes) * MINUTE_MS, load: batch.loads.length };
}

/**
 * When what follows a waiting stage is likely to want it, besides it: what else that follows, and a
 * hot canner. Undefined where that cannot be foreseen.
 */
export function wantedAt(
  state: State,
  batch: Batch,
  { id }: StageRun,
  now: number,
): number | undefined {
  const until = minutesLeft(batch, now);
  const wants = batch.stages
    .filter((run) => run.state === "waiting" && run.spec.after.some(({ stage }) => stage === id))
    .map((run) => {
      const others = run.spec.after.filter(({ stage }) => stage !== id);
      const hot = needsHotCanner(batch, run) ? minutesToHot(state, batch, now) : 0;
      return Math.max(hot, ...others.map(({ stage }) => until(stage)));
    });
  const minutes = Math.min(...wants);
  return Number.isFinite(minutes) ? now + minutes * MINUTE_MS : undefined;
}
