/** The kitchen on a terminal: draws what is, takes keys, and puts the terminal back at the end. */
import { InputControl } from "./input-control.ts";
import { KeyReader } from "./key-reader.ts";
import { lineOf } from "./line-editor.ts";
import { Painter } from "./painter.tsx";
import { printable } from "./printable.ts";
import type { FaceEnd, ScreenHost, ScreenIo } from "./screen-host.ts";

/** A terminal gets so long to take the last page and the lines that stay on it, ms. */
const LEAVE_MS = 400;
/** An Escape that nothing follows within this is the key itself, ms. */
const ESCAPE_MS = 50;

type ScreenOptions = {
  /** A rehearsal: Ctrl-C closes at once, and so does a q alone on a line. */
  rehearsal?: boolean;
  /** Steps between two looks, ms; a second in step with the kitchen's where nothing is said. */
  everyMs?: number;
  /** Ends the screen from outside; as lost, where that is what it resolves with. */
  ended?: Promise<unknown>;
};

/**
 * Shows the kitchen until the person closes it or the terminal is gone; the terminal, where it
 * takes anything, is as before when it resolves.
 */
export async function runScreen(
  host: ScreenHost,
  io: ScreenIo,
  options: ScreenOptions = {},
): Promise<FaceEnd> {
  return new Screen(host, io, options).run();
}

class Screen {
  private readonly host: ScreenHost;
  private readonly io: ScreenIo;
  private readonly options: ScreenOptions;
  private readonly painter: Painter;
  private readonly reader = new KeyReader();
  private readonly input: InputControl;
  private hint: string | undefined;
  /** Rows back from the end of the talk, while it is open. */
  private talkBack: number | undefined;
  private ticking: NodeJS.Timeout | undefined;
  private escaping: NodeJS.Timeout | undefined;
  private stopped = false;
  private end: (how: FaceEnd) => void = () => {};

  constructor(host: ScreenHost, io: ScreenIo, options: ScreenOptions) {
    this.host = host;
    this.io = io;
    this.options = options;
    this.painter = new Painter(io);
    this.input = new InputControl({
      say: (words) => this.say(words),
      press: () => this.host.press(),
      labeled: () => this.host.labeledKeys(),
      interrupt: () => this.interrupt(),
      suspend: () => void this.suspend(),
      repaint: () => this.painter.forget(),
      talk: (key) => this.talk(key),
      nowMs: () => performance.now(),
    });
  }

  async run(): Promise<FaceEnd> {
    const ended = new Promise<FaceEnd>((resolve) => {
      this.end = resolve;
    });
    void this.options.ended?.then((how) => this.end(how === "lost" ? "lost" : "closed"));
    const stopWatching = this.watch();
    let how: FaceEnd = "closed";
    try {
      how = await ended;
    } finally {
      clearTimeout(this.ticking);
      clearTimeout(this.escaping);
      stopWatching();
      this.painter.close();
    }
    if (how === "lost") return how;
    for (const line of this.host.farewell()) {
      this.painter.terminal.write(`${printable(line)}\n`);
    }
    await this.io.outlet.drained(LEAVE_MS);
    return how;
  }

  /** Opens the page and follows keys, window and kitchen; the function returned lets them go. */
  private watch(): () => void {
    const { stdin, stdout } = this.io;
    const onData = (chunk: string | Buffer) => this.keys(String(chunk));
    const onEnd = () => this.end("lost");
    const onResize = () => this.paint();
    const onContinue = () => this.continued();
    this.painter.open();
    this.paint();
    const stopListening = this.host.onChange(() => this.paint());
    stdin.setEncoding("utf8");
    stdin.on("data", onData).on("end", onEnd).on("error", onEnd);
    stdin.resume();
    stdout.on("resize", onResize);
    this.io.outlet.onLost(onEnd);
    process.on("SIGCONT", onContinue);
    this.tick();
    return () => {
      stopListening();
      stdin.off("data", onData).off("end", onEnd);
      stdin.pause();
      stdout.off("resize", onResize);
      process.off("SIGCONT", onContinue);
    };
  }

  private say(words: string): void {
    if (this.options.rehearsal && words === "q") this.end("closed");
    else this.host.hear(words);
  }

  private paint(): void {
    if (this.host.left()) this.end("closed");
    if (this.stopped) return;
    const { editor } = this.input;
    const view = this.host.view({
      input: { text: lineOf(editor), cursor: editor.cursor },
      ...(this.hint === undefined ? {} : { hint: this.hint }),
      ...(this.talkBack === undefined ? {} : { talkBack: this.talkBack }),
    });
    this.painter.paint(view, () => this.paint());
  }

  /** Once a second, in step with the kitchen's own seconds. */
  private tick(): void {
    const wait = this.options.everyMs ?? 1000 - (Math.floor(this.host.now()) % 1000);
    this.ticking = setTimeout(() => {
      this.paint();
      this.tick();
    }, wait + 1);
  }

  private keys(chunk: string): void {
    clearTimeout(this.escaping);
    const hint = this.hint;
    this.input.take(this.reader.push(chunk));
    if (this.reader.waits) {
      this.escaping = setTimeout(() => {
        this.input.take(this.reader.settle());
        this.paint();
      }, ESCAPE_MS);
    }
    // Anything else than asking again takes the hint away.
    if (hint !== undefined && this.hint === hint) this.hint = undefined;
    this.paint();
  }

  private talk(key: "talk" | "page-up" | "page-down" | "escape"): boolean {
    const back = this.talkBack;
    const page = Math.max(1, Math.floor(this.painter.terminal.size.rows / 2));
    if (key === "talk") this.talkBack = back === undefined ? 0 : undefined;
    else if (back === undefined) return false;
    else if (key === "escape") this.talkBack = undefined;
    else this.talkBack = Math.max(0, back + (key === "page-up" ? page : -page));
    return true;
  }

  private interrupt(): void {
    const list = this.host.running();
    if (list.length === 0 || this.hint !== undefined || this.options.rehearsal) {
      this.end("closed");
      return;
    }
    const more = list.length > 1 ? ` and ${list.length - 1} more` : "";
    this.hint = `Running: ${list[0]}${more}. Ctrl-C again closes; the clocks are kept.`;
  }

  private async suspend(): Promise<void> {
    if (this.stopped) return;
    const needed = this.host.needed();
    if (needed !== undefined) {
      this.hint = `Not stopped: ${needed}, and a stopped program keeps no clock.`;
      return;
    }
    this.painter.forget();
    this.stopped = true;
    await this.painter.terminal.stop();
    if (this.stopped) this.continued();
  }

  private continued(): void {
    this.painter.forget();
    this.stopped = false;
    this.painter.terminal.again();
    this.paint();
  }
}
