import { DAY_MS, instantOf, type LocalFields, localFields, MINUTE_MS } from "../../kitchen/time.ts";
import { clockText } from "../../reckon/quiet-hours.ts";
import { wordSet } from "../grammar/word-set.ts";
import type { Word } from "../words.ts";
import { wordAt } from "../words.ts";
import { durationsAt } from "./durations.ts";
import { type Parsed, smallWholeAt } from "./spoken-numbers.ts";

/**
 * Times on the clock as people say them ("ten past two", "2:10", "two fifteen", "noon"), and the
 * moment in the past that a report means by one.
 */

/** `half` is the half of the day where it was said or follows from a 24-hour time. */
export type ClockTime = { hour: number; minute: number; half?: "am" | "pm" };

/** Units that make a number before them no hour. */
const UNIT =
  /^(pounds?|cups?|inch(es)?|pints?|quarts?|jars?|minutes?|hours?|percent|of|hundred|psi|feet)$/;

function isHourEnd(words: readonly Word[], at: number): boolean {
  return !UNIT.test(wordAt(words, at));
}

/** Minutes past or to the hour: "ten past two", "quarter to three", "half past one". */
function relativeAt(words: readonly Word[], at: number): Parsed<ClockTime> | undefined {
  let next = wordAt(words, at) === "a" ? at + 1 : at;
  let minutes: number;
  const first = wordAt(words, next);
  const halfPast = first === "half" ? smallWholeAt(words, next + 1) : undefined;
  // "Half five" is half past five, as it is said in Britain.
  if (halfPast && halfPast.value > 0 && halfPast.value <= 12 && isHourEnd(words, halfPast.next)) {
    return { value: { hour: halfPast.value, minute: 30 }, next: halfPast.next };
  }
  if (first === "quarter" || first === "half") {
    minutes = first === "half" ? 30 : 15;
    next += 1;
  } else {
    const number = smallWholeAt(words, next);
    if (!number || number.value > 59) return undefined;
    minutes = number.value;
    next = number.next;
    if (/^minutes?$/.test(wordAt(words, next))) next += 1;
  }
  const way = wordAt(words, next);
  const past = /^(past|after)$/.test(way);
  const before = /^(to|before|till|of)$/.test(way);
  if (!past && !before) return undefined;
  const hour = hourAt(words, next + 1);
  if (!hour) return undefined;
  const total = hour.value.hour * 60 + (past ? minutes : 720 - minutes);
  return {
    value: {
      hour: past ? hour.value.hour : Math.floor(total / 60) % 12 || 12,
      minute: past ? minutes : 60 - minutes,
      ...(hour.value.half ? { half: hour.value.half } : {}),
    },
    next: hour.next,
  };
}

/** An hour from 1 to 12 (or 0 to 23 in figures), noon or midnight. */
function hourAt(words: readonly Word[], at: number): Parsed<ClockTime> | undefined {
  const word = wordAt(words, at);
  if (word === "noon" || word === "midday") {
    return { value: { hour: 12, minute: 0, half: "pm" }, next: at + 1 };
  }
  if (word === "midnight") return { value: { hour: 12, minute: 0, half: "am" }, next: at + 1 };
  const number = smallWholeAt(words, at);
  if (!number || number.value > 23 || (number.value === 0 && word !== "0")) return undefined;
  return { value: { hour: number.value, minute: 0 }, next: number.next };
}

/** "two fifteen", "one oh five", "2:10", "13:15", "nine". */
function plainAt(words: readonly Word[], at: number): Parsed<ClockTime> | undefined {
  const figures = /^([01]?\d|2[0-3])[:.]([0-5]\d)$/.exec(wordAt(words, at));
  if (figures) {
    return { value: { hour: Number(figures[1]), minute: Number(figures[2]) }, next: at + 1 };
  }
  const hour = hourAt(words, at);
  if (!hour || hour.value.half) return hour;
  const following = wordAt(words, hour.next);
  if (following === "oh" || following === "o") {
    const unit = smallWholeAt(words, hour.next + 1);
    if (unit && unit.value < 10) {
      return { value: { hour: hour.value.hour, minute: unit.value }, next: unit.next };
    }
  }
  const minute = smallWholeAt(words, hour.next);
  if (minute && minute.value >= 10 && minute.value < 60 && hour.value.hour > 0) {
    return { value: { hour: hour.value.hour, minute: minute.value }, next: minute.next };
  }
  return hour;
}

