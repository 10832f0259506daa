/** `brinebell`: opens the kitchen on the screen or as lines, or talks to one that is open. */

import { closeSync, openSync } from "node:fs";
import { devNull } from "node:os";
import { waitedFor } from "../../kitchen/watched.ts";
import { outletOf } from "../../screen/outlet.ts";
import { keepPrivate } from "../../session/data-folder.ts";
import { desktopNotice } from "../../session/desktop-notice.ts";
import { type LiveKitchen, openLiveKitchen } from "../../session/live-kitchen.ts";
import { screenHost } from "../../session/shown-kitchen.ts";
import { goOnWithoutFace, mayNotEnd } from "../../session/without-face.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { isOn, type Options, optionValue, parseOptions } from "../call/options.ts";
import { safeLine } from "../call/safe-output.ts";
import type { Machine } from "../machine.ts";
import { glassSoon, lookThrough, talkToTheOther } from "./glass.ts";

/** A terminal without job control never stops the program: known after this long, ms. */
const STOP_WAIT_MS = 200;
/** How long a terminal has to take the reason why the program ends, ms. */
const LAST_WORD_MS = 300;

export async function openCommand(
  args: string[],
  machine: Machine,
): Promise<CommandResult | number> {
  const parsed = parseOptions(args, CALLS.open.options);
  if (!parsed.ok) return failed(2, parsed.error);
  const options = parsed.value;
  const [word] = options.words;
  if (word !== undefined) return failed(2, `there is no command ${JSON.stringify(word)}`);
  const { stdin, stdout } = process;
  const terminal = Boolean(stdin.isTTY && stdout.isTTY);
  const plain = isOn(options, "plain") || !terminal || process.env.TERM === "dumb";
  // The screen loads while the recipes and the journal are read.
  const screen = plain ? undefined : import("../../screen/run-screen.tsx");
  const outlet = outletOf(stdout);
  // Signals may come at any time, also before anything is open.
  let close = async () => {};
  const ended = catchSignals(() => close(), Boolean(stdin.isTTY || stdout.isTTY));
  const library = await machine.library();
  const opening = openLiveKitchen({
    folder: machine.folder,
    library,
    version: machine.version,
    build: machine.build,
    ring: (text) => {
      if (stdout.isTTY && !outlet.waiting) outlet.write(text);
    },
    speaks: !isOn(options, "silent"),
    welcomes: Boolean(stdin.isTTY),
  });
  close = async () => {
    const early = await opening;
    if (early.ok) await early.kitchen.close();
  };
  const opened = await opening;
  if (!opened.ok && opened.why === "held") {
    const glass = terminal ? await glassSoon(machine, isOn(options, "plain")) : undefined;
    if (glass) return lookThrough(glass, { stdin, stdout, outlet }, ended);
    void ended.then(() => process.exit(129));
    return talkToTheOther(machine, opened.message);
  }
  if (!opened.ok) return failed(3, `${machine.folder}: ${opened.message}`);
  const { kitchen } = opened;
  tellIfShared(kitchen, machine);
  const probe = await probeFor(kitchen, optionValue(options, "probe"));
  close = closer(kitchen, () => probe?.stop());
  const stopListening = isOn(options, "listen") ? await listen(kitchen, options) : undefined;
  const io = { stdin: probe?.words ?? stdin, stdout, outlet };
  refuseStops(kitchen);
  const show = screen ? (await screen).runScreen : (await import("../../screen/plain.ts")).runPlain;
  const face = await show(screenHost(kitchen), io, { ended });
  // With the terminal gone, nobody sees what is heard, so nothing is listened to.
  await stopListening?.();
  if (face === "lost") {
    letGo();
    if (mayNotEnd(kitchen)) await withoutFace(kitchen);
  }
  await close();
  return endedWith(kitchen, machine.folder, stdout.isTTY ? undefined : outlet.lostBy);
}

async function probeFor(kitchen: LiveKitchen, path: string | undefined) {
  if (path === undefined) return undefined;
  const { startProbe } = await import("../../session/probe/start-probe.ts");
  return startProbe(kitchen, path, process.stdin);
}

/** The exit status, with a last word where something was not written. */
async function endedWith(
  { session }: LiveKitchen,
  folder: string,
  lostBy: string | undefined,
): Promise<number> {
  // A reader that closed its end has had enough.
  const fault =
    lostBy !== undefined && lostBy !== "EPIPE"
      ? `the output cannot be written: ${lostBy}`
      : session.notRecorded && `${folder}: what was said here is not all recorded`;
  if (fault) await complain(fault);
  return fault ? 3 : 0;
}

/**
 * Puts nothing in the place of a terminal that is gone: Node, which would set it back at the end,
 * aborts where it cannot.
 */
function letGo(): void {
  for (const descriptor of [0, 1, 2]) {
    closeSync(descriptor);
    openSync(devNull, descriptor === 0 ? "r" : "w");
  }
}

function withoutFace(kitchen: LiveKitchen): Promise<void> {
  const notice = desktopNotice(process.platform, process.env.PATH ?? "", process.env);
  return goOnWithoutFace({ kitchen, notice, nowMs: () => performance.now() });
}

function tellIfShared(kitchen: LiveKitchen, { chosen, folder }: Machine): void {
  const shared = keepPrivate(folder, chosen);
  if (shared !== undefined) kitchen.session.notice(shared);
}

/** A last word to the terminal, which is not waited for. */
async function complain(message: string): Promise<void> {
  const outlet = outletOf(process.stderr);
  outlet.write(`brinebell: ${safeLine(message)}\n`);
  if (process.stderr.isTTY) await outlet.drained(LAST_WORD_MS);
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
 * Being asked to end (Ctrl-C where lines are typed) closes the log in order; the promise resolves
 * where the terminal was hung up.
 */
function catchSignals(close: () => Promise<void>, terminal: boolean): Promise<"lost"> {
  const closeAnd = (status: number) => void close().finally(() => process.exit(status));
  process.on("SIGINT", () => closeAnd(130));
  process.on("SIGTERM", () => closeAnd(143));
  // A fault of ours ends the program in order: no clock is lost, and nothing is guessed at.
  for (const fault of ["uncaughtException", "unhandledRejection"] as const) {
    process.on(fault, (error: unknown) => {
      const reason = error instanceof Error ? error.message : String(error);
      void complain(`it broke (${reason}); open it again, the clocks are kept`);
      closeAnd(1);
    });
  }
  // A failed write is handled where it is written; unhandled, the event would end the program.
  for (const stream of [process.stdout, process.stderr]) stream.on("error", () => {});
  return new Promise((resolve) => {
    process.on("SIGHUP", () => (terminal ? resolve("lost") : closeAnd(129)));
  });
}

/** A program that keeps a clock is never stopped (Ctrl-Z): stopped, it would ring nothing. */
function refuseStops(kitchen: LiveKitchen): void {
  if (process.platform === "win32") return;
  const onStop = () => {
    const needed = waitedFor(kitchen.session.state);
    if (needed !== undefined) {
      kitchen.session.notice(`Not stopped: ${needed}, and a stopped program keeps no clock.`);
      return;
    }
    process.off("SIGTSTP", onStop);
    const again = () => void process.on("SIGTSTP", onStop);
    const late = setTimeout(again, STOP_WAIT_MS);
    process.once("SIGCONT", () => {
      clearTimeout(late);
      if (process.listenerCount("SIGTSTP") === 0) again();
    });
    process.kill(process.pid, "SIGTSTP");
  };
  process.on("SIGTSTP", onStop);
}
