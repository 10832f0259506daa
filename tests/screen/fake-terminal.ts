/** A terminal for tests: what a program writes, as the person in front of it would see it. */
import { EventEmitter } from "node:events";
import xterm from "@xterm/headless";
import { streamOutlet } from "../../src/screen/outlet.ts";

export class FakeTerminal {
  readonly stdin: FakeStdin;
  readonly stdout: FakeStdout;
  readonly writes: string[] = [];
  private readonly screen: InstanceType<typeof xterm.Terminal>;

  constructor(columns: number, rows: number) {
    // A line feed also returns to the line's beginning, as a terminal's driver makes it.
    const options = { convertEol: true, allowProposedApi: true };
    this.screen = new xterm.Terminal({ cols: columns, rows, ...options });
    this.stdin = new FakeStdin();
    this.stdout = new FakeStdout(columns, rows, (text) => {
      this.writes.push(text);
      this.screen.write(text);
    });
  }

  get io() {
    return {
      stdin: this.stdin as unknown as NodeJS.ReadStream,
      stdout: this.stdout as unknown as NodeJS.WriteStream,
      outlet: streamOutlet(this.stdout as unknown as NodeJS.WritableStream),
    };
  }

  /** From now on the terminal takes nothing; without `on` it takes all that was sent meanwhile. */
  stall(on = true): void {
    this.stdout.stall(on);
  }

  /** Everything sent so far. */
  get raw(): string {
    return this.writes.join("");
  }

  type(keys: string): void {
    this.stdin.emit("data", keys);
  }

  resize(columns: number, rows: number): void {
    this.screen.resize(columns, rows);
    this.stdout.columns = columns;
    this.stdout.rows = rows;
    this.stdout.emit("resize");
  }

  /** The lines on the screen now, spaces at their ends cut off. */
  async lines(): Promise<string[]> {
    await new Promise<void>((resolve) => this.screen.write("", resolve));
    const { active } = this.screen.buffer;
    return Array.from({ length: this.screen.rows }, (_, index) => {
      return active.getLine(active.viewportY + index)?.translateToString(true) ?? "";
    });
  }

  async text(): Promise<string> {
    return (await this.lines()).join("\n");
  }

  /** Lines that went out at the top: something drew past the end of the window. */
  get scrolled(): number {
    return this.screen.buffer.active.baseY;
  }

  get cursor(): { x: number; y: number } {
    const { cursorX: x, cursorY: y } = this.screen.buffer.active;
    return { x, y };
  }

  /** True while the program has its own page. */
  async ownPage(): Promise<boolean> {
    await this.lines();
    return this.screen.buffer.active.type === "alternate";
  }
}

class FakeStdin extends EventEmitter {
  readonly isTTY = true;
  rawMode = false;
  setRawMode(on: boolean): this {
    this.rawMode = on;
    return this;
  }
  setEncoding(): this {
    return this;
  }
  resume(): this {
    return this;
  }
  pause(): this {
    return this;
  }
  ref(): this {
    return this;
  }
  unref(): this {
    return this;
  }
}

class FakeStdout extends EventEmitter {
  readonly isTTY = true;
  columns: number;
  rows: number;
  private readonly take: (text: string) => void;
  private held: (() => void)[] | undefined;
  constructor(columns: number, rows: number, take: (text: string) => void) {
    super();
    this.columns = columns;
    this.rows = rows;
    this.take = take;
  }
  write(text: string, done?: () => void): boolean {
    const taken = () => {
      this.take(text);
      done?.();
    };
    if (this.held) this.held.push(taken);
    else taken();
    return true;
  }
  stall(on: boolean): void {
    const held = this.held ?? [];
    this.held = on ? held : undefined;
    if (!on) for (const taken of held) taken();
  }
}
