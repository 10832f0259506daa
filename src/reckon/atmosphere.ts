import type { Reckoned } from "./reckoned.ts";
import { withCommas } from "./reckoned.ts";
import type { Result } from "./result.ts";
import { fail, ok } from "./result.ts";
import { FT_PER_M, KPA_PER_PSI } from "./units.ts";

/** Where people cook: from the shore of the lowest lake to the highest towns. */
export const LOWEST_FT = -1500;
export const HIGHEST_FT = 16_500;

export const ATMOSPHERE_SOURCE = "US Standard Atmosphere 1976";

const SEA_LEVEL_KPA = 101.325;
const SEA_LEVEL_K = 288.15;
const LAPSE_K_PER_M = 0.0065;
/** g0 M / (R* L) with 9.80665 m/s2, 0.0289644 kg/mol, 8.31432 J/(mol K), 0.0065 K/m. */
const EXPONENT = (9.80665 * 0.0289644) / (8.31432 * LAPSE_K_PER_M);

/** Half the usual spread of weather at sea level: 25 hPa. It shrinks with the pressure itself. */
export const WEATHER_SHARE = 2.5 / SEA_LEVEL_KPA;

/**
 * Standard air pressure at an altitude, kPa. Map elevation is taken as geopotential height; the
 * difference is 13 Pa at 10,000 ft. Defined for the troposphere (to 36,000 ft).
 */
export function standardPressureKpa(altitudeFt: number): number {
  const heightM = altitudeFt / FT_PER_M;
  return SEA_LEVEL_KPA * (1 - (LAPSE_K_PER_M * heightM) / SEA_LEVEL_K) ** EXPONENT;
}

/** The altitude, ft, whose standard air pressure is `pressureKpa`. */
export function altitudeOfPressureFt(pressureKpa: number): number {
  const heightM =
    (SEA_LEVEL_K / LAPSE_K_PER_M) * (1 - (pressureKpa / SEA_LEVEL_KPA) ** (1 / EXPONENT));
  return heightM * FT_PER_M;
}

/** The altitude itself, or an error outside the range where people cook. */
export function checkedAltitudeFt(altitudeFt: number): Result<number> {
  if (altitudeFt >= LOWEST_FT && altitudeFt <= HIGHEST_FT) return ok(altitudeFt);
  const said = withCommas(altitudeFt);
  return fail(
    `--altitude: ${said} ft is outside -1,500 to 16,500 ft, where people cook; ` +
      "check the number and its unit",
  );
}

/** Air pressure at an altitude, kPa, with the range of ordinary weather. */
export function airPressure(altitudeFt: number): Result<Reckoned & { psi: number }> {
  const checked = checkedAltitudeFt(altitudeFt);
  if (!checked.ok) return checked;
  const value = standardPressureKpa(altitudeFt);
  return ok({
    value,
    unit: "kPa",
    range: [value * (1 - WEATHER_SHARE), value * (1 + WEATHER_SHARE)],
    estimate: true,
    source: ATMOSPHERE_SOURCE,
    notes: ["weather moves it by about 2.5 % either way"],
    psi: value / KPA_PER_PSI,
  });
}
