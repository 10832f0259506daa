/** Counting jars: what a canner holds, what a batch has where, and whether it adds up. */
import { JAR_SIZES, type JarSize, type ProcessTerms } from "../../recipe/recipe.ts";
import { WATER_START_F } from "../../reckon/trade-numbers.ts";
import type { Canner } from "../facts/fields.ts";
import type { Batch, Load, State } from "../state.ts";
import type { BatchLot } from "./jar.ts";
import { filledOf, jarsIn, liveLots, ready, sum, tallyOf } from "./lots.ts";

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

/** The loads of a batch that jars of some of its lots went into. */
export function loadsWith(state: State, batch: Batch, lots: readonly BatchLot[]): Load[] {
  const ids = new Set(lots.map(({ id }) => id));
  return loadsOf(state, batch).filter((load) => load.parts.some((part) => ids.has(part.lot)));
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

/** A lot's jars over all its loads; jars sent through again count in their last load only. */
export function lotCounts(state: State, batch: Batch, lot: BatchLot): JarCounts {
  const before = tallyOf(lot.jars.filter((jar) => jar.load === undefined));
  const setAside = lot.jars.filter((jar) => jar.gone?.what === "set-aside").length;
  const counts = {
    filled: filledOf(lot),
    processed: 0,
    sealed: 0,
    failed: 0,
    setAside,
    broken: before.broken,
    spoiled: before.spoiled,
  };
  for (const load of loadsOf(state, batch)) {
    for (const part of load.parts) {
      if (part.lot !== lot.id) continue;
      const there = tallyOf(jarsIn(state, load, part));
      if (load.unloadedAt !== undefined) counts.processed += there.jars - there.again - there.aside;
      counts.setAside += there.aside;
      counts.sealed += there.sealed;
      counts.failed += there.failed - there.failedAgain;
      counts.broken += there.broken;
      counts.spoiled += there.spoiled;
    }
  }
  return counts;
}

/** The jars of all lots of a batch that were not given up. */
export function jarCounts(state: State, batch: Batch): JarCounts {
  const [first, ...others] = batch.lots.map((lot) => lotCounts(state, batch, lot));
  const added = (name: keyof JarCounts) => (first?.[name] ?? 0) + sum(others, (one) => one[name]);
  return {
    filled: added("filled"),
    processed: added("processed"),
    sealed: added("sealed"),
    failed: added("failed"),
    setAside: added("setAside"),
    broken: added("broken"),
    spoiled: added("spoiled"),
  };
}

/** What does not add up in a lot's jars, as a sentence; undefined where all is accounted for. */
export function lotTrouble(state: State, batch: Batch, lot: BatchLot): string | undefined {
  const { filled, processed, sealed, failed, setAside, broken, spoiled } = lotCounts(
    state,
    batch,
    lot,
  );
  const outside = tallyOf(lot.jars.filter((jar) => jar.load === undefined));
  const before = outside.broken;
  const after = broken - before;
  const off = spoiled - outside.spoiled;
  if (filled !== processed + setAside + before + outside.spoiled) {
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

/** What does not add up in a batch's jars, lot by lot; undefined where all is accounted for. */
export function countTrouble(state: State, batch: Batch): string | undefined {
  const troubles = batch.lots.flatMap((lot) => {
    const trouble = lotTrouble(state, batch, lot);
    return trouble ? [batch.lots.length > 1 ? `${lot.mark}: ${trouble}` : trouble] : [];
  });
  return troubles.length > 0 ? troubles.join("; ") : undefined;
}

/** Jars to fill of one lot for the next load. */
type NextFill = { lot: BatchLot; count: number };

/** What is still to be filled for the load a batch's jars stand for, lot after lot. */
export function nextFills(state: State, batch: Batch): NextFill[] {
  const holds = batch.option && batch.jar ? largestLoad(state, batch.jar) : Number.MAX_SAFE_INTEGER;
  let room = holds - ready(batch);
  return liveLots(batch).flatMap((lot): NextFill[] => {
    const { expectedJars } = lot;
    if (lot.allFilled || room <= 0) return [];
    const left = lot.again > 0 ? lot.again : (expectedJars ?? room) - filledOf(lot);
    const count = Math.min(room, Math.max(1, left));
    room -= count;
    return [{ lot, count }];
  });
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

/** Whether jars that were tested for `wanted` get as much from a load as it is run. */
export function meets(run: ProcessTerms | null, wanted: ProcessTerms): boolean {
  if (!run || run.method !== wanted.method || run.pressurePsi !== wanted.pressurePsi) return false;
  return run.minutes >= wanted.minutes && run.pack === wanted.pack;
}
