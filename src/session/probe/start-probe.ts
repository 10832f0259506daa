/** Connects a probe to an open kitchen. */
import { PassThrough } from "node:stream";
import { readProbeLine } from "../../kitchen/probe/probe-line.ts";
import type { LiveKitchen } from "../live-kitchen.ts";
import { realClock } from "../time/real-clock.ts";
import { probeReader } from "./probe-reader.ts";
import { ProbeWatch } from "./probe-watch.ts";

type StartedProbe = {
  /** Where words now come from: with `-`, standard input without the probe's lines. */
  words: NodeJS.ReadStream;
  /** Writes the last readings; before the kitchen is closed. */
  stop(): void;
};

/** @param path a file, a pipe, a serial device, or `-` for lines on standard input. */
export function startProbe(
  kitchen: LiveKitchen,
  path: string,
  stdin: NodeJS.ReadStream,
): StartedProbe {
  const clock = realClock();
  const watch = new ProbeWatch(kitchen.session, clock);
  if (path === "-") {
    const words = split(stdin, kitchen.session.state.zone, (line) => watch.hear(line));
    return { words, stop: () => watch.stop() };
  }
  const reader = probeReader(path, clock);
  reader.start({
    onLine: (line, old) => watch.hear(line, old),
    onProblem: (message) => kitchen.session.notice(message),
    onRecovered: () => kitchen.session.notice(`The probe ${path} reads again.`),
  });
  const stop = () => {
    reader.stop();
    watch.stop();
  };
  return { words: stdin, stop };
}

const LONGEST_LINE = 100_000;

/** Lines that are readings go one way, all others the other. */
function split(
  stdin: NodeJS.ReadStream,
  zone: string,
  hear: (line: string) => void,
): NodeJS.ReadStream {
  const words = new PassThrough();
  let rest = "";
  const take = (line: string) => {
    if (readProbeLine(line, zone)) hear(line);
    else words.write(`${line}\n`);
  };
  stdin.setEncoding("utf8");
  stdin.on("data", (chunk: string) => {
    const lines = (rest + chunk).split(/\r\n|\n/);
    rest = lines.pop() ?? "";
    if (rest.length > LONGEST_LINE) rest = "";
    for (const line of lines) take(line);
  });
  stdin.on("end", () => {
    if (rest !== "") take(rest);
    words.end();
  });
  stdin.on("error", () => words.end());
  return words as unknown as NodeJS.ReadStream;
}