const HALVES: [string[], "am" | "pm"][] = [
  [["am"], "am"],
  [["pm"], "pm"],
  [["a", "m"], "am"],
  [["p", "m"], "pm"],
  [["in", "the", "morning"], "am"],
  [["this", "morning"], "am"],
  [["in", "the", "afternoon"], "pm"],
  [["this", "afternoon"], "pm"],
  [["in", "the", "evening"], "pm"],
  [["this", "evening"], "pm"],
  [["at", "night"], "pm"],
  [["tonight"], "pm"],
];

function matchesAt(words: readonly Word[], at: number, phrase: readonly string[]): boolean {
  return phrase.every((word, step) => wordAt(words, at + step) === word);
}

/** The half of the day said here, if any. */
function halfOfDayAt(words: readonly Word[], at: number): Parsed<"am" | "pm"> | undefined {
  const hit = HALVES.find(([phrase]) => matchesAt(words, at, phrase));
  return hit ? { value: hit[1], next: at + hit[0].length } : undefined;
}

/** A clock time beginning at this word, with "o'clock", "am" or "in the morning" after it. */
export function clockAt(words: readonly Word[], at: number): Parsed<ClockTime> | undefined {
  const start = /^(about|around|exactly|roughly)$/.test(wordAt(words, at)) ? at + 1 : at;
  const clock = relativeAt(words, start) ?? plainAt(words, start);
  if (!clock) return undefined;
  let { next } = clock;
  if (wordAt(words, next) === "oclock") next += 1;
  if (wordAt(words, next) === "sharp") next += 1;
  const half = halfOfDayAt(words, next);
  if (!half || clock.value.half) return { value: clock.value, next };
  return { value: { ...clock.value, half: half.value }, next: half.next };
}

/** "By the stove clock": where the words end that say which clock it was read from. */
function behindClock(words: readonly Word[], at: number): number {
  const named = wordAt(words, at) === "by" && /^(the|my|our)$/.test(wordAt(words, at + 1));
  const end = [at + 2, at + 3].find((place) => /^(clock|watch)$/.test(wordAt(words, place)));
  return named && end !== undefined ? end + 1 : at;
}

/** Minutes from midnight of one end of a night; an hour without its half lies in the night. */
function minuteOfNight({ hour, minute, half }: ClockTime): number {
  const late = half === undefined && hour > 5 && hour < 12;
  const [hours = 0] = hoursOf(
    late ? { hour, minute, half: "pm" } : { hour, minute, half: half ?? "am" },
  );
  return hours * 60 + minute;
}

/** "From ten to six", "half past nine to six thirty in the morning": hours of the night. */
export function nightAt(words: readonly Word[], at: number): Parsed<string> | undefined {
  const start = /^(from|between)$/.test(wordAt(words, at)) ? at + 1 : at;
  // "Ten to six" is a span here, and no time of the day.
  const begins = [plainAt(words, start), clockAt(words, start)].flatMap((one) => one ?? []);
  for (const from of begins) {
    const half = from.value.half ? undefined : halfOfDayAt(words, from.next);
    const next = half?.next ?? from.next;
    if (!/^(to|till|until|through|and)$/.test(wordAt(words, next))) continue;
    const to = clockAt(words, next + 1);
    if (!to) continue;
    const begin = { ...from.value, ...(half ? { half: half.value } : {}) };
    const minutes = [minuteOfNight(begin), minuteOfNight({ half: "am", ...to.value })];
    return { value: minutes.map(clockText).join("-"), next: to.next };
  }
  return undefined;
}

