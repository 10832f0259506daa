/**
 * The state replayed from a long journal is kept, and is valid only for the bytes and the build it
 * was made from.
 */
import { beforeAll, describe, expect, it } from "vitest";
import { writeHeartbeat } from "../../../src/journal/heartbeat.ts";
import { MemoryDisk } from "../../../src/journal/memory-disk.ts";
import { openJournal } from "../../../src/journal/open-journal.ts";
import type { KitchenEvent } from "../../../src/kitchen/events.ts";
import { initialState } from "../../../src/kitchen/state.ts";
import { recordOf } from "../../../src/session/reading/journal-records.ts";
import { type Reader, readKitchen } from "../../../src/session/reading/read-kitchen.ts";
import { WORTH_KEEPING } from "../../../src/session/reading/snapshot.ts";
import { demoSeason } from "../../review/demo-season.ts";
import { LIBRARY } from "../../review/kitchen-files.ts";

const HOME = "/home";
const JOURNAL = "/home/journal-2027.jsonl";
const SNAPSHOT = "/home/snapshot.json";
const WALL = Date.UTC(2027, 9, 1);

let season: KitchenEvent[];

beforeAll(async () => {
  season = await demoSeason(LIBRARY, WORTH_KEEPING + 200);
});

function append(disk: MemoryDisk, events: readonly KitchenEvent[]): void {
  const { journal } = openJournal(disk, HOME, { year: () => 2027 });
  const added = journal.append(events.map((event) => recordOf(initialState(), event)));
  if (!added.ok) throw new Error(added.message);
  journal.close();
}

function kitchen(events: readonly KitchenEvent[] = season): MemoryDisk {
  const disk = new MemoryDisk();
  append(disk, events);
  return disk;
}

const read = (disk: MemoryDisk, reader: Reader = {}) => {
  return readKitchen(HOME, { wallMs: WALL, disk, build: "one", ...reader });
};

/**
 * Files read completely since a moment: a valid snapshot is read, and the journal is not read
 * again.
 */
function filesRead(disk: MemoryDisk, what: () => unknown): string[] {
  const paths: string[] = [];
  disk.eachCall = ({ name, path }) => {
    if (name === "read" && !path.endsWith("clocks.json")) paths.push(path);
  };
  what();
  disk.eachCall = undefined;
  return paths;
}

function bytesAt(disk: MemoryDisk, path: string): Uint8Array {
  const answer = disk.read(path);
  if (!answer.ok) throw new Error(answer.message);
  return answer.bytes;
}

function changed(disk: MemoryDisk, path: string, from: string, to: string): void {
  const text = Buffer.from(bytesAt(disk, path)).toString("utf8");
  expect(text).toContain(from);
  disk.replace(path, Buffer.from(text.replace(from, to)));
}

describe("the snapshot of a long journal", () => {
  it("gives the next reader what the journal gives", () => {
    const disk = kitchen();
    const first = read(disk);
    expect(filesRead(disk, () => read(disk))).toEqual([JOURNAL, SNAPSHOT]);
    const second = read(disk);
    expect(second).toEqual(first);
    expect(second).toEqual(readKitchen(HOME, { wallMs: WALL, disk: kitchen() }));
    expect(second.state.nextEnd).toBe(Number.POSITIVE_INFINITY);
  });

  it("reads the events themselves only when they are asked for", () => {
    const disk = kitchen();
    read(disk);
    const { state } = read(disk);
    expect(filesRead(disk, () => state.history)).toEqual([JOURNAL]);
    expect(filesRead(disk, () => state.history)).toEqual([]);
    expect(state.history).toHaveLength(season.length);
  });

  it("is not kept for a short one, nor by a program without a build id", () => {
    const short = kitchen(season.slice(0, WORTH_KEEPING - 1));
    read(short);
    expect(short.read(SNAPSHOT).ok).toBe(false);
    const unnamed = kitchen();
    read(unnamed, { build: undefined });
    expect(unnamed.read(SNAPSHOT).ok).toBe(false);
  });

  it("is no longer valid once a line is added", () => {
    const disk = kitchen(season.slice(0, -1));
    const before = read(disk);
    append(disk, season.slice(-1));
    const after = read(disk);
    expect(after.state).not.toEqual(before.state);
    expect(after).toEqual(readKitchen(HOME, { wallMs: WALL, disk }));
    expect(filesRead(disk, () => read(disk))).toEqual([JOURNAL, SNAPSHOT]);
  });

  it("does not hide that lines were cut off which the clocks know of", () => {
    const disk = kitchen();
    expect(read(disk).incomplete).toBe(false);
    const reading = { wallMs: WALL, monoMs: 0, bootMs: 0, bootId: "b", zone: "UTC" };
    writeHeartbeat(disk, HOME, { reading, lastN: season.length + 2 });
    const { incomplete, notices } = read(disk);
    expect([incomplete, notices[0]]).toEqual([true, expect.stringContaining("had been written")]);
  });

  it("does not hide damage that came to the journal after it", () => {
    const disk = kitchen();
    read(disk);
    changed(disk, JOURNAL, '"type":"batch-begun"', '"type":"batch-bogun"');
    expect(read(disk).notices).toHaveLength(1);
    // Nor is the state replayed from a damaged journal kept.
    expect(read(disk).notices).toHaveLength(1);
  });

  it("is not valid for another build of the program", () => {
    const disk = kitchen();
    read(disk);
    const files = filesRead(disk, () => read(disk, { build: "two" }));
    expect(files.filter((path) => path === JOURNAL)).toHaveLength(3);
  });

  it("is ignored where it is damaged itself, and made again", () => {
    const disk = kitchen();
    const first = read(disk);
    changed(disk, SNAPSHOT, '"state":"complete"', '"state":"abandond"');
    expect(read(disk)).toEqual(first);
    expect(filesRead(disk, () => read(disk))).toEqual([JOURNAL, SNAPSHOT]);
    disk.replace(SNAPSHOT, Buffer.from(""));
    expect(read(disk)).toEqual(first);
  });

  it("is skipped on a disk that cannot be written", () => {
    const disk = kitchen();
    disk.roomBytes = 0;
    expect(read(disk)).toEqual(readKitchen(HOME, { wallMs: WALL, disk }));
    expect(disk.read(SNAPSHOT).ok).toBe(false);
  });

  it("is not kept where a line was written while the journal was read", () => {
    const disk = kitchen(season.slice(0, -1));
    let reads = 0;
    disk.eachCall = ({ name, path }) => {
      if (name !== "read" || path !== JOURNAL || ++reads !== 2) return;
      disk.eachCall = undefined;
      append(disk, season.slice(-1));
    };
    const { state } = read(disk);
    expect(state.history).toHaveLength(season.length);
    expect(disk.read(SNAPSHOT).ok).toBe(false);
  });
});
