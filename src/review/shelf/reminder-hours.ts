/** At which hour people are reminded of what is due on a day, or came due in the night. */
import { nightUntil } from "../../kitchen/nights.ts";
import { kitchenTimeOf, type State, wallOf } from "../../kitchen/state.ts";
import { instantOf, localFields } from "../../kitchen/time.ts";

/** Things that are due on a day, not at an hour. */
export const DAY_HOUR = 9;
/** Seed is tested early enough in the year to still buy new seed. */
const SEED_TEST = { month: 3, day: 1 };

/** The same wall moment, or the end of the quiet hours that it lies in. */
export function byDay(state: State, wallMs: number): number {
  const over = nightUntil(state, kitchenTimeOf(state, wallMs));
  return over === undefined ? wallMs : wallOf(state, over);
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
