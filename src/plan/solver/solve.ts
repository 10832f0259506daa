import { Budget } from "./budget.ts";
import { closureOf } from "./closure.ts";
import { conflictOf } from "./conflict-set.ts";
import { minimize, type SearchResult } from "./minimize.ts";
import type { Conflict, Effort, Objective, Project, Schedule, Solution } from "./model.ts";
import type { Sum } from "./network.ts";
import { type Problem, readProject } from "./problem.ts";
import { lengthOf, violations } from "./verify.ts";

/**
 * Finds the plan that is best by the project's objectives, in their order, or says that none
 * exists and what stands in the way. `optimal`: proved for every objective. Every plan returned
 * has passed the independent checker. Throws a RangeError where the project itself is malformed.
 */
export function solve(project: Project, effort: Effort): Solution {
  const problem = readProject(project);
  const budget = new Budget(effort);
  const plain = plainConflict(project, problem);
  if (plain) return nothing("infeasible", 0, 0, plain);
  const wishes: readonly Objective[] = project.objectives ?? [{ kind: "length" }];
  const sums: Sum[] = wishes.flatMap((wish) =>
    wish.kind === "sum" ? [{ weights: weightsOf(wish, problem) }] : [],
  );
  let plan: Int32Array | null = knownPlan(project, problem, effort.known);
  let proved = true;
  let lowerBound = 0;
  let sumsSeen = 0;
  for (let w = 0; w < wishes.length; w++) {
    const target = wishes[w]!.kind === "length" ? "length" : sumsSeen++;
    budget.allow(w + 1 === wishes.length ? 1 : 0.6 + (0.3 * w) / wishes.length);
    const task = { problem, sums, target, known: plan, random: effort.random, budget } as const;
    const outcome: SearchResult = minimize(task);
    if (!outcome.plan) {
      if (!outcome.proved) return nothing("unknown", outcome.lowerBound, budget.used);
      const conflict = conflictOf(project, longer(effort));
      return nothing("infeasible", outcome.lowerBound, budget.used, conflict);
    }
    plan = outcome.plan;
    proved &&= outcome.proved;
    if (target === "length") {
      lowerBound = outcome.lowerBound;
      limitLength(problem, outcome.value);
    } else sums[target]!.most = outcome.value;
  }
  return found(project, problem, plan!, proved, lowerBound, budget.used);
}

function knownPlan(project: Project, problem: Problem, known: Schedule | undefined) {
  if (!known || violations(project, known).length > 0) return null;
  return Int32Array.from(problem.ids, (id) => known[id]!);
}

/** Naming what stands in the way may take as long again as finding out that something does. */
function longer(effort: Effort): Effort {
  return effort.limitMs === undefined ? effort : { ...effort, limitMs: 2 * effort.limitMs };
}

function found(
  project: Project,
  problem: Problem,
  plan: Int32Array,
  proved: boolean,
  lowerBound: number,
  nodes: number,
): Solution {
  const starts = Object.fromEntries(problem.ids.map((id, i) => [id, plan[i]!]));
  const broken = violations(project, starts);
  if (broken.length > 0) throw new Error(`the planner broke its own rules: ${broken.join("; ")}`);
  const makespan = lengthOf(project, starts);
  const status = proved ? "optimal" : "feasible";
  const objectives = (project.objectives ?? [{ kind: "length" }]).map((wish) =>
    wish.kind === "length" ? makespan : sumOf(wish, starts),
  );
  return { status, starts, makespan, lowerBound, nodes, objectives };
}

function sumOf(wish: Objective & { kind: "sum" }, starts: Schedule): number {
  return wish.terms.reduce((sum, term) => sum + term.weight * (starts[term.activity] ?? 0), 0);
}

function nothing(
  status: "infeasible" | "unknown",
  lowerBound: number,
  nodes: number,
  conflict?: Conflict,
): Solution {
  const base = { status, starts: {}, makespan: -1, lowerBound, nodes, objectives: [] };
  return conflict ? { ...base, conflict } : base;
}

function weightsOf(wish: Objective & { kind: "sum" }, problem: Problem): Map<number, number> {
  const index = new Map(problem.ids.map((id, i) => [id, i]));
  const weights = new Map<number, number>();
  for (const { activity, weight } of wish.terms) {
    const i = index.get(activity);
    if (i === undefined) throw new RangeError(`an objective names an unknown ${activity}`);
    weights.set(i, (weights.get(i) ?? 0) + weight);
  }
  return weights;
}

/** Later objectives may not lengthen the plan. */
function limitLength(problem: Problem, length: number): void {
  problem.horizon = Math.min(problem.horizon, length);
  for (let i = 0; i < problem.count; i++) {
    if (!problem.counts[i]) continue;
    problem.latest[i] = Math.min(problem.latest[i]!, length - problem.duration[i]!);
  }
}

/** What no search is needed for: one activity too big, or a ring of lags. */
function plainConflict(project: Project, problem: Problem): Conflict | null {
  const n = problem.count;
  for (let i = 0; i < n; i++) {
    const alone = { activities: [problem.ids[i]!], lags: [] };
    for (let r = 0; r < problem.resources.length; r++) {
      const tooMuch = problem.demand[r * n + i]! > problem.capacity[r]!;
      if (tooMuch && problem.duration[i]! > 0) return { ...alone, deadline: false };
    }
    if (problem.earliest[i]! <= problem.latest[i]!) continue;
    return { ...alone, deadline: project.deadline !== undefined };
  }
  const { ring } = closureOf(problem);
  if (!ring) return null;
  const lags = ring.map((e) => project.lags[e]!);
  return { activities: [...new Set(lags.map((lag) => lag.from))], lags, deadline: false };
}
