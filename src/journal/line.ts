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
 */
export type JournalLine = { n: number; v: number; left?: number; prev: string; sum: string } & {
  [field: string]: unknown;
};

/** The first line of a file: which file and line it goes on from. */
export type HeaderLine = {
  journal: "brinebell";
  v: number;
  /** Number of the last line before this file; 0 in the very first. */
  after: number;
  /** The file that line is in; null in the very first. */
  from: string | null;
  prev: string;
  sum: string;
};

/** The `prev` of the very first line. */
export const NO_SUM = "00000000";

/** A line may have this many bytes; a longer record is refused. */
export const LONGEST_LINE_BYTES = 1_000_000;

/** Names the journal keeps for itself in a line. */
const OWN_NAMES = ["n", "v", "left", "prev", "sum"];

const SUM_MARK = Buffer.from(',"sum":"');
const SUM_LENGTH = 8;
/** Length of `,"sum":"00000000"}`. */
const TAIL = SUM_MARK.length + SUM_LENGTH + 2;
const QUOTE = 0x22;
const BRACE = 0x7d;

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
    return { ok: false, reason: `it is no JSON (${(error as Error).message.split("\n")[0]})` };
  }
  if (!text?.startsWith("{")) return { ok: false, reason: "it is no JSON object" };
  const bytes = Buffer.byteLength(text) + 128;
  if (bytes > LONGEST_LINE_BYTES) {
    return { ok: false, reason: `it is longer than ${LONGEST_LINE_BYTES} bytes` };
  }
  return { ok: true, body: text.slice(1, -1) };
}

/** A record's line with its line end, and the line's sum. */
export function recordLine(
  place: { n: number; version: number; left: number; prev: string },
  body: string,
): { text: string; sum: string } {
  const left = place.left > 0 ? `,"left":${place.left}` : "";
  const fields = body === "" ? "" : `,${body}`;
  return summed(`{"n":${place.n},"v":${place.version}${left}${fields}`, place.prev);
}

/** A file's first line with its line end, and the line's sum. */
export function headerLine(header: Omit<HeaderLine, "journal" | "sum">): {
  text: string;
  sum: string;
} {
  const { v, after, from, prev } = header;
  return summed(
    `{"journal":"brinebell","v":${v},"after":${after},"from":${JSON.stringify(from)}`,
    prev,
  );
}

function summed(start: string, prev: string): { text: string; sum: string } {
  const covered = `${start},"prev":"${prev}"`;
  const sum = crc32(covered).toString(16).padStart(SUM_LENGTH, "0");
  return { text: `${covered},"sum":"${sum}"}\n`, sum };
}

/** The object in bytes `start` to `end` (its line end not included) if its sum is right. */
export function soundObject(bytes: Buffer, start: number, end: number): unknown {
  const mark = end - TAIL;
  if (mark <= start || bytes[end - 1] !== BRACE || bytes[end - 2] !== QUOTE) return undefined;
  for (let i = 0; i < SUM_MARK.length; i += 1) {
    if (bytes[mark + i] !== SUM_MARK[i]) return undefined;
  }
  const written = hexAt(bytes, mark + SUM_MARK.length);
  if (written !== crc32(bytes.subarray(start, mark))) return undefined;
  return parsed(bytes, start, end);
}

/** The JSON in these bytes, sound or not; undefined where it is none. */
export function parsed(bytes: Buffer, start: number, end: number): unknown {
  try {
    return JSON.parse(bytes.toString("utf8", start, end));
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

/** Eight lower-case hex digits as a number; -1 where they are none. */
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
