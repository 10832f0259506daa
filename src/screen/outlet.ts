/**
 * Where a face writes. A terminal may take nothing for minutes (stopped output, a frozen
 * connection), and writing to it as Node does would hold up every clock: so nothing here waits.
 */
import * as fs from "node:fs";
import { isatty } from "node:tty";

export type Outlet = {
  /** Hands text over, behind what still waits. Returns at once, whatever becomes of it. */
  write(text: string): void;
  /** True while something handed over has not been taken. */
  readonly waiting: boolean;
  /** Calls back once all that waits has been taken; never where it is lost. */
  whenFree(then: () => void): void;
  /** Why nothing can be written any more; undefined while it can. */
  readonly lostBy: string | undefined;
  /** Calls with the reason when nothing can be written any more: `EIO` of a lost terminal. */
  onLost(then: (code: string) => void): void;
  /** Resolves when all has been taken, and at the latest after this many ms. */
  drained(mostMs: number): Promise<void>;
};

/** A terminal that took nothing is tried again after this long, and then ever more seldom, ms. */
const FIRST_AGAIN_MS = 10;
const LAST_AGAIN_MS = 200;

/** What both kinds of outlet have in common: who waits, and who is told of the end. */
abstract class Waiting {
  abstract readonly waiting: boolean;
  private free: (() => void)[] = [];
  private lost: ((code: string) => void)[] = [];
  lostBy: string | undefined;

  whenFree(then: () => void): void {
    if (this.waiting) this.free.push(then);
    else then();
  }

  onLost(then: (code: string) => void): void {
    if (this.lostBy === undefined) this.lost.push(then);
    else then(this.lostBy);
  }

  drained(mostMs: number): Promise<void> {
    return new Promise((resolve) => {
      const late = setTimeout(resolve, mostMs);
      const done = () => {
        clearTimeout(late);
        resolve();
      };
      this.whenFree(done);
      this.onLost(done);
    });
  }

  protected becameFree(): void {
    const all = this.free;
    this.free = [];
    for (const then of all) then();
  }

  protected becameLost(code: string): void {
    if (this.lostBy !== undefined) return;
    this.lostBy = code;
    const all = this.lost;
    this.lost = [];
    for (const then of all) then(code);
  }
}

/** A terminal opened anew so that it never blocks; what it does not take is tried again. */
class TerminalOutlet extends Waiting implements Outlet {
  private readonly descriptor: number;
  private rest: Buffer = Buffer.alloc(0);
  private again: NodeJS.Timeout | undefined;
  private againMs = FIRST_AGAIN_MS;

  constructor(descriptor: number) {
    super();
    this.descriptor = descriptor;
  }

  get waiting(): boolean {
    return this.rest.length > 0;
  }

  write(text: string): void {
    if (this.lostBy !== undefined) return;
    this.rest = Buffer.concat([this.rest, Buffer.from(text)]);
    if (this.again === undefined) this.push();
  }

  /** Writes as much as is taken at once. */
  private push(): void {
    this.again = undefined;
    while (this.rest.length > 0) {
      try {
        const taken = fs.writeSync(this.descriptor, this.rest);
        this.rest = this.rest.subarray(taken);
        this.againMs = FIRST_AGAIN_MS;
      } catch (error) {
        const { code = "EIO" } = error as NodeJS.ErrnoException;
        if (code === "EAGAIN") this.later();
        else this.fail(code);
        return;
      }
    }
    this.becameFree();
  }

  private later(): void {
    this.again = setTimeout(() => this.push(), this.againMs);
    // A program that has ended does not stay for a terminal that takes nothing.
    this.again.unref();
    this.againMs = Math.min(this.againMs * 2, LAST_AGAIN_MS);
  }

  private fail(code: string): void {
    this.rest = Buffer.alloc(0);
    this.becameLost(code);
  }
}

/** A pipe, or whatever else a stream of Node's does not block on. */
class StreamOutlet extends Waiting implements Outlet {
  private readonly stream: NodeJS.WritableStream & { destroyed?: boolean };
  private pending = 0;

  constructor(stream: NodeJS.WritableStream & { destroyed?: boolean }) {
    super();
    this.stream = stream;
    stream.on?.("error", (error: NodeJS.ErrnoException) => this.becameLost(error.code ?? "EIO"));
  }

  get waiting(): boolean {
    return this.pending > 0;
  }

  write(text: string): void {
    if (this.lostBy !== undefined || this.stream.destroyed) return;
    this.pending += 1;
    this.stream.write(text, () => {
      this.pending -= 1;
      if (!this.waiting) this.becameFree();
    });
  }
}

/** The outlet of a standard stream: for a terminal one that never blocks, where there is one. */
export function outletOf(stream: NodeJS.WriteStream & { fd?: number }): Outlet {
  const { fd } = stream;
  const terminal = process.platform !== "win32" && fd !== undefined && isatty(fd);
  const path = terminal ? terminalPath(fd) : "";
  if (path) {
    const { O_WRONLY, O_NONBLOCK, O_NOCTTY } = fs.constants;
    try {
      return new TerminalOutlet(fs.openSync(path, O_WRONLY | O_NONBLOCK | O_NOCTTY));
    } catch {
      // Its device may not be opened again, as after `su`: it is written to as Node does.
    }
  }
  return streamOutlet(stream);
}

export function streamOutlet(stream: NodeJS.WritableStream): Outlet {
  return new StreamOutlet(stream);
}

/** A path that opens the terminal behind a descriptor anew; empty where none is found. */
function terminalPath(descriptor: number): string {
  if (process.platform === "linux") return `/proc/self/fd/${descriptor}`;
  // Elsewhere /dev/fd only doubles a descriptor, with its blocking: the device is looked for.
  const { rdev } = fs.fstatSync(descriptor);
  const devices = fs.readdirSync("/dev").filter((name) => name.startsWith("tty"));
  const found = devices.find((name) => {
    const stat = fs.statSync(`/dev/${name}`, { throwIfNoEntry: false });
    return stat?.isCharacterDevice() && stat.rdev === rdev;
  });
  return found ? `/dev/${found}` : "";
}
