/** What is shown at the edges: warnings, doubts, what is expected of the person, the typed line. */
import type { View } from "../ports/view.ts";
import { cells, printable, wrap } from "./printable.ts";
import { BOLD, cut, DIM, ends, type Row, rowOf, span, widthOf } from "./row.ts";
import type { Section } from "./sections.ts";
import { keySpans } from "./shelf-section.ts";

export function headerSection(view: View, turn: number): Section {
  return {
    steps: [{ to: 1, turn }],
    draw(width) {
      const left = [span(view.time, BOLD), span(` ${view.day}  ${view.place}`)];
      const right = width >= 60 ? [span(view.status || "Brinebell", DIM)] : [];
      return [ends(left, right, width)];
    },
  };
}

/** The most rows of a warning or of a hint; a question is never cut. */
const MOST_ROWS = 4;
const WHOLE = 40;

export function warningSection(view: View, width: number, turn: number): Section {
  const look = { bold: true, inverse: true, tone: "late" } as const;
  const lines = view.warnings.flatMap((text) => wrap(printable(text), width, MOST_ROWS));
  return {
    steps: lines.length > 0 ? [{ to: lines.length, turn }] : [],
    draw: (_, height) => lines.slice(0, height).map((line) => rowOf(line, look)),
  };
}

/** Words that raised a doubt, until somebody has explained them. */
export function unexplainedSection(view: View, turns: [number, number]): Section {
  const { unexplained } = view;
  if (unexplained.length === 0) return { steps: [], draw: () => [] };
  const look = { bold: true, tone: "late" } as const;
  return {
    steps: [
      { to: 1, turn: turns[0] },
      { to: unexplained.length, turn: turns[1] },
    ],
    draw: (width, height) => {
      const more = unexplained.length - height;
      const shown = unexplained.slice(-height);
      return shown.map((text, index) => {
        const others = index === 0 && more > 0 ? ` (and ${more} more)` : "";
        return cut([span(`Not explained yet${others}: `, look), span(text)], width);
      });
    },
  };
}

/**
 * The one line for what is expected of the person: the open question with what answers it, else
 * what Space does and the keys that no piece of work has; or what the program itself has to say.
 */
export function askingSection(view: View, width: number, turns: [number, number]): Section {
  const rows = askingRows(view, width);
  return {
    steps: [
      { to: 1, turn: turns[0] },
      { to: rows.length, turn: turns[1] },
    ],
    draw: (_, height) => rows.slice(0, height),
  };
}

function askingRows(view: View, width: number): Row[] {
  if (view.hint !== undefined) {
    return wrap(printable(view.hint), width, MOST_ROWS).map((line) => rowOf(line, BOLD));
  }
  if (view.question) return questionRows(view.question, width);
  const { key, keys } = view;
  const own = keys.filter(({ owner }) => owner === "");
  const pieces: Row[] = [
    key.works
      ? [span("Space", { bold: true, inverse: true }), span(` ${key.text}`, BOLD)]
      : [span(key.text, DIM)],
    ...own.map((one): Row => keySpans([one])),
  ];
  const row = pieces.flatMap((piece, index) => [...(index > 0 ? [span("   ")] : []), ...piece]);
  return widthOf(row) <= width ? [row] : pieces.map((one) => cut(one, width));
}

function questionRows({ text, answer, of }: NonNullable<View["question"]>, width: number): Row[] {
  const place = of > 1 ? `1 of ${of}: ` : "";
  const asked = wrap(`? ${place}${printable(text)}`, width, WHOLE);
  const how = wrap(`(${printable(answer)})`, width, WHOLE);
  const together = `${asked.at(-1)} ${how[0]}`;
  if (how.length === 1 && cells(together) <= width) {
    return [...asked.slice(0, -1).map((line) => rowOf(line, ASK)), rowOf(together, ASK)];
  }
  return [
    ...asked.map((line) => rowOf(line, ASK)),
    ...how.map((line) => rowOf(line, { tone: "ask" })),
  ];
}

const ASK = { bold: true, tone: "ask" } as const;

const PROMPT = "> ";

type DrawnInput = { row: Row; x: number };

/** The line as typed, scrolled so that the cursor stays in sight. */
export function inputLine(view: View, width: number): DrawnInput {
  const room = width - PROMPT.length - 1;
  if (room <= 0) return { row: rowOf(PROMPT.slice(0, width)), x: Math.max(0, width - 1) };
  const characters = [...view.input.text];
  let before = "";
  for (let at = view.input.cursor - 1; at >= 0; at--) {
    const longer = `${printable(characters[at] ?? "")}${before}`;
    if (cells(longer) > room) break;
    before = longer;
  }
  let after = "";
  for (let at = view.input.cursor; at < characters.length; at++) {
    const longer = `${after}${printable(characters[at] ?? "")}`;
    if (cells(before) + cells(longer) > room) break;
    after = longer;
  }
  return { row: [span(PROMPT, BOLD), span(before + after)], x: PROMPT.length + cells(before) };
}

export function inputSection(view: View, turn: number): Section {
  return {
    steps: [{ to: 1, turn }],
    draw: (width) => [inputLine(view, width).row],
  };
}

export function nextSection(view: View, turn: number): Section {
  const queue = view.queue.length > 0 ? [`For the canner: ${view.queue.join(", then ")}`] : [];
  const next = view.next.length > 0 ? [`Next: ${view.next.join("; ")}`] : [];
  const lines = [...next, ...queue].map(printable);
  return {
    steps:
      lines.length > 0
        ? [
            { to: lines.length, turn },
            { to: lines.length * 2, turn: turn + 9 },
          ]
        : [],
    draw(width, height) {
      if (height < lines.length * 2)
        return lines.slice(0, height).map((line) => cut(rowOf(line), width));
      return lines.flatMap((line) => wrap(line, width, 2)).map((line) => rowOf(line));
    },
  };
}
