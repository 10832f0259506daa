import type { Clock } from "../ports/clock.ts";

/** Waits between tries, doubled each time, in ms. */
const FIRST_MS = 1_000;
const LAST_MS = 60_000;

/** Tries something again after growing waits, and reports an outage and its end once each. */
export class Retry {
  private waitMs = FIRST_MS;
  private told = false;
  private callOff: (() => void) | undefined;
  private readonly clock: Pick<Clock, "after">;
  private readonly tell: { problem(message: string): void; recovered(): void };

  constructor(
    clock: Pick<Clock, "after">,
    tell: { problem(message: string): void; recovered(): void },
  ) {
    this.clock = clock;
    this.tell = tell;
  }

  /** It failed: reports that the first time, and tries again later. */
  failed(message: string, again: () => void): void {
    if (!this.told) this.tell.problem(message);
    this.told = true;
    this.callOff?.();
    this.callOff = this.clock.after(this.waitMs, again);
    this.waitMs = Math.min(LAST_MS, this.waitMs * 2);
  }

  /** It works. */
  works(): void {
    this.waitMs = FIRST_MS;
    if (this.told) this.tell.recovered();
    this.told = false;
  }

  stop(): void {
    this.callOff?.();
    this.callOff = undefined;
  }
}
