import type { Lag, Project } from "./model.ts";

/** No path between two activities; far below any real lag, far above overflow. */
export const NO_PATH = -(1 << 28);

/** A project as numbers: activity i, resource r, lag e. What the search works on. */
export type Problem = {
  count: number;
  ids: string[];
  duration: Int32Array;
  earliest: Int32Array;
  latest: Int32Array;
  counts: Uint8Array;
  common: Uint8Array;
  resources: string[];
  capacity: Int32Array;
  /** demand[r * count + i] */
  demand: Int32Array;
  lagFrom: Int32Array;
  lagTo: Int32Array;
  lagMin: Int32Array;
  /** A plan, where one exists at all, exists with every counted end within this. */
  horizon: number;
  /** The latest start or end anything may have, counted or not. */
  reach: number;
};

/**
 * Reads a project into arrays. Throws a RangeError naming what is not a whole number or unknown.
 */
export function readProject(project: Project): Problem {
  const count = project.activities.length;
  const index = new Map(project.activities.map((activity, i) => [activity.id, i]));
  if (index.size !== count) throw new RangeError("two activities carry the same id");
  const resources = Object.keys(project.capacities);
  const slot = new Map(resources.map((resource, r) => [resource, r]));
  const problem: Problem = {
    count,
    ids: project.activities.map((activity) => activity.id),
    duration: new Int32Array(count),
    earliest: new Int32Array(count),
    latest: new Int32Array(count),
    counts: new Uint8Array(count),
    common: Uint8Array.from(project.activities, ({ common }) => (common ? 1 : 0)),
    resources,
    capacity: Int32Array.from(resources, (r) => whole(project.capacities[r] ?? 0, r)),
    demand: new Int32Array(resources.length * count),
    lagFrom: new Int32Array(project.lags.length),
    lagTo: new Int32Array(project.lags.length),
    lagMin: new Int32Array(project.lags.length),
    horizon: 0,
    reach: 0,
  };
  project.lags.forEach((lag, e) => {
    problem.lagFrom[e] = found(index, lag.from, lag);
    problem.lagTo[e] = found(index, lag.to, lag);
    problem.lagMin[e] = integer(lag.atLeast, `the lag ${lag.from} to ${lag.to}`);
  });
  readActivities(project, problem, slot);
  return problem;
}

function readActivities(project: Project, problem: Problem, slot: Map<string, number>): void {
  const { count } = problem;
  project.activities.forEach((activity, i) => {
    problem.duration[i] = whole(activity.duration, activity.id);
    problem.earliest[i] = Math.max(0, integer(activity.earliest ?? 0, activity.id));
    problem.counts[i] = activity.outsideEnd ? 0 : 1;
    for (const [resource, units] of Object.entries(activity.demands)) {
      const r = slot.get(resource);
      if (r === undefined) throw new RangeError(`${activity.id} needs an unknown ${resource}`);
      problem.demand[r * count + i] = whole(units, activity.id);
    }
  });
  const span = reachOf(problem);
  problem.horizon = project.deadline ?? span;
  problem.reach = Math.max(span, problem.horizon);
  project.activities.forEach((activity, i) => {
    const last = activity.outsideEnd ? problem.reach : problem.horizon;
    problem.latest[i] = Math.min(last - problem.duration[i]!, activity.latest ?? last);
  });
}

/**
 * The sum over all activities of the longer of duration and longest lag out, plus the latest
 * earliest start: in a plan longer than that some moment is covered by nothing, and what lies
 * behind it can move forward.
 */
function reachOf(problem: Problem): number {
  const longest = Int32Array.from(problem.duration);
  for (let e = 0; e < problem.lagFrom.length; e++) {
    const from = problem.lagFrom[e]!;
    longest[from] = Math.max(longest[from]!, problem.lagMin[e]!);
  }
  let sum = 0;
  for (const span of longest) sum += span;
  let release = 0;
  for (const earliest of problem.earliest) release = Math.max(release, earliest);
  return sum + release;
}

function found(index: Map<string, number>, id: string, lag: Lag): number {
  const i = index.get(id);
  if (i === undefined)
    throw new RangeError(`the lag from ${lag.from} to ${lag.to} names an unknown ${id}`);
  return i;
}

function integer(figure: number, what: string): number {
  if (!Number.isInteger(figure) || Math.abs(figure) > 1e7)
    throw new RangeError(`${what}: ${figure} is not a whole number of grid steps`);
  return figure;
}

function whole(figure: number, what: string): number {
  if (integer(figure, what) < 0) throw new RangeError(`${what}: ${figure} is below zero`);
  return figure;
}
