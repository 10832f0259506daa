/** `brinebell watch`: keeps the reminders while no kitchen is open. */
import { resolve } from "node:path";
import { realDisk } from "../../journal/real-disk.ts";
import { isoWithOffset } from "../../kitchen/time.ts";
import type { Clock } from "../../ports/clock.ts";
import type { Library } from "../../recipe/library.ts";
import { Announcer } from "../../session/announcer.ts";
import { desktopNotice } from "../../session/desktop-notice.ts";
import { realClock } from "../../session/time/real-clock.ts";
import { Watch, type WatchFinding } from "../../session/watch/watch.ts";
import { takeWatch } from "../../session/watch/watch-lock.ts";
import { chooseVoice } from "../../voice/speaking/choose-voice.ts";
import { Speaker } from "../../voice/speaking/speaker.ts";
import { terminalBell } from "../../voice/speaking/terminal-bell.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { isOn, optionValue, parseOptions } from "../call/options.ts";
import { needsKitchen } from "../needs-kitchen.ts";
import { printed } from "../record/review-io.ts";
import { startWatch, stopWatch, watchedBy, watchStatus } from "./watch-control.ts";
import { type WatchCall, watchUnit } from "./watch-units.ts";

type WatchIo = {
  folder: string;
  /** True where the person named the folder. */
  chosen: boolean;
  /** How this program is called: Node, and the program's file. */
  program: readonly [string, ...string[]];
  version: string;
  library(): Promise<Library>;
  out(line: string): void;
  err(line: string): void;
  ring(text: string): void;
  platform: NodeJS.Platform;
  env: Readonly<Record<string, string | undefined>>;
  /** Settles when the person ends the program. */
  ended: Promise<void>;
};

/** What a call may ask for besides watching; one of them at a time. */
const ACTS = ["once", "background", "status", "stop", "unit"] as const;

/**
 * Watches until it is ended, or does what the call asks for instead. The exit status: 0 done, 1
 * refused, or nobody watches; 2 wrong usage; 3 the journal cannot be read or written.
 */
export async function watchCommand(args: string[], io: WatchIo): Promise<number | CommandResult> {
  const parsed = parseOptions(args, CALLS.watch.options);
  if (!parsed.ok) return failed(2, `watch: ${parsed.error}`);
  const options = parsed.value;
  const [word] = options.words;
  if (word !== undefined) {
    return failed(2, `watch: ${JSON.stringify(word)} is not an option; write brinebell watch`);
  }
  const [act, other] = ACTS.filter((one) => isOn(options, one));
  if (other) return failed(2, `watch: use --${act} or --${other}, not both`);
  const json = isOn(options, "json");
  if (json && (act === undefined || act === "unit")) {
    return failed(2, "watch: --json goes with --once, --background, --status or --stop");
  }
  const silent = isOn(options, "silent");
  if (act === "unit") return unit(optionValue(options, "unit"), callFor(io, silent));
  if (act === "stop") return stopWatch(io.folder, json);
  if (act === "status") return watchStatus(io.folder, json);
  const lacking = needsKitchen("watch", io);
  if (lacking) return lacking;
  if (act === "background") return startWatch(io.folder, callFor(io, silent), json);
  return act === "once" ? watchOnce(io, silent, json) : watchOn(io, silent);
}

/** The call of a watch that is started by something else than a person. */
function callFor({ program, folder }: WatchIo, silent: boolean): WatchCall {
  const [node, ...entry] = program;
  const words = [...entry, "watch", "--home", resolve(folder), ...(silent ? ["--silent"] : [])];
  return { program: node, args: words };
}

function unit(kind: string | undefined, call: WatchCall): CommandResult {
  if (kind !== "systemd" && kind !== "launchd") {
    return failed(2, "watch: --unit: write systemd or launchd");
  }
  const made = watchUnit(kind, call);
  return made.ok ? printed(made.value) : failed(1, `watch: --unit: ${made.error}`);
}

async function watchOnce(io: WatchIo, silent: boolean, json: boolean): Promise<number> {
  const { watch, announcer, clock } = await watchFor(io, silent || json, json);
  const status = await lookOnce(watch, announcer, clock, io, json);
  await leave(announcer);
  return status;
}

