import type { Disk, DiskRefusal } from "../ports/disk.ts";
import { type FilePlace, fileName, filesInOrder } from "./file-name.ts";
import { type HeaderLine, type JournalLine, NO_SUM } from "./line.ts";
import { type FileReading, type JournalFormat, lineOfRecord, readFile } from "./read-file.ts";

/** The present format as far as the journal itself knows it: a line may hold any record. */
export const FORMAT: JournalFormat = {
  version: 1,
  upcast: (line) => line,
  faultOf: () => undefined,
};

/** A place that cannot be relied on. */
export type Damage = {
  file: string;
  /** 1 is the file's first line; 0 stands for the file as a whole. */
  line: number;
  reason: string;
  /** How many of the records lie before it. */
  recordsBefore: number;
  /** True in the newest file, where nothing may be added; an older file stops nothing. */
  stops: boolean;
  /** The line, where it is readable but says something impossible. */
  refused?: JournalLine;
};

/** Where the next line continues. */
export type JournalEnd = { place: FilePlace | undefined; length: number; n: number; sum: number };

/** Bytes after the last whole append: `from` 0 means that nothing in the file counts. */
export type TornTail = { file: string; from: number; bytes: Uint8Array };

/** Everything the files hold, read without changing anything. */
export type JournalReading = {
  records: JournalLine[];
  damages: Damage[];
  torn: TornTail[];
  end: JournalEnd;
  /** The file a later version of the program has written in. */
  newerFile: string | undefined;
  /** Why a file or the folder that is needed could not be read. */
  unreadable: DiskRefusal | undefined;
  /** Names in the folder, the journal's or not. */
  names: string[];
};

type ReadFile = { place: FilePlace; name: string; bytes: Uint8Array; reading: FileReading };

/** Reads all files of the folder, oldest first. Never throws; changes nothing on the disk. */
export function readJournal(disk: Disk, folder: string, format = FORMAT): JournalReading {
  const result: JournalReading = {
    records: [],
    damages: [],
    torn: [],
    end: { place: undefined, length: 0, n: 0, sum: NO_SUM },
    newerFile: undefined,
    unreadable: undefined,
    names: [],
  };
  const listed = disk.list(folder);
  if (!listed.ok) {
    if (listed.why !== "missing") result.unreadable = listed;
    return result;
  }
  result.names = listed.names;
  const files = readFiles(disk, folder, filesInOrder(listed.names), format, result);
  leaveOutEmptyEnds(files, result);
  files.forEach((file, i) => {
    const next = files.slice(i + 1).find(({ reading }) => reading.header);
    takeFile(file, next, i === files.length - 1, result);
    if (!next?.reading.header) return;
    if (next === files.at(-1)) checkJoin(file, next.reading, result);
    endAsNamed(next.reading.header, result);
  });
  return result;
}

function readFiles(
  disk: Disk,
  folder: string,
  places: FilePlace[],
  format: JournalFormat,
  result: JournalReading,
): ReadFile[] {
  const files: ReadFile[] = [];
  places.forEach((place, i) => {
    const name = fileName(place);
    const answer = disk.read(`${folder}/${name}`);
    if (answer.ok) {
      files.push({ place, name, bytes: answer.bytes, reading: readFile(answer.bytes, format) });
    } else if (i === places.length - 1) {
      result.unreadable = answer;
    } else {
      damage(result, { file: name, line: 0, reason: answer.message, stops: false });
    }
  });
  return files;
}

/** A newest file with nothing sound in it had just been started when the power went. */
function leaveOutEmptyEnds(files: ReadFile[], result: JournalReading): void {
  for (let last = files.at(-1); last; last = files.at(-1)) {
    const { header, lines, newer } = last.reading;
    if (header || lines.length > 0 || newer) return;
    result.torn.unshift({ file: last.name, from: 0, bytes: last.bytes });
    files.pop();
  }
}

