/**
 * Where everything goes in a window of a given size. Always at least one row and one column less
 * than the window; what does not fit is left out, the least needed first.
 */
import type { Item, View } from "../ports/view.ts";
import {
  askingSection,
  headerSection,
  inputLine,
  inputSection,
  nextSection,
  unexplainedSection,
  warningSection,
} from "./bottom-sections.ts";
import { clockSection } from "./clock-section.ts";
import { lanesSection } from "./lanes-section.ts";
import { beside, cut, type Row } from "./row.ts";
import { column, type Section, share } from "./sections.ts";
import { handsSection, shelfSection } from "./shelf-section.ts";
import { latestSection, openTalkSection } from "./talk-section.ts";
import { welcomeSection } from "./welcome-section.ts";

type ScreenFrame = {
  rows: Row[];
  /** Where the cursor of the typed line is; absent where that line is not shown. */
  cursor?: { x: number; y: number };
};

const TWO_COLUMNS = 96;
const GAP = 3;
const WHOLE = Number.MAX_SAFE_INTEGER;

/**
 * Who takes room first. What needs the hands now, the clock and the question come whole before
 * anything else gets a second row.
 */
const TURNS = {
  warning: 1,
  asking: [2, 5],
  hands: { least: 3, brief: 6, whole: 13, items: 20 },
  clock: { least: 4, whole: 7 },
  header: 8,
  heat: { least: 9, items: 17, details: 30 },
  rest: { least: 10, items: 18, details: 40 },
  timers: { least: 11, items: 19, details: 41 },
  unexplained: [12, 23],
  latest: [15, 25],
  openTalk: 24,
  welcome: [2, 26],
  lanes: 33,
  next: 35,
} as const;

/** Draws a view for a window; every row is included, so frames for one window are equally high. */
export function layOut(view: View, columns: number, rows: number): ScreenFrame {
  const width = Math.max(0, Math.floor(columns) - 1);
  const height = Math.max(0, Math.floor(rows) - 1);
  if (width === 0 || height === 0) return { rows: [] };
  const edges = edgesOf(view, width, height);
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

/** All sections from top to bottom; the clock keeps its place under the first row. */
function edgesOf(view: View, width: number, height: number): Section[] {
  const open = view.talkBack !== undefined;
  const lanes = height >= 22 && width >= 60 && !open ? [lanesSection(view, TURNS.lanes)] : [];
  return [
    headerSection(view, TURNS.header),
    clockSection(view.clock, width, height, TURNS.clock),
    warningSection(view, width, TURNS.warning),
    body(middle(view, width)),
    unexplainedSection(view, [...TURNS.unexplained]),
    ...(open ? [] : [latestSection(view.latest, width, [...TURNS.latest])]),
    ...lanes,
    askingSection(view, width, [...TURNS.asking]),
    inputSection(view, height >= 2 || view.input.text ? 0 : 99),
  ];
}

type Column = { sections: Section[]; width: number };

/** The middle grows as the sections in its columns do, and takes what is left at the end. */
function body(columns: Column[]): Section {
  const turns = new Set(columns.flatMap(({ sections }) => sections).flatMap(turnsOf));
  const steps = [...turns]
    .sort((a, b) => a - b)
    .map((turn) => {
      const needs = columns.map(({ sections }) => heightBy(sections, turn));
      return { to: Math.max(...needs), turn };
    });
  return {
    steps: [...steps, { to: WHOLE, turn: 60 }],
    draw: (_, height) => drawColumns(columns, height),
  };
}

function turnsOf({ steps }: Section): number[] {
  return steps.map(({ turn }) => turn);
}

/** The rows that sections have taken together once a turn is over. */
function heightBy(sections: Section[], turn: number): number {
  return sections.reduce((sum, { steps }) => {
    return sum + Math.max(0, ...steps.filter((step) => step.turn <= turn).map(({ to }) => to));
  }, 0);
}

function drawColumns(columns: Column[], height: number): Row[] {
  const [only, ...others] = columns;
  if (only && others.length === 0) return column(only.sections, only.width, height);
  const blocks = columns.map(({ sections, width }) => {
    return { rows: column(sections, width, height), width };
  });
  return beside(blocks, height, GAP);
}

function middle(view: View, width: number): Column[] {
  const two = width >= TWO_COLUMNS;
  const left = two ? Math.floor((width - GAP) * 0.56) : width;
  const right = two ? width - left - GAP : width;
  const hands = (across: number) =>
    view.empty ? welcomeSection(TURNS.welcome) : handsShelf(view, across);
  if (view.talkBack !== undefined) {
    const talk = openTalkSection(view.talk, view.talkBack, TURNS.openTalk);
    if (!two) return [{ width, sections: [talk] }];
    return [
      { width: left, sections: [hands(left)] },
      { width: right, sections: [talk] },
    ];
  }
  const others = view.empty ? [] : otherShelves(view, view.hands.length > 0 ? right : width);
  if (!two || view.hands.length === 0 || others.every(({ steps }) => steps.length === 0)) {
    return [{ width, sections: [hands(width), ...others] }];
  }
  return [
    { width: left, sections: [hands(left)] },
    { width: right, sections: others },
  ];
}

/** Work without the clock that is shown large, and without what is shown with it. */
function withoutClock(view: View, items: Item[]): Item[] {
  return items.flatMap((item) => {
    if (item.id !== view.clock?.id) return [item];
    const { clock: _, ...rest } = item;
    return item.shelf === "hands" ? [{ ...rest, keys: [] }] : [];
  });
}

function handsShelf(view: View, width: number): Section {
  const items = withoutClock(view, view.hands);
  const shelf = { title: "HANDS", about: "needs you now", tone: "hands", items } as const;
  return handsSection(shelf, width, TURNS.hands);
}

function otherShelves(view: View, width: number): Section[] {
  const [heat, rest, timers] = [view.heat, view.rest, view.timers].map((items) => {
    return withoutClock(view, items);
  });
  const shelf = (title: string, about: string, tone: Item["shelf"], items: Item[] = []) => {
    return { title, about, tone, items };
  };
  return [
    shelfSection(shelf("HEAT", "on the heat", "heat", heat), width, TURNS.heat),
    shelfSection(shelf("REST", "waits by itself", "rest", rest), width, TURNS.rest),
    shelfSection(shelf("TIMERS", "yours", "timers", timers), width, TURNS.timers),
    nextSection(view, TURNS.next),
  ];
}
