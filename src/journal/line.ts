import { crc32 } from "node:zlib";

/**
 * One line of a journal file:
 *
 *     {"n":7,"v":1,"left":2,…the record…,"prev":"0a1b2c3d","sum":"4e5f6071"}
 *
 * `n` counts lines over all files without a gap, `v` is the format's version, `left` (absent when
 * 0) says how many more lines belong to the same append, `prev` is the sum of the line before and
 * `sum` the CRC-32 of this line up to there. A sum of 32 bits is cheap (a quarter of a microsecond)
 * and finds every change of up to four bytes in a row; it guards against accidents, not forgery.
 * In memory both are numbers.
 */
export type JournalLine = { n: number; v: number; left?: number; prev: number; sum: number } & {
  [field: string]: unknown;
};

/** The first line of a file: which file and line it continues. */
export type HeaderLine = {
  journal: "brinebell";
  v: number;
  /** Number of the last line before this file; 0 in the very first. */
  after: number;
  /** The file that line is in; null in the very first. */
  from: string | null;
  /** True where another file had taken that one's place, and this was begun beside it. */
  beside?: boolean;
  prev: number;
  sum: number;
};

/** The `prev` of the very first line. */
export const NO_SUM = 0;

/** The most bytes a line may have; a longer record is refused. */
const LONGEST_LINE_BYTES = 1_000_000;

/** Field names that the journal reserves in a line. */
const OWN_NAMES = ["n", "v", "left", "prev", "sum"];

const CLOSE = 0x7d;
const PREV_MARK = Buffer.from(',"prev":"');
const SUM_MARK = Buffer.from('","sum":"');
const END_MARK = Buffer.from('"}');
const SUM_LENGTH = 8;
/** Length of `,"prev":"00000000`. */
const PREV = PREV_MARK.length + SUM_LENGTH;
/** Length of `","sum":"00000000"}`. */
const TAIL = SUM_MARK.length + SUM_LENGTH + END_MARK.length;

/** The record's own fields as JSON without the braces, or why it cannot be a line. */
export function recordBody(
  record: object,
): { ok: true; body: string } | { ok: false; reason: string } {
  const taken = OWN_NAMES.find((name) => Object.hasOwn(record, name));
  if (taken) return { ok: false, reason: `its field "${taken}" is the journal's own` };
  let text: string | undefined;
  try {
    text = JSON.stringify(record);
  } catch (error) {
    return { ok: false, reason: `it is not JSON (${(error as Error).message.split("\n")[0]})` };
  }
  if (!text?.startsWith("{")) return { ok: false, reason: "it is not a JSON object" };
  const bytes = Buffer.byteLength(text) + 128;
  if (bytes > LONGEST_LINE_BYTES) {
    return { ok: false, reason: `it is longer than ${LONGEST_LINE_BYTES} bytes` };
  }
  return { ok: true, body: text.slice(1, -1) };
}

/** A record's line with its line end, and the line's sum. */
export function recordLine(
  place: { n: number; version: number; left: number; prev: number },
  body: string,
): { text: string; sum: number } {
  const left = place.left > 0 ? `,"left":${place.left}` : "";
  const fields = body === "" ? "" : `,${body}`;
  return summed(`{"n":${place.n},"v":${place.version}${left}${fields}`, place.prev);
}

/** A file's first line with its line end, and the line's sum. */
export function headerLine(header: Omit<HeaderLine, "journal" | "sum">): {
  text: string;
  sum: number;
} {
  const { v, after, from, beside, prev } = header;
  const start = `{"journal":"brinebell","v":${v},"after":${after},"from":${JSON.stringify(from)}`;
  return summed(beside ? `${start},"beside":true` : start, prev);
}

function summed(start: string, prev: number): { text: string; sum: number } {
  const covered = `${start},"prev":"${hex(prev)}"`;
  const sum = crc32(covered);
  return { text: `${covered},"sum":"${hex(sum)}"}\n`, sum };
}

function hex(sum: number): string {
  return sum.toString(16).padStart(SUM_LENGTH, "0");
}

/**
 * The object in bytes `start` to `end` (its line end not included) if its sum is right. The two
 * sums are read from their positions: parsing them with the rest would take a third of the time.
 */
export function soundObject(bytes: Buffer, start: number, end: number): unknown {
  const tail = end - TAIL;
  const body = tail - PREV;
  if (body <= start || !isAt(bytes, body, PREV_MARK)) return undefined;
  if (!isAt(bytes, tail, SUM_MARK) || !isAt(bytes, end - END_MARK.length, END_MARK))
    return undefined;
  const prev = hexAt(bytes, body + PREV_MARK.length);
  const sum = hexAt(bytes, tail + SUM_MARK.length);
  // The sum covers all up to its own comma.
  if (prev < 0 || sum !== crc32(bytes.subarray(start, tail + 1))) return undefined;
  // The object is closed where its sums begin, for as long as it takes to read it.
  bytes[body] = CLOSE;
  const text = bytes.toString("utf8", start, body + 1);
  bytes[body] = PREV_MARK[0]!;
  const object = parsed(text) as Partial<JournalLine> | undefined;
  if (typeof object !== "object" || object === null) return undefined;
  object.prev = prev;
  object.sum = sum;
  return object;
}

function isAt(bytes: Buffer, at: number, mark: Buffer): boolean {
  for (let i = 0; i < mark.length; i += 1) if (bytes[at + i] !== mark[i]) return false;
  return true;
}

/** The sum of the last line of a file's bytes; -1 where that is no whole and sound line. */
export function lastSum(content: Uint8Array): number {
  const bytes = Buffer.from(content.buffer, content.byteOffset, content.byteLength);
  const end = bytes.length - 1;
  if (bytes[end] !== 0x0a) return -1;
  const object = soundObject(bytes, bytes.lastIndexOf(0x0a, end - 1) + 1, end);
  return isRecord(object) || isHeader(object) ? object.sum : -1;
}

/** The parsed JSON of a text; undefined where it is not JSON. */
export function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** True for a file's first line. */
export function isHeader(object: unknown): object is HeaderLine {
  const header = object as Partial<HeaderLine> | null | undefined;
  return header?.journal === "brinebell" && Number.isSafeInteger(header.after);
}

/** True for a line that carries a record. */
export function isRecord(object: unknown): object is JournalLine {
  const line = object as Partial<JournalLine> | null | undefined;
  return Number.isSafeInteger(line?.n) && Number.isSafeInteger(line?.v);
}

/** Eight lower-case hex digits as a number; -1 where they are not. */
function hexAt(bytes: Buffer, start: number): number {
  let value = 0;
  for (let i = start; i < start + SUM_LENGTH; i += 1) {
    const code = bytes[i] as number;
    const isDigit = code >= 0x30 && code <= 0x39;
    if (!isDigit && (code < 0x61 || code > 0x66)) return -1;
    value = value * 16 + (isDigit ? code - 0x30 : code - 0x57);
  }
  return value;
}
