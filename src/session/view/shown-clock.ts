/** Clocks as they are shown: one in its row, and the one that all eyes are on. */
import type { StageClock } from "../../kitchen/agenda.ts";
import { rulesOf } from "../../kitchen/stages/kinds.ts";
import { type StageRun, type State, wallOf } from "../../kitchen/state.ts";
import { HOUR_MS, MINUTE_MS, SECOND_MS } from "../../kitchen/time.ts";
import type { BigClock, ClockState, Item, ShownClock } from "../../ports/view.ts";
import { lengthText, secondText, whenText } from "./clock-text.ts";

/** A clock and when it began and is due, kitchen ms. */
export type ClockSpan = { state: ClockState; from: number; dueAt: number };

/** A stage's clock: past its shortest time and before its longest it is open. */
export function stageSpan(
  { from, dueAt, lost }: StageClock,
  run: StageRun,
  now: number,
): ClockSpan {
  if (lost) return { state: "stopped", from, dueAt };
  const { window } = run.spec;
  const max =
    window && rulesOf(run.spec).ends === "window" && run.startedAt !== undefined
      ? run.startedAt + window.maxMinutes * MINUTE_MS
      : dueAt;
  if (now >= dueAt && now < max) return { state: "open", from: dueAt, dueAt: max };
  return { state: now < dueAt ? "running" : "over", from, dueAt };
}

/** A clock as its row shows it. */
export function shownClock(
  state: State,
  { state: how, dueAt }: ClockSpan,
  now: number,
): ShownClock {
  if (how === "stopped") return { state: how, text: "STOP", due: "" };
  const length = lengthText(dueAt - now);
  const words = { running: length, open: `ready, ${length}`, over: `${length} over` };
  const due = whenText(wallOf(state, dueAt), wallOf(state, now), state.zone);
  return { state: how, text: words[how], due };
}

export type Clocked = { item: Item; span: ClockSpan; say?: string };

/**
 * The clock for large digits: one that has stopped, else the soonest that ends within the hour or
 * has ended within it.
 */
export function bigClock(
  state: State,
  clocks: readonly Clocked[],
  now: number,
): BigClock | undefined {
  const stopped = clocks.find(({ span }) => span.state === "stopped");
  const near = clocks.filter(({ span }) => Math.abs(span.dueAt - now) <= HOUR_MS - SECOND_MS);
  const [soonest] = near.toSorted((a, b) => a.span.dueAt - b.span.dueAt);
  const shown = stopped ?? soonest;
  if (!shown) return undefined;
  const { item, span, say } = shown;
  const { id, shelf, name, title, keys } = item;
  const base = { id, shelf, name, title, keys, state: span.state, ...(say ? { say } : {}) };
  if (span.state === "stopped") return { ...base, digits: "STOP", ends: "" };
  const { dueAt, from } = span;
  const whole = dueAt - from;
  const part = whole > 0 ? Math.min(1, Math.max(0, (now - from) / whole)) : 1;
  const passed = Math.min(Math.floor((now - from) / SECOND_MS) * SECOND_MS, whole);
  const text = `${lengthText(passed)} of ${lengthText(whole)}`;
  const end = secondText(wallOf(state, dueAt), state.zone);
  const ends = { running: "ends", open: "at the latest", over: "ended" }[span.state];
  const digits = `${span.state === "over" ? "+" : ""}${lengthText(dueAt - now)}`;
  return { ...base, digits, done: { part, text }, ends: `${ends} ${end}` };
}
