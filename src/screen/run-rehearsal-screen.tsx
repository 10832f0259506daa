/** A rehearsal on the real screen: the same session against a made-up clock, sped up to watch. */

import { shelves } from "../kitchen/shelves.ts";
import { KINDS } from "../kitchen/stages/kinds.ts";
import type { StageRun } from "../kitchen/state.ts";
import { HOUR_MS, MINUTE_MS } from "../kitchen/time.ts";
import { runScreen } from "./run-screen.tsx";
import type { ScreenIo, ScreenSession, ShownLine } from "./screen-host.ts";

/** What is played; `session` may be another one after a crash that a script asks for. */
export type WatchedRehearsal = {
  session(): ScreenSession;
  play(): Promise<unknown>;
};

export type RehearsalHooks = {
  onLines(lines: ShownLine[]): void;
  /** Awaited before so much made-up time passes. */
  pace(ms: number): Promise<void>;
};

/** Made-up time against real time while somebody has work, and the longest that a rest takes. */
const WORK_SPEED = 360;
const REST_REAL_MS = 4000;
/** Rests shorter than this pass at the speed of work. */
const LONG_REST_MS = HOUR_MS;
/** Time to read what was just said, ms a line, and the most in one go. */
const READ_MS = 550;
const MOST_READ_MS = 2200;
const FRAME_MS = 100;
const HOLD_END_MS = 3000;

/**
 * Plays a rehearsal on the screen and resolves when it is over or the person ends it with q or
 * Ctrl-C. Words and keys go in as in a real kitchen.
 * @param speed made-up against real time; undefined for a pace of its own, about a minute for a
 *   day.
 */
export async function runRehearsalScreen(
  make: (hooks: RehearsalHooks) => WatchedRehearsal,
  io: ScreenIo,
  speed?: number,
): Promise<void> {
  const lines: ShownLine[] = [];
  const listeners = new Set<() => void>();
  const changed = () => {
    for (const listener of listeners) listener();
  };
  let unread = 0;
  let aheadMs = 0;
  let over = false;
  let wake: () => void = () => {};
  const real = (ms: number) =>
    new Promise<void>((resolve) => {
      const timer = setTimeout(resolve, ms);
      wake = () => {
        clearTimeout(timer);
        resolve();
      };
    });
  const pacer = new Pacer(speed);
  const watched: WatchedRehearsal = make({
    onLines(added) {
      lines.push(...added);
      unread += added.length;
      changed();
    },
    async pace(ms) {
      if (over) return;
      if (unread > 0 && speed === undefined) {
        const reading = Math.min(MOST_READ_MS, unread * READ_MS);
        unread = 0;
        await real(reading);
      }
      const session = watched.session();
      const takes = pacer.realMs(session, ms);
      const steps = Math.floor(takes / FRAME_MS);
      for (let step = 1; step <= steps && !over; step++) {
        await real(takes / steps);
        aheadMs = (ms * step) / (steps + 1);
        changed();
      }
      aheadMs = 0;
    },
  });
  const now = () => watched.session().now() + aheadMs;
  const host = {
    get session() {
      return watched.session();
    },
    lines,
    onChange(listener: () => void) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    status: () => ({ voice: "q ends it" }),
    close() {},
  };
  const played = watched.play().then(() => (over ? undefined : real(HOLD_END_MS)));
  await runScreen(host, io, { now, rehearsal: true, ended: played, everyMs: FRAME_MS });
  over = true;
  wake();
  await played;
}

/** How long a step of made-up time is watched: work at one speed, a long rest in one go. */
class Pacer {
  private readonly speed: number | undefined;
  private owedMs = 0;
  private rest: { until: number; speed: number } | undefined;

  constructor(speed: number | undefined) {
    this.speed = speed;
  }

  /** Real milliseconds for a step; what is too short to show is saved up. */
  realMs(session: ScreenSession, ms: number): number {
    this.owedMs += ms / (this.speed ?? this.speedNow(session));
    if (this.owedMs < FRAME_MS) return 0;
    const owed = this.owedMs;
    this.owedMs = 0;
    return owed;
  }

  private speedNow(session: ScreenSession): number {
    const now = session.now();
    if (this.rest && now < this.rest.until) return this.rest.speed;
    const items = shelves(session.state, now);
    const resting = items.length > 0 && items.every(({ run }) => restsByItself(run));
    const until = Math.min(...items.map(({ run }) => restEnds(run, now)));
    const left = until - now;
    if (!resting || !Number.isFinite(left) || left < LONG_REST_MS) return WORK_SPEED;
    this.rest = { until: until - MINUTE_MS, speed: Math.max(WORK_SPEED, left / REST_REAL_MS) };
    return this.rest.speed;
  }
}

function restsByItself(run: StageRun): boolean {
  return run.state === "running" && KINDS[run.spec.kind].shelf === "rest";
}

/** When a rest may end next: its shortest time, and after that its longest. */
function restEnds({ startedAt = 0, spec }: StageRun, now: number): number {
  const { minMinutes = 0, maxMinutes = 0 } = spec.window ?? {};
  const soonest = startedAt + minMinutes * MINUTE_MS;
  return soonest > now ? soonest : startedAt + maxMinutes * MINUTE_MS;
}
