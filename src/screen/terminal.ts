/**
 * The terminal while the screen is on it: the alternate page, raw keys, and everything restored
 * however it ends.
 */
import { isatty } from "node:tty";
import type { ScreenIo } from "./screen-host.ts";

/** Alternate page, bracketed paste, cursor at the top. */
const ENTER = "\u001b[?1049h\u001b[?2004h\u001b[H";
const LEAVE = "\u001b[?2004l\u001b[?1049l\u001b[?25h";
/** Ends any sequence that was cut off, and clears the page. */
const WIPE = "\u001b\\\u001b[0m\u001b[H\u001b[J";
/** How long a stop may take to come before it is known that nobody stops us, ms. */
const STOP_WAIT_MS = 200;

/** True for a stream whose terminal has hung up. */
export function isGone(stream: { isTTY?: boolean; fd?: number }): boolean {
  return stream.isTTY === true && stream.fd !== undefined && !isatty(stream.fd);
}

export class Terminal {
  private readonly io: ScreenIo;
  private on = false;
  private readonly restore = () => this.leave();

  constructor(io: ScreenIo) {
    this.io = io;
  }

  get size(): { columns: number; rows: number } {
    const { columns, rows } = this.io.stdout;
    return { columns: columns || 80, rows: rows || 24 };
  }

  enter(): void {
    if (this.on) return;
    this.on = true;
    this.write(ENTER);
    this.raw(true);
    process.once("exit", this.restore);
  }

  /** Restores everything, even on an unplanned exit. */
  leave(): void {
    if (!this.on) return;
    this.on = false;
    process.off("exit", this.restore);
    this.raw(false);
    this.write(LEAVE);
  }

  wipe(): void {
    this.write(WIPE);
  }

  /** After a stop, somebody else may have changed the terminal's settings. */
  again(): void {
    this.on = true;
    this.raw(false);
    this.raw(true);
    this.write(ENTER);
  }

  /**
   * Stops the program as the terminal would, and goes on when it is continued. Where nobody can
   * continue it the stop never comes, and the screen comes back by itself.
   */
  async stop(): Promise<void> {
    if (process.platform === "win32") return;
    this.raw(false);
    this.write(LEAVE);
    const back = new Promise<void>((resolve) => {
      const timer = setTimeout(resolve, STOP_WAIT_MS);
      process.once("SIGCONT", () => {
        clearTimeout(timer);
        resolve();
      });
    });
    process.kill(0, "SIGTSTP");
    await back;
  }

  private raw(on: boolean): void {
    const { stdin } = this.io;
    if (!stdin.isTTY) return;
    try {
      stdin.setRawMode(on);
    } catch {
      // The terminal is gone; there is nothing left to set.
    }
  }

  write(text: string): void {
    this.io.outlet.write(text);
  }
}
