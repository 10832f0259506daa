/** A schedule as the tasks of a kitchen: when each goes on, what it uses, when hands are on it. */
import { heat } from "../kitchen/stages/heat.ts";
import { rulesOf } from "../kitchen/stages/kinds.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import { HOT_CANNER_MINUTES } from "../reckon/trade-numbers.ts";
import { HOLD } from "./hot-canners.ts";
import type { KitchenProject, PlacedStep } from "./kitchen-project.ts";
import { CANNER_STAGE } from "./plan-loads.ts";
import type { PlanRequest, PlanTask } from "./plan-request.ts";
import type { Schedule } from "./solver/model.ts";
import { violations } from "./solver/verify.ts";

/** A cold canner is lit no sooner than it has to be, as its water boils away. */
export function lightLate({ project, lightings }: KitchenProject, starts: Schedule): Schedule {
  let chosen = starts;
  for (const id of lightings) {
    const beside = project.lags.filter((lag) => lag.from === id && lag.to.startsWith(`${id}#`));
    const after = project.lags.filter((lag) => lag.from === id && !beside.includes(lag));
    const latest = Math.min(...after.map((lag) => (starts[lag.to] ?? 0) - lag.atLeast));
    const soonest = starts[id] ?? 0;
    for (let at = Number.isFinite(latest) ? latest : soonest; at > soonest; at--) {
      const parts = beside.map((lag) => [lag.to, at + lag.atLeast]);
      const moved = { ...chosen, [id]: at, ...Object.fromEntries(parts) };
      if (violations(project, moved).length > 0) continue;
      chosen = moved;
      break;
    }
  }
  return chosen;
}

/** When the task of a step ends: a stage with a window goes on until what follows it begins. */
function endOf(placed: PlacedStep, starts: Schedule): number {
  const start = starts[placed.activity]!;
  const end = start + placed.length;
  if (!placed.step.window || placed.step.endedMs !== undefined) return end;
  if (placed.followers.length === 0) return end;
  return Math.max(end, Math.min(...placed.followers.map((follower) => starts[follower]!)));
}

/** What is done within a stage at moments of its own; a pot long on the heat is looked at. */
function momentsOf({ step }: PlacedStep, startMs: number, endMs: number): PlanTask["moments"] {
  const own = (step.moments ?? []).map(({ what, minute }) => {
    return { what, ms: startMs + minute * MINUTE_MS };
  });
  const every = rulesOf(step).plan.lookMinutes;
  if (every === null || step.hands === "all" || step.endedMs !== undefined) return own;
  const count = Math.ceil((endMs - startMs) / (every * MINUTE_MS)) - 1;
  return Array.from({ length: Math.max(0, count) }, (_, n) => {
    return { what: "look" as const, ms: startMs + (n + 1) * every * MINUTE_MS };
  });
}

/** Everything that is done, in order; lighting and topping up a canner with the load it is for. */
export function planTasks(
  request: PlanRequest,
  kitchen: KitchenProject,
  starts: Schedule,
): PlanTask[] {
  const at = (slot: number) => request.startMs + slot * kitchen.gridMinutes * MINUTE_MS;
  const tasks = kitchen.placed.map((placed): PlanTask => {
    const { step, attended } = placed;
    const start = starts[placed.activity]!;
    const startMs = step.startedMs ?? at(start);
    const endMs = step.endedMs ?? at(endOf(placed, starts));
    return {
      batch: step.batch,
      stage: step.stage,
      ...(step.load === undefined ? {} : { load: step.load }),
      kind: step.kind,
      startMs,
      endMs,
      uses: [...step.uses],
      hands: attended.length > 0,
      attended: attended.map(([offset, length]) => {
        return [at(start + offset), at(start + offset + length)];
      }),
      moments: momentsOf(placed, startMs, endMs),
    };
  });
  tasks.push(...cannerTasks(kitchen, starts, at));
  return tasks.sort((a, b) => a.startMs - b.startMs || a.endMs - b.endMs);
}

/** When each canner is lit, and topped up between two loads. */
function cannerTasks(
  { placed, project, lightings, gridMinutes }: KitchenProject,
  starts: Schedule,
  at: (slot: number) => number,
): PlanTask[] {
  const lit = lightings.map((id) => starts[id]!).sort((a, b) => a - b);
  const lengthOf = (id: string) => project.activities.find((one) => one.id === id)?.duration ?? 0;
  const holds = placed
    .map((one) => ({ ...one, from: starts[`${one.activity}#${HOLD}`] }))
    .filter((one): one is typeof one & { from: number } => one.from !== undefined)
    .filter(({ step, from }) => step.after.length > 0 && from < starts[`${step.batch}/${step.id}`]!)
    .sort((a, b) => a.from - b.from);
  const inUse: number[] = [];
  return holds.map(({ step, activity, length, from }): PlanTask => {
    const free = inUse.findIndex((until) => until <= from);
    const lighting =
      free < 0 ? lightings.find((id) => starts[id] === lit[inUse.length]) : undefined;
    inUse[free < 0 ? inUse.length : free] = starts[activity]! + length;
    const start = lighting === undefined ? from : starts[lighting]!;
    const topUp = Math.ceil(HOT_CANNER_MINUTES / gridMinutes);
    const end = start + (lighting === undefined ? topUp : lengthOf(lighting));
    const hands = lengthOf(`${lighting}#hands`);
    const { batch, load } = step;
    return {
      batch,
      stage: CANNER_STAGE,
      ...(load === undefined ? {} : { load }),
      kind: heat.kind,
      startMs: at(start),
      endMs: at(end),
      uses: ["canner", "burner"],
      hands: hands > 0,
      attended: hands > 0 ? [[at(start), at(start + hands)]] : [],
      moments: [],
    };
  });
}
