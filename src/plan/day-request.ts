/**
 * The rest of the day as a question to the planner: running batches, with what has happened to
 * them, and batches that are still to begin. Wall time is kitchen time plus one offset, the one
 * that holds now.
 */

import { answeredName } from "../kitchen/decide/begin/begin-gate.ts";
import type { PlannedItem, QuietHours } from "../kitchen/events.ts";
import { largestLoad } from "../kitchen/jars/canner-room.ts";
import { activeOwners, isLoad } from "../kitchen/owners.ts";
import { rulesOf } from "../kitchen/stages/kinds.ts";
import type { Batch, State } from "../kitchen/state.ts";
import { wallOf } from "../kitchen/state.ts";
import { DAY_MS, MINUTE_MS } from "../kitchen/time.ts";
import type { Library } from "../recipe/library.ts";
import type { Stage } from "../recipe/recipe.ts";
import { type DayBatch, dayBatch } from "./day-batches.ts";
import type { Lessons } from "./learning/learn.ts";
import type { PlanBatch, PlanRequest } from "./plan-request.ts";
import { hotCanners, lotsOf, runningBatch } from "./running-batch.ts";
import { eachAlone, sharingPots } from "./shared-pots.ts";
import { quietSpans, stageLength, wantedBatch } from "./wanted-batch.ts";

type DayAsked = {
  state: State;
  /** Kitchen time, ms. */
  now: number;
  library: Library;
  lessons?: Lessons;
  /** Batches to begin; their times are what the planner is asked for. */
  items: readonly PlannedItem[];
  /** Kitchen time before which none of them begins. */
  notBefore?: number;
  finishBy: number | null;
  quiet: QuietHours | null;
  /** The stage being worked on where it could be several, as `batch/stage`. */
  inHands?: string;
};

type DayRequest = {
  request: PlanRequest;
  altitudeKnown: boolean;
  /** The batches of the request, each lot that is to begin with pots of its own. */
  alone: PlanBatch[];
};

/** The question, or why one of the batches cannot be made here. */
export function dayRequest(asked: DayAsked): DayRequest | { fault: string } {
  const { state, now, items, finishBy, quiet } = asked;
  const { altitudeFt, burners, canners } = state.kitchen;
  const lengthFor = (batch: Parameters<typeof stageLength>[1]) => (stage: Stage) =>
    stageLength(asked.lessons, batch, stage, altitudeFt ?? 0);
  const running = activeOwners(state).filter(
    (one): one is Batch => !isLoad(one) && one.state === "running" && isOfTheDay(one),
  );
  const batches: PlanBatch[] = running.flatMap((batch) => {
    const { recipe } = batch;
    return runningBatch(state, batch, now, lengthFor({ recipe, lots: lotsOf(batch) })) ?? [];
  });
  const begun = running.filter((one) => batches.some(({ id }) => id === one.id));
  const made: DayBatch[] = [];
  for (const item of items) {
    const one = wanted(asked, item);
    if (!one.ok) return { fault: one.error };
    made.push(one.batch);
  }
  const shared = sharingPots(made);
  const together = shared.map((one) => dayBatch(one, lengthFor(one)));
  const alone = shared.flatMap((one) => eachAlone(one, lengthFor));
  const earliest = Math.min(now, ...begun.map((one) => one.begunAt));
  const offset = wallOf(state, now) - now;
  const from = Math.max(earliest, now - DAY_MS) + offset;
  const startMs = Math.floor(from / MINUTE_MS) * MINUTE_MS;
  const toWall = (ms: number) => ms + offset;
  const waiting = (list: PlanBatch[]) => list.map((one) => notBefore(one, items, toWall));
  const withShared = [...batches, ...waiting(together)];
  const apart = [...batches, ...waiting(alone)];
  const asBegun = (list: PlanBatch[]) => {
    return withOnePairOfHands(asked, list).map((batch) => moved(batch, toWall));
  };
  const request: PlanRequest = {
    batches: asBegun(withShared),
    resources: { hands: 1, burner: burners, canner: Math.max(1, canners.length) },
    hotCanners: hotCanners(state, now),
    startMs,
    nowMs: Math.max(now, asked.notBefore ?? now) + offset,
    zone: state.zone,
    gridMinutes: 1,
    ...(finishBy === null ? {} : { finishByMs: toWall(finishBy) }),
    ...(quiet ? { quiet: quietSpans(quiet, startMs, state.zone, withShared) } : {}),
  };
  return { request, altitudeKnown: altitudeFt !== null, alone: asBegun(apart) };
}

