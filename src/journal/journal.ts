import type { AppendFile, Disk, DiskAnswer, DiskRefusal, DiskTrouble } from "../ports/disk.ts";
import { type FilePlace, fileName } from "./file-name.ts";
import { headerLine, lastSum, recordBody, recordLine } from "./line.ts";
import type { JournalEnd } from "./read-journal.ts";

/**
 * Why records are not on the disk: the disk's own reasons, another program writes here
 * (`not-ours`), the newest file is sealed (`read-only`), another file stands in its place
 * (`displaced`), or a record that can never be a line.
 */
type AppendTrouble = DiskTrouble | "not-ours" | "read-only" | "displaced" | "bad-record";

/** Why nothing can be written, as one plain line. */
export type WriteRefusal = { why: AppendTrouble; message: string };

/** `lastN` is the number of the last line on the disk. */
export type Appended = { ok: true; lastN: number } | ({ ok: false } & WriteRefusal);

type JournalOptions = {
  /** The calendar year of the kitchen, at each append; a new year begins a new file. */
  year: () => number;
  /** False while the lock is not, or no longer, this program's; asked before each append. */
  owns: () => boolean;
  /** Why it is not; without this, because another program writes. */
  whyNot?: () => WriteRefusal | undefined;
  /**
   * Called once before the first write, for what opening could not do; false where the disk
   * refuses.
   */
  settle?: () => boolean;
  version: number;
  /** Why nothing may be added until `continueInFreshFile`; `forGood` where that does not help. */
  sealed?: { message: string; forGood: boolean };
  /** True where the newest file ends in something that could not be set aside. */
  startFresh?: boolean;
};

/** Records written that are kept to be written again, should their file be taken away. */
const MOST_KEPT = 20_000;

/** How many names are tried for a fresh file while each turns out to be taken. */
const NAMES_TRIED = 100;

/**
 * The only writer. What `append` was given is on the disk when it returns ok; otherwise it stays in
 * memory, in order, and every later call writes it first. Never throws.
 */
export class Journal {
  private readonly disk: Disk;
  private readonly folder: string;
  private readonly options: JournalOptions;
  /** Appends not yet on the disk, each with its records' JSON. */
  private waiting: string[][] = [];
  private waitingRecords = 0;
  /** What this program wrote into the open file, and where that began. */
  private written: { from: JournalEnd; groups: string[][]; records: number };
  private displaced = false;
  private end: JournalEnd;
  private file: AppendFile | undefined;
  /** True while the file may hold part of a refused write after its sound bytes. */
  private raggedEnd = false;
  /** True where the next write must go to a file of its own. */
  private needsFresh: boolean;
  /** A fresh file in which nothing has been acknowledged yet. */
  private unproven: string | undefined;

  constructor(disk: Disk, folder: string, end: JournalEnd, options: JournalOptions) {
    this.disk = disk;
    this.folder = folder;
    this.options = { ...options };
    this.end = { ...end };
    this.written = { from: this.end, groups: [], records: 0 };
    this.needsFresh = options.startFresh ?? false;
  }

  /** Records in memory that are not on the disk. */
  get pending(): number {
    return this.waitingRecords;
  }

  /** Number of the last line on the disk; 0 while there is none. */
  get lastN(): number {
    return this.end.n;
  }

  /** That line's sum. */
  get lastSum(): number {
    return this.end.sum;
  }

  /**
   * Adds records as one append: after a crash, all of them are there or none. If a record cannot be
   * written (not JSON, over a megabyte, one of the journal's own field names), the whole append is
   * refused with `bad-record` and none of it is kept.
   */
  append(records: readonly object[]): Appended {
    const bodies: string[] = [];
    for (const record of records) {
      const made = recordBody(record);
      if (!made.ok) {
        const message = `a record cannot be written to the journal: ${made.reason}`;
        return { ok: false, why: "bad-record", message };
      }
      bodies.push(made.body);
    }
    if (bodies.length > 0) this.waiting.push(bodies);
    this.waitingRecords += bodies.length;
    return this.retry();
  }

