import { describe, expect, it } from "vitest";
import type { Project } from "../../../src/plan/solver/model.ts";
import { seededRandom } from "../../../src/plan/solver/random.ts";
import { solve } from "../../../src/plan/solver/solve.ts";
import { violations } from "../../../src/plan/solver/verify.ts";
import { seededKitchen } from "../kitchens.ts";
import { bruteForce } from "./brute-force.ts";
import { randomProject, type Shape } from "./random-projects.ts";

const effort = (nodeBudget = 200_000) => ({ random: seededRandom(7), nodeBudget });

const TINY: Shape = { activities: [1, 4], longest: 3, lags: 6 };

function same(project: Project): { impossible: boolean } {
  const solution = solve(project, effort());
  const truth = bruteForce(project);
  const told = JSON.stringify(project);
  if (!truth) {
    expect(solution.status, told).toBe("infeasible");
    return { impossible: true };
  }
  expect([solution.status, solution.makespan], told).toEqual(["optimal", truth[0]]);
  expect(solution.lowerBound).toBe(truth[0]);
  expect(violations(project, solution.starts), told).toEqual([]);
  return { impossible: false };
}

describe("the planner against trying every plan", () => {
  it("finds the same length, or the same impossibility, in 3000 tiny projects", () => {
    const random = seededRandom(2027);
    let impossible = 0;
    for (let n = 0; n < 3000; n++)
      if (same(randomProject(random, TINY)).impossible) impossible += 1;
    expect(impossible).toBeGreaterThan(300);
    expect(impossible).toBeLessThan(2000);
  }, 60_000);

  it("does so in 250 projects of five and six activities", () => {
    const random = seededRandom(814);
    for (let n = 0; n < 250; n++)
      same(randomProject(random, { activities: [5, 6], longest: 2, lags: 9 }));
  }, 60_000);

  it("then makes a weighted sum of starts as small as the shortest plan allows", () => {
    const random = seededRandom(99);
    for (let n = 0; n < 400; n++) {
      const project = randomProject(random, TINY);
      const weights = Object.fromEntries(
        project.activities.map(({ id }) => [id, Math.floor(random() * 5) - 2]),
      );
      const truth = bruteForce(project, weights);
      const bounded = project.activities.every(({ id, outsideEnd }) => !outsideEnd || !weights[id]);
      if (!truth || !bounded) continue;
      const terms = Object.entries(weights).map(([activity, weight]) => ({ activity, weight }));
      const objectives = [{ kind: "length" }, { kind: "sum", terms }] as const;
      const solution = solve({ ...project, objectives }, effort());
      expect(solution.objectives, JSON.stringify({ project, weights })).toEqual(truth);
      expect(solution.status).toBe("optimal");
    }
  }, 60_000);

  it("names a conflict that is impossible by itself", () => {
    const random = seededRandom(5);
    let seen = 0;
    for (let n = 0; n < 4000 && seen < 250; n++) {
      const project = randomProject(random, TINY);
      const { status, conflict } = solve(project, effort());
      if (status !== "infeasible") continue;
      seen += 1;
      const part = {
        activities: project.activities.filter(({ id }) => conflict?.activities.includes(id)),
        lags: conflict?.lags ?? [],
        capacities: project.capacities,
        ...(conflict?.deadline ? { deadline: project.deadline ?? 0 } : {}),
      };
      expect(bruteForce(part), JSON.stringify({ project, conflict })).toBeNull();
    }
    expect(seen).toBe(250);
  }, 60_000);
});

describe("the planner in a kitchen", () => {
  it("proves the shortest day for five batches, and the checker agrees", () => {
    for (const seed of [1, 2, 3]) {
      const kitchen = seededKitchen(seed, 5);
      const solution = solve(kitchen, effort());
      expect(solution.status).toBe("optimal");
      expect(violations(kitchen, solution.starts)).toEqual([]);
    }
  }, 30_000);

  it("keeps hands free in quiet hours, which are not part of the length", () => {
    const kitchen = seededKitchen(4, 2, { quiet: [[240, 420]] });
    const { status, starts, makespan } = solve(kitchen, effort());
    expect(status).toBe("optimal");
    expect(violations(kitchen, starts)).toEqual([]);
    const early = solve(seededKitchen(4, 2, { quiet: [[6000, 6060]] }), effort());
    const plain = solve(seededKitchen(4, 2), effort());
    expect(early.makespan).toBe(plain.makespan);
    expect(makespan).toBeGreaterThan(plain.makespan);
  });

  it("gives the same plan for the same seed and node budget, proved or not", () => {
    const kitchen = seededKitchen(8, 8);
    const first = solve(kitchen, effort(4000));
    expect(first.status).toBe("feasible");
    expect(solve(kitchen, effort(4000))).toEqual(first);
    expect(first.lowerBound).toBeLessThan(first.makespan);
    expect(first.nodes).toBeLessThan(4200);
  }, 30_000);

  it("stops at the outer limit of time", () => {
    let ticks = 0;
    const elapsedMs = () => ticks++;
    const limited = { ...effort(1e9), elapsedMs, limitMs: 300 };
    expect(solve(seededKitchen(8, 8), limited).status).toBe("feasible");
    expect(ticks).toBeLessThan(1000);
  });

  it("has a plan for sixty batches, not proved", () => {
    const kitchen = seededKitchen(3, 60);
    const solution = solve(kitchen, effort(3000));
    expect(solution.status).toBe("feasible");
    expect(violations(kitchen, solution.starts)).toEqual([]);
    expect(solution.makespan).toBeLessThan(1.5 * solution.lowerBound);
  }, 30_000);

  it("says which lags contradict each other", () => {
    const { status, conflict } = solve(
      {
        activities: ["soak", "boil", "rest"].map((id) => ({ id, duration: 2, demands: {} })),
        lags: [
          { from: "soak", to: "boil", atLeast: 10 },
          { from: "boil", to: "soak", atLeast: -8 },
          { from: "boil", to: "rest", atLeast: 2 },
        ],
        capacities: {},
      },
      effort(),
    );
    expect(status).toBe("infeasible");
    expect(conflict?.activities.toSorted()).toEqual(["boil", "soak"]);
    expect(conflict?.lags.map((lag) => lag.atLeast).toSorted()).toEqual([-8, 10]);
  });

  it("refuses a malformed project by name", () => {
    const malformed = {
      activities: [{ id: "soak", duration: 1.5, demands: {} }],
      lags: [],
      capacities: {},
    };
    expect(() => solve(malformed, effort())).toThrow(/soak: 1.5 is not a whole number/);
  });
});
