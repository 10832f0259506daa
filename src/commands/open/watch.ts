/** `brinebell watch`: stays in the background and keeps the reminders. */

import { realDisk } from "../../journal/real-disk.ts";
import { isoWithOffset } from "../../kitchen/time.ts";
import type { Clock } from "../../ports/clock.ts";
import type { Library } from "../../recipe/library.ts";
import { Announcer } from "../../session/announcer.ts";
import { desktopNotice } from "../../session/desktop-notice.ts";
import { realClock } from "../../session/time/real-clock.ts";
import { Watch, type WatchFinding } from "../../session/watch.ts";
import { chooseVoice } from "../../voice/speaking/choose-voice.ts";
import { Speaker } from "../../voice/speaking/speaker.ts";
import { terminalBell } from "../../voice/speaking/terminal-bell.ts";
import { CALLS } from "../call/calls.ts";
import { isOn, parseOptions } from "../call/options.ts";

type WatchIo = {
  folder: string;
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

/**
 * Watches until it is ended, or checks once with `--once`. Returns the exit status: 0 done, 2 wrong
 * usage, 3 the journal cannot be read or written.
 */
export async function watchCommand(args: string[], io: WatchIo): Promise<number> {
  const parsed = parseOptions(args, CALLS.watch.options);
  const complain = (message: string) => io.err(`brinebell watch: ${message}`);
  if (!parsed.ok) {
    complain(parsed.error);
    return 2;
  }
  const options = parsed.value;
  const [word] = options.words;
  const once = isOn(options, "once");
  const json = isOn(options, "json");
  if (word !== undefined || (json && !once)) {
    const what =
      word === undefined ? "--json goes with --once" : `${JSON.stringify(word)} is not an option`;
    complain(`${what}; write brinebell watch, or add --once to check a single time`);
    return 2;
  }
  const clock = realClock();
  const library = await io.library();
  const { folder, version } = io;
  const watch = new Watch({ clock, disk: realDisk(), folder, library, version });
  const announcer = announcerFor(io, clock, isOn(options, "silent") || json, json);
  const trouble = { last: "" };
  const status = once
    ? await lookOnce(watch, announcer, clock, io, json)
    : await keepWatching(watch, announcer, clock, io, trouble);
  await announcer.parts.voice?.idle();
  await announcer.parts.voice?.close();
  return status;
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
  const look = watch.look();
  if (look.kind === "unreadable") {
    io.err(`brinebell watch: ${look.message}`);
    return 3;
  }
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
  if (look.kind !== "told" || look.notRecorded === undefined) return 0;
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
  io.out("Watching. Ctrl-C ends it.");
  watch.start((look) => {
    void tellOf(look, announcer, clock);
    const message =
      look.kind === "unreadable"
        ? look.message
        : look.kind === "told" && look.notRecorded !== undefined
          ? notRecorded(look.notRecorded)
          : "";
    if (message && message !== trouble.last) io.err(`brinebell watch: ${message}`);
    trouble.last = message;
  });
  await io.ended;
  watch.stop();
  return 0;
}
