/** The same session as lines: for a pipe, a screen reader, or who prefers it. */
import type { Line, LineKind } from "../ports/view.ts";
import { printable } from "./printable.ts";
import type { ScreenHost, ScreenIo } from "./screen-host.ts";

/** What each line is, in a word that can be read aloud. */
const PREFIX: Record<LineKind, string> = {
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

/** Prints what is said and hears lines until the input ends; then tells what runs on. */
export async function runPlain(host: ScreenHost, io: ScreenIo): Promise<void> {
  const { stdin, stdout } = io;
  const interactive = Boolean(stdin.isTTY);
  const seen = new WeakSet<Line>();
  let typing = false;
  const print = () => {
    for (const line of host.lines) {
      if (seen.has(line)) continue;
      seen.add(line);
      // Who typed it has it on the screen already.
      if (typing && interactive && line.kind === "heard") continue;
      write(stdout, `${plainText(line, host.timeOf(line.wallMs))}\n`);
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
  if (interactive && host.running().length === 0) write(stdout, `${HOW_TO_BEGIN}\n`);
  const stopListening = host.onChange(print);
  await eachLine(stdin, hear, () => host.left());
  stopListening();
  for (const line of host.farewell()) write(stdout, `${printable(line)}\n`);
}

const HOW_TO_BEGIN =
  "Type what you want to make, such as: start the dilly beans. help says what you can tell me. " +
  "An empty Enter reports the work in hand as done. Follow a current tested recipe and your " +
  "local extension service; this program keeps the record, it cannot see the jar.";

function write(stdout: NodeJS.WriteStream, text: string): void {
  if (!stdout.destroyed && !stdout.writableEnded) stdout.write(text);
}

/** A line without an end is handed on at this length, so that nothing grows without bound. */
const LONGEST_LINE = 100_000;

/** Calls with every line until the input ends or fails, or it is over; a last may lack its end. */
function eachLine(
  stdin: NodeJS.ReadStream,
  hear: (line: string) => void,
  isOver: () => boolean,
): Promise<void> {
  return new Promise((resolve) => {
    let rest = "";
    const onData = (chunk: string | Buffer) => {
      const lines = (rest + String(chunk)).split(/\r\n|\n/);
      rest = lines.pop() ?? "";
      for (const line of lines) {
        hear(line);
        if (!isOver()) continue;
        stdin.pause();
        return over();
      }
      if (rest.length > LONGEST_LINE) rest = "";
    };
    const over = () => {
      stdin.off("data", onData).off("end", onEnd).off("error", onEnd);
      resolve();
    };
    const onEnd = () => {
      if (rest.trim() !== "") hear(rest);
      over();
    };
    stdin.setEncoding("utf8");
    stdin.on("data", onData).on("end", onEnd).on("error", onEnd);
  });
}
