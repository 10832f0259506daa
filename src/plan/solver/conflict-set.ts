import { Budget } from "./budget.ts";
import type { Conflict, Effort, Lag, Project } from "./model.ts";
import { networkOf } from "./network.ts";
import { readProject } from "./problem.ts";
import { Search } from "./search.ts";

/** Conflicts spent on each question "does it still not fit without this?". */
const PROOF_CONFLICTS = 400;

/**
 * Shrinks an impossible project to a small part that is impossible by itself: the deadline,
 * activities (with what they occupy) and lags are left out one by one, and stay out where the
 * rest is still proved impossible. What is left is small, not always the smallest.
 */
export function conflictOf(project: Project, effort: Effort): Conflict {
  const budget = new Budget(effort);
  const impossible = (part: Project) => !budget.over() && refuted(part, budget);
  let part = project;
  const { deadline: _, ...timeless } = project;
  if (project.deadline !== undefined && impossible(timeless)) part = timeless;
  part = withoutActivities(part, impossible);
  part = withoutLags(part, impossible);
  return {
    activities: part.activities.map((activity) => activity.id),
    lags: [...part.lags],
    deadline: part.deadline !== undefined,
  };
}

function refuted(project: Project, budget: Budget): boolean {
  const network = networkOf(readProject(project));
  if (!network) return true;
  const search = new Search(network, network.end, budget);
  return search.run(PROOF_CONFLICTS, true, [], 1 << 28) === "exhausted" && search.best === null;
}

/** Leaves out halves, quarters and so on, down to single activities. */
function withoutActivities(project: Project, impossible: (part: Project) => boolean): Project {
  let part = project;
  for (let size = Math.ceil(part.activities.length / 2); size >= 1; size = Math.floor(size / 2)) {
    for (let at = 0; at < part.activities.length; ) {
      const gone = new Set(part.activities.slice(at, at + size).map((activity) => activity.id));
      const smaller = {
        ...part,
        activities: part.activities.filter((activity) => !gone.has(activity.id)),
        lags: part.lags.filter((lag) => !gone.has(lag.from) && !gone.has(lag.to)),
      };
      if (impossible(smaller)) part = smaller;
      else at += size;
    }
  }
  return part;
}

function withoutLags(project: Project, impossible: (part: Project) => boolean): Project {
  let lags: readonly Lag[] = project.lags;
  for (let size = Math.ceil(lags.length / 2); size >= 1; size = Math.floor(size / 2)) {
    for (let at = 0; at < lags.length; ) {
      const fewer = lags.filter((_, e) => e < at || e >= at + size);
      if (impossible({ ...project, lags: fewer })) lags = fewer;
      else at += size;
    }
  }
  return { ...project, lags };
}
