/** Reports that were written well after they happened. */
import { ownerOf } from "../owners.ts";
import type { State } from "../state.ts";
import { MINUTE_MS } from "../time.ts";

/** A report written this much after it happened is marked as written late. */
const WRITTEN_LATE_MS = MINUTE_MS;

/** Keeps in the log that a report was written well after it happened. */
export function markLate(
  state: State,
  ownerId: string,
  event: { t: number; w: number },
  what: string,
): void {
  const owner = ownerOf(state, ownerId);
  if (owner && event.w - event.t >= WRITTEN_LATE_MS) {
    owner.late.push({ at: event.t, written: event.w, what });
  }
}
