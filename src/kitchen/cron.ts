/**
 * When a recurring check is due next: five-field cron expressions (minute, hour, day of month,
 * month, day of week; `*`, lists, ranges, steps) in a zone, worked out without a clock.
 */
import { DAY_MS, instantOf, localFields, MINUTE_MS } from "./time.ts";

type Field = { low: number; high: number };
const FIELDS: Field[] = [
  { low: 0, high: 59 },
  { low: 0, high: 23 },
  { low: 1, high: 31 },
  { low: 1, high: 12 },
  { low: 0, high: 7 },
];

function values(text: string, { low, high }: Field): Set<number> | undefined {
  const found = new Set<number>();
  for (const part of text.split(",")) {
    const match = /^(\*|(\d+)(?:-(\d+))?)(?:\/(\d+))?$/.exec(part);
    if (!match) return undefined;
    const from = match[1] === "*" ? low : Number(match[2]);
    const to = match[1] === "*" ? high : Number(match[3] ?? match[2]);
    const step = Number(match[4] ?? 1);
    if (from < low || to > high || step < 1) return undefined;
    for (let value = from; value <= to; value += step) found.add(value);
  }
  return found;
}

/** The next match after an instant, to the minute; undefined where the expression is not one. */
export function nextMatch(expression: string, afterMs: number, zone: string): number | undefined {
  const parts = expression.trim().split(/\s+/);
  if (parts.length !== 5) return undefined;
  const sets = FIELDS.map((field, index) => values(parts[index] ?? "", field));
  const [minutes, hours, days, months, weekdays] = sets;
  if (!minutes || !hours || !days || !months || !weekdays) return undefined;
  if (weekdays.has(7)) weekdays.add(0);
  const start = localFields(afterMs, zone);
  const noon = Date.UTC(start.year, start.month - 1, start.day, 12);
  for (let day = 0; day <= 366 * 4; day++) {
    const date = new Date(noon + day * DAY_MS);
    const month = date.getUTCMonth() + 1;
    if (!months.has(month) || !weekdays.has(date.getUTCDay())) continue;
    if (!days.has(date.getUTCDate())) continue;
    const ymd = { year: date.getUTCFullYear(), month, day: date.getUTCDate() };
    for (const hour of [...hours].sort((a, b) => a - b)) {
      for (const minute of [...minutes].sort((a, b) => a - b)) {
        const at = instantOf({ ...ymd, hour, minute, second: 0 }, zone);
        if (at > afterMs && at % MINUTE_MS === 0) return at;
      }
    }
  }
  return undefined;
}
