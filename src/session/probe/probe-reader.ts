/**
 * A probe on this machine: a file that grows, a pipe, or a serial device, read without waiting for
 * it. One that is missing or goes away is tried again.
 */
import { closeSync, constants, fstatSync, openSync, readSync } from "node:fs";
import type { Clock } from "../../ports/clock.ts";
import type { ProbeEvents, ProbePort } from "../../ports/probe.ts";

const LOOK_MS = 50;
const TRY_AGAIN_MS = 2000;
/** The most read at one look: over a hundred times what a probe sends in that time. */
const BYTES_A_LOOK = 16_384;
const LONGEST_LINE = 200;

const CALM = new Set(["EAGAIN", "EWOULDBLOCK"]);

/** Reads lines from a path; `-` is not one of them (see `splitProbeLines`). */
export function probeReader(path: string, clock: Clock): ProbePort {
  return new PathReader(path, clock);
}

class PathReader implements ProbePort {
  private readonly path: string;
  private readonly clock: Clock;
  private readonly buffer = Buffer.alloc(BYTES_A_LOOK);
  private descriptor: number | undefined;
  private events: ProbeEvents | undefined;
  private stopTimer: (() => void) | undefined;
  private rest = "";
  private position = 0;
  /** The length of the file when it was opened. */
  private oldUntil = 0;
  private regular = false;
  private out = false;

  constructor(path: string, clock: Clock) {
    this.path = path;
    this.clock = clock;
  }

  start(events: ProbeEvents): void {
    this.events = events;
    this.look();
  }

  stop(): void {
    this.stopTimer?.();
    this.events = undefined;
    this.close();
  }

  private look(): void {
    try {
      if (this.descriptor === undefined) this.open();
      this.read();
      this.again(LOOK_MS);
    } catch (error) {
      const { code = "", message } = error as NodeJS.ErrnoException;
      if (CALM.has(code)) {
        this.again(LOOK_MS);
        return;
      }
      this.close();
      if (!this.out) {
        const why = message.split("\n")[0];
        const problem = `The probe ${this.path} cannot be read (${why}).`;
        this.events?.onProblem(`${problem} Plug it in or name another; it is tried again.`);
      }
      this.out = true;
      this.again(TRY_AGAIN_MS);
    }
  }

  private again(ms: number): void {
    if (this.events) this.stopTimer = this.clock.after(ms, () => this.look());
  }

  private open(): void {
    const { O_RDONLY, O_NONBLOCK = 0, O_NOCTTY = 0 } = constants;
    this.descriptor = openSync(this.path, O_RDONLY | O_NONBLOCK | O_NOCTTY);
    const { size } = fstatSync(this.descriptor);
    this.regular = fstatSync(this.descriptor).isFile();
    this.oldUntil = this.regular ? size : 0;
    this.position = 0;
    this.rest = "";
  }

  private read(): void {
    const { descriptor } = this;
    if (descriptor === undefined) return;
    // A file that was started over is read from its beginning.
    if (this.regular && fstatSync(descriptor).size < this.position) {
      this.position = 0;
      this.oldUntil = 0;
    }
    const at = this.regular ? this.position : null;
    const old = this.position < this.oldUntil;
    const most = old ? Math.min(BYTES_A_LOOK, this.oldUntil - this.position) : BYTES_A_LOOK;
    const count = readSync(descriptor, this.buffer, 0, most, at);
    this.position += count;
    if (count === 0) return;
    if (this.out) {
      this.out = false;
      this.events?.onRecovered?.();
    }
    this.take(this.buffer.toString("utf8", 0, count), old);
  }

  private take(text: string, old: boolean): void {
    const lines = (this.rest + text).split(/\r\n|\n|\r/);
    this.rest = (lines.pop() ?? "").slice(-LONGEST_LINE);
    for (const line of lines) if (line.length <= LONGEST_LINE) this.events?.onLine(line, old);
  }

  private close(): void {
    if (this.descriptor !== undefined) closeSync(this.descriptor);
    this.descriptor = undefined;
  }
}
