/**
 * What ink draws on: it gets the changed rows, as ink styled them, and sends each to its place. So
 * nothing is ever cleared, and little is sent over a slow line.
 */
import { EventEmitter } from "node:events";

type Cursor = { x: number; y: number } | undefined;

const HIDE = "\u001b[?25l";
const SHOW = "\u001b[?25h";
/** A terminal that supports these shows everything between them at once. */
const BEGIN = "\u001b[?2026h";
const END = "\u001b[?2026l";

export class Page extends EventEmitter {
  readonly isTTY = true;
  readonly columns: number;
  readonly rows: number;
  private readonly send: (text: string) => void;
  private lines: string[] = [];

  constructor(send: (text: string) => void, size: { columns: number; rows: number }) {
    super();
    this.send = send;
    this.columns = size.columns;
    this.rows = size.rows;
  }

  /** Takes lines, as ink writes them. */
  write(text: string, done?: () => void): boolean {
    if (text !== "") this.lines = text.split("\n");
    done?.();
    return true;
  }

  /** Sends the lines taken last, each to its row, and puts the cursor where it belongs. */
  flush(rows: number[], cursor: Cursor): void {
    const drawn = rows.map((row, index) => `${at(row, 0)}${this.lines[index] ?? ""}\u001b[K`);
    const place = cursor ? `${at(cursor.y, cursor.x)}${SHOW}` : "";
    this.send(`${BEGIN}${HIDE}${drawn.join("")}${place}${END}`);
  }
}

function at(row: number, column: number): string {
  return `\u001b[${row + 1};${column + 1}H`;
}
