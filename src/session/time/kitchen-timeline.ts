import type { ClockReading } from "../../ports/clock.ts";
import { elapsedBetween } from "./time-watch.ts";

/** How far the wall clock may stray from kitchen time before the offset follows it. */
const DRIFT_MS = 1500;

/**
 * The kitchen's own time: milliseconds that look like epoch milliseconds and run steadily,
 * whatever happens to the wall clock. It begins at the wall time of the first reading; within one
 * start of the machine it advances with the boot clock, across starts with the wall, and never
 * goes back. Wall time is kitchen time plus `offsetMs`.
 */
export class KitchenTimeline {
  private kitchenMs: number;
  private reading: ClockReading;
  private offset: number;

  private constructor(kitchenMs: number, reading: ClockReading) {
    this.kitchenMs = kitchenMs;
    this.reading = reading;
    this.offset = reading.wallMs - kitchenMs;
  }

  /** A kitchen's first moment. */
  static begin(first: ClockReading): KitchenTimeline {
    return new KitchenTimeline(first.wallMs, first);
  }

  /** Goes on from a moment whose kitchen time and reading are known. */
  static from(lastKitchenMs: number, lastReading: ClockReading): KitchenTimeline {
    return new KitchenTimeline(lastKitchenMs, lastReading);
  }

  /** Kitchen time at this reading, which is not earlier than those asked before. */
  now(reading: ClockReading): number {
    this.kitchenMs += elapsedBetween(this.reading, reading).ms;
    this.reading = reading;
    const strayedMs = reading.wallMs - this.kitchenMs - this.offset;
    if (Math.abs(strayedMs) > DRIFT_MS) this.offset += strayedMs;
    return this.kitchenMs;
  }

  /** Wall minus kitchen time, as of the last reading. Changes only when the clock is set. */
  get offsetMs(): number {
    return this.offset;
  }
}
