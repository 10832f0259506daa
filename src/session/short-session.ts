/** A momentary session, without voice or screen, for commands that write something down. */
import { takeLock } from "../journal/lock.ts";
import { realDisk } from "../journal/real-disk.ts";
import type { Clock } from "../ports/clock.ts";
import type { Disk } from "../ports/disk.ts";
import type { VoicePort } from "../ports/voice.ts";
import type { Library } from "../recipe/library.ts";
import { type OpenedSession, openSession } from "./open-session.ts";
import type { Session } from "./session.ts";
import { clockFault, realClock } from "./time/real-clock.ts";
import { writerIn } from "./writer.ts";

/** A silent voice. */
export const SILENT: VoicePort = {
  say() {},
  cancel() {},
  hush() {},
  adjust: () => ({ rate: 1, volume: 1 }),
  idle: () => Promise.resolve(),
  close: () => Promise.resolve(),
};

/** Also what the log was found to lack; see `OpenedSession`. */
type ShortAnswer<T> =
  | ({ ok: true; value: T } & Pick<OpenedSession, "notices" | "incomplete">)
  | { ok: false; why: "held" | "disk"; message: string };

/** Opens the folder as its only writer, does one thing, and closes again. Asks nothing. */
export function inShortSession<T>(
  folder: string,
  library: Library,
  version: string,
  act: (session: Session, opened: OpenedSession) => T,
  { disk, clock }: { disk: Disk; clock: Clock } = { disk: realDisk(), clock: realClock() },
): ShortAnswer<T> {
  const reading = clock.read();
  const fault = clockFault(reading);
  if (fault !== undefined) return { ok: false, why: "disk", message: fault };
  const { bootId, wallMs } = reading;
  const self = { pid: process.pid, bootId, startedAt: new Date(wallMs).toISOString() };
  const lock = takeLock(disk, folder, self);
  if (!lock.ok)
    return { ok: false, why: lock.why === "held" ? "held" : "disk", message: lock.message };
  try {
    const opened = openSession({
      clock,
      disk,
      folder,
      voice: SILENT,
      library,
      version,
      rehearsal: false,
      owns: () => lock.lock.owns(),
      asks: false,
      elapsedMs: () => performance.now(),
      writer: (known) => writerIn(disk, folder, known),
      onLines: () => {},
    });
    const { session } = opened;
    const value = act(session, opened);
    const unwritten = session.notRecorded;
    session.close();
    if (unwritten) return { ok: false, why: "disk", message: "the journal cannot be written" };
    return { ok: true, value, notices: opened.notices, incomplete: opened.incomplete };
  } finally {
    lock.lock.release();
  }
}
