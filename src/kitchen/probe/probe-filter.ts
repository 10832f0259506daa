/**
 * Tells a probe's good readings from spikes and from a value that got stuck. A reading far from
 * the median of those around it is a spike (a Hampel filter: the distance is measured in the
 * window's own scatter); a level that holds is believed after a moment, so cold water is no spike.
 */

import { median } from "../../reckon/statistics/median.ts";
import { PROBE_STUCK_MINUTES } from "../../reckon/trade-numbers.ts";
import { MINUTE_MS } from "../time.ts";

export type Sample = { t: number; value: number };

export type Filter = {
  /** The last readings that came in, spikes and all, oldest first. */
  window: Sample[];
  /** Since when it shows exactly the same value, and how much it had wavered before. */
  sameSince: number;
  lastRaw?: number;
  wavered: boolean;
};

type Filtered =
  | { kind: "good"; value: number }
  /** Left out, because it is too far from its neighbors. */
  | { kind: "spike" }
  /** Exactly the same for too long from a probe that had wavered: it is not measuring. */
  | { kind: "stuck"; since: number };

const WINDOW_READINGS = 9;
/** Among fewer nobody can tell a spike from what is so: a slow probe is believed each time. */
const FEWEST_AROUND = 5;
/** Readings further back say nothing of now, ms. */
const WINDOW_MS = 20_000;
/** A spike is this many times the window's scatter away; 3 is usual for such filters. */
const SCATTERS = 3;
/** Scatter of a normal distribution for a median distance of one. */
const MAD_TO_SIGMA = 1.4826;
/** A distance up to this is never a spike: degrees F, or psi. */
const LEAST_SPIKE = { temperature: 2, pressure: 0.6 };
export const STUCK_MS = PROBE_STUCK_MINUTES * MINUTE_MS;

export function newFilter(t: number): Filter {
  return { window: [], sameSince: t, wavered: false };
}

/** Takes one reading into the filter, which it changes; the answer is what to make of it. */
export function filterReading(
  filter: Filter,
  sample: Sample,
  probe: { kind: "temperature" | "pressure"; decimals: number },
): Filtered {
  const { window } = filter;
  if (filter.lastRaw !== sample.value) {
    if (filter.lastRaw !== undefined) filter.wavered = true;
    filter.lastRaw = sample.value;
    filter.sameSince = sample.t;
  }
  while (window.length > 0 && (window[0]?.t ?? 0) < sample.t - WINDOW_MS) window.shift();
  window.push(sample);
  if (window.length > WINDOW_READINGS) window.shift();
  const fine = probe.decimals >= 1 && filter.wavered;
  if (fine && sample.t - filter.sameSince >= STUCK_MS) {
    return { kind: "stuck", since: filter.sameSince };
  }
  if (window.length < FEWEST_AROUND) return { kind: "good", value: sample.value };
  const middle = median(window.map((one) => one.value));
  const scatter = MAD_TO_SIGMA * median(window.map((one) => Math.abs(one.value - middle)));
  const allowed = Math.max(SCATTERS * scatter, LEAST_SPIKE[probe.kind]);
  if (Math.abs(sample.value - middle) > allowed) return { kind: "spike" };
  return { kind: "good", value: sample.value };
}
