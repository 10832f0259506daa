import {
  type HeaderLine,
  isHeader,
  isRecord,
  type JournalLine,
  parsed,
  soundObject,
} from "./line.ts";

/** The newest format this program knows, how it reads older lines, and how it checks them. */
export type JournalFormat = {
  version: number;
  /** Upgrades an old form to the present one. */
  upcast: (line: JournalLine) => JournalLine;
  /** What is wrong with an upgraded line; undefined where nothing is. */
  faultOf: (line: JournalLine) => string | undefined;
};

/** Something wrong in a file: the line (1 is the first), and the highest `n` sound before it. */
type FileFault = { line: number; afterN: number; reason: string };

/** What one file holds, read alone. */
export type FileReading = {
  header: HeaderLine | undefined;
  /** Every line whose own sum is right, in the present form, in the order of `n`, none twice. */
  lines: JournalLine[];
  /** Those of them whose record is impossible, and why. */
  refusals: Map<JournalLine, string>;
  /** What is wrong before the last sound line; what is wrong after it is the tail. */
  faults: FileFault[];
  /** Bytes up to the end of the last whole append; what follows is cut short or unreadable. */
  soundBytes: number;
  /** Bytes in all. */
  totalBytes: number;
  /** True where a line was written by a later version of the program; reading stopped there. */
  newer: boolean;
};

type Scan = FileReading & {
  /** The last sound line's `n` and sum, which the next line must follow. */
  lastN: number;
  lastSum: number;
  /**
   * Where the append that the last sound line belongs to began, and the index of its first line.
   */
  groupStart: number;
  groupFirst: number;
  groupOpen: boolean;
  /** Faults since the last sound line: they belong to the tail until another sound line follows. */
  tailFaults: FileFault[];
  inOrder: boolean;
};

const NEWLINE = 0x0a;

/** Reads one file's bytes. Never throws. */
export function readFile(content: Uint8Array, format: JournalFormat): FileReading {
  const bytes = Buffer.from(content.buffer, content.byteOffset, content.byteLength);
  const scan = newScan(bytes.length);
  let start = 0;
  for (let number = 1; start < bytes.length && !scan.newer; number += 1) {
    const end = bytes.indexOf(NEWLINE, start);
    if (end < 0) {
      fault(scan, number, "it has no line end");
      break;
    }
    take(scan, soundObject(bytes, start, end), { number, start, end: end + 1, format });
    start = end + 1;
  }
  if (scan.groupOpen) dropOpenGroup(scan);
  if (!scan.header && scan.lines.length === 0) scan.newer ||= looksNewer(bytes, format.version);
  if (!scan.inOrder) scan.lines = sortedOnce(scan.lines);
  return scan;
}

/** Where in a file the record with a number stands; 1 is the file's first line, 0 is nowhere. */
export function lineOfRecord(content: Uint8Array, n: number): number {
  const bytes = Buffer.from(content.buffer, content.byteOffset, content.byteLength);
  let start = 0;
  for (let number = 1; start < bytes.length; number += 1) {
    const end = bytes.indexOf(NEWLINE, start);
    if (end < 0) return 0;
    const object = soundObject(bytes, start, end);
    if (isRecord(object) && object.n === n) return number;
    start = end + 1;
  }
  return 0;
}

function newScan(totalBytes: number): Scan {
  return {
    header: undefined,
    lines: [],
    refusals: new Map(),
    faults: [],
    soundBytes: 0,
    totalBytes,
    newer: false,
    lastN: -1,
    lastSum: -1,
    groupStart: 0,
    groupFirst: 0,
    groupOpen: false,
    tailFaults: [],
    inOrder: true,
  };
}

const MISSING = "it cannot be read, and what it said is missing";

type Place = { number: number; start: number; end: number; format: JournalFormat };

function take(scan: Scan, object: unknown, place: Place): void {
  if (place.number === 1 && isHeader(object)) {
    scan.newer = object.v > place.format.version;
    scan.header = object;
    scan.lastN = object.after;
    scan.lastSum = object.sum;
    scan.soundBytes = place.end;
  } else if (isRecord(object)) {
    if (object.v > place.format.version) scan.newer = true;
    else takeRecord(scan, object, place);
  } else {
    fault(scan, place.number, place.number === 1 ? "its first line is damaged" : MISSING);
  }
}

function takeRecord(scan: Scan, line: JournalLine, place: Place): void {
  const repeated = line.n === scan.lastN && line.sum === scan.lastSum;
  if (!repeated) {
    if (line.n !== scan.lastN + 1 || line.prev !== scan.lastSum) outOfChain(scan, line, place);
    if (!scan.groupOpen) {
      scan.groupStart = place.start;
      scan.groupFirst = scan.lines.length;
    }
    scan.groupOpen = (line.left ?? 0) > 0;
    scan.lines.push(admitted(scan, line, place.format));
    scan.lastN = line.n;
    scan.lastSum = line.sum;
  }
  scan.soundBytes = place.end;
  if (scan.tailFaults.length > 0) {
    scan.faults.push(...scan.tailFaults);
    scan.tailFaults = [];
  }
}

/** The line in the present form; checked at once, as long as it is at hand. */
function admitted(
  { refusals }: Scan,
  line: JournalLine,
  { version, upcast, faultOf }: JournalFormat,
): JournalLine {
  const present = line.v < version ? upcast(line) : line;
  const reason = faultOf(present);
  if (reason !== undefined) refusals.set(present, reason);
  return present;
}

/** A line that does not follow the last: after an unreadable line only its echo, else a fault. */
function outOfChain(scan: Scan, line: JournalLine, place: Place): void {
  if (line.n <= scan.lastN) scan.inOrder = false;
  const unreadable = scan.tailFaults.length;
  scan.groupOpen = false;
  if (unreadable > 0 && (scan.lastN < 0 || line.n === scan.lastN + 1 + unreadable)) return;
  const follows = scan.lastN < 0 ? "the file's first line" : `number ${scan.lastN}`;
  fault(scan, place.number, `it is number ${line.n} and does not follow ${follows}`);
}

function fault(scan: Scan, line: number, reason: string): void {
  scan.tailFaults.push({ line, afterN: Math.max(0, scan.lastN), reason });
}

/** An incomplete append of several lines was never acknowledged: none of it counts. */
function dropOpenGroup(scan: Scan): void {
  scan.lines.length = scan.groupFirst;
  scan.soundBytes = scan.groupStart;
}

/** A later format may sum its lines differently; its first line still gives the version. */
function looksNewer(bytes: Buffer, version: number): boolean {
  const end = bytes.indexOf(NEWLINE);
  const first = end < 0 ? undefined : parsed(bytes.toString("utf8", 0, end));
  return isHeader(first) && first.v > version;
}

function sortedOnce(lines: JournalLine[]): JournalLine[] {
  const byNumber = new Map<number, JournalLine>();
  for (const line of lines) if (!byNumber.has(line.n)) byNumber.set(line.n, line);
  return [...byNumber.values()].sort((a, b) => a.n - b.n);
}
