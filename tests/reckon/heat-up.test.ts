import { describe, expect, it } from "vitest";
import {
  BURNER_EFFICIENCY,
  expectedEfficiency,
  learnEfficiency,
  priorEfficiency,
} from "../../src/reckon/burner.ts";
import type { Heating } from "../../src/reckon/heat-up.ts";
import { heatCapacityJPerK, heatUp, heatUpMinutes, stallsAtC } from "../../src/reckon/heat-up.ts";
import { good, wrong } from "./good-result.ts";

/** Temperature after some minutes, by small steps of the heat balance. */
function marched(heating: Heating, minutes: number): number {
  const stepS = 0.05;
  let celsius = heating.fromC;
  for (let s = 0; s < minutes * 60; s += stepS) {
    const gainW = heating.efficiency * heating.powerW;
    const lossW = heating.lossWPerK * (celsius - heating.roomC);
    celsius += ((gainW - lossW) * stepS) / heating.capacityJPerK;
  }
  return celsius;
}

const plain: Heating = {
  capacityJPerK: heatCapacityJPerK({ waterG: 12_000, potG: 3000 }),
  fromC: 15,
  toC: 100,
  powerW: 1500,
  efficiency: 0.75,
  lossWPerK: 6,
  roomC: 20,
};

describe("time to come to a boil", () => {
  it("of 12 L in a 3 kg pot on 1,500 W is what a numerical integrator found", () => {
    expect(heatUpMinutes(plain)).toBeCloseTo(83.53, 1);
  });

  it("ends at the temperature wanted, by stepping through the heat balance", () => {
    for (const heating of [plain, { ...plain, powerW: 2400, efficiency: 0.42, fromC: 60 }]) {
      expect(marched(heating, heatUpMinutes(heating))).toBeCloseTo(heating.toC, 1);
    }
  });

  it("is never where losses eat the heat, and the stall is named", () => {
    const weak = { ...plain, powerW: 600, efficiency: 0.4, lossWPerK: 4 };
    expect(heatUpMinutes(weak)).toBe(Number.POSITIVE_INFINITY);
    expect(stallsAtC(weak)).toBeCloseTo(80, 9);
  });

  it("without losses is energy over power", () => {
    const exact = (plain.capacityJPerK * 85) / (0.75 * 1500) / 60;
    expect(heatUpMinutes({ ...plain, lossWPerK: 0 })).toBeCloseTo(exact, 9);
  });
});

describe("the estimate", () => {
  const question = { pot: { waterG: 8000 }, fromC: 15, powerW: 2500, altitudeFt: 6200 };

  it("holds the value inside its range, and no burner beats all its power", () => {
    const { value, range, estimate } = good(heatUp(question));
    const atBest = (8000 * 4.186 * (93.5 - 15)) / 2500 / 60;
    expect(estimate).toBe(true);
    expect(range?.[0]).toBeGreaterThan(atBest);
    expect(range?.[0]).toBeLessThan(value);
    expect(range?.[1]).toBeGreaterThan(value);
  });

  it("is shorter in the mountains, on induction, and for less", () => {
    const { value } = good(heatUp(question));
    expect(good(heatUp({ ...question, altitudeFt: 0 })).value).toBeGreaterThan(value);
    expect(good(heatUp({ ...question, burner: "induction" })).value).toBeLessThan(value);
    expect(good(heatUp({ ...question, toC: 80 })).value).toBeLessThan(value);
  });

  it("narrows with each boil that was timed", () => {
    const width = (seen: number[]) => {
      const learned = learnEfficiency(priorEfficiency(BURNER_EFFICIENCY.gas), seen);
      const [low, high] = good(heatUp({ ...question, learned })).range ?? [0, 0];
      return Math.log(high / low);
    };
    expect(width([0.38, 0.37])).toBeLessThan(width([0.38]));
    expect(width([0.38])).toBeLessThan(width([]));
  });

  it.each([
    [{ powerW: 0 }, "--power"],
    [{ powerW: 1e6 }, "--power"],
    [{ pot: { waterG: 0 } }, "--water"],
    [{ fromC: -5 }, "--from"],
    [{ fromC: 99 }, "--from"],
    [{ toC: 110 }, "--to"],
    [{ toC: 5 }, "--to"],
    [{ altitudeFt: 40_000 }, "--altitude"],
  ])("refuses %j", (change, where) => {
    expect(wrong(heatUp({ ...question, ...change }))).toContain(where);
  });

  it("says no to a burner that cannot, with where it stalls", () => {
    const weak = heatUp({ ...question, powerW: 300, burner: "gas" });
    expect(weak).toMatchObject({ ok: false, refused: true });
    expect(wrong(weak)).toContain("stalls at about");
  });
});

describe("a burner learned from its boils", () => {
  // Checked against another program's posterior and against numerical integration.
  it.each([
    [[], 0.42, 0.2925, 0.6031],
    [[0.36], 0.3888, 0.2907, 0.5201],
    [[0.36, 0.38], 0.3859, 0.3029, 0.4916],
    [[0.36, 0.38, 0.35], 0.3766, 0.3016, 0.4702],
    [[0.36, 0.38, 0.35, 0.37, 0.36], 0.3727, 0.3097, 0.4484],
  ])("after %j is believed to give %d", (seen, middle, low, high) => {
    const expected = expectedEfficiency(learnEfficiency(priorEfficiency(0.42), seen));
    expect(expected.middle).toBeCloseTo(middle, 4);
    expect(expected.low).toBeCloseTo(low, 4);
    expect(expected.high).toBeCloseTo(high, 4);
  });

  it("does not depend on the order, or on whether logs come one by one", () => {
    const prior = priorEfficiency(0.42);
    const atOnce = learnEfficiency(prior, [0.36, 0.38, 0.35]);
    const oneByOne = [0.35, 0.36, 0.38].reduce((now, one) => learnEfficiency(now, [one]), prior);
    expect(oneByOne.mu).toBeCloseTo(atOnce.mu, 12);
    expect(oneByOne.b).toBeCloseTo(atOnce.b, 12);
    expect(atOnce.mu).toBeCloseTo(-0.97664, 5);
    expect(atOnce.b).toBeCloseTo(0.03849, 5);
  });
});
