import { readFileSync } from "node:fs";
import type { Disk, DiskRefusal } from "../ports/disk.ts";

/** What the lock file says about the program that holds it. */
export type LockHolder = {
  pid: number;
  /** Which start of the machine; see `ClockReading`. */
  bootId: string;
  /** When the process started, in kernel ticks; null where the system does not say. */
  startTicks: string | null;
  /** ISO 8601, for people only: no decision rests on it. */
  startedAt: string;
};

/** What the lock asks of the system. */
export type Processes = {
  /** Whether a process with this number is running now. */
  isAlive(pid: number): boolean;
  /** See `LockHolder.startTicks`. */
  startTicks(pid: number): string | null;
};

export type Lock = {
  /** True while the lock file is still this program's. Cheap: it does not read the file. */
  owns(): boolean;
  /** Releases it; leaves another program's lock alone. */
  release(): void;
};

export type LockAnswer =
  | { ok: true; lock: Lock }
  | { ok: false; why: "held"; holder: LockHolder | undefined; message: string }
  | DiskRefusal;

const NAME = "lock";

/** Races for a stale lock are over after a few rounds, or something else is wrong. */
const TURNS = 8;

/** An empty lock is being written: it is read again this many times, this far apart, ms. */
const UNFINISHED_TURNS = 4;
const UNFINISHED_MS = 75;

/**
 * Takes the folder's lock, or says who holds it. A holder is dead only if the machine was restarted
 * since, its process is gone, or its number now belongs to a process that started at a different
 * moment; never by age, since clocks get set and machines sleep. A lock that names nobody, as one
 * cut short by a loss of power, is nobody's. A dead one's file is renamed to a
 * name of its own, which only one of several programs can do, looked at again, and removed.
 */
export function takeLock(
  disk: Disk,
  folder: string,
  self: { pid: number; bootId: string; startedAt: string },
  processes: Processes = systemProcesses,
): LockAnswer {
  const path = `${folder}/${NAME}`;
  const made = disk.makeFolder(folder);
  if (!made.ok) return made;
  const me: LockHolder = { ...self, startTicks: processes.startTicks(self.pid) };
  const mine = Buffer.from(`${JSON.stringify(me)}\n`);
  for (let turn = 0; turn < TURNS; turn += 1) {
    const created = disk.createExclusive(path, mine);
    if (created.ok) return { ok: true, lock: heldLock(disk, path, mine) };
    const read = disk.read(path);
    if (created.why !== "exists") {
      // Even on a full or read-only disk, one can see that somebody else is there.
      const there = read.ok ? holderOf(read.bytes) : undefined;
      return there && isRunning(there, me.bootId, processes) ? held(there, path) : created;
    }
    if (!read.ok && read.why === "missing") continue;
    if (!read.ok) return read;
    const holder = holderOf(read.bytes);
    if (!holder && turn < UNFINISHED_TURNS) {
      standStill(UNFINISHED_MS);
      continue;
    }
    if (holder && isRunning(holder, me.bootId, processes)) return held(holder, path);
    clearStale(disk, path, read.bytes, `${path}.stale-${me.pid}-${turn}`);
  }
  return held(undefined, path);
}

/** Who holds a folder's lock and is running; undefined where nobody does. Takes nothing. */
export function lockHolder(
  disk: Disk,
  folder: string,
  bootId: string,
  processes: Processes = systemProcesses,
): LockHolder | undefined {
  const read = disk.read(`${folder}/${NAME}`);
  const holder = read.ok ? holderOf(read.bytes) : undefined;
  return holder && isRunning(holder, bootId, processes) ? holder : undefined;
}

/** Only the file that was judged is removed; a newer one that got in between is put back. */
function clearStale(disk: Disk, path: string, judged: Uint8Array, aside: string): void {
  if (!disk.rename(path, aside).ok) return;
  const moved = disk.read(aside);
  if (moved.ok && !same(moved.bytes, judged)) disk.createExclusive(path, moved.bytes);
  disk.remove(aside);
}

function heldLock(disk: Disk, path: string, mine: Uint8Array): Lock {
  let identity = identityOf(disk, path);
  let released = false;
  const owns = (): boolean => {
    if (released) return false;
    const now = identityOf(disk, path);
    if (now !== undefined && now === identity) return true;
    // Another program may have moved it aside by mistake and put it back as a new file.
    const read = disk.read(path);
    // Where somebody removed it, nobody holds it; the journal notices what was written meanwhile.
    const again = !read.ok && read.why === "missing" && disk.createExclusive(path, mine).ok;
    if (!again && !(read.ok && same(read.bytes, mine))) return false;
    identity = identityOf(disk, path);
    return true;
  };
  return {
    owns,
    release: () => {
      if (owns()) disk.remove(path);
      released = true;
    },
  };
}

function identityOf(disk: Disk, path: string): string | undefined {
  const answer = disk.identity(path);
  return answer.ok ? answer.identity : undefined;
}

function isRunning(holder: LockHolder, bootId: string, processes: Processes): boolean {
  if (isExact(holder.bootId) && isExact(bootId) && holder.bootId !== bootId) return false;
  // Numbers below 1 name no process: the system takes them for groups, ours among them.
  if (holder.pid < 1 || !processes.isAlive(holder.pid)) return false;
  const ticks = processes.startTicks(holder.pid);
  return ticks === null || holder.startTicks === null || ticks === holder.startTicks;
}

/**
 * A start named by its wall time (see `realClock`) changes when the clock is set, so it proves
 * nothing.
 */
function isExact(bootId: string): boolean {
  return !bootId.startsWith(BY_THE_WALL);
}

/** Begins the name of such a start. */
const BY_THE_WALL = "started-";

function holderOf(bytes: Uint8Array): LockHolder | undefined {
  try {
    const found = JSON.parse(Buffer.from(bytes).toString("utf8"));
    if (typeof found !== "object" || found === null) return undefined;
    // A lock that names no process holds nothing; one that names any may, whatever its start.
    const pid = Number.isSafeInteger(found.pid) ? found.pid : 0;
    const bootId = typeof found.bootId === "string" ? found.bootId : `${BY_THE_WALL}unknown`;
    return { startTicks: null, startedAt: "", ...found, pid, bootId };
  } catch {
    return undefined;
  }
}

function held(holder: LockHolder | undefined, path: string): LockAnswer {
  const message = holder
    ? `process ${holder.pid} has this kitchen open since ${holder.startedAt}`
    : `${path} says that the kitchen is open, but not by whom; remove that file if it is not`;
  return { ok: false, why: "held", holder, message };
}

function same(a: Uint8Array, b: Uint8Array): boolean {
  return Buffer.from(a).equals(b);
}

/** Blocks the program for this long, ms. */
export function standStill(ms: number): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);
}

/** The system's processes. */
export const systemProcesses: Processes = {
  isAlive: (pid) => {
    try {
      process.kill(pid, 0);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EPERM") return false;
    }
    // A process that has ended keeps its number until its parent has asked about it.
    return !/^[ZX]$/.test(statOf(pid)[0] ?? "");
  },
  startTicks: (pid) => statOf(pid)[19] ?? null,
};

/**
 * What Linux tells of a process from its state on: the fields behind its name, which is in brackets
 * and may contain anything. None on other systems.
 */
function statOf(pid: number): string[] {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
    return stat.slice(stat.lastIndexOf(")") + 2).split(" ");
  } catch {
    return [];
  }
}
