import { describe, expect, it } from "vitest";
import { lethality, lethalRate } from "../../src/reckon/lethality.ts";
import { celsiusOf } from "../../src/reckon/units.ts";
import { good } from "../reckon/good-result.ts";

const fahrenheit = (temperatureF: number, zF: number) => ({
  temperatureC: celsiusOf(temperatureF),
  zC: (zF * 5) / 9,
});

describe("lethal rates", () => {
  // Canning texts (general method tables): reference 121.1 C with z 10 C.
  it.each([
    [100, 0.0078],
    [110, 0.0776],
    [115, 0.2455],
    [118, 0.4898],
    [120, 0.7762],
    [122, 1.2303],
  ])("at %d C is as printed", (celsius, rate) => {
    expect(lethalRate(celsius, { temperatureC: 121.1, zC: 10 })).toBeCloseTo(rate, 4);
  });

  // Reference 250 F with z 18 F.
  it.each([
    [230, 0.0774],
    [235, 0.1468],
    [240, 0.2783],
    [245, 0.5275],
  ])("at %d F is as printed", (f, rate) => {
    expect(lethalRate(celsiusOf(f), fahrenheit(250, 18))).toBeCloseTo(rate, 4);
  });
});

/**
 * Breidt and others, Food Protection Trends 34(3), 2014, table 4: minutes for a 5-log reduction
 * in acidified foods of pH 4.1 to 4.6, 141 to 180 F, one row a degree.
 */
const FIVE_LOG = [
  77.8, 67.7, 59.0, 51.4, 44.8, 39.0, 34.0, 29.6, 25.8, 22.4, 19.5, 17.0, 14.8, 12.9, 11.2, 9.8,
  8.5, 7.4, 6.5, 5.6, 4.9, 4.3, 3.7, 3.2, 2.8, 2.5, 2.1, 1.9, 1.6, 1.4, 1.2, 1.1, 0.9, 0.8, 0.7,
  0.6, 0.5, 0.5, 0.4, 0.4,
];

describe("the published 5-log table", () => {
  it("is reproduced in all its printed digits by F160 of 5.638 min and z of 16.67 F", () => {
    FIVE_LOG.forEach((printed, index) => {
      const minutes = 5.638 / lethalRate(celsiusOf(141 + index), fahrenheit(160, 16.67));
      expect(minutes.toFixed(1)).toBe(printed.toFixed(1));
    });
  });

  it("holds for a log at each printed temperature for the printed minutes", () => {
    FIVE_LOG.forEach((minutes, index) => {
      const temperatureC = celsiusOf(141 + index);
      const log = [
        { minutes: 0, temperatureC },
        { minutes: minutes / 2, temperatureC },
        { minutes, temperatureC },
      ];
      const shown = good(lethality(log, fahrenheit(160, 16.67))).value;
      // The printed tenth of a minute, at the rate of that temperature.
      const tenth = 0.05 * lethalRate(temperatureC, fahrenheit(160, 16.67));
      expect(Math.abs(shown - 5.638)).toBeLessThan(tenth + 0.01);
    });
  });
});

describe("held temperatures", () => {
  // 30 min at 180 F, the pasteurization of cucumber pickles, and 15 min at 165 F: worked out.
  it.each([
    [30, 180, 16.7, 473],
    [30, 180, 19.5, 318],
    [15, 165, 19.5, 27.1],
  ])("%d min at %d F with z %d F", (minutes, f, z, expected) => {
    const temperatureC = celsiusOf(f);
    const log = [
      { minutes: 0, temperatureC },
      { minutes, temperatureC },
    ];
    const shown = good(lethality(log, fahrenheit(160, z))).value;
    expect(Math.abs(shown / expected - 1)).toBeLessThan(0.002);
  });
});
