/** Events as journal records: instants as ISO wall time to read, as kitchen time to replay. */
import type { KitchenEvent } from "../../kitchen/events.ts";
import { type State, wallOf } from "../../kitchen/state.ts";
import { isoWithOffset } from "../../kitchen/time.ts";

/** Fields the journal adds to a line; the rest is the event. */
const OF_THE_JOURNAL: ReadonlySet<string> = new Set([
  "n",
  "v",
  "left",
  "prev",
  "sum",
  "at",
  "written",
]);

export function recordOf(state: State, event: KitchenEvent): object {
  const { cmd, type, t, w, ...rest } = event;
  const at = isoWithOffset(Math.round(wallOf(state, t)), state.zone);
  const written = t === w ? at : isoWithOffset(Math.round(wallOf(state, w)), state.zone);
  return { cmd, type, at, written, t, w, ...rest };
}

function isEvent(record: Record<string, unknown>): boolean {
  if (typeof record.type !== "string" || typeof record.t !== "number") return false;
  return typeof record.w === "number" && typeof record.cmd === "string";
}

/** The event of a journal line; undefined where the line holds none. */
export function eventOf(record: Record<string, unknown>): KitchenEvent | undefined {
  if (!isEvent(record)) return undefined;
  const event: Record<string, unknown> = {};
  for (const key in record) if (!OF_THE_JOURNAL.has(key)) event[key] = record[key];
  return event as KitchenEvent;
}

export function eventsOf(records: readonly object[]): KitchenEvent[] {
  return records.flatMap((record) => eventOf(record as Record<string, unknown>) ?? []);
}

/**
 * The events as they lie in the journal, the journal's own fields beside theirs: for replay alone,
 * since copying them costs more than working them out.
 */
export function rawEventsOf(records: readonly object[]): KitchenEvent[] {
  return records.filter((record) => isEvent(record as Record<string, unknown>)) as KitchenEvent[];
}
