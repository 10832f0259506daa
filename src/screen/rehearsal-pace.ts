/** How fast a rehearsal plays on the screen: work at one speed, a long rest at once. */
import type { ScreenHost } from "./screen-host.ts";

/** What is played, and what its pace depends on. */
export type WatchedRehearsal = {
  host: ScreenHost;
  /**
   * Until when everything rests by itself and there is no work, kitchen ms; undefined where there
   * is.
   */
  restUntil(): number | undefined;
  play(): Promise<unknown>;
};

export type RehearsalHooks = {
  /** Called with the number of new lines. */
  onLines(count: number): void;
  /** Awaited before this much simulated time passes. */
  pace(ms: number): Promise<void>;
  /** Simulated time that has passed on the screen but not yet in the kitchen, ms. */
  aheadMs(): number;
};

/** Simulated time over real time while there is work, and the longest that a rest takes. */
const WORK_SPEED = 360;
const REST_REAL_MS = 4000;
const MINUTE_MS = 60_000;
/** Rests shorter than this play at the speed of work. */
const LONG_REST_MS = 60 * MINUTE_MS;
/** Time to read what was just said, ms per line, and the most at once. */
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

  /** @param speed simulated over real time; undefined for a pace of its own. */
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

  /** Plays to the end, and then holds the last picture for a while. */
  async play(holdMs: number): Promise<void> {
    await this.watched.play();
    if (!this.over) await this.wait(holdMs);
  }

  /** Nobody is watching any more: the rest plays at once. */
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

  /** Real milliseconds for a step; steps too short to show are added up. */
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
