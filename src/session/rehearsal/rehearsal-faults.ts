/** What a rehearsal's machine does to the program, so that tests can ask what it survives. */
import { fileName, filesInOrder } from "../../journal/file-name.ts";
import { type DiskCall, MemoryDisk } from "../../journal/memory-disk.ts";
import type { MadeUpKitchen } from "./made-up-kitchen.ts";
import type { Direction } from "./rehearsal-script.ts";

/** Thrown from a disk call when the program dies during it. */
export class ProgramDied extends Error {
  constructor() {
    super("the program died");
  }
}

type DiskDirection = Extract<
  Direction,
  { kind: "disk" | "slow-disk" | "dies-at-write" | "write-fails" | "bad-end" }
>;

const CHANGES: ReadonlySet<DiskCall["name"]> = new Set([
  "append",
  "sync",
  "create-file",
  "truncate",
  "replace",
  "createExclusive",
  "rename",
  "remove",
  "makeFolder",
  "syncFolder",
]);

/** Does a disk direction to a kitchen; the answer says why it cannot. */
export function breakDisk(
  kitchen: MadeUpKitchen,
  folder: string,
  direction: DiskDirection,
): string | undefined {
  const { disk } = kitchen;
  if (!(disk instanceof MemoryDisk)) {
    return "only a rehearsal without --home has a disk to fill or to break";
  }
  switch (direction.kind) {
    case "disk":
      disk.roomBytes = direction.full ? 0 : Number.POSITIVE_INFINITY;
      if (!direction.full) {
        disk.fault = undefined;
        kitchen.slowDisk(0);
      }
      kitchen.session.tick();
      return undefined;
    case "slow-disk":
      kitchen.slowDisk(direction.ms);
      return undefined;
    case "dies-at-write":
      dieAtWrite(disk, direction.write, direction.half);
      return undefined;
    case "write-fails":
      failOnce(disk, direction.call);
      return undefined;
    case "bad-end":
      spoilEnd(disk, folder, direction.end);
      kitchen.crash();
      return undefined;
  }
}

/** The program dies at the disk's n-th change from now: before it, or halfway through. */
function dieAtWrite(disk: MemoryDisk, write: number, half: boolean): void {
  let left = write;
  disk.fault = (call) => {
    if (!CHANGES.has(call.name)) return undefined;
    left -= 1;
    if (left > 0) return undefined;
    // Half of an append is written by the disk only after this has answered.
    if (half && call.name === "append") {
      dieAtNextCall(disk);
      return { why: "io", half: true };
    }
    disk.fault = undefined;
    throw new ProgramDied();
  };
}

/** The half was written; the very next call of any kind finds the program dead. */
function dieAtNextCall(disk: MemoryDisk): void {
  disk.fault = () => {
    disk.fault = undefined;
    throw new ProgramDied();
  };
}

function failOnce(disk: MemoryDisk, name: "append" | "sync"): void {
  disk.fault = (call) => {
    if (call.name !== name) return undefined;
    disk.fault = undefined;
    return { why: "io", half: true };
  };
}

/** Half a line, or the last line again, at the end of the newest file. */
function spoilEnd(disk: MemoryDisk, folder: string, end: "torn" | "repeated"): void {
  const listed = disk.list(folder);
  const newest = listed.ok ? filesInOrder(listed.names).at(-1) : undefined;
  if (!newest) return;
  const path = `${folder}/${fileName(newest)}`;
  const read = disk.read(path);
  if (!read.ok) return;
  const text = Buffer.from(read.bytes).toString("utf8");
  const last = `${text.trimEnd().split("\n").at(-1) ?? ""}\n`;
  const more = end === "repeated" ? last : last.slice(0, Math.floor(last.length / 2));
  disk.plant(path, Buffer.from(text + more));
}
