import { describe, expect, it } from "vitest";
import { cupsOf, parseAmount } from "../../src/recipe/amount.ts";
import { formatMinutes, parseDuration, parseWindow } from "../../src/recipe/duration.ts";
import { jarSizeOf } from "../../src/recipe/jar-volume.ts";

describe("amounts", () => {
  it.each([
    ["4 1/2 cups", { low: 4.5, high: 4.5, unit: "cup", kind: "volume" }],
    ["1/4 tsp", { low: 0.25, unit: "tsp", kind: "volume" }],
    ["8 to 16 heads", { low: 8, high: 16, unit: "head", kind: "count" }],
    ["12 1/4 lb", { low: 12.25, unit: "lb", kind: "mass" }],
    ["2", { low: 2, unit: "", kind: "count" }],
  ])("%s", (text, parts) => {
    expect(parseAmount(text)).toMatchObject(parts);
  });

  it.each([
    "",
    "some",
    "0 cups",
    "-1 cup",
    "1e9 cups",
    "5 to 4 cups",
    "3 min",
    "1/0 cup",
    "NaN cups",
  ])("%s is none", (text) => {
    expect(parseAmount(text)).toBeUndefined();
  });

  it("cups are taken from volumes only", () => {
    expect(cupsOf("1 quart")).toBeCloseTo(4);
    expect(cupsOf("2 tbsp")).toBeCloseTo(0.125);
    expect(cupsOf("3 lb")).toBeUndefined();
  });
});

describe("durations", () => {
  it.each([
    ["10 min", 10],
    ["3 h", 180],
    ["1 h 30 min", 90],
    ["3 wk", 30_240],
    ["1.5 h", 90],
  ])("%s", (text, minutes) => {
    expect(parseDuration(text)).toBe(minutes);
  });

  it.each(["", "0 min", "-3 h", "3", "3 parsecs", "999 years", "1e3 min", "min"])(
    "%s is none",
    (text) => {
      expect(parseDuration(text)).toBeUndefined();
    },
  );

  it("windows go from low to high", () => {
    expect(parseWindow("3 h to 4 h")).toEqual({ minMinutes: 180, maxMinutes: 240 });
    expect(parseWindow("up to 1 year")).toEqual({ minMinutes: 0, maxMinutes: 525_600 });
    expect(parseWindow("4 h to 3 h")).toBeUndefined();
    expect(parseWindow("1 h to 2 h to 3 h")).toBeUndefined();
  });

  it("are said in units that read well", () => {
    expect([45, 60, 90, 180, 40_320, 525_600, 2880].map(formatMinutes)).toEqual([
      "45 min",
      "1 h",
      "1 h 30 min",
      "3 h",
      "4 weeks",
      "1 year",
      "2 days",
    ]);
  });
});

describe("jar sizes", () => {
  it.each([
    ["pint", "pint"],
    ["Quarts", "quart"],
    ["half pint", "half-pint"],
    ["qt", "quart"],
  ])("%s", (text, size) => {
    expect(jarSizeOf(text)).toBe(size);
  });

  it("others are none", () => {
    expect(["bucket", "", "constructor"].map(jarSizeOf)).toEqual([undefined, undefined, undefined]);
  });
});
