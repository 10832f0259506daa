import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Project, Schedule } from "../../../src/plan/solver/model.ts";
import { seededRandom } from "../../../src/plan/solver/random.ts";
import { lengthOf, violations } from "../../../src/plan/solver/verify.ts";
import { randomProject } from "./random-projects.ts";

/** Sound or not, by looking at every minute. */
function sound(project: Project, starts: Schedule): boolean {
  const at = (id: string) => starts[id]!;
  for (const lag of project.lags) if (at(lag.to) < at(lag.from) + lag.atLeast) return false;
  for (const { id, earliest = 0, latest = 99, duration, outsideEnd } of project.activities) {
    if (at(id) < earliest || at(id) > latest) return false;
    const counted = project.deadline !== undefined && !outsideEnd;
    if (counted && at(id) + duration > project.deadline!) return false;
  }
  for (const [resource, capacity] of Object.entries(project.capacities)) {
    for (let minute = 0; minute < 60; minute++) {
      let held = 0;
      for (const { id, duration, demands } of project.activities)
        if (at(id) <= minute && minute < at(id) + duration) held += demands[resource] ?? 0;
      if (held > capacity) return false;
    }
  }
  return true;
}

describe("the checker of plans", () => {
  it("finds a violation exactly where a minute-by-minute look does", () => {
    const seen = { sound: 0, broken: 0 };
    const any = fc.tuple(fc.integer(), fc.array(fc.nat(20), { minLength: 4, maxLength: 4 }));
    fc.assert(
      fc.property(any, ([seed, figures]) => {
        const shape = { activities: [1, 4] as [number, number], longest: 3, lags: 3 };
        const project = randomProject(seededRandom(seed), shape);
        const starts = Object.fromEntries(
          project.activities.map(({ id }, i) => [id, figures[i] ?? 0]),
        );
        const truth = sound(project, starts);
        seen[truth ? "sound" : "broken"] += 1;
        expect(violations(project, starts).length === 0).toBe(truth);
      }),
      { numRuns: 3000, seed: 814 },
    );
    expect(Math.min(seen.sound, seen.broken)).toBeGreaterThan(100);
  });

  it("names what is broken", () => {
    const project: Project = {
      activities: [
        { id: "fill", duration: 4, demands: { hands: 1 } },
        { id: "slice", duration: 6, demands: { hands: 1 } },
      ],
      lags: [{ from: "slice", to: "fill", atLeast: 6 }],
      capacities: { hands: 1 },
      deadline: 9,
    };
    expect(violations(project, { slice: 0, fill: 5 })).toEqual([
      "fill is 5 after slice, not at least 6",
      "hands holds 2 of 1 at 5",
    ]);
    expect(violations(project, { slice: 0, fill: 6 })).toEqual([
      "fill ends at 10, after the deadline 9",
    ]);
    expect(violations(project, { slice: 0 })).toEqual(["fill has no whole start: undefined"]);
    expect(lengthOf(project, { slice: 0, fill: 6 })).toBe(10);
  });
});
