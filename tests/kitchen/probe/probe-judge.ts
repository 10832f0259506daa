/** Puts a trace through filter and rules as a session does, and compares with the truth. */
import { filterReading, newFilter } from "../../../src/kitchen/probe/probe-filter.ts";
import {
  boilRule,
  judgeReading,
  newWatching,
  pressureRule,
} from "../../../src/kitchen/probe/probe-rules.ts";
import { BOIL_DOUBT_F, boilingPointF } from "../../../src/reckon/boiling.ts";
import { ALTITUDE_FT, TARGET_PSI, type Trace, trace } from "./probe-traces.ts";

export type Judged = {
  /** Seconds from the truth to the notice; negative is too soon. */
  noticedAfter?: number;
  lostAfter?: number;
  falseLosses: number;
  falseSigns: number;
  spikes: number;
};

/** A person who reports the boil half a minute after it, so that the probe can learn its level. */
const LEARN_AFTER_MS = 90_000;

/** A gauge that reads low loses a sinking pressure sooner, which is the safe side. */
const EARLY_MS = 20_000;

export function judge(one: Trace): Judged {
  const filter = newFilter(0);
  const watching = newWatching();
  const judged: Judged = { falseLosses: 0, falseSigns: 0, spikes: 0 };
  let stoodAt: number | undefined;
  for (const reading of one.readings) {
    const filtered = filterReading(filter, reading, one);
    if (filtered.kind === "spike") judged.spikes += 1;
    if (filtered.kind !== "good") continue;
    const rule =
      one.kind === "pressure" ? pressureRule(TARGET_PSI) : boilRule(ALTITUDE_FT, stoodAt);
    const verdict = judgeReading(watching, rule, reading);
    if (one.trulyFrom !== undefined && stoodAt === undefined && one.kind === "temperature") {
      const since = reading.t - one.trulyFrom;
      if (since > LEARN_AFTER_MS && since < LEARN_AFTER_MS + 30_000) {
        const values = watching.recent.map((each) => each.value).sort((a, b) => a - b);
        const middle = values[Math.floor(values.length / 2)] ?? 0;
        // One that is further off is not learned from.
        if (Math.abs(middle - boilingPointF(ALTITUDE_FT)) <= BOIL_DOUBT_F) {
          stoodAt = middle;
          watching.level = "at";
        }
      }
    }
    if (verdict?.kind === "reached") {
      if (one.trulyFrom === undefined) judged.falseSigns += 1;
      else judged.noticedAfter ??= (reading.t - one.trulyFrom) / 1000;
    }
    if (verdict?.kind === "lost") {
      if (one.trulyLost === undefined || reading.t < one.trulyLost - EARLY_MS)
        judged.falseLosses += 1;
      else judged.lostAfter ??= (reading.t - one.trulyLost) / 1000;
    }
  }
  return judged;
}

export type Tally = {
  scene: string;
  traces: number;
  noticed: number;
  /** Median and longest seconds from the truth to the notice. */
  noticedAfter: [number, number];
  tooSoon: number;
  soonest: number;
  losses: number;
  missed: number;
  lostAfter: [number, number];
  falseLosses: number;
  falseSigns: number;
};

function spread(values: number[]): [number, number] {
  const sorted = [...values].sort((a, b) => a - b);
  return [sorted[Math.floor(sorted.length / 2)] ?? Number.NaN, sorted.at(-1) ?? Number.NaN];
}

export function tally(scene: string, traces: number): Tally {
  const all = Array.from({ length: traces }, (_, seed) => {
    const one = trace(scene, seed + 1);
    return { one, judged: judge(one) };
  });
  const noticed = all.flatMap(({ judged }) => judged.noticedAfter ?? []);
  const lossy = all.filter(({ one }) => one.trulyLost !== undefined);
  const lost = lossy.flatMap(({ judged }) => judged.lostAfter ?? []);
  return {
    scene,
    traces,
    noticed: noticed.length,
    noticedAfter: spread(noticed),
    tooSoon: noticed.filter((seconds) => seconds < -15).length,
    soonest: Math.min(...noticed),
    losses: lossy.length,
    missed: lossy.length - lost.length,
    lostAfter: spread(lost),
    falseLosses: all.filter(({ judged }) => judged.falseLosses > 0).length,
    falseSigns: all.filter(({ judged }) => judged.falseSigns > 0).length,
  };
}
