import {
  ATMOSPHERE_SOURCE,
  altitudeOfPressureFt,
  checkedAltitudeFt,
  HIGHEST_FT,
  LOWEST_FT,
  standardPressureKpa,
  WEATHER_SHARE,
} from "./atmosphere.ts";
import type { Reckoned } from "./reckoned.ts";
import type { Result } from "./result.ts";
import { fail, ok } from "./result.ts";
import { SATURATION_SOURCE, saturationPressureKpa, saturationTemperatureC } from "./saturation.ts";
import { celsiusOf, fahrenheitOf } from "./units.ts";

const SOURCE = `${ATMOSPHERE_SOURCE}; ${SATURATION_SOURCE}`;

/** A larger difference than weather explains between a measured boil and the altitude's own, °F. */
export const BOIL_DOUBT_F = 2;

/** An ordinary kitchen thermometer may be off by this much, °F. */
const THERMOMETER_F = 1;

/** Boiling point of water, °F, in standard air at an altitude in feet. */
export function boilingPointF(altitudeFt: number): number {
  return fahrenheitOf(saturationTemperatureC(standardPressureKpa(altitudeFt)));
}

/**
 * Under this, °F, no water boils at an altitude in feet, whatever the weather does and however an
 * ordinary thermometer errs.
 */
export function leastBoilF(altitudeFt: number): number {
  return boilingPointF(altitudeFt) - BOIL_DOUBT_F - THERMOMETER_F;
}

/** The altitude, ft, at which water boils at a temperature in standard air. */
function altitudeOfBoilFt(boilsAtF: number): number {
  return altitudeOfPressureFt(saturationPressureKpa(celsiusOf(boilsAtF)));
}

/** Boiling point at an altitude, °F, with the range of ordinary weather. */
export function boilingPointAtAltitude(altitudeFt: number): Result<Reckoned & { celsius: number }> {
  const checked = checkedAltitudeFt(altitudeFt);
  if (!checked.ok) return checked;
  const pressureKpa = standardPressureKpa(altitudeFt);
  const celsius = saturationTemperatureC(pressureKpa);
  const at = (share: number) => fahrenheitOf(saturationTemperatureC(pressureKpa * share));
  return ok({
    value: fahrenheitOf(celsius),
    unit: "F",
    range: [at(1 - WEATHER_SHARE), at(1 + WEATHER_SHARE)],
    estimate: true,
    source: SOURCE,
    notes: [
      "the range is ordinary weather",
      "printed canning tables run up to 1 F warmer high in the mountains",
    ],
    celsius,
  });
}

/**
 * Boiling point, °F, under an absolute pressure in kPa (50 to 110: what a barometer in a kitchen
 * can show). Exact: no weather is assumed.
 */
export function boilingPointAtPressure(
  pressureKpa: number,
): Result<Reckoned & { celsius: number }> {
  if (!(pressureKpa >= 50 && pressureKpa <= 110)) {
    return fail(
      `--pressure: ${pressureKpa.toFixed(1)} kPa is not the air of any kitchen (50 to 110 kPa); ` +
        "give the barometer's own reading, not a gauge's",
    );
  }
  const celsius = saturationTemperatureC(pressureKpa);
  return ok({
    value: fahrenheitOf(celsius),
    unit: "F",
    range: null,
    estimate: false,
    source: SATURATION_SOURCE,
    notes: ["takes the pressure at the place itself; forecasts give it reduced to sea level"],
    celsius,
  });
}

/** Altitude from a measured boil, ft; the range covers a thermometer 1 °F off and the weather. */
export function altitudeFromBoil(boilsAtF: number): Result<Reckoned> {
  const least = boilingPointF(HIGHEST_FT);
  const most = boilingPointF(LOWEST_FT);
  if (!(boilsAtF >= least && boilsAtF <= most)) {
    return fail(
      `--boils-at: water boils at ${Math.ceil(least)} to ${Math.floor(most)} F where people ` +
        `cook, not at ${boilsAtF.toFixed(1)} F; check the thermometer and the unit`,
    );
  }
  const value = altitudeOfBoilFt(boilsAtF);
  const pressureKpa = saturationPressureKpa(celsiusOf(boilsAtF));
  const byThermometer = altitudeOfBoilFt(boilsAtF - THERMOMETER_F) - value;
  const byWeather = altitudeOfPressureFt(pressureKpa * (1 - WEATHER_SHARE)) - value;
  const spread = Math.hypot(byThermometer, byWeather);
  return ok({
    value,
    unit: "ft",
    range: [value - spread, value + spread],
    estimate: true,
    source: SOURCE,
    notes: [
      "the range covers a thermometer 1 F off and ordinary weather",
      "may raise the altitude band or cast doubt on it; never lowers it",
    ],
  });
}

/** What a measured boil says about the altitude the kitchen is set to. */
type BoilJudgement = {
  /** Boiling point in standard air at the set altitude. */
  expectedF: number;
  /** Measured less expected. */
  differenceF: number;
  /** The altitude in feet at which standard air gives this boil. */
  rightForFt: number;
  /**
   * True beyond what weather explains: a reason to ask about the altitude, not to change anything.
   */
  doubt: boolean;
};

/** Compares a full boil measured in °F with the set altitude in ft. */
export function judgeBoil(measuredF: number, altitudeFt: number): BoilJudgement {
  const expectedF = boilingPointF(altitudeFt);
  const differenceF = measuredF - expectedF;
  return {
    expectedF,
    differenceF,
    rightForFt: altitudeOfBoilFt(measuredF),
    doubt: Math.abs(differenceF) > BOIL_DOUBT_F,
  };
}

export const JELLING_ABOVE_BOIL_F = 8;

/** Temperature at which a jelly sets, °F: 8 °F above where water boils, within 1 °F. */
export function jellingPoint(altitudeFt: number): Result<Reckoned & { celsius: number }> {
  const boil = boilingPointAtAltitude(altitudeFt);
  if (!boil.ok) return boil;
  const value = boil.value.value + JELLING_ABOVE_BOIL_F;
  return ok({
    value,
    unit: "F",
    range: [value - 1, value + 1],
    estimate: true,
    source: `USDA Complete Guide to Home Canning, Guide 7 (8 F above boiling water); ${SOURCE}`,
    notes: ["boil water first: 8 F above what your own thermometer shows is the surest mark"],
    celsius: celsiusOf(value),
  });
}
