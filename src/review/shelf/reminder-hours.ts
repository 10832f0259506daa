/** At which hour people are reminded of what is due on a day, or came due in the night. */
import { instantOf, localFields } from "../../kitchen/time.ts";

/** Jars that have cooled overnight are checked in the morning. */
const MORNING = { from: 8, until: 21 };
/** Things that are due on a day, not at an hour. */
export const DAY_HOUR = 9;
/** Seed is tested early enough in the year to still buy new seed. */
const SEED_TEST = { month: 3, day: 1 };

/** The same moment in the daytime; at night, the next morning. */
export function inTheMorning(wallMs: number, zone: string): number {
  const { hour } = localFields(wallMs, zone);
  if (hour >= MORNING.from && hour < MORNING.until) return wallMs;
  return atHour(wallMs, zone, MORNING.from, true);
}

/** An hour of that day; with `after`, of the next day where that hour has passed. */
export function atHour(wallMs: number, zone: string, hour: number, after: boolean): number {
  const { year, month, day } = localFields(wallMs, zone);
  const at = instantOf({ year, month, day, hour, minute: 0, second: 0 }, zone);
  if (!after || at >= wallMs) return at;
  const next = new Date(Date.UTC(year, month - 1, day + 1));
  const date = { year: next.getUTCFullYear(), month: next.getUTCMonth() + 1 };
  return instantOf({ ...date, day: next.getUTCDate(), hour, minute: 0, second: 0 }, zone);
}

/** The first day for testing seed after a moment. */
export function nextSpring(wallMs: number, zone: string): number {
  const { year } = localFields(wallMs, zone);
  const spring = (y: number) =>
    instantOf({ year: y, ...SEED_TEST, hour: DAY_HOUR, minute: 0, second: 0 }, zone);
  return spring(year) > wallMs ? spring(year) : spring(year + 1);
}
