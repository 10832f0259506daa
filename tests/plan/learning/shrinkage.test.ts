import { describe, expect, it } from "vitest";
import { expectNext, poolOf } from "../../../src/plan/learning/shrinkage.ts";

const logs = (...ratios: number[]) => ratios.map(Math.log);

/** Middle and ends as ratios to the plan, to four places. */
function ratios({ middle, low, high }: { middle: number; low: number; high: number }): number[] {
  return [middle, low, high].map((log) => Number(Math.exp(log).toFixed(4)));
}

describe("what is expected of a stage from few observations", () => {
  const slice = logs(1.5, 1.4, 1.7);
  const heat = logs(1.1);
  const pool = poolOf([slice, heat, []]);

  it("has the pool worked out by hand", () => {
    expect(pool.mean).toBeCloseTo(0.16949, 5);
    expect(pool.within).toBeCloseTo(0.0299, 4);
    expect(pool.freedom).toBe(6);
  });

  it("gives the computed middles and ranges, drawn together more where less is known", () => {
    expect(ratios(expectNext(slice, pool))).toEqual([1.4757, 1.1107, 1.9608]);
    expect(ratios(expectNext(heat, pool))).toEqual([1.1267, 0.8096, 1.568]);
    expect(ratios(expectNext([], pool))).toEqual([1.1847, 0.724, 1.9386]);
  });

  it("is the plan itself, within a wide range, before anything was seen", () => {
    const nothing = expectNext([], poolOf([]));
    expect(nothing.middle).toBe(0);
    expect(Math.exp(nothing.high)).toBeGreaterThan(1.5);
    expect(Math.exp(nothing.high)).toBeLessThan(2.2);
  });

  it("takes the median of many, so that one bad day moves it little", () => {
    const steady = logs(1.2, 1.25, 1.2, 1.15, 1.2, 1.22, 1.18, 1.2);
    const withBadDay = [...steady.slice(1), Math.log(2.9)];
    const before = expectNext(steady, poolOf([steady])).middle;
    const after = expectNext(withBadDay, poolOf([withBadDay])).middle;
    expect(Math.abs(after - before)).toBeLessThan(0.03);
  });
});
