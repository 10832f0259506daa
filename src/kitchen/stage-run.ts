/**
 * One stage of a batch or load as it runs: beginning, and ending by itself or on a person's word.
 */
import type { Stage } from "../recipe/recipe.ts";
import { rulesOf } from "./stages/kinds.ts";
import type { StageRun } from "./state.ts";
import { MINUTE_MS } from "./time.ts";
import { completesAt, current, newKept, start } from "./unbroken-time.ts";

export function newRun(spec: Stage, needMinutes?: number, readEveryMinutes?: number): StageRun {
  const run: StageRun = { id: spec.id, spec, state: "waiting" };
  const need = needMinutes ?? spec.heat?.holdMinutes ?? spec.window?.minMinutes ?? 0;
  if (rulesOf(spec).clock === "at-sign") run.kept = newKept(need, readEveryMinutes);
  return run;
}

export function isOver(run: StageRun): boolean {
  return run.state === "complete" || run.state === "skipped" || run.state === "abandoned";
}

export function beginStage(run: StageRun, at: number): void {
  run.state = "running";
  run.startedAt = at;
}

/** The sign its clock waits for: begins the stage if it had not begun. */
export function sign(run: StageRun, at: number): void {
  if (run.state === "waiting") beginStage(run, at);
  if (run.kept) start(run.kept, at);
}

export function finish(run: StageRun, at: number): void {
  if (endsShort(run, at)) run.endedShort = true;
  else if (run.endedShort) delete run.endedShort;
  run.state = "complete";
  run.startedAt ??= at;
  run.endedAt = at;
}

export function skipStage(run: StageRun, at: number): void {
  if (run.state === "running") run.endedAt = at;
  run.state = "skipped";
}

/** Puts a stage back to running (a late report says its time was not full) or to waiting. */
export function reopen(run: StageRun, state: "running" | "waiting"): void {
  run.state = state;
  delete run.endedAt;
  delete run.endedShort;
  if (state === "waiting") delete run.startedAt;
}

/** The shortest time a windowed stage may take, ms from its start. */
function windowMs(run: StageRun): { min: number; max: number } | undefined {
  const window = run.spec.window;
  return window && { min: window.minMinutes * MINUTE_MS, max: window.maxMinutes * MINUTE_MS };
}

/** What ends earlier than this share of its time is no small thing (our choice). */
const EARLY_SHARE = 0.9;

/** How long a stage has gone and should at least, ms, where ending it now is far too early. */
export function farTooEarly(run: StageRun, at: number): { got: number; of: number } | undefined {
  if (run.state !== "running" || !endsShort(run, at)) return undefined;
  const hold = run.kept && current(run.kept);
  const of = windowMs(run)?.min ?? (run.kept?.needMinutes ?? 0) * MINUTE_MS;
  const got = Math.max(0, at - ((run.kept ? hold?.from : run.startedAt) ?? at));
  return got < of * EARLY_SHARE ? { got, of } : undefined;
}

/** True where ending now is before the window opens or the hold is over. */
function endsShort(run: StageRun, at: number): boolean {
  const rules = rulesOf(run.spec);
  if (rules.ends === "window") {
    const window = windowMs(run);
    return window !== undefined && at < (run.startedAt ?? at) + window.min;
  }
  if (run.kept && run.kept.needMinutes > 0) {
    const end = completesAt(run.kept);
    return end === undefined || at < end;
  }
  return false;
}

/** When a running stage ends by itself; undefined where it needs a word, a sign or an answer. */
export function endsAt(run: StageRun): number | undefined {
  if (run.state !== "running") return undefined;
  const rules = rulesOf(run.spec);
  if (rules.ends === "window") {
    const window = windowMs(run);
    if (!window || window.min !== window.max || run.startedAt === undefined) return undefined;
    return run.startedAt + window.min;
  }
  return run.kept ? completesAt(run.kept) : undefined;
}
