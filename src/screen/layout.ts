/**
 * Where everything goes in a window of a given size. Always at least one row and one column less
 * than the window; what does not fit is left out, the least needed first.
 */
import type { View } from "../ports/view.ts";
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
import { welcomeSection } from "./welcome-section.ts";

type ScreenFrame = {
  rows: Row[];
  /** Where the cursor of the typed line is; absent where that line is not shown. */
  cursor?: { x: number; y: number };
};

const TWO_COLUMNS = 96;
const THREE_COLUMNS = 160;
const GAP = 3;
const WHOLE = Number.MAX_SAFE_INTEGER;

/** Draws a view for a window; every row is included, so frames for one window are equally high. */
export function layOut(view: View, columns: number, rows: number): ScreenFrame {
  const width = Math.max(0, Math.floor(columns) - 1);
  const height = Math.max(0, Math.floor(rows) - 1);
  if (width === 0 || height === 0) return { rows: [] };
  const sections = columnsOf(view, width, height);
  const edges = [...sections.top, body(sections), ...sections.bottom];
  const heights = share(edges, height);
  const drawn: Row[] = [];
  let cursor: ScreenFrame["cursor"];
  for (const [index, section] of edges.entries()) {
    const own = heights[index] ?? 0;
    if (own === 0) continue;
    const block = section.draw(width, own).slice(0, own);
    if (index === edges.length - 1) {
      cursor = { x: Math.min(width - 1, inputLine(view, width).x), y: drawn.length };
    }
    drawn.push(...block);
    // Only the middle may turn out shorter than its room.
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

/** The middle: all the room that the edges leave. */
function body(parts: Parts): Section {
  return {
    steps: [
      { to: 1, turn: 2 },
      { to: 2, turn: 4 },
      { to: 3, turn: 6 },
      { to: 9, turn: 20 },
      { to: 16, turn: 25 },
      { to: WHOLE, turn: 60 },
    ],
    draw: (_, height) => drawColumns(parts.columns, height),
  };
}

type Column = { sections: Section[]; width: number };

function drawColumns(columns: Column[], height: number): Row[] {
  const [only, ...others] = columns;
  if (only && others.length === 0) return column(only.sections, only.width, height);
  const blocks = columns.map(({ sections, width }) => {
    return { rows: column(sections, width, height), width };
  });
  return beside(blocks, height, GAP);
}

/** Columns inside a column, under the large clock that reaches over all of them. */
function sideBySide(columns: Column[]): Section {
  return {
    steps: [
      { to: 8, turn: 1 },
      { to: 14, turn: 30 },
      { to: WHOLE, turn: 60 },
    ],
    draw: (_, height) => {
      if (height < 10) return drawColumns(columns, height);
      return [[], ...drawColumns(columns, height - 1)];
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
  const talk = (steps: Section["steps"]) => talkSection(view.talk, steps);
  if (width >= THREE_COLUMNS && height >= 16 && !view.empty) {
    const third = Math.floor((width - 2 * GAP) / 3);
    const left = 2 * third + GAP;
    const parts = shelves(view, left);
    const shelved = sideBySide([
      { width: third, sections: [parts.hands] },
      { width: third, sections: [parts.heat, parts.rest, parts.timers, nextSection(view, 20)] },
    ]);
    return [
      { width: left, sections: [parts.clock, shelved] },
      { width: width - left - GAP, sections: [talk([{ to: WHOLE, turn: 1 }])] },
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
      { width: width - across - GAP, sections: [talk([{ to: WHOLE, turn: 1 }])] },
    ];
  }
  const steps = [
    { to: 2, turn: 15 },
    { to: 4, turn: 31 },
    { to: 12, turn: 45 },
  ];
  return [{ width, sections: [...main, talk(steps)] }];
}

/** The turns in which the shelves and the large clock take their room. */
function shelves(view: View, width: number) {
  return {
    clock: clockSection(view.soonest, width, { least: 7, half: 14, full: 16, huge: 47 }),
    hands: shelfSection("HANDS", "needs you now", view.hands, { least: 1, items: 8, details: 17 }),
    heat: shelfSection("HEAT", "on the heat", view.heat, { least: 2, items: 9, details: 28 }),
    rest: shelfSection("REST", "waits by itself", view.rest, { least: 3, items: 10, details: 40 }),
    timers: shelfSection("TIMERS", "yours", view.timers, { least: 4, items: 11, details: 41 }),
  };
}
