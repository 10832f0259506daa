import * as chrono from "chrono-node/en";
import { DAY_MS, type LocalFields, localFields, MINUTE_MS } from "../../kitchen/time.ts";
import type { Word } from "../words.ts";
import { wordAt } from "../words.ts";
import { type ClockTime, clockAt, hoursOf, onDay } from "./clock-times.ts";
import { durationsAt } from "./durations.ts";
import { ordinalAt, type Parsed, smallWholeAt } from "./spoken-numbers.ts";

/**
 * The moment a reminder is for: "sunday morning at nine", "in three weeks", "tomorrow", "on the
 * first of november at ten". The date's words alone go to chrono, with the kitchen's wall date at
 * noon as its reference, so the machine's own zone plays no part; clock times and lengths of time
 * are read by this folder's own parsers.
 */

const WEEKDAYS = /^(sun|mon|tues|wednes|thurs|fri|satur)days?$/;
const MONTHS =
  /^(january|february|march|april|may|june|july|august|september|october|november|december)$/;

/** Parts of a day, and the hour each means where no clock time is said. */
const PARTS: Record<string, { half: "am" | "pm"; hour: number }> = {
  morning: { half: "am", hour: 9 },
  afternoon: { half: "pm", hour: 15 },
  evening: { half: "pm", hour: 19 },
  night: { half: "pm", hour: 20 },
};
const DAY_HOUR = 9;

type Day = { year: number; month: number; day: number };
type DayPart = { half: "am" | "pm"; hour: number };

/** Days that chrono has read before, by slot and by the day it was read on. */
const readDays = new Map<string, Day | undefined>();
const MOST_READ = 500;

/** Asks chrono for the date in a slot known to be one; its match has to cover the slot. */
function chronoDay(slot: string, today: LocalFields): Day | undefined {
  const noon = Date.UTC(today.year, today.month - 1, today.day, 12);
  const key = `${noon} ${slot}`;
  if (readDays.has(key)) return readDays.get(key);
  const [result] = chrono.parse(
    slot,
    { instant: new Date(noon), timezone: 0 },
    { forwardDate: true },
  );
  const covers = result?.index === 0 && result.text.length === slot.length;
  const start = covers ? result.start : undefined;
  const day = start && {
    year: start.get("year")!,
    month: start.get("month")!,
    day: start.get("day")!,
  };
  if (readDays.size > MOST_READ) readDays.clear();
  readDays.set(key, day);
  return day;
}

function daysFrom(today: LocalFields, days: number): Day {
  const day = new Date(Date.UTC(today.year, today.month - 1, today.day) + days * DAY_MS);
  return { year: day.getUTCFullYear(), month: day.getUTCMonth() + 1, day: day.getUTCDate() };
}

/** "the 20th" with no month: this month's, or the next month's where that is past. */
function dayOfMonth(number: number, today: LocalFields): Day {
  const month = number > today.day ? today.month : today.month + 1;
  const day = new Date(Date.UTC(today.year, month - 1, number));
  return { year: day.getUTCFullYear(), month: day.getUTCMonth() + 1, day: day.getUTCDate() };
}

function monthDayAt(words: readonly Word[], at: number): Parsed<string> | undefined {
  const start = wordAt(words, at) === "the" ? at + 1 : at;
  const number = ordinalAt(words, start);
  if (number) {
    const of = wordAt(words, number.next) === "of" ? number.next + 1 : number.next;
    if (!MONTHS.test(wordAt(words, of))) return undefined;
    return { value: `${wordAt(words, of)} ${number.value}`, next: of + 1 };
  }
  if (!MONTHS.test(wordAt(words, start))) return undefined;
  const behind = wordAt(words, start + 1) === "the" ? start + 2 : start + 1;
  const day = ordinalAt(words, behind) ?? smallWholeAt(words, behind);
  if (!day || day.value < 1 || day.value > 31) return undefined;
  return { value: `${wordAt(words, start)} ${day.value}`, next: day.next };
}

