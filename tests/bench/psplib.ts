import { readFileSync } from "node:fs";
import type { Activity, Lag, Project } from "../../src/plan/solver/model.ts";

/** Reads a single-mode PSPLIB `.sm` file: jobs, precedence and renewable resources. */
export function readPsplib(path: string): Project {
  const lines = readFileSync(path, "utf8").split(/\r?\n/);
  const section = (title: string) => {
    const at = lines.findIndex((line) => line.startsWith(title));
    if (at < 0) throw new Error(`${path}: no section "${title}"`);
    const rows: number[][] = [];
    for (const line of lines.slice(at + 1)) {
      if (line.startsWith("***")) break;
      if (/^\s*\d/.test(line)) rows.push(line.trim().split(/\s+/).map(Number));
    }
    return rows;
  };
  const capacity = section("RESOURCEAVAILABILITIES")[0] ?? [];
  const activities: Activity[] = section("REQUESTS/DURATIONS").map(
    ([job, , duration, ...units]) => ({
      id: String(job),
      duration: duration ?? 0,
      demands: Object.fromEntries(capacity.map((_, r) => [`R${r + 1}`, units[r] ?? 0])),
    }),
  );
  const lengths = new Map(activities.map((activity) => [activity.id, activity.duration]));
  const lags: Lag[] = section("PRECEDENCE RELATIONS").flatMap(([job, , , ...successors]) =>
    successors.map((next) => ({
      from: String(job),
      to: String(next),
      atLeast: lengths.get(String(job)) ?? 0,
    })),
  );
  return {
    activities,
    lags,
    capacities: Object.fromEntries(capacity.map((units, r) => [`R${r + 1}`, units])),
  };
}

/** The longest chain of jobs, ignoring resources: the critical-path bound. */
export function criticalPath(project: Project): number {
  const start = new Map(project.activities.map((activity) => [activity.id, 0]));
  for (let moved = true; moved; ) {
    moved = false;
    for (const lag of project.lags) {
      const from = (start.get(lag.from) ?? 0) + lag.atLeast;
      if (from <= (start.get(lag.to) ?? 0)) continue;
      start.set(lag.to, from);
      moved = true;
    }
  }
  return Math.max(...project.activities.map((a) => (start.get(a.id) ?? 0) + a.duration));
}
