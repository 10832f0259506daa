import type { Clock, ClockReading } from "../../ports/clock.ts";

type Timer = { dueMonoMs: number; order: number; run: () => void };

/**
 * A clock that moves only when told to, for rehearsals and tests. Its timers go by `monoMs` as
 * they do on Linux: they stop while the machine sleeps. The same calls give the same
 * readings and the same order of callbacks, always.
 */
export class MadeUpClock implements Clock {
  private wallMs: number;
  private monoMs = 60_000;
  private bootMs = 60_000;
  private boots = 1;
  /** How much time has really passed, whatever the clocks were set to, ms. */
  passedMs = 0;
  private timers: Timer[] = [];
  private order = 0;
  private readonly zone: string;

  /** Begins at this wall time (epoch milliseconds), a minute after the machine started. */
  constructor(wallMs: number, zone: string) {
    this.wallMs = wallMs;
    this.zone = zone;
  }

  read(): ClockReading {
    return {
      wallMs: this.wallMs,
      monoMs: this.monoMs,
      bootMs: this.bootMs,
      bootId: `boot-${this.boots}`,
      zone: this.zone,
    };
  }

  after(ms: number, run: () => void): () => void {
    this.order += 1;
    const timer = { dueMonoMs: this.monoMs + Math.max(0, ms), order: this.order, run };
    this.timers.push(timer);
    return () => this.forget(timer);
  }

  /** Milliseconds of waking time until the soonest timer; undefined when none is set. */
  untilNextTimer(): number | undefined {
    const next = this.soonest();
    return next && Math.max(0, next.dueMonoMs - this.monoMs);
  }

  /** Lets time pass awake: every timer that comes due runs at its moment, soonest first. */
  advance(ms: number): void {
    const endMonoMs = this.monoMs + ms;
    for (;;) {
      const next = this.soonest();
      if (!next || next.dueMonoMs > endMonoMs) break;
      this.move(Math.max(0, next.dueMonoMs - this.monoMs));
      this.forget(next);
      next.run();
    }
    this.move(Math.max(0, endMonoMs - this.monoMs));
  }

  /** The machine sleeps: wall and boot clock go on, timers and their clock stand still. */
  sleep(ms: number): void {
    this.passedMs += ms;
    this.wallMs += ms;
    this.bootMs += ms;
  }

  /** The program stands still while all clocks go on; what came due meanwhile then runs late. */
  stall(ms: number): void {
    this.move(ms);
    this.advance(0);
  }

  /** Time passes while the program waits within a call, such as for a slow disk. */
  pass(ms: number): void {
    this.move(ms);
  }

  /** Somebody sets the wall clock forward or (negative) back by this much. */
  setWall(byMs: number): void {
    this.wallMs += byMs;
  }

  /** The machine goes down and comes up again `downMs` later by the wall; no timer survives. */
  reboot(downMs = 0): void {
    this.endProgram();
    this.wallMs += downMs;
    this.passedMs += downMs;
    this.boots += 1;
    this.monoMs = 0;
    this.bootMs = 0;
  }

  /** The program dies: its timers are gone, the clocks go on. */
  endProgram(): void {
    this.timers = [];
  }

  private move(ms: number): void {
    this.passedMs += ms;
    this.wallMs += ms;
    this.monoMs += ms;
    this.bootMs += ms;
  }

  private soonest(): Timer | undefined {
    let best: Timer | undefined;
    for (const timer of this.timers) {
      if (!best || timer.dueMonoMs < best.dueMonoMs) best = timer;
      else if (timer.dueMonoMs === best.dueMonoMs && timer.order < best.order) best = timer;
    }
    return best;
  }

  private forget(timer: Timer): void {
    const at = this.timers.indexOf(timer);
    if (at >= 0) this.timers.splice(at, 1);
  }
}
