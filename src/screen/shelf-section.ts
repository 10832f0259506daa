/** Draws one shelf: its items with their clocks, in the lines available. */
import type { ClockState, Item, LabeledKey, ShownClock } from "../ports/view.ts";
import { cells, printable, wrap } from "./printable.ts";
import { BOLD, cut, DIM, ends, type Look, type Row, rowOf, span, textOf, widthOf } from "./row.ts";
import type { Section } from "./sections.ts";

/** Narrower than this, a clock shows only its time left, not when it is due. */
const NARROW = 44;
const VERY_NARROW = 28;
/** Lines longer than this are hard to read. */
const WIDEST_SAY = 96;
/** No text is longer than this; what is whole is never cut. */
const WHOLE = 40;

type Shelf = { title: string; about: string; tone: Item["shelf"]; items: Item[] };

type HandsTurns = { least: number; brief: number; whole: number; items: number };

/** The first thing for the hands, whole or short but never cut, and the others by their names. */
export function handsSection(shelf: Shelf, width: number, turns: HandsTurns): Section {
  const [first, ...others] = shelf.items;
  if (!first) return { draw: () => [], steps: [] };
  const head = headingRow(shelf, width);
  const brief = firstRows(first, first.brief ?? "", width);
  const whole = firstRows(first, first.say ?? "", width);
  const rest = others.map((item) => itemRow(item, width));
  return {
    draw(_, height) {
      if (height < 1 + brief.length) {
        // Hardly a window: what to do counts more than the name of its shelf.
        return height < brief.length ? brief.slice(0, height) : brief;
      }
      const shown = height < 1 + whole.length ? brief : whole;
      return [head, ...shown, ...fitting(rest, height - 1 - shown.length)];
    },
    steps: [
      { to: 1, turn: turns.least },
      { to: 1 + brief.length, turn: turns.brief },
      { to: 1 + whole.length, turn: turns.whole },
      { to: 1 + whole.length + rest.length, turn: turns.items },
    ],
  };
}

/** The name of the work, then what goes into it, one to a line, then what to do. */
function firstRows(item: Item, text: string, width: number): Row[] {
  const indent = width >= NARROW ? "  " : "";
  const room = Math.min(width, WIDEST_SAY) - indent.length;
  const amounts = (item.amounts ?? []).flatMap((one) => {
    return wrap(printable(one), room - 2, WHOLE).map((line, index) => {
      return [span(`${indent}${index === 0 ? "· " : "  "}${line}`, { bold: true })];
    });
  });
  const say = wrap(printable(text), room, WHOLE).map((line) => rowOf(`${indent}${line}`));
  return [...headRows(item, width), ...amounts, ...say];
}

/** Its name on one row, or on two where it would be cut. */
function headRows(item: Item, width: number): Row[] {
  const { name, title } = item;
  const row = itemRow(item, width);
  const text = textOf(row);
  if (!title || (text.includes(printable(name)) && text.includes(printable(title)))) return [row];
  const names = wrap(printable(name), width, WHOLE).map((line) => rowOf(line));
  return [...names, itemRow({ ...item, name: title, title: "" }, width)];
}

type ShelfTurns = { least: number; items: number; details: number };

/** A shelf whose work goes on by itself; what to do about it is added where there is room. */
export function shelfSection(shelf: Shelf, width: number, turns: ShelfTurns): Section {
  const { items } = shelf;
  if (items.length === 0) return { draw: () => [], steps: [] };
  const head = headingRow(shelf, width);
  const rows = items.map((item) => itemRow(item, width));
  const details = items.map(({ say, brief }) => {
    const text = say ?? brief;
    return text
      ? wrap(printable(text), Math.min(width, WIDEST_SAY) - 2, WHOLE).map((one) =>
          rowOf(`  ${one}`),
        )
      : [];
  });
  const all = rows.flatMap((row, index) => [row, ...(details[index] ?? [])]);
  return {
    draw(_, height) {
      // A heading above nothing but a number of things would show none of them.
      if (height === 1 || (height === 2 && rows.length > 1)) return [oneRow(shelf, width)];
      if (height > all.length) return [head, ...all];
      return [head, ...fitting(rows, height - 1)];
    },
    steps: [
      { to: 1, turn: turns.least },
      { to: rows.length + 1, turn: turns.items },
      { to: all.length + 1, turn: turns.details, whole: true },
    ],
  };
}

/** As many rows as fit; where some are left out, the last says how many. */
function fitting(rows: Row[], room: number): Row[] {
  if (rows.length <= room) return rows;
  if (room <= 0) return [];
  const shown = rows.slice(0, room - 1);
  return [...shown, rowOf(`+${rows.length - shown.length} more`, DIM)];
}

function headingRow({ title, about, tone }: Shelf, width: number): Row {
  const head = span(title, { bold: true, tone });
  return [head, ...(width >= NARROW ? [span(`  ${about}`, DIM)] : [])];
}

/** A shelf in a single row: its first piece of work, and how many more. */
function oneRow({ title, tone, items }: Shelf, width: number): Row {
  const [first] = items;
  if (!first) return [];
  const more = items.length > 1 ? ` +${items.length - 1}` : "";
  const head = span(width < VERY_NARROW ? "" : `${title}${more} `, { bold: true, tone });
  return [head, ...itemRow(first, width - head.width)];
}

/** `Provider: boil the brine          11:40 till 14:05`. */
function itemRow(item: Item, width: number): Row {
  const { name, title } = item;
  const left = [span(name), ...(title ? [span(": "), span(title, BOLD)] : [])];
  const room = width - cells(printable(`${name}: ${title}`)) - 1;
  const right = rightSide(item, width, room);
  if (right.length === 0) return cut(left, width);
  // Where both do not fit, the stage says more than the batch.
  if (widthOf(right) > room && title) {
    return ends([span(title, BOLD), span(` ${name}`)], right, width);
  }
  return ends(left, right, width);
}

/** Its keys, and its clock or how it stands; shorter where its name would be cut. */
function rightSide({ clock, stands, keys }: Item, width: number, room: number): Row {
  const own = clock ? clockSpans(clock, width) : stands ? [span(stands, DIM)] : [];
  const signs = keys.map(({ key }) => span(`[${key}]`, BOLD));
  const both = (one: Row) => (one.length > 0 && own.length > 0 ? [...one, span("  "), ...own] : []);
  const forms = [both(keySpans(keys)), ...(clock ? [] : [keySpans(keys)]), both(signs)];
  const fitting = forms.find((one) => one.length > 0 && widthOf(one) <= room);
  return fitting ?? (own.length > 0 ? own : signs);
}

/** `[-] boil lost`. */
export function keySpans(keys: readonly LabeledKey[]): Row {
  return keys.flatMap(({ key, label }, index) => [
    ...(index > 0 ? [span("  ")] : []),
    span(`[${key}]`, BOLD),
    span(` ${label}`),
  ]);
}

function clockSpans({ state, text, due }: ShownClock, width: number): Row {
  const till = due && width >= NARROW ? [span(` till ${due}`, DIM)] : [];
  return [span(text, stateLook(state)), ...till];
}

const STATE_LOOKS: Record<ClockState, Look> = {
  running: BOLD,
  open: { bold: true, tone: "ready" },
  over: { bold: true, tone: "late" },
  stopped: { bold: true, inverse: true, tone: "stop" },
};

export function stateLook(state: ClockState): Look {
  return STATE_LOOKS[state];
}
