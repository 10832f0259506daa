import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lethality, lethalRate } from "../../src/reckon/lethality.ts";
import type { LogReading } from "../../src/reckon/temperature-log.ts";
import { good, wrong } from "./good-result.ts";

const ACID = { temperatureC: 93.3, zC: 8.9 };

function logOf(minutes: number[], temperatures: number[]): LogReading[] {
  return minutes.map((at, index) => ({ minutes: at, temperatureC: temperatures[index] ?? 0 }));
}

const IRREGULAR = logOf(
  [0, 4, 6, 11, 12, 19, 25, 33, 40, 41, 47, 60],
  [20, 55, 62, 78, 80, 88, 91, 93, 93.5, 92, 80, 50],
);

/** The rate summed over very small steps of the straight lines between readings. */
function summed(log: readonly LogReading[]): number {
  let total = 0;
  const steps = 2000;
  for (let i = 1; i < log.length; i++) {
    const [from, to] = [log[i - 1], log[i]];
    if (!from || !to) continue;
    const step = (to.minutes - from.minutes) / steps;
    for (let k = 0; k < steps; k++) {
      const share = (k + 0.5) / steps;
      const t = from.temperatureC + share * (to.temperatureC - from.temperatureC);
      total += step * lethalRate(t, ACID);
    }
  }
  return total;
}

describe("a short log", () => {
  const at200 = (minutes: number, temperatureC = 93.3) => ({ minutes, temperatureC });

  it("counts nothing across a gap among three readings", () => {
    const shown = good(
      lethality(
        [0, 1, 60].map((minute) => at200(minute)),
        ACID,
      ),
    );
    expect(shown.value).toBeCloseTo(lethalRate(93.3, ACID), 6);
    expect(shown.notes.join()).toContain("gap of 59.0 min");
  });

  it("names a spike next to its end", () => {
    const log = [0, 1, 2, 3, 4].map((minute) => at200(minute, minute === 3 ? 115 : 93.3));
    const shown = good(lethality(log, ACID));
    expect(shown.value).toBeCloseTo(4 * lethalRate(93.3, ACID), 6);
    expect(shown.notes.join()).toContain("at minute 3.0 is unlike its neighbors");
  });
});

describe("the lethality of a log", () => {
  it("is the integral an adaptive quadrature found, to ten digits", () => {
    expect(good(lethality(IRREGULAR, ACID)).value).toBeCloseTo(18.0387237278013, 9);
  });

  it("agrees with a sum over small steps on any log", () => {
    const temperature = fc.double({ min: 20, max: 100, noNaN: true });
    fc.assert(
      fc.property(fc.array(temperature, { minLength: 3, maxLength: 4 }), (temperatures) => {
        const log = temperatures.map((temperatureC, at) => ({ minutes: at * 2, temperatureC }));
        const exact = good(lethality(log, ACID)).value;
        expect(Math.abs(exact - summed(log))).toBeLessThan(1e-4 * Math.max(1, exact));
      }),
      { numRuns: 50 },
    );
  });

  // An exponential heating curve (from, final, time constant, minutes) has a closed form.
  it.each([
    [20, 100, 12, 60, 103.747324],
    [60, 100, 15, 30, 9.85848],
    [20, 97, 20, 90, 59.416588],
  ])("comes close to the closed form heating from %d to %d C", (from, final, tau, end, exact) => {
    const log = Array.from({ length: end * 20 + 1 }, (_, index) => {
      const minutes = index / 20;
      return { minutes, temperatureC: final - (final - from) * Math.exp(-minutes / tau) };
    });
    const { value } = good(lethality(log, ACID));
    expect(Math.abs(value / exact - 1)).toBeLessThan(1e-4);
    // A chord under a rising curve counts too little, never too much.
    expect(value).toBeLessThanOrEqual(exact);
  });

  it("is split into heating and cooling", () => {
    const { value, heatingMinutes, coolingMinutes } = good(lethality(IRREGULAR, ACID));
    expect(heatingMinutes + coolingMinutes).toBeCloseTo(value, 9);
    expect(coolingMinutes).toBeGreaterThan(1);
  });
});

describe("what was not measured", () => {
  const steady = Array.from({ length: 41 }, (_, minutes) => ({ minutes, temperatureC: 93.3 }));

  it("counts as nothing: a gap is named and left out of the value", () => {
    const log = steady.filter(({ minutes }) => minutes <= 10 || minutes >= 25);
    const shown = good(lethality(log, ACID));
    expect(shown.value).toBeCloseTo(25, 9);
    expect(shown.range?.[1]).toBeCloseTo(40, 9);
    expect(shown.notes.join(" ")).toContain("gap of 15.0 min from minute 10.0");
  });

  it("a spike is named and adds nothing", () => {
    const log = steady.map((one) => (one.minutes === 20 ? { ...one, temperatureC: 125 } : one));
    const shown = good(lethality(log, ACID));
    expect(shown.value).toBeCloseTo(40, 9);
    expect(shown.notes.join(" ")).toContain("257.0 F at minute 20.0 is unlike its neighbors");
  });

  it("a dip is named and still counts against the log", () => {
    const log = steady.map((one) => (one.minutes === 20 ? { ...one, temperatureC: 40 } : one));
    const shown = good(lethality(log, ACID));
    expect(shown.value).toBeLessThan(38.5);
    expect(shown.range?.[1]).toBeCloseTo(40, 9);
  });

  it("two readings hours apart show nothing between them", () => {
    const log = logOf([0, 180], [93.3, 93.3]);
    expect(good(lethality(log, ACID)).value).toBe(0);
  });

  it("many gaps are summed up in a few notes", () => {
    const log = Array.from({ length: 40 }, (_, index) => ({
      minutes: index + 30 * Math.floor(index / 4),
      temperatureC: 90,
    }));
    const { notes } = good(lethality(log, ACID));
    expect(notes.filter((note) => note.startsWith("gap"))).toHaveLength(5);
    expect(notes.join(" ")).toContain("and 4 more gaps");
  });
});

describe("the words", () => {
  it("say it is for the record, and approve nothing", () => {
    const { notes, source } = good(lethality(IRREGULAR, ACID));
    expect(notes[0]).toBe("estimate for the record; never a reason to change a tested process");
    expect([...notes, source].join(" ")).not.toMatch(/adequate|sufficient|safe|equivalent|enough/);
  });

  it("refuse an impossible z or reference", () => {
    expect(wrong(lethality(IRREGULAR, { ...ACID, zC: 0 }))).toContain("--z");
    expect(wrong(lethality(IRREGULAR, { ...ACID, temperatureC: 900 }))).toContain("--reference");
  });
});
