/** The lots of a batch and their jars: looking them up, and how many are where. */
import type { Part } from "../facts/fields.ts";
import type { Batch, Load, LoadPart, State } from "../state.ts";
import type { BatchLot, Gone, Jar } from "./jar.ts";

/** Lots that were not given up. */
export function liveLots(batch: Batch): BatchLot[] {
  return batch.lots.filter((lot) => lot.abandonedAt === undefined);
}

/** A lot with the batch it is in. */
export type LotOf = { batch: Batch; lot: BatchLot };

/** The lots of a batch, all of them. */
export function lotsIn(batch: Batch): LotOf[] {
  return batch.lots.map((lot) => ({ batch, lot }));
}

/** Whether a batch has other lots that were not given up. */
export function isShared(batch: Batch): boolean {
  return liveLots(batch).length > 1;
}

/** The lot that is filled now: the first with more to come, else the last. */
export function fillingLot(batch: Batch): BatchLot | undefined {
  const live = liveLots(batch);
  return live.find((lot) => !lot.allFilled) ?? live.at(-1);
}

/** The batch that a lot is in, by the lot's id. */
export function batchOfLot(state: State, id: string): Batch | undefined {
  const own = state.batches[id];
  if (own) return own;
  const batch = state.lotsOf[id];
  return batch === undefined ? undefined : state.batches[batch];
}

export function lotOf(state: State, id: string): BatchLot | undefined {
  return batchOfLot(state, id)?.lots.find((lot) => lot.id === id);
}

/** A lot with its batch, by the lot's id. */
export function findLot(state: State, id: string): LotOf | undefined {
  const batch = batchOfLot(state, id);
  const lot = lotOf(state, id);
  return batch && lot && { batch, lot };
}

/** The variety of a batch of one lot; null where none was named, or it has several. */
export function onlyVariety(batch: Batch): string | null {
  const [lot, ...others] = liveLots(batch);
  return others.length === 0 ? (lot?.variety ?? null) : null;
}

/** Whether a jar is filled and stands before the canner. */
export function isReady(jar: Jar): boolean {
  return jar.load === undefined && jar.gone === undefined;
}

export function readyOf(lot: BatchLot): Jar[] {
  return lot.abandonedAt === undefined ? lot.jars.filter(isReady) : [];
}

/** How many jars of a batch are filled and in no canner yet. */
export function ready(batch: Batch): number {
  return sum(batch.lots, (lot) => readyOf(lot).length);
}

/** How many jars of a lot were filled, without those that were emptied again. */
export function filledOf(lot: BatchLot): number {
  return lot.jars.filter((jar) => jar.gone?.what !== "again").length;
}

/** How many jars of a batch were filled, without those that were emptied again. */
export function filled(batch: Batch): number {
  return sum(batch.lots, filledOf);
}

/** Whether nothing more of a batch is to be filled. */
export function allFilled(batch: Batch): boolean {
  return liveLots(batch).every((lot) => lot.allFilled);
}

/** Jars of a batch that were emptied and wait to be filled again. */
export function again(batch: Batch): number {
  return sum(liveLots(batch), (lot) => lot.again);
}

/** The jars to expect of all its lots; null where that is not known of any. */
export function jarsExpected(batch: Batch): number | null {
  const known = liveLots(batch).flatMap((lot) => lot.expectedJars ?? []);
  return known.length > 0 ? sum(known, (count) => count) : null;
}

/** Pounds of all its lots; null where that is not known of any. */
export function weightLb(batch: Batch): number | null {
  const known = liveLots(batch).flatMap((lot) => lot.weightLb ?? []);
  // A sum of thousandths is one.
  return known.length > 0 ? Math.round(sum(known, (pounds) => pounds) * 1000) / 1000 : null;
}

/** When the first of the jars that stand filled was filled; undefined where none stands. */
export function standingSince(jars: readonly Jar[]): number | undefined {
  return jars.length > 0 ? Math.min(...jars.map((jar) => jar.filledFrom)) : undefined;
}

export function readyJars(batch: Batch): Jar[] {
  return batch.lots.flatMap(readyOf);
}

/** The parts of a load whose lots were not given up. */
export function liveParts(state: State, load: Load): LoadPart[] {
  return load.parts.filter((part) => lotOf(state, part.lot)?.abandonedAt === undefined);
}

/** The jars of one lot in one load, in the order of their numbers. */
export function jarsIn(state: State, load: Load, part: LoadPart): Jar[] {
  return lotOf(state, part.lot)?.jars.filter((jar) => jar.load === load.id) ?? [];
}

/** Where the jars of one lot in one load are: each is counted in `jars` and in one other. */
type Tally = {
  jars: number;
  sealed: number;
  /** Did not seal, those that were emptied again among them. */
  failed: number;
  broken: number;
  again: number;
  failedAgain: number;
  aside: number;
  spoiled: number;
  unaccounted: number;
};

export function tallyOf(jars: readonly Jar[]): Tally {
  const count = (test: (jar: Jar) => boolean) => jars.filter(test).length;
  const went = (what: Gone["what"]) => count((jar) => jar.gone?.what === what);
  return {
    jars: jars.length,
    sealed: count((jar) => jar.seal === "sealed" && !jar.gone),
    failed: count(didFail),
    broken: went("broken"),
    again: went("again"),
    failedAgain: count((jar) => jar.seal === "failed" && jar.gone?.what === "again"),
    aside: went("aside"),
    spoiled: went("spoiled"),
    unaccounted: count(isUnaccounted),
  };
}

/** Whether a jar did not seal and did not spoil; it may have been emptied since. */
export function didFail({ seal, gone }: Jar): boolean {
  return seal === "failed" && (gone === undefined || gone.what === "again");
}

/** Whether every jar of a load was emptied before any seal was checked. */
export function isEmptied(state: State, load: Load): boolean {
  return load.parts.every((part) => {
    const { jars, again, failedAgain } = tally(state, load, part);
    return again - failedAgain >= jars;
  });
}

export function tally(state: State, load: Load, part: LoadPart): Tally {
  return tallyOf(jarsIn(state, load, part));
}

export function isUnaccounted(jar: Jar): boolean {
  return jar.seal === undefined && jar.gone === undefined;
}

/** Every jar in a load, of all its lots. */
export function loadJars(state: State, load: Load): Jar[] {
  return load.parts.flatMap((part) => jarsIn(state, load, part));
}

/** The number of a lot's next jar. */
export function nextNumber(lot: BatchLot): number {
  return 1 + Math.max(0, ...lot.jars.map((jar) => jar.number));
}

/** The next jars of a lot as they go into a load, by their numbers; more than stand are new. */
export function partOf(lot: BatchLot, jars: number): Part {
  const standing = readyOf(lot).map(({ number }) => number);
  const next = nextNumber(lot);
  const numbers = Array.from({ length: jars }, (_, i) => standing[i] ?? next + i - standing.length);
  return { batch: lot.id, jars, first: numbers[0] ?? next, numbers };
}

export function sum<T>(list: readonly T[], of: (one: T) => number): number {
  return list.reduce((total, one) => total + of(one), 0);
}
