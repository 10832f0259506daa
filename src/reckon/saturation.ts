/**
 * The saturation line, on which water and steam coexist: IAPWS-IF97, region 4 (release of 1997,
 * revised 2007), equations 30 and 31, from 0.01 to 373.9 °C.
 */

export const SATURATION_SOURCE = "IAPWS-IF97 region 4";

// Coefficients n1 to n10 of the release's table 34.
const N1 = 1167.0521452767;
const N2 = -724213.16703206;
const N3 = -17.073846940092;
const N4 = 12020.82470247;
const N5 = -3232555.0322333;
const N6 = 14.91510861353;
const N7 = -4823.2657361591;
const N8 = 405113.40542057;
const N9 = -0.23855557567849;
const N10 = 650.17534844798;

const ZERO_C_IN_K = 273.15;

/** Pressure of saturated steam, kPa, at a temperature in degrees Celsius (0 to 373.9). */
export function saturationPressureKpa(temperatureC: number): number {
  const kelvin = temperatureC + ZERO_C_IN_K;
  const theta = kelvin + N9 / (kelvin - N10);
  const a = theta * theta + N1 * theta + N2;
  const b = N3 * theta * theta + N4 * theta + N5;
  const c = N6 * theta * theta + N7 * theta + N8;
  const root = (2 * c) / (-b + Math.sqrt(b * b - 4 * a * c));
  return 1000 * root ** 4;
}

/** Temperature at which water boils, degrees Celsius, under an absolute pressure in kPa. */
export function saturationTemperatureC(pressureKpa: number): number {
  const beta = (pressureKpa / 1000) ** 0.25;
  const e = beta * beta + N3 * beta + N6;
  const f = N1 * beta * beta + N4 * beta + N7;
  const g = N2 * beta * beta + N5 * beta + N8;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  const kelvin = (N10 + d - Math.sqrt((N10 + d) ** 2 - 4 * (N9 + N10 * d))) / 2;
  return kelvin - ZERO_C_IN_K;
}
