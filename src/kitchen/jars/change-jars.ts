/**
 * Which jars a report is about: those it names, else any that it can be about. Their ids then
 * stand for jars that nobody told apart.
 */
import type { Load, LoadPart, State } from "../state.ts";
import type { BatchLot, Gone, Jar } from "./jar.ts";
import { isUnaccounted, jarsIn, nextNumber, readyOf } from "./lots.ts";

/** As many of the jars as are meant, the named ones first; marks those that were only guessed. */
export function chosen(
  jars: readonly Jar[],
  count: number,
  numbers: readonly number[] = [],
): Jar[] {
  const named = jars.filter((jar) => jar.number > 0 && numbers.includes(jar.number));
  const others = jars.filter((jar) => !named.includes(jar));
  const guessed = others.slice(0, Math.max(0, count - named.length));
  for (const jar of named) {
    jar.named = true;
    delete jar.guessed;
  }
  if (guessed.length < others.length) for (const jar of guessed) jar.guessed = true;
  return [...named, ...guessed].slice(0, count);
}

/** What is known of a jar as it is told of. */
export type NewJar = Pick<Jar, "filledFrom" | "filledAt" | "brew" | "brewFrom">;

/** The jars a report names that were told of before: for them it means no others. */
export function toldBefore(
  jars: readonly Jar[],
  numbers: readonly number[],
  isTold: (jar: Jar) => boolean,
): Jar[] {
  return jars.filter((jar) => jar.number > 0 && numbers.includes(jar.number) && isTold(jar));
}

/** Makes a lot's filled jars as many as were reported; those named in `without` go first. */
export function fillTo(
  lot: BatchLot,
  count: number,
  made: NewJar,
  { newId, without = [] }: { newId: () => string; without?: readonly number[] | undefined },
): void {
  const standing = readyOf(lot);
  for (const _ of Array.from({ length: Math.max(0, count - standing.length) })) {
    lot.jars.push({ id: newId(), number: nextNumber(lot), ...made });
  }
  const named = standing.filter(({ number }) => without.includes(number));
  const kept = standing.filter((jar) => !named.includes(jar));
  const over = new Set([...named, ...kept.slice(count)]);
  if (over.size > 0) lot.jars = lot.jars.filter((jar) => !over.has(jar));
}

type TakenJars = {
  count: number;
  numbers?: readonly number[];
  made: NewJar;
  newId: () => string;
};

/** Takes filled jars that are in no canner out of those that go into one. */
export function takeReady(
  lot: BatchLot,
  gone: Gone,
  { count, numbers, made, newId }: TakenJars,
): void {
  const taken = chosen(readyOf(lot).toReversed(), count, numbers);
  for (const jar of taken) jar.gone = gone;
  // A last jar that is not full is set aside without having been counted.
  for (let missing = count - taken.length; missing > 0; missing -= 1) {
    lot.jars.push({ id: newId(), number: 0, ...made, gone });
  }
}

/** Whether jars stand filled under all of these numbers; older journals name none. */
export function areReady(lot: BatchLot | undefined, numbers: readonly number[] = []): boolean {
  const standing = lot ? readyOf(lot).map(({ number }) => number) : [];
  return numbers.every((number) => standing.includes(number));
}

type PutIn = {
  jars: number;
  first: number;
  numbers?: number[];
  made: NewJar;
  newId: () => string;
};

/**
 * Puts a lot's filled jars into a load. Older journals number them from `first` on, whatever jar
 * was set aside before.
 */
export function putIn(
  lot: BatchLot,
  load: string,
  { jars, first, numbers, made, newId }: PutIn,
): Jar[] {
  const missing = jars - readyOf(lot).length;
  if (missing > 0) fillTo(lot, jars, made, { newId });
  const standing = readyOf(lot);
  const into = numbers
    ? standing.filter((jar) => numbers.includes(jar.number))
    : standing.slice(0, jars);
  into.forEach((jar, index) => {
    jar.load = load;
    if (numbers) return;
    const number = first + index;
    for (const other of lot.jars) if (other !== jar && other.number === number) other.number = 0;
    jar.number = number;
  });
  return into;
}

/** Jars of a part that nobody has accounted for, and behind them those counted as sealed. */
function openOrSealed(jars: readonly Jar[]): Jar[] {
  return [
    ...jars.filter(isUnaccounted),
    ...jars.filter((jar) => jar.seal === "sealed" && !jar.gone),
  ];
}

/** A jar that was only guessed to be gone is named as there: another is gone instead. */
function foundThere(all: readonly Jar[], numbers: readonly number[]): void {
  for (const jar of all) {
    if (!jar.gone || !jar.guessed || !numbers.includes(jar.number)) continue;
    const open = openOrSealed(all.toReversed());
    const other = open.find(({ number }) => !numbers.includes(number));
    if (!other) continue;
    other.gone = jar.gone;
    other.guessed = true;
    delete jar.gone;
    delete jar.guessed;
  }
}

