import { describe, expect, it } from "vitest";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import { bytesOf, FOLDER, journalOf, linesOf, namesOn, open, said } from "./support.ts";

const FILE = "journal-2027.jsonl";
const PATH = `${FOLDER}/${FILE}`;
const FOREIGN = journalOf(["x", "y", "z"]).bytes;

/** A journal of two lines from before, and one of this sitting. */
function begun() {
  const disk = new MemoryDisk();
  open(disk).journal.append([{ say: "a" }]);
  open(disk).journal.append([{ say: "b" }]);
  const { journal } = open(disk);
  journal.append([{ say: "c" }]);
  return { disk, journal, before: bytesOf(disk, FILE) };
}

/** What may happen to the file while it is open, and what is said at the next opening. */
const SWAPS: [string, (disk: MemoryDisk, before: Buffer) => void][] = [
  ["another log is put in its place", (disk) => disk.plant(PATH, FOREIGN)],
  ["something else is written over it", (disk) => disk.plant(PATH, Buffer.from("<html>"))],
  ["it is emptied", (disk) => void disk.truncate(PATH, 0)],
  ["it is cut", (disk, before) => void disk.truncate(PATH, before.length - 9)],
  [
    "somebody adds to it",
    (disk) => {
      const opened = disk.openAppend(PATH);
      if (opened.ok) opened.file.append(Buffer.from("more\n"));
    },
  ],
  ["it is taken away", (disk) => void disk.remove(PATH)],
  ["it is renamed", (disk) => void disk.rename(PATH, `${FOLDER}/old.jsonl`)],
];

describe("a log whose file is not there any more", () => {
  it.each(SWAPS)("is not written to, and nothing counts as written: %s", (_, swap) => {
    const { disk, journal, before } = begun();
    swap(disk, before);
    const names = namesOn(disk);
    const there = names.includes(FILE) ? bytesOf(disk, FILE) : undefined;
    for (const say of ["d", "e"]) {
      expect(journal.append([{ say }])).toMatchObject({ ok: false, why: "displaced" });
    }
    expect(journal.pending).toBe(2);
    expect(namesOn(disk)).toEqual(names);
    if (there) expect(bytesOf(disk, FILE)).toEqual(there);
  });

  it.each(SWAPS)("goes on beside it after a yes, with all of this sitting: %s", (_, swap) => {
    const { disk, journal, before } = begun();
    swap(disk, before);
    journal.append([{ say: "d" }]);
    expect(journal.waitsForYes).toContain("another file stands");
    expect(journal.continueInFreshFile()).toEqual({ ok: true, lastN: 4 });
    expect(journal.append([{ say: "e" }])).toEqual({ ok: true, lastN: 5 });
    const [fresh] = namesOn(disk).filter((name) => name.startsWith("journal-2027-"));
    const lines = linesOf(disk, fresh!).map((line) => JSON.parse(line));
    expect(lines.map(({ say }) => say)).toEqual([undefined, "c", "d", "e"]);
    expect(lines.slice(1).map(({ n }) => n)).toEqual([3, 4, 5]);
    // Every line that was answered as written is found again.
    const again = open(disk);
    expect(said(again)).toEqual(expect.arrayContaining(["c", "d", "e"]));
    expect(again.journal.append([{ say: "f" }]).ok).toBe(again.found !== "damaged");
  });

  it("is told what would be joined before it is joined, once", () => {
    const { disk, journal, before } = begun();
    SWAPS[0]![1](disk, before);
    journal.append([{ say: "d" }]);
    journal.continueInFreshFile();
    const again = open(disk);
    expect(again.found).toBe("damaged");
    expect(again.notices[0]).toMatch(/it holds 3 lines, and the file after it 2 lines, from num/);
    expect(again.journal.append([{ say: "e" }])).toMatchObject({ ok: false, why: "read-only" });
    expect(again.journal.continueInFreshFile().ok).toBe(true);
    expect(open(disk).found).toBe("sound");
  });

  it("needs no yes at the next opening where the two fit together", () => {
    const { disk, journal } = begun();
    disk.remove(PATH);
    const older = new MemoryDisk();
    open(older).journal.append([{ say: "a" }]);
    open(older).journal.append([{ say: "b" }]);
    disk.plant(PATH, bytesOf(older, FILE));
    journal.append([{ say: "d" }]);
    journal.continueInFreshFile();
    const again = open(disk);
    expect([again.found, again.notices]).toEqual(["sound", []]);
    expect(said(again)).toEqual(["a", "b", "c", "d"]);
  });

  it("is ours where only its numbers changed: a copy ends with our last line", () => {
    const { disk, journal, before } = begun();
    disk.plant(PATH, before);
    expect(journal.append([{ say: "d" }])).toEqual({ ok: true, lastN: 4 });
    expect(said(open(disk))).toEqual(["a", "b", "c", "d"]);
  });

  it("is missed also where it goes while a line is being written", () => {
    const { disk, journal } = begun();
    disk.eachCall = ({ name }) => {
      if (name === "sync") disk.aside(() => disk.plant(PATH, FOREIGN));
    };
    expect(journal.append([{ say: "d" }])).toMatchObject({ ok: false, why: "displaced" });
    disk.eachCall = undefined;
    expect(journal.continueInFreshFile()).toEqual({ ok: true, lastN: 4 });
    expect(said(open(disk))).toEqual(expect.arrayContaining(["c", "d"]));
  });
});
