import type { Activity, Lag, Project } from "../../../src/plan/solver/model.ts";

export type Shape = { activities: [number, number]; longest: number; lags: number };

/** A random project with lags of both signs, windows and two resources; often impossible. */
export function randomProject(random: () => number, shape: Shape): Project {
  const int = (from: number, to: number) => from + Math.floor(random() * (to - from + 1));
  const count = int(...shape.activities);
  const capacities = { stove: int(1, 3), hands: 1 };
  const activities: Activity[] = Array.from({ length: count }, (_, i) => ({
    id: `t${i}`,
    duration: int(0, shape.longest),
    demands: { stove: int(0, capacities.stove), hands: int(0, 3) === 0 ? 1 : 0 },
    ...(int(0, 5) === 0 ? { earliest: int(0, 3) } : {}),
    ...(int(0, 8) === 0 ? { latest: int(2, 8) } : {}),
    outsideEnd: int(0, 9) === 0,
  }));
  const lags: Lag[] = [];
  for (let e = int(0, shape.lags); e > 0; e--) {
    const from = int(0, count - 1);
    const to = int(0, count - 1);
    if (from === to) continue;
    lags.push({ from: `t${from}`, to: `t${to}`, atLeast: int(-shape.longest - 1, shape.longest) });
  }
  const deadline = int(0, 4) === 0 ? { deadline: int(3, 12) } : {};
  return { activities, lags, capacities, ...deadline };
}

/** Far enough that a plan, if there is one, also exists within. */
export function farEnough(project: Project): number {
  let sum = 0;
  let release = 0;
  for (const activity of project.activities) {
    let longest = activity.duration;
    for (const lag of project.lags)
      if (lag.from === activity.id) longest = Math.max(longest, lag.atLeast);
    sum += longest;
    release = Math.max(release, activity.earliest ?? 0);
  }
  return sum + release;
}
