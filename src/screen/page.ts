/**
 * What ink draws on: it is handed whole frames, and only the lines that differ go to the terminal,
 * each to its own place. So nothing is ever cleared, and little is sent over a slow line.
 */
import { EventEmitter } from "node:events";

export type Cursor = { x: number; y: number } | undefined;

const HIDE = "\u001b[?25l";
const SHOW = "\u001b[?25h";
/** A terminal that knows these shows what stands between them at one go. */
const BEGIN = "\u001b[?2026h";
const END = "\u001b[?2026l";

export class Page extends EventEmitter {
  readonly isTTY = true;
  readonly columns: number;
  readonly rows: number;
  private readonly send: (text: string) => void;
  private next: string[] = [];
  private drawn: string[] = [];
  private cursor: string | undefined;

  constructor(send: (text: string) => void, size: { columns: number; rows: number }) {
    super();
    this.send = send;
    this.columns = size.columns;
    this.rows = size.rows;
  }

  /** Takes a whole frame, as ink writes it. */
  write(frame: string, done?: () => void): boolean {
    if (frame !== "") this.next = frame.split("\n");
    done?.();
    return true;
  }

  /** Sends what differs from what is drawn, and puts the cursor where it belongs. */
  flush(cursor: Cursor): void {
    const place = cursor ? `${at(cursor.y, cursor.x)}${SHOW}` : "";
    const lines: string[] = [];
    for (let index = 0; index < Math.max(this.next.length, this.drawn.length); index++) {
      const line = this.next[index] ?? "";
      if (line !== (this.drawn[index] ?? "")) lines.push(`${at(index, 0)}${line}\u001b[K`);
    }
    if (lines.length === 0 && place === this.cursor) return;
    this.drawn = this.next;
    this.cursor = place;
    this.send(`${BEGIN}${HIDE}${lines.join("")}${place}${END}`);
  }
}

function at(row: number, column: number): string {
  return `\u001b[${row + 1};${column + 1}H`;
}
