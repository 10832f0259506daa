/**
 * The end of a process's condition: its boil, pressure or steam is lost, the heat goes off, or the
 * jars come out. Minutes count up to the first of these and no further.
 */

import { runOfRole, runOfStep } from "../owners.ts";
import { processDoubts } from "../questions/heard-doubts.ts";
import { quiet } from "../settle.ts";
import { finish, isOver, reopen } from "../stage-run.ts";
import type { Load, State, Stretch } from "../state.ts";
import { current, lose } from "../unbroken-time.ts";
import { settleDoubts } from "./settle-doubts.ts";

/**
 * The condition was lost. A loss reported late may fall before the end of a time that had seemed
 * full: then the time was not full, and what came after it has not begun. After the full time, a
 * loss is how every process ends, and only closes the stretch.
 */
export function loseProcess(
  state: State,
  load: Load,
  at: number,
  why: NonNullable<Stretch["ended"]>,
): boolean {
  const run = runOfRole(load, "treatment");
  if (!run?.kept || run.kept.stretches.length === 0) return false;
  const wasFull = isOver(run);
  if (wasFull && run.endedAt !== undefined && at >= run.endedAt) {
    if (!current(run.kept)) return false;
    lose(run.kept, at, "out");
    return true;
  }
  lose(run.kept, at, why);
  settleDoubts(processDoubts(load), at);
  delete load.column;
  delete load.hot;
  if (why === "uncovered") uncover(load);
  if (wasFull && load.unloadedAt === undefined) {
    const index = load.stages.indexOf(run);
    reopen(run, "running");
    for (const later of load.stages.slice(index + 1)) {
      if (later.state !== "waiting") reopen(later, "waiting");
    }
  }
  quiet(state, load.id);
  return true;
}

/** The lids stand out of the water. */
export function uncover(load: Load): void {
  if (load.covered !== false) load.uncoveredTimes += 1;
  load.covered = false;
}

/** The heat is off: during the process time that is a loss, after it the next step. */
export function turnOff(state: State, load: Load, at: number): boolean {
  const process = runOfRole(load, "treatment");
  const vent = runOfRole(load, "venting");
  const off = runOfStep(load, "heat-off");
  const vented = vent?.kept && current(vent.kept) && !isOver(vent);
  if (vented && vent.kept) lose(vent.kept, at, "off");
  if (process?.kept) delete process.kept.unconfirmedAt;
  const changed = loseProcess(state, load, at, "off") || vented === true;
  if (off?.state !== "running") return changed;
  finish(off, Math.max(at, off.startedAt ?? at));
  return true;
}
