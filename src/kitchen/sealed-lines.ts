/** Lines of the journal that cannot be relied on, and what they touch. */
import { idsOf } from "./facts/references.ts";
import { ownerOf } from "./owners.ts";
import type { State } from "./state.ts";

/**
 * Batches and loads the log tells of and does not know: the line that began them was damaged, or
 * was taken back.
 */
export function unknownOwners(state: State): string[] {
  const unknown = state.history.flatMap(idsOf).filter((id) => !ownerOf(state, id));
  return [...new Set(unknown)];
}
