/** How many jars of a batch were filled, and where they are. */
import type { Batch, State } from "../state.ts";

/** Jars of a batch that have been in a canner, or are in one. */
function loadedJars(state: State, batch: Batch): number {
  return batch.loads.reduce((sum, id) => {
    const parts = state.loads[id]?.parts ?? [];
    return (
      sum + parts.reduce((n, part) => n + (part.batch === batch.id ? part.jars - part.again : 0), 0)
    );
  }, 0);
}

/** Recounts how many jars of a batch were filled. */
export function recount(state: State, batch: Batch): void {
  const { ready, setAside, brokenBefore, spoiled } = batch;
  batch.filled = loadedJars(state, batch) + ready + setAside + brokenBefore + spoiled;
}
