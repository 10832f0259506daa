/**
 * A condition kept for a time: a boil, a pressure, steady steam, a temperature. Time counts in
 * unbroken stretches, and only minutes that were watched or vouched for count at all.
 */
import { OFF_PROCESS_HOURS, UNWATCHED_ALLOWED_SECONDS } from "../reckon/trade-numbers.ts";
import type { Gap, Stretch, UnbrokenTime } from "./state.ts";
import { HOUR_MS, MINUTE_MS, SECOND_MS } from "./time.ts";

/** Unwatched time up to this total during one process is written down without a question. */
const UNWATCHED_ALLOWED_MS = UNWATCHED_ALLOWED_SECONDS * SECOND_MS;

/** Food off its process for longer than this is not started over. */
export const OFF_PROCESS_LIMIT_MS = OFF_PROCESS_HOURS * HOUR_MS;

export function newKept(needMinutes: number, readEveryMinutes?: number): UnbrokenTime {
  const kept: UnbrokenTime = { needMinutes, stretches: [], gaps: [] };
  if (readEveryMinutes !== undefined) {
    kept.readEveryMinutes = readEveryMinutes;
    kept.readAt = [];
  }
  return kept;
}

/** Names this round of asking and ringing: a new one for every start and every raised end. */
export function roundOf({ stretches, raised }: UnbrokenTime): string {
  return raised === undefined ? String(stretches.length) : `${stretches.length}.${raised}`;
}

/** The stretch that is running, if the condition holds as far as anyone knows. */
export function current(kept: UnbrokenTime): Stretch | undefined {
  const last = kept.stretches.at(-1);
  return last && last.to === undefined ? last : undefined;
}

/** True once it was begun and then lost, and has not come back. */
export function isLost(kept: UnbrokenTime): boolean {
  const last = kept.stretches.at(-1);
  return last?.to !== undefined && last.ended !== "out";
}

/** Whether the unwatched time nobody vouched for adds up to more than may pass unasked. */
export function beyondAllowance(kept: UnbrokenTime): boolean {
  const gaps = kept.gaps.filter((gap) => gap.held !== true);
  return gaps.reduce((sum, gap) => sum + (gap.to - gap.from), 0) > UNWATCHED_ALLOWED_MS;
}

/** Gaps beyond the allowance without a yes: their minutes, and what follows them, do not count. */
function unvouched(kept: UnbrokenTime): Gap[] {
  return beyondAllowance(kept) ? kept.gaps.filter((gap) => gap.held !== true) : [];
}

/**
 * Gaps over the allowance that nobody has vouched for yet, in the stretch that would count. A gap
 * in a stretch that has been lost since needs no question: its time starts over anyway.
 */
export function unanswered(kept: UnbrokenTime): Gap[] {
  const last = kept.stretches.at(-1);
  if (!last || isLost(kept)) return [];
  return unvouched(kept).filter((gap) => gap.held === undefined && gap.to > last.from);
}

/** When the time is up, in kitchen time; undefined while it is lost or a gap waits. */
export function completesAt(kept: UnbrokenTime): number | undefined {
  const stretch = kept.stretches.at(-1);
  if (!stretch || stretch.from < (kept.countsFrom ?? 0)) return undefined;
  const end = stretch.from + kept.needMinutes * MINUTE_MS;
  if (stretch.to !== undefined && stretch.to < end) return undefined;
  if (unvouched(kept).some((gap) => gap.from < end && gap.to > stretch.from)) return undefined;
  if (kept.readAt) return kept.readAt.find((at) => at >= end);
  return end;
}

/** When the clock of the running stretch reaches the time, answered or not. */
export function clockEndsAt(kept: UnbrokenTime): number | undefined {
  const stretch = current(kept);
  return stretch && stretch.from + kept.needMinutes * MINUTE_MS;
}

export function start(kept: UnbrokenTime, at: number): void {
  delete kept.unconfirmedAt;
  kept.stretches.push({ from: at });
}

/**
 * Ends the stretch that held at an instant; a loss reported late cuts it there. A stretch that
 * began after that instant never counted.
 */
export function lose(kept: UnbrokenTime, at: number, ended: Stretch["ended"]): void {
  delete kept.unconfirmedAt;
  kept.stretches = kept.stretches.filter((stretch) => stretch.from <= at);
  const last = kept.stretches.at(-1);
  if (last && (last.to === undefined || last.to > at)) {
    last.to = at;
    last.ended = ended;
  }
}

/** Writes down a time nobody watched, if it touches the running stretch. */
export function addGap(kept: UnbrokenTime, gap: Gap): void {
  const stretch = current(kept);
  if (stretch && gap.to > stretch.from) {
    kept.gaps.push({ ...gap, from: Math.max(gap.from, stretch.from) });
  }
}

/** A person's word on every gap still open: it held, or it did not. */
export function vouch(kept: UnbrokenTime, held: boolean): void {
  const open = unanswered(kept);
  for (const gap of open) gap.held = held;
  const first = open[0];
  if (!held && first) lose(kept, first.from, "unwatched");
}

/** A reading that shows the condition; a longer wait since the one before is unwatched time. */
export function read(kept: UnbrokenTime, at: number): void {
  if (!kept.readAt || kept.readEveryMinutes === undefined) return;
  const stretch = current(kept);
  const allowed = kept.readEveryMinutes * MINUTE_MS + UNWATCHED_ALLOWED_MS;
  let before = Math.max(...kept.readAt.filter((time) => time <= at), stretch?.from ?? at);
  // A gap vouched for replaces readings, but not those that were missing before it.
  for (const gap of kept.gaps) {
    if (gap.held && gap.to <= at && gap.from - before <= allowed) {
      before = Math.max(before, gap.to);
    }
  }
  if (stretch && at - before > allowed) {
    // The wait takes in any gap inside it, so that one question answers both.
    kept.gaps = kept.gaps.filter((gap) => gap.held !== undefined || gap.from < before);
    kept.gaps.push({ from: before, to: at, cause: "stalled" });
  }
  kept.readAt.push(at);
}

/** How often the whole time was started over after a loss. */
export function restarts(kept: UnbrokenTime): number {
  return Math.max(0, kept.stretches.length - 1);
}

/**
 * The longest unbroken stretch in minutes, watched or vouched for, up to `until` where it still
 * runs. Unwatched time without a yes ends what counts, and so does the last reading where only
 * readings show the condition.
 */
export function achievedMinutes(kept: UnbrokenTime, until: number): number {
  const open = unvouched(kept);
  let longest = 0;
  for (const stretch of kept.stretches) {
    if (stretch.from < (kept.countsFrom ?? 0)) continue;
    let end = stretch.to ?? until;
    for (const gap of open) if (gap.to > stretch.from) end = Math.min(end, gap.from);
    if (kept.readAt) {
      const seen = kept.readAt.filter((at) => at <= end);
      end = Math.max(stretch.from, ...seen);
    }
    longest = Math.max(longest, end - stretch.from);
  }
  return longest / MINUTE_MS;
}

/** Total milliseconds off since it was first lost, at an instant; 0 while it holds. */
export function offMs(kept: UnbrokenTime, now: number): number {
  if (!isLost(kept)) return 0;
  let off = 0;
  kept.stretches.forEach((stretch, index) => {
    if (stretch.to === undefined || stretch.ended === "out") return;
    off += Math.max(0, (kept.stretches[index + 1]?.from ?? now) - stretch.to);
  });
  return off;
}
