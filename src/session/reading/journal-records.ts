/**
 * Events as journal records, with instants as ISO wall time for reading and as kitchen time for
 * replay.
 */
import type { JournalFormat } from "../../journal/read-file.ts";
import { type Damage, FORMAT } from "../../journal/read-journal.ts";
import { OWN_COMMAND } from "../../kitchen/decide/decide-corrections.ts";
import type { KitchenEvent } from "../../kitchen/events.ts";
import { faultOfLine, OF_THE_JOURNAL } from "../../kitchen/facts/gate.ts";
import { sealedFacts } from "../../kitchen/questions/sealed-places.ts";
import { type State, wallOf } from "../../kitchen/state.ts";
import { isoWithOffset } from "../../kitchen/time.ts";
import { isMerged, mergedEvents } from "./branches.ts";

/** The journal of a kitchen: each line holds one event, and goes through the gate. */
export const KITCHEN_FORMAT: JournalFormat = { ...FORMAT, faultOf: faultOfLine };

export function recordOf(state: State, event: KitchenEvent): object {
  const { cmd, type, t, w, ...rest } = event;
  const at = isoWithOffset(Math.round(wallOf(state, t)), state.zone);
  const written = t === w ? at : isoWithOffset(Math.round(wallOf(state, w)), state.zone);
  return { cmd, type, at, written, t, w, ...rest };
}

const TAKEN: ReadonlySet<string> = new Set(["cmd", "type", "t", "w", ...OF_THE_JOURNAL]);

/** The event of a journal's line that came through the gate. */
function eventOf(record: Record<string, unknown>): KitchenEvent {
  const { cmd, type, t, w } = record;
  const event: Record<string, unknown> = { cmd, type, t, w };
  for (const key in record) if (!TAKEN.has(key)) event[key] = record[key];
  return event as KitchenEvent;
}

/** The events of lines that were read in `KITCHEN_FORMAT`. */
export function eventsOf(records: readonly object[]): KitchenEvent[] {
  return records.map((record) => eventOf(record as Record<string, unknown>));
}

/**
 * The events to be replayed. Where other data folders were taken in, theirs are among them in the
 * order in which they were written; else the lines themselves, since copying them costs more than
 * replaying them.
 */
export function eventsToReplay(records: readonly object[]): KitchenEvent[] {
  const lines = records as KitchenEvent[];
  return isMerged(lines) ? mergedEvents(eventsOf(records)) : lines;
}

/**
 * What damage of the journal affects, for readers that write nothing down about it. `events` are in
 * the order of the file.
 */
export function damageEvents(
  events: readonly KitchenEvent[],
  damages: readonly Damage[],
): KitchenEvent[] {
  if (damages.length === 0) return [];
  const w = events.reduce((latest, event) => Math.max(latest, event.w), 0);
  const sealed = sealedFacts(events, damages);
  return sealed.map((fact) => ({ ...fact, cmd: `${OWN_COMMAND}sealed`, w }));
}
