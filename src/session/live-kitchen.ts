/**
 * The kitchen on a real machine: real clock, disk and voice around one session, with the lock that
 * makes it the only writer and the socket that lets others pass words to it.
 */

import { lockOrLate } from "../journal/late-lock.ts";
import { realDisk } from "../journal/real-disk.ts";
import type { Clock } from "../ports/clock.ts";
import type { Line } from "../ports/view.ts";
import type { Library } from "../recipe/library.ts";
import { chooseVoice } from "../voice/speaking/choose-voice.ts";
import { Speaker } from "../voice/speaking/speaker.ts";
import { terminalBell } from "../voice/speaking/terminal-bell.ts";
import { serveGlass } from "./glass/serve-glass.ts";
import { Listeners } from "./listeners.ts";
import { type OpenedSession, openSession } from "./open-session.ts";
import type { Session } from "./session.ts";
import { screenHost } from "./shown-kitchen.ts";
import type { Answerer, OpenGlass } from "./tell/tell-callers.ts";
import { openTellServer, type TellServer } from "./tell/tell-server.ts";
import { clockFault, realClock } from "./time/real-clock.ts";
import { writerIn } from "./writer.ts";

type LiveParts = {
  folder: string;
  library: Library;
  version: string;
  /** Names the source the program was built from; glasses of another get lines only. */
  build: string;
  /** Writes to the terminal, for the bell. */
  ring: (text: string) => void;
  /** False for a kitchen without a voice (`--silent`). */
  speaks: boolean;
  /** Somebody is at a terminal, who can be asked about a new kitchen. */
  welcomes: boolean;
};

export type LiveKitchen = {
  session: Session;
  /** The conversation of this session. */
  lines: Line[];
  damaged: boolean;
  onChange(listener: () => void): () => void;
  status(): { voice?: string; listening?: string };
  setListening(status: string | undefined): void;
  /** How many other windows look into this kitchen. */
  glasses(): number;
  /** True while one of them is being served: whoever asks to leave then leaves that window only. */
  isElsewhere(): boolean;
  isSpeaking(): boolean;
  onSpeaking(listener: (speaking: boolean) => void): void;
  /** Writes down that it closes, releases the lock, and stops speaking. */
  close(): Promise<void>;
};

type LiveAnswer =
  | { ok: true; kitchen: LiveKitchen }
  | { ok: false; why: "held"; message: string }
  | { ok: false; why: "disk"; message: string };

/** Lines of the conversation kept for the screen. */
const LINES_KEPT = 500;

export async function openLiveKitchen(parts: LiveParts): Promise<LiveAnswer> {
  const disk = realDisk();
  const clock = realClock();
  const reading = clock.read();
  const fault = clockFault(reading);
  if (fault !== undefined) return { ok: false, why: "disk", message: fault };
  const { bootId, wallMs } = reading;
  const self = { pid: process.pid, bootId, startedAt: new Date(wallMs).toISOString() };
  const taken = lockOrLate(disk, parts.folder, self);
  if (!taken.ok)
    return { ok: false, why: taken.why === "held" ? "held" : "disk", message: taken.message };
  const { lock, late } = taken;
  const watched = new Watched();
  let opened: OpenedSession | undefined;
  const speaker = speakerOf(parts, clock, watched, (text) => opened?.session.notice(text));
  opened = openSession({
    clock,
    disk,
    folder: parts.folder,
    voice: speaker,
    library: parts.library,
    version: parts.version,
    rehearsal: false,
    welcomes: parts.welcomes,
    owns: () => lock.owns(),
    whyNot: () => lock.whyNot?.(),
    later: (work) => void setImmediate(work),
    elapsedMs: () => performance.now(),
    writer: (known) => (lock.owns() ? writerIn(disk, parts.folder, known) : undefined),
    onLines: (added) => watched.add(added),
  });
  const { session, damaged } = opened;
  for (const problem of parts.library.problems) session.notice(`A recipe was left out: ${problem}`);
  let server: TellServer | undefined;
  const close = async () => {
    session.close();
    lock.release();
    await Promise.all([server?.close(), speaker.close()]);
  };
  const kitchen = liveKitchen(session, damaged, watched, close);
  const answer = async () => {
    const openGlass = glassesOf(kitchen, watched, parts.build);
    server = await answerOthers(parts.folder, () => lock.owns(), session, openGlass);
  };
  if (late && !late.had) late.onHad = () => void answer();
  else await answer();
  session.tick();
  return { ok: true, kitchen };
}

/** Opens a glass on the kitchen for whoever says hello. */
function glassesOf(kitchen: LiveKitchen, watched: Watched, build: string): OpenGlass {
  const { session } = kitchen;
  return (socket, hello, rest) => {
    watched.glasses += 1;
    socket.on("close", () => {
      watched.glasses -= 1;
      watched.changes.tell();
    });
    serveGlass(socket, hello, rest, {
      host: screenHost(kitchen),
      zone: () => session.state.zone,
      build,
      take(act) {
        watched.elsewhere = true;
        act();
        watched.elsewhere = false;
        const { left } = session;
        session.stay();
        return left;
      },
    });
  };
}

/** What watchers are notified of: lines, the voice, the ears. */
class Watched {
  readonly lines: Line[] = [];
  readonly changes = new Listeners();
  readonly speech = new Listeners<[speaking: boolean]>();
  readonly status: { voice?: string; listening?: string } = {};
  speaking = false;
  glasses = 0;
  elsewhere = false;

  add(added: readonly Line[]): void {
    this.lines.push(...added);
    if (this.lines.length > LINES_KEPT) this.lines.splice(0, this.lines.length - LINES_KEPT);
    this.changes.tell();
  }
}

function liveKitchen(
  session: Session,
  damaged: boolean,
  watched: Watched,
  close: () => Promise<void>,
): LiveKitchen {
  const { lines, changes, speech, status } = watched;
  return {
    session,
    lines,
    damaged,
    onChange: (listener) => changes.add(listener),
    status: () => ({ ...status }),
    setListening(text) {
      if (text === undefined) delete status.listening;
      else status.listening = text;
      changes.tell();
    },
    glasses: () => watched.glasses,
    isElsewhere: () => watched.elsewhere,
    isSpeaking: () => watched.speaking,
    onSpeaking: (listener) => void speech.add(listener),
    close,
  };
}

/** The machine's own voice and bell; a silent kitchen has neither. */
function speakerOf(
  parts: LiveParts,
  clock: Clock,
  watched: Watched,
  notice: (text: string) => void,
): Speaker {
  const { engine, advice } = parts.speaks
    ? chooseVoice({ platform: process.platform, searchPath: process.env.PATH ?? "" })
    : { engine: undefined, advice: "" };
  return new Speaker({
    engine,
    bell: parts.speaks ? terminalBell(parts.ring) : { ring: () => {} },
    clock,
    advice,
    onProblem: (message) => {
      if (!parts.speaks) return;
      watched.status.voice = message;
      setImmediate(() => notice(message));
    },
    onRecovered: () => {
      delete watched.status.voice;
    },
    onSpeaking: (speaking) => {
      watched.speaking = speaking;
      watched.speech.tell(speaking);
    },
  });
}

async function answerOthers(
  folder: string,
  owns: () => boolean,
  session: Session,
  openGlass: OpenGlass,
): Promise<TellServer | undefined> {
  const hear: Answerer = (said) =>
    typeof said === "string" ? session.hear(said) : session.carry(said);
  const answer = await openTellServer(folder, owns, hear, openGlass);
  if (answer.ok) return answer.server;
  session.notice(`Other programs cannot hand words to this kitchen: ${answer.message}`);
  return undefined;
}
