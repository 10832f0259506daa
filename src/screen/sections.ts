/**
 * A part of the screen: how much room it needs, how much more it could use, and how it is drawn.
 */
import type { Row } from "./row.ts";

export type Section = {
  /** Draws into at most this many rows of a given width. */
  draw(width: number, height: number): Row[];
  /**
   * How it grows: heights in rising order, each with its turn (lower turns come first, across all
   * sections). A `whole` step is taken completely or not at all.
   */
  steps: { to: number; turn: number; whole?: true }[];
};

/** Heights of sections that share a column, by their turns; never more in total than there is. */
export function share(sections: Section[], height: number): number[] {
  const heights = sections.map(() => 0);
  const turns = sections
    .flatMap((section, index) => section.steps.map((step) => ({ ...step, index })))
    .sort((a, b) => a.turn - b.turn);
  let left = height;
  for (const { index, to, whole } of turns) {
    const more = to - (heights[index] ?? 0);
    if (more <= 0 || left <= 0 || (whole && more > left)) continue;
    const given = Math.min(more, left);
    heights[index] = (heights[index] ?? 0) + given;
    left -= given;
  }
  return heights;
}

/** Draws a column of sections into exactly this many rows, spread out where there is room. */
export function column(sections: Section[], width: number, height: number): Row[] {
  const heights = share(sections, height);
  const blocks = sections
    .map((section, index) => {
      const own = heights[index] ?? 0;
      return own > 0 ? section.draw(width, own).slice(0, own) : [];
    })
    .filter((rows) => rows.length > 0);
  const used = blocks.reduce((sum, rows) => sum + rows.length, 0);
  let gaps = Math.min(height - used, blocks.length - 1);
  const rows: Row[] = [];
  for (const [index, block] of blocks.entries()) {
    if (index > 0 && gaps > 0) {
      rows.push([]);
      gaps -= 1;
    }
    rows.push(...block);
  }
  while (rows.length < height) rows.push([]);
  return rows.slice(0, height);
}
