import { describe, expect, it } from "vitest";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import { openJournal } from "../../src/journal/open-journal.ts";
import { FOLDER, linesOf, namesOn, open, said } from "./support.ts";

describe("the journal", () => {
  it("is new in an empty folder and makes nothing before the first append", () => {
    const disk = new MemoryDisk();
    const { found, records, notices, journal } = open(disk);
    expect([found, records, notices]).toEqual(["new", [], []]);
    expect(journal.retry()).toEqual({ ok: true, lastN: 0 });
    expect(disk.list(FOLDER).ok).toBe(false);
  });

  it("returns what was appended, numbered without a gap", () => {
    const disk = new MemoryDisk();
    const { journal } = open(disk);
    expect(journal.append([{ say: "a" }])).toEqual({ ok: true, lastN: 1 });
    expect(journal.append([{ say: "b" }, { say: "c" }])).toEqual({ ok: true, lastN: 3 });
    const again = open(disk);
    expect([again.found, again.notices]).toEqual(["sound", []]);
    expect(said(again)).toEqual(["a", "b", "c"]);
    expect(again.records.map(({ n }) => n)).toEqual([1, 2, 3]);
    expect(again.journal.append([{ say: "d" }])).toEqual({ ok: true, lastN: 4 });
    expect(said(open(disk))).toEqual(["a", "b", "c", "d"]);
  });

  it("is one JSON object per line, with its number, version, the previous sum and its own", () => {
    const disk = new MemoryDisk();
    open(disk).journal.append([{ type: "jar-broken", at: "2027-08-14T09:00:00-06:00" }]);
    const [header, line] = linesOf(disk, "journal-2027.jsonl").map((text) => JSON.parse(text));
    expect(header).toMatchObject({ journal: "brinebell", v: 1, after: 0, from: null });
    expect(Object.keys(line)).toEqual(["n", "v", "type", "at", "prev", "sum"]);
    expect(line.prev).toBe(header.sum);
  });

  it("begins a new file with the new year, chained to the old one", () => {
    const disk = new MemoryDisk();
    let year = 2027;
    const { journal } = openJournal(disk, FOLDER, { year: () => year });
    journal.append([{ say: "a" }]);
    year = 2028;
    journal.append([{ say: "b" }]);
    year = 2027;
    journal.append([{ say: "c" }]);
    const last = JSON.parse(linesOf(disk, "journal-2027.jsonl").at(-1) ?? "");
    const header = JSON.parse(linesOf(disk, "journal-2028.jsonl")[0] ?? "");
    expect(header).toMatchObject({ after: 1, from: "journal-2027.jsonl", prev: last.sum });
    expect(namesOn(disk)).toEqual(["journal-2027.jsonl", "journal-2028.jsonl"]);
    expect(said(open(disk, { year: 2028 }))).toEqual(["a", "b", "c"]);
  });

  it("is found again whatever year a wrong clock shows", () => {
    for (const year of [Number.NaN, -5, 0, 12.7, 99_999, Number.POSITIVE_INFINITY]) {
      const disk = new MemoryDisk();
      expect(open(disk, { year }).journal.append([{ say: "a" }]).ok).toBe(true);
      expect(open(disk).journal.append([{ say: "b" }]).ok).toBe(true);
      expect(said(open(disk))).toEqual(["a", "b"]);
    }
  });

  it("keeps any text a record may carry", () => {
    const disk = new MemoryDisk();
    const hostile = ["\n", "\r\n", '"}\n{"n":9', "\u2028", "\ud800", "ünë ½ 🫙", "\u001b[2J", ""];
    open(disk).journal.append(hostile.map((say) => ({ say })));
    expect(said(open(disk))).toEqual(hostile);
    expect(open(disk).found).toBe("sound");
  });

  it("refuses a record that cannot be a line, and keeps nothing of that append", () => {
    const disk = new MemoryDisk();
    const { journal } = open(disk);
    const circle: { self?: unknown } = {};
    circle.self = circle;
    const bad = [circle, { big: 1n }, { n: 1 }, { prev: "" }, [1], { say: "x".repeat(1_000_000) }];
    for (const record of bad) {
      const answer = journal.append([{ say: "fine" }, record]);
      expect(answer).toMatchObject({ ok: false, why: "bad-record" });
    }
    expect(journal.pending).toBe(0);
    expect(journal.append([{ say: "x".repeat(900_000) }])).toEqual({ ok: true, lastN: 1 });
  });

  it("writes nothing once another program has the lock", () => {
    const disk = new MemoryDisk();
    let ours = true;
    const { journal } = openJournal(disk, FOLDER, { year: () => 2027, owns: () => ours });
    journal.append([{ say: "a" }]);
    ours = false;
    expect(journal.append([{ say: "b" }])).toMatchObject({ ok: false, why: "not-ours" });
    expect(journal.pending).toBe(1);
    expect(said(open(disk))).toEqual(["a"]);
  });
});

