import type { Project } from "../../../src/plan/solver/model.ts";
import { farEnough } from "./random-projects.ts";

/** The least time from each start to each other, far below nothing where there is none. */
function leastLags({ activities, lags }: Project): number[][] {
  const place = new Map(activities.map((activity, i) => [activity.id, i]));
  const least: number[][] = activities.map(() => activities.map(() => -1e6));
  for (const lag of lags) {
    const row = least[place.get(lag.from)!]!;
    const to = place.get(lag.to)!;
    row[to] = Math.max(row[to]!, lag.atLeast);
  }
  return least;
}

/** The best [length, weighted sum of starts] of all plans, tried one by one; null for none. */
export function bruteForce(
  project: Project,
  weights: Readonly<Record<string, number>> = {},
): [number, number] | null {
  const { activities } = project;
  const count = activities.length;
  const horizon = farEnough(project);
  const least = leastLags(project);
  const resources = Object.keys(project.capacities);
  const used = resources.map(() => new Array<number>(horizon + 64).fill(0));
  const starts = new Array<number>(count).fill(0);
  let best: [number, number] | null = null;
  if (least.some((row, i) => row[i]! > 0)) return null;

  const fits = (i: number, start: number) => {
    for (let j = 0; j < i; j++) {
      if (start - starts[j]! < least[j]![i]!) return false;
      if (starts[j]! - start < least[i]![j]!) return false;
    }
    const { duration, demands } = activities[i]!;
    return resources.every((resource, r) => {
      const room = project.capacities[resource]! - (demands[resource] ?? 0);
      for (let t = start; t < start + duration; t++) if (used[r]![t]! > room) return false;
      return true;
    });
  };
  const occupy = (i: number, sign: number) => {
    const { duration, demands } = activities[i]!;
    resources.forEach((resource, r) => {
      for (let t = starts[i]!; t < starts[i]! + duration; t++)
        used[r]![t] = used[r]![t]! + sign * (demands[resource] ?? 0);
    });
  };
  const descend = (i: number, length: number, sum: number) => {
    if (best && length > best[0]) return;
    if (i === count) {
      if (!best || length < best[0] || sum < best[1]) best = [length, sum];
      return;
    }
    const activity = activities[i]!;
    const counted = activity.outsideEnd ? horizon : Math.min(horizon, project.deadline ?? horizon);
    const last = Math.min(counted - activity.duration, activity.latest ?? horizon);
    for (let start = activity.earliest ?? 0; start <= last; start++) {
      if (!fits(i, start)) continue;
      starts[i] = start;
      occupy(i, 1);
      const end = activity.outsideEnd ? 0 : start + activity.duration;
      descend(i + 1, Math.max(length, end), sum + (weights[activity.id] ?? 0) * start);
      starts[i] = start;
      occupy(i, -1);
    }
  };
  descend(0, 0, 0);
  return best;
}
