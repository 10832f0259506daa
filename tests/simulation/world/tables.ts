/** Reading the published tables between their rows, and the figures that follow from them. */
import type { Card } from "./cards.ts";
import {
  AIR_PSIA,
  BANDS,
  COOLS_LIKE,
  DIAL_LOW_ACID,
  PINT_COOLS,
  ROOM_F,
  STEAM_PSIA,
} from "./references.ts";

type Rows = readonly (readonly [number, number])[];

/** The value at `x`, straight between two rows; the end row outside. */
export function between(rows: Rows, x: number): number {
  const after = rows.findIndex(([at]) => at >= x);
  const [x1, y1] = rows[after < 0 ? rows.length - 1 : after] ?? [0, 0];
  const [x0, y0] = rows[after < 0 ? rows.length - 1 : Math.max(0, after - 1)] ?? [0, 0];
  return x1 === x0 ? y1 : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

const byPressure: Rows = STEAM_PSIA.map(([f, psia]) => [Math.log(psia), f]);

/** Air pressure at an altitude, psia. */
export const airPsia = (altitudeFt: number): number => between(AIR_PSIA, altitudeFt);

/** Temperature of pure steam over water at an absolute pressure, degrees F. */
export const steamF = (psia: number): number => between(byPressure, Math.log(psia));

/** Where water boils in the open at an altitude, degrees F. */
export const boilsAtF = (altitudeFt: number): number => steamF(airPsia(altitudeFt));

/** Temperature (degrees F) of a jar filled at a given heat after some minutes in the room. */
export function jarF(filledF: number, minutes: number, jar: string): number {
  const left = between(PINT_COOLS, minutes / (COOLS_LIKE[jar] ?? 1));
  return ROOM_F + (filledF - ROOM_F) * left;
}

/** The tested minutes of a card at an altitude. */
export function testedMinutes(card: Card, altitudeFt: number): number {
  if (card.method === "pressure") return card.minutes[0] ?? 0;
  const tops = BANDS[card.minutes.length] ?? [];
  const band = tops.findIndex((top) => altitudeFt <= top);
  return card.minutes[band < 0 ? card.minutes.length - 1 : band] ?? 0;
}

/** The tested dial pressure of low-acid food at an altitude, psi. */
export function markPsi(altitudeFt: number): number {
  return DIAL_LOW_ACID[Math.max(0, Math.ceil(altitudeFt / 2000) - 1)] ?? 15;
}
