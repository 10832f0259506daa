import { spawn } from "node:child_process";
import { describe, expect, it, vi } from "vitest";
import {
  type LockAnswer,
  lockHolder,
  type Processes,
  systemProcesses,
  takeLock,
} from "../../src/journal/lock.ts";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import type { Disk } from "../../src/ports/disk.ts";

const LOCK = "/home/lock";
const startedAt = "2027-08-14T08:00:00-06:00";

/** Processes that are running, each with the tick it started at. */
const running = (ticks: Record<number, string | null>): Processes => ({
  isAlive: (pid) => pid in ticks,
  startTicks: (pid) => ticks[pid] ?? null,
});

function take(disk: MemoryDisk, pid: number, ticks: Record<number, string | null>, bootId = "b1") {
  return takeLock(disk, "/home", { pid, bootId, startedAt }, running(ticks));
}

function lockOf(answer: LockAnswer) {
  if (!answer.ok) throw new Error(answer.message);
  return answer.lock;
}

describe("the lock", () => {
  it("goes to one program, and the next hears who has it", () => {
    const disk = new MemoryDisk();
    expect(lockOf(take(disk, 10, { 10: "1" })).owns()).toBe(true);
    const second = take(disk, 11, { 10: "1", 11: "2" });
    expect(second).toMatchObject({ ok: false, why: "held", holder: { pid: 10, startedAt } });
    if (!second.ok) expect(second.message).toMatch(/process 10 has this kitchen open since 2027/);
  });

  it("is free again once released", () => {
    const disk = new MemoryDisk();
    lockOf(take(disk, 10, { 10: "1" })).release();
    expect(take(disk, 11, { 10: "1", 11: "2" }).ok).toBe(true);
    expect(disk.list("/home")).toEqual({ ok: true, names: ["lock"] });
  });

  it.each([
    ["its process is gone", { 11: "2" }, "b1"],
    ["its number belongs to a later process", { 10: "9", 11: "2" }, "b1"],
    ["the machine was started anew", { 10: "1", 11: "2" }, "b2"],
  ])("is taken over where %s", (_why, ticks, bootId) => {
    const disk = new MemoryDisk();
    const dead = lockOf(take(disk, 10, { 10: "1" }));
    const lock = lockOf(take(disk, 11, ticks, bootId));
    expect([lock.owns(), dead.owns()]).toEqual([true, false]);
    dead.release();
    expect(lock.owns()).toBe(true);
    expect(disk.list("/home")).toEqual({ ok: true, names: ["lock"] });
  });

  it.each([
    ["the system tells no start of a process", { 10: null, 11: null }, "b1", "b1"],
    ["the start of the machine is known by the wall alone", { 10: "1" }, "started-1", "started-9"],
  ])("is never taken from a running holder where %s", (_why, ticks, first, second) => {
    const disk = new MemoryDisk();
    expect(take(disk, 10, ticks, first).ok).toBe(true);
    expect(take(disk, 11, ticks, second)).toMatchObject({ ok: false, why: "held" });
  });

  it.each(["", "{", "null", "[]", '{"pid":"10"}', '{"bootId":"b1"}'])(
    "is nobody's where it says %j",
    (text) => {
      const disk = new MemoryDisk();
      disk.makeFolder("/home");
      disk.plant(LOCK, Buffer.from(text));
      expect(lockOf(take(disk, 11, { 11: "2" })).owns()).toBe(true);
      expect(disk.list("/home")).toEqual({ ok: true, names: ["lock"] });
    },
  );

  it("is held by a process that runs, whatever start of the machine it names", () => {
    const disk = new MemoryDisk();
    disk.makeFolder("/home");
    for (const text of ['{"pid":10}', '{"pid":10,"bootId":5}']) {
      disk.plant(LOCK, Buffer.from(text));
      expect(take(disk, 11, { 10: "1", 11: "2" })).toMatchObject({ why: "held" });
    }
  });

  it("is left to one that is just writing it", () => {
    const disk = new MemoryDisk();
    lockOf(take(disk, 10, { 10: "1" }));
    const read = disk.read(LOCK);
    if (!read.ok) throw new Error(read.message);
    let looks = 0;
    const slow: Disk = new Proxy(disk, {
      get(target, name) {
        const own = Reflect.get(target, name);
        if (name !== "read") return typeof own === "function" ? own.bind(target) : own;
        return () => (looks++ < 2 ? { ok: true, bytes: Buffer.from("") } : read);
      },
    });
    const self = { pid: 11, bootId: "b1", startedAt };
    const answer = takeLock(slow, "/home", self, running({ 10: "1", 11: "2" }));
    expect(answer).toMatchObject({ why: "held", holder: { pid: 10 } });
  });

  it("is lost once the file belongs to another, also after it was gone", () => {
    const disk = new MemoryDisk();
    const lock = lockOf(take(disk, 10, { 10: "1" }));
    disk.remove(LOCK);
    disk.plant(LOCK, Buffer.from('{"pid":11,"bootId":"b1"}'));
    expect(lock.owns()).toBe(false);
    lock.release();
    expect(disk.read(LOCK).ok).toBe(true);
  });

  it("is made again where somebody removed its file, and never after its release", () => {
    const disk = new MemoryDisk();
    const lock = lockOf(take(disk, 10, { 10: "1" }));
    disk.remove(LOCK);
    expect(lock.owns()).toBe(true);
    expect(take(disk, 11, { 10: "1", 11: "2" })).toMatchObject({ ok: false, why: "held" });
    lock.release();
    expect(lock.owns()).toBe(false);
    expect(disk.read(LOCK).ok).toBe(false);
  });

  it("names who holds it and runs, and takes nothing", () => {
    const disk = new MemoryDisk();
    const holder = (started: Record<number, string>) =>
      lockHolder(disk, "/home", "b1", running(started));
    expect(holder({ 10: "1" })).toBeUndefined();
    take(disk, 10, { 10: "1" });
    expect(holder({ 10: "1" })?.pid).toBe(10);
    expect(holder({})).toBeUndefined();
    expect(holder({ 10: "2" })).toBeUndefined();
  });

  it("still belongs to its holder when put back after a mistaken takeover", () => {
    const disk = new MemoryDisk();
    const dead = lockOf(take(disk, 9, { 9: "1" }));
    expect(dead.owns()).toBe(true);
    // Between 11's look at the dead lock and its rename, 10 has taken the lock.
    let lock: ReturnType<typeof lockOf> | undefined;
    disk.fault = ({ name }) => {
      if (name === "rename" && !lock) {
        disk.fault = undefined;
        disk.remove(LOCK);
        lock = lockOf(take(disk, 10, { 10: "3" }));
      }
      return undefined;
    };
    expect(take(disk, 11, { 10: "3", 11: "2" })).toMatchObject({
      why: "held",
      holder: { pid: 10 },
    });
    expect(lock?.owns()).toBe(true);
  });

  it("is refused with the disk's reason where it cannot be made", () => {
    const disk = new MemoryDisk();
    disk.fault = ({ name }) => (name === "createExclusive" ? { why: "full" } : undefined);
    expect(take(disk, 10, { 10: "1" })).toMatchObject({ ok: false, why: "full" });
  });
});

describe("the system's processes", () => {
  it("this one is running, and no process has a number past the largest", () => {
    expect(systemProcesses.isAlive(process.pid)).toBe(true);
    expect(systemProcesses.isAlive(2 ** 30)).toBe(false);
  });

  it.runIf(process.platform === "linux")(
    "one that ended is not, though its parent did not ask",
    () => {
      // The shell becomes a program that knows nothing of the child it inherits.
      const parent = spawn("sh", ["-c", "sleep 0.3 & echo $!; exec sleep 20"]);
      const over = new Promise((resolve) => parent.on("close", resolve));
      return new Promise<void>((resolve) => {
        parent.stdout.once("data", async (pid) => {
          await vi.waitFor(() => expect(systemProcesses.isAlive(Number(pid))).toBe(false));
          // It still has its number.
          expect(systemProcesses.startTicks(Number(pid))).toMatch(/^\d+$/);
          parent.kill();
          await over;
          resolve();
        });
      });
    },
  );

  it.runIf(process.platform === "linux")("on Linux each tells when it started", () => {
    expect(systemProcesses.startTicks(process.pid)).toMatch(/^\d+$/);
    expect(systemProcesses.startTicks(2 ** 30)).toBeNull();
  });
});
