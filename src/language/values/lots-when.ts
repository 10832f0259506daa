/** Lots by when they were put up: "the Provider from August", "Saturday's Provider". */
import type { Ref } from "../../kitchen/command.ts";
import { DAY_MS, localFields, MONTHS } from "../../kitchen/time.ts";
import type { Context } from "../context.ts";
import { refOfLot } from "./jar-names.ts";

export type LotsWhen = { text: string; said: string; fits: (ref: Ref) => boolean };

const MONTH_NAMES: readonly string[] = MONTHS.map((month) => month.toLowerCase());
const DAYS = "sunday monday tuesday wednesday thursday friday saturday".split(" ");
const SEASONS: Readonly<Record<string, readonly number[]>> = {
  spring: [3, 4, 5],
  summer: [6, 7, 8, 9],
  fall: [9, 10, 11],
  autumn: [9, 10, 11],
  winter: [12, 1, 2],
};
const MONTH = `(?:${MONTH_NAMES.join("|")})`;
const DAY = `(?:${DAYS.join("|")})`;
const YEAR = "(?:(?:19|20)\\d\\d)";
const SEASON = `(?:${Object.keys(SEASONS).join("|")})`;
const MOMENT =
  `(?:yesterday|(?:last|this) (?:year|week|month|${SEASON}|${DAY}|${MONTH})|${DAY}|` +
  `${MONTH}(?: \\d{1,2}(?:st|nd|rd|th)?(?!\\d))?(?:,? ${YEAR})?|${YEAR})`;
/** "Saturday's Provider", "last year's beets", "the August Provider", "the 2026 Provider". */
const BEFORE = new RegExp(
  `\\b(?:the |my |our )?(${MOMENT}['’]s|${MONTH}(?: ${YEAR})?|${YEAR}) (?=[a-z])`,
  "i",
);
/** "The Provider from August", "the beets we put up last fall". */
const BEHIND = new RegExp(
  "\\b(?:that )?(?:(?:we|i) )?(?:(?:put up|made|canned) )?(?:(?:from|of|in|on|back in) )?" +
    `(${MOMENT})\\b`,
  "i",
);
const LED = /^(that |we |i |put up|made|canned|from|of )/i;

type Day = { year: number; month: number; day: number; weekday: number; wallMs: number };

function dayOf(wallMs: number, zone: string): Day {
  const { year, month, day } = localFields(wallMs, zone);
  const weekday = new Date(Date.UTC(year, month - 1, day)).getUTCDay();
  return { year, month, day, weekday, wallMs };
}

/** Days from one calendar day to another. */
function apart(from: Day, to: Day): number {
  const at = ({ year, month, day }: Day) => Date.UTC(year, month - 1, day);
  return Math.round((at(to) - at(from)) / DAY_MS);
}

/** The year of these months that is meant by "last": before this month. */
function lastYearOf(months: readonly number[], { year, month }: Day): number {
  return Math.max(...months) < month ? year : year - 1;
}

/** Whether a day is the moment that was said, seen from today. */
function isThen(said: string, day: Day, today: Day): boolean {
  const words = said
    .toLowerCase()
    .replace(/['’]s$/, "")
    .split(/[ ,]+/);
  const last = words[0] === "last";
  const ago = apart(day, today);
  const year = words.map(Number).find((one) => one > 1900);
  return words.every((word) => {
    if (word === "last" || word === "this") return true;
    if (word === "yesterday") return ago === 1;
    if (word === "year") return day.year === today.year - (last ? 1 : 0);
    if (word === "week") return last ? ago >= 1 && ago <= 13 : ago <= 6;
    if (word === "month") {
      return 12 * (today.year - day.year) + today.month - day.month === (last ? 1 : 0);
    }
    const weekday = DAYS.indexOf(word);
    if (weekday >= 0) return day.weekday === weekday && ago >= 0 && ago <= (last ? 13 : 7);
    const months =
      SEASONS[word] ?? (MONTH_NAMES.includes(word) ? [MONTH_NAMES.indexOf(word) + 1] : undefined);
    if (months)
      return months.includes(day.month) && (!last || day.year === lastYearOf(months, today));
    const number = Number.parseInt(word, 10);
    return number > 1900 ? day.year === year : day.day === number;
  });
}

/** The words without the moment, and which lots it fits; undefined where none is said. */
export function lotsWhen(text: string, context: Context): LotsWhen | undefined {
  const before = BEFORE.exec(text);
  const behind = before ? undefined : BEHIND.exec(text);
  const found = before ?? (behind && LED.test(behind[0]) ? behind : undefined);
  const said = found?.[1];
  if (!found || said === undefined) return undefined;
  const { nowMs, zone } = context;
  const today = dayOf(nowMs, zone);
  const lots = (context.onRecord?.batches ?? []).filter(({ begunMs }) => {
    return begunMs !== undefined && isThen(said, dayOf(begunMs, zone), today);
  });
  const fitting = new Set(lots.map((lot) => JSON.stringify(refOfLot(lot))));
  const owners = new Set(lots.map(({ id }) => id));
  const rest =
    text.slice(0, found.index) + (before ? "the " : "") + text.slice(found.index + found[0].length);
  return {
    text: rest.replace(/ +/g, " ").trim(),
    said: `from ${said.replace(/['’]s$/, "")}`,
    fits: (ref) => {
      if (!("owner" in ref)) return false;
      return fitting.has(JSON.stringify(ref)) || (ref.lot === undefined && owners.has(ref.owner));
    },
  };
}
