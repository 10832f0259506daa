/**
 * A kitchen whose clock, disk and voice are made up, around the very same session: for rehearsals,
 * and for tests and simulations, which break what they like.
 */

import { MemoryDisk } from "../journal/memory-disk.ts";
import type { DatedFact } from "../kitchen/events.ts";
import type { Disk } from "../ports/disk.ts";
import type { SpeechHandle, SpeechOutcome, VoiceEngine, VoicePort } from "../ports/voice.ts";
import type { Library } from "../recipe/library.ts";
import { MadeUpClock } from "./made-up-clock.ts";
import { type OpenedSession, openSession } from "./open-session.ts";
import type { Line, Session } from "./session.ts";

export type MadeUpParts = {
  library: Library;
  startMs: number;
  zone: string;
  setUp: DatedFact[];
  /** Where the journal goes; in memory where nothing is said. */
  disk?: Disk;
  folder?: string;
  voice: (clock: MadeUpClock, notice: (text: string) => void) => VoicePort;
  version: string;
  onLines?: (lines: Line[]) => void;
};

const HOUR_MS = 3_600_000;
const FIVE_SECONDS_MS = 5000;

export class MadeUpKitchen {
  readonly clock: MadeUpClock;
  readonly disk: Disk;
  readonly lines: Line[] = [];
  readonly voice: VoicePort;
  private readonly parts: MadeUpParts;
  private opened: OpenedSession;

  constructor(parts: MadeUpParts) {
    this.parts = parts;
    this.clock = new MadeUpClock(parts.startMs, parts.zone);
    this.disk = parts.disk ?? new MemoryDisk();
    this.voice = parts.voice(this.clock, (text) => this.opened?.session.notice(text));
    this.opened = this.open();
    this.session.start();
  }

  get session(): Session {
    return this.opened.session;
  }

  /** What opening found out of order. */
  get notices(): string[] {
    return this.opened.notices;
  }

  private open(): OpenedSession {
    const { library, version, setUp, folder = "made-up" } = this.parts;
    return openSession({
      clock: this.clock,
      disk: this.disk,
      folder,
      voice: this.voice,
      library,
      version,
      rehearsal: true,
      setUp,
      // A made-up clock need not be watched every second: it stops where something comes due.
      lookMs: (kept) => (kept ? FIVE_SECONDS_MS : HOUR_MS),
      onLines: (lines) => {
        this.lines.push(...lines);
        this.parts.onLines?.(lines);
      },
    });
  }

  /** Dies without a word and is opened again after so long. */
  crash(closedForMs = 0): void {
    this.session.die();
    this.clock.endProgram();
    this.clock.advance(closedForMs);
    this.opened = this.open();
    this.session.start();
  }

  /** The machine sleeps so long, and wakes. */
  sleep(ms: number): void {
    this.clock.sleep(ms);
    this.session.tick();
  }

  setWall(byMs: number): void {
    this.clock.setWall(byMs);
    this.session.tick();
  }
}

/** An engine that says everything at once, until it is told to fail or to hang. */
export class MadeUpVoice implements VoiceEngine {
  readonly name = "made up";
  mood: "well" | "gone" | "hangs" = "well";

  start(): SpeechHandle {
    if (this.mood === "hangs") return { done: new Promise(() => {}), stop: () => {} };
    const outcome: SpeechOutcome =
      this.mood === "gone" ? { kind: "failed", reason: "the voice is gone" } : { kind: "spoken" };
    return { done: Promise.resolve(outcome), stop: () => {} };
  }
}
