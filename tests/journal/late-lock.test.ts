import { describe, expect, it } from "vitest";
import { type LateLock, lockOrLate } from "../../src/journal/late-lock.ts";
import { takeLock } from "../../src/journal/lock.ts";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import { type Opened, openJournal } from "../../src/journal/open-journal.ts";
import { readJournal } from "../../src/journal/read-journal.ts";

const FOLDER = "/home";
const startedAt = "2027-08-14T08:00:00-06:00";
const alive = new Set([10, 11]);
const processes = { isAlive: (pid: number) => alive.has(pid), startTicks: () => "1" };

type Opening = { journal: Opened["journal"]; late: LateLock | undefined; records: number };

/** Opens the journal as a kitchen does; `late` where its lock is not held yet. */
function open(disk: MemoryDisk, pid: number, year = 2027): Opening {
  const taken = lockOrLate(disk, FOLDER, { pid, bootId: "b1", startedAt }, processes);
  if (!taken.ok) throw new Error(taken.message);
  const { lock, late } = taken;
  const { journal, records } = openJournal(disk, FOLDER, {
    year: () => year,
    owns: () => lock.owns(),
    whyNot: () => lock.whyNot?.(),
  });
  return { journal, late, records: records.length };
}

function journalText(disk: MemoryDisk): string {
  const read = disk.read(`${FOLDER}/journal-2027.jsonl`);
  return read.ok ? Buffer.from(read.bytes).toString("utf8") : "";
}

function fullDisk(): MemoryDisk {
  const disk = new MemoryDisk();
  disk.makeFolder(FOLDER);
  disk.roomBytes = 0;
  return disk;
}

describe("a kitchen whose lock cannot be made", () => {
  it("writes nothing, and all of it in order once there is room", () => {
    const disk = fullDisk();
    const { journal, late } = open(disk, 10);
    for (const at of [1, 2, 3]) {
      expect(journal.append([{ type: "note", at }])).toMatchObject({ ok: false, why: "full" });
    }
    expect(disk.list(FOLDER)).toEqual({ ok: true, names: [] });
    expect(journal.pending).toBe(3);
    disk.roomBytes = 10_000;
    let told = 0;
    if (late) {
      late.onHad = () => {
        told += 1;
      };
    }
    expect(journal.append([{ type: "note", at: 4 }])).toMatchObject({ ok: true, lastN: 4 });
    expect(journalText(disk).match(/"at":\d/g)).toEqual(['"at":1', '"at":2', '"at":3', '"at":4']);
    expect(told).toBe(1);
    expect(readJournal(disk, FOLDER).records.length).toBe(4);
  });

  it("says how to fix it", () => {
    const { journal } = open(fullDisk(), 10);
    const refused = journal.append([{ type: "note" }]);
    expect(refused.ok ? "" : refused.message).toMatch(/full.*once there is room/);
  });

  it("never writes once another program has the lock", () => {
    const disk = fullDisk();
    const first = open(disk, 10);
    first.journal.append([{ type: "note", who: "first" }]);
    disk.roomBytes = 10_000;
    const second = open(disk, 11);
    second.journal.append([{ type: "note", who: "second" }]);
    const before = journalText(disk);
    const refused = first.journal.append([{ type: "note", who: "first" }]);
    expect(refused).toMatchObject({ ok: false, why: "not-ours" });
    expect(refused.ok ? "" : refused.message).toMatch(/process 11 has this kitchen open/);
    disk.remove(`${FOLDER}/lock`);
    expect(first.journal.retry()).toMatchObject({ ok: false, why: "not-ours" });
    expect(journalText(disk)).toBe(before);
  });

  it("never writes after another program wrote and closed", () => {
    const disk = fullDisk();
    const first = open(disk, 10);
    first.journal.append([{ type: "note", who: "first" }]);
    disk.roomBytes = 10_000;
    open(disk, 11).journal.append([{ type: "note", who: "second" }]);
    disk.remove(`${FOLDER}/lock`);
    expect(first.journal.retry()).toMatchObject({ ok: false, why: "not-ours" });
    expect(disk.list(FOLDER)).toEqual({ ok: true, names: ["journal-2027.jsonl"] });
    expect(journalText(disk)).not.toContain("first");
  });

  it("sees what was written though an empty file lies behind it", () => {
    const disk = new MemoryDisk();
    open(disk, 11).journal.append([{ type: "note", who: "before" }]);
    disk.plant(`${FOLDER}/journal-2027-2.jsonl`, new Uint8Array());
    disk.remove(`${FOLDER}/lock`);
    disk.roomBytes = 0;
    const first = open(disk, 10);
    first.journal.append([{ type: "note", who: "first" }]);
    disk.roomBytes = 10_000;
    open(disk, 11).journal.append([{ type: "note", who: "second" }]);
    disk.remove(`${FOLDER}/lock`);
    expect(first.journal.retry()).toMatchObject({ ok: false, why: "not-ours" });
    const kept = readJournal(disk, FOLDER).records.map((one) => one.who);
    expect(kept).toEqual(["before", "second"]);
  });

  it("sees that somebody else is there though the disk is full", () => {
    const disk = new MemoryDisk();
    open(disk, 10);
    const create = disk.createExclusive.bind(disk);
    // A real disk notices that it has no room before it notices that the file exists.
    disk.createExclusive = (path, bytes) => {
      const made = create(path, bytes);
      return made.ok ? made : { ok: false, why: "full", message: "no room" };
    };
    const self = { pid: 11, bootId: "b1", startedAt };
    expect(takeLock(disk, FOLDER, self, processes)).toMatchObject({ ok: false, why: "held" });
    alive.delete(10);
    expect(takeLock(disk, FOLDER, self, processes)).toMatchObject({ ok: false, why: "full" });
    alive.add(10);
  });

  it("is refused at once where the folder's name is not a folder's", () => {
    const disk = fullDisk();
    disk.fault = ({ name }) => (name === "makeFolder" ? { why: "exists" } : undefined);
    const self = { pid: 10, bootId: "b1", startedAt };
    expect(lockOrLate(disk, FOLDER, self, processes)).toMatchObject({ ok: false, why: "exists" });
  });

  it("continues after lines that were never synced, once they are", () => {
    const disk = new MemoryDisk();
    const dead = open(disk, 10);
    dead.journal.append([{ type: "note", at: 1 }]);
    disk.fault = ({ name }) => {
      if (name === "sync") throw new Error("killed");
      return undefined;
    };
    expect(() => dead.journal.append([{ type: "note", at: 2 }])).toThrow("killed");
    disk.fault = undefined;
    disk.remove(`${FOLDER}/lock`);
    disk.roomBytes = 0;
    const { journal, records } = open(disk, 11, 2028);
    expect(records).toBe(2);
    // The next line goes to the file of another year, which builds on lines not synced by anybody.
    journal.append([{ type: "note", at: 3 }]);
    disk.roomBytes = 10_000;
    expect(journal.retry()).toMatchObject({ ok: true, lastN: 3 });
    const after = readJournal(disk.afterPowerCut("lost"), FOLDER);
    expect([after.records.length, after.damages]).toEqual([3, []]);
  });
});
