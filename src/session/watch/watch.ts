/**
 * Keeps the reminders while no kitchen is open: checks the journal, writes down what has come due
 * in a momentary session, and then announces it once. An open kitchen announces its own.
 */
import { fileName, filesInOrder } from "../../journal/file-name.ts";
import { readHeartbeat } from "../../journal/heartbeat.ts";
import { agenda, type DueItem } from "../../kitchen/agenda.ts";
import type { State } from "../../kitchen/state.ts";
import type { Clock } from "../../ports/clock.ts";
import type { Disk } from "../../ports/disk.ts";
import type { Library } from "../../recipe/library.ts";
import { type CameDue, cameDue, resumeTime } from "../open-session.ts";
import { type ReadKitchen, readKitchen } from "../reading/read-kitchen.ts";
import { inShortSession } from "../short-session.ts";

type WatchParts = {
  clock: Clock;
  disk: Disk;
  folder: string;
  library: Library;
  version: string;
};

/** What one look found. `hushed`: a person asked for quiet. */
export type WatchFinding =
  | { kind: "quiet" }
  | { kind: "kitchen-open" }
  | { kind: "told"; told: CameDue[]; hushed: boolean; notRecorded?: string }
  | { kind: "unreadable"; message: string };

/** Clocks and journal are looked at this often, since machines sleep and clocks are set, ms. */
const LOOK_MS = 30_000;
/** A wall clock that strays less than this from kitchen time, ms, was not set by anybody. */
const DRIFT_MS = 1500;
/** Something that an opening did not find due is left alone for this long, ms. */
const LEAVE_MS = 10 * 60_000;

export class Watch {
  private readonly parts: WatchParts;
  private read: { signature: string; kitchen: ReadKitchen } | undefined;
  /** Boot time until which a key is left alone. */
  private readonly left = new Map<string, number>();
  /** Announced although it could not be written down. */
  private readonly unwritten = new Set<string>();
  private stopTimer: (() => void) | undefined;
  private stopped = false;

  constructor(parts: WatchParts) {
    this.parts = parts;
  }

  /** What the log was found to lack at the last look. */
  get found(): Pick<ReadKitchen, "notices" | "incomplete"> {
    return this.kitchen().kitchen;
  }

  /** Announces nothing itself: what came due is written down as announced and returned. */
  look(): WatchFinding {
    const { kitchen, state, now } = this.kitchen();
    if (kitchen.unreadable !== undefined) {
      return { kind: "unreadable", message: kitchen.unreadable };
    }
    const { bootMs } = this.parts.clock.read();
    const due = agenda(state, now).filter((item) => {
      if (item.tellAt > now || item.what === "warm-up" || this.unwritten.has(item.key))
        return false;
      return (this.left.get(item.key) ?? 0) <= bootMs;
    });
    return due.length === 0 ? { kind: "quiet" } : this.write(due, state, now, bootMs);
  }

  private write(due: readonly DueItem[], state: State, now: number, bootMs: number): WatchFinding {
    const { folder, library, version, disk, clock } = this.parts;
    const answer = inShortSession(folder, library, version, (_, opened) => opened.told, {
      disk,
      clock,
    });
    const hushed =
      state.hushedUntil === null || (state.hushedUntil !== undefined && now < state.hushedUntil);
    if (answer.ok) {
      for (const { key } of due) this.left.set(key, bootMs + LEAVE_MS);
      return answer.value.length === 0
        ? { kind: "quiet" }
        : { kind: "told", told: answer.value, hushed };
    }
    if (answer.why === "held") return { kind: "kitchen-open" };
    for (const { key } of due) this.unwritten.add(key);
    const told = due.map((item) => cameDue(state, item));
    return { kind: "told", told, hushed, notRecorded: answer.message };
  }

  /** Looks now and then repeatedly until stopped, at least every half minute. */
  start(tell: (look: WatchFinding) => void): void {
    const turn = () => {
      if (this.stopped) return;
      tell(this.look());
      this.stopTimer = this.parts.clock.after(this.untilNext(), turn);
    };
    turn();
  }

  stop(): void {
    this.stopped = true;
    this.stopTimer?.();
  }

  private untilNext(): number {
    const { state, now } = this.kitchen();
    const next = Math.min(
      ...agenda(state, now)
        .map((item) => item.tellAt)
        .filter((at) => at > now),
    );
    return Math.min(LOOK_MS, Math.max(1, next - now));
  }

  /** The kitchen as its journal tells it, and its own time by the clocks that nobody can set. */
  private kitchen(): { kitchen: ReadKitchen; state: State; now: number } {
    const { clock, disk, folder } = this.parts;
    const signature = this.signature();
    if (this.read?.signature !== signature) {
      const kitchen = readKitchen(folder, { wallMs: clock.read().wallMs, disk });
      this.read = { signature, kitchen };
    }
    const { kitchen } = this.read;
    const reading = clock.read();
    const { timeline } = resumeTime(kitchen.state, readHeartbeat(disk, folder), reading);
    const now = timeline.now(reading);
    const offsetMs = reading.wallMs - now;
    const known = kitchen.state.offsets.at(-1)?.offsetMs ?? 0;
    if (Math.abs(offsetMs - known) <= DRIFT_MS) return { kitchen, state: kitchen.state, now };
    // The clock was set since then: dates go by what it shows now.
    const offsets = [...kitchen.state.offsets, { from: now, offsetMs }];
    return { kitchen, state: { ...kitchen.state, offsets }, now };
  }

  /** Changes whenever something was added to the journal. */
  private signature(): string {
    const { disk, folder } = this.parts;
    const listed = disk.list(folder);
    if (!listed.ok) return listed.message;
    const files = filesInOrder(listed.names).map(fileName);
    const last = files.at(-1);
    const read = last === undefined ? undefined : disk.read(`${folder}/${last}`);
    return `${files.join(" ")} ${read?.ok ? read.bytes.length : ""}`;
  }
}
