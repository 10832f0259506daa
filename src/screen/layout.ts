/**
 * Where everything stands on a window of a size. Never more rows than the window less one, never
 * wider than the window less one; what does not fit is left out, the least needed first.
 */
import {
  headerSection,
  inputLine,
  inputSection,
  keySection,
  nextSection,
  questionSection,
  warningSection,
} from "./bottom-sections.ts";
import { clockSection } from "./clock-section.ts";
import { lanesSection } from "./lanes-section.ts";
import { beside, cut, type Row } from "./row.ts";
import { column, type Section, share } from "./sections.ts";
import { shelfSection } from "./shelf-section.ts";
import { talkSection } from "./talk-section.ts";
import type { View } from "./view.ts";
import { welcomeSection } from "./welcome-section.ts";

export type Frame = {
  rows: Row[];
  /** Where the cursor of the typed line stands; absent where that line is not shown. */
  cursor?: { x: number; y: number };
};

const TWO_COLUMNS = 96;
const THREE_COLUMNS = 160;
const GAP = 3;

/** Draws a view for a window; every row is given, so a frame of a window is always as high. */
export function layOut(view: View, columns: number, rows: number): Frame {
  const width = Math.max(0, Math.floor(columns) - 1);
  const height = Math.max(0, Math.floor(rows) - 1);
  if (width === 0 || height === 0) return { rows: [] };
  const sections = columnsOf(view, width, height);
  const edges = [...sections.top, body(sections), ...sections.bottom];
  const heights = share(edges, height);
  const drawn: Row[] = [];
  let cursor: Frame["cursor"];
  for (const [index, section] of edges.entries()) {
    const own = heights[index] ?? 0;
    if (own === 0) continue;
    const block = section.draw(width, own).slice(0, own);
    if (index === edges.length - 1) {
      cursor = { x: Math.min(width - 1, inputLine(view, width).x), y: drawn.length };
    }
    drawn.push(...block);
    // Only what is in the middle may come out shorter than its room.
    while (drawn.length < heights.slice(0, index + 1).reduce((sum, one) => sum + one, 0)) {
      drawn.push([]);
    }
  }
  const all = drawn.slice(0, height).map((row) => cut(row, width));
  while (all.length < height) all.push([]);
  return { rows: all, ...(cursor ? { cursor } : {}) };
}

type Parts = {
  top: Section[];
  bottom: Section[];
  columns: { sections: Section[]; width: number }[];
};

/** The middle: one to three columns, with all the room that the edges leave. */
function body(parts: Parts): Section {
  return {
    steps: [
      { to: 1, turn: 2 },
      { to: Number.MAX_SAFE_INTEGER, turn: 60 },
      { to: 3, turn: 4 },
      { to: 9, turn: 20 },
    ].sort((a, b) => a.turn - b.turn),
    draw(width, height) {
      const [only, ...others] = parts.columns;
      if (!only) return [];
      if (others.length === 0) return column(only.sections, width, height);
      const blocks = parts.columns.map((one) => ({
        rows: column(one.sections, one.width, height),
        width: one.width,
      }));
      return beside(blocks, height, GAP);
    },
  };
}

function columnsOf(view: View, width: number, height: number): Parts {
  const top = [headerSection(view, 10), warningSection(view, width, 1)];
  const lanes = height >= 22 && width >= 60 ? [lanesSection(view, 30)] : [];
  const bottom = [
    ...lanes,
    questionSection(view, width, [3, 12]),
    keySection(view, width, [5, 13]),
    inputSection(view, height >= 2 || view.input.text ? 0 : 99),
  ];
  return { top, bottom, columns: middle(view, width, height) };
}

function middle(view: View, width: number, height: number): Parts["columns"] {
  const talk = (steps: Section["steps"]) => talkSection(view.talk, view.zone, steps);
  const whole = Number.MAX_SAFE_INTEGER;
  if (width >= THREE_COLUMNS && height >= 16 && !view.empty) {
    const third = Math.floor((width - 2 * GAP) / 3);
    const left = shelves(view, third);
    return [
      { width: third, sections: [left.clock, left.hands] },
      { width: third, sections: [left.heat, left.rest, left.timers, nextSection(view, 20)] },
      { width: width - 2 * third - 2 * GAP, sections: [talk([{ to: whole, turn: 1 }])] },
    ];
  }
  const two = width >= TWO_COLUMNS && height >= 10;
  const across = two ? Math.floor((width - GAP) * 0.56) : width;
  const parts = shelves(view, across);
  const main = view.empty
    ? [welcomeSection(1)]
    : [parts.clock, parts.hands, parts.heat, parts.rest, parts.timers, nextSection(view, 25)];
  if (two) {
    return [
      { width: across, sections: main },
      { width: width - across - GAP, sections: [talk([{ to: whole, turn: 1 }])] },
    ];
  }
  const steps = [
    { to: 2, turn: 15 },
    { to: 4, turn: 31 },
    { to: 12, turn: 45 },
  ];
  return [{ width, sections: [...main, talk(steps)] }];
}

/** Turns in which the shelves and the large clock take their room. */
function shelves(view: View, width: number) {
  return {
    clock: clockSection(view.soonest, width, { least: 7, half: 16, full: 27, huge: 50 }),
    hands: shelfSection("HANDS", "needs you now", view.hands, { least: 1, items: 8, details: 17 }),
    heat: shelfSection("HEAT", "on the fire", view.heat, { least: 2, items: 9, details: 28 }),
    rest: shelfSection("REST", "waits by itself", view.rest, { least: 3, items: 10, details: 40 }),
    timers: shelfSection("TIMERS", "yours", view.timers, { least: 4, items: 11, details: 41 }),
  };
}
