import { describe, expect, it } from "vitest";
import { MemoryDisk } from "../../../src/journal/memory-disk.ts";
import { inShortSession } from "../../../src/session/short-session.ts";
import {
  bootIdOfThisMachine,
  clockFault,
  realClock,
} from "../../../src/session/time/real-clock.ts";
import { theLibrary } from "../../scenarios/play.ts";

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

describe("the machine's clocks", () => {
  it("all move together, in milliseconds, within one start of the machine", async () => {
    const clock = realClock();
    const before = clock.read();
    await pause(300);
    const now = clock.read();
    expect(Math.abs(before.wallMs - Date.now())).toBeLessThan(60_000);
    for (const key of ["wallMs", "monoMs", "bootMs"] as const) {
      expect(now[key] - before[key], key).toBeGreaterThanOrEqual(250);
      expect(now[key] - before[key], key).toBeLessThan(15_000);
    }
    expect(now.bootId).toBe(before.bootId);
    expect(now.bootId).toBe(bootIdOfThisMachine());
    expect(now.zone).toBe("America/Denver");
  });

  it("call back once after the wait, or not at all once called off", async () => {
    const clock = realClock();
    let ran = 0;
    const startMs = clock.read().monoMs;
    const ranAt = new Promise<number>((resolve) => {
      clock.after(50, () => {
        ran += 1;
        resolve(clock.read().monoMs);
      });
    });
    clock.after(10, () => (ran += 100))();
    expect((await ranAt) - startMs).toBeGreaterThanOrEqual(48);
    await pause(60);
    expect(ran).toBe(1);
  });

  it("open no kitchen by a clock that nobody has set", () => {
    const reading = realClock().read();
    expect(clockFault(reading)).toBeUndefined();
    expect(clockFault({ ...reading, wallMs: 60_000 })).toMatch(/shows the year 1970; set it/);
    expect(clockFault({ ...reading, wallMs: Date.UTC(2200, 5) })).toMatch(/2200/);
    const disk = new MemoryDisk();
    const clock = { ...realClock(), read: () => ({ ...reading, wallMs: 60_000 }) };
    const opened = inShortSession("/kitchen", theLibrary(), "1", () => "opened", { disk, clock });
    expect(opened).toMatchObject({ ok: false, message: expect.stringContaining("1970") });
  });

  it("wait for longer than one timer can, instead of calling back at once", async () => {
    const clock = realClock();
    let ran = false;
    const cancel = clock.after(2 ** 31 + 5000, () => {
      ran = true;
    });
    await pause(50);
    cancel();
    expect(ran).toBe(false);
  });
});
