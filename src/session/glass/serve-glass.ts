/** The kitchen's side of a glass: sends what is to be seen, hears what is typed. */
import type { Socket } from "node:net";
import type { Line } from "../../ports/view.ts";
import type { ScreenHost } from "../../screen/screen-host.ts";
import { oneLine } from "../tell/tell-protocol.ts";
import {
  type Hello,
  helloIn,
  LONGEST_TYPED,
  lineCutter,
  type Seen,
  typedIn,
} from "./glass-protocol.ts";

type GlassParts = {
  host: ScreenHost;
  zone(): string;
  build: string;
  /** Takes words or the key from this glass; true where the person asked to leave it. */
  take(act: () => void): boolean;
};

/** Lines of the conversation that a glass is shown at its opening. */
const FIRST_LINES = 60;

/** Serves a glass until either side hangs up. */
export function serveGlass(socket: Socket, hello: string, rest: string, parts: GlassParts): void {
  const glass = new ServedGlass(socket, helloIn(hello), parts);
  socket.setEncoding("utf8");
  const cut = lineCutter(
    LONGEST_TYPED,
    (line) => glass.typed(line),
    () => socket.destroy(),
  );
  socket.on("data", cut);
  socket.on("end", () => socket.destroy());
  socket.on("close", () => glass.stop());
  glass.start();
  cut(rest);
}

class ServedGlass {
  private readonly socket: Socket;
  private readonly parts: GlassParts;
  private readonly kind: "view" | "lines";
  private lastLine: Line | undefined;
  private lastSent = "";
  private ticking: NodeJS.Timeout | undefined;
  private stopListening = () => {};
  /** Something is to be sent once the glass has taken what it was sent. */
  private behind = false;

  constructor(socket: Socket, hello: Hello, parts: GlassParts) {
    this.socket = socket;
    this.parts = parts;
    this.kind = hello.plain || hello.build !== parts.build ? "lines" : "view";
  }

  start(): void {
    this.socket.on("drain", () => {
      if (this.behind) this.show();
    });
    this.stopListening = this.parts.host.onChange(() => this.show());
    this.show(true);
    this.tick();
  }

  stop(): void {
    clearTimeout(this.ticking);
    this.stopListening();
  }

  typed(line: string): void {
    const typed = typedIn(line);
    if (!typed) return;
    const { host } = this.parts;
    const left = this.parts.take(() => {
      if ("press" in typed) host.press();
      else if (oneLine(typed.hear) !== "") host.hear(oneLine(typed.hear));
    });
    if (left) this.socket.end(`${JSON.stringify({ ...this.seen(), left })}\n`);
    else this.show();
  }

  private tick(): void {
    if (this.kind === "lines") return;
    const wait = 1000 - (Math.floor(this.parts.host.now()) % 1000);
    this.ticking = setTimeout(() => {
      this.show();
      this.tick();
    }, wait + 1);
  }

  /** Sends what is to be seen; while the glass has not taken the last, only that it is behind. */
  private show(first = false): void {
    if (this.socket.destroyed || this.socket.writableEnded) return;
    this.behind = this.socket.writableLength > 0;
    if (this.behind) return;
    const seen = this.seen();
    const { now: _now, ...rest } = seen;
    const text = JSON.stringify(rest);
    if (text === this.lastSent) return;
    this.lastSent = seen.lines.length > 0 ? "" : text;
    const opening = first ? { kind: this.kind } : {};
    this.socket.write(`${JSON.stringify({ ...opening, ...seen })}\n`);
  }

  private seen(): Seen {
    const { host, zone } = this.parts;
    const seen = {
      now: host.now(),
      zone: zone(),
      lines: this.newLines(),
      running: host.running(),
    };
    if (this.kind === "lines") return seen;
    const view = host.view({ input: { text: "", cursor: 0 } });
    return { ...seen, view, keys: host.labeledKeys() };
  }

  private newLines(): Line[] {
    const { lines } = this.parts.host;
    const from = this.lastLine ? lines.lastIndexOf(this.lastLine) + 1 : -FIRST_LINES;
    this.lastLine = lines.at(-1) ?? this.lastLine;
    return lines.slice(from);
  }
}
