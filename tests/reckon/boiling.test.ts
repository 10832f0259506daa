import { describe, expect, it } from "vitest";
import { airPressure } from "../../src/reckon/atmosphere.ts";
import {
  altitudeFromBoil,
  boilingPointAtAltitude,
  boilingPointAtPressure,
  judgeBoil,
} from "../../src/reckon/boiling.ts";
import { gaugeForSteam, steamTemperature } from "../../src/reckon/steam.ts";
import { good, wrong } from "./good-result.ts";

describe("a measured boil", () => {
  it("of 204 F is right for about 4,400 ft", () => {
    const judged = judgeBoil(204, 4400);
    expect(judged.doubt).toBe(false);
    expect(Math.round(judged.rightForFt / 100) * 100).toBe(4400);
  });

  it("casts doubt beyond two degrees either way, and not before", () => {
    const { expectedF } = judgeBoil(200, 6200);
    expect(judgeBoil(expectedF + 1.9, 6200).doubt).toBe(false);
    expect(judgeBoil(expectedF - 1.9, 6200).doubt).toBe(false);
    expect(judgeBoil(expectedF + 2.1, 6200).doubt).toBe(true);
    expect(judgeBoil(expectedF - 2.1, 6200).doubt).toBe(true);
  });

  it("gives the altitude with a range and the sentence that it never lowers a band", () => {
    const { value, range, notes } = good(altitudeFromBoil(204));
    expect(range?.[0]).toBeLessThan(value - 500);
    expect(range?.[1]).toBeGreaterThan(value + 500);
    expect(notes.join(" ")).toContain("never lowers it");
  });

  it("is refused where water cannot boil like that", () => {
    expect(wrong(altitudeFromBoil(240))).toContain("--boils-at");
    expect(wrong(altitudeFromBoil(95))).toContain("check the thermometer and the unit");
  });
});

describe("ranges and refusals", () => {
  it("takes weather as about 0.7 C either way at the sea", () => {
    const { range } = good(boilingPointAtAltitude(0));
    expect(range?.[0]).toBeCloseTo(210.7, 1);
    expect(range?.[1]).toBeCloseTo(213.2, 1);
  });

  it.each([-1501, 16_501, 1e9, Number.NaN])("refuses an altitude of %d ft", (feet) => {
    expect(wrong(airPressure(feet))).toContain("--altitude");
    expect(wrong(boilingPointAtAltitude(feet))).toContain("where people cook");
    expect(wrong(steamTemperature(11, feet))).toContain("--altitude");
  });

  it("refuses a gauge's pressure where a barometer's is wanted", () => {
    expect(wrong(boilingPointAtPressure(200))).toContain("barometer");
    expect(good(boilingPointAtPressure(81)).range).toBeNull();
  });

  it("refuses steam no household canner makes", () => {
    expect(wrong(steamTemperature(31, 0))).toContain("0 to 30 psi");
    expect(wrong(gaugeForSteam(200, 0))).toContain("--steam-at");
    expect(wrong(gaugeForSteam(400, 0))).toContain("--steam-at");
  });

  it("says with every pressure that the tested table's setting is what counts", () => {
    for (const notes of [
      good(steamTemperature(11, 6200)).notes,
      good(gaugeForSteam(240, 6200)).notes,
    ]) {
      expect(notes.join(" ")).toContain("never a canner setting");
    }
  });
});
