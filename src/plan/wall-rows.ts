/**
 * A plan as rows for the wall: what is done at what minute, on which burner or in which canner, and
 * for how long hands are on it. Putting jars in, turning the heat off and lifting out are rows.
 */
import { isOfCanner, rulesOf } from "../kitchen/stages/kinds.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import { CANNER_STAGE } from "./plan-loads.ts";
import type { KitchenPlan, MomentKind, PlanRequest, PlanTask } from "./plan-request.ts";

export type WallRow = {
  ms: number;
  batch: string;
  label: string;
  /** The stage, or the moment of one. */
  what: string;
  load?: number;
  /** How long it goes on; null for a moment. */
  minutes: number | null;
  /** For how long hands are on it from then on; 0 where none are. */
  handsMinutes: number;
  /** What it occupies, by its number: `burner 1`, `canner`, `syrup pot`. */
  where: string[];
  /** How often it wants a look, minutes. */
  lookMinutes: number | null;
  task: PlanTask;
};

const MOMENT_WORDS: Record<Exclude<MomentKind, "look">, string> = {
  load: "jars into the canner",
  "heat-off": "heat off",
  "lift-out": "lift the jars out",
};

/** All rows of a plan, in the order of the day. */
export function wallRows(request: PlanRequest, plan: KitchenPlan): WallRow[] {
  const places = placesOf(request, plan);
  const rows = plan.tasks
    .filter((task) => rulesOf(task).ofCanner !== "after")
    .flatMap((task) => [rowOf(request, task, places), ...momentRows(request, task, places)]);
  return rows.sort((a, b) => a.ms - b.ms || (a.minutes ?? 0) - (b.minutes ?? 0));
}

type Places = ReadonlyMap<PlanTask, string[]>;

function rowOf(request: PlanRequest, task: PlanTask, places: Places): WallRow {
  const batch = request.batches.find(({ id }) => id === task.batch);
  const stage = batch?.stages.find(({ id }) => id === task.stage || id === stepId(task));
  const { startMs, endMs, load, stage: what } = task;
  const jarsGoIn = task.moments.some((one) => one.what === "load");
  const pot = stage?.pot === undefined ? [] : [`${stage.pot} pot`];
  const looks = task.moments.some((one) => one.what === "look");
  return {
    ms: startMs,
    batch: task.batch,
    label: batch?.label ?? task.batch,
    what,
    ...(load === undefined ? {} : { load }),
    minutes: Math.round((endMs - startMs) / MINUTE_MS),
    handsMinutes: jarsGoIn ? 0 : handsFrom(task, startMs),
    where: [...(places.get(task) ?? []), ...(isOfCanner(task) ? [] : pot)],
    lookMinutes: looks ? rulesOf(task).plan.lookMinutes : null,
    task,
  };
}

function stepId({ stage, load }: PlanTask): string {
  return `${stage}@${load}`;
}

function momentRows(request: PlanRequest, task: PlanTask, places: Places): WallRow[] {
  return task.moments.flatMap(({ what, ms }) => {
    if (what === "look") return [];
    const row = rowOf(request, task, places);
    const handsMinutes = handsFrom(task, ms);
    return [{ ...row, ms, what: MOMENT_WORDS[what], minutes: null, handsMinutes }];
  });
}

/** Minutes of hands that begin then. */
function handsFrom({ attended }: PlanTask, ms: number): number {
  const [from, to] = attended.find(([start]) => Math.abs(start - ms) < MINUTE_MS * 5) ?? [0, 0];
  return Math.round((to - from) / MINUTE_MS);
}

/** Which burner and which canner each task has, by the first that is free. */
function placesOf({ resources }: PlanRequest, { tasks }: KitchenPlan): Places {
  const places = new Map<PlanTask, string[]>();
  for (const what of ["canner", "burner"] as const) {
    const until: number[] = [];
    for (const task of tasks) {
      if (!task.uses.includes(what) || (what === "burner" && task.uses.includes("canner")))
        continue;
      const held = task.stage === CANNER_STAGE ? heldUntil(tasks, task) : task.endMs;
      const own = what === "canner" ? lastOf(places, tasks, task) : undefined;
      const free = own ?? until.findIndex((ms) => ms <= task.startMs);
      const n = free < 0 ? until.length : free;
      until[n] = Math.max(until[n] ?? 0, held);
      const many = (resources[what] ?? 2) > 1;
      places.set(task, [...(places.get(task) ?? []), many ? `${what} ${n + 1}` : what]);
    }
  }
  return places;
}

/** The load that a canner was made hot for goes into it. */
function heldUntil(tasks: readonly PlanTask[], task: PlanTask): number {
  return tasks.find((one) => isLoadOf(one, task))?.endMs ?? task.endMs;
}

function lastOf(places: Places, tasks: readonly PlanTask[], task: PlanTask): number | undefined {
  const made = tasks.find((one) => one.stage === CANNER_STAGE && isLoadOf(task, one));
  const name = made && places.get(made)?.[0];
  return name === undefined ? undefined : Number(/\d+$/.exec(name)?.[0] ?? 1) - 1;
}

function isLoadOf(one: PlanTask, canner: PlanTask): boolean {
  const same = one.batch === canner.batch && one.load === canner.load;
  return same && one.stage !== CANNER_STAGE && one.uses.includes("canner");
}
