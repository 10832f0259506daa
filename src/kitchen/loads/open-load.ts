/** Which open load a batch's next jars go into: its own, or one of another batch with room. */

import { cannerOf, cannotShare, capacity } from "../jars/canner-room.ts";
import { again, allFilled, filled, jarsExpected, ready } from "../jars/lots.ts";
import { activeOwners, isLoad } from "../owners.ts";
import type { Batch, Load, State } from "../state.ts";

/** Jars of a batch that are filled or still expected, and not in a canner yet. */
function toCome(batch: Batch): number {
  if (again(batch) > 0) return Math.max(ready(batch), again(batch));
  if (allFilled(batch)) return ready(batch);
  const before = filled(batch) - ready(batch);
  return Math.max(ready(batch), (jarsExpected(batch) ?? Number.POSITIVE_INFINITY) - before);
}

function wantsCanner(batch: Batch): boolean {
  const live = batch.state === "running" || batch.state === "held";
  return live && batch.option !== null && toCome(batch) > 0;
}

/**
 * Batches whose jars an open load is for: the one it was opened for, then all that fit beside it.
 */
export function sharers(state: State, load: Load): Batch[] {
  const own = state.batches[load.batch];
  if (!own || !load.terms || load.loadedAt !== undefined) return [];
  const canner = cannerOf(state, load.canner);
  const list = [own];
  let room = (own.jar ? capacity(canner, own.jar) : 0) - toCome(own);
  for (const batch of activeOwners(state)) {
    if (isLoad(batch) || batch === own || !wantsCanner(batch) || !batch.terms) continue;
    if (hasOwn(state, batch) || batch.jar !== own.jar) continue;
    if (toCome(batch) > room || cannotShare(load.terms, batch.terms)) continue;
    list.push(batch);
    room -= toCome(batch);
  }
  return list;
}

function hasOwn(state: State, batch: Batch): boolean {
  return ownLoad(state, batch) !== undefined;
}

function ownLoad(state: State, batch: Batch): Load | undefined {
  return activeOwners(state).find(
    (owner): owner is Load => isLoad(owner) && owner.batch === batch.id && !owner.loadedAt,
  );
}

/** The load a batch's next jars go into: open, and not yet loaded. */
export function openLoad(state: State, batch: Batch): Load | undefined {
  const own = ownLoad(state, batch);
  if (own || !wantsCanner(batch)) return own;
  return activeOwners(state).find(
    (owner): owner is Load => isLoad(owner) && sharers(state, owner).includes(batch),
  );
}
