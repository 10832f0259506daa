import { describe, expect, it } from "vitest";
import { type DiskFault, MemoryDisk, type Unsynced } from "../../src/journal/memory-disk.ts";
import { openJournal } from "../../src/journal/open-journal.ts";
import { diskWith, FOLDER, journalOf, open, said } from "./support.ts";

/** What was given to the journal, and how much of it was acknowledged. */
type Lived = { handed: string[]; acknowledged: number };

const CUTS: Unsynced[] = ["lost", "kept", "half", "zeros"];
const FAULTS: DiskFault[] = [
  { why: "full" },
  { why: "full", half: true },
  { why: "io" },
  { why: "io", half: true },
  { why: "denied" },
];

/** A small season: appends of one and of several records, across a new year. */
function live(disk: MemoryDisk, lived: Lived): void {
  let year = 2027;
  const { journal } = openJournal(disk, FOLDER, { year: () => year });
  const hand = (...texts: string[]): void => {
    lived.handed.push(...texts);
    const answer = journal.append(texts.map((say) => ({ say })));
    if (answer.ok) lived.acknowledged = lived.handed.length;
    expect(journal.pending).toBe(lived.handed.length - lived.acknowledged);
  };
  hand("a");
  hand("b", "c", "d");
  hand("e");
  year = 2028;
  hand("f", "g");
  hand("h");
}

/** Runs with a fault at the n-th call, for n = 1, 2, ... until none is hit; returns how many. */
function atEveryCall(run: (n: number, disk: MemoryDisk) => void): number {
  for (let n = 1; ; n += 1) {
    const disk = new MemoryDisk();
    run(n, disk);
    if (disk.calls < n) return n - 1;
  }
}

function expectKept(disk: MemoryDisk, lived: Lived, context: string): void {
  const opened = open(disk, { year: 2028 });
  const found = said(opened);
  expect(["new", "sound", "torn"], context).toContain(opened.found);
  expect(found.slice(0, lived.acknowledged), context).toEqual(
    lived.handed.slice(0, lived.acknowledged),
  );
  expect(found, context).toEqual(lived.handed.slice(0, found.length));
  const next = opened.journal.append([{ say: "next" }]);
  expect(next, context).toEqual({ ok: true, lastN: found.length + 1 });
  expect(said(open(disk, { year: 2028 })), context).toEqual([...found, "next"]);
}

describe("with a disk that fails at the n-th call", () => {
  it.each(FAULTS)("once, nothing acknowledged is lost: %o", (fault) => {
    const calls = atEveryCall((n, disk) => {
      const lived: Lived = { handed: [], acknowledged: 0 };
      disk.fault = ({ count }) => (count === n ? fault : undefined);
      live(disk, lived);
      disk.fault = undefined;
      for (const cut of CUTS) expectKept(disk.afterPowerCut(cut), lived, `call ${n}, ${cut}`);
    });
    expect(calls).toBeGreaterThan(15);
  });

  it.each(FAULTS)("and every time after, nothing acknowledged is lost: %o", (fault) => {
    atEveryCall((n, disk) => {
      const lived: Lived = { handed: [], acknowledged: 0 };
      disk.fault = ({ count }) => (count >= n ? fault : undefined);
      live(disk, lived);
      disk.fault = undefined;
      for (const cut of CUTS) expectKept(disk.afterPowerCut(cut), lived, `call ${n}, ${cut}`);
    });
  });

  it.each(FAULTS)("everything waiting is written once it recovers: %o", (fault) => {
    atEveryCall((n, disk) => {
      const { journal } = openJournal(disk, FOLDER, { year: () => 2027 });
      disk.fault = ({ count }) => (count >= n ? fault : undefined);
      for (const say of ["a", "b", "c"]) journal.append([{ say }]);
      disk.fault = undefined;
      expect(journal.retry()).toEqual({ ok: true, lastN: 3 });
      for (const cut of CUTS) expect(said(open(disk.afterPowerCut(cut)))).toEqual(["a", "b", "c"]);
    });
  });
});

describe("with a power cut in the middle of any call", () => {
  it("no acknowledged record is lost and what is found is a prefix of what was given", () => {
    const cuts = atEveryCall((n, disk) => {
      const lived: Lived = { handed: [], acknowledged: 0 };
      let image: (() => MemoryDisk)[] = [];
      let acknowledged = 0;
      disk.fault = ({ count }) => {
        // Half of this call is done and then the power fails: nothing after it reaches the disk.
        if (count === n) acknowledged = lived.acknowledged;
        if (count === n + 1) image = CUTS.map((cut) => frozen(disk, cut));
        return count === n ? { why: "io", half: true } : undefined;
      };
      live(disk, lived);
      for (const cut of image) expectKept(cut(), { ...lived, acknowledged }, `call ${n}`);
    });
    expect(cuts).toBeGreaterThan(15);
  });

  it("while a cut-off end is being set aside, nothing of it is lost either", () => {
    const { bytes, ends } = journalOf(["a", "b"]);
    const torn = bytes.subarray(0, (ends[1] as number) - 5);
    for (let n = 1; n < 12; n += 1) {
      for (const half of [false, true]) {
        const disk = diskWith(torn);
        disk.fault = ({ count }) => (count >= n ? { why: "io", half } : undefined);
        open(disk);
        for (const cut of CUTS) {
          const after = disk.afterPowerCut(cut);
          expect(said(open(after))).toEqual(["a"]);
          expect(everything(after)).toContain(torn.subarray(ends[0]).toString());
        }
      }
    }
  });
});

function frozen(disk: MemoryDisk, cut: Unsynced): () => MemoryDisk {
  const image = disk.afterPowerCut(cut);
  return () => image;
}

function everything(disk: MemoryDisk): string {
  const listed = disk.list(FOLDER);
  const names = listed.ok ? listed.names : [];
  return names
    .map((name) => disk.read(`${FOLDER}/${name}`))
    .map((read) => (read.ok ? Buffer.from(read.bytes).toString() : ""))
    .join("\n");
}
