/**
 * What a probe's readings mean for a condition that has to be kept. Each rule has two marks, one to
 * rise to and a lower one to fall below, and a time for each, so that neither noise nor a cycling
 * burner makes it waver. The marks come from the altitude or from the tested pressure.
 */
import { boilingPointF, leastBoilF } from "../../reckon/boiling.ts";
import { LOW_TEMPERATURE_F } from "../../reckon/trade-numbers.ts";
import type { Sample } from "./probe-filter.ts";

export type ProbeRule = {
  kind: "temperature" | "pressure";
  /** Reached once every reading of `riseMs` is at or above this. */
  riseTo: number;
  riseMs: number;
  /** Where it must also have leveled off: at most this much between the halves of `riseMs`. */
  levelWithin?: number;
  /** Lost once the median of `fallMs`, and of three readings at least, is under this. */
  fallBelow: number;
  fallMs: number;
  /** Lost by a single reading under this: no weather and no error of a probe explains it. */
  never: number;
  /** Too high beyond this, for as long as `riseMs`: a matter of quality, or of a turned-up heat. */
  tooHigh?: number;
};

/**
 * Water at a full boil. It has leveled off at the place's boiling point or above: a simmer lies
 * lower, and a probe or a day on which it boils lower waits for a person's word. Lost 2 F below (or
 * 1.5 F below where this very probe stood at the boil): a lifted lid or a cycling burner costs a
 * degree at most, cold water several.
 */
export function boilRule(altitudeFt: number, stoodAtF?: number): ProbeRule {
  const boils = boilingPointF(altitudeFt);
  const never = leastBoilF(altitudeFt);
  return {
    kind: "temperature",
    // Probes show tenths.
    riseTo: stoodAtF === undefined ? Math.floor(boils * 10) / 10 : Math.max(never, stoodAtF - 0.7),
    riseMs: 30_000,
    levelWithin: 0.25,
    fallBelow: stoodAtF === undefined ? boils - 2 : Math.max(never, stoodAtF - 1.5),
    fallMs: 10_000,
    never,
  };
}

/**
 * This far over its mark, psi, jars may lose liquid (that they do: USDA, Guide 1; how far: our
 * choice).
 */
export const OVER_PRESSURE_PSI = 4;

/**
 * A canner's gauge pressure. It starts a little above the mark and is lost by the first reading
 * under it: below the mark at any time is the whole time again.
 */
export function pressureRule(targetPsi: number): ProbeRule {
  return {
    kind: "pressure",
    riseTo: targetPsi + 0.2,
    riseMs: 10_000,
    fallBelow: targetPsi,
    fallMs: 5000,
    never: targetPsi,
    tooHigh: targetPsi + OVER_PRESSURE_PSI,
  };
}

/** Low-temperature pasteurization: 180 F and above counts; above 185 F the pickles soften. */
export function lowTemperatureRule(): ProbeRule {
  return {
    kind: "temperature",
    riseTo: LOW_TEMPERATURE_F.min + 0.5,
    riseMs: 10_000,
    fallBelow: LOW_TEMPERATURE_F.min,
    fallMs: 5000,
    never: LOW_TEMPERATURE_F.min,
    tooHigh: LOW_TEMPERATURE_F.max + 0.5,
  };
}

export type Watching = {
  level: "unknown" | "under" | "at";
  high: boolean;
  recent: Sample[];
};

export type ProbeEvent =
  | { kind: "reached"; at: number; value: number }
  /** `at` is the first of the readings that were under: the safer moment. */
  | { kind: "lost"; at: number; value: number }
  | { kind: "too-high"; at: number; value: number };

/** Between readings further apart than this nothing is known, ms. */
export const BLIND_MS = 15_000;

export function newWatching(): Watching {
  return { level: "unknown", high: false, recent: [] };
}

/** A filter goes by so many readings at least, however far apart they come. */
const FEWEST = 3;

function countSince(samples: readonly Sample[], from: number): number {
  return samples.filter((one) => one.t >= from).length;
}

/** True where the readings span the time up to now without a hole. */
function spans(recent: readonly Sample[], ms: number, now: number): boolean {
  const first = recent.find((one) => one.t >= now - ms);
  return first !== undefined && first.t <= now - ms * 0.8 && recent.length >= FEWEST;
}

function middleOf(samples: readonly Sample[]): number {
  const values = samples.map((one) => one.value).sort((a, b) => a - b);
  return values[Math.floor(values.length / 2)] ?? Number.NaN;
}

/**
 * Takes one good reading into a watch, which it changes; returns what that now shows, if it is new.
 */