/** The hours of the day (0 to 23) a clock time can mean. */
export function hoursOf(time: ClockTime): number[] {
  if (time.hour > 12 || time.hour === 0) return [time.hour];
  const am = time.hour % 12;
  if (time.half === "am") return [am];
  if (time.half === "pm") return [am + 12];
  return [am, am + 12];
}

/** A clock time on the day of the fields given, moved by whole days. */
export function onDay(
  day: Omit<LocalFields, "weekday">,
  days: number,
  hour: number,
  minute: number,
  zone: string,
): number {
  const shifted = new Date(Date.UTC(day.year, day.month - 1, day.day) + days * DAY_MS);
  const fields = {
    year: shifted.getUTCFullYear(),
    month: shifted.getUTCMonth() + 1,
    day: shifted.getUTCDate(),
    hour,
    minute,
    second: 0,
  };
  return instantOf(fields, zone);
}

/** A report may run this far ahead of the kitchen's clock. */
const AHEAD_MS = 2 * MINUTE_MS;

/** The latest instant, not in the future, at which the clock showed that time. */
export function lastTimeOf(time: ClockTime, nowMs: number, zone: string): number {
  const today = localFields(nowMs, zone);
  const all = [0, -1].flatMap((days) =>
    hoursOf(time).map((hour) => onDay(today, days, hour, time.minute, zone)),
  );
  const past = all.filter((instant) => instant <= nowMs + AHEAD_MS);
  return Math.max(...past);
}

/** What may stand before a moment, and takes nothing from it. */
const ABOUT = wordSet(
  "since about around round from roughly approximately only like maybe perhaps say near nearly",
  "starting beginning already",
);
/** Behind one of these a bare number is an hour; "maybe eleven" may be anything. */
const LEADS_TO = wordSet("at since from of gone after past starting beginning");
/** "Just gone ten to" is within a minute of it. */
const JUST_AFTER_MS = MINUTE_MS;

/** Where the words end that only lead to a moment: "as of", "since just about". */
function behindLead(words: readonly Word[], at: number): number {
  let next = at;
  if (wordAt(words, next) === "as" && wordAt(words, next + 1) === "of") next += 2;
  while (
    ABOUT.has(wordAt(words, next)) ||
    (wordAt(words, next) === "just" && ABOUT.has(wordAt(words, next + 1)))
  ) {
    next += 1;
  }
  return next;
}

/** "Just gone", "just after": where these end. */
function behindJust(words: readonly Word[], at: number): number {
  const just = wordAt(words, at) === "just" && /^(gone|after|past)$/.test(wordAt(words, at + 1));
  return just ? at + 2 : at;
}

const GONE_BY = /^(ago|back|earlier|since|gone)$/;
/** A mark between two words leaves a gap between them. */
const isApart = (one: Word | undefined, other: Word | undefined) =>
  one !== undefined && other !== undefined && other.start - one.end > 1;

/** "Seven or eight minutes", "two, three minutes": the shorter, so that no start is moved back. */
export function shorterAt(words: readonly Word[], at: number): Parsed<number>[] {
  const first = smallWholeAt(words, at);
  const joined = first && /^(or|to)$/.test(wordAt(words, first.next));
  const start = joined ? first.next + 1 : first?.next;
  const second = start === undefined ? undefined : smallWholeAt(words, start);
  if (!first || start === undefined || !second || second.value <= first.value) {
    return durationsAt(words, at);
  }
  if (!joined && second.value !== first.value + 1) return durationsAt(words, at);
  return durationsAt(words, start).map(({ value, next }) => {
    return { value: (value * first.value) / second.value, next };
  });
}