/** The words of a date at this place, and the day they mean. */
function dayAt(words: readonly Word[], at: number, today: LocalFields): Parsed<Day> | undefined {
  const start = /^(on|for|by|come)$/.test(wordAt(words, at)) ? at + 1 : at;
  const first = wordAt(words, start);
  if (first === "today" || first === "tonight")
    return { value: daysFrom(today, 0), next: start + 1 };
  if (first === "tomorrow") {
    const slot = chronoDay("tomorrow", today);
    return slot && { value: slot, next: start + 1 };
  }
  const spoken = [0, 1, 2, 3].map((step) => wordAt(words, start + step));
  const after = spoken[0] === "the" ? 1 : 0;
  if (spoken.slice(after, after + 3).join(" ") === "day after tomorrow") {
    return { value: daysFrom(today, 2), next: start + after + 3 };
  }
  const monthDay = monthDayAt(words, start);
  if (monthDay) {
    const value = chronoDay(monthDay.value, today);
    return value && { value, next: monthDay.next };
  }
  const ordinal = wordAt(words, start) === "the" ? ordinalAt(words, start + 1) : undefined;
  if (ordinal) return { value: dayOfMonth(ordinal.value, today), next: ordinal.next };
  return weekdayAt(words, start, today);
}

/** "sunday", "next tuesday", "this coming friday", "a week from sunday", "next week". */
function weekdayAt(
  words: readonly Word[],
  start: number,
  today: LocalFields,
): Parsed<Day> | undefined {
  if (wordAt(words, start) === "next" && wordAt(words, start + 1) === "week") {
    return { value: daysFrom(today, 7), next: start + 2 };
  }
  let next = start;
  let weeks = 0;
  if (wordAt(words, next) === "a" && wordAt(words, next + 1) === "week") {
    if (!/^(from|on)$/.test(wordAt(words, next + 2))) return undefined;
    weeks = 1;
    next += 3;
  }
  const modifier = wordAt(words, next);
  if (modifier === "next" || modifier === "this") next += 1;
  if (wordAt(words, next) === "coming") next += 1;
  const weekday = wordAt(words, next).replace(/s$/, "");
  if (!WEEKDAYS.test(weekday)) return undefined;
  const day = chronoDay(modifier === "next" ? `next ${weekday}` : weekday, today);
  if (!day) return undefined;
  const isToday = day.day === today.day && day.month === today.month && day.year === today.year;
  const moved = weeks * 7 + (isToday ? 7 : 0);
  const later = moved ? daysFrom({ ...today, ...day }, moved) : day;
  return { value: later, next: next + 1 };
}

/** "morning", "in the evening", "afternoon". */
function partAt(words: readonly Word[], at: number): Parsed<DayPart> | undefined {
  let next = at;
  if (/^(in|at|this|on)$/.test(wordAt(words, next))) next += 1;
  if (wordAt(words, next) === "the") next += 1;
  const word = wordAt(words, next);
  if (!Object.hasOwn(PARTS, word)) return undefined;
  return { value: PARTS[word]!, next: next + 1 };
}

type Pieces = { day?: Day; part?: DayPart; clock?: ClockTime; next: number };

/** A clock time that cannot be a bare number: "half past four", "six tonight", "4:30". */
function isPlainly(words: readonly Word[], at: number, clock: Parsed<ClockTime>): boolean {
  if (clock.value.half !== undefined) return true;
  const all = words.slice(at, clock.next).map(({ word }) => word);
  return all.some((word) => /:|^(oclock|past|till|to|noon|midnight)$/.test(word));
}

