/**
 * A time axis on which a night's cooling does not squeeze the morning's work: it runs evenly, but
 * where nothing begins or ends for a long time, the wait is drawn short and marked as broken.
 */
import { scaleUtc } from "d3-scale";
import { instantOf, MINUTE_MS, offsetMs } from "../../kitchen/time.ts";

type Span = { from: number; to: number };

export type TimeAxis = Span & {
  /** Where an instant lies, 0 to 1; instants outside lie at the ends. */
  at(instant: number): number;
  /** Waits that are drawn shorter than they were. */
  breaks: Span[];
};

/** Waits longer than this are drawn as long as this. */
const LONGEST_DRAWN_MS = 90 * MINUTE_MS;
const LEAST_SPAN_MS = MINUTE_MS;

/**
 * An axis through instants at which something happened (at least one), in any order; `longestMs` is
 * how long the longest wait is drawn.
 */
export function timeAxis(instants: readonly number[], longestMs = LONGEST_DRAWN_MS): TimeAxis {
  const points = [...new Set(instants)].sort((a, b) => a - b);
  const from = points[0] ?? 0;
  const to = Math.max(points.at(-1) ?? 0, from + LEAST_SPAN_MS);
  if ((points.at(-1) ?? 0) < to) points.push(to);
  const breaks: Span[] = [];
  let whole = 0;
  const drawn = points.map((here, i) => {
    const before = points[i - 1] ?? here;
    if (here - before > longestMs) breaks.push({ from: before, to: here });
    whole += Math.min(here - before, longestMs);
    return whole;
  });
  const scale = scaleUtc(points, drawn).clamp(true);
  return { from, to, breaks, at: (instant) => scale(instant) / whole };
}

/**
 * Round instants to label, about this many, in multiples of `leastMs` of the zone's own time and
 * none inside a broken wait. The first of each part between such waits come first.
 */
export function axisTicks(axis: TimeAxis, zone: string, most: number, leastMs: number): number[] {
  const ends = [...axis.breaks.map(({ from }) => from), axis.to];
  const parts = [axis.from, ...axis.breaks.map(({ to }) => to)].map((from, i) => {
    const to = ends[i] ?? axis.to;
    const round = localTicks({ from, to }, zone, most * (axis.at(to) - axis.at(from)), leastMs);
    return round.length > 0 ? round : [from];
  });
  return [...parts.flatMap((ticks) => ticks.slice(0, 1)), ...parts.flatMap((t) => t.slice(1))];
}

/** Round local times in a span, as instants. */
function localTicks({ from, to }: Span, zone: string, count: number, leastMs: number): number[] {
  const local = (at: number) => at + offsetMs(at, zone);
  const dates = scaleUtc([local(from), local(to)], [0, 1]).ticks(Math.max(count, 0.5));
  const instants = dates
    .filter((date) => date.getTime() % leastMs === 0)
    .map((date) => {
      const [year, month, day] = [date.getUTCFullYear(), date.getUTCMonth() + 1, date.getUTCDate()];
      const [hour, minute, second] = [date.getUTCHours(), date.getUTCMinutes(), 0];
      return instantOf({ year, month, day, hour, minute, second }, zone);
    });
  return [...new Set(instants)].filter((at) => at >= from && at <= to);
}
