/** The conversation: two lines of it, or the whole with the newest at the bottom. */
import type { LineKind, ShownLine } from "../ports/view.ts";
import { printable, wrap } from "./printable.ts";
import { BOLD, DIM, type Look, type Row, rowOf, span } from "./row.ts";
import type { Section } from "./sections.ts";

/** Each kind by a word, so that it needs no color. */
const LINE_WORDS: Record<LineKind, string> = {
  heard: "you",
  answer: "answer",
  prompt: "do",
  alarm: "ALARM",
  asked: "asks",
  refused: "cannot",
  notice: "note",
};

const LOOKS: Record<LineKind, Look> = {
  heard: DIM,
  answer: {},
  prompt: {},
  alarm: { bold: true, tone: "late" },
  asked: { bold: true, tone: "ask" },
  refused: { bold: true },
  notice: DIM,
};

/** Narrower than this, lines go without the time. */
const WIDE = 50;
/** The most rows of an answer while the talk is not open. */
const MOST_ROWS = 4;
const WHOLE = 40;

/** What was heard last and what was answered: a row each, and more where there is room for it. */
export function latestSection(lines: ShownLine[], width: number, turns: [number, number]): Section {
  if (lines.length === 0) return { steps: [], draw: () => [] };
  const whole = lines.flatMap((line) => lineRows(line, width, MOST_ROWS));
  return {
    steps: [
      { to: lines.length, turn: turns[0] },
      { to: whole.length, turn: turns[1], whole: true },
    ],
    draw: (_, height) => {
      const rows = height >= whole.length ? whole : lines.flatMap((one) => lineRows(one, width, 1));
      return rows.slice(0, height);
    },
  };
}

/** The whole conversation, opened so many rows back from its end. */
export function openTalkSection(lines: ShownLine[], back: number, turn: number): Section {
  return {
    steps: [{ to: WHOLE * WHOLE, turn }],
    draw: (width, height) => {
      const all = lines.flatMap((line) => lineRows(line, width, WHOLE));
      const end = Math.max(Math.min(all.length, height), all.length - back);
      return all.slice(Math.max(0, end - height), end);
    },
  };
}

function lineRows(line: ShownLine, width: number, most: number): Row[] {
  const time = width >= WIDE ? `${line.time} ` : "";
  const lead = `${time}${LINE_WORDS[line.kind].padEnd(6)} `;
  const room = width - lead.length;
  const look = LOOKS[line.kind];
  const strong = line.kind === "heard" || line.kind === "notice" ? DIM : BOLD;
  if (room < 16) return wrap(printable(line.text), width, most).map((text) => rowOf(text, look));
  return wrap(printable(line.text), room, most).map((text, index) => {
    const head = index === 0 ? span(lead, strong) : span(" ".repeat(lead.length));
    return [head, span(text, look)];
  });
}