/** Whether it belongs to one day: not if it ends when it is found to be ready. */
function isOfTheDay(batch: Batch): boolean {
  return !batch.stages.some((run) => {
    const open = run.state === "running" || run.state === "waiting";
    return open && !rulesOf(run.spec).plan.foreseeable;
  });
}

function wanted({ state, library }: DayAsked, item: PlannedItem) {
  const recipe = library.recipes.get(item.recipe);
  if (!recipe) return { ok: false as const, error: `I have no recipe called ${item.recipe}` };
  const { altitudeFt, altitudeUncertaintyFt, canners } = state.kitchen;
  const { id, variety } = item;
  const weightLb = item.weightLb ?? recipe.yield.weightLb;
  return wantedBatch({ id, recipe, variety, weightLb }, library, {
    answered: answeredName(state),
    altitudeFt: altitudeFt ?? 0,
    altitudeUncertaintyFt,
    gauge: canners.find((one) => one.gauge)?.gauge?.kind ?? "dial",
    holds: (jar) => largestLoad(state, jar),
  });
}

/**
 * Work begins by itself when its turn comes, but one cook does one thing at a time: of several
 * stages that need hands throughout, only the one in hand has really begun.
 */
function withOnePairOfHands({ state, now, inHands }: DayAsked, batches: PlanBatch[]): PlanBatch[] {
  const all = handwork(batches);
  const open = all.length > 1 ? all : all.filter((key) => isLater(state, key, now));
  return batches.map((batch) => ({
    ...batch,
    stages: batch.stages.map((stage) => {
      const key = `${batch.id}/${stage.id}`;
      if (!open.includes(key) || (key === inHands && !isLater(state, key, now))) return stage;
      const { startedMs, ...rest } = stage;
      return rest;
    }),
  }));
}

/** Whether the course of the day has something else before it. */
function isLater(state: State, key: string, now: number): boolean {
  return (
    state.course?.some(({ batch, stage, from }) => {
      return `${batch}/${stage}` === key && from > now;
    }) ?? false
  );
}

/** Stages that somebody could be working on now, as `batch/stage`. */
function handwork(batches: readonly PlanBatch[]): string[] {
  return batches.flatMap(({ id, stages }) =>
    stages
      .filter((stage) => stage.hands === "all" && stage.startedMs !== undefined)
      .filter((stage) => stage.endedMs === undefined)
      .map((stage) => `${id}/${stage.id}`),
  );
}

/** A batch whose lots were asked not to begin before some time. */
function notBefore(
  batch: PlanBatch,
  items: readonly PlannedItem[],
  toWall: (ms: number) => number,
): PlanBatch {
  const times = items.flatMap(({ id, notBefore: at }) => {
    return at !== undefined && batch.lots?.some((lot) => lot.id === id) ? [toWall(at)] : [];
  });
  return times.length > 0 ? { ...batch, notBeforeMs: Math.max(...times) } : batch;
}

function moved(batch: PlanBatch, toWall: (ms: number) => number): PlanBatch {
  const stages = batch.stages.map((stage) => ({
    ...stage,
    ...(stage.startedMs === undefined ? {} : { startedMs: toWall(stage.startedMs) }),
    ...(stage.endedMs === undefined ? {} : { endedMs: toWall(stage.endedMs) }),
  }));
  return { ...batch, stages };
}
