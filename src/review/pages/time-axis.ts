/**
 * A time axis on which a night's cooling does not squeeze the morning's work: it runs evenly, but
 * where nothing begins or ends for a long time, the wait is drawn short and marked as broken.
 */
import { HOUR_MS, MINUTE_MS } from "../../kitchen/time.ts";

type AxisBreak = { from: number; to: number };

export type TimeAxis = {
  from: number;
  to: number;
  /** Where an instant lies, 0 to 1; instants outside lie at the ends. */
  at(instant: number): number;
  /** Waits that are drawn shorter than they were. */
  breaks: AxisBreak[];
};

/** Waits longer than this are drawn as long as this. */
const LONGEST_DRAWN_MS = 90 * MINUTE_MS;
const LEAST_SPAN_MS = MINUTE_MS;

/** An axis through instants at which something happened (at least one), in any order. */
export function timeAxis(instants: readonly number[]): TimeAxis {
  const points = [...new Set(instants)].sort((a, b) => a - b);
  const from = points[0] ?? 0;
  const to = Math.max(points.at(-1) ?? 0, from + LEAST_SPAN_MS);
  if ((points.at(-1) ?? 0) < to) points.push(to);
  const drawn: number[] = [0];
  const breaks: AxisBreak[] = [];
  for (let i = 1; i < points.length; i++) {
    const [before = 0, here = 0] = [points[i - 1], points[i]];
    const span = here - before;
    if (span > LONGEST_DRAWN_MS) breaks.push({ from: before, to: here });
    drawn.push((drawn[i - 1] ?? 0) + Math.min(span, LONGEST_DRAWN_MS));
  }
  const whole = drawn.at(-1) || 1;
  return {
    from,
    to,
    breaks,
    at(instant) {
      if (instant <= from) return 0;
      if (instant >= to) return 1;
      let low = 0;
      let high = points.length - 1;
      while (high - low > 1) {
        const middle = (low + high) >> 1;
        if ((points[middle] ?? 0) <= instant) low = middle;
        else high = middle;
      }
      const [a = 0, b = 0] = [points[low], points[high]];
      const [x = 0, y = 0] = [drawn[low], drawn[high]];
      return (x + ((instant - a) / (b - a)) * (y - x)) / whole;
    },
  };
}

const STEPS_MS = [
  5 * MINUTE_MS,
  15 * MINUTE_MS,
  30 * MINUTE_MS,
  HOUR_MS,
  2 * HOUR_MS,
  4 * HOUR_MS,
  12 * HOUR_MS,
  24 * HOUR_MS,
];

/** Round instants to label, at most this many, none of them inside a broken wait. */
export function axisTicks(axis: TimeAxis, offsetMs: number, most: number): number[] {
  for (const step of STEPS_MS) {
    const ticks: number[] = [];
    const first = Math.ceil((axis.from + offsetMs) / step) * step - offsetMs;
    for (let tick = first; tick <= axis.to && ticks.length <= most * 3; tick += step) {
      const inside = axis.breaks.some((wait) => tick > wait.from && tick < wait.to);
      if (!inside) ticks.push(tick);
    }
    const apart = ticks.every((tick, i) => {
      return i === 0 || axis.at(tick) - axis.at(ticks[i - 1] ?? 0) >= 0.9 / most;
    });
    if (ticks.length > most || !apart) continue;
    const last = ticks.at(-1);
    const room = last === undefined || 1 - axis.at(last) >= 0.9 / most;
    return room && ticks.length < most ? [...ticks, axis.to] : ticks;
  }
  return [axis.from, axis.to];
}
