import { describe, expect, it } from "vitest";
import { filterReading, newFilter, STUCK_MS } from "../../../src/kitchen/probe/probe-filter.ts";
import { readProbeLine } from "../../../src/kitchen/probe/probe-line.ts";
import {
  boilRule,
  covers,
  judgeReading,
  newWatching,
  pressureRule,
  thinnedSamples,
} from "../../../src/kitchen/probe/probe-rules.ts";
import { boilingPointF } from "../../../src/reckon/boiling.ts";
import { tally } from "./probe-judge.ts";

const ZONE = "America/Denver";
const every = (ms: number, from: number, to: number, value: (t: number) => number) => {
  const samples: { t: number; value: number }[] = [];
  for (let t = from; t <= to; t += ms) samples.push({ t, value: value(t) });
  return samples;
};

describe("a probe's line", () => {
  it.each([
    ["211.3F", { kind: "temperature", value: 211.3, decimals: 1 }],
    ["211.3", { kind: "temperature", value: 211.3, decimals: 1 }],
    ["100C", { kind: "temperature", value: 212, decimals: 0 }],
    ["93.5 °C", { kind: "temperature", decimals: 1 }],
    ["12.1psi", { kind: "pressure", value: 12.1 }],
    ["-0.2 psi", { kind: "pressure", value: -0.2 }],
    ["canner 211.3F", { where: "canner", value: 211.3 }],
    ["Brine pot: 180F", { where: "brine pot", value: 180 }],
    [
      "2027-08-14T14:03:11 canner 211.3F",
      { where: "canner", wallMs: Date.UTC(2027, 7, 14, 20, 3, 11) },
    ],
    ["2027-08-14T20:03:11Z,211.3F", { wallMs: Date.UTC(2027, 7, 14, 20, 3, 11) }],
  ])("%j is read", (line, expected) => {
    expect(readProbeLine(line, ZONE)).toMatchObject(expected);
  });

  it.each([
    "",
    "hello",
    "1970-01-01T00:00:07Z 199.4F",
    "canner",
    "211.3F and more",
    "NaN",
    "1e400F",
    "-196C",
    "1832F",
    "300psi",
    "2027-13-45T99:99:99 211F",
    "\u001b[2J211F",
    `${"x".repeat(41)} 211F`,
    `${" ".repeat(5000)}211F${" ".repeat(5000)}x`,
  ])("%j is none", (line) => {
    expect(readProbeLine(line, ZONE)).toBeUndefined();
  });
});

describe("the filter of a probe", () => {
  const probe = { kind: "temperature", decimals: 1 } as const;
  const noisy = (t: number) => 200 + ((t / 500) % 3) * 0.1;

  it("leaves out a spike and keeps the readings around it", () => {
    const filter = newFilter(0);
    for (const sample of every(500, 0, 5000, noisy)) filterReading(filter, sample, probe);
    expect(filterReading(filter, { t: 5500, value: 251 }, probe)).toEqual({ kind: "spike" });
    expect(filterReading(filter, { t: 6000, value: 200.1 }, probe).kind).toBe("good");
  });

  it("believes a new level that holds", () => {
    const filter = newFilter(0);
    for (const sample of every(500, 0, 5000, noisy)) filterReading(filter, sample, probe);
    const kinds = every(500, 5500, 9000, () => 191).map(
      (s) => filterReading(filter, s, probe).kind,
    );
    expect(kinds[0]).toBe("spike");
    expect(kinds.at(-1)).toBe("good");
  });

  it("calls a probe stuck if it wavered before, but not one that reads whole degrees", () => {
    const stuck = (decimals: number) => {
      const filter = newFilter(0);
      for (const sample of every(500, 0, 5000, noisy)) filterReading(filter, sample, probe);
      const long = every(1000, 6000, 6000 + STUCK_MS + 1000, () => 200);
      return long.map((s) => filterReading(filter, s, { ...probe, decimals }).kind).at(-1);
    };
    expect(stuck(1)).toBe("stuck");
    expect(stuck(0)).toBe("good");
  });
});

describe("the rules of a probe", () => {
  it("take their marks from the altitude", () => {
    expect(boilRule(6200).riseTo).toBeCloseTo(boilingPointF(6200), 1);
    expect(boilRule(0).riseTo - boilRule(6200).riseTo).toBeGreaterThan(10);
    expect(boilRule(6200, 200).fallBelow).toBe(198.5);
  });

  it("have a lower mark to lose by than to begin by", () => {
    for (const rule of [boilRule(6200), pressureRule(13)]) {
      expect(rule.fallBelow).toBeLessThan(rule.riseTo);
    }
  });

  it("give the first reading below the mark as the time of a loss", () => {
    const watching = newWatching();
    const rule = boilRule(6200);
    const seen = every(1000, 0, 90_000, (t) => (t < 60_000 ? 200.7 : 195))
      .map((sample) => judgeReading(watching, rule, sample))
      .filter((verdict) => verdict !== undefined);
    expect(seen.map((one) => one.kind)).toEqual(["reached", "lost"]);
    expect(seen[1]?.at).toBe(60_000);
  });

  it("know nothing across a hole", () => {
    const watching = newWatching();
    const samples = [
      ...every(1000, 0, 10_000, () => 200.4),
      ...every(1000, 60_000, 75_000, () => 200.4),
    ];
    const seen = samples.map((sample) => judgeReading(watching, boilRule(6200), sample));
    expect(seen.every((one) => one === undefined)).toBe(true);
  });

  it("vouch for a time only where readings cover all of it", () => {
    const rule = boilRule(6200);
    const held = every(5000, 0, 600_000, () => 200.5);
    expect(covers(held, rule, 60_000, 500_000)).toBe("held");
    expect(covers(held, rule, 60_000, 700_000)).toBe("not-covered");
    const hole = held.filter((one) => one.t < 200_000 || one.t > 230_000);
    expect(covers(hole, rule, 60_000, 500_000)).toBe("not-covered");
    const fell = held.map((one) =>
      one.t > 300_000 && one.t < 330_000 ? { ...one, value: 190 } : one,
    );
    expect(covers(fell, rule, 60_000, 500_000)).toBe("lost");
  });

  it("keep the lowest and the highest of each minute for the log", () => {
    const samples = every(500, 0, 600_000, (t) =>
      t === 123_000 ? 150 : t === 124_000 ? 240 : 200,
    );
    const kept = thinnedSamples(samples);
    expect(kept.length).toBeLessThanOrEqual(24);
    expect(Math.min(...kept.map((one) => one.value))).toBe(150);
    expect(Math.max(...kept.map((one) => one.value))).toBe(240);
  });

  it.each([
    "a steady boil",
    "the lid lifted for half a minute",
    "a burner that cycles",
    "steady pressure",
    "pressure with a cycling burner",
  ])("call no loss in %s", (scene) => {
    expect(tally(scene, 40).falseLosses).toBe(0);
  });

  it.each([
    "cold water added",
    "the flame out",
    "pressure that sinks",
    "pressure that dips for ten seconds",
  ])("miss no loss in %s", (scene) => {
    const one = tally(scene, 40);
    expect(one.missed).toBe(0);
    expect(one.lostAfter[1]).toBeLessThan(120);
    expect(one.falseLosses).toBe(0);
  });

  it("never take a simmer for a boil", () => {
    expect(tally("only a simmer", 60).falseSigns).toBe(0);
  });
});
