import type { Project, Schedule } from "./model.ts";

/**
 * Checks a schedule against its project from first principles, sharing no code with the search:
 * every start present and whole, windows, lags, the deadline, and each resource at every moment
 * at which a use begins. Returns one sentence per violation; an empty list is a sound plan.
 */
export function violations(project: Project, starts: Schedule): string[] {
  const found: string[] = [];
  for (const activity of project.activities) {
    const start = starts[activity.id];
    if (start === undefined || !Number.isInteger(start)) {
      found.push(`${activity.id} has no whole start: ${start}`);
      continue;
    }
    const from = activity.earliest ?? 0;
    if (start < from) found.push(`${activity.id} starts at ${start}, before ${from}`);
    if (activity.latest !== undefined && start > activity.latest)
      found.push(`${activity.id} starts at ${start}, after ${activity.latest}`);
    const end = start + activity.duration;
    if (project.deadline !== undefined && !activity.outsideEnd && end > project.deadline)
      found.push(`${activity.id} ends at ${end}, after the deadline ${project.deadline}`);
  }
  if (found.length > 0) return found;
  for (const lag of project.lags) {
    const gap = (starts[lag.to] ?? Number.NaN) - (starts[lag.from] ?? Number.NaN);
    if (!(gap >= lag.atLeast))
      found.push(`${lag.to} is ${gap} after ${lag.from}, not at least ${lag.atLeast}`);
  }
  return found.concat(overloads(project, starts));
}

function overloads(project: Project, starts: Schedule): string[] {
  const found: string[] = [];
  const resources = new Set(
    project.activities.flatMap((activity) => Object.keys(activity.demands)),
  );
  for (const resource of resources) {
    const capacity = project.capacities[resource] ?? 0;
    const users = project.activities.filter(
      (activity) => activity.duration > 0 && (activity.demands[resource] ?? 0) > 0,
    );
    for (const moment of new Set(users.map((activity) => starts[activity.id] ?? 0))) {
      let used = 0;
      for (const activity of users) {
        const start = starts[activity.id] ?? 0;
        if (start <= moment && moment < start + activity.duration)
          used += activity.demands[resource] ?? 0;
      }
      if (used > capacity) found.push(`${resource} holds ${used} of ${capacity} at ${moment}`);
    }
  }
  return found;
}

/** The latest end that counts towards the length; 0 for an empty project. */
export function lengthOf(project: Project, starts: Schedule): number {
  let length = 0;
  for (const activity of project.activities) {
    if (activity.outsideEnd) continue;
    length = Math.max(length, (starts[activity.id] ?? 0) + activity.duration);
  }
  return length;
}
