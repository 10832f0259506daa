import { DAY_MS, MINUTE_MS } from "../kitchen/time.ts";
import { shareOf } from "./budget.ts";
import { type KitchenProject, kitchenProject } from "./kitchen-project.ts";
import type { Effort, Solution } from "./model.ts";
import { clock } from "./plan-limits.ts";
import type { PlanBatch, PlanRequest } from "./plan-request.ts";
import { solve } from "./solve.ts";

/** Where no plan was found: what stands in the way, and what would fit instead. */
export function whatStandsInTheWay(
  request: PlanRequest,
  kitchen: KitchenProject,
  solution: Solution,
  effort: Effort,
): string[] {
  const why =
    solution.status === "infeasible"
      ? [clashSentence(request, kitchen, solution)]
      : ["no plan was found in the time given; whether there is one is open"];
  const tries = 2 * request.batches.length + 2;
  const attempt = (changed: PlanRequest) => finishOf(changed, shareOf(effort, 1 / tries));
  const { finishByMs: _, ...timeless } = request;
  if (request.finishByMs !== undefined) {
    const finish = attempt(timeless);
    if (finish) {
      const proof = finish.proved ? "at the earliest" : "at the latest";
      why.push(`all of it would be done by ${when(request, finish.ms)} ${proof}`);
    }
  }
  const fewer = fewerBatches(request, attempt);
  if (fewer) why.push(fewer);
  if (!fewer && request.quiet?.length) {
    const { quiet: __, ...loud } = request;
    const finish = attempt(loud);
    if (finish) why.push(`without the quiet hours it would be done by ${when(request, finish.ms)}`);
  }
  return why;
}

type Finish = { ms: number; proved: boolean };

function finishOf(request: PlanRequest, effort: Effort): Finish | null {
  const { project, gridMinutes } = kitchenProject(request);
  const solution = solve({ ...project, objectives: [{ kind: "length" }] }, effort);
  if (solution.makespan < 0) return null;
  const ms = request.startMs + solution.makespan * gridMinutes * MINUTE_MS;
  return { ms, proved: solution.status === "optimal" };
}

/** Leaves out one batch, else more and more from the end of the list. */
function fewerBatches(
  request: PlanRequest,
  attempt: (changed: PlanRequest) => Finish | null,
): string | null {
  const { batches } = request;
  if (batches.length < 2) return null;
  const idle = batches.filter(({ stages }) => stages.every((s) => s.startedMs === undefined));
  for (const left of idle) {
    const finish = attempt({ ...request, batches: batches.filter((batch) => batch !== left) });
    if (finish) return `without ${left.label} it fits, done by ${when(request, finish.ms)}`;
  }
  for (let keep = batches.length - 2; keep >= 1; keep--) {
    const kept = batches.filter((batch) => !idle.includes(batch) || idle.indexOf(batch) < keep);
    const finish = attempt({ ...request, batches: kept });
    if (!finish) continue;
    return `${list(kept)} would fit, done by ${when(request, finish.ms)}`;
  }
  return null;
}

function clashSentence(
  request: PlanRequest,
  kitchen: KitchenProject,
  { conflict }: Solution,
): string {
  if (!conflict) return "nothing fits";
  const involved = new Map<string, Set<string>>();
  for (const id of conflict.activities) {
    const owner = id.split("#")[0];
    const placed = kitchen.placed.find(({ activity }) => activity === owner);
    if (!placed) continue;
    const stages = involved.get(placed.step.batch) ?? new Set();
    involved.set(placed.step.batch, stages.add(placed.step.stage));
  }
  const parts = request.batches
    .filter(({ id }) => involved.has(id))
    .map(({ id, label }) => `${label} (${[...involved.get(id)!].join(", ")})`);
  const quiet = conflict.activities.some((id) => id.startsWith("quiet"));
  const limits = [
    ...(conflict.deadline ? [`a finish by ${when(request, request.finishByMs ?? 0)}`] : []),
    ...(quiet ? ["the quiet hours"] : []),
  ];
  const beside = limits.length > 0 ? ` with ${limits.join(" and ")}` : "";
  return `${parts.join(" and ")} cannot ${parts.length > 1 ? "all " : ""}be kept${beside}`;
}

/** The time of day, with how many days later where it is not the day of the start. */
function when(request: PlanRequest, ms: number): string {
  const startsAt = clock(request.startMs, request.zone).split(":").map(Number);
  const midnight = request.startMs - ((startsAt[0] ?? 0) * 60 + (startsAt[1] ?? 0)) * MINUTE_MS;
  const days = Math.floor((ms - midnight) / DAY_MS);
  const later = days === 0 ? "" : days === 1 ? " on the next day" : ` ${days} days later`;
  return `${clock(ms, request.zone)}${later}`;
}

function list(batches: readonly PlanBatch[]): string {
  return batches.map(({ label }) => label).join(" and ");
}
