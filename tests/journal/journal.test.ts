import { describe, expect, it } from "vitest";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import { openJournal } from "../../src/journal/open-journal.ts";

const FOLDER = "/home/journal";
const open = (disk: MemoryDisk, year = 2027) => openJournal(disk, FOLDER, { year: () => year });
const bytesOf = (disk: MemoryDisk, name: string): string => {
  const read = disk.read(`${FOLDER}/${name}`);
  if (!read.ok) throw new Error(read.message);
  return Buffer.from(read.bytes).toString();
};
const types = (records: { [field: string]: unknown }[]) => records.map(({ type }) => type);

describe("the journal", () => {
  it("is new in an empty folder and makes nothing before the first append", () => {
    const disk = new MemoryDisk();
    const { found, records, notices, journal } = open(disk);
    expect([found, records, notices]).toEqual(["new", [], []]);
    expect(journal.retry()).toEqual({ ok: true, lastN: 0 });
    expect(disk.list(FOLDER).ok).toBe(false);
  });

  it("gives back what was appended, numbered without a gap", () => {
    const disk = new MemoryDisk();
    const { journal } = open(disk);
    expect(journal.append([{ type: "a" }])).toEqual({ ok: true, lastN: 1 });
    expect(journal.append([{ type: "b" }, { type: "c" }])).toEqual({ ok: true, lastN: 3 });
    const again = open(disk);
    expect([again.found, again.notices]).toEqual(["sound", []]);
    expect(types(again.records)).toEqual(["a", "b", "c"]);
    expect(again.records.map(({ n }) => n)).toEqual([1, 2, 3]);
    expect(again.journal.append([{ type: "d" }])).toEqual({ ok: true, lastN: 4 });
    expect(types(open(disk).records)).toEqual(["a", "b", "c", "d"]);
  });

  it("is one JSON object a line, each with its number, version, the sum before and its own", () => {
    const disk = new MemoryDisk();
    open(disk).journal.append([{ type: "jar-broken", at: "2027-08-14T09:00:00-06:00" }]);
    const [header, line] = bytesOf(disk, "journal-2027.jsonl")
      .trimEnd()
      .split("\n")
      .map((text) => JSON.parse(text));
    expect(header).toMatchObject({ journal: "brinebell", v: 1, after: 0, from: null });
    expect(Object.keys(line)).toEqual(["n", "v", "type", "at", "prev", "sum"]);
    expect(line.prev).toBe(header.sum);
  });

  it("begins a new file with the new year, chained to the old one", () => {
    const disk = new MemoryDisk();
    let year = 2027;
    const { journal } = openJournal(disk, FOLDER, { year: () => year });
    journal.append([{ type: "a" }]);
    year = 2028;
    journal.append([{ type: "b" }]);
    year = 2027;
    journal.append([{ type: "c" }]);
    const last = JSON.parse(bytesOf(disk, "journal-2027.jsonl").trimEnd().split("\n").at(-1) ?? "");
    const header = JSON.parse(bytesOf(disk, "journal-2028.jsonl").split("\n")[0] ?? "");
    expect(header).toMatchObject({ after: 1, from: "journal-2027.jsonl", prev: last.sum });
    expect(types(open(disk, 2028).records)).toEqual(["a", "b", "c"]);
  });
});
