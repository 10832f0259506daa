/** Durations and times of day as people say them: "about twelve minutes", "ten past four". */
import { DAY_MS, HOUR_MS, localFields, MINUTE_MS, MONTHS, WEEKDAYS } from "../kitchen/time.ts";
import { countWords, numberWords } from "../reckon/number-words.ts";

function counted(value: number, unit: string): string {
  if (value === 1 && unit === "hour") return "an hour";
  return countWords(value, unit);
}

/** The same to the second, for what was asked for: "ninety seconds", "nine minutes". */
export function exactDurationWords(ms: number): string {
  const seconds = Math.round(Math.abs(ms) / 1000);
  const rest = seconds % 60;
  if (rest === 0) return durationWords(ms);
  if (seconds < 120) return counted(seconds, "second");
  return `${durationWords((seconds - rest) * 1000)} and ${counted(rest, "second")}`;
}

/** "twelve minutes", "an hour and a quarter", "three days": rounded the way people round. */
export function durationWords(ms: number): string {
  const minutes = Math.round(Math.abs(ms) / MINUTE_MS);
  if (Math.abs(ms) < MINUTE_MS) {
    return counted(Math.max(1, Math.round(Math.abs(ms) / 1000)), "second");
  }
  if (minutes < 90) return minutes === 60 ? "an hour" : counted(minutes, "minute");
  if (ms < 2 * DAY_MS) {
    const hours = Math.floor(minutes / 60);
    const rest = minutes % 60;
    if (rest === 0) return counted(hours, "hour");
    if (rest === 30) return `${numberWords(hours)} and a half hours`;
    return `${counted(hours, "hour")} and ${counted(rest, "minute")}`;
  }
  const days = Math.round(Math.abs(ms) / DAY_MS);
  if (days < 21) return counted(days, "day");
  if (days < 90) return counted(Math.round(days / 7), "week");
  return counted(Math.round(days / 30.4), "month");
}

/** "ten past four", "quarter to nine", "half past two", "noon"; odd minutes as "4:12". */
export function clockWords(wallMs: number, zone: string): string {
  const { hour, minute } = localFields(wallMs, zone);
  if (minute === 0) {
    if (hour === 12) return "noon";
    if (hour === 0) return "midnight";
    return `${numberWords(hour % 12 || 12)} o'clock`;
  }
  if (minute % 5 !== 0) return `${hour % 12 || 12}:${String(minute).padStart(2, "0")}`;
  const past = minute <= 30;
  const named = numberWords((past ? hour : hour + 1) % 12 || 12);
  if (minute === 30) return `half past ${named}`;
  if (minute === 15) return `quarter past ${named}`;
  if (minute === 45) return `quarter to ${named}`;
  return past ? `${numberWords(minute)} past ${named}` : `${numberWords(60 - minute)} to ${named}`;
}

function partOfDay(hour: number): string {
  if (hour < NIGHT_UNTIL) return "at night";
  if (hour < 12) return "in the morning";
  if (hour < 18) return "in the afternoon";
  return hour < NIGHT_FROM ? "in the evening" : "at night";
}

/** "at ten past four", "at nine tomorrow morning", "at ten to one tonight", "on August 16". */
export function momentWords(wallMs: number, nowWallMs: number, zone: string): string {
  const at = localFields(wallMs, zone);
  const now = localFields(nowWallMs, zone);
  const dayNumber = (f: { year: number; month: number; day: number }) =>
    Math.round(Date.UTC(f.year, f.month - 1, f.day) / DAY_MS);
  const days = dayNumber(at) - dayNumber(now);
  const clock = clockWords(wallMs, zone);
  if (days === 0 && Math.abs(wallMs - nowWallMs) < 11 * HOUR_MS) return `at ${clock}`;
  const bare = clock.replace(" o'clock", "");
  const named = clock === "noon" || clock === "midnight";
  if (days >= -1 && days <= 1) return `at ${bare} ${dayPart(days, at.hour, named)}`;
  const when = named ? bare : `${bare} ${partOfDay(at.hour)}`;
  if (days > 0 && days < 7) return `at ${when} on ${WEEKDAYS[at.weekday]}`;
  const year = at.year === now.year ? "" : ` ${at.year}`;
  return `on ${MONTHS[at.month - 1]} ${at.day}${year}`;
}

/** "tonight", "tomorrow morning": a night is named for the evening it follows. */
function dayPart(days: number, hour: number, named: boolean): string {
  const night = hour < NIGHT_UNTIL || hour >= NIGHT_FROM;
  const evening = hour < NIGHT_UNTIL ? days - 1 : days;
  if (night && evening === 0) return "tonight";
  if (night && evening === -1) return "last night";
  const day = { "-2": "the night before last", "-1": "yesterday", "0": "today", "1": "tomorrow" }[
    String(night ? evening : days)
  ];
  if (named && hour === 12) return day ?? "";
  if (days === 0 && !night) return partOfDay(hour);
  const part = night ? "night" : partOfDay(hour).replace("in the ", "");
  return evening === -2 && night ? (day ?? "") : `${day} ${part}`;
}

const NIGHT_UNTIL = 5;
const NIGHT_FROM = 22;
