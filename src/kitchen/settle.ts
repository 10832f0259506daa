/**
 * What follows by itself: stages whose time is up end, and stages whose turn has come begin.
 * Called after every event with the time it was written, so the state never lags behind.
 */

import { CANNER_WARM_UP_MINUTES } from "../reckon/trade-numbers.ts";
import { isDueOf } from "./due-key.ts";
import { brewStages, isUnpoured } from "./jars/brews.ts";
import { cannerOf, capacity } from "./jars/canner-room.ts";
import { again, allFilled, ready } from "./jars/lots.ts";
import { openLoad } from "./loads/open-load.ts";
import { activeOwners, isLoad, runOf, runOfStep } from "./owners.ts";
import { knows } from "./places.ts";
import { beginStage, endsAt, finish, isOver } from "./stage-run.ts";
import { hasRole, isOfCanner, rulesOf } from "./stages/kinds.ts";
import type { Batch, Load, StageRun, State } from "./state.ts";
import { MINUTE_MS } from "./time.ts";

/** Ends and begins whatever is due by `now`, until nothing more follows. */
export function settle(state: State, now: number): void {
  let changed = true;
  while (changed) {
    changed = false;
    state.nextBegin = Number.POSITIVE_INFINITY;
    for (const owner of ownActive(state)) {
      if (isLoad(owner) ? settleLoad(state, owner, now) : settleBatch(state, owner, now)) {
        changed = true;
      }
    }
  }
  state.nextEnd = Number.POSITIVE_INFINITY;
  for (const owner of ownActive(state)) {
    for (const run of owner.stages) {
      if (run.state !== "running") continue;
      state.nextEnd = Math.min(state.nextEnd, endsAt(run) ?? Number.POSITIVE_INFINITY);
    }
  }
}

/** Time goes by until then, with what ends or begins meanwhile. */
export function liveUntil(state: State, now: number): void {
  if (Math.min(state.nextEnd, state.nextBegin) <= now) settle(state, now);
}

/** What is still to do for the branch that is lived through: another's time is not its own. */
function ownActive(state: State): (Batch | Load)[] {
  return activeOwners(state).filter((owner) => knows(state, owner.id));
}

function endRunning(state: State, owner: Batch | Load, now: number): boolean {
  let changed = false;
  for (const run of owner.stages) {
    if (run.state !== "running") continue;
    const end = endsAt(run);
    if (end === undefined || end > now) continue;
    finish(run, end);
    quiet(state, owner.id, run.id);
    changed = true;
  }
  return changed;
}

/** Silences the alarms of a stage that has moved on. */
export function quiet(state: State, owner: string, stage?: string): void {
  if (state.ringing.some((key) => isDueOf(key, owner, stage))) {
    state.ringing = state.ringing.filter((key) => !isDueOf(key, owner, stage));
  }
}

function settleBatch(state: State, batch: Batch, now: number): boolean {
  if (batch.state === "abandoned") return false;
  let changed = endRunning(state, batch, now);
  for (const run of batch.stages) {
    if (run.state !== "waiting" || isOfCanner(run.spec)) continue;
    if (run.spec.start === "word" || batch.state === "held") continue;
    const at = readyAt(state, batch, run, now);
    if (at === undefined) continue;
    if (at > now) {
      state.nextBegin = Math.min(state.nextBegin, at);
      continue;
    }
    beginStage(run, at);
    changed = true;
  }
  if (batch.state === "running" && isBatchOver(state, batch)) {
    batch.state = "complete";
    batch.endedAt = lastEnd(state, batch);
    changed = true;
  }
  if (batch.state === "complete" && !batch.stages.some((run) => stillToBegin(run))) {
    state.active = state.active.filter((id) => id !== batch.id);
  }
  return changed;
}

function stillToBegin(run: StageRun): boolean {
  return run.state === "waiting" && !isOfCanner(run.spec);
}

/** When a waiting stage's turn comes; undefined while something before it is not complete. */
export function readyAt(
  state: State,
  batch: Batch,
  run: StageRun,
  now: number,
): number | undefined {
  const at = foodReadyAt(batch, run);
  if (at === undefined || !needsHotCanner(batch, run)) return at;
  const load = openLoad(state, batch);
  const canner = load && runOfStep(load, "canner");
  if (canner?.state !== "complete") return undefined;
  return Math.max(at, canner.endedAt ?? now);
}

