/** Puts frames on the terminal through ink: only when they differ, anew when the window changes. */
import "./always-draw.ts";
import { type Instance, render } from "ink";
import { FramePage } from "./frame-page.tsx";
import { type Frame, layOut } from "./layout.ts";
import { keyOf } from "./row.ts";
import type { ScreenIo } from "./screen-host.ts";
import { Terminal } from "./terminal.ts";
import type { View } from "./view.ts";

export class Painter {
  readonly terminal: Terminal;
  private readonly io: ScreenIo;
  private readonly colors: boolean;
  private instance: Instance | undefined;
  private shown = "";
  private size = { columns: 0, rows: 0 };

  constructor(io: ScreenIo) {
    this.io = io;
    this.terminal = new Terminal(io);
    this.colors = !process.env.NO_COLOR;
  }

  open(): void {
    this.terminal.enter();
  }

  /** Draws a view; true where anything was different from what is there. */
  paint(view: View): boolean {
    const { columns, rows } = this.terminal.size;
    const resized = columns !== this.size.columns || rows !== this.size.rows;
    const frame = layOut(view, columns, rows);
    const key = frameKey(frame);
    if (!resized && this.instance && key === this.shown) return false;
    if (resized) this.forget();
    this.size = { columns, rows };
    this.shown = key;
    const page = <FramePage frame={frame} colors={this.colors} />;
    if (this.instance) this.instance.rerender(page);
    else this.instance = this.mount(page);
    return true;
  }

  /** The next paint draws everything, on a page wiped clean. */
  forget(): void {
    if (!this.instance) return;
    this.instance.unmount();
    this.instance = undefined;
    this.terminal.wipe();
  }

  close(): void {
    this.instance?.unmount();
    this.instance = undefined;
    this.terminal.leave();
  }

  private mount(page: React.ReactNode): Instance {
    return render(page, {
      stdout: this.terminal.page(),
      stdin: this.io.stdin,
      exitOnCtrlC: false,
      patchConsole: false,
      incrementalRendering: true,
      isScreenReaderEnabled: false,
    });
  }
}

function frameKey({ rows, cursor }: Frame): string {
  return `${rows.map(keyOf).join("\n")}\n${cursor ? `${cursor.x},${cursor.y}` : ""}`;
}