/** One watch for a folder; where its lock cannot be written, what is due is announced anyway. */
async function watchOn(io: WatchIo, silent: boolean): Promise<number | CommandResult> {
  const taken = takeWatch(io.folder);
  if (!taken.ok && taken.why === "held") {
    const who = taken.holder ? watchedBy(io.folder, taken.holder) : taken.message;
    return failed(1, `watch: ${who}`);
  }
  if (!taken.ok) io.err(`brinebell watch: ${taken.message}`);
  const { watch, announcer, clock } = await watchFor(io, silent, false);
  const status = await keepWatching(watch, announcer, clock, io, { last: "" });
  await leave(announcer);
  if (taken.ok) taken.lock.release();
  return status;
}

async function watchFor(io: WatchIo, silent: boolean, json: boolean) {
  const clock = realClock();
  const { folder, version } = io;
  const library = await io.library();
  const watch = new Watch({ clock, disk: realDisk(), folder, library, version });
  return { watch, announcer: announcerFor(io, clock, silent, json), clock };
}

async function leave({ parts: { voice } }: Announcer): Promise<void> {
  await voice?.idle();
  await voice?.close();
}

function announcerFor(io: WatchIo, clock: Clock, silent: boolean, json: boolean): Announcer {
  const { platform } = io;
  const searchPath = io.env.PATH ?? "";
  const bell = terminalBell(io.ring);
  const { engine, advice } = silent
    ? { engine: undefined, advice: "" }
    : chooseVoice({ platform, searchPath });
  const voice = engine
    ? new Speaker({ engine, bell, clock, advice, onProblem: (text) => io.err(text) })
    : undefined;
  return new Announcer({
    print: json ? () => {} : io.out,
    notice: json ? undefined : desktopNotice(platform, searchPath, io.env),
    voice,
    bell: json || silent ? { ring: () => {} } : bell,
  });
}

async function tellOf(look: WatchFinding, announcer: Announcer, clock: Clock): Promise<void> {
  if (look.kind !== "told") return;
  const { wallMs, zone } = clock.read();
  await announcer.announce({ told: look.told, hushed: look.hushed, wallMs, zone });
}

async function lookOnce(
  watch: Watch,
  announcer: Announcer,
  clock: Clock,
  io: WatchIo,
  json: boolean,
): Promise<number> {
  // What is written down afterward could hide that something is missing.
  const { notices, incomplete } = watch.found;
  const look = watch.look();
  if (look.kind === "unreadable") {
    io.err(`brinebell watch: ${look.message}`);
    return 3;
  }
  for (const notice of notices) io.err(`brinebell watch: ${notice}`);
  await tellOf(look, announcer, clock);
  const told = look.kind === "told" ? look.told : [];
  if (json) {
    const { zone } = clock.read();
    const list = told.map(({ key, at, text }) => ({
      key,
      at: isoWithOffset(Math.round(at), zone),
      text,
    }));
    io.out(JSON.stringify({ kitchenOpen: look.kind === "kitchen-open", told: list }));
  } else if (look.kind === "kitchen-open") {
    io.out("A kitchen is open; it keeps the reminders.");
  } else if (look.kind === "quiet") {
    io.out("Nothing is due now.");
  }
  if (look.kind !== "told" || look.notRecorded === undefined) return incomplete ? 3 : 0;
  io.err(`brinebell watch: ${notRecorded(look.notRecorded)}`);
  return 3;
}

function notRecorded(message: string): string {
  return `announced, but not written down, so it may be announced again: ${message}`;
}

async function keepWatching(
  watch: Watch,
  announcer: Announcer,
  clock: Clock,
  io: WatchIo,
  trouble: { last: string },
): Promise<number> {
  io.out(`Watching ${io.folder}. Ctrl-C ends it.`);
  watch.start((look) => {
    void tellOf(look, announcer, clock);
    const message =
      look.kind === "unreadable"
        ? look.message
        : look.kind === "told" && look.notRecorded !== undefined
          ? notRecorded(look.notRecorded)
          : watch.found.notices.join("; ");
    if (message && message !== trouble.last) io.err(`brinebell watch: ${message}`);
    trouble.last = message;
  });
  await io.ended;
  watch.stop();
  return 0;
}
