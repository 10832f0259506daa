/** Takes spoiled jars out of a batch's counts, whatever they were counted as before. */
import { unaccounted } from "../jars.ts";
import type { Batch, LoadPart, State } from "../state.ts";
import { recount } from "./jar-tally.ts";

/** Jars of a part that are still kept somewhere, so that one of them may be found spoiled. */
export function standingJars(part: LoadPart): number {
  return unaccounted(part) + part.sealed + part.failed - part.failedAgain + part.aside;
}

/** Jars of a batch that are still kept somewhere and went through no canner. */
export function standingOutside(batch: Batch): number {
  return batch.ready + batch.setAside;
}

type Spoiled = { load: string | null; count: number; jars: readonly number[] };

/**
 * Counts jars as spoiled: those of a load, or those of the batch that went through none. Without a
 * load, those of all its loads come first, the last load in front.
 */
export function spoil(state: State, batch: Batch, { load, count, jars }: Spoiled): void {
  const ids = load === null ? [...batch.loads].reverse() : [load];
  let left = count;
  for (const id of ids) {
    for (const part of state.loads[id]?.parts ?? []) {
      if (part.batch !== batch.id) continue;
      left -= spoilPart(part, left, jars);
    }
  }
  const outside = Math.min(left, standingOutside(batch));
  const aside = batch.option ? Math.min(outside, batch.setAside) : 0;
  batch.setAside -= aside;
  batch.ready -= outside - aside;
  batch.spoiled += outside;
  recount(state, batch);
}

/** Jars nobody has counted yet go first, then sealed ones, then those kept cold. */
function spoilPart(part: LoadPart, most: number, jars: readonly number[]): number {
  const count = Math.min(most, standingJars(part));
  const named = jars.filter((jar) => part.failedJars.includes(jar));
  let left = count;
  const take = (there: number) => {
    const taken = Math.max(0, Math.min(left, there));
    left -= taken;
    return taken;
  };
  part.failed -= take(named.length);
  part.failedJars = part.failedJars.filter((jar) => !named.includes(jar));
  take(unaccounted(part));
  part.sealed -= take(part.sealed);
  part.failed -= take(part.failed - part.failedAgain);
  part.aside -= take(part.aside);
  part.spoiled += count;
  if (count > 0) part.spoiledJars.push(...jars);
  return count;
}
