/** The conversation: what was heard and answered, the newest at the bottom. */
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
  alarm: { bold: true, color: "yellow" },
  asked: { bold: true, color: "cyan" },
  refused: { bold: true },
  notice: DIM,
};

/** Narrower than this, lines go without the time. */
const WIDE = 60;
const MOST_LINES = 10;

export function talkSection(lines: ShownLine[], steps: Section["steps"]): Section {
  return {
    draw: (width, height) => drawTalk(lines, width, height),
    steps: lines.length > 0 ? steps : [],
  };
}

function drawTalk(lines: ShownLine[], width: number, height: number): Row[] {
  const rows: Row[] = [];
  for (let index = lines.length - 1; index >= 0 && rows.length < height; index--) {
    const line = lines[index];
    if (!line) continue;
    const left = height - rows.length;
    const own = lineRows(line, width, Math.min(MOST_LINES, left));
    rows.unshift(...own);
  }
  return rows;
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
