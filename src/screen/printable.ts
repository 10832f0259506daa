/**
 * The one place where text is made safe for a terminal: recipes, notes, labels and what somebody
 * said all pass through here, and nothing that could control a terminal gets out.
 */
import stringWidth from "string-width";

/** Whole sequences, so that their harmless-looking tails do not stay behind. */
const SEQUENCES = [
  // OSC, DCS, SOS, PM, APC: up to their terminator, or to the end where there is none.
  /\u001b[\]PX^_][^\u0007\u001b\u009c]*(?:\u0007|\u001b\\|\u009c)?/g,
  /[\u0090\u0098\u009d-\u009f][^\u0007\u001b\u009c]*(?:\u0007|\u001b\\|\u009c)?/g,
  // CSI.
  /(?:\u001b\[|\u009b)[0-?]*[ -/]*[@-~]?/g,
  // Other escapes.
  /\u001b[ -/]*[0-~]?/g,
];
/** Controls, bidi marks and overrides, joiners, variation selectors, tags, private use. */
const UNSEEN = /\p{C}|\p{Default_Ignorable_Code_Point}/gu;
const SPACES = /[\s\u0085]/g;
/** More combining marks than this on one letter would spill over other lines. */
const MARKS = /(\p{M}{2})\p{M}+/gu;
const PLAIN = /^[ -~]*$/;

/** Text without anything that could control a terminal, on one line, with few marks. */
export function printable(text: string): string {
  if (PLAIN.test(text)) return text;
  let clean = text;
  for (const sequence of SEQUENCES) clean = clean.replace(sequence, "");
  return clean.replace(SPACES, " ").replace(UNSEEN, "").replace(MARKS, "$1");
}

const widths = new Map<string, number>();

/**
 * Cells one character takes: each counted alone, and never fewer than a terminal may use, since
 * terminals differ in what they join.
 */
function cellsOf(character: string): number {
  if (character >= " " && character <= "~") return 1;
  let width = widths.get(character);
  if (width === undefined) {
    const own = stringWidth(character);
    width = /\p{Emoji_Presentation}|\p{Regional_Indicator}/u.test(character) ? 2 : own;
    if (widths.size > 5000) widths.clear();
    widths.set(character, width);
  }
  return width;
}

/** Cells that printable text takes on a line. */
export function cells(text: string): number {
  if (PLAIN.test(text)) return text.length;
  let sum = 0;
  for (const character of text) sum += cellsOf(character);
  return sum;
}

/** As much of the text as fits, with a mark where something was cut off. */
export function clip(text: string, width: number): string {
  if (width <= 0) return "";
  if (cells(text) <= width) return text;
  let kept = "";
  let used = 0;
  for (const character of text) {
    const next = cellsOf(character);
    if (used + next > width - 1) break;
    kept += character;
    used += next;
  }
  return `${kept.trimEnd()}…`;
}

/** The text on lines of at most this many cells, the last one cut where there are too many. */
export function wrap(text: string, width: number, most: number): string[] {
  if (width <= 0 || most <= 0) return [];
  const lines: string[] = [];
  let line = "";
  const words = text.split(" ").filter(Boolean);
  for (const [index, word] of words.entries()) {
    const longer = line ? `${line} ${word}` : word;
    if (cells(longer) <= width) {
      line = longer;
      continue;
    }
    if (line && lines.length === most - 1) {
      return [...lines, clip([line, ...words.slice(index)].join(" "), width)];
    }
    if (line) lines.push(line);
    line = clip(word, width);
  }
  if (line) lines.push(line);
  return lines.slice(0, most);
}
