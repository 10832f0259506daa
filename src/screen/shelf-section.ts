/** Draws one shelf: its items with their clocks, in the lines available. */
import type { Item, ShownClock } from "../ports/view.ts";
import { cells, printable, wrap } from "./printable.ts";
import { BOLD, DIM, ends, type Look, type Row, rowOf, span } from "./row.ts";
import type { Section } from "./sections.ts";

/** Narrower than this, a clock shows only its time left, not when it is due. */
const NARROW = 44;
const VERY_NARROW = 28;
/** The most lines for what to do, since the caution is at its end. */
const MOST_SAY = 8;
/** Roughly the cells in such a line, before its width is known. */
const SAY_CELLS = 54;

type ShelfTurns = { least: number; items: number; details: number };

export function shelfSection(title: string, about: string, items: Item[], turns: ShelfTurns) {
  const section: Section = {
    draw: (width, height) => drawShelf(title, about, items, width, height),
    steps: [],
  };
  if (items.length === 0) return section;
  section.steps = [
    { to: 1, turn: turns.least },
    { to: items.length + 1, turn: turns.items },
    { to: items.length + 1 + detailRows(items), turn: turns.details },
  ];
  return section;
}

function detailRows(items: Item[]): number {
  return items.reduce((sum, item) => sum + sayRows(item) + (item.keys.length ? 1 : 0), 0);
}

function sayRows({ say }: Item): number {
  return say ? Math.min(MOST_SAY, Math.ceil(cells(printable(say)) / SAY_CELLS) + 1) : 0;
}

function drawShelf(
  title: string,
  about: string,
  items: Item[],
  width: number,
  height: number,
): Row[] {
  const [first] = items;
  if (!first || height <= 0) return [];
  const more = items.length - 1;
  if (height === 1) {
    const name = `${title}${more > 0 ? ` +${more}` : ""} `;
    const head = span(width < VERY_NARROW ? "" : name, BOLD);
    return [[head, ...itemRow(first, width - head.width)]];
  }
  const heading = [span(title, BOLD), ...(width >= NARROW ? [span(`  ${about}`, DIM)] : [])];
  const room = height - 1;
  if (items.length > room) {
    const shown = items.slice(0, room - 1).map((item) => itemRow(item, width));
    return [heading, ...shown, rowOf(`  +${items.length - shown.length} more`, DIM)];
  }
  return [heading, ...withDetails(items, width, room)];
}

/** Every item gets its line; the room left goes to labeled keys, then to what to do. */
function withDetails(items: Item[], width: number, room: number): Row[] {
  let left = room - items.length;
  const keys = items.map((item) => {
    if (item.keys.length === 0 || left <= 0) return [];
    left -= 1;
    return [keysRow(item)];
  });
  const says = items.map((item) => {
    if (!item.say || left <= 0) return [];
    const lines = wrap(printable(item.say), Math.min(width, 96) - 2, Math.min(left, MOST_SAY));
    left -= lines.length;
    return lines.map((line) => rowOf(`  ${line}`));
  });
  return items.flatMap((item, index) => [
    itemRow(item, width),
    ...(says[index] ?? []),
    ...(keys[index] ?? []),
  ]);
}

function keysRow(item: Item): Row {
  return item.keys.flatMap((key) => [
    span("  "),
    span(`[${key.key}]`, BOLD),
    span(` ${key.label}`),
  ]);
}

/** `Provider: boil the brine          2 min 41 s  14:05`. */
function itemRow(item: Item, width: number): Row {
  const { clock, name, title, stands } = item;
  const right = clock ? clockSpans(clock, width) : stands ? [span(stands, DIM)] : [];
  const left = [span(name), ...(title ? [span(": "), span(title, BOLD)] : [])];
  const whole =
    cells(printable(`${name}: ${title}`)) + right.reduce((sum, one) => sum + one.width, 1);
  // Where both do not fit, the stage says more than the batch.
  if (whole > width && title && width < NARROW) {
    return ends([span(title, BOLD), span(` ${name}`)], right, width);
  }
  return ends(left, right, width);
}

function clockSpans(clock: ShownClock, width: number): Row {
  const look = clockLook(clock);
  if (width < VERY_NARROW) {
    const short = clock.state === "lost" ? "LOST" : clock.digits;
    return [span(short, look)];
  }
  const text = width < NARROW && clock.state === "lost" ? "STOPPED" : clock.text;
  const due = clock.due && width >= NARROW ? [span(`  ${clock.due}`, DIM)] : [];
  return [span(text, look), ...due];
}

export function clockLook({ state }: ShownClock): Look {
  if (state === "lost") return { bold: true, inverse: true, color: "red" };
  if (state === "over") return { bold: true, color: "yellow" };
  return state === "open" ? { bold: true, color: "green" } : BOLD;
}
