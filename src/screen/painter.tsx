/**
 * Puts frames on the terminal through ink: only when they differ, and completely when the window
 * changes.
 */

import { type Instance, render } from "ink";
import type { ReactNode } from "react";
import type { View } from "../ports/view.ts";
import { Page } from "./changed-rows.ts";
import { FrameRows } from "./frame-rows.tsx";
import { layOut } from "./layout.ts";
import { type Palette, paletteFor } from "./palette.ts";
import { keyOf } from "./row.ts";
import type { ScreenIo } from "./screen-host.ts";
import { Terminal } from "./terminal.ts";

/** A terminal that took nothing for this long may have lost part of what it was sent, ms. */
const STALL_MS = 250;

export class Painter {
  readonly terminal: Terminal;
  private readonly io: ScreenIo;
  private readonly palette: Palette | undefined;
  private mounted: { instance: Instance; page: Page } | undefined;
  /** What is on each row, and where the cursor is. */
  private shown: string[] = [];
  private cursor = "";
  private size = { columns: 0, rows: 0 };
  /** Since when a frame waits for the terminal to take the one before, by a steady clock. */
  private behindSince: number | undefined;
  /** The page is to be cleared once the terminal takes something again. */
  private anew = false;

  constructor(io: ScreenIo) {
    this.io = io;
    this.terminal = new Terminal(io);
    this.palette = paletteFor(io.stdout.getColorDepth?.() ?? 1, process.env);
  }

  open(): void {
    this.terminal.enter();
  }

  /**
   * Draws a view; true where anything was different from what is there. While the terminal has
   * not taken the frame before, nothing is drawn and `again` is called once it has; after a stall
   * everything is drawn anew.
   */
  paint(view: View, again: () => void): boolean {
    if (this.io.outlet.waiting) {
      if (this.behindSince === undefined) this.io.outlet.whenFree(again);
      this.behindSince ??= performance.now();
      return false;
    }
    const waitedMs = performance.now() - (this.behindSince ?? performance.now());
    if (waitedMs > STALL_MS || this.anew) this.forget();
    this.behindSince = undefined;
    this.anew = false;
    const size = this.terminal.size;
    const resized = size.columns !== this.size.columns || size.rows !== this.size.rows;
    const { rows, cursor } = layOut(view, size.columns, size.rows);
    const keys = rows.map(keyOf);
    const place = cursor ? `${cursor.x},${cursor.y}` : "";
    if (resized) this.forget();
    const changed = keys.flatMap((key, index) => (key === this.shown[index] ? [] : [index]));
    if (this.mounted && changed.length === 0 && place === this.cursor) return false;
    this.size = size;
    this.shown = keys;
    this.cursor = place;
    if (changed.length > 0 || !this.mounted) {
      const placed = changed.map((index) => ({ index, row: rows[index] ?? [] }));
      const drawn = <FrameRows rows={placed} palette={this.palette} />;
      if (this.mounted) this.mounted.instance.rerender(drawn);
      else this.mounted = this.mount(drawn);
    }
    this.mounted.page.flush(changed, cursor);
    return true;
  }

  /** Makes the next paint draw everything on a cleared page. */
  forget(): void {
    if (!this.mounted && !this.anew) return;
    this.unmount();
    this.shown = [];
    this.anew = this.io.outlet.waiting;
    if (!this.anew) this.terminal.wipe();
  }

  close(): void {
    this.unmount();
    this.terminal.leave();
  }

  private unmount(): void {
    this.mounted?.instance.unmount();
    this.mounted = undefined;
  }

  private mount(drawn: ReactNode): { instance: Instance; page: Page } {
    const page = new Page((text) => this.terminal.write(text), this.size);
    const instance = render(drawn, {
      stdout: page as unknown as NodeJS.WriteStream,
      stdin: this.io.stdin,
      exitOnCtrlC: false,
      patchConsole: false,
      isScreenReaderEnabled: false,
      // What is drawn arrives at once and unchanged, for the page to place.
      debug: true,
    });
    return { instance, page };
  }
}
