/**
 * Readings over time with the line they should keep to. Canner water and gauge pressure are not the
 * coldest spot in a jar, so nothing here says what heat the food received.
 */

import { loadsWith } from "../kitchen/jars/canner-room.ts";
import type { BatchLot } from "../kitchen/jars/jar.ts";
import { gaugeTargetPsi } from "../kitchen/loads/gauge-target.ts";
import { runOfRole } from "../kitchen/owners.ts";
import { seenFor } from "../kitchen/places.ts";
import {
  type Batch,
  type Load,
  type Measurement,
  type State,
  type Stretch,
  wallOf,
} from "../kitchen/state.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import { BOIL_DOUBT_F, boilingPointF } from "../reckon/boiling.ts";
import { LOW_TEMPERATURE_F } from "../reckon/trade-numbers.ts";

export type Point = { at: number; value: number };

/** From and to, wall ms. */
type TimeSpan = { from: number; to: number };

export type Trace = {
  what: string;
  unit: string;
  load: string | null;
  points: Point[];
  /** What it should reach, where the process sets a target, and what that is called. */
  target: { value: number; words: string } | null;
  /** Minutes at or above the target by straight lines between readings; null without a target. */
  minutesAtTarget: number | null;
  /** Those of them within the process; null where it belongs to none. */
  minutesInProcess: number | null;
  /** Process from and to, wall ms, where it belongs to one. */
  process: TimeSpan | null;
  /** When the condition was lost, as reported; nothing is joined or counted across one. */
  losses: TimeSpan[];
};

/** A single reading is a fact for the table, not a curve. */
const LEAST_POINTS = 2;
/** Readings further apart than this are not joined by a line. */
const LONGEST_JOIN_MS = 30 * MINUTE_MS;

/** Traces of a batch's own readings and of its lots' loads', those with at least two readings. */
export function tracesOf(
  given: State,
  batch: Batch,
  now: number,
  lots: readonly BatchLot[] = batch.lots,
): Trace[] {
  const state = seenFor(given, batch.id);
  const traces = grouped(batch.readings).map(([what, unit, readings]) => {
    const base = { what, unit, load: null, target: null, process: null, losses: [] };
    return traceOf(state, readings, base);
  });
  for (const load of loadsWith(state, batch, lots)) {
    const run = runOfRole(load, "treatment");
    const from = run?.kept?.stretches[0]?.from ?? run?.startedAt;
    const until = run?.endedAt ?? now;
    const process =
      from === undefined ? null : { from: wallOf(state, from), to: wallOf(state, until) };
    const losses = lossesOf(run?.kept?.stretches ?? [], until).map((one) => {
      return { from: wallOf(state, one.from), to: wallOf(state, one.to) };
    });
    for (const [what, unit, readings] of grouped(load.readings)) {
      const target = targetOf(load, unit);
      const base = { what, unit, load: load.id, target, process, losses };
      traces.push(traceOf(state, readings, base));
    }
  }
  return traces.filter((trace) => trace.points.length >= LEAST_POINTS);
}

/** From the end of each lost stretch to the beginning of the next, or to the end. */
function lossesOf(stretches: readonly Stretch[], until: number): TimeSpan[] {
  return stretches.flatMap(({ to, ended }, at) => {
    if (to === undefined || ended === "out") return [];
    return [{ from: to, to: Math.max(to, stretches[at + 1]?.from ?? until) }];
  });
}

function grouped(readings: readonly Measurement[]): [string, string, Measurement[]][] {
  const groups = new Map<string, [string, string, Measurement[]]>();
  for (const reading of readings) {
    const key = `${reading.what}\n${reading.unit}`;
    const group = groups.get(key);
    if (group) group[2].push(reading);
    else groups.set(key, [reading.what, reading.unit, [reading]]);
  }
  return [...groups.values()];
}

function targetOf(load: Load, unit: string): Trace["target"] {
  const { terms } = load;
  if (!terms) return null;
  if (unit === "psi") {
    const value = gaugeTargetPsi(load);
    const high = value !== undefined && value !== terms.pressurePsi ? " on this gauge" : "";
    return value === undefined ? null : { value, words: `${value} psi${high}` };
  }
  if (unit !== "F" || terms.method === "pressure") return null;
  if (terms.method === "low-temperature") {
    return { value: LOW_TEMPERATURE_F.min, words: `${LOW_TEMPERATURE_F.min} °F` };
  }
  const boils = Math.round((boilingPointF(terms.altitudeFt) - BOIL_DOUBT_F) * 10) / 10;
  return { value: boils, words: `${boils} °F, boiling here within ${BOIL_DOUBT_F} °F` };
}

function traceOf(
  state: State,
  readings: readonly Measurement[],
  base: Omit<Trace, "points" | "minutesAtTarget" | "minutesInProcess">,
): Trace {
  const points = readings
    .map(({ at, value }) => ({ at: Math.round(wallOf(state, at)), value }))
    .sort((a, b) => a.at - b.at);
  const { target, process, losses } = base;
  const minutes = target ? minutesAtOrAbove(points, target.value, losses) : null;
  const inside = process
    ? points.filter((one) => one.at >= process.from && one.at <= process.to)
    : [];
  const within = target && process ? minutesAtOrAbove(inside, target.value, losses) : null;
  return { ...base, points, minutesAtTarget: minutes, minutesInProcess: within };
}

/** Minutes at or above a value, by straight lines between readings that are joined. */
export function minutesAtOrAbove(
  points: readonly Point[],
  value: number,
  losses: readonly TimeSpan[] = [],
): number {
  let ms = 0;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1], points[i]];
    if (!a || !b || !areJoined(a, b, losses)) continue;
    const span = b.at - a.at;
    if (a.value >= value && b.value >= value) ms += span;
    else if (a.value >= value || b.value >= value) {
      const above = Math.max(a.value, b.value) - value;
      ms += span * (above / Math.abs(b.value - a.value));
    }
  }
  return Math.round((ms / MINUTE_MS) * 10) / 10;
}

/** Whether they are near enough to each other, with nothing lost between them. */
function areJoined(a: Point, b: Point, losses: readonly TimeSpan[]): boolean {
  if (b.at - a.at > LONGEST_JOIN_MS) return false;
  return !losses.some(({ from, to }) => from < b.at && to > a.at);
}

/** Pieces of a trace whose readings are joined by a line. */
export function joined(points: readonly Point[], losses: readonly TimeSpan[] = []): Point[][] {
  const pieces: Point[][] = [];
  for (const point of points) {
    const piece = pieces.at(-1);
    const last = piece?.at(-1);
    if (piece && last && areJoined(last, point, losses)) piece.push(point);
    else pieces.push([point]);
  }
  return pieces;
}

/**
 * At most about `most` points that keep the first, the last, and in each even slice of time the
 * lowest and the highest, in their order.
 */
export function thinnedPoints(points: readonly Point[], most: number): Point[] {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || points.length <= most) return [...points];
  const slices = Math.max(1, Math.floor((most - 2) / 2));
  const width = (last.at - first.at) / slices || 1;
  const kept = new Set<Point>([first, last]);
  let low: Point | undefined;
  let high: Point | undefined;
  let slice = 0;
  const keep = () => {
    if (low) kept.add(low);
    if (high) kept.add(high);
  };
  for (const point of points) {
    const here = Math.min(slices - 1, Math.floor((point.at - first.at) / width));
    if (here !== slice) {
      keep();
      low = undefined;
      high = undefined;
      slice = here;
    }
    if (!low || point.value < low.value) low = point;
    if (!high || point.value > high.value) high = point;
  }
  keep();
  return points.filter((point) => kept.has(point));
}
