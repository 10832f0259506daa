/** A line of the screen: pieces of text, each with its look. Every piece is made printable. */
import type { Tone } from "./palette.ts";
import { cells, clip, printable } from "./printable.ts";

export type Look = {
  bold?: true;
  dim?: true;
  inverse?: true;
  /** Only ever used together with words or shapes that mean the same. */
  tone?: Tone;
};

export type Styled = { text: string; look: Look; width: number };
export type Row = Styled[];

const PLAIN_LOOK: Look = {};
export const BOLD: Look = { bold: true };
export const DIM: Look = { dim: true };

/** The only way text gets onto the screen. */
export function span(text: string, look: Look = PLAIN_LOOK): Styled {
  const clean = printable(text);
  return { text: clean, look, width: cells(clean) };
}

export function rowOf(text: string, look?: Look): Row {
  return [span(text, look)];
}

export function widthOf(row: Row): number {
  return row.reduce((sum, one) => sum + one.width, 0);
}

/** The row cut to a width, its last piece marked where something was left out. */
export function cut(row: Row, width: number): Row {
  const kept: Row = [];
  let left = width;
  for (const one of row) {
    if (one.width <= left) {
      kept.push(one);
      left -= one.width;
      continue;
    }
    if (left > 0) kept.push(span(clip(one.text, left), one.look));
    break;
  }
  return kept;
}

/** The row at exactly a width: cut, or filled with spaces. */
function pad(row: Row, width: number): Row {
  const kept = cut(row, width);
  const left = width - widthOf(kept);
  return left > 0 ? [...kept, span(" ".repeat(left))] : kept;
}

/** One row at the left and one at the right; the right stays whole, the left is cut. */
export function ends(left: Row, right: Row, width: number): Row {
  const end = cut(right, width);
  const room = width - widthOf(end);
  if (room <= 1) return end;
  return [...pad(left, room - 1), span(" "), ...end];
}

/** Blocks side by side, each at its own width, with the number of rows asked for. */
export function beside(
  blocks: { rows: Row[]; width: number }[],
  height: number,
  gap: number,
): Row[] {
  const rows: Row[] = [];
  for (let index = 0; index < height; index++) {
    const row: Row = [];
    for (const [place, block] of blocks.entries()) {
      if (place > 0) row.push(span(" ".repeat(gap)));
      const last = place === blocks.length - 1;
      const own = block.rows[index] ?? [];
      row.push(...(last ? cut(own, block.width) : pad(own, block.width)));
    }
    rows.push(row);
  }
  return rows;
}

/** The text of a row, without looks. */
export function textOf(row: Row): string {
  return row.map((one) => one.text).join("");
}

/** A key that distinguishes rows, looks included. */
export function keyOf(row: Row): string {
  return row.map((one) => `${one.text}\u0000${lookKey(one.look)}`).join("\u0001");
}

function lookKey({ bold, dim, inverse, tone }: Look): string {
  return `${bold ? "b" : ""}${dim ? "d" : ""}${inverse ? "i" : ""}${tone ?? ""}`;
}
