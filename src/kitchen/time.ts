/**
 * Instants, wall clock and zones. The core counts in epoch milliseconds; people and files read
 * wall time in a named IANA zone. Everything here is a function of its arguments.
 */

export const SECOND_MS = 1000;
export const MINUTE_MS = 60 * SECOND_MS;
export const HOUR_MS = 60 * MINUTE_MS;
export const DAY_MS = 24 * HOUR_MS;

/** Instants that a fact may hold, epoch ms: from the year 2000 up to 2200. */
const RECORDED = { from: Date.UTC(2000, 0, 1), until: Date.UTC(2200, 0, 1) };

/** Whether an instant, epoch ms, is one that a kitchen can have lived or plan for. */
export function isRecordable(ms: number): boolean {
  return ms >= RECORDED.from && ms < RECORDED.until;
}

/** The date in a zone, as a name for the day. */
export function localDay(wallMs: number, zone: string): string {
  const { year, month, day } = localFields(wallMs, zone);
  return `${year}-${month}-${day}`;
}

/** The full minute at or after a wall instant: an end is announced by it, so never too early. */
export function upToMinute(wallMs: number): number {
  return Math.ceil(wallMs / MINUTE_MS) * MINUTE_MS;
}

export const MONTHS = [
  ...["January", "February", "March", "April", "May", "June", "July", "August", "September"],
  ...["October", "November", "December"],
] as const;
/** From Sunday on, as `weekday` counts. */
export const WEEKDAYS = [
  ...["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"],
] as const;

/** The three letters that stand for a month or a day of the week. */
export function inShort(name: string | undefined): string {
  return name?.slice(0, 3) ?? "";
}

/** Wall-clock fields in some zone; month 1 to 12, weekday 0 (Sunday) to 6. */
export type LocalFields = {
  year: number;
  month: number;
  day: number;
  hour: number;
  minute: number;
  second: number;
  weekday: number;
};

const formatters = new Map<string, Intl.DateTimeFormat>();

function formatter(zone: string): Intl.DateTimeFormat {
  let found = formatters.get(zone);
  if (!found) {
    found = new Intl.DateTimeFormat("en-US", {
      timeZone: zone,
      hourCycle: "h23",
      year: "numeric",
      month: "numeric",
      day: "numeric",
      hour: "numeric",
      minute: "numeric",
      second: "numeric",
    });
    formatters.set(zone, found);
  }
  return found;
}

/** Offset of a zone at one quarter hour; offsets never change inside one. */
const offsets = new Map<string, number>();
const QUARTER_MS = 15 * MINUTE_MS;

/**
 * The zone's offset from UTC at an instant, in milliseconds (east is positive).
 * @throws RangeError when the zone is not a known IANA name.
 */
export function offsetMs(instantMs: number, zone: string): number {
  const quarter = Math.floor(instantMs / QUARTER_MS);
  const key = `${quarter} ${zone}`;
  const known = offsets.get(key);
  if (known !== undefined) return known;
  const parts: Record<string, number> = {};
  for (const part of formatter(zone).formatToParts(quarter * QUARTER_MS)) {
    parts[part.type] = Number(part.value);
  }
  const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = parts;
  const asUtc = Date.UTC(year, month - 1, day, hour, minute, second);
  const offset = asUtc - quarter * QUARTER_MS;
  if (offsets.size > 5000) offsets.clear();
  offsets.set(key, offset);
  return offset;
}

/** True when the name is a zone this machine's time zone data knows. */
export function isZone(zone: string): boolean {
  try {
    formatter(zone);
    return true;
  } catch {
    return false;
  }
}

/** The wall-clock fields of an instant in a zone. */
export function localFields(instantMs: number, zone: string): LocalFields {
  const shifted = new Date(instantMs + offsetMs(instantMs, zone));
  return {
    year: shifted.getUTCFullYear(),
    month: shifted.getUTCMonth() + 1,
    day: shifted.getUTCDate(),
    hour: shifted.getUTCHours(),
    minute: shifted.getUTCMinutes(),
    second: shifted.getUTCSeconds(),
    weekday: shifted.getUTCDay(),
  };
}

/** Local time without an offset, to the second: `2027-08-14T14:03:00`. */
export function localIso(instantMs: number, zone: string): string {
  return new Date(instantMs + offsetMs(instantMs, zone)).toISOString().slice(0, 19);
}

/** Local time with its offset, to the millisecond where there is one: `…T14:03:00-06:00`. */
export function isoWithOffset(instantMs: number, zone: string): string {
  const offset = offsetMs(instantMs, zone);
  const local = new Date(instantMs + offset).toISOString();
  const fraction = local.slice(19, 23);
  const sign = offset < 0 ? "-" : "+";
  const minutes = Math.round(Math.abs(offset) / MINUTE_MS);
  const hh = String(Math.floor(minutes / 60)).padStart(2, "0");
  const mm = String(minutes % 60).padStart(2, "0");
  return `${local.slice(0, 19)}${fraction === ".000" ? "" : fraction}${sign}${hh}:${mm}`;
}

/**
 * The instant of a local time. A time that happens twice (clocks set back) is its first; one
 * that never happens (clocks set forward) moves forward by the gap.
 */
export function instantOf(local: Omit<LocalFields, "weekday">, zone: string): number {
  const { year, month, day, hour, minute, second } = local;
  const asUtc = Date.UTC(year, month - 1, day, hour, minute, second);
  const before = offsetMs(asUtc - DAY_MS, zone);
  const after = offsetMs(asUtc + DAY_MS, zone);
  const first = asUtc - before;
  if (offsetMs(first, zone) === before) return first;
  const second_ = asUtc - after;
  return offsetMs(second_, zone) === after ? second_ : first;
}

const LOCAL_ISO = /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2})(?::(\d{2})(?:\.\d+)?)?)?$/;

/**
 * The instant of ISO text: with an offset or `Z` as it stands, without one in the zone given.
 * Undefined when the text is no ISO date or time.
 */
export function parseIso(text: string, zone: string): number | undefined {
  const match = LOCAL_ISO.exec(text.trim());
  if (!match) {
    if (!/^\d{4}-\d{2}-\d{2}T.*(?:Z|[+-]\d{2}:?\d{2})$/.test(text.trim())) return undefined;
    const instant = Date.parse(text);
    return Number.isNaN(instant) ? undefined : instant;
  }
  const [year, month, day, hour, minute, second] = match.slice(1).map((part) => Number(part ?? 0));
  const fields = {
    year: year ?? 0,
    month: month ?? 0,
    day: day ?? 0,
    hour: hour ?? 0,
    minute: minute ?? 0,
    second: second ?? 0,
  };
  const real = new Date(Date.UTC(fields.year, fields.month - 1, fields.day));
  if (real.getUTCMonth() !== fields.month - 1 || real.getUTCDate() !== fields.day) return undefined;
  if (fields.hour > 23 || fields.minute > 59 || fields.second > 59) return undefined;
  return instantOf(fields, zone);
}
