/** How fast a rehearsal goes by on the screen: work at one speed, a long rest in one go. */
import type { ScreenHost } from "./screen-host.ts";

/** What is played, and what its pace needs to know of it. */
export type WatchedRehearsal = {
  host: ScreenHost;
  /** Until when nobody has work because everything rests by itself, kitchen ms, if that is so. */
  restUntil(): number | undefined;
  play(): Promise<unknown>;
};

export type RehearsalHooks = {
  /** Told how many lines are new. */
  onLines(count: number): void;
  /** Awaited before so much made-up time passes. */
  pace(ms: number): Promise<void>;
  /** Made-up time that has passed on the screen and not yet in the kitchen, ms. */
  aheadMs(): number;
};

/** Made-up time against real time while somebody has work, and the longest that a rest takes. */
const WORK_SPEED = 360;
const REST_REAL_MS = 4000;
const MINUTE_MS = 60_000;
/** Rests shorter than this pass at the speed of work. */
const LONG_REST_MS = 60 * MINUTE_MS;
/** Time to read what was just said, ms a line, and the most in one go. */
const READ_MS = 550;
const MOST_READ_MS = 2200;
export const FRAME_MS = 100;

export class RehearsalPace {
  private readonly speed: number | undefined;
  private readonly watched: WatchedRehearsal;
  private unread = 0;
  private aheadMs = 0;
  private owedMs = 0;
  private rest: { until: number; speed: number } | undefined;
  private over = false;
  private wake: () => void = () => {};

  /** @param speed made-up against real time; undefined for a pace of its own. */
  constructor(make: (hooks: RehearsalHooks) => WatchedRehearsal, speed: number | undefined) {
    this.speed = speed;
    this.watched = make({
      onLines: (count) => {
        this.unread += count;
      },
      pace: (ms) => this.pass(ms),
      aheadMs: () => this.aheadMs,
    });
  }

  get host(): ScreenHost {
    return this.watched.host;
  }

  /** Plays to the end, and leaves that to be looked at for so long. */
  async play(holdMs: number): Promise<void> {
    await this.watched.play();
    if (!this.over) await this.wait(holdMs);
  }

  /** Nobody watches any more: what is left passes at once. */
  stop(): void {
    this.over = true;
    this.wake();
  }

  private wait(ms: number): Promise<void> {
    return new Promise((resolve) => {
      const timer = setTimeout(resolve, ms);
      this.wake = () => {
        clearTimeout(timer);
        resolve();
      };
    });
  }

  private async pass(ms: number): Promise<void> {
    if (this.over) return;
    if (this.unread > 0 && this.speed === undefined) {
      const reading = Math.min(MOST_READ_MS, this.unread * READ_MS);
      this.unread = 0;
      await this.wait(reading);
    }
    const takes = this.realMs(ms);
    const steps = Math.floor(takes / FRAME_MS);
    for (let step = 1; step <= steps && !this.over; step++) {
      await this.wait(takes / steps);
      this.aheadMs = (ms * step) / (steps + 1);
    }
    this.aheadMs = 0;
  }

  /** Real milliseconds for a step; what is too short to show is saved up. */
  private realMs(ms: number): number {
    this.owedMs += ms / (this.speed ?? this.speedNow());
    if (this.owedMs < FRAME_MS) return 0;
    const owed = this.owedMs;
    this.owedMs = 0;
    return owed;
  }

  private speedNow(): number {
    const now = this.host.now();
    if (this.rest && now < this.rest.until) return this.rest.speed;
    const until = this.watched.restUntil() ?? now;
    const left = until - now;
    if (left < LONG_REST_MS) return WORK_SPEED;
    this.rest = { until: until - MINUTE_MS, speed: Math.max(WORK_SPEED, left / REST_REAL_MS) };
    return this.rest.speed;
  }
}