export function sealJars(
  state: State,
  load: Load,
  part: LoadPart,
  count: number,
  numbers: readonly number[] = [],
): void {
  foundThere(jarsIn(state, load, part), numbers);
  const open = jarsIn(state, load, part).filter(isUnaccounted);
  const named = open.filter((jar) => numbers.includes(jar.number));
  const others = open.filter((jar) => !named.includes(jar));
  const told = toldBefore(jarsIn(state, load, part), numbers, (jar) => !isUnaccounted(jar));
  const left = Math.max(0, count - told.length);
  for (const jar of named) jar.named = true;
  for (const jar of [...named, ...others].slice(0, left)) jar.seal = "sealed";
}

/**
 * Those that failed; what was counted as sealed stays as many as there are jars for, unless it was
 * the failed one itself that was called sealed.
 */
export function failJars(
  state: State,
  load: Load,
  part: LoadPart,
  count: number,
  numbers: readonly number[],
): void {
  const all = jarsIn(state, load, part);
  foundThere(all, numbers);
  const counted = (jar: Jar) => jar.seal === "sealed" && !jar.gone;
  const called = all.filter((jar) => counted(jar) && jar.named && numbers.includes(jar.number));
  const before = all.filter(counted).length - called.length;
  const able = openOrSealed(all.toReversed());
  const told = toldBefore(all, numbers, (jar) => jar.seal === "failed" || jar.gone !== undefined);
  const left = Math.max(0, count - told.length);
  for (const jar of chosen(able, left, numbers)) jar.seal = "failed";
  const now = all.filter(counted).length;
  sealJars(state, load, part, before - now);
}

/** Takes jars off a load: those nobody has counted first, then those that had sealed. */
export function takeOff(
  jars: readonly Jar[],
  gone: Gone,
  most: number,
  numbers?: readonly number[],
): number {
  const taken = chosen(openOrSealed(jars.toReversed()), most, numbers);
  for (const jar of taken) jar.gone = gone;
  return taken.length;
}

/** Empties jars that are to be processed again as new ones: failed ones, or any of the load. */
export function emptyJars(
  lot: BatchLot,
  jars: readonly Jar[],
  { failed, most, at }: { failed: boolean; most: number; at: number },
): number {
  const gone: Gone = { what: "again", at };
  const open = jars.filter((jar) => jar.seal === "failed" && !jar.gone).toReversed();
  const emptied = failed ? chosen(open, most) : undefined;
  for (const jar of emptied ?? []) jar.gone = gone;
  const count = emptied ? emptied.length : takeOff(jars, gone, most);
  lot.again += count;
  if (count > 0) lot.allFilled = false;
  return count;
}

/** Jars that are kept as food: sealed ones, or those that went through no canner. */
export function inStore(lot: BatchLot, canned: boolean): Jar[] {
  return lot.jars.filter((jar) => {
    const kept = canned ? jar.seal === "sealed" && !jar.gone : !jar.gone && !jar.load;
    return kept && !jar.left;
  });
}

/** How jars left those in store, as food or not. */
type Leaving = { count: number; left: NonNullable<Jar["left"]>; numbers?: readonly number[] };

/** Jars leave those in store. One that was only guessed to have left may be named now. */
export function leaveStore(
  lot: BatchLot,
  canned: boolean,
  { count, left, numbers = [] }: Leaving,
): void {
  for (const jar of lot.jars) {
    if (!jar.left || !jar.guessed || !numbers.includes(jar.number)) continue;
    const other = inStore(lot, canned).find(({ number }) => !numbers.includes(number));
    if (!other) continue;
    other.left = jar.left;
    other.guessed = true;
    delete jar.left;
    delete jar.guessed;
  }
  // Two data folders may tell different things of one jar: both are kept, and the worse one holds.
  const told = toldBefore(lot.jars, numbers, (jar) => jar.left !== undefined && !jar.guessed);
  for (const jar of told) toldAgain(jar, left);
  const more = Math.max(0, count - told.length);
  const gone = chosen(inStore(lot, canned), more, numbers);
  for (const jar of gone) jar.left = left;
  if (left.what === "opened") lot.openedBeyond += more - gone.length;
}

/** Jars that were given away, nothing else told of them: those named, else the last one first. */
export function givenAway({ jars }: BatchLot, numbers: readonly number[] = []): Jar[] {
  const given = jars.filter(({ left, also }) => left?.what === "given" && also === undefined);
  if (numbers.length > 0) return given.filter(({ number }) => numbers.includes(number));
  return given.toSorted((one, other) => (other.left?.at ?? 0) - (one.left?.at ?? 0));
}

function toldAgain(jar: Jar, left: NonNullable<Jar["left"]>): void {
  const before = jar.left;
  if (!before) return;
  const worse = left.what === "discarded" && before.what !== "discarded";
  jar.left = worse ? left : before;
  jar.also = [...(jar.also ?? []), worse ? before : left];
}
