/**
 * Lots of one recipe that are put up in the same way are planned as one batch, as they are made:
 * pots once, hands' work in sum, loads filled up across lots.
 */
import { sum } from "../kitchen/jars/lots.ts";
import { hasRole } from "../kitchen/stages/kinds.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import type { Stage } from "../recipe/recipe.ts";
import { type DayBatch, dayBatch, type StageLength } from "./day-batches.ts";
import { planKitchen } from "./kitchen-plan.ts";
import type { KitchenPlan, PlanBatch, PlanRequest, PlanTask, Saving } from "./plan-request.ts";
import type { Effort } from "./solver/model.ts";
import { lotsLabel } from "./wanted-batch.ts";

/** Puts lots that share their pots together, in the place of the first of them. */
export function sharingPots(batches: readonly DayBatch[]): DayBatch[] {
  const groups = new Map<string, DayBatch[]>();
  for (const batch of batches) {
    const way = JSON.stringify([batch.recipe.id, batch.jar, batch.terms]);
    groups.set(way, [...(groups.get(way) ?? []), batch]);
  }
  return [...groups.values()].map(asOne);
}

function asOne(group: DayBatch[]): DayBatch {
  const [first, ...others] = group as [DayBatch, ...DayBatch[]];
  if (others.length === 0) return first;
  const lots = group.flatMap((one) => one.lots);
  const { recipe, jars } = first;
  return {
    ...first,
    label: lotsLabel(
      recipe,
      lots.map(({ variety }) => variety),
    ),
    lots,
    jars: jars && { ...jars, count: sum(group, (one) => one.jars?.count ?? 0) },
  };
}

/** The same lots, each with pots and loads of its own, and as much handwork as together. */
export function eachAlone(
  batch: DayBatch,
  lengthFor: (batch: DayBatch) => (stage: Stage) => StageLength,
): PlanBatch[] {
  const { lots, recipe, jars } = batch;
  const together = lengthFor(batch);
  const pounds = sum(lots, ({ weightLb }) => weightLb);
  return lots.map((lot) => {
    const label = lotsLabel(recipe, [lot.variety]);
    const count = lot.jars ?? 0;
    const own = { ...batch, id: lot.id, label, lots: [lot], jars: jars && { ...jars, count } };
    const alone = lengthFor(own);
    return dayBatch(own, (stage) => {
      return stage.attended ? partOf(together(stage), lot.weightLb / pounds) : alone(stage);
    });
  });
}

function partOf({ minutes, p90Minutes }: StageLength, share: number): StageLength {
  const part = { minutes: minutes * share };
  return p90Minutes === undefined ? part : { ...part, p90Minutes: p90Minutes * share };
}

/**
 * What a plan saves against `alone`, the same day with pots for each lot; null where none share, or
 * where no plan for each alone was found.
 */
export function savedBySharing(
  request: PlanRequest,
  plan: KitchenPlan,
  alone: readonly PlanBatch[],
  effort: Effort,
): Saving | null {
  const shares = request.batches.some(({ lots }) => (lots?.length ?? 0) > 1);
  if (!shares || !plan.feasible) return null;
  const { like: _, ...rest } = request;
  const apart = planKitchen({ ...rest, batches: alone, explain: false }, effort);
  if (!apart.feasible) return null;
  return {
    minutes: apart.minutes - plan.minutes,
    handsMinutes: handsMinutes(apart.tasks) - handsMinutes(plan.tasks),
    loads: loadsOf(apart.tasks) - loadsOf(plan.tasks),
  };
}

function loadsOf(tasks: readonly PlanTask[]): number {
  return tasks.filter((task) => hasRole(task, "treatment")).length;
}

function handsMinutes(tasks: readonly PlanTask[]): number {
  const spans = tasks.flatMap(({ attended }) => attended);
  return sum(spans, ([from, to]) => to - from) / MINUTE_MS;
}

/**
 * "sharing pots saves 20 minutes of work and no load against doing each lot alone; the day is 15
 * minutes longer".
 */
export function savingWords({ minutes, handsMinutes, loads }: Saving): string {
  const many = (count: number, word: string) => `${count} ${word}${count === 1 ? "" : "s"}`;
  const work = handsMinutes > 0 ? `${many(Math.round(handsMinutes), "minute")} of` : "no";
  const filled = loads > 0 ? many(loads, "load") : "no load";
  const by = many(Math.round(Math.abs(minutes)), "minute");
  const day = minutes === 0 ? "as long" : `${by} ${minutes > 0 ? "shorter" : "longer"}`;
  return `sharing pots saves ${work} work and ${filled} against each lot alone; the day is ${day}`;
}

/** Which lots' jars go into each load, in the order they are filled. */
export function loadJars({ jars, lots = [] }: PlanBatch): { lot: string; jars: number }[][] {
  if (!jars) return [];
  const loads: { lot: string; jars: number }[][] = [];
  let room = 0;
  for (const lot of lots) {
    for (let left = lot.jars ?? 0; left > 0; ) {
      if (room === 0) {
        loads.push([]);
        room = jars.perLoad;
      }
      const count = Math.min(room, left);
      loads.at(-1)?.push({ lot: lot.id, jars: count });
      room -= count;
      left -= count;
    }
  }
  return loads;
}
