import { describe, expect, it } from "vitest";
import { friedman } from "../../src/reckon/statistics/friedman.ts";
import {
  fewestForPreference,
  pairedPreferenceP,
  wilsonInterval,
} from "../../src/reckon/statistics/preference.ts";
import { studentTQuantile } from "../../src/reckon/statistics/student-t.ts";
import { good } from "../reckon/good-result.ts";

describe("paired preference", () => {
  // ISO 5495 table A.1, fewest right answers, one-sided, at alpha 0.2, 0.1, 0.05, 0.01, 0.001:
  // a two-sided test at twice the alpha.
  it.each([
    [10, [7, 8, 9, 10, 10]],
    [12, [8, 9, 10, 11, 12]],
    [15, [10, 11, 12, 13, 14]],
    [20, [13, 14, 15, 16, 18]],
    [40, [24, 25, 26, 28, 31]],
    [60, [34, 36, 37, 40, 43]],
  ])("needs ISO 5495's number of %d tasters", (tasters, fewest) => {
    const alphas = [0.2, 0.1, 0.05, 0.01, 0.001];
    expect(alphas.map((alpha) => fewestForPreference(tasters, 2 * alpha))).toEqual(fewest);
  });

  it.each([
    [6, 6],
    [7, 7],
    [8, 8],
    [9, 8],
    [10, 9],
    [11, 10],
    [12, 10],
    [15, 12],
    [20, 15],
  ])("asks of %d tasters, two-sided at 0.05, the binomial's %d", (tasters, fewest) => {
    expect(fewestForPreference(tasters, 0.05)).toBe(fewest);
  });

  it("can show nothing with five tasters or fewer", () => {
    for (let tasters = 1; tasters <= 5; tasters++) {
      expect(fewestForPreference(tasters, 0.05)).toBeNull();
    }
  });

  it("calls four of six chance", () => {
    expect(pairedPreferenceP(4, 6)).toBeCloseTo(0.6875, 10);
    expect(pairedPreferenceP(2, 6)).toBeCloseTo(0.6875, 10);
    expect(pairedPreferenceP(3, 6)).toBe(1);
  });
});

describe("Wilson's interval", () => {
  // Newcombe, Statistics in Medicine 17, 1998, 95 % score intervals (from memory).
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])("of %d in %d is Newcombe's", (successes, trials, low, high) => {
    const [least, most] = wilsonInterval(successes, trials);
    expect(Math.abs(least - low)).toBeLessThan(1e-4);
    expect(Math.abs(most - high)).toBeLessThan(1e-4);
  });

  it.each([
    [10, 10, 0.7225, 1],
    [9, 10, 0.5958, 0.9821],
    [8, 10, 0.4902, 0.9433],
    [18, 20, 0.699, 0.9721],
    [45, 50, 0.7864, 0.9565],
    [380, 400, 0.924, 0.9674],
  ])("of %d seeds in %d agrees with another library", (successes, trials, low, high) => {
    const [least, most] = wilsonInterval(successes, trials);
    expect(Math.abs(least - low)).toBeLessThan(1e-4);
    expect(Math.abs(most - high)).toBeLessThan(1e-4);
  });
});

/** Tasters' ranks whose Friedman statistic is a wanted one, by trying; undefined where none. */
function ranksWith(things: number, tasters: number, wanted: number): number[][] | undefined {
  const first = Array.from({ length: things }, (_, index) => index + 1);
  const orders: number[][] = [];
  const walk = (taken: number[], left: number[]): void => {
    if (left.length === 0) orders.push(taken);
    left.forEach((one, index) => {
      walk([...taken, one], left.toSpliced(index, 1));
    });
  };
  walk([], first);
  const start = { rows: [first], sums: first };
  let now = new Map([[first.join(), start]]);
  for (let taster = 1; taster < tasters; taster++) {
    const next = new Map<string, typeof start>();
    for (const { rows, sums } of now.values()) {
      for (const order of orders) {
        const after = sums.map((sum, index) => sum + (order[index] ?? 0));
        const key = [...after].sort((a, b) => a - b).join();
        if (!next.has(key)) next.set(key, { rows: [...rows, order], sums: after });
      }
    }
    now = next;
  }
  for (const { rows, sums } of now.values()) {
    const squares = sums.reduce((total, sum) => total + sum * sum, 0);
    const scale = 12 / (tasters * things * (things + 1));
    const statistic = scale * squares - 3 * tasters * (things + 1);
    if (Math.abs(statistic - wanted) < 0.006) return rows;
  }
  return undefined;
}

describe("Friedman's exact test", () => {
  // Printed critical values (tables of Friedman's statistic): things, tasters, 5 % value. The
  // value itself has p at or under 0.05.
  it.each([
    [3, 3, 6],
    [3, 4, 6.5],
    [3, 5, 6.4],
    [3, 6, 7],
    [3, 7, 7.143],
    [3, 8, 6.25],
    [3, 9, 6.222],
    [3, 10, 6.2],
    [4, 2, 6],
    [4, 3, 7.4],
    [4, 4, 7.8],
    [4, 5, 7.8],
    [4, 6, 7.6],
    [4, 7, 7.8],
    [4, 8, 7.65],
    [5, 3, 8.533],
    [5, 4, 8.8],
  ])("for %d things and %d tasters finds %d significant at 5 %%", (things, tasters, critical) => {
    const rows = ranksWith(things, tasters, critical);
    expect(rows).toBeDefined();
    const { statistic, p } = good(friedman(rows ?? []));
    expect(Math.abs(statistic - critical)).toBeLessThan(0.006);
    expect(p).toBeLessThanOrEqual(0.05);
    // The chi-square table would not agree for so few tasters; the exact p is near the limit.
    expect(p).toBeGreaterThan(0.005);
  });

  it.each([
    [3, 4, 8],
    [3, 5, 8.4],
    [3, 6, 9],
    [3, 7, 8.857],
    [3, 8, 9],
    [3, 9, 9.556],
    [3, 10, 9.6],
    [4, 3, 9],
    [4, 4, 9.6],
    [4, 5, 9.96],
    [4, 6, 10.2],
    [4, 7, 10.54],
    [4, 8, 10.5],
  ])("for %d things and %d tasters finds %d significant at 1 %%", (things, tasters, critical) => {
    const { p } = good(friedman(ranksWith(things, tasters, critical) ?? []));
    expect(p).toBeLessThanOrEqual(0.01);
  });
});

describe("Student's t", () => {
  // Printed table, 95th percentile by degrees of freedom (from memory).
  it.each([
    [1, 6.314],
    [2, 2.92],
    [4, 2.132],
    [5, 2.015],
    [7, 1.895],
    [10, 1.812],
    [30, 1.697],
  ])("has the printed 95th percentile at %d degrees of freedom", (freedom, t) => {
    expect(studentTQuantile(0.95, freedom)).toBeCloseTo(t, 3);
  });
});
