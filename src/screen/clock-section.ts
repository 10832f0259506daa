/** The soonest clock in digits as large as the room allows. */
import type { BigClock } from "../ports/view.ts";
import { bigDigits, type DigitSize, digitRows, digitsWidth, largestSize } from "./big-digits.ts";
import { BOLD, cut, type Row, rowOf, span } from "./row.ts";
import type { Section } from "./sections.ts";
import { clockLook } from "./shelf-section.ts";

/** Room that the words beside the digits need. */
const BESIDE = 22;
const GAP = 3;

type ClockTurns = { least: number; half: number; full: number; huge: number };

export function clockSection(
  clock: BigClock | undefined,
  width: number,
  turns: ClockTurns,
): Section {
  if (!clock) return { draw: () => [], steps: [] };
  const text = clock.digits;
  const sizes: { size: DigitSize; turn: number }[] = [
    { size: "half", turn: turns.half },
    { size: 1, turn: turns.full },
    { size: 2, turn: turns.huge },
    { size: 3, turn: turns.huge + 1 },
  ];
  const steps: Section["steps"] = [{ to: 1, turn: turns.least }];
  for (const { size, turn } of sizes) {
    if (digitsWidth(text, size) > width) continue;
    const above = digitsWidth(text, size) + GAP + BESIDE <= width ? 0 : 1;
    steps.push({ to: digitRows(size) + above, turn, whole: true });
  }
  return { draw: (across, height) => drawClock(clock, across, height), steps };
}

function drawClock(clock: BigClock, width: number, height: number): Row[] {
  const look = clockLook(clock.clock);
  const what = [clock.name, clock.title].filter(Boolean).join(": ");
  const due = clock.clock.due ? `  ${clock.clock.due}` : "";
  const line: Row = [span(clock.clock.text, look), span(`${due}  ${what}`)];
  if (height < 3) return [cut(line, width)];
  const size = largestSize(clock.digits, width, height);
  if (!size) return [cut(line, width)];
  const across = digitsWidth(clock.digits, size);
  const drawn = bigDigits(clock.digits, size).map((text) => rowOf(text, look));
  if (across + GAP + BESIDE <= width) return withWords(drawn, clock, across, width);
  if (height <= digitRows(size)) {
    const smaller = largestSize(clock.digits, width, height - 1);
    if (!smaller) return [cut(line, width)];
    const rows = bigDigits(clock.digits, smaller).map((text) => rowOf(text, look));
    return [cut(line, width), ...rows];
  }
  return [cut(line, width), ...drawn];
}

/** What it is, how it stands and when it is due, beside the digits. */
function withWords(drawn: Row[], clock: BigClock, across: number, width: number): Row[] {
  const { clock: shown, name, title } = clock;
  const due = shown.due ? `${shown.state === "open" ? "at the latest" : "due"} ${shown.due}` : "";
  const words: Row[] = [
    rowOf(title || name, BOLD),
    ...(title ? [rowOf(name)] : []),
    ...(shown.state === "running" ? [] : [rowOf(shown.text, clockLook(shown))]),
    ...(due ? [rowOf(due)] : []),
  ].slice(0, drawn.length);
  const top = Math.floor((drawn.length - words.length) / 2);
  return drawn.map((row, index) => {
    const own = words[index - top];
    if (!own) return row;
    const used = row[0]?.width ?? 0;
    return cut([...row, span(" ".repeat(across - used + GAP)), ...own], width);
  });
}
