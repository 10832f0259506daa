import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import { type Opened, openJournal } from "../../src/journal/open-journal.ts";

export const FOLDER = "/home/journal";

/** Opens the journal of a disk in the year 2027. */
export function open(disk: MemoryDisk, more: { year?: number; expectedN?: number } = {}): Opened {
  const { year = 2027, expectedN = 0 } = more;
  return openJournal(disk, FOLDER, { year: () => year, expectedN });
}

/** The texts of the records' field `say`. */
export function said({ records }: Pick<Opened, "records">): unknown[] {
  return records.map(({ say }) => say);
}

export function bytesOf(disk: MemoryDisk, name: string): Buffer {
  const read = disk.read(`${FOLDER}/${name}`);
  if (!read.ok) throw new Error(read.message);
  return Buffer.from(read.bytes);
}

export function linesOf(disk: MemoryDisk, name: string): string[] {
  return bytesOf(disk, name).toString().trimEnd().split("\n");
}

export function namesOn(disk: MemoryDisk): string[] {
  const listed = disk.list(FOLDER);
  return listed.ok ? listed.names : [];
}

/** A disk with one journal file of these bytes. */
export function diskWith(bytes: Uint8Array, name = "journal-2027.jsonl"): MemoryDisk {
  const disk = new MemoryDisk();
  disk.makeFolder(FOLDER);
  disk.plant(`${FOLDER}/${name}`, bytes);
  return disk;
}

/** A journal file with one append for each text, and each append's end in bytes. */
export function journalOf(texts: string[]): { bytes: Buffer; ends: number[] } {
  const disk = new MemoryDisk();
  const { journal } = open(disk);
  const ends = texts.map((say) => {
    journal.append([{ say }]);
    return bytesOf(disk, "journal-2027.jsonl").length;
  });
  return { bytes: bytesOf(disk, "journal-2027.jsonl"), ends };
}
