import { MINUTE_MS } from "../kitchen/time.ts";
import { formatMinutes } from "../recipe/duration.ts";
import { type KitchenProject, kitchenProject } from "./kitchen-project.ts";
import { when } from "./plan-limits.ts";
import type { PlanBatch, PlanRequest } from "./plan-request.ts";
import { shareOf } from "./solver/budget.ts";
import type { Effort, Lag, Solution } from "./solver/model.ts";
import { solve } from "./solver/solve.ts";

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
      : ["no plan was found in the time given; there may still be one"];
  const tries = 12;
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

/** Which batches, or how many jars of a single one, would fit; null where none would. */
export function whatFits(request: PlanRequest, effort: Effort): string | null {
  return fewerBatches(request, (changed) => finishOf(changed, shareOf(effort, 1 / 6)));
}

type Finish = { ms: number; proved: boolean };

function finishOf(request: PlanRequest, effort: Effort): Finish | null {
  const { project, gridMinutes } = kitchenProject(request);
  const solution = solve({ ...project, objectives: [{ kind: "length" }] }, effort);
  if (solution.makespan < 0) return null;
  const ms = request.startMs + solution.makespan * gridMinutes * MINUTE_MS;
  return { ms, proved: solution.status === "optimal" };
}

/** Up to this many batches, leaving out each of them is tried. */
const FEW_BATCHES = 5;

/** Leaves out one batch; else as few as needed from the end of the list, or some loads of one. */
function fewerBatches(
  request: PlanRequest,
  attempt: (changed: PlanRequest) => Finish | null,
): string | null {
  const { batches } = request;
  if (batches.length < 2) return fewerLoads(request, attempt);
  const idle = batches.filter(({ stages }) => stages.every((s) => s.startedMs === undefined));
  for (const left of idle.length <= FEW_BATCHES ? idle : []) {
    const finish = attempt({ ...request, batches: batches.filter((batch) => batch !== left) });
    if (finish) return `without ${left.label} it fits, done by ${when(request, finish.ms)}`;
  }
  let answer: string | null = null;
  let fits = 0;
  let tooMany = idle.length;
  while (tooMany - fits > 1) {
    const keep = (fits + tooMany) >> 1;
    const kept = batches.filter((batch) => !idle.includes(batch) || idle.indexOf(batch) < keep);
    const finish = attempt({ ...request, batches: kept });
    if (finish) {
      fits = keep;
      const left = batches.filter((batch) => !kept.includes(batch));
      const what =
        left.length < kept.length ? `without ${list(left)} it fits` : `${list(kept)} would fit`;
      answer = `${what}, done by ${when(request, finish.ms)}`;
    } else tooMany = keep;
  }
  return answer;
}

/** The largest number of full loads of a single batch that fits. */
function fewerLoads(
  request: PlanRequest,
  attempt: (changed: PlanRequest) => Finish | null,
): string | null {
  const [batch] = request.batches;
  if (!batch?.jars) return null;
  const { count, perLoad } = batch.jars;
  const most = Math.ceil(count / perLoad) - 1;
  for (let loads = most; loads >= 1 && loads > most - FEW_BATCHES; loads--) {
    const jars = { count: loads * perLoad, perLoad };
    const finish = attempt({ ...request, batches: [{ ...batch, jars }] });
    if (!finish) continue;
    return `${jars.count} jars of ${batch.label} would fit, done by ${when(request, finish.ms)}`;
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
  const all = parts.length > 1 ? "all " : "";
  const windows = windowWords(kitchen, conflict.lags);
  return `${parts.join(" and ")} cannot ${all}be kept${beside}${windows}`;
}

/** The maximum lags involved, as ": fill within 5 min of syrup". */
function windowWords(kitchen: KitchenProject, lags: readonly Lag[]): string {
  const words = new Set<string>();
  for (const { from, to, atLeast } of lags) {
    const later = kitchen.placed.find(({ activity }) => activity === from);
    const earlier = kitchen.placed.find(({ activity }) => activity === to);
    if (!later || !earlier || atLeast >= 0) continue;
    const most = (-atLeast - earlier.length) * kitchen.gridMinutes;
    if (most < 0) continue;
    words.add(`${later.step.stage} within ${formatMinutes(most)} of ${earlier.step.stage}`);
  }
  return words.size === 0 ? "" : `: ${[...words].join(", ")}`;
}

/** Up to four names, and how many more there are. */
function list(batches: readonly PlanBatch[]): string {
  const labels = batches.map(({ label }) => label);
  const named = labels.length > 4 ? [...labels.slice(0, 3), `${labels.length - 3} more`] : labels;
  const last = named.at(-1) ?? "";
  return named.length < 2 ? last : `${named.slice(0, -1).join(", ")} and ${last}`;
}