function takeFile(
  file: ReadFile,
  following: ReadFile | undefined,
  newest: boolean,
  result: JournalReading,
): void {
  const { reading, name } = file;
  const next = following?.reading.header;
  if (reading.newer) result.newerFile ??= name;
  checkBeginning(file, newest, result);
  // What lies beyond the line that the next file continues was never acknowledged in this one.
  const upTo = next ? next.after : Number.POSITIVE_INFINITY;
  const before = result.records.length;
  const after = reading.lines.findIndex(({ n }) => n > result.end.n);
  const last = reading.lines.findLastIndex(({ n }) => n <= upTo);
  const kept = after < 0 ? [] : reading.lines.slice(after, last + 1);
  const { refusals } = reading;
  const admitted = refusals.size === 0 ? kept : kept.filter((line) => !refusals.has(line));
  if (result.records.length === 0) result.records = admitted;
  else for (const line of admitted) result.records.push(line);
  const beforeN = (n: number) => before + admitted.filter((line) => line.n <= n).length;
  for (const fault of reading.faults) {
    if (fault.afterN >= upTo) continue;
    const recordsBefore = beforeN(fault.afterN);
    damage(result, { file: name, ...fault, recordsBefore, stops: newest });
  }
  for (const line of refusals.size === 0 ? [] : kept) {
    const reason = refusals.get(line);
    if (reason === undefined) continue;
    const at = lineOfRecord(file.bytes, line.n);
    const place = { file: name, line: at, recordsBefore: beforeN(line.n), stops: newest };
    damage(result, { ...place, reason, refused: line });
  }
  result.end = {
    place: file.place,
    length: reading.soundBytes,
    n: kept.at(-1)?.n ?? Math.max(result.end.n, reading.header?.after ?? 0),
    sum: kept.at(-1)?.sum ?? reading.header?.sum ?? result.end.sum,
  };
  if (next) checkEnding(name, next, result);
  const sealed = reading.faults.length > 0 || reading.newer;
  if (newest && !sealed && reading.soundBytes < reading.totalBytes) {
    const bytes = file.bytes.slice(reading.soundBytes);
    result.torn.unshift({ file: name, from: reading.soundBytes, bytes });
  }
}

function checkBeginning(file: ReadFile, newest: boolean, result: JournalReading): void {
  const { header } = file.reading;
  if (!header) {
    if (file.reading.lines.length > 0 || file.reading.totalBytes === 0 || newest) return;
    damage(result, { file: file.name, line: 0, reason: "nothing in it can be read", stops: false });
  } else if (result.end.place === undefined && header.from !== null) {
    const reason = `the file before it, ${header.from}, is not there`;
    damage(result, { file: file.name, line: 0, reason, stops: false });
  }
}

/** An older file must end with the line its successor names. */
function checkEnding(file: string, next: HeaderLine, result: JournalReading): void {
  const { end } = result;
  if (end.n < next.after) {
    const reason = `lines are missing at its end: numbers ${end.n + 1} to ${next.after}`;
    damage(result, { file, line: 0, reason, stops: false });
  } else if (end.sum !== next.prev) {
    const reason = "its last line is not the one the next file goes on from";
    damage(result, { file, line: 0, reason, stops: false });
  }
}

function endAsNamed({ after, prev }: HeaderLine, { end }: JournalReading): void {
  end.n = after;
  end.sum = prev;
}

/**
 * A file that was begun beside another, which had taken its predecessor's place: the two are put
 * together only after a yes, once it was said what they are.
 */
function checkJoin({ name, reading }: ReadFile, next: FileReading, result: JournalReading): void {
  const { header } = next;
  const { end } = result;
  if (!header?.beside || (end.n === header.after && end.sum === header.prev)) return;
  const reason =
    `the log went on beside it and not from it: it holds ${linesText(reading)}, and the file ` +
    `after it ${linesText(next)}, from number ${header.after + 1} on`;
  damage(result, { file: name, line: 0, reason, stops: true });
}

/** `12 lines, the last of 2027-08-14T13:20:00-06:00`. */
function linesText({ lines }: FileReading): string {
  const at = lines.at(-1)?.at;
  const count = lines.length === 1 ? "1 line" : `${lines.length} lines`;
  return typeof at === "string" ? `${count}, the last of ${at}` : count;
}

function damage(
  result: JournalReading,
  found: Omit<Damage, "recordsBefore"> & { recordsBefore?: number; afterN?: number },
): void {
  const { file, line, reason, stops, refused, recordsBefore = result.records.length } = found;
  const damaged = { file, line, reason, recordsBefore, stops };
  result.damages.push(refused ? { ...damaged, refused } : damaged);
}

/** Names the log where none of its files is there. */
const ANY_FILE = "journal-*.jsonl";

/**
 * Checks the last number expected: whole lines cut off at the end leave no trace in the file
 * itself.
 */
export function checkExpected({ end, records, damages }: JournalReading, expectedN: number): void {
  if (end.n >= expectedN) return;
  const { file, found } = end.place
    ? { file: fileName(end.place), found: `it ends with number ${end.n}` }
    : { file: ANY_FILE, found: "nothing is left of it" };
  damages.push({
    file,
    line: 0,
    reason: `${found}, though number ${expectedN} had been written`,
    recordsBefore: records.length,
    stops: false,
  });
}
