import highs from "highs";
import { describe, expect, it } from "vitest";
import type { Project } from "../../../src/plan/solver/model.ts";
import { seededRandom } from "../../../src/plan/solver/random.ts";
import { solve } from "../../../src/plan/solver/solve.ts";
import { randomProject } from "./random-projects.ts";

/** The project as a time-indexed integer program in LP format: x_i_t is 1 where i starts at t. */
function integerProgram(project: Project, horizon: number): string {
  const index = new Map(project.activities.map(({ id }, i) => [id, i]));
  const lines: string[] = ["Minimize", " obj: length", "Subject To"];
  const binaries: string[] = [];
  const windows = project.activities.map(({ duration, earliest = 0, latest = horizon }) => {
    const last = Math.min(latest, horizon - duration);
    return Array.from({ length: Math.max(0, last - earliest + 1) }, (_, t) => earliest + t);
  });
  const start = (i: number, sign: string) =>
    windows[i]!.map((t) => `${sign} ${t} x_${i}_${t}`).join(" ");
  const opposite = (sign: string) => (sign === "+" ? "-" : "+");
  project.activities.forEach(({ duration, outsideEnd }, i) => {
    const all = windows[i]!.map((t) => `x_${i}_${t}`);
    binaries.push(...all);
    lines.push(` ${all.join(" + ")} = 1`);
    if (!outsideEnd) lines.push(` length ${start(i, opposite("+"))} >= ${duration}`);
  });
  for (const { from, to, atLeast } of project.lags)
    lines.push(` ${start(index.get(to)!, "+")} ${start(index.get(from)!, "-")} >= ${atLeast}`);
  for (const [resource, capacity] of Object.entries(project.capacities)) {
    for (let minute = 0; minute < horizon; minute++) {
      const terms = project.activities.flatMap(({ duration, demands }, i) =>
        (demands[resource] ?? 0) === 0
          ? []
          : windows[i]!.filter((t) => t <= minute && minute < t + duration).map(
              (t) => `+ ${demands[resource]} x_${i}_${t}`,
            ),
      );
      if (terms.length > 1) lines.push(` ${terms.join(" ")} <= ${capacity}`);
    }
  }
  return [...lines, "Bounds", ` length >= 0`, "Binary", ` ${binaries.join(" ")}`, "End"].join("\n");
}

describe("the planner against an integer program", () => {
  it("agrees on middle-sized projects, possible and impossible", async () => {
    const solver = await highs();
    const random = seededRandom(31);
    const seen = { Optimal: 0, Infeasible: 0 };
    for (let n = 0; n < 40; n++) {
      const shape = { activities: [8, 9] as [number, number], longest: 4, lags: 9 };
      const { deadline: _, ...drawn } = randomProject(random, shape);
      const horizon = 26;
      const project = {
        ...drawn,
        deadline: horizon,
        activities: drawn.activities.map(({ latest = horizon, ...rest }) => ({
          ...rest,
          latest: Math.min(latest, horizon - rest.duration),
        })),
      };
      const solution = solve(project, { random: seededRandom(1), nodeBudget: 200_000 });
      const truth = solver.solve(integerProgram(project, horizon));
      if (truth.Status === "Optimal") {
        seen.Optimal += 1;
        expect([solution.status, solution.makespan], JSON.stringify(project)).toEqual([
          "optimal",
          Math.round(truth.ObjectiveValue),
        ]);
      } else {
        expect(truth.Status).toBe("Infeasible");
        expect(solution.status, JSON.stringify(project)).toBe("infeasible");
        seen.Infeasible += 1;
      }
    }
    expect(Math.min(seen.Optimal, seen.Infeasible)).toBeGreaterThan(4);
  }, 120_000);
});
