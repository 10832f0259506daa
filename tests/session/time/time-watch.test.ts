import { describe, expect, it } from "vitest";
import { MadeUpClock } from "../../../src/session/rehearsal/made-up-clock.ts";
import {
  compareReadings,
  elapsedBetween,
  sameBoot,
  TimeWatch,
} from "../../../src/session/time/time-watch.ts";

const HEARTBEAT_MS = 1000;
const HOUR_MS = 3_600_000;
const START = Date.UTC(2027, 7, 14, 14, 0, 0);

/** What the watch finds at the reading after something has happened to the machine. */
function found(happen: (clock: MadeUpClock) => void) {
  const clock = new MadeUpClock(START, "America/Denver");
  const watch = new TimeWatch(clock.read(), HEARTBEAT_MS);
  clock.advance(HEARTBEAT_MS);
  expect(watch.observe(clock.read())).toEqual([]);
  happen(clock);
  const findings = watch.observe(clock.read());
  clock.advance(HEARTBEAT_MS);
  expect(watch.observe(clock.read()), "told once").toEqual([]);
  return findings;
}

describe("the time watch", () => {
  it("finds nothing in ordinary heartbeats, late by less than two seconds", () => {
    expect(found((clock) => clock.advance(1000))).toEqual([]);
    expect(found((clock) => clock.advance(2900))).toEqual([]);
    expect(found((clock) => clock.advance(0))).toEqual([]);
  });

  it("reports by how much the wall clock was set, forward or back, and ignores drift", () => {
    const set = (byMs: number) =>
      found((clock) => {
        clock.advance(1000);
        clock.setWall(byMs);
      });
    expect(set(8 * HOUR_MS)).toEqual([{ kind: "clock-set", byMs: 8 * HOUR_MS }]);
    expect(set(-HOUR_MS)).toEqual([{ kind: "clock-set", byMs: -HOUR_MS }]);
    expect(set(-2000)).toEqual([{ kind: "clock-set", byMs: -2000 }]);
    expect([set(1400), set(-1400)]).toEqual([[], []]);
  });

  it("distinguishes sleep from a standstill", () => {
    expect(found((clock) => clock.sleep(8 * HOUR_MS))).toEqual([
      { kind: "asleep", ms: 8 * HOUR_MS },
    ]);
    expect(found((clock) => clock.stall(45_000))).toEqual([{ kind: "stalled", ms: 45_000 }]);
  });

  it("reports several things that happened at once", () => {
    const findings = found((clock) => {
      clock.sleep(HOUR_MS);
      clock.stall(10_000);
      clock.setWall(-2 * HOUR_MS);
    });
    expect(findings).toEqual([
      { kind: "clock-set", byMs: -2 * HOUR_MS },
      { kind: "asleep", ms: HOUR_MS },
      { kind: "stalled", ms: 10_000 },
    ]);
  });

  it("has only the wall clock to go by across a restart, and never goes back", () => {
    expect(found((clock) => clock.reboot(90_000))).toEqual([{ kind: "rebooted", ms: 90_000 }]);
    const back = (clock: MadeUpClock) => {
      clock.reboot(90_000);
      clock.setWall(-HOUR_MS);
    };
    expect(found(back)).toEqual([{ kind: "rebooted", ms: 0 }]);
  });
});

describe("two readings", () => {
  const reading = { wallMs: START, monoMs: 500, bootMs: 500, bootId: "a", zone: "UTC" };

  it("belong to one start of the machine where its name is the same and its clock went on", () => {
    expect(sameBoot(reading, { ...reading, bootMs: 600 })).toBe(true);
    expect(sameBoot(reading, { ...reading, bootId: "b" })).toBe(false);
    expect(sameBoot(reading, { ...reading, bootMs: 100 })).toBe(false);
  });

  it("are compared with seconds of tolerance where only the wall clock knows the start", () => {
    const named = (startMs: number) => ({ ...reading, bootId: `started-${startMs}` });
    expect(sameBoot(named(10_000), named(12_000))).toBe(true);
    expect(sameBoot(named(10_000), named(90_000))).toBe(false);
    expect(sameBoot(named(10_000), reading)).toBe(false);
  });

  it("are apart by the boot clock, or by the wall clock and marked as such", () => {
    const later = { ...reading, wallMs: START + HOUR_MS, bootMs: 700 };
    expect(elapsedBetween(reading, later)).toEqual({ ms: 200, by: "boot" });
    expect(elapsedBetween(reading, { ...later, bootId: "b" })).toEqual({ ms: HOUR_MS, by: "wall" });
  });

  it("show sleep as a standstill on a system whose timers count it", () => {
    const woken = { ...reading, wallMs: START + 9000, monoMs: 9500, bootMs: 9500 };
    expect(compareReadings(reading, woken, 1000)).toEqual([{ kind: "stalled", ms: 9000 }]);
  });
});