/**
 * Whether a stage waits for the canner to be hot: jars are filled for it, and food that is packed
 * hot goes into jars within minutes, so it is not brought to heat before there is where to go.
 * Cooking that takes longer than heating any canner is started meanwhile.
 */
export function needsHotCanner(batch: Batch, run: StageRun): boolean {
  if (!batch.option) return false;
  if (hasRole(run.spec, "filling")) return true;
  const { start, typicalMinutes } = run.spec;
  if (rulesOf(run.spec).thermometer !== "pot" || start === "word") return false;
  if (typicalMinutes >= CANNER_WARM_UP_MINUTES) return false;
  const followed = batch.stages.some(
    (one) => hasRole(one.spec, "filling") && one.spec.after.some((after) => after.stage === run.id),
  );
  return followed && batch.option.pack === "hot";
}

/** True while only the canner holds up a stage, other than the filling itself. */
export function heldForCanner(state: State, batch: Batch, run: StageRun, now: number): boolean {
  if (run.state !== "waiting" || hasRole(run.spec, "filling") || batch.state !== "running")
    return false;
  const food = foodReadyAt(batch, run);
  return food !== undefined && food <= now && readyAt(state, batch, run, now) === undefined;
}

/** When everything before a stage in its own recipe is complete; undefined while it is not. */
function foodReadyAt(batch: Batch, run: StageRun): number | undefined {
  let at = batch.begunAt;
  for (const after of run.spec.after) {
    const before = runOf(batch, after.stage);
    if (!before) continue;
    if (isOfCanner(before.spec) && batch.option) {
      if (batch.state !== "complete" || batch.endedAt === undefined) return undefined;
      at = Math.max(at, batch.endedAt);
      continue;
    }
    if (isOfCanner(before.spec)) continue;
    if (!isOver(before)) return undefined;
    at = Math.max(at, (before.endedAt ?? at) + (after.atLeastMinutes ?? 0) * MINUTE_MS);
  }
  return at;
}

/** Everything up to the seal check is done, and no jar waits for a canner. */
function isBatchOver(state: State, batch: Batch): boolean {
  const unpoured = isUnpoured(batch) ? brewStages(batch) : [];
  const before = batch.stages.filter((run) => {
    if (isOfCanner(run.spec) || rulesOf(run.spec).ends === "date") return false;
    return !unpoured.includes(run);
  });
  if (!before.every(isOver)) return false;
  if (!batch.option) return true;
  if (ready(batch) > 0 || again(batch) > 0 || !allFilled(batch)) return false;
  const loads = batch.loads.map((id) => state.loads[id]);
  return loads.every((load) => load?.state !== "running");
}

function lastEnd(state: State, batch: Batch): number {
  const loads = batch.loads.map((id) => state.loads[id]?.endedAt ?? 0);
  const own = batch.stages.map((run) => run.endedAt ?? 0);
  return Math.max(batch.begunAt, ...loads, ...own);
}

function settleLoad(state: State, load: Load, now: number): boolean {
  if (load.state !== "running") return false;
  let changed = endRunning(state, load, now);
  let before: StageRun | undefined;
  for (const run of load.stages) {
    if (run.state === "waiting" && (!before || isOver(before)) && beginsItself(state, load, run)) {
      const turn = before?.endedAt ?? load.openedAt;
      beginStage(run, run.spec.step === "load" ? Math.max(turn, now) : turn);
      changed = true;
    }
    before = run;
  }
  const check = load.stages.at(-1);
  if (check && isOver(check)) {
    load.state = "complete";
    load.endedAt = check.endedAt ?? now;
    state.active = state.active.filter((id) => id !== load.id);
    changed = true;
  }
  return changed;
}

/**
 * Venting and processing wait for their sign, loading for the jars; all others begin by themselves.
 */
function beginsItself(state: State, load: Load, run: StageRun): boolean {
  if (rulesOf(run.spec).ends === "kept-time") return false;
  if (run.spec.step !== "load") return true;
  const batch = state.batches[load.batch];
  if (!batch || ready(batch) === 0) return false;
  const holds = batch.jar ? capacity(cannerOf(state, load.canner), batch.jar) : 0;
  return allFilled(batch) || ready(batch) >= holds;
}
