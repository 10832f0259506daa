/**
 * A kitchen with a simulated clock, disk and voice around the same session: for rehearsals, and for
 * tests and simulations, which can break anything.
 */

import type { DeskDecision } from "../../desk/want.ts";
import { type LateAnswer, lockOrLate } from "../../journal/late-lock.ts";
import { MemoryDisk } from "../../journal/memory-disk.ts";
import type { DatedFact } from "../../kitchen/events.ts";
import type { Disk } from "../../ports/disk.ts";
import type { Line } from "../../ports/view.ts";
import type { VoicePort } from "../../ports/voice.ts";
import type { Library } from "../../recipe/library.ts";
import { Listeners } from "../listeners.ts";
import { startListening } from "../listening/listening.ts";
import { type OpenedSession, openSession } from "../open-session.ts";
import { ProbeWatch } from "../probe/probe-watch.ts";
import type { Session } from "../session.ts";
import { SILENT } from "../short-session.ts";
import { MadeUpClock } from "./made-up-clock.ts";
import { MadeUpEars } from "./made-up-ears.ts";

type MadeUpParts = {
  library: Library;
  startMs: number;
  zone: string;
  setUp: DatedFact[];
  /** Where the journal goes; in memory by default. */
  disk?: Disk;
  folder?: string;
  voice: (
    clock: MadeUpClock,
    notice: (text: string) => void,
    onSpeaking: (speaking: boolean) => void,
  ) => VoicePort;
  version: string;
  /** False for a day that is played as a real one; true by default. */
  rehearsal?: boolean;
  /** True where the talk of a first opening is wanted. */
  welcomes?: boolean;
  onLines?: (lines: Line[]) => void;
};

type HeldLock = Extract<LateAnswer, { ok: true }>["lock"];

/** The process number of a program that only looks in. */
const VISITOR = 1_000_000;

const HOUR_MS = 3_600_000;
const FIVE_SECONDS_MS = 5000;

/** Calls that a disk answers from memory take no time, however slow it is. */
const QUICK_CALLS: ReadonlySet<string> = new Set(["list", "identity"]);

export class MadeUpKitchen {
  readonly clock: MadeUpClock;
  disk: Disk;
  readonly lines: Line[] = [];
  /** What the desk decided, of every program. */
  readonly decisions: DeskDecision[] = [];
  private readonly parts: MadeUpParts;
  private opened!: OpenedSession;
  /** Which program this is, of those begun so far: the one that holds the folder's lock. */
  program = 0;
  /** How many of them had to begin without the lock, for lack of room. */
  withoutLock = 0;
  /** Notes by programs that only looked in and were told that they are written. */
  visitorsNotes = 0;
  private watching: ProbeWatch | undefined;
  private listening: MadeUpEars | undefined;
  private microphoneGone = false;
  private diskCallMs = 0;
  /** Those who follow this program: another one begins without any. */
  private changes = new Listeners();
  private speech = new Listeners<[speaking: boolean]>();

  constructor(parts: MadeUpParts) {
    this.parts = parts;
    this.clock = new MadeUpClock(parts.startMs, parts.zone);
    this.disk = parts.disk ?? new MemoryDisk();
    this.begin();
  }

  private get folder(): string {
    return this.parts.folder ?? "made-up";
  }

  get session(): Session {
    return this.opened.session;
  }

  /** The probe beside this session; it is there as soon as somebody asks for it. */
  get probe(): ProbeWatch {
    this.watching ??= new ProbeWatch(this.session, this.clock);
    return this.watching;
  }

  /** The ears beside this session; they listen as soon as somebody asks for them. */
  get ears(): MadeUpEars {
    if (!this.listening) this.listen();
    return this.listening as MadeUpEars;
  }

  /** True where the program was started to listen. */
  get listens(): boolean {
    return this.listening !== undefined;
  }

  /** Unplugs the microphone, or plugs it in. */
  unplugMicrophone(gone: boolean): void {
    this.microphoneGone = gone;
    this.ears.unplug(gone);
  }

  /** Makes every disk call take this long from now on. */
  slowDisk(callMs: number): void {
    this.diskCallMs = callMs;
    const { disk } = this;
    if (!(disk instanceof MemoryDisk)) return;
    const takesTime = ({ name }: { name: string }) => {
      if (!QUICK_CALLS.has(name)) this.clock.pass(this.diskCallMs);
    };
    disk.eachCall = callMs > 0 ? takesTime : undefined;
  }

  /** What opening found out of order. */
  get notices(): string[] {
    return this.opened.notices;
  }

