import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { MadeUpClock } from "../../../src/session/rehearsal/made-up-clock.ts";
import { KitchenTimeline } from "../../../src/session/time/kitchen-timeline.ts";

const HOUR_MS = 3_600_000;
const START = Date.UTC(2027, 7, 14, 14, 0, 0);

function begun() {
  const clock = new MadeUpClock(START, "America/Denver");
  const timeline = KitchenTimeline.begin(clock.read());
  return { clock, timeline, now: () => timeline.now(clock.read()) };
}

describe("kitchen time", () => {
  it("begins as the wall's and runs with it", () => {
    const { clock, timeline, now } = begun();
    expect([now(), timeline.offsetMs]).toEqual([START, 0]);
    clock.advance(HOUR_MS);
    clock.sleep(HOUR_MS);
    expect([now(), timeline.offsetMs]).toEqual([START + 2 * HOUR_MS, 0]);
  });

  it("is unaffected by a set clock, which only moves the offset", () => {
    const { clock, timeline, now } = begun();
    clock.setWall(8 * HOUR_MS);
    clock.advance(1000);
    expect([now(), timeline.offsetMs]).toEqual([START + 1000, 8 * HOUR_MS]);
    clock.setWall(-9 * HOUR_MS);
    clock.advance(1000);
    expect([now(), timeline.offsetMs]).toEqual([START + 2000, -HOUR_MS]);
    expect(now() + timeline.offsetMs).toBe(clock.read().wallMs);
  });

  it("advances by the wall over a restart, never back", () => {
    const { clock, timeline, now } = begun();
    clock.advance(HOUR_MS);
    now();
    clock.reboot(120_000);
    expect(now()).toBe(START + HOUR_MS + 120_000);
    clock.reboot(0);
    clock.setWall(-3 * HOUR_MS);
    expect([now(), timeline.offsetMs]).toEqual([START + HOUR_MS + 120_000, -3 * HOUR_MS]);
  });

  it("goes on in the next program from the last known moment", () => {
    const { clock, timeline } = begun();
    clock.setWall(HOUR_MS);
    const last = { kitchenMs: timeline.now(clock.read()), reading: clock.read() };
    clock.advance(30_000);
    const next = KitchenTimeline.from(last.kitchenMs, last.reading);
    expect(next.now(clock.read())).toBe(START + 30_000);
    expect(next.offsetMs).toBe(HOUR_MS);
  });

  it("keeps its offset while the wall jitters, and follows slow drift in small steps", () => {
    const { clock, timeline, now } = begun();
    for (let i = 0; i < 1000; i += 1) {
      clock.advance(1000);
      clock.setWall(i % 2 === 0 ? 10 : -10);
      now();
    }
    expect(timeline.offsetMs).toBe(0);
    for (let i = 0; i < 1000; i += 1) {
      clock.advance(1000);
      clock.setWall(5);
      now();
      const strayedMs = clock.read().wallMs - (now() + timeline.offsetMs);
      expect(Math.abs(strayedMs)).toBeLessThanOrEqual(1500);
    }
    expect(timeline.offsetMs).toBeGreaterThan(3000);
  });

  it("whatever happens to the machine, never runs back and loses no waking time", () => {
    const step = fc.record({
      what: fc.constantFrom("advance", "sleep", "stall", "setWall", "reboot" as const),
      ms: fc.integer({ min: 0, max: 50 * HOUR_MS }),
      back: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(step, { maxLength: 30 }), (steps) => {
        const { clock, timeline, now } = begun();
        let last = now();
        for (const { what, ms, back } of steps) {
          clock[what](what === "setWall" && back ? -ms : ms);
          const kitchenMs = now();
          const awake = what === "advance" || what === "sleep" || what === "stall";
          expect(kitchenMs).toBe(last + (awake || what === "reboot" ? ms : 0));
          const strayedMs = clock.read().wallMs - kitchenMs - timeline.offsetMs;
          expect(Math.abs(strayedMs)).toBeLessThanOrEqual(1500);
          last = kitchenMs;
        }
      }),
    );
  });
});
