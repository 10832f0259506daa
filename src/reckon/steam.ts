import {
  ATMOSPHERE_SOURCE,
  checkedAltitudeFt,
  standardPressureKpa,
  WEATHER_SHARE,
} from "./atmosphere.ts";
import type { Reckoned } from "./reckoned.ts";
import type { Result } from "./result.ts";
import { fail, ok } from "./result.ts";
import { SATURATION_SOURCE, saturationPressureKpa, saturationTemperatureC } from "./saturation.ts";
import { celsiusOf, fahrenheitOf, KPA_PER_PSI } from "./units.ts";

const SOURCE = `${ATMOSPHERE_SOURCE}; ${SATURATION_SOURCE}`;

/** The most a household canner's gauge shows, psi. */
const HIGHEST_PSI = 30;

const NOTES = [
  "pure steam: air left in the canner makes it cooler, so it is vented first",
  "never a canner setting: the tested table's setting for your altitude is what counts",
];

/**
 * Temperature of pure steam, °F, at a gauge pressure in psi and an altitude in ft; `airShare`
 * scales the altitude's standard air, for the weather.
 */
export function steamTemperatureF(gaugePsi: number, altitudeFt: number, airShare = 1): number {
  const absoluteKpa = standardPressureKpa(altitudeFt) * airShare + gaugePsi * KPA_PER_PSI;
  return fahrenheitOf(saturationTemperatureC(absoluteKpa));
}

/** Steam temperature at a gauge pressure (0 to 30 psi), °F. */
export function steamTemperature(
  gaugePsi: number,
  altitudeFt: number,
): Result<Reckoned & { celsius: number }> {
  const checked = checkedAltitudeFt(altitudeFt);
  if (!checked.ok) return checked;
  if (!(gaugePsi >= 0 && gaugePsi <= HIGHEST_PSI)) {
    return fail(
      `--gauge: ${gaugePsi.toFixed(1)} psi is outside 0 to ${HIGHEST_PSI} psi, what a household ` +
        "canner can show; check the number and its unit",
    );
  }
  const at = (share: number) => steamTemperatureF(gaugePsi, altitudeFt, share);
  const value = at(1);
  return ok({
    value,
    unit: "F",
    range: [at(1 - WEATHER_SHARE), at(1 + WEATHER_SHARE)],
    estimate: true,
    source: SOURCE,
    notes: [...NOTES, "the range is ordinary weather"],
    celsius: celsiusOf(value),
  });
}

/** Gauge pressure, psi, at which pure steam has a temperature (boiling point to 30 psi's). */
export function gaugeForSteam(steamF: number, altitudeFt: number): Result<Reckoned> {
  const checked = checkedAltitudeFt(altitudeFt);
  if (!checked.ok) return checked;
  const airKpa = standardPressureKpa(altitudeFt);
  const least = fahrenheitOf(saturationTemperatureC(airKpa));
  const most = steamTemperatureF(HIGHEST_PSI, altitudeFt);
  if (!(steamF >= least && steamF <= most)) {
    return fail(
      `--steam-at: steam in a household canner there is ${Math.ceil(least)} to ` +
        `${Math.floor(most)} F, not ${steamF.toFixed(1)} F; check the number and its unit`,
    );
  }
  const steamKpa = saturationPressureKpa(celsiusOf(steamF));
  const over = (share: number) => (steamKpa - airKpa * share) / KPA_PER_PSI;
  return ok({
    value: over(1),
    unit: "psi",
    range: [over(1 + WEATHER_SHARE), over(1 - WEATHER_SHARE)],
    estimate: true,
    source: SOURCE,
    notes: [...NOTES, "the range is ordinary weather"],
  });
}
