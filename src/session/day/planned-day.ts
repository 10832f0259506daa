/** A plan of the day against the kitchen: when batches begin, what is in hand, what changed. */

import { OWN_COMMAND } from "../../kitchen/decide/decide-corrections.ts";
import type { PlannedItem, PlannedStep } from "../../kitchen/events.ts";
import { ready } from "../../kitchen/jars/lots.ts";
import { activeOwners, isLoad } from "../../kitchen/owners.ts";
import { shelves } from "../../kitchen/shelves.ts";
import { rulesOf } from "../../kitchen/stages/kinds.ts";
import { kitchenTimeOf, type State } from "../../kitchen/state.ts";
import { MINUTE_MS } from "../../kitchen/time.ts";
import type { KitchenPlan, PlanRequest, PlanTask } from "../../plan/plan-request.ts";

/** A beginning that moves by less than this stays where it is. */
const MOVED_MS = 2 * MINUTE_MS;

/** The same recipe and variety, running or to begin: they could not be told apart. */
export function isTwin(state: State, items: readonly PlannedItem[], item: PlannedItem): boolean {
  const same = (recipe: string, variety: string | null) =>
    recipe === item.recipe && variety === item.variety;
  const running = activeOwners(state).some((one) => {
    if (isLoad(one) || one.state === "complete") return false;
    return one.lots.some(({ variety }) => same(one.recipe.id, variety));
  });
  return running || items.some((one) => same(one.recipe, one.variety));
}

/**
 * When each batch begins, in wall time: with its first stage, and the first to use a cold canner
 * with the lighting of it.
 */
export function beginsOf(
  plan: KitchenPlan,
  items: readonly PlannedItem[],
  warm: boolean,
): Map<string, number> {
  const starts = new Map<string, number>();
  const canners = new Map<string, number>();
  for (const task of plan.tasks) {
    const { batch, stage, startMs } = task;
    if (rulesOf(task).ofCanner === "after" || !items.some((item) => item.id === batch)) continue;
    const into = stage === "canner" ? canners : starts;
    into.set(batch, Math.min(into.get(batch) ?? Number.POSITIVE_INFINITY, startMs));
  }
  const inUse =
    warm ||
    plan.tasks.some((task) => {
      return task.stage === "canner" && !items.some((item) => item.id === task.batch);
    });
  const [first] = [...canners].sort((a, b) => a[1] - b[1]);
  if (first && !inUse) {
    const [batch, at] = first;
    starts.set(batch, Math.min(starts.get(batch) ?? at, at));
  }
  return starts;
}

/** The batch of the plan that an item is a lot of. */
export function batchOf({ batches }: PlanRequest, { id }: PlannedItem): string {
  return batches.find(({ lots = [] }) => lots.some((lot) => lot.id === id))?.id ?? id;
}

/** When a person last said yes to the plan, kitchen time; -Infinity where nobody did. */
export function agreedSince(state: State): number {
  const agreed = state.history.findLast((event) => {
    return event.type === "day-planned" && !event.cmd.startsWith(OWN_COMMAND);
  });
  return agreed?.t ?? Number.NEGATIVE_INFINITY;
}

export function hasMoved(old: readonly PlannedItem[], fresh: readonly PlannedItem[]): boolean {
  return fresh.some((item) => {
    const was = old.find((one) => one.id === item.id)?.beginAt;
    return was === undefined || Math.abs(was - item.beginAt) > MOVED_MS;
  });
}

/** The stage being worked on, as `batch/stage`: what Hands shows first. */
export function inHands(state: State, now: number): string | undefined {
  const [first] = shelves(state, now).filter(({ shelf, run }) => {
    return shelf === "hands" && run.state === "running";
  });
  return first && `${first.owner.id}/${first.run.id}`;
}

/** A plan as the course of the day, in kitchen time. */
export function courseOf(state: State, tasks: readonly PlanTask[]): PlannedStep[] {
  return tasks.map(({ batch, stage, load, startMs, endMs }) => ({
    batch,
    stage,
    ...(load === undefined ? {} : { load }),
    from: kitchenTimeOf(state, startMs),
    to: kitchenTimeOf(state, endMs),
  }));
}

/** Changes with every start and finish of a stage, and with what there is to plan. */
export function signatureOf(state: State): string {
  const owners = activeOwners(state).map((owner) => {
    const runs = owner.stages.map((run) => {
      return `${run.startedAt ?? ""}-${run.endedAt ?? ""}-${run.kept?.stretches.length ?? ""}`;
    });
    const jars = isLoad(owner) ? [owner.loadedAt, owner.unloadedAt] : [ready(owner), owner.state];
    return [owner.id, ...jars, ...runs].join(",");
  });
  const items = state.dayPlan?.items.map((item) => item.id) ?? [];
  return [...items, ...owners].join(";");
}

/** When each step is planned, by its batch's name: a batch has no id before it begins. */
export function startsByName(
  request: PlanRequest,
  tasks: readonly PlanTask[],
): Map<string, number> {
  const labels = new Map(request.batches.map((batch) => [batch.id, batch.label]));
  return new Map(
    tasks.map((task) => {
      const load = task.load === undefined ? "" : `@${task.load}`;
      return [`${labels.get(task.batch)}/${task.stage}${load}`, task.startMs];
    }),
  );
}

/** The same by the ids that batches have in this request. */
export function startsLike(
  request: PlanRequest,
  starts: ReadonlyMap<string, number>,
): Map<string, number> {
  const like = new Map<string, number>();
  for (const { id, label } of request.batches) {
    const own = `${label}/`;
    for (const [name, at] of starts) {
      if (name.startsWith(own)) like.set(`${id}/${name.slice(own.length)}`, at);
    }
  }
  return like;
}
