import type { Disk, DiskAnswer } from "../ports/disk.ts";
import { fileName } from "./file-name.ts";
import { Journal, type WriteRefusal } from "./journal.ts";
import type { JournalLine } from "./line.ts";
import type { JournalFormat } from "./read-file.ts";
import {
  checkExpected,
  type Damage,
  FORMAT,
  type JournalReading,
  readJournal,
  type TornTail,
} from "./read-journal.ts";

/** How the journal was found; `newer` and `unreadable` can only be read, as far as they go. */
type JournalCondition = "new" | "sound" | "torn" | "damaged" | "newer" | "unreadable";

type OpenOptions = {
  /** The calendar year of the kitchen now, asked at each append. */
  year: () => number;
  /** False once the lock belongs to another program; asked before each append, where given. */
  owns?: () => boolean;
  /** See `JournalOptions.whyNot`. */
  whyNot?: () => WriteRefusal | undefined;
  /** Highest line number known to have been on the disk, as from the side file of clocks. */
  expectedN?: number;
  /** How lines of older versions are upgraded. */
  format?: JournalFormat;
};

export type Opened = {
  found: JournalCondition;
  /** All that could be read, oldest first. In a damaged file that includes what lies beyond. */
  records: JournalLine[];
  journal: Journal;
  /** Every place that cannot be relied on, in older files too. */
  damages: Damage[];
  /** Sentences for the person, in the order they matter. */
  notices: string[];
};

/**
 * Opens the journal of a folder for the one program that writes it: reads and checks all files,
 * and sets a cut-off end aside in a file of its own. Nothing is created in an empty folder before
 * the first append. Never throws.
 */
export function openJournal(disk: Disk, folder: string, options: OpenOptions): Opened {
  const { year, owns = () => true, whyNot, expectedN = 0, format = FORMAT } = options;
  const reading = readJournal(disk, folder, format);
  checkExpected(reading, expectedN);
  const found = judge(reading);
  const notices = noticesOf(reading, found, folder);
  const mine = owns();
  const mended = found === "torn" && mine ? setAside(disk, folder, reading) : undefined;
  if (mended) notices.push(...mended.notices);
  const seal = sealOf(found, notices);
  const settled = seal?.forGood || !mine || settle(disk, folder, reading);
  const journal = new Journal(disk, folder, reading.end, {
    year,
    owns,
    version: format.version,
    startFresh: (mended?.failed ?? false) || !settled,
    ...(whyNot ? { whyNot } : {}),
    ...(mine ? {} : { settle: () => settle(disk, folder, reading) }),
    ...(seal ? { sealed: seal } : {}),
  });
  return { found, records: reading.records, journal, damages: reading.damages, notices };
}

/**
 * Lines that a program wrote, but died before syncing, are read like all others, and what comes
 * next builds on them: they have to survive a power cut too. False where the disk refuses.
 */
function settle(disk: Disk, folder: string, { end }: JournalReading): boolean {
  if (!end.place) return true;
  const opened = disk.openAppend(`${folder}/${fileName(end.place)}`);
  // Where nothing can be opened for writing, nothing will build on it either.
  if (!opened.ok) return true;
  const synced = opened.file.sync();
  opened.file.close();
  return synced.ok;
}

function judge({ unreadable, newerFile, damages, torn, end }: JournalReading): JournalCondition {
  if (unreadable) return "unreadable";
  if (newerFile) return "newer";
  if (damages.some(({ stops }) => stops)) return "damaged";
  if (torn.some(({ bytes }) => bytes.length > 0)) return "torn";
  return end.place ? "sound" : "new";
}

function sealOf(
  found: JournalCondition,
  notices: string[],
): { message: string; forGood: boolean } | undefined {
  if (found !== "unreadable" && found !== "newer" && found !== "damaged") return undefined;
  return { message: notices[0] ?? found, forGood: found !== "damaged" };
}

function noticesOf(reading: JournalReading, found: JournalCondition, folder: string): string[] {
  const notices: string[] = [];
  if (reading.unreadable) {
    const { message } = reading.unreadable;
    notices.push(
      `The journal cannot be read, so nothing is written to it: ${message}. ` +
        "Once that is mended, open the kitchen again.",
    );
  }
  if (reading.newerFile && found === "newer") {
    notices.push(
      `${folder}/${reading.newerFile} was written by a later version of Brinebell. ` +
        "Here it can only be read; install that version to go on.",
    );
  }
  const stopping = reading.damages.find(({ stops }) => stops);
  if (stopping) {
    notices.push(
      `${where(stopping, folder)}: ${stopping.reason}. The file is left as it is and only read; ` +
        "with your yes the day goes on in a fresh file.",
    );
  }
  for (const old of reading.damages.filter(({ stops }) => !stops)) {
    notices.push(`${where(old, folder)}: ${old.reason}. This stops nothing today.`);
  }
  return notices;
}

function where({ file, line }: Damage, folder: string): string {
  const path = `${folder}/${file}`;
  return line > 0 ? `Line ${line} of ${path} is damaged` : `${path} is damaged`;
}

/** Copies each cut-off end to a file of its own, then takes it off the journal. */
function setAside(
  disk: Disk,
  folder: string,
  { torn, names }: JournalReading,
): { notices: string[]; failed: boolean } {
  const notices: string[] = [];
  let failed = false;
  for (const tail of torn) {
    const aside = freeName(`${tail.file}.torn`, names);
    const moved = moveTail(disk, folder, tail, aside);
    const size = `${tail.bytes.length} bytes`;
    const file = `${folder}/${tail.file}`;
    const what = `The end of ${file} was cut short (${size}); all before it is kept.`;
    if (moved.ok) {
      notices.push(`${what} The cut-off piece is in ${aside}.`);
    } else {
      failed = true;
      notices.push(`${what} It could not be set aside and stays there: ${moved.message}.`);
    }
  }
  return { notices, failed };
}

function moveTail(disk: Disk, folder: string, tail: TornTail, aside: string): DiskAnswer {
  const path = `${folder}/${tail.file}`;
  if (tail.from === 0) {
    const moved = disk.rename(path, `${folder}/${aside}`);
    return moved.ok ? disk.syncFolder(folder) : moved;
  }
  const copied = disk.createExclusive(`${folder}/${aside}`, tail.bytes);
  return copied.ok ? disk.truncate(path, tail.from) : copied;
}

function freeName(stem: string, names: string[]): string {
  let count = 1;
  while (names.includes(`${stem}-${count}`)) count += 1;
  names.push(`${stem}-${count}`);
  return `${stem}-${count}`;
}