/** Reads date, part of day and clock time in any order, each once. */
function piecesAt(words: readonly Word[], at: number, today: LocalFields): Pieces[] {
  const all: Pieces[] = [];
  let pieces: Pieces = { next: at };
  for (;;) {
    const { next } = pieces;
    const part = pieces.part ? undefined : partAt(words, next);
    const day = pieces.day ? undefined : dayAt(words, next, today);
    const joined = /^(at|by|around|about|for)$/.test(wordAt(words, next));
    const bare = !joined && at === next && pieces.day === undefined && pieces.part === undefined;
    const told = pieces.clock ? undefined : clockAt(words, joined ? next + 1 : next);
    const clock = bare && told && !isPlainly(words, next, told) ? undefined : told;
    if (day) {
      const tonight = wordAt(words, day.next - 1) === "tonight" ? PARTS.night : undefined;
      pieces = { ...pieces, day: day.value, next: day.next, ...(tonight && { part: tonight }) };
    } else if (part) pieces = { ...pieces, part: part.value, next: part.next };
    else if (clock) pieces = { ...pieces, clock: clock.value, next: clock.next };
    else return all.reverse();
    all.push(pieces);
  }
}

/** Hours before seven are taken for the afternoon where nothing else tells. */
function hourFor(clock: ClockTime, part: DayPart | undefined): number {
  const half = clock.half ?? part?.half;
  const hours = hoursOf(half ? { ...clock, half } : clock);
  const [first = 0, second = first] = hours;
  return clock.hour >= 7 && clock.hour < 12 ? first : second;
}

function instantFor(pieces: Pieces, nowMs: number, zone: string): number {
  const today = localFields(nowMs, zone);
  const clock = pieces.clock ?? { hour: pieces.part?.hour ?? DAY_HOUR, minute: 0 };
  if (pieces.day) {
    const fields = { ...today, ...pieces.day };
    const hour = hourFor(clock, pieces.part);
    const instant = onDay(fields, 0, hour, clock.minute, zone);
    if (instant > nowMs || clock.half || hour >= 12) return instant;
    return onDay(fields, 0, hour + 12, clock.minute, zone);
  }
  const half = clock.half ?? pieces.part?.half;
  const hours = hoursOf(half ? { ...clock, half } : clock);
  const all = [0, 1].flatMap((days) =>
    hours.map((hour) => onDay(today, days, hour, clock.minute, zone)),
  );
  return Math.min(...all.filter((instant) => instant > nowMs));
}

/** A future moment, in epoch milliseconds, the longest reading first. */
export function futureMomentsAt(
  words: readonly Word[],
  at: number,
  nowMs: number,
  zone: string,
): Parsed<number>[] {
  const relative = wordAt(words, at) === "in" ? at + 1 : at;
  const found = durationsAt(words, relative).flatMap((duration) => {
    const fromNow =
      wordAt(words, duration.next) === "from" && wordAt(words, duration.next + 1) === "now";
    if (relative === at && !fromNow) return [];
    const next = fromNow ? duration.next + 2 : duration.next;
    const value = afterMinutes(nowMs, duration.value, zone);
    const timed = duration.value % 1440 === 0 ? clockOnDay(words, next, value, nowMs, zone) : [];
    return [...timed, { value, next }];
  });
  if (found.length > 0) return found;
  const today = localFields(nowMs, zone);
  return piecesAt(words, at, today).map((pieces) => ({
    value: instantFor(pieces, nowMs, zone),
    next: pieces.next,
  }));
}

/** A clock time or part of day after "in two weeks": "in two weeks at noon". */
function clockOnDay(
  words: readonly Word[],
  at: number,
  dayMs: number,
  nowMs: number,
  zone: string,
): Parsed<number>[] {
  const today = localFields(nowMs, zone);
  const { year, month, day } = localFields(dayMs, zone);
  return piecesAt(words, at, today)
    .filter((pieces) => pieces.day === undefined)
    .map((pieces) => ({
      value: instantFor({ ...pieces, day: { year, month, day } }, nowMs, zone),
      next: pieces.next,
    }));
}

/** Whole days keep the time of day when clocks go forward or back in between. */
function afterMinutes(nowMs: number, minutes: number, zone: string): number {
  const days = minutes / 1440;
  if (!Number.isInteger(days) || days === 0) return nowMs + minutes * MINUTE_MS;
  const now = localFields(nowMs, zone);
  return onDay(now, days, now.hour, now.minute, zone);
}
