/** What must hold of a simulated kitchen, each by its name. */
import { isDeepStrictEqual } from "node:util";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import { batchDeviations } from "../../src/kitchen/deviations.ts";
import type { KitchenEvent } from "../../src/kitchen/events.ts";
import { lotCounts, lotTrouble } from "../../src/kitchen/jars/canner-room.ts";
import type { BatchLot } from "../../src/kitchen/jars/jar.ts";
import type { Batch, State } from "../../src/kitchen/state.ts";
import { keepSnapshot, readSnapshot } from "../../src/session/reading/snapshot.ts";
import { slowJars, slowLateness, slowTimers } from "./slow-counts.ts";
import type { Row } from "./slow-reading.ts";

/** How late a timer may ring, and how many calls of a slow disk may lie between, at worst. */
const LATE_MS = 2000;
const SLOW_CALLS = 12;

/** A thing that must hold and does not: its name, and what was seen. */
export class Broken extends Error {
  readonly rule: string;

  constructor(rule: string, detail: string) {
    super(`${rule}: ${detail}`);
    this.rule = rule;
  }
}

export function must(rule: string, holds: boolean, detail: () => string): void {
  if (!holds) throw new Broken(rule, detail());
}

export function sameHistory(
  acknowledged: readonly string[],
  events: readonly KitchenEvent[],
): void {
  acknowledged.forEach((event, at) => {
    const found = JSON.stringify(events[at]);
    const same =
      found === event || isDeepStrictEqual(JSON.parse(found ?? "null"), JSON.parse(event));
    must("no acknowledged event is lost", same, () => `${at}: ${event} became ${found}`);
  });
}

export function sameState(lived: State, replayed: State): void {
  // The course of the day is worked out, and never from the log.
  const own = { ...lived, course: replayed.course };
  same("replay gives the state that was lived", own, replayed);
}

/** What a reader is given from a snapshot is what it would have worked out. */
export function sameFromSnapshot(state: State): void {
  const place = { disk: new MemoryDisk(), folder: "/home", build: "this" };
  place.disk.makeFolder(place.folder);
  keepSnapshot(place, "key", state);
  const read = readSnapshot(place, "key", () => state.history);
  if (!read) throw new Broken("a snapshot can be read", "it was not");
  same("a snapshot gives the state it was made of", state, read);
}

function same(rule: string, one: State, other: State): void {
  const [a, b] = [plain(one) as never, plain(other) as never];
  if (isDeepStrictEqual(a, b)) return;
  const differ = Object.keys(one).filter((key) => !isDeepStrictEqual(a[key], b[key]));
  const detail = differ.map((key) => `${key}: ${differenceOf(a[key], b[key], "")}`).join("\n");
  throw new Broken(rule, detail);
}

/** Without what is undefined; numbers that JSON does not carry by their names. */
function plain(state: State): unknown {
  const named = (_key: string, value: unknown) => {
    return typeof value === "number" && !Number.isFinite(value) ? `${value}` : value;
  };
  return JSON.parse(JSON.stringify(state, named));
}

function differenceOf(a: unknown, b: unknown, path: string): string {
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) {
    return `${path} ${JSON.stringify(a)} / ${JSON.stringify(b)}`;
  }
  for (const key of new Set([...Object.keys(a), ...Object.keys(b)])) {
    const [one, other] = [a[key as never], b[key as never]];
    if (!isDeepStrictEqual(one, other)) return differenceOf(one, other, `${path}.${key}`);
  }
  return path;
}

/** What came due was written once, unless a longer time was given in between. */
export function rangOnce(history: readonly KitchenEvent[]): void {
  const rung = new Set<string>();
  for (const event of history) {
    if (event.type === "timer-added") rung.delete(event.timer);
    if (event.type !== "due") continue;
    must("nothing rings twice", !rung.has(event.key), () => event.key);
    rung.add(event.key);
  }
}

export function timersRang(rows: readonly Row[], now: number): void {
  for (const timer of slowTimers(rows)) {
    if (timer.cancelled) continue;
    const wanted = timer.endsAt < now - 1000 ? 1 : 0;
    const near = Math.abs(timer.endsAt - now) <= 1000;
    const fits = timer.takenBack ? timer.rang >= wanted : timer.rang === wanted;
    must("every timer rings once", near || fits, () => {
      return `${timer.id} rang ${timer.rang} times, not ${wanted}`;
    });
  }
}

/** A timer rings at its time, but for what nobody watched and what a slow disk takes. */
export function rangInTime(rows: readonly Row[], slowMs: number, stallMs: number): void {
  // A simulated clock is looked at once an hour where nothing is kept: a stall may go unnoticed.
  const allowedMs = LATE_MS + slowMs * SLOW_CALLS + stallMs;
  for (const { id, lateMs } of slowLateness(rows)) {
    must("a timer rings in time", lateMs <= allowedMs, () => `${id} rang ${lateMs} ms late`);
  }
}

/** Every jar of a batch has one number, one place and no more room than its canner has. */
export function eachJarOnce(state: State, batch: Batch): void {
  for (const { id, jars } of batch.lots) {
    const numbers = jars.flatMap(({ number }) => (number > 0 ? [number] : []));
    const once = new Set(numbers).size === numbers.length;
    must("a jar's number is given once", once, () => `${id}: ${numbers.join()}`);
    const lost = jars.filter(({ load }) => load !== undefined && !batch.loads.includes(load));
    must("a jar is in a load of its batch", lost.length === 0, () => `${id}: ${lost.length} lost`);
  }
  for (const load of batch.loads.flatMap((id) => state.loads[id] ?? [])) {
    const parts = load.parts.map(({ lot }) => lot);
    must("a lot is in a load once", new Set(parts).size === parts.length, () => parts.join());
  }
}

export function jarsAddUp(state: State, batch: Batch, rows: readonly Row[], now: number): void {
  eachJarOnce(state, batch);
  for (const lot of batch.lots) lotAddsUp(state, batch, lot, rows, now);
}

function lotAddsUp(
  state: State,
  batch: Batch,
  lot: BatchLot,
  rows: readonly Row[],
  now: number,
): void {
  const counts = lotCounts(state, batch, lot);
  const broken = Object.entries(counts).filter(([, count]) => count < 0);
  must("no count is below none", broken.length === 0, () => `${lot.id} ${broken.join()}`);
  const again = rows.some((row) => row.type === "disposed" && row.what === "reprocess");
  const slow = slowJars(rows, lot.id);
  must("filled jars are those reported", again || slow.filled === counts.filled, () => {
    return `${lot.id}: ${counts.filled} in the log, ${slow.filled} by the reports`;
  });
  const gone = slow.brokenBefore + slow.brokenAfter;
  must("broken jars are those reported", again || gone === counts.broken, () => {
    return `${lot.id}: ${counts.broken} in the log, ${gone} by the reports`;
  });
  if (batch.state !== "complete" || !batch.option) return;
  const trouble = lotTrouble(state, batch, lot);
  const told = batchDeviations(state, batch, now, lot).some((one) => one.code === "jar-count");
  must("jar counts add up, or the log says not", !trouble || told, () => `${lot.id} ${trouble}`);
  if (told || rows.some((row) => row.type === "disposed")) return;
  const left = slow.loaded - slow.brokenAfter - slow.failed;
  must("what was loaded sealed, failed or broke", left === counts.sealed, () => {
    return `${lot.id}: ${counts.sealed} sealed, not ${left}`;
  });
}
