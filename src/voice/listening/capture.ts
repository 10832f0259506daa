import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { createReadStream } from "node:fs";
import type { Readable } from "node:stream";
import { setTimeout as wait } from "node:timers/promises";
import { findProgram } from "../find-program.ts";
import { SAMPLE_RATE } from "./sample-rate.ts";

/** Where sound comes from. */
export type CaptureSource =
  | { from: "microphone"; searchPath: string }
  /** Raw 16-bit little-endian mono at 16 kHz; paced as if it were spoken, or at full speed. */
  | { from: "file"; path: string; paced: boolean };

type CaptureEvents = {
  onSamples(samples: Int16Array): void;
  /** Called once: the source has ended (`over`), or why it failed. */
  onEnd(end: { over: true } | { over: false; reason: string }): void;
};

export type Capture = { stop(): void };

/** A microphone that gives no sound for this long has gone away, in ms. */
const STALLED_MS = 5_000;

/** How long ffmpeg may take to list the devices, in ms. */
const LISTING_MS = 5_000;

/**
 * The first sound device that ffmpeg lists on Windows, which has no name for the usual one.
 * `listing`: what `-list_devices` prints, in either of its forms, the type beside a name or above.
 */
export function firstSoundDevice(listing: string): string | undefined {
  const below = listing.split("DirectShow audio devices")[1];
  return (/"([^"@]+)"/.exec(below ?? "") ?? /"([^"@]+)" \(audio\)/.exec(listing))?.[1];
}

/** The arguments as they are started: with the device's name where the system wants one. */
function named(program: string, args: string[]): string[] {
  if (!args.includes(DEVICE)) return args;
  const asked = "-hide_banner -list_devices true -f dshow -i dummy".split(" ");
  const { stderr } = spawnSync(program, asked, {
    encoding: "utf8",
    timeout: LISTING_MS,
    windowsHide: true,
  });
  const device = firstSoundDevice(stderr ?? "") ?? "default";
  return args.map((each) => (each === DEVICE ? `audio=${device}` : each));
}

/** Stands for the device until it is known. */
const DEVICE = "audio=?";

/** The programs that record, with their arguments for raw 16 kHz mono. */
const RECORDERS: [string, (platform: NodeJS.Platform) => string[] | undefined][] = [
  ["arecord", () => "-q -t raw -f S16_LE -r 16000 -c 1".split(" ")],
  ["rec", () => "-q -t raw -r 16000 -c 1 -b 16 -e signed-integer -L -".split(" ")],
  [
    "ffmpeg",
    (platform) => {
      const inputs: Partial<Record<NodeJS.Platform, string>> = {
        linux: "-f alsa -i default",
        darwin: "-f avfoundation -i :0",
        win32: `-f dshow -i ${DEVICE}`,
      };
      const input = inputs[platform];
      if (!input) return undefined;
      return `-nostdin -loglevel error ${input} -ar 16000 -ac 1 -f s16le -`.split(" ");
    },
  ],
];

/** The recorder of this system: program and arguments; undefined when there is none. */
export function findRecorder(
  searchPath: string,
  platform: NodeJS.Platform,
): { program: string; args: string[] } | undefined {
  for (const [name, argsFor] of RECORDERS) {
    const program = findProgram([name], searchPath, platform);
    const args = argsFor(platform);
    if (program && args) return { program, args };
  }
  return undefined;
}

/** What is missing before this source can be opened, in words. */
export function recorderMissing(source: CaptureSource): string[] {
  if (source.from === "file" || findRecorder(source.searchPath, process.platform)) return [];
  return ["a program that records"];
}

/** Turns bytes in chunks of any size into whole samples. */
function samplesOf(onSamples: (samples: Int16Array) => void): (chunk: Buffer) => void {
  let odd: Buffer = Buffer.alloc(0);
  return (chunk) => {
    const bytes = odd.length > 0 ? Buffer.concat([odd, chunk]) : chunk;
    const samples = new Int16Array(bytes.length >> 1);
    for (let at = 0; at < samples.length; at++) samples[at] = bytes.readInt16LE(at * 2);
    odd = bytes.length % 2 === 1 ? bytes.subarray(bytes.length - 1) : Buffer.alloc(0);
    if (samples.length > 0) onSamples(samples);
  };
}

/** Begins to record or to read; ends by itself or on `stop`, and reports its end once. */
export function startCapture(source: CaptureSource, events: CaptureEvents): Capture {
  if (source.from === "file") return readFile(source.path, source.paced, events);
  const recorder = findRecorder(source.searchPath, process.platform);
  if (!recorder) {
    queueMicrotask(() => events.onEnd({ over: false, reason: "no program that records" }));
    return { stop: () => {} };
  }
  const args = named(recorder.program, recorder.args);
  const child = spawn(recorder.program, args, { stdio: ["ignore", "pipe", "pipe"] });
  return followRecorder(child, events);
}

function followRecorder(child: ChildProcess, events: CaptureEvents): Capture {
  let ended = false;
  let complaint = "";
  const end = (reason: string) => {
    if (ended) return;
    ended = true;
    clearInterval(watch);
    child.kill("SIGKILL");
    events.onEnd({ over: false, reason });
  };
  let lastMs = performance.now();
  const watch = setInterval(() => {
    if (performance.now() - lastMs > STALLED_MS) end("the microphone gives no sound");
  }, 1000);
  const take = samplesOf(events.onSamples);
  child.on("error", (error) => end(error.message));
  child.stdout?.on("error", () => {});
  child.stderr?.on("error", () => {});
  child.stderr?.on("data", (chunk: Buffer) => {
    if (complaint.length < 1000) complaint += chunk.toString("latin1");
  });
  child.stdout?.on("data", (chunk: Buffer) => {
    lastMs = performance.now();
    if (!ended) take(chunk);
  });
  child.on("close", () => end(lastLine(complaint) || "the recording ended"));
  return {
    stop() {
      ended = true;
      clearInterval(watch);
      child.kill("SIGKILL");
    },
  };
}

function lastLine(text: string): string {
  const lines = text.replace(/[^ -~\n]/g, " ").split("\n");
  return (lines.filter((line) => line.trim() !== "").at(-1) ?? "").trim().slice(0, 200);
}

/** Reads a file or a named pipe; when paced, a chunk of 50 ms every 50 ms. */
function readFile(path: string, paced: boolean, events: CaptureEvents): Capture {
  const stream = createReadStream(path, { highWaterMark: SAMPLE_RATE / 10 });
  const take = samplesOf(events.onSamples);
  let stopped = false;
  const end = (reason?: string) => {
    if (stopped) return;
    stopped = true;
    events.onEnd(reason === undefined ? { over: true } : { over: false, reason });
  };
  const pump = async (input: Readable) => {
    const startedMs = performance.now();
    let bytes = 0;
    for await (const chunk of input) {
      if (stopped) return;
      take(chunk as Buffer);
      bytes += (chunk as Buffer).length;
      const aheadMs = (bytes / 2 / SAMPLE_RATE) * 1000 - (performance.now() - startedMs);
      if (paced && aheadMs > 1) await wait(aheadMs);
    }
  };
  pump(stream).then(
    () => end(),
    (error: Error) => end(error.message),
  );
  return {
    stop() {
      stopped = true;
      stream.destroy();
    },
  };
}
