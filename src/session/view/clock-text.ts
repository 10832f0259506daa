/** Clocks as the screen shows them: the time left, and the time of day. */
import {
  DAY_MS,
  HOUR_MS,
  inShort,
  localFields,
  MINUTE_MS,
  MONTHS,
  SECOND_MS,
  upToMinute,
  WEEKDAYS,
} from "../../kitchen/time.ts";

const two = (value: number) => String(value).padStart(2, "0");

/** The one style of clocks: `11:40` in minutes and seconds, `2 h 05 min`, `3 days`. */
export function lengthText(ms: number): string {
  const seconds = Math.ceil(Math.abs(ms) / SECOND_MS);
  if (seconds < 3600) return `${Math.floor(seconds / 60)}:${two(seconds % 60)}`;
  const minutes = Math.ceil(Math.abs(ms) / MINUTE_MS);
  if (Math.abs(ms) < 2 * DAY_MS) return `${Math.floor(minutes / 60)} h ${two(minutes % 60)} min`;
  return `${Math.round(Math.abs(ms) / DAY_MS)} days`;
}

/**
 * When something is due, rounded up: `14:05`, preceded by the day where that is not today: `Sun
 * 09:00`, `3 Oct`.
 */
export function whenText(wallMs: number, nowWallMs: number, zone: string): string {
  const at = localFields(upToMinute(wallMs), zone);
  const now = localFields(nowWallMs, zone);
  const time = `${two(at.hour)}:${two(at.minute)}`;
  if (at.day === now.day && at.month === now.month && at.year === now.year) return time;
  if (Math.abs(wallMs - nowWallMs) < 6 * DAY_MS) return `${inShort(WEEKDAYS[at.weekday])} ${time}`;
  return `${at.day} ${inShort(MONTHS[at.month - 1])}${at.year === now.year ? "" : ` ${at.year}`}`;
}

/** `Sat 14 Aug`. */
export function dayText(wallMs: number, zone: string): string {
  const { weekday, day, month } = localFields(wallMs, zone);
  return `${inShort(WEEKDAYS[weekday])} ${day} ${inShort(MONTHS[month - 1])}`;
}

/** `14:03`. */
export function timeText(wallMs: number, zone: string): string {
  const { hour, minute } = localFields(wallMs, zone);
  return `${two(hour)}:${two(minute)}`;
}

/** `14:03:20`, up to the second. */
export function secondText(wallMs: number, zone: string): string {
  const { hour, minute, second } = localFields(Math.ceil(wallMs / SECOND_MS) * SECOND_MS, zone);
  return `${two(hour)}:${two(minute)}:${two(second)}`;
}

/** The full hours from one instant to another, for a scale. */
export function hoursBetween(fromWallMs: number, toWallMs: number): number[] {
  const hours: number[] = [];
  for (let at = Math.ceil(fromWallMs / HOUR_MS) * HOUR_MS; at <= toWallMs; at += HOUR_MS) {
    hours.push(at);
  }
  return hours;
}
