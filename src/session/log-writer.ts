/** Writes facts into the journal and the state, in that order, whatever the disk does. */

import { writeHeartbeat } from "../journal/heartbeat.ts";
import type { Journal, WriteRefusal } from "../journal/journal.ts";
import type { CarriedOut, EventMark } from "../kitchen/decide/carried-out.ts";
import { OWN_COMMAND } from "../kitchen/decide/decide-corrections.ts";
import type { DatedFact, KitchenEvent } from "../kitchen/events.ts";
import { apply } from "../kitchen/evolve.ts";
import type { State } from "../kitchen/state.ts";
import type { Clock, ClockReading } from "../ports/clock.ts";
import type { Disk } from "../ports/disk.ts";
import { recordOf } from "./reading/journal-records.ts";

type LogWriterParts = {
  clock: Clock;
  disk: Disk;
  folder: string;
  journal: Journal;
  state: State;
  /** Kitchen time now. */
  now(): number;
  /**
   * Called once for every outage of the disk, and when it turns out to be another program or
   * another file; `asks` where it waits for a yes to go on in a fresh file.
   */
  onTrouble(message: string, asks: boolean): void;
  /** Called once where the side file of clocks cannot be written but the log can. */
  onClocksNotKept(message: string): void;
};

/** The clocks are written to their side file this often while something must be kept, ms. */
const HEARTBEAT_MS = 5000;

export class LogWriter {
  private readonly parts: LogWriterParts;
  private commands: number;
  private lastBeatMs = Number.NEGATIVE_INFINITY;
  private failingSince: number | undefined;
  private failedEvents = 0;
  /** What was told of besides the disk: another program that writes here, another file. */
  private toldOfClocks = false;
  private readonly told = new Set<WriteRefusal["why"]>();

  constructor(parts: LogWriterParts) {
    this.parts = parts;
    // Numbers continue from the end of the log: an id is never given to two commands.
    this.commands = parts.state.history.length;
    const { pending } = parts.journal;
    if (pending > 0) {
      this.failingSince = parts.now();
      this.failedEvents = pending;
    }
  }

  /** True while what happened is not all on the disk. */
  get notRecorded(): boolean {
    return this.parts.journal.pending > 0;
  }

  /** True from a refusal of the disk until everything is written. */
  get failing(): boolean {
    return this.failingSince !== undefined;
  }

  /** An id for a person's command, or with a mark for the program's own doing. */
  nextId(now: number, mark = "c"): string {
    this.commands += 1;
    return `${mark}${Math.round(now)}.${this.commands}`;
  }

  /** What events are written under now. */
  mark(cmd: string): EventMark {
    return { cmd, w: this.parts.now() };
  }

  /**
   * Writes facts without consequences to the disk and into the state; returns false as `write`
   * does.
   */
  commit(facts: readonly DatedFact[], cmd: string): boolean {
    const mark = this.mark(cmd);
    const events = facts.map((fact): KitchenEvent => ({ ...fact, ...mark }));
    return this.append(events, (state) => {
      for (const event of events) apply(state, event);
    });
  }

  /**
   * Writes what was carried out to the disk and takes over its state; false where the disk refused.
   */
  write({ events, after }: CarriedOut): boolean {
    return this.append(events, (state) => Object.assign(state, after));
  }

  private append(events: readonly KitchenEvent[], become: (state: State) => void): boolean {
    const { journal, state } = this.parts;
    const appended = journal.append(events.map((event) => recordOf(state, event)));
    become(state);
    if (appended.ok) {
      this.beat(this.parts.clock.read());
      return true;
    }
    this.failedEvents += events.length;
    const first = this.failingSince === undefined;
    this.failingSince ??= this.parts.now();
    this.tell(appended, first);
    return false;
  }

  private tell({ why, message }: WriteRefusal, first: boolean): void {
    const other = why === "not-ours" || why === "displaced";
    const news = other && !this.told.has(why);
    if (news) this.told.add(why);
    if (first || news) this.parts.onTrouble(message, why === "displaced");
  }

  /**
   * Writes what is missing once the disk accepts it, and the fact that it was missing; true then.
   */
  recover(now: number): boolean {
    const { failingSince: from, failedEvents: events } = this;
    if (from === undefined) return false;
    const written = this.parts.journal.retry();
    if (!written.ok) {
      this.tell(written, false);
      return false;
    }
    this.failingSince = undefined;
    this.failedEvents = 0;
    const missed: DatedFact = { type: "log-failed", from, to: now, events, t: now };
    return this.commit([missed], `${OWN_COMMAND}log${Math.round(now)}`);
  }

  /**
   * Writes the clocks to the side file: after every event, and in between while something must be
   * kept.
   */
  keepBeat(reading: ClockReading): void {
    if (reading.monoMs - this.lastBeatMs >= HEARTBEAT_MS) this.beat(reading);
  }

  beat(reading: ClockReading): void {
    const { disk, folder, journal } = this.parts;
    this.lastBeatMs = reading.monoMs;
    if (!journal.owned) return;
    const { lastN, lastSum } = journal;
    const kept = writeHeartbeat(disk, folder, {
      reading,
      lastN,
      lastSum,
      kitchenMs: this.parts.now(),
    });
    // A disk that refuses everything has already been reported.
    if (kept.ok || this.toldOfClocks || journal.pending > 0) return;
    this.toldOfClocks = true;
    this.parts.onClocksNotKept(kept.message);
  }

  /**
   * Leaves a damaged file as it is and goes on in a fresh one; returns the reason where that fails.
   */
  goOnInFreshFile(): string | undefined {
    const begun = this.parts.journal.continueInFreshFile();
    if (begun.ok) this.told.delete("displaced");
    return begun.ok ? undefined : begun.message;
  }
}

export const FILE_BESIDE =
  "Another file stands where the log was. It is left as it is. Shall I go on in a fresh file " +
  "beside it? Until then nothing is recorded.";

export const FRESH_FILE =
  "The log is damaged and kept as it is, for reading only. Shall I go on in a fresh file? " +
  "Until then nothing is recorded.";

export const STAYS_SEALED = "All right. Nothing is recorded until you say yes.";

export const WRITTEN_AGAIN = "The log is written again, with nothing missing.";

export const NOT_RECORDED = "This is not recorded: the log cannot be written just now.";
