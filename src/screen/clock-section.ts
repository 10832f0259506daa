/**
 * The one large clock, in a place and a size that depend on the window alone: its digits, how much
 * is done, when it ends; or STOP, and what to do.
 */
import type { BigClock } from "../ports/view.ts";
import { bigDigits, type DigitSize, digitsWidth } from "./big-digits.ts";
import { cells, printable, wrap } from "./printable.ts";
import { BOLD, cut, type Look, type Row, rowOf, span, widthOf } from "./row.ts";
import type { Section } from "./sections.ts";
import { keySpans, stateLook } from "./shelf-section.ts";

/** The widest that is shown of a clock that ends within the hour. */
const WIDEST = "59:59";
/** Room that the words beside the digits need. */
const BESIDE = 19;
const GAP = 3;
/** Narrower than this, the name of the work stands above the digits. */
const ABOVE = 59;

/** Rows of the window from which on each size is used, with the columns left of it. */
const FROM_ROWS: [DigitSize, number][] = [
  [3, 84],
  [2, 50],
  [1, 23],
  ["half", 12],
];

/** How large digits are in this many rows and cells; undefined where words take their place. */
function sizeFor(width: number, height: number): DigitSize | undefined {
  return FROM_ROWS.find(([size, rows]) => {
    return height >= rows && digitsWidth(WIDEST, size) + GAP + BESIDE <= width;
  })?.[0];
}

type ClockTurns = { least: number; whole: number };

/** @param height rows of the whole window. */
export function clockSection(
  clock: BigClock | undefined,
  width: number,
  height: number,
  turns: ClockTurns,
): Section {
  if (!clock) return { draw: () => [], steps: [] };
  const size = sizeFor(width, height);
  const line = oneLine(clock, width);
  const above = size && width < ABOVE ? [cut(titleRow(clock), width)] : [];
  const rows = size ? [...above, ...withWords(clock, size, width, above.length > 0)] : [line];
  const all = [...rows, ...toDoRows(clock, width)];
  return {
    steps: [
      { to: 1, turn: turns.least },
      { to: all.length, turn: turns.whole, whole: true },
    ],
    draw: (_, own) => (own < all.length ? [line] : all),
  };
}

function look({ state }: BigClock): Look {
  return stateLook(state);
}

/** `HEAT process · canner, Provider`. */
function titleRow({ title, name, shelf }: BigClock): Row {
  const what = [title, name].filter(Boolean).join(" · ");
  return [span(shelf.toUpperCase(), { bold: true, tone: shelf }), span(` ${what}`, BOLD)];
}

function oneLine(clock: BigClock, width: number): Row {
  const say = clock.say ? ` ${clock.say}` : "";
  const head = span(`${clock.digits} `, look(clock));
  return cut([head, ...titleRow(clock), span(`${say}  ${clock.ends}`)], width);
}

/** What to do about a stopped clock, across the whole width. */
function toDoRows(clock: BigClock, width: number): Row[] {
  if (!clock.say) return [];
  const lines = wrap(printable(clock.say), width - 2, 3);
  return lines.map((text) => {
    return rowOf(` ${text}${" ".repeat(Math.max(0, width - 1 - cells(text)))}`, look(clock));
  });
}

/** What it is, how much is done and when it ends, beside the digits. */
function withWords(clock: BigClock, size: DigitSize, width: number, titled: boolean): Row[] {
  const across = digitsWidth(clock.digits, size);
  const field = Math.max(across, digitsWidth(WIDEST, size));
  const indent = field - across;
  const strong: Look = clock.state === "stopped" ? { bold: true, tone: "stop" } : look(clock);
  const drawn = bigDigits(clock.digits, size).map((text): Row => {
    return [span(" ".repeat(indent)), span(text, strong)];
  });
  const all = wordsBeside(clock, width - field - GAP, drawn.length + Number(titled));
  const words = titled ? all.slice(1) : all;
  const top = Math.floor((drawn.length - words.length) / 2);
  return drawn.map((row, index) => {
    const own = words[index - top];
    if (!own) return row;
    return cut([...row, span(" ".repeat(field + GAP - widthOf(row))), ...own], width);
  });
}

function wordsBeside(clock: BigClock, room: number, most: number): Row[] {
  const { done, ends, shelf, keys } = clock;
  const bar = done ? [barRow(done, room, { tone: shelf })] : [];
  const both: Row = [
    span(ends),
    ...(keys.length > 0 && ends ? [span("  ")] : []),
    ...keySpans(keys),
  ];
  const apart = [rowOf(ends), keySpans(keys)];
  const last = (widthOf(both) <= room ? [both] : apart).filter((row) => widthOf(row) > 0);
  return [titleRow(clock), ...bar, ...last].slice(0, most);
}

/** `████████░░░░ 3:20 of 15:00`. */
function barRow({ part, text }: NonNullable<BigClock["done"]>, room: number, tone: Look): Row {
  const across = Math.min(40, room - cells(text) - 1);
  if (across < 4 && cells(text) > room) return barRow({ part, text: "" }, room, tone);
  if (across < 4) return rowOf(text);
  const full = Math.floor(part * across);
  return [span("█".repeat(full), tone), span("░".repeat(across - full), tone), span(` ${text}`)];
}
