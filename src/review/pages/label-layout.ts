/**
 * Where the words of a label stand on it, and how large they are: as large as fits, the mark and
 * the variety largest, nothing cut and nothing too small to read. Lengths are points.
 */
import type { LabelWords } from "./label-words.ts";

/** The width of a text, as a multiple of its size. */
export type Measure = (text: string, bold: boolean) => number;

/** Where text may stand: a rectangle or a circle, its edges already left free. */
export type Room = { width: number; height: number; round: boolean };

/** A piece of text on its baseline, from the left top of the room. */
type Piece = {
  text: string;
  x: number;
  y: number;
  width: number;
  size: number;
  bold: boolean;
  /** White, on a filled box. */
  white: boolean;
};

/** A rectangle: the frame of a mark, or a filled band. */
type Box = { x: number; y: number; width: number; height: number; filled: boolean };

export type LabelLayout = {
  pieces: Piece[];
  boxes: Box[];
  /** What was left out for want of room, in words; null where it is all there. */
  left: string | null;
};

/** Nobody reads smaller text on a jar; our choice. */
export const LEAST_PT = 7;
const LARGEST_PT = 12;
const STEP_PT = 0.25;
/** Of a line's height, above and below its baseline: room for stacked accents and for tails. */
const ASCENT = 1;
const DESCENT = 0.27;
/** Name, title and band as multiples of the text: the name always the largest, none smaller. */
const SCALES = [
  { name: 3, title: 1.6, band: 2 },
  { name: 2.4, title: 1.4, band: 1.7 },
  { name: 1.9, title: 1.25, band: 1.4 },
  { name: 1.5, title: 1.1, band: 1.2 },
  { name: 1.2, title: 1, band: 1.1 },
] as const;
/** Of a mark's size: where its frame begins below the line's top, and how high it is. */
const FRAME_TOP = 0.12;
const FRAME = 1.06;
/** Around a mark in its frame, and beside the words of a band, of the size of the text. */
const PADDING = 0.25;

type Run = { text: string; size: number; bold: boolean; framed: boolean };
type Word = Run & { width: number };
/** A paragraph, whose words are wrapped; on a band, white. */
type Block = { words: Word[]; white: boolean };
type Line = { words: (Word & { x: number })[]; width: number; size: number };
type Placed = { line: Line; top: number; white: boolean };

/** The layout with the largest text; undefined where even the least does not fit. */
export function layoutLabel(
  words: LabelWords,
  room: Room,
  measure: Measure,
): LabelLayout | undefined {
  for (const whole of [true, false]) {
    for (const { forms, left } of words.small) {
      const best = largest(forms, (small, size, scale) => {
        return placed(blocksOf(words, small, size, scale, measure), room, measure, whole);
      });
      if (best) return { ...drawn(best, room), left };
    }
  }
  return undefined;
}

type Scale = (typeof SCALES)[number];
type Place = (small: readonly string[], size: number, scale: Scale) => Placed[] | undefined;

/** Tries every form in every scale with the largest text that fits; the largest of all is taken. */
function largest(forms: readonly string[][], place: Place): Placed[] | undefined {
  let best: { score: number; lines: Placed[] } | undefined;
  for (const small of forms) {
    for (const scale of SCALES) {
      const found = largestOf((size) => place(small, size, scale));
      const score = found ? scale.name ** 2 * found.size ** 3 : 0;
      if (found && score > (best?.score ?? 0)) best = { score, lines: found.lines };
    }
  }
  return best?.lines;
}

/** The largest size that fits, by halves: what fits is taken to fit when smaller. */
function largestOf(
  place: (size: number) => Placed[] | undefined,
): { size: number; lines: Placed[] } | undefined {
  let best: { size: number; lines: Placed[] } | undefined;
  let low = 0;
  let high = (LARGEST_PT - LEAST_PT) / STEP_PT;
  for (let step = 0; low <= high; step = Math.ceil((low + high) / 2)) {
    const size = LEAST_PT + step * STEP_PT;
    const lines = place(size);
    if (lines) best = { size, lines };
    if (lines) low = step + 1;
    else high = step - 1;
  }
  return best;
}

function blocksOf(
  { mark, name, title, band }: LabelWords,
  small: readonly string[],
  text: number,
  scale: Scale,
  measure: Measure,
): Block[] {
  const block = (white: boolean, ...runs: Run[]): Block => {
    return { words: runs.flatMap((run) => wordsOf(run, measure)), white };
  };
  const run = (words: string, size: number, bold = false, framed = false): Run => {
    return { text: words, size, bold, framed };
  };
  const large = text * scale.name;
  const blocks = [
    block(false, ...(mark ? [run(mark, large, true, true)] : []), run(name, large, true)),
  ];
  if (title !== null) blocks.push(block(false, run(title, text * scale.title)));
  if (band) {
    blocks.push(block(true, run(band.loud, text * scale.band, true), run(band.until, text, true)));
  }
  return [...blocks, ...small.map((line) => block(false, run(line, text)))];
}

/** The lines of all blocks, in the middle of the room; undefined where they do not fit. */
function placed(
  blocks: readonly Block[],
  room: Room,
  measure: Measure,
  whole: boolean,
): Placed[] | undefined {
  const from = (top: number) => stacked(blocks, top, room, measure, whole);
  if (!room.round) {
    const found = from(0);
    if (!found) return undefined;
    const down = (room.height - found.bottom) / 2;
    return found.lines.map((one) => ({ ...one, top: one.top + down }));
  }
  // Text that begins further down ends further down: at first it stands too high.
  let best: Placed[] | undefined;
  for (let top = 0; top < room.height / 2; top += 2) {
    const found = from(top);
    if (found) best = found.lines;
    if (found && room.height - found.bottom <= top) break;
  }
  return best;
}

