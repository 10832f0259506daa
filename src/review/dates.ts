/** Calendar dates as `2027-08-14`, without a zone. */
import { DAY_MS, inShort, localFields, MONTHS } from "../kitchen/time.ts";

/** The date of an instant of wall time. */
export function dateOf(wallMs: number, zone: string): string {
  const { year, month, day } = localFields(wallMs, zone);
  return `${year}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}

function dayNumber(date: string): number {
  return Date.parse(`${date}T00:00:00Z`) / DAY_MS;
}

/** The date some days after a date, or before it where negative. */
export function addDays(date: string, days: number): string {
  return new Date((dayNumber(date) + days) * DAY_MS).toISOString().slice(0, 10);
}

/** Whole days from one date to another; negative where the second lies before the first. */
export function daysBetween(from: string, to: string): number {
  return dayNumber(to) - dayNumber(from);
}

/** `14 Aug 2027`, which every country reads the same way. */
export function dateWords(date: string): string {
  const [year, month, day] = date.split("-").map(Number);
  return `${day} ${inShort(MONTHS[(month ?? 1) - 1])} ${year}`;
}
