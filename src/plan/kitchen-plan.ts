import { MINUTE_MS } from "../kitchen/time.ts";
import { type KitchenProject, kitchenProject } from "./kitchen-project.ts";
import { planAgain } from "./plan-again.ts";
import { whatLimits } from "./plan-limits.ts";
import { whatStandsInTheWay } from "./plan-obstacles.ts";
import type { KitchenPlan, PlanRequest } from "./plan-request.ts";
import { lightLate, planTasks } from "./plan-tasks.ts";
import { shareOf } from "./solver/budget.ts";
import type { Effort, Objective, Project, Schedule, Solution } from "./solver/model.ts";
import { solve } from "./solver/solve.ts";

/** A calm day without a wished finish may be this much longer than the shortest. */
const CALM_STRETCH = 1.15;

/**
 * Plans several batches over one kitchen: feasible first, then the wished finish, then (calm) few
 * idle waits before the length or (short) the length before idle waits. The answer includes
 * sentences on what limits the day or stands in the way. Throws a RangeError on a malformed
 * request, naming the batch.
 */
export function planKitchen(request: PlanRequest, effort: Effort): KitchenPlan {
  const kitchen = kitchenProject(request);
  const known = planAgain(request, kitchen);
  const shortest = solve(kitchen.project, {
    ...shareOf(effort, 0.45),
    ...(known ? { known } : {}),
  });
  if (shortest.status === "infeasible" || shortest.status === "unknown")
    return withoutPlan(request, kitchen, shortest, effort);
  const calm = (request.prefer ?? (request.finishByMs === undefined ? "short" : "calm")) === "calm";
  const chosen = calm ? calmest(kitchen.project, shortest, shareOf(effort, 0.25)) : shortest;
  const starts = lightLate(kitchen, chosen.starts);
  const tasks = planTasks(request, kitchen, starts);
  const grid = kitchen.gridMinutes;
  return {
    feasible: true,
    proved: calm ? chosen.status === "optimal" : shortest.lowerBound === shortest.makespan,
    startMs: request.startMs,
    finishMs: request.startMs + chosen.makespan * grid * MINUTE_MS,
    minutes: chosen.makespan * grid,
    atLeastMinutes: shortest.lowerBound * grid,
    idleMinutes: idleSteps(kitchen, chosen.starts) * grid,
    tasks,
    why:
      request.explain === false ? [] : whatLimits(request, tasks, shortest, shareOf(effort, 0.3)),
  };
}

function calmest(project: Project, shortest: Solution, effort: Effort): Solution {
  const [length, idle] = project.objectives as [Objective, Objective];
  const deadline = project.deadline ?? Math.floor(shortest.makespan * CALM_STRETCH);
  const wish = { ...project, deadline, objectives: [idle, length] };
  return solve(wish, { ...effort, known: shortest.starts });
}

function withoutPlan(
  request: PlanRequest,
  kitchen: KitchenProject,
  solution: Solution,
  effort: Effort,
): KitchenPlan {
  return {
    feasible: false,
    proved: solution.status === "infeasible",
    startMs: request.startMs,
    finishMs: request.startMs,
    minutes: 0,
    atLeastMinutes: solution.lowerBound * kitchen.gridMinutes,
    idleMinutes: 0,
    tasks: [],
    why:
      request.explain === false
        ? []
        : whatStandsInTheWay(request, kitchen, solution, shareOf(effort, 0.5)),
  };
}

/** Total grid steps between the ends of stages and the starts of what follows them. */
function idleSteps(kitchen: KitchenProject, starts: Schedule): number {
  let idle = 0;
  for (const placed of kitchen.placed) {
    const end = starts[placed.activity]! + placed.length;
    for (const follower of placed.followers) idle += Math.max(0, starts[follower]! - end);
  }
  return idle;
}
