/** The same session as lines: for a pipe, for a screen reader, or for those who prefer it. */
import type { Line, LineKind } from "../ports/view.ts";
import type { Outlet } from "./outlet.ts";
import { printable } from "./printable.ts";
import type { FaceEnd, ScreenHost, ScreenIo } from "./screen-host.ts";
import { isGone } from "./terminal.ts";

/** The kind of each line, in a word that can be read aloud. */
export const PREFIX: Record<LineKind, string> = {
  heard: "you said",
  answer: "answer",
  prompt: "to do",
  alarm: "alarm",
  asked: "question",
  refused: "refused",
  notice: "note",
};

/** `14:03 question: Are the lids covered …?` */
export function plainText(line: Line, time: string): string {
  return `${time} ${PREFIX[line.kind]}: ${printable(line.text)}`;
}

/** Prints what is said and takes lines until the input ends; then says what keeps running. */
export async function runPlain(
  host: ScreenHost,
  io: ScreenIo,
  options: { ended?: Promise<unknown> } = {},
): Promise<FaceEnd> {
  const { stdin, stdout, outlet } = io;
  const interactive = Boolean(stdin.isTTY);
  const seen = new WeakSet<Line>();
  const printer = new Printer(outlet);
  let typing = false;
  const print = () => {
    for (const line of host.lines) {
      if (seen.has(line)) continue;
      seen.add(line);
      // Whoever typed it has it on the screen already.
      if (typing && interactive && line.kind === "heard") continue;
      printer.print(plainText(line, host.timeOf(line.wallMs)));
    }
  };
  const hear = (text: string) => {
    const words = text.replace(/[\u0000-\u001f\u007f-\u009f]+/g, " ").trim();
    if (words === "" && !interactive) return;
    typing = true;
    if (words === "") host.press();
    else host.hear(words);
    print();
    typing = false;
  };
  print();
  if (interactive && host.running().length === 0) printer.print(HOW_TO_BEGIN);
  const stopListening = host.onChange(print);
  const lost = new Promise<FaceEnd>((resolve) => {
    // A reader that closes a pipe has only had enough.
    outlet.onLost(() => resolve(stdout.isTTY ? "lost" : "closed"));
    void options.ended?.then((how) => resolve(how === "lost" ? "lost" : "closed"));
  });
  const over = eachLine(stdin, hear, () => host.left());
  const how = await Promise.race([over.ended, lost]);
  over.stop();
  stopListening();
  // A hang-up ends the pipes to and from a terminal's other programs as well, in any order.
  if (how === "lost" || [stdin, stdout].some(isGone)) return "lost";
  for (const line of host.farewell()) printer.print(printable(line));
  await printer.finish(interactive);
  return "closed";
}

/** Lines that wait for an output that takes none; older ones give way. */
const MOST_WAITING = 1000;
/** How long a terminal has to take the last lines, ms. */
const LAST_LINES_MS = 400;

/** Hands lines over as the output takes them. */
class Printer {
  private readonly outlet: Outlet;
  private waiting: string[] = [];
  private leftOut = 0;

  constructor(outlet: Outlet) {
    this.outlet = outlet;
  }

  print(line: string): void {
    this.waiting.push(`${line}\n`);
    if (this.waiting.length > MOST_WAITING) {
      this.waiting.shift();
      this.leftOut += 1;
    }
    if (!this.outlet.waiting) this.push();
    else if (this.waiting.length === 1) this.outlet.whenFree(() => this.push());
  }

  /** The last lines: a pipe gets all of them in its time, a stalled terminal does not. */
  async finish(terminal: boolean): Promise<void> {
    this.push();
    if (terminal) await this.outlet.drained(LAST_LINES_MS);
  }

  private push(): void {
    const { leftOut } = this;
    const gap = leftOut > 0 ? `(${leftOut} lines were left out here)\n` : "";
    const text = gap + this.waiting.join("");
    this.waiting = [];
    this.leftOut = 0;
    if (text !== "") this.outlet.write(text);
  }
}

const HOW_TO_BEGIN =
  "Type what you want to make, such as: start the dilly beans. help says what you can tell me. " +
  "An empty Enter reports the work in hand as done. Follow a current tested recipe and your " +
  "local extension service; this program keeps the record, it cannot see the jar.";

/** A line without an end is handed on at this length, so that nothing grows without bound. */
const LONGEST_LINE = 100_000;

/** Calls with every line until the input ends or fails, or it is over; a last may lack its end. */
function eachLine(
  stdin: NodeJS.ReadStream,
  hear: (line: string) => void,
  isOver: () => boolean,
): { ended: Promise<"over" | "ended">; stop(): void } {
  let stop = () => {};
  const ended = new Promise<"over" | "ended">((resolve) => {
    let rest = "";
    const onData = (chunk: string | Buffer) => {
      const lines = (rest + String(chunk)).split(/\r\n|\n/);
      rest = lines.pop() ?? "";
      for (const line of lines) {
        hear(line);
        if (!isOver()) continue;
        return over("over");
      }
      if (rest.length > LONGEST_LINE) rest = "";
    };
    const over = (how: "over" | "ended") => {
      stdin.off("data", onData).off("end", onEnd);
      stdin.pause();
      resolve(how);
    };
    stop = () => over("over");
    const onEnd = () => {
      if (rest.trim() !== "") hear(rest);
      over("ended");
    };
    stdin.setEncoding("utf8");
    stdin.on("data", onData).on("end", onEnd).on("error", onEnd);
  });
  return { ended, stop: () => stop() };
}
