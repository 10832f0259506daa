/** One thing a probe measures: its last readings, and what they showed. */
import type { Filter, Sample } from "../../kitchen/probe/probe-filter.ts";
import type { Fitness, Unfit } from "../../kitchen/probe/probe-fitness.ts";
import type { ProbeReading } from "../../kitchen/probe/probe-line.ts";
import { BLIND_MS, type Watching } from "../../kitchen/probe/probe-rules.ts";

export type Channel = {
  name: string;
  kind: ProbeReading["kind"];
  filter: Filter;
  fitness: Fitness;
  watching: Watching;
  /** Good readings, one a second, and those not yet in the log. */
  kept: Sample[];
  unlogged: Sample[];
  loggedAt: number;
  lastAt: number;
  lastRead: number;
  /** `owner/stage` of what it is assumed to measure. */
  subject?: string;
  /** What it read at a boil that a person reported, degrees F. */
  stoodAtF?: number;
  /** The turn in which the waited-for sign was reported. */
  tried?: string;
  trouble?: "stuck" | "silent" | Unfit;
};

/** The median of some readings; undefined where there are none. */
export function middleValue(samples: readonly Sample[]): number | undefined {
  const values = samples.map((one) => one.value).sort((a, b) => a - b);
  return values[Math.floor(values.length / 2)];
}

/** The median of a working probe's latest readings; undefined where there are none. */
export function freshValue(channel: Channel | undefined, now: number): number | undefined {
  if (!channel || channel.trouble) return undefined;
  return middleValue(channel.watching.recent.filter((one) => one.t >= now - BLIND_MS));
}

/** The lowest reading of a time; infinite where there is none. */
export function leastValue(samples: readonly Sample[], from: number, to: number): number {
  return samples
    .filter((one) => one.t >= from && one.t <= to)
    .reduce((least, one) => Math.min(least, one.value), Number.POSITIVE_INFINITY);
}