describe("a refused append", () => {
  it("stays in memory, and later ones queue behind it in order", () => {
    const disk = new MemoryDisk();
    const { journal } = open(disk);
    journal.append([{ say: "a" }]);
    disk.fault = () => ({ why: "full" });
    expect(journal.append([{ say: "b" }])).toMatchObject({ ok: false, why: "full" });
    expect(journal.append([{ say: "c" }, { say: "d" }])).toMatchObject({ ok: false });
    expect([journal.pending, journal.lastN]).toEqual([3, 1]);
    disk.fault = undefined;
    expect(journal.retry()).toEqual({ ok: true, lastN: 4 });
    expect(journal.pending).toBe(0);
    expect(said(open(disk))).toEqual(["a", "b", "c", "d"]);
  });

  it("restores the line boundary before it writes again if half was written", () => {
    const disk = new MemoryDisk();
    const { journal } = open(disk);
    journal.append([{ say: "a" }]);
    disk.fault = ({ name }) => (name === "append" ? { why: "full", half: true } : undefined);
    journal.append([{ say: "b" }]);
    disk.fault = undefined;
    expect(journal.append([{ say: "c" }])).toEqual({ ok: true, lastN: 3 });
    const again = open(disk);
    expect([again.found, said(again)]).toEqual(["sound", ["a", "b", "c"]]);
    expect(namesOn(disk)).toEqual(["journal-2027.jsonl"]);
  });

  it("is written again in a fresh file after a failed sync, and counts once", () => {
    const disk = new MemoryDisk();
    const { journal } = open(disk);
    journal.append([{ say: "a" }]);
    disk.fault = ({ name }) => (name === "sync" ? { why: "io" } : undefined);
    expect(journal.append([{ say: "b" }])).toMatchObject({ ok: false, why: "io" });
    disk.fault = undefined;
    expect(journal.append([{ say: "c" }])).toEqual({ ok: true, lastN: 3 });
    expect(namesOn(disk)).toEqual(["journal-2027-2.jsonl", "journal-2027.jsonl"]);
    const again = open(disk);
    expect([again.found, again.notices, said(again)]).toEqual(["sound", [], ["a", "b", "c"]]);
  });

  it("leaves one fresh file behind, however often the sync fails", () => {
    const disk = new MemoryDisk();
    const { journal } = open(disk);
    journal.append([{ say: "a" }]);
    disk.fault = ({ name }) => (name === "sync" ? { why: "io" } : undefined);
    for (let i = 0; i < 20; i += 1) journal.append([{ say: `b${i}` }]);
    disk.fault = undefined;
    journal.retry();
    expect(namesOn(disk)).toEqual(["journal-2027-2.jsonl", "journal-2027.jsonl"]);
    expect(open(disk).records.length).toBe(21);
  });

  it("loses nothing on a disk that fills up and is freed", () => {
    const disk = new MemoryDisk();
    disk.roomBytes = 2000;
    const { journal } = open(disk);
    const texts = Array.from({ length: 40 }, (_, i) => `event ${i}`);
    const answers = texts.map((say) => journal.append([{ say }]).ok);
    expect(answers).toContain(false);
    expect(journal.pending).toBe(answers.filter((ok) => !ok).length);
    disk.roomBytes = Number.POSITIVE_INFINITY;
    expect(journal.retry().ok).toBe(true);
    expect(said(open(disk))).toEqual(texts);
  });
});