  /** Writes what is missing, if anything is. */
  retry(): Appended {
    if (this.waiting.length === 0) return { ok: true, lastN: this.end.n };
    const { sealed } = this.options;
    if (sealed) {
      const why = this.displaced ? "displaced" : "read-only";
      return { ok: false, why, message: sealed.message };
    }
    if (!this.options.owns()) return { ok: false, ...this.notOurs() };
    if (this.options.settle?.() === false) this.needsFresh = true;
    delete this.options.settle;
    return this.inOpenFile() ?? this.inFreshFile();
  }

  /** Why nothing is written before a yes; undefined where none is waited for. */
  get waitsForYes(): string | undefined {
    const { sealed } = this.options;
    return sealed?.forGood === false ? sealed.message : undefined;
  }

  /**
   * The yes after damage: seals the damaged file for reading and goes on in a fresh one. Beside a
   * file that is not ours it begins with all that this program wrote into the one that is gone.
   */
  continueInFreshFile(): Appended {
    if (this.waitsForYes !== undefined) {
      delete this.options.sealed;
      this.needsFresh = true;
      if (this.displaced) this.takeBack();
    }
    return this.retry();
  }

  /** What was written into a file that is not there any more waits to be written again. */
  private takeBack(): void {
    const { from, groups, records } = this.written;
    this.waiting.unshift(...groups);
    this.waitingRecords += records;
    this.end = { ...from, place: this.end.place };
    this.written = { from: this.end, groups: [], records: 0 };
  }

  /** True while this program may write in the folder. */
  get owned(): boolean {
    return this.options.owns();
  }

  private notOurs(): WriteRefusal {
    const message = `the lock of ${this.folder} is another program's now, or the folder is gone`;
    return this.options.whyNot?.() ?? { why: "not-ours", message };
  }

  /** Lets go of the file. What is pending stays in memory only. */
  close(): void {
    this.file?.close();
    this.file = undefined;
  }

  /** Writes to the newest file; undefined where a fresh one is needed. */
  private inOpenFile(): Appended | undefined {
    const { place } = this.end;
    if (!place || this.needsFresh || this.yearNow() > place.year) return undefined;
    const path = this.path(place);
    // Opening would make a file that is not there.
    const misplaced = this.misplaced(path, this.end);
    if (misplaced) return misplaced;
    if (!this.file) {
      const opened = this.disk.openAppend(path);
      if (!opened.ok) return opened.why === "denied" || opened.why === "full" ? opened : undefined;
      this.file = opened.file;
      // Not as it was read and not by our doing: whatever happened, it is not ours to cut.
      if (opened.length !== this.end.length && !this.raggedEnd) return this.displace(path);
    }
    if (this.raggedEnd && !this.disk.truncate(path, this.end.length).ok) return undefined;
    this.raggedEnd = false;
    const { bytes, n, sum } = this.waitingLines(this.end.sum);
    const added = this.file.append(bytes);
    if (!added.ok) {
      this.raggedEnd = true;
      return added;
    }
    const synced = this.file.sync();
    if (!synced.ok) {
      // The kernel may have dropped the page, and a second sync would then claim success.
      this.close();
      this.needsFresh = true;
      return synced;
    }
    const end = { place, length: this.end.length + bytes.length, n, sum };
    // What was written into a file that lost its name meanwhile is nowhere to be found again.
    const lost = this.misplaced(path, end);
    return lost?.ok === false && lost.why === "displaced" ? lost : this.acknowledge(end);
  }

  /**
   * A refusal where the file under the name is not ours, or cannot be looked at; undefined where it
   * is. A file held open that is not the one under its name is let go of.
   */
  private misplaced(path: string, { length, sum }: JournalEnd): Appended | undefined {
    const there = this.disk.identity(path);
    if (!there.ok) return there.why === "missing" ? this.displace(path) : there;
    const ours = this.file?.identity();
    if (!ours) return undefined;
    const long = this.raggedEnd || there.length === length;
    if (ours.ok && ours.identity === there.identity && long) return undefined;
    // Some systems change a file's numbers; one that ends with our last line is ours all the same.
    const read = this.disk.read(path);
    this.close();
    const same = read.ok && read.bytes.length === length && lastSum(read.bytes) === sum;
    return same ? undefined : this.displace(path);
  }

