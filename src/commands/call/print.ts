/** Where every command's output leaves the program. */
import { fstatSync, writeSync } from "node:fs";
import { safeLine } from "./safe-output.ts";

let toFile: boolean | undefined;

/**
 * Writes text to standard output, all of it or with an error on the stream: of a file on a disk
 * that fills up meanwhile, Node takes the part that was written for the whole.
 */
export function printText(text: string): void {
  toFile ??= fstatSync(1).isFile();
  if (!toFile) {
    process.stdout.write(text);
    return;
  }
  const bytes = Buffer.from(text);
  try {
    for (let done = 0; done < bytes.length; ) done += writeSync(1, bytes, done);
  } catch (error) {
    process.stdout.emit("error", error);
  }
}

/** One line on standard output, with nothing in it that controls a terminal. */
export function printLine(line: string): void {
  printText(`${safeLine(line)}\n`);
}

/** One line on standard error, with nothing in it that controls a terminal. */
export function complain(line: string): void {
  process.stderr.write(`${safeLine(line)}\n`);
}
