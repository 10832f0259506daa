import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  isUnit,
  parsePercent,
  parseQuantity,
  parseTemperatureSpan,
  readNumber,
} from "../../src/reckon/quantity.ts";
import type { QuantityKind } from "../../src/reckon/units.ts";
import { BASE_UNITS } from "../../src/reckon/units.ts";
import { good, wrong } from "./good-result.ts";

const EVERY = Object.keys(BASE_UNITS) as QuantityKind[];

describe("a quantity", () => {
  it.each([
    ["6200ft", "length", 6200],
    ["6,200 feet", "length", 6200],
    ["1890 m", "length", 6200.787],
    ["-200ft", "length", -200],
    ["203F", "temperature", 95],
    ["203 °F", "temperature", 95],
    ["203 degrees F", "temperature", 95],
    ["95C", "temperature", 95],
    ["-18 C", "temperature", -18],
    ["11psi", "pressure", 75.842],
    ["75kPa", "pressure", 75],
    ["24.9 inHg", "pressure", 84.321],
    ["12lb", "mass", 5443.108],
    ["12 lbs.", "mass", 5443.108],
    ["5 lb 4 oz", "mass", 2381.36],
    ["5.4kg", "mass", 5400],
    ["2L", "volume", 2000],
    ["3 1/2 cups", "volume", 828.059],
    ["3½ cups", "volume", 828.059],
    ["3-1/2 cups", "volume", 828.059],
    ["1 cup + 2 tbsp", "volume", 266.162],
    ["8 fl oz", "volume", 236.588],
    ["1 gal", "volume", 3785.412],
    ["2 quarts and 1 pint", "volume", 2365.882],
    ["1/4 tsp", "volume", 1.232],
    ["45min", "duration", 45],
    ["6h", "duration", 360],
    ["1h30min", "duration", 90],
    ["2500W", "power", 2500],
    ["9000 BTU/h", "power", 2637.636],
  ])("written %s is a %s of %d", (text, kind, value) => {
    const read = good(parseQuantity(text, EVERY, "here"));
    expect(read.kind).toBe(kind);
    expect(read.value).toBeCloseTo(value, 2);
  });

  it("keeps the unit as it was said", () => {
    expect(good(parseQuantity("3 1/2 Cups", EVERY, "here")).unit).toBe("Cups");
  });

  it("without a unit is an error that says what, where and how to fix it", () => {
    expect(wrong(parseQuantity("6200", ["length"], "--altitude"))).toBe(
      '--altitude: "6200" has no unit; write it with one, for example 6200ft or 1890m',
    );
  });

  it.each([
    ["", "nothing is said"],
    ["abc", "does not begin with a number"],
    ["5 parsecs", "not a unit known here"],
    ["1,5 kg", "is not clear"],
    ["1/0 cup", "does not begin with a number"],
    ["-3lb", "a weight cannot be negative"],
    ["−2 cups", "a volume cannot be negative"],
    ["-5min", "a length of time cannot be negative"],
    ["5 lb 2 cups", "is not one quantity"],
    ["5 lb 3", "has no unit"],
    ["200F 3F", "is not one quantity"],
    [`${"9".repeat(400)}lb`, "too long"],
  ])("written %j is an error: %s", (text, reason) => {
    expect(wrong(parseQuantity(text, EVERY, "--for"))).toContain(reason);
  });

  it("of another kind names what is needed", () => {
    expect(wrong(parseQuantity("12lb", ["length"], "--altitude"))).toBe(
      '--altitude: "12lb" is a weight; a height is wanted, for example 6200ft or 1890m',
    );
  });

  it("never throws, and errors stay on one short line", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 300 }), (text) => {
        const read = parseQuantity(text, EVERY, "--for");
        if (read.ok) expect(Number.isFinite(read.value.value)).toBe(true);
        else expect(read.error).toMatch(/^.{1,400}$/);
      }),
    );
  });
});

describe("numbers, spans, percents, units", () => {
  it("reads the number a text begins with, and leaves the rest", () => {
    expect(readNumber("3 1/2 cups")).toEqual({ value: 3.5, rest: " cups" });
    expect(readNumber("½ tsp")).toEqual({ value: 0.5, rest: " tsp" });
    expect(readNumber("heads")).toBeUndefined();
  });

  it("reads a difference of temperatures without the 32", () => {
    expect(good(parseTemperatureSpan("18F", "--z"))).toBeCloseTo(10, 10);
    expect(good(parseTemperatureSpan("10C", "--z"))).toBe(10);
  });

  it("refuses a percent outside its bounds", () => {
    const bounds = { least: 1, most: 10 };
    expect(good(parsePercent("5 %", bounds, "--strength"))).toBe(5);
    expect(good(parsePercent("5", bounds, "--strength"))).toBe(5);
    expect(wrong(parsePercent("50", bounds, "--strength"))).toContain("outside 1 to 10 %");
    expect(wrong(parsePercent("5lb", bounds, "--strength"))).toContain("not a percentage");
  });

  it("knows a unit from another word", () => {
    expect(["cups", "°F", "fl oz", "lb."].every(isUnit)).toBe(true);
    expect(["heads", "beans", ""].some(isUnit)).toBe(false);
  });
});