  private displace(path: string): Appended {
    this.close();
    this.displaced = true;
    const message =
      `another file stands in the place of ${path}, or none; it is left as it is, and ` +
      "with your yes the day goes on in a fresh file beside it";
    this.options.sealed = { message, forGood: false };
    return { ok: false, why: "displaced", message };
  }

  private inFreshFile(): Appended {
    const made = this.disk.makeFolder(this.folder);
    if (!made.ok) return made;
    const opened = this.openFresh();
    if (!opened.ok) return opened;
    const { file, place } = opened;
    const { n: after, sum: prev, place: last } = this.end;
    const from = last ? fileName(last) : null;
    const beside = this.displaced;
    const header = headerLine({ v: this.options.version, after, from, beside, prev });
    const lines = this.waitingLines(header.sum);
    const bytes = Buffer.concat([Buffer.from(header.text), lines.bytes]);
    const written = firstRefusal(
      () => file.append(bytes),
      () => file.sync(),
      () => this.disk.syncFolder(this.folder),
    );
    if (written) {
      file.close();
      this.needsFresh = true;
      return written;
    }
    this.file = file;
    this.needsFresh = false;
    this.raggedEnd = false;
    this.unproven = undefined;
    this.displaced = false;
    this.written = { from: this.end, groups: [], records: 0 };
    return this.acknowledge({ place, length: bytes.length, n: lines.n, sum: lines.sum });
  }

  /** Opens an empty file under the next free name, after removing one that never counted. */
  private openFresh(): DiskAnswer<{ file: AppendFile; place: FilePlace }> {
    this.close();
    if (this.unproven) this.disk.remove(this.unproven);
    const last = this.end.place;
    const year = Math.max(this.yearNow(), last?.year ?? 0);
    let part = last?.year === year ? last.part + 1 : 1;
    for (let left = NAMES_TRIED; left > 0; left -= 1) {
      const place = { year, part };
      const opened = this.disk.openAppend(this.path(place));
      if (opened.ok && opened.length === 0) {
        this.unproven = this.path(place);
        return { ok: true, file: opened.file, place };
      }
      if (opened.ok) opened.file.close();
      // A folder or a pipe may stand there; any other refusal holds for every name.
      else if (!this.isTaken(place)) return opened;
      part += 1;
    }
    const message = `no free name for a fresh journal file in ${this.folder}`;
    return { ok: false, why: "exists", message };
  }

  private isTaken(place: FilePlace): boolean {
    const listed = this.disk.list(this.folder);
    return listed.ok && listed.names.includes(fileName(place));
  }

  /** Everything that waits, as lines that follow a line with this sum. */
  private waitingLines(prev: number): { bytes: Buffer; n: number; sum: number } {
    let text = "";
    let n = this.end.n;
    let sum = prev;
    for (const bodies of this.waiting) {
      for (let i = 0; i < bodies.length; i += 1) {
        n += 1;
        const left = bodies.length - 1 - i;
        const place = { n, version: this.options.version, left, prev: sum };
        const line = recordLine(place, bodies[i] as string);
        text += line.text;
        sum = line.sum;
      }
    }
    return { bytes: Buffer.from(text), n, sum };
  }

  private acknowledge(end: JournalEnd): Appended {
    this.end = end;
    this.written.groups.push(...this.waiting);
    this.written.records += this.waitingRecords;
    if (this.written.records > MOST_KEPT) this.written = { from: end, groups: [], records: 0 };
    this.waiting = [];
    this.waitingRecords = 0;
    return { ok: true, lastN: end.n };
  }

  /** A file is found again only under a year of four digits, however wrong the clock is. */
  private yearNow(): number {
    const year = Math.trunc(this.options.year());
    return Number.isNaN(year) ? 1000 : Math.min(9999, Math.max(1000, year));
  }

  private path(place: FilePlace): string {
    return `${this.folder}/${fileName(place)}`;
  }
}

function firstRefusal(...steps: (() => DiskAnswer)[]): DiskRefusal | undefined {
  for (const step of steps) {
    const answer = step();
    if (!answer.ok) return answer;
  }
  return undefined;
}
