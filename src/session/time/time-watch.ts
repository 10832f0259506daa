import type { ClockReading } from "../../ports/clock.ts";

/** What the clocks show to have happened between two readings. Milliseconds. */
export type TimeFinding =
  /** Somebody set the wall clock; negative is back. */
  | { kind: "clock-set"; byMs: number }
  /** The machine slept. */
  | { kind: "asleep"; ms: number }
  /** The program stalled while awake (or slept, where the system's timers count sleep). */
  | { kind: "stalled"; ms: number }
  /** The machine was restarted; the length is by the wall clock, which is all there is to go by. */
  | { kind: "rebooted"; ms: number };

/** How long it was between two readings, and which clock says so. */
type Elapsed = { ms: number; by: "boot" | "wall" };

/** Below this the wall clock only drifts and is nudged by the network. */
const DRIFT_MS = 1500;

/** A reading less than this late after the heartbeat is ordinary. */
const LATE_MS = 2000;

/** The tolerance, ms, when comparing starts of the machine known by their wall time. */
const START_TOLERANCE_MS = 5000;

/** Whether both readings are of the same start of the machine. */
export function sameBoot(before: ClockReading, now: ClockReading): boolean {
  if (now.bootMs < before.bootMs) return false;
  if (before.bootId === now.bootId) return true;
  const [a, b] = [startOf(before.bootId), startOf(now.bootId)];
  return a !== undefined && b !== undefined && Math.abs(a - b) <= START_TOLERANCE_MS;
}

function startOf(bootId: string): number | undefined {
  const match = /^started-(-?\d+)$/.exec(bootId);
  return match ? Number(match[1]) : undefined;
}

/** By the boot clock within one start of the machine, else by the wall; never negative. */
export function elapsedBetween(before: ClockReading, now: ClockReading): Elapsed {
  if (sameBoot(before, now)) return { ms: now.bootMs - before.bootMs, by: "boot" };
  return { ms: Math.max(0, now.wallMs - before.wallMs), by: "wall" };
}

/**
 * What happened between two readings that should lie `heartbeatMs` apart; several things may
 * have, or (mostly) nothing.
 */
export function compareReadings(
  before: ClockReading,
  now: ClockReading,
  heartbeatMs: number,
): TimeFinding[] {
  const { ms, by } = elapsedBetween(before, now);
  if (by === "wall") return [{ kind: "rebooted", ms }];
  const findings: TimeFinding[] = [];
  const setByMs = now.wallMs - before.wallMs - ms;
  if (Math.abs(setByMs) > DRIFT_MS) findings.push({ kind: "clock-set", byMs: setByMs });
  const awakeMs = now.monoMs - before.monoMs;
  const asleepMs = ms - awakeMs;
  if (asleepMs > DRIFT_MS) findings.push({ kind: "asleep", ms: asleepMs });
  if (awakeMs - heartbeatMs > LATE_MS) findings.push({ kind: "stalled", ms: awakeMs });
  return findings;
}

/** Compares each reading with the one before it. */
export class TimeWatch {
  private last: ClockReading;
  private readonly heartbeatMs: number;

  constructor(first: ClockReading, heartbeatMs: number) {
    this.last = first;
    this.heartbeatMs = heartbeatMs;
  }

  observe(now: ClockReading): TimeFinding[] {
    const findings = compareReadings(this.last, now, this.heartbeatMs);
    this.last = now;
    return findings;
  }
}
