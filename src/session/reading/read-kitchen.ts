/** The kitchen replayed from its journal, for commands that only read. */
import { readHeartbeat } from "../../journal/heartbeat.ts";
import { checkExpected, type JournalReading, readJournal } from "../../journal/read-journal.ts";
import { realDisk } from "../../journal/real-disk.ts";
import { replay } from "../../kitchen/evolve.ts";
import type { State } from "../../kitchen/state.ts";
import type { Disk } from "../../ports/disk.ts";
import { damageEvents, eventsOf, eventsToReplay, KITCHEN_FORMAT } from "./journal-records.ts";
import { keepSnapshot, readSnapshot, snapshotKey, WORTH_KEEPING } from "./snapshot.ts";

export type ReadKitchen = {
  state: State;
  /** Kitchen time now, ms; not before the last event. */
  nowMs: number;
  /** What could not be relied on, one sentence each. */
  notices: string[];
  /** True where lines are missing or damaged, so that what is shown may not be all. */
  incomplete: boolean;
  /** Why nothing could be read at all; the state is then that of an empty kitchen. */
  unreadable?: string;
};

export type Reader = {
  /** Wall time now, epoch ms. */
  wallMs?: number | undefined;
  disk?: Disk;
  /**
   * The build of the program: with it, the state replayed from a long journal is kept as a
   * snapshot.
   */
  build?: string | undefined;
};

/**
 * Reads and replays the journal of a folder without a lock; a missing folder is an empty kitchen.
 * Writes nothing but the snapshot. Time goes by the wall clock, corrected by the offset in the
 * journal.
 */
export function readKitchen(folder: string, reader: Reader = {}): ReadKitchen {
  const { wallMs = Date.now(), disk = realDisk(), build } = reader;
  const place = build === undefined ? undefined : { disk, folder, build };
  // Before the journal: who has it open may write on meanwhile.
  const beat = readHeartbeat(disk, folder);
  const key = place && snapshotKey(place, beat);
  const read = () => readJournal(disk, folder, KITCHEN_FORMAT);
  const history = () => eventsToReplay(read().records);
  const kept = place && key !== undefined ? readSnapshot(place, key, history) : undefined;
  if (kept) return readAt(kept, wallMs, [], false);
  const reading = readChecked(disk, folder, beat);
  const { records, damages } = reading;
  const events = eventsToReplay(records);
  const state = replay([...events, ...damageEvents(eventsOf(records), damages)]);
  const notices = noticesOf(reading, folder);
  const sound = notices.length === 0 && !reading.unreadable;
  if (place && key !== undefined && sound && reading.records.length >= WORTH_KEEPING) {
    // A line written in the meantime may be in the state but not in the key.
    if (snapshotKey(place, beat) === key) keepSnapshot(place, key, state);
  }
  const found = readAt(state, wallMs, notices, isIncomplete(reading));
  return reading.unreadable ? { ...found, unreadable: reading.unreadable.message } : found;
}

/** The journal as every command reads it, checked against how far the clocks say that it went. */
export function readChecked(
  disk: Disk,
  folder: string,
  beat = readHeartbeat(disk, folder),
): JournalReading {
  const reading = readJournal(disk, folder, KITCHEN_FORMAT);
  checkExpected(reading, beat?.lastN ?? 0);
  return reading;
}

/** True where lines are missing, damaged or not known; a cut-off end never counted. */
export function isIncomplete({ damages, newerFile }: JournalReading): boolean {
  return damages.length > 0 || newerFile !== undefined;
}

function readAt(state: State, wallMs: number, notices: string[], incomplete: boolean): ReadKitchen {
  const offset = state.offsets.at(-1)?.offsetMs ?? 0;
  return { state, nowMs: Math.max(state.lastW, wallMs - offset), notices, incomplete };
}

/** What in a journal could not be relied on, one sentence each. */
export function noticesOf({ damages, torn, newerFile }: JournalReading, folder: string): string[] {
  const notices = damages.map(({ file, line, reason }) => {
    const where = line > 0 ? `line ${line} of ${folder}/${file}` : `${folder}/${file}`;
    return `${where}: ${reason}`;
  });
  for (const { file, bytes } of torn) {
    if (bytes.length > 0) notices.push(`the end of ${folder}/${file} was cut short`);
  }
  if (newerFile) notices.push(`${folder}/${newerFile} was written by a later version`);
  return notices;
}
