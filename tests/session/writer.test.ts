/** Who writes in a data folder: the same as long as it is the same folder, and never two alike. */
import { describe, expect, it } from "vitest";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import { WRITER_WORDS, wordOf } from "../../src/kitchen/jars/jar-ids.ts";
import { writerIn } from "../../src/session/writer.ts";

const FOLDER = "/home/kitchen";
const FILE = `${FOLDER}/writer.json`;
const NOBODY: ReadonlySet<string> = new Set();

function diskWithFolder(...folders: string[]): MemoryDisk {
  const disk = new MemoryDisk();
  for (const folder of folders) disk.makeFolder(folder);
  return disk;
}

function bytesOf(disk: MemoryDisk): Uint8Array {
  const read = disk.read(FILE);
  if (!read.ok) throw new Error(read.message);
  return read.bytes;
}

describe("the writer of a data folder", () => {
  it("is drawn once and kept", () => {
    const disk = diskWithFolder(FOLDER);
    const first = writerIn(disk, FOLDER, NOBODY, () => 5);
    expect(first).toBe(`${WRITER_WORDS[5]}-5`);
    expect(writerIn(disk, FOLDER, NOBODY, () => 6)).toBe(first);
  });

  it("is a new one in a copy of the folder, with a word the journal does not know yet", () => {
    const disk = diskWithFolder(FOLDER, "/home/copy");
    const first = writerIn(disk, FOLDER, NOBODY, () => 5) ?? "";
    disk.plant("/home/copy/writer.json", bytesOf(disk));
    const second = writerIn(disk, "/home/copy", new Set([first]), () => 5) ?? "";
    expect(second).not.toBe("");
    expect(wordOf(second)).not.toBe(wordOf(first));
    expect(writerIn(disk, "/home/copy", new Set([first, second]), () => 7)).toBe(second);
  });

  it("is a new one where the file was put back from a backup", () => {
    const disk = diskWithFolder(FOLDER);
    const first = writerIn(disk, FOLDER, NOBODY, () => 5);
    const bytes = bytesOf(disk);
    disk.remove(FILE);
    disk.plant(FILE, bytes);
    expect(writerIn(disk, FOLDER, NOBODY, () => 6)).not.toBe(first);
  });

  it("is a new one where the file is damaged", () => {
    const disk = diskWithFolder(FOLDER);
    disk.plant(FILE, Buffer.from("{"));
    expect(writerIn(disk, FOLDER, NOBODY, () => 6)).toBe(`${WRITER_WORDS[6]}-6`);
  });
});

describe("the words that writers go by", () => {
  it("are all different, and say nothing else in a kitchen", () => {
    expect(new Set(WRITER_WORDS).size).toBe(WRITER_WORDS.length);
    expect(WRITER_WORDS.length).toBeGreaterThan(40);
  });
});