export function judgeReading(
  watching: Watching,
  rule: ProbeRule,
  sample: Sample,
): ProbeEvent | undefined {
  const { recent } = watching;
  const last = recent.at(-1);
  if (last && sample.t - last.t > BLIND_MS) recent.length = 0;
  recent.push(sample);
  const longest = Math.max(rule.riseMs, rule.fallMs);
  while ((recent[0]?.t ?? 0) < sample.t - longest * 1.2) recent.shift();
  if (watching.level !== "at" && hasReached(recent, rule, sample.t)) {
    watching.level = "at";
    return { kind: "reached", at: sample.t, value: middleOf(recent) };
  }
  const falling = recent.slice(-Math.max(FEWEST, countSince(recent, sample.t - rule.fallMs)));
  const sunk = falling.length >= FEWEST && middleOf(falling) < rule.fallBelow;
  if (watching.level !== "under" && (sunk || sample.value < rule.never)) {
    const was = watching.level;
    watching.level = "under";
    const first = falling.find((one) => one.value < rule.fallBelow) ?? sample;
    // Readings before the fall say nothing about whether it has come back.
    watching.recent = recent.filter((one) => one.t >= first.t);
    const value = sunk ? middleOf(falling) : sample.value;
    if (was === "at") return { kind: "lost", at: first.t, value };
  }
  return tooHigh(watching, rule, sample);
}

function hasReached(recent: readonly Sample[], rule: ProbeRule, now: number): boolean {
  if (!spans(recent, rule.riseMs, now)) return false;
  const window = recent.filter((one) => one.t >= now - rule.riseMs);
  const half = Math.floor(window.length / 2);
  const halves = [window.slice(0, half), window.slice(half)];
  if (halves.some((samples) => middleOf(samples) < rule.riseTo)) return false;
  const [before = 0, after = 0] = halves.map(meanOf);
  return rule.levelWithin === undefined || after - before <= rule.levelWithin;
}

function meanOf(samples: readonly Sample[]): number {
  return samples.reduce((sum, one) => sum + one.value, 0) / samples.length;
}

function tooHigh(watching: Watching, rule: ProbeRule, sample: Sample): ProbeEvent | undefined {
  if (rule.tooHigh === undefined) return undefined;
  const mark = rule.tooHigh;
  const window = watching.recent.filter((one) => one.t >= sample.t - rule.riseMs);
  const middle = middleOf(window);
  if (watching.high && middle < mark - 0.5) watching.high = false;
  if (watching.high || middle <= mark || !spans(window, rule.riseMs, sample.t)) return undefined;
  watching.high = true;
  return { kind: "too-high", at: sample.t, value: middle };
}

/** Whether readings cover a time without a hole and never fell under a rule's lower mark. */
export function covers(
  samples: readonly Sample[],
  rule: ProbeRule,
  from: number,
  to: number,
): "held" | "lost" | "not-covered" {
  const inside = samples.filter((one) => one.t >= from - BLIND_MS && one.t <= to + BLIND_MS);
  let last = Number.NEGATIVE_INFINITY;
  for (const { t } of inside) {
    if (last > Number.NEGATIVE_INFINITY && t - last > BLIND_MS && last < to) return "not-covered";
    if (last === Number.NEGATIVE_INFINITY && t > from + BLIND_MS) return "not-covered";
    last = t;
  }
  if (last < to - BLIND_MS) return "not-covered";
  const during = inside.filter((one) => one.t >= from && one.t <= to);
  if (during.some((one) => one.value < rule.never)) return "lost";
  for (let at = 0; at + FEWEST <= during.length; at++) {
    if (middleOf(during.slice(at, at + FEWEST)) < rule.fallBelow) return "lost";
  }
  return "held";
}

/** Readings kept for the log: at most two a minute, the lowest and the highest of it. */
export function thinnedSamples(samples: readonly Sample[], apartMs = 60_000): Sample[] {
  const kept: Sample[] = [];
  let minute: Sample[] = [];
  const flush = () => {
    const [first] = minute;
    if (!first) return;
    const least = minute.reduce((best, one) => (one.value < best.value ? one : best), first);
    const most = minute.reduce((best, one) => (one.value > best.value ? one : best), first);
    const both = least === most ? [least] : [least, most].sort((a, b) => a.t - b.t);
    kept.push(...both);
    minute = [];
  };
  for (const sample of samples) {
    const [first] = minute;
    if (first && sample.t - first.t >= apartMs) flush();
    minute.push(sample);
  }
  flush();
  return kept;
}
