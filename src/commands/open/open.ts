/** `brinebell`: opens the kitchen on the screen or as lines, or talks to one that is open. */

import { createInterface } from "node:readline";
import { type LiveKitchen, openLiveKitchen } from "../../session/live-kitchen.ts";
import { screenHost } from "../../session/screen-host.ts";
import { type TellReply, tell } from "../../session/tell/tell-client.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { isOn, type Options, optionValue, parseOptions } from "../call/options.ts";
import type { Machine } from "../machine.ts";

/** A kitchen of the same moment is given so long to listen: three seconds in all. */
const TELL_TRIES = 20;
const TELL_AGAIN_MS = 150;

export async function openCommand(
  args: string[],
  machine: Machine,
): Promise<CommandResult | number> {
  const parsed = parseOptions(args, CALLS.open.options);
  if (!parsed.ok) return failed(2, parsed.error);
  const options = parsed.value;
  const [word] = options.words;
  if (word !== undefined) return failed(2, `there is no command ${JSON.stringify(word)}`);
  const terminal = process.stdin.isTTY && process.stdout.isTTY && process.env.TERM !== "dumb";
  const plain = isOn(options, "plain") || !terminal;
  // The screen loads while the recipes and the journal are read.
  const screen = plain ? undefined : import("../../screen/run-screen.tsx");
  const opened = await openLiveKitchen({
    folder: machine.folder,
    library: await machine.library(),
    version: machine.version,
    ring: (text) => {
      if (process.stdout.isTTY) process.stdout.write(text);
    },
    speaks: !isOn(options, "silent"),
  });
  if (!opened.ok) {
    if (opened.why === "held") return talkToTheOther(machine, opened.message);
    return failed(3, `${machine.folder}: ${opened.message}`);
  }
  const { kitchen } = opened;
  const probePath = optionValue(options, "probe");
  const probe =
    probePath === undefined
      ? undefined
      : (await import("../../session/probe/start-probe.ts")).startProbe(
          kitchen,
          probePath,
          process.stdin,
        );
  const close = closer(kitchen, () => probe?.stop());
  catchSignals(close);
  const stopListening = isOn(options, "listen") ? await listen(kitchen, options) : undefined;
  const host = screenHost(kitchen);
  const io = { stdin: probe?.words ?? process.stdin, stdout: process.stdout };
  if (screen) await (await screen).runScreen(host, io);
  else await (await import("../../screen/plain.ts")).runPlain(host, io);
  await stopListening?.();
  await close();
  if (!kitchen.session.notRecorded) return 0;
  return failed(3, `${machine.folder}: what was said here is not all recorded`);
}

/** Listens to the microphone, or with `--sound FILE` to raw sound from a file or a pipe. */
async function listen(kitchen: LiveKitchen, options: Options): Promise<() => Promise<void>> {
  const { startListening, wakeWordsOf } = await import("../../session/listening/listening.ts");
  const searchPath = process.env.PATH ?? "";
  const sound = optionValue(options, "sound");
  const source =
    sound === undefined
      ? ({ from: "microphone", searchPath } as const)
      : ({ from: "file", path: sound, paced: true } as const);
  const wakeWords = wakeWordsOf(optionValue(options, "wake-words"));
  return startListening(kitchen, { wakeWords, source, searchPath });
}

/** Closes once, whoever asks first. */
function closer(kitchen: LiveKitchen, before: () => void): () => Promise<void> {
  let closing: Promise<void> | undefined;
  return () => {
    if (!closing) {
      before();
      closing = kitchen.close();
    }
    return closing;
  };
}

/**
 * The terminal going away, or being asked to end (Ctrl-C where lines are typed), closes the log in
 * order.
 */
function catchSignals(close: () => Promise<void>): void {
  for (const [signal, status] of [
    ["SIGINT", 130],
    ["SIGTERM", 143],
    ["SIGHUP", 129],
  ] as const) {
    process.on(signal, () => {
      void close().finally(() => process.exit(status));
    });
  }
  // A fault of ours ends the program in order: no clock is lost, and nothing is guessed at.
  for (const fault of ["uncaughtException", "unhandledRejection"] as const) {
    process.on(fault, (error: unknown) => {
      const reason = error instanceof Error ? error.message : String(error);
      process.stderr.write(`brinebell: it broke (${reason}); open it again, the clocks are kept\n`);
      void close().finally(() => process.exit(1));
    });
  }
  // A terminal that is gone cannot be written to; the log still can.
  for (const stream of [process.stdout, process.stderr]) {
    stream.on("error", () => {
      void close().finally(() => process.exit(0));
    });
  }
}

/** A kitchen that was opened at the same moment may not listen to others yet. */
async function tellSoon(machine: Machine, words: string): Promise<TellReply> {
  for (let left = TELL_TRIES; ; left--) {
    const reply = await tell(machine.folder, words);
    if (reply.ok || reply.why !== "no-kitchen" || left === 0) return reply;
    await new Promise((resolve) => setTimeout(resolve, TELL_AGAIN_MS));
  }
}

/** A second program on the same data hands its words to the first. */
async function talkToTheOther(machine: Machine, why: string): Promise<number> {
  process.stderr.write(`brinebell: ${why}\nWhat you type here goes to that kitchen.\n`);
  let status = 0;
  for await (const line of createInterface({ input: process.stdin })) {
    const words = line.trim();
    if (words === "") continue;
    const reply = await tellSoon(machine, words);
    if (!reply.ok) {
      process.stderr.write(`brinebell: ${reply.message}\n`);
      status = 3;
      continue;
    }
    for (const answer of reply.lines) process.stdout.write(`${answer}\n`);
  }
  return status;
}
