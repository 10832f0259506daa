import { describe, expect, it } from "vitest";
import { MadeUpClock } from "../../../src/session/rehearsal/made-up-clock.ts";

const START = Date.UTC(2027, 7, 14, 14, 0, 0);
const clock = () => new MadeUpClock(START, "America/Denver");

/** How far each clock moved while something happened. */
function moved(made: MadeUpClock, happen: () => void) {
  const before = made.read();
  happen();
  const after = made.read();
  return {
    wall: after.wallMs - before.wallMs,
    mono: after.monoMs - before.monoMs,
    boot: after.bootMs - before.bootMs,
    sameBoot: after.bootId === before.bootId,
  };
}

describe("the made-up clock", () => {
  it("moves only when told to", () => {
    const made = clock();
    expect(made.read()).toEqual(made.read());
    expect(made.read()).toMatchObject({ wallMs: START, zone: "America/Denver" });
  });

  it("moves its clocks the way waking, sleep, a set clock, a standstill and a restart do", () => {
    const made = clock();
    const hour = 3_600_000;
    expect(moved(made, () => made.advance(hour))).toEqual({
      wall: hour,
      mono: hour,
      boot: hour,
      sameBoot: true,
    });
    expect(moved(made, () => made.sleep(hour))).toEqual({
      wall: hour,
      mono: 0,
      boot: hour,
      sameBoot: true,
    });
    expect(moved(made, () => made.setWall(-hour))).toEqual({
      wall: -hour,
      mono: 0,
      boot: 0,
      sameBoot: true,
    });
    expect(moved(made, () => made.stall(hour))).toEqual({
      wall: hour,
      mono: hour,
      boot: hour,
      sameBoot: true,
    });
    expect(moved(made, () => made.reboot(hour))).toMatchObject({ wall: hour, sameBoot: false });
    expect(made.read()).toMatchObject({ monoMs: 0, bootMs: 0 });
  });

  it("runs timers in order at their own moments, those set meanwhile too", () => {
    const made = clock();
    const ran: string[] = [];
    const note = (name: string) => () => void ran.push(`${name}@${made.read().wallMs - START}`);
    made.after(30, note("c"));
    made.after(10, note("a"));
    made.after(10, note("b"));
    made.after(20, () => {
      note("x")();
      made.after(5, note("y"));
      made.after(500, note("late"));
    });
    const cancel = made.after(15, note("cancelled"));
    made.after(12, cancel);
    made.advance(100);
    expect(ran).toEqual(["a@10", "b@10", "x@20", "y@25", "c@30"]);
    expect(made.read().wallMs - START).toBe(100);
    expect(made.untilNextTimer()).toBe(420);
  });

  it("stops timers during sleep, is late after a standstill, and dies with the program", () => {
    const made = clock();
    const ran: number[] = [];
    made.after(1000, () => ran.push(made.read().wallMs - START));
    made.sleep(60_000);
    made.advance(999);
    expect(ran).toEqual([]);
    made.advance(1);
    expect(ran).toEqual([61_000]);
    made.after(1000, () => ran.push(made.read().wallMs - START));
    made.stall(5000);
    expect(ran).toEqual([61_000, 66_000]);
    made.after(1000, () => ran.push(-1));
    made.endProgram();
    made.advance(5000);
    expect([ran.length, made.untilNextTimer()]).toEqual([2, undefined]);
  });
});
