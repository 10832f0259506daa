/** Counting jars: what a canner holds, what a batch has where, and whether it adds up. */
import { JAR_SIZES, type JarSize, type ProcessTerms } from "../recipe/recipe.ts";
import { WATER_START_F } from "../reckon/trade-numbers.ts";
import type { Canner } from "./facts/fields.ts";
import type { Batch, Load, LoadPart, State } from "./state.ts";

/**
 * How many jars of a size a canner holds. A size it names no number for takes the number of the
 * next larger size it names; none where even that is missing.
 */
export function capacity(canner: Canner | undefined, jar: JarSize): number {
  if (!canner) return 0;
  for (const size of JAR_SIZES.slice(JAR_SIZES.indexOf(jar))) {
    const held = canner.holds[size];
    if (held !== undefined) return held;
  }
  return 0;
}

export function cannerOf(state: State, id: string): Canner | undefined {
  return state.kitchen.canners.find((canner) => canner.id === id);
}

/** The most jars of this batch's size that any canner of the kitchen takes at once. */
export function largestLoad(state: State, jar: JarSize): number {
  return Math.max(0, ...state.kitchen.canners.map((canner) => capacity(canner, jar)));
}

export function loadsOf(state: State, batch: Batch): Load[] {
  return batch.loads.flatMap((id) => state.loads[id] ?? []);
}

/** Jars of a load's part that nobody has accounted for yet. */
export function unaccounted(part: LoadPart): number {
  const { jars, sealed, failed, broken, again, failedAgain, aside, spoiled } = part;
  return Math.max(0, jars - sealed - failed - broken - (again - failedAgain) - aside - spoiled);
}

type JarCounts = {
  filled: number;
  processed: number;
  sealed: number;
  failed: number;
  setAside: number;
  broken: number;
  /** Counted nowhere else: not as failed, sealed or set aside. */
  spoiled: number;
};

/** A batch's jars over all its loads; jars sent through again count in their last load only. */
export function jarCounts(state: State, batch: Batch): JarCounts {
  const counts = {
    filled: batch.filled,
    processed: 0,
    sealed: 0,
    failed: 0,
    setAside: batch.setAside,
    broken: batch.brokenBefore,
    spoiled: batch.spoiled,
  };
  for (const load of loadsOf(state, batch)) {
    for (const part of load.parts) {
      if (part.batch !== batch.id) continue;
      if (load.unloadedAt !== undefined) counts.processed += part.jars - part.again - part.aside;
      counts.setAside += part.aside;
      counts.sealed += part.sealed;
      counts.failed += part.failed - part.failedAgain;
      counts.broken += part.broken;
      counts.spoiled += part.spoiled;
    }
  }
  return counts;
}

/** What does not add up in a batch's jars, as a sentence; undefined where all is accounted for. */
export function countTrouble(state: State, batch: Batch): string | undefined {
  const { filled, processed, sealed, failed, setAside, broken, spoiled } = jarCounts(state, batch);
  const before = batch.brokenBefore;
  const after = broken - before;
  const off = spoiled - batch.spoiled;
  if (filled !== processed + setAside + before + batch.spoiled) {
    const went = `${processed} processed, ${setAside} set aside and ${before} broken`;
    return `${filled} filled, but ${went}`;
  }
  if (processed !== sealed + failed + after + off) {
    const spoilt = off > 0 ? `, ${off} spoiled` : "";
    const went = `${sealed} sealed, ${failed} failed${spoilt} and ${after} broken`;
    return `${processed} processed, but ${went}`;
  }
  return undefined;
}

/** Why two lots of jars may not share a load; undefined where they may. */
export function cannotShare(first: ProcessTerms, second: ProcessTerms): string | undefined {
  if (first.method !== second.method) {
    return `one wants a ${first.method} process and the other ${second.method}`;
  }
  if (first.minutes !== second.minutes) {
    return `one is tested for ${first.minutes} minutes and the other for ${second.minutes}`;
  }
  if (first.pressurePsi !== second.pressurePsi) {
    return `one wants ${first.pressurePsi} pounds and the other ${second.pressurePsi}`;
  }
  if (first.pack !== second.pack) {
    const { raw, hot } = WATER_START_F;
    return `a raw pack wants the water at ${raw} degrees and a hot pack at ${hot}`;
  }
  return undefined;
}
