/** A request to plan a day, as people say it: the lots, when to be done, when to be left alone. */
import type { LotToPlan } from "../../kitchen/day/wanted.ts";
import { HOUR_MS, localDay, localFields, localIso } from "../../kitchen/time.ts";
import type { Context } from "../context.ts";
import { textOf, utteranceOf } from "../words.ts";
import { clockAt } from "./clock-times.ts";
import { futureMomentsAt } from "./future-times.ts";
import { lotAt, type SpokenLot, titledRecipe } from "./spoken-lots.ts";
import { type Names, type PlainWords, spokenNames } from "./targets.ts";

type DayWish = { items: LotToPlan[]; finishBy?: string; quiet?: string; exact: boolean };

const BY =
  /[\s,;]*\b(?:and |all |to |be )*(?:done|finished|ready|through|over)\s+(?=by\b|at\b|before\b)/i;
const QUIET = /[\s,;]*\b(?:and )?(?:quiet|no hands|leave me alone)\s+(?:from|between)\s+/i;
const BETWEEN = /\s*(?:,|;|\band\b|\bplus\b|\bthen\b)+\s*/gi;
/** More pieces than this, split at every "and", are a story. */
const MOST_PIECES = 24;

/** Reads a whole text; undefined where any part of it is neither a lot nor a time. */
export function dayWishIn(text: string, context: Context, plain: PlainWords): DayWish | undefined {
  let rest = text;
  const wish: DayWish = { items: [], exact: true };
  const quiet = QUIET.exec(rest);
  if (quiet) {
    const hours = hoursIn(rest.slice(quiet.index + quiet[0].length));
    if (!hours) return undefined;
    wish.quiet = hours;
    rest = rest.slice(0, quiet.index);
  }
  const by = BY.exec(rest);
  if (by) {
    const { words } = utteranceOf(rest.slice(by.index + by[0].length));
    const from = words[0]?.word === "before" ? 1 : 0;
    const moments = futureMomentsAt(words, from, context.nowMs, context.zone);
    const whole = moments.find((one) => one.next === words.length);
    const clock = from === 1 ? futureClock(words.slice(1), context) : undefined;
    const at = whole?.value ?? clock;
    if (at === undefined) return undefined;
    wish.finishBy = localIso(inTheEvening(words, at, context), context.zone);
    rest = rest.slice(0, by.index);
  }
  const lots = lotsIn(rest, spokenNames(context), plain);
  if (!lots) return undefined;
  for (const lot of lots) {
    const chosen = titledRecipe(lot, context);
    const recipe = chosen ?? lot.recipes[0];
    if (!recipe) return undefined;
    if (!lot.exact || !chosen) wish.exact = false;
    wish.items.push({
      recipe,
      ...(lot.variety ? { variety: lot.variety } : {}),
      ...(lot.weightLb === undefined ? {} : { weightLb: lot.weightLb }),
    });
  }
  return wish;
}

/** A day in the kitchen that is said to end at a bare hour ends no later than this (our choice). */
const LATEST_FINISH_HOUR = 21;

/** "Done by nine", said in the morning, is nine in the evening. */
function inTheEvening(
  words: ReturnType<typeof utteranceOf>["words"],
  at: number,
  { nowMs, zone }: Context,
): number {
  const clock = clockAt(words, 1);
  const bare = clock?.next === words.length && clock.value.half === undefined;
  const { hour } = localFields(at, zone);
  const today = localDay(at, zone) === localDay(nowMs, zone);
  const morning = bare && today && hour < 12 && hour + 12 <= LATEST_FINISH_HOUR;
  return morning ? at + 12 * HOUR_MS : at;
}

function futureClock(words: ReturnType<typeof utteranceOf>["words"], context: Context) {
  const at = utteranceOf(`at ${textOf(words)}`).words;
  const moments = futureMomentsAt(at, 0, context.nowMs, context.zone);
  return moments.find((one) => one.next === at.length)?.value;
}

/** `22:00-06:00` of "ten to six": the first in the evening, the second in the morning. */
function hoursIn(text: string): string | undefined {
  const [, first = "", second = ""] = /^(.*)\b(?:to|and|until|till)\b(.*)$/i.exec(text) ?? [];
  const [from, to] = [clockText(first, "pm"), clockText(second, "am")];
  return from && to && `${from}-${to}`;
}

function clockText(text: string, half: "am" | "pm"): string | undefined {
  const { words } = utteranceOf(text);
  const clock = clockAt(words, 0);
  if (!clock || clock.next !== words.length) return undefined;
  const { hour, minute } = clock.value;
  const plain = hour > 12 || hour === 0;
  const of24 = plain ? hour : (hour % 12) + ((clock.value.half ?? half) === "pm" ? 12 : 0);
  return [of24, minute].map((value) => String(value).padStart(2, "0")).join(":");
}

/** Reads one lot of a list. */
export type ReadLot = typeof lotAt;

/** The lots of a list; a name with "and" in it is tried whole before it is taken apart. */
export function lotsIn(
  text: string,
  names: Names,
  plain: PlainWords,
  read: ReadLot = lotAt,
): SpokenLot[] | undefined {
  const pieces: string[] = [];
  const joins: string[] = [];
  let from = 0;
  for (const match of text.matchAll(BETWEEN)) {
    pieces.push(text.slice(from, match.index));
    joins.push(match[0]);
    from = match.index + match[0].length;
  }
  pieces.push(text.slice(from));
  if (pieces.length > MOST_PIECES) return undefined;
  const best: (SpokenLot[] | undefined)[] = [[]];
  for (let end = 1; end <= pieces.length; end++) {
    for (let start = end - 1; start >= Math.max(0, end - 3); start--) {
      const before = best[start];
      if (!before) continue;
      const joined = pieces.slice(start, end).reduce((all, piece, index) => {
        return index === 0 ? piece : `${all}${joins[start + index - 1] ?? ""}${piece}`;
      }, "");
      const lot = oneLot(joined, names, plain, read);
      if (!lot) continue;
      const found = [...before, ...lot];
      const known = best[end];
      if (!known || rank(found) > rank(known)) best[end] = found;
    }
  }
  const all = best[pieces.length];
  return all && all.length > 0 ? all : undefined;
}

/** More lots rank higher, and so do fewer words besides their names; a guess ranks below none. */
function rank(lots: readonly SpokenLot[]): number {
  return lots.reduce((sum, lot) => sum + (lot.exact ? 1 : -1) - (lot.variety ? 0.1 : 0), 0);
}

/** One lot, or none for empty words between two separators. */
function oneLot(
  text: string,
  names: Names,
  plain: PlainWords,
  read: ReadLot,
): SpokenLot[] | undefined {
  const { words } = utteranceOf(text);
  if (words.length === 0) return [];
  const lot = read(text, words, 0, words.length, names, plain);
  return lot && [lot];
}
