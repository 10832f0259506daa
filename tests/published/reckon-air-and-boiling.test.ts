import psychrolib from "psychrolib";
import { describe, expect, it } from "vitest";
import {
  airPressure,
  altitudeOfPressureFt,
  standardPressureKpa,
} from "../../src/reckon/atmosphere.ts";
import {
  altitudeFromBoil,
  boilingPointAtAltitude,
  boilingPointAtPressure,
  boilingPointF,
  jellingPoint,
} from "../../src/reckon/boiling.ts";
import { saturationPressureKpa, saturationTemperatureC } from "../../src/reckon/saturation.ts";
import { FT_PER_M, fahrenheitOf } from "../../src/reckon/units.ts";
import { good } from "../reckon/good-result.ts";

describe("water's saturation line, IAPWS-IF97", () => {
  it.each([
    [300, 0.353658941e-2],
    [500, 0.263889776e1],
    [600, 0.123443146e2],
  ])("gives table 35's pressure at %d K to its last digit", (kelvin, megapascal) => {
    expect(saturationPressureKpa(kelvin - 273.15) / 1000 / megapascal).toBeCloseTo(1, 8);
  });

  it.each([
    [0.1, 372.755919],
    [1, 453.035632],
    [10, 584.149488],
  ])("gives table 36's temperature at %d MPa to its last digit", (megapascal, kelvin) => {
    expect(saturationTemperatureC(megapascal * 1000) + 273.15).toBeCloseTo(kelvin, 5);
  });
});

describe("standard air", () => {
  // US Standard Atmosphere 1976, geopotential height in m and pressure in Pa; from memory of the
  // table, the digits confirmed by the ASHRAE formula below.
  it.each([
    [-400, 106223],
    [0, 101325],
    [500, 95461],
    [1000, 89875],
    [1500, 84556],
    [2000, 79495],
    [3000, 70109],
    [4000, 61640],
  ])("has the 1976 table's pressure at %d m", (metres, pascal) => {
    expect(Math.abs(standardPressureKpa(metres * FT_PER_M) * 1000 - pascal)).toBeLessThan(1);
  });

  // ASHRAE Handbook, Fundamentals, table 1 of the psychrometrics chapter: psia by feet. The row
  // of 4,000 ft is left out: a copy prints 12.682 for 12.692.
  it.each([
    [-1000, 15.236],
    [0, 14.696],
    [1000, 14.175],
    [2000, 13.664],
    [3000, 13.173],
    [5000, 12.23],
    [6000, 11.778],
    [7000, 11.341],
    [8000, 10.914],
    [9000, 10.506],
    [10000, 10.108],
  ])("has ASHRAE's printed pressure at %d ft", (feet, psia) => {
    expect(Math.abs(good(airPressure(feet)).psi - psia)).toBeLessThan(0.004);
  });

  it("agrees with ASHRAE's formulas at every 100 ft from -1,000 to 10,000", () => {
    psychrolib.SetUnitSystem(psychrolib.SI);
    for (let feet = -1000; feet <= 10_000; feet += 100) {
      const pascal = psychrolib.GetStandardAtmPressure(feet / FT_PER_M);
      expect(Math.abs(standardPressureKpa(feet) * 1000 - pascal)).toBeLessThan(1);
      const boilC = good(boilingPointAtAltitude(feet)).celsius;
      // Hyland and Wexler's saturation line lies within 0.1 % of IF97's here: 0.03 C.
      expect(Math.abs(psychrolib.GetSatVapPres(boilC) / pascal - 1)).toBeLessThan(0.001);
    }
  });

  it("gives back the altitude whose pressure it is", () => {
    for (let feet = -1500; feet <= 16_500; feet += 500) {
      expect(altitudeOfPressureFt(standardPressureKpa(feet))).toBeCloseTo(feet, 6);
    }
  });
});

describe("boiling points", () => {
  it("is 99.974 C, not 100, at 101,325 Pa", () => {
    // IAPWS-IF97; the Wagner and Pruss equation gives the same to 0.001.
    expect(good(boilingPointAtPressure(101.325)).celsius).toBeCloseTo(99.9743, 3);
  });

  // The altitude table long printed in food preservation texts. Its own page gives the formula
  // behind it, an atmosphere of one temperature, which runs ever warmer than the standard one:
  // 0.05 F at the sea, 1.03 F at 10,000 ft.
  it.each([
    [0, 212.0],
    [1000, 210.2],
    [2000, 208.5],
    [3000, 206.7],
    [4000, 204.9],
    [5000, 203.2],
    [6000, 201.5],
    [7000, 199.8],
    [8000, 198.1],
    [9000, 196.4],
    [10000, 194.7],
  ])("lies under the printed canning table at %d ft by no more than its own fault", (feet, f) => {
    const under = f - boilingPointF(feet);
    expect(under).toBeGreaterThan(0);
    expect(under).toBeLessThan(0.1 + 0.1 * (feet / 1000));
  });

  // Worked out from IF97 and the 1976 atmosphere by another program: feet, F.
  it.each([
    [0, 211.95],
    [1000, 210.13],
    [2000, 208.31],
    [3000, 206.48],
    [4000, 204.66],
    [5000, 202.83],
    [6000, 201.0],
    [7000, 199.17],
    [8000, 197.34],
    [9000, 195.5],
    [10000, 193.67],
  ])("agrees with an independent reckoning at %d ft", (feet, f) => {
    expect(Math.abs(boilingPointF(feet) - f)).toBeLessThan(0.02);
  });

  // Metres for a measured boil in C, worked out by another program.
  it.each([
    [99.5, 143],
    [99, 293],
    [98, 594],
    [97, 895],
    [96, 1195],
    [95, 1495],
    [93, 2095],
    [90, 2993],
  ])("puts a boil at %d C at the right height", (celsius, metres) => {
    const feet = good(altitudeFromBoil(fahrenheitOf(celsius))).value;
    expect(Math.abs(feet / FT_PER_M - metres)).toBeLessThan(1.5);
  });

  it("falls by 1.8 to 2 F for each 1,000 ft, as extension texts say", () => {
    for (let feet = 0; feet < 10_000; feet += 1000) {
      const fall = boilingPointF(feet) - boilingPointF(feet + 1000);
      expect(fall).toBeGreaterThan(1.8);
      expect(fall).toBeLessThan(2);
    }
  });

  // USDA Complete Guide to Home Canning, Guide 7: jelling temperature at 0 to 8,000 ft.
  it.each([
    [0, 220],
    [1000, 218],
    [2000, 216],
    [3000, 214],
    [4000, 212],
    [5000, 211],
    [6000, 209],
    [7000, 207],
    [8000, 205],
  ])("sets jelly at the guide's temperature at %d ft", (feet, f) => {
    expect(Math.abs(good(jellingPoint(feet)).value - f)).toBeLessThan(0.7);
  });
});
