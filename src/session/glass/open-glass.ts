/** A window on a kitchen that another program keeps: what it shows, and where its keys go. */
import { connect, type Socket } from "node:net";
import type { Line } from "../../ports/view.ts";
import type { ScreenHost } from "../../screen/screen-host.ts";
import { Listeners } from "../listeners.ts";
import { addressOf, readText } from "../tell/tell-client.ts";
import { PROTOCOL, protocolFile } from "../tell/tell-protocol.ts";
import { timeText } from "../view/clock-text.ts";
import {
  type Hello,
  helloLine,
  lineCutter,
  type Seen,
  seenIn,
  type Typed,
} from "./glass-protocol.ts";

export type Glass = {
  /** Whether the kitchen sends its whole screen, or lines only. */
  kind: "view" | "lines";
  host: ScreenHost;
  /** Resolves when the kitchen hangs up: because the person left, or because it is closed. */
  ended: Promise<"left" | "closed">;
  close(): void;
};

/** How long the kitchen may take to answer a hello, ms. */
const HELLO_MS = 3000;
/** The longest message the kitchen sends. */
const LONGEST_SEEN = 4_000_000;
const LINES_KEPT = 500;

/** Opens a glass on the kitchen of a folder; undefined where no kitchen answers that offers one. */
export function openGlass(folder: string, hello: Hello): Promise<Glass | undefined> {
  if (readText(protocolFile(folder)) !== PROTOCOL) return Promise.resolve(undefined);
  return new Promise((resolve) => {
    const socket = connect(addressOf(folder));
    const glass = new OpenedGlass(socket);
    const late = setTimeout(() => socket.destroy(), HELLO_MS);
    socket.setEncoding("utf8");
    socket.on("connect", () => socket.write(helloLine(hello)));
    socket.on("error", () => socket.destroy());
    socket.on("close", () => {
      clearTimeout(late);
      resolve(undefined);
    });
    glass.onFirst = (kind) => {
      clearTimeout(late);
      resolve({
        kind,
        host: glass,
        ended: glass.ended,
        close: () => socket.destroy(),
      });
    };
  });
}

class OpenedGlass implements ScreenHost {
  readonly lines: Line[] = [];
  readonly ended: Promise<"left" | "closed">;
  onFirst: ((kind: "view" | "lines") => void) | undefined;
  private readonly socket: Socket;
  private readonly changes = new Listeners();
  private seen: Seen = { now: 0, zone: "UTC", lines: [], running: [] };
  private seenAtMs = performance.now();
  private hungUp = false;

  constructor(socket: Socket) {
    this.socket = socket;
    const cut = lineCutter(
      LONGEST_SEEN,
      (line) => this.take(line),
      () => socket.destroy(),
    );
    socket.on("data", cut);
    this.ended = new Promise((resolve) => {
      socket.on("close", () => {
        this.hungUp = !this.left();
        resolve(this.hungUp ? "closed" : "left");
      });
    });
  }

  onChange(listener: () => void): () => void {
    return this.changes.add(listener);
  }

  now(): number {
    return this.seen.now + performance.now() - this.seenAtMs;
  }

  view(parts: Parameters<ScreenHost["view"]>[0]): ReturnType<ScreenHost["view"]> {
    if (!this.seen.view) throw new Error("the kitchen sent no screen");
    return { ...this.seen.view, ...parts };
  }

  labeledKeys(): ReturnType<ScreenHost["labeledKeys"]> {
    return this.seen.keys ?? [];
  }

  timeOf(wallMs: number): string {
    return timeText(wallMs, this.seen.zone);
  }

  running(): string[] {
    return this.seen.running;
  }

  /** This window keeps nothing: it may be stopped. */
  needed(): undefined {
    return undefined;
  }

  farewell(): string[] {
    if (this.hungUp) return ["The kitchen was closed or is gone; the clocks are kept in its log."];
    const running = this.running().map((one) => `  ${one}`);
    return ["This window is closed; the kitchen is not.", ...running];
  }

  left(): boolean {
    return this.seen.left === true;
  }

  hear(words: string): void {
    this.send({ hear: words });
  }

  press(): void {
    this.send({ press: true });
  }

  private send(typed: Typed): void {
    if (!this.socket.destroyed) this.socket.write(`${JSON.stringify(typed)}\n`);
  }

  private take(line: string): void {
    try {
      this.seen = seenIn(line);
    } catch {
      this.socket.destroy();
      return;
    }
    this.seenAtMs = performance.now();
    this.lines.push(...this.seen.lines);
    if (this.lines.length > LINES_KEPT) this.lines.splice(0, this.lines.length - LINES_KEPT);
    if (this.seen.kind) this.onFirst?.(this.seen.kind);
    this.changes.tell();
  }
}
