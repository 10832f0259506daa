/** The kitchen as its journal tells it, for commands that only read. */
import { readJournal } from "../journal/read-journal.ts";
import { realDisk } from "../journal/real-disk.ts";
import { replay } from "../kitchen/evolve.ts";
import type { State } from "../kitchen/state.ts";
import type { Disk } from "../ports/disk.ts";
import { rawEventsOf } from "./journal-records.ts";

export type ReadKitchen = {
  state: State;
  /** Kitchen time now, ms; not before the last event. */
  nowMs: number;
  /** What could not be relied on, a sentence each. */
  notices: string[];
  /** Why nothing could be read at all; the state is then that of an empty kitchen. */
  unreadable?: string;
};

/**
 * Reads and works out the journal of a folder without a lock and without writing anything; an
 * absent folder is an empty kitchen. Time goes by the wall, less what the journal says it is off.
 */
export function readKitchen(
  folder: string,
  wallMs = Date.now(),
  disk: Disk = realDisk(),
): ReadKitchen {
  const reading = readJournal(disk, folder);
  const notices = reading.damages.map(({ file, line, reason }) => {
    const where = line > 0 ? `line ${line} of ${folder}/${file}` : `${folder}/${file}`;
    return `${where}: ${reason}`;
  });
  for (const { file, bytes } of reading.torn) {
    if (bytes.length > 0) notices.push(`the end of ${folder}/${file} was cut short`);
  }
  if (reading.newerFile) {
    notices.push(`${folder}/${reading.newerFile} was written by a later version`);
  }
  const state = replay(rawEventsOf(reading.records));
  const offset = state.offsets.at(-1)?.offsetMs ?? 0;
  const read = { state, nowMs: Math.max(state.lastW, wallMs - offset), notices };
  return reading.unreadable ? { ...read, unreadable: reading.unreadable.message } : read;
}