/** "Ten minutes ago", "a good hour back", "eight minutes before now". */
function agoAt(words: readonly Word[], at: number, nowMs: number): Parsed<number> | undefined {
  const good = wordAt(words, at) === "a" && wordAt(words, at + 1) === "good";
  for (const { value, next } of shorterAt(words, good ? at + 2 : at)) {
    const before = wordAt(words, next) === "before" && wordAt(words, next + 1) === "now";
    // "Five minutes since": ago, unless what it is since is told.
    const since = wordAt(words, next) === "since" && next + 1 < words.length;
    const told = since && !isApart(words[next], words[next + 1]);
    if (before || (GONE_BY.test(wordAt(words, next)) && !told)) {
      return { value: nowMs - value * MINUTE_MS, next: next + (before ? 2 : 1) };
    }
  }
  return undefined;
}

/**
 * A moment in the past: "two minutes ago", "a quarter of an hour back", "at ten past two", "since
 * noon", "yesterday at four". Instants in epoch milliseconds, the longest reading first.
 */
export function pastMomentsAt(
  words: readonly Word[],
  at: number,
  nowMs: number,
  zone: string,
): Parsed<number>[] {
  let start = behindLead(words, at);
  const ago = agoAt(words, start, nowMs);
  if (ago) return [ago];
  const just = behindJust(words, start);
  const later = just > start ? JUST_AFTER_MS : 0;
  start = just;
  const prepositioned = wordAt(words, start) === "at" || start > at;
  if (wordAt(words, start) === "at") start = behindLead(words, start + 1);
  const bare = prepositioned ? hourlessAt(words, start) : undefined;
  if (bare) return [{ value: lastMinuteOf(bare.value, nowMs, zone) + later, next: bare.next }];
  const clock = clockAt(words, start);
  if (!clock || isMeasured(words, start, clock)) return [];
  const led = words.slice(at, start).some(({ word }) => LEADS_TO.has(word));
  const certain = led || isPlainlyClock(words, start, clock);
  if (!certain) return [];
  const next = behindClock(words, clock.next);
  return [{ value: lastTimeOf(clock.value, nowMs, zone) + later, next }];
}

/** "About eleven pounds", "like six minutes": a bare number before a unit is no hour. */
function isMeasured(words: readonly Word[], start: number, clock: Parsed<ClockTime>): boolean {
  const bare = clock.next === start + 1 && clock.value.half === undefined;
  const [last, unit] = [words[clock.next - 1], words[clock.next]];
  return bare && unit !== undefined && UNIT.test(unit.word) && !isApart(last, unit);
}

/**
 * "At ten to", "since quarter past": minutes of an hour that nobody names, at the end of what is
 * said. A mark behind it leaves a gap to the next word.
 */
function hourlessAt(words: readonly Word[], at: number): Parsed<number> | undefined {
  const quarter = /^(quarter|half)$/.exec(wordAt(words, wordAt(words, at) === "a" ? at + 1 : at));
  const number = quarter ? undefined : smallWholeAt(words, at);
  const next = quarter ? (wordAt(words, at) === "a" ? at + 2 : at + 1) : number?.next;
  const minutes = quarter ? (quarter[0] === "half" ? 30 : 15) : number?.value;
  if (next === undefined || !minutes || minutes >= 60) return undefined;
  const [way, behind] = [words[next], words[next + 1]];
  if (!way || !/^(to|till|past)$/.test(way.word)) return undefined;
  if (behind && !isApart(way, behind)) return undefined;
  return { value: way.word === "past" ? minutes : 60 - minutes, next: next + 1 };
}

/** The latest instant, not in the future, at which the clock showed those minutes. */
function lastMinuteOf(minute: number, nowMs: number, zone: string): number {
  const now = localFields(nowMs, zone);
  const instant = onDay(now, 0, now.hour, minute, zone);
  return instant <= nowMs + AHEAD_MS ? instant : instant - 60 * MINUTE_MS;
}

/** Without "at" or "since", a clock time is only what cannot be a bare number. */
function isPlainlyClock(words: readonly Word[], start: number, clock: Parsed<ClockTime>): boolean {
  return clock.value.half !== undefined || clock.next - start > 1 || /:/.test(wordAt(words, start));
}