function stacked(
  blocks: readonly Block[],
  from: number,
  room: Room,
  measure: Measure,
  whole: boolean,
): { lines: Placed[]; bottom: number } | undefined {
  const lines: Placed[] = [];
  let top = from;
  for (const { words: all, white } of blocks) {
    const words = [...all];
    while (words.length > 0) {
      const size = Math.max(...words.map((word) => word.size));
      const height = heightOf(size);
      const inside = white ? 2 * PADDING * size : 0;
      const line = nextLine(words, widthAt(room, top, top + height) - inside, measure, whole);
      if (!line || top + height > room.height) return undefined;
      lines.push({ line, top, white });
      top += heightOf(line.size);
    }
  }
  const wide = bandWidth(lines, room);
  const fits = lines.every(({ line, white }) => !white || line.width + padded(line) <= wide);
  return fits ? { lines, bottom: top } : undefined;
}

function padded(line: Line): number {
  return 2 * PADDING * line.size;
}

/** A band is as wide as the room at the narrowest of its lines. */
function bandWidth(lines: readonly Placed[], room: Room): number {
  const bands = lines.filter((one) => one.white);
  return Math.min(...bands.map(({ top, line }) => widthAt(room, top, top + heightOf(line.size))));
}

function heightOf(size: number): number {
  return size * (ASCENT + DESCENT);
}

/** How wide the room is between two heights: a chord, where it is round. */
function widthAt({ width, height, round }: Room, top: number, bottom: number): number {
  if (!round) return width;
  const far = Math.max(Math.abs(height / 2 - top), Math.abs(bottom - height / 2));
  return far >= width / 2 ? 0 : 2 * Math.sqrt((width / 2) ** 2 - far ** 2);
}

function wordsOf(run: Run, measure: Measure): Word[] {
  return run.text
    .split(/ +/)
    .filter((text) => text !== "")
    .map((text) => sized({ ...run, text }, measure));
}

function sized(run: Run, measure: Measure): Word {
  const frame = run.framed ? 2 * PADDING * run.size : 0;
  return { ...run, width: measure(run.text, run.bold) * run.size + frame };
}

/**
 * Takes as many words as fit from the front of the list. A word that is wider than the line is
 * broken where `whole` does not forbid it.
 */
function nextLine(
  words: Word[],
  width: number,
  measure: Measure,
  whole: boolean,
): Line | undefined {
  const line: Line = { words: [], width: 0, size: 0 };
  const add = (word: Word, gap: number) => {
    line.words.push({ ...word, x: line.width + gap });
    line.width += gap + word.width;
    line.size = Math.max(line.size, word.size);
  };
  for (let word = words[0]; word; word = words[0]) {
    const gap = line.words.length === 0 ? 0 : measure(" ", true) * Math.max(line.size, word.size);
    if (line.width + gap + word.width > width) break;
    add(word, gap);
    words.shift();
  }
  const [first] = words;
  if (line.words.length === 0 && first && !whole) {
    const part = firstPart(first, width, measure);
    if (!part) return undefined;
    words[0] = sized({ ...first, text: first.text.slice(part.text.length) }, measure);
    add(part, 0);
  }
  return line.words.length === 0 ? undefined : line;
}

const LETTERS = new Intl.Segmenter("en", { granularity: "grapheme" });

/** As many letters of a word as fit; undefined where not even one does. */
function firstPart(word: Word, width: number, measure: Measure): Word | undefined {
  let part: Word | undefined;
  let text = "";
  for (const { segment } of LETTERS.segment(word.text)) {
    text += segment;
    const longer = sized({ ...word, text }, measure);
    if (longer.width > width) break;
    part = longer;
  }
  return part;
}

/** Lines as pieces of text and boxes: to the left, or in the middle of a round label. */
function drawn(lines: readonly Placed[], room: Room): Omit<LabelLayout, "left"> {
  const pieces: Piece[] = [];
  const boxes: Box[] = [];
  const wide = bandWidth(lines, room);
  for (const { line, top, white } of lines) {
    const indent = white ? padded(line) / 2 : 0;
    const left = room.round ? (room.width - line.width) / 2 : indent;
    for (const { framed, size, width, x } of line.words) {
      if (framed)
        boxes.push({
          x: left + x,
          y: top + FRAME_TOP * size,
          width,
          height: FRAME * size,
          filled: false,
        });
    }
    pieces.push(...piecesOf(line, left, top + line.size * ASCENT, white));
  }
  const bands = lines.filter((one) => one.white);
  const [first, last] = [bands[0], bands.at(-1)];
  if (first && last) {
    const height = last.top + heightOf(last.line.size) - first.top;
    boxes.push({ x: (room.width - wide) / 2, y: first.top, width: wide, height, filled: true });
  }
  return { pieces, boxes };
}

/** Words of one look beside each other are one piece of text. */
function piecesOf({ words }: Line, left: number, y: number, white: boolean): Piece[] {
  const pieces: (Piece & { framed: boolean })[] = [];
  for (const word of words) {
    const { size, bold, framed } = word;
    const padding = framed ? PADDING * size : 0;
    const text = word.text.replaceAll("\u00a0", " ");
    const x = left + word.x + padding;
    const width = word.width - 2 * padding;
    const last = pieces.at(-1);
    if (last && !last.framed && !framed && last.size === size && last.bold === bold) {
      last.text += ` ${text}`;
      last.width = x + width - last.x;
    } else pieces.push({ text, x, y, width, size, bold, white, framed });
  }
  return pieces.map(({ framed: _, ...piece }) => piece);
}
