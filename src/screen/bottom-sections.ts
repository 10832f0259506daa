/** What is shown at the edges: warnings, the open question, what the key does, the typed line. */
import type { View } from "../ports/view.ts";
import { cells, printable, wrap } from "./printable.ts";
import { BOLD, cut, DIM, ends, type Row, rowOf, span } from "./row.ts";
import type { Section } from "./sections.ts";

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

export function warningSection(view: View, width: number, turn: number): Section {
  const look = { bold: true, inverse: true, color: "red" } as const;
  const lines = view.warnings.flatMap((text) => wrap(printable(text), width, 2));
  return {
    steps: lines.length > 0 ? [{ to: lines.length, turn }] : [],
    draw: (_, height) => lines.slice(0, height).map((line) => rowOf(line, look)),
  };
}

export function questionSection(view: View, width: number, turns: [number, number]): Section {
  const { question } = view;
  if (!question) return { steps: [], draw: () => [] };
  const look = { bold: true, color: "cyan" } as const;
  const place = question.of > 1 ? `1 of ${question.of}: ` : "";
  const text = `? ${place}${printable(question.text)} (${printable(question.answer)})`;
  const whole = wrap(text, width, 4).length;
  return {
    steps: [
      { to: 1, turn: turns[0] },
      { to: whole, turn: turns[1] },
    ],
    draw: (across, height) => wrap(text, across, height).map((line) => rowOf(line, look)),
  };
}

/** What Space does, and the labeled keys; or what the program has to say at this moment. */
export function keySection(view: View, width: number, turns: [number, number]): Section {
  const rows = keyRows(view, width);
  return {
    steps: [
      { to: 1, turn: turns[0] },
      { to: rows.length, turn: turns[1] },
    ],
    draw: (_, height) => rows.slice(0, height),
  };
}

function keyRows(view: View, width: number): Row[] {
  if (view.hint !== undefined) {
    return wrap(printable(view.hint), width, 3).map((line) => rowOf(line, BOLD));
  }
  const { key, keys } = view;
  const pieces: Row[] = [
    key.works
      ? [span("Space", { bold: true, inverse: true }), span(` ${key.text}`, BOLD)]
      : [span(key.text, DIM)],
    ...keys.map((one): Row => [span(`[${one.key}]`, BOLD), span(` ${one.label}`)]),
  ];
  const rows: Row[] = [];
  let row: Row = [];
  for (const piece of pieces) {
    const wider = [...row, ...(row.length > 0 ? [span("   ")] : []), ...piece];
    const fits = wider.reduce((sum, one) => sum + one.width, 0) <= width;
    if (row.length > 0 && !fits) {
      rows.push(row);
      row = piece;
    } else row = wider;
  }
  return [...rows, row].map((one) => cut(one, width));
}

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