  /** The folder's lock on a made-up disk; the machine's own is taken by whoever opened it. */
  private takeLock(): LateAnswer {
    const { program } = this;
    const owns = () => program === this.program;
    if (!(this.disk instanceof MemoryDisk)) return { ok: true, lock: { owns, release: () => {} } };
    return this.lockFor(program);
  }

  private lockFor(pid: number): LateAnswer {
    const { bootId, wallMs } = this.clock.read();
    const self = { pid, bootId, startedAt: new Date(wallMs).toISOString() };
    const isAlive = (other: number) => other === this.program || other === pid;
    return lockOrLate(this.disk, this.folder, self, { isAlive, startTicks: () => null });
  }

  private listen(): void {
    const { session } = this;
    const kitchen = {
      session,
      onChange: (listener: () => void) => this.changes.add(listener),
      onSpeaking: (listener: (speaking: boolean) => void) => void this.speech.add(listener),
      setListening: () => {},
    };
    const source = { from: "microphone", searchPath: "" } as const;
    startListening(kitchen, { wakeWords: [], searchPath: "", source }, (events) => {
      this.listening = new MadeUpEars(events, this.microphoneGone);
      return this.listening;
    });
  }

  private begin(): void {
    this.program += 1;
    this.watching = undefined;
    const taken = this.takeLock();
    if (!taken.ok) throw new Error(`the made-up kitchen cannot be opened: ${taken.message}`);
    if (taken.late) this.withoutLock += 1;
    const [changes, speech] = [new Listeners(), new Listeners<[speaking: boolean]>()];
    this.changes = changes;
    this.speech = speech;
    const voice = this.parts.voice(
      this.clock,
      (text) => this.opened?.session.notice(text),
      (speaking) => speech.tell(speaking),
    );
    this.opened = this.open(taken.lock, voice, (lines) => {
      this.lines.push(...lines);
      this.parts.onLines?.(lines);
      changes.tell();
    });
    this.session.tick();
    if (this.listening) this.listen();
  }

  private open(lock: HeldLock, voice: VoicePort, onLines: (lines: Line[]) => void): OpenedSession {
    const { library, version, setUp } = this.parts;
    return openSession({
      clock: this.clock,
      disk: this.disk,
      folder: this.folder,
      voice,
      owns: () => lock.owns(),
      whyNot: () => lock.whyNot?.(),
      library,
      version,
      rehearsal: this.parts.rehearsal ?? true,
      setUp,
      welcomes: this.parts.welcomes ?? false,
      // A simulated clock need not be watched every second: it stops where something comes due.
      lookMs: (kept) => (kept ? FIVE_SECONDS_MS : HOUR_MS),
      onLines,
      onDecided: (decisions) => void this.decisions.push(...decisions),
    });
  }

  /** Dies silently and is opened again after a while. */
  crash(closedForMs = 0): void {
    this.end();
    this.clock.advance(closedForMs);
    this.begin();
  }

  private end(): void {
    // A program that died while it was opening never got as far as a session.
    this.opened?.session.die();
    this.clock.endProgram();
  }

  /** The power fails for a while: what was not synced is gone, and the machine restarts. */
  powerCut(downMs: number): void {
    this.end();
    if (this.disk instanceof MemoryDisk) this.disk = this.disk.afterPowerCut("lost");
    this.slowDisk(this.diskCallMs);
    this.clock.reboot(downMs);
    this.begin();
  }

  /** The program stalls, awake, and goes on. */
  standStill(ms: number): void {
    this.clock.stall(ms);
    this.session.tick();
  }

  /** Another program takes the folder: this one must not write any more, and then it dies. */
  handOver(): void {
    const { session } = this;
    this.begin();
    session.tick();
    session.hear("what's running");
    session.die();
  }

  /**
   * Another program comes while this one is open, finds room where there was none, and goes. It is
   * let in only where this one never had the lock, which then must not write any more.
   */
  visit(): void {
    if (!(this.disk instanceof MemoryDisk)) return;
    this.disk.roomBytes = Number.POSITIVE_INFINITY;
    const taken = this.lockFor(VISITOR);
    if (taken.ok) {
      const { session } = this.open(taken.lock, SILENT, () => {});
      session.hear("note somebody else was here");
      if (!session.notRecorded) this.visitorsNotes += 1;
      session.close();
      taken.lock.release();
    }
    this.session.tick();
  }

  /** The machine sleeps for a while, and wakes. */
  sleep(ms: number): void {
    this.clock.sleep(ms);
    this.session.tick();
  }

  setWall(byMs: number): void {
    this.clock.setWall(byMs);
    this.session.tick();
  }
}
