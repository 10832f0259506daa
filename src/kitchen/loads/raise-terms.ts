/**
 * A load whose terms go up after its process has begun: the kitchen turned out to lie higher than
 * was thought. Its process then runs to the longer time from its own start, or begins again under
 * the higher pressure; where the jars are out already, it was too short. Nothing is ever shortened.
 */
import type { ProcessTerms } from "../../recipe/recipe.ts";
import { completesAt, current } from "../kept.ts";
import { runOfRole } from "../owners.ts";
import { quiet } from "../settle.ts";
import { isOver, reopen } from "../stage-run.ts";
import type { Load, StageRun, State } from "../state.ts";
import { MINUTE_MS } from "../time.ts";

/** Whether terms ask for more time or pressure than others, and for less of neither. */
export function asksMore(terms: ProcessTerms, than: ProcessTerms): boolean {
  const byMinutes = terms.minutes - than.minutes;
  const byPsi = (terms.pressurePsi ?? 0) - (than.pressurePsi ?? 0);
  return byMinutes >= 0 && byPsi >= 0 && byMinutes + byPsi > 0;
}

/** When the heat went off under a process that is over; undefined while it may still be on. */
function heatOffAt(load: Load, process: StageRun): number | undefined {
  const off = load.stages.find((run) => run.id === "heat-off");
  if (off?.state === "complete" && off.endedAt !== undefined) return off.endedAt;
  return load.unloadedAt === undefined ? undefined : process.endedAt;
}

/** Puts the raised terms into a load whose process has begun; `stages` are those terms' own. */
export function raiseTerms(
  state: State,
  load: Load,
  event: { t: number; terms: ProcessTerms },
  stages: StageRun[],
): void {
  const process = runOfRole(load, "treatment");
  const kept = process?.kept;
  if (!process || !kept) return;
  const before = load.terms;
  load.terms = event.terms;
  kept.raised = (kept.raised ?? 0) + 1;
  // What is still to be said names the new time, pressure and depth of water.
  for (const run of load.stages) {
    run.spec = stages.find((one) => one.id === run.id)?.spec ?? run.spec;
  }
  const wasOver = isOver(process);
  const off = wasOver ? heatOffAt(load, process) : undefined;
  kept.needMinutes = event.terms.minutes;
  const stretch = current(kept);
  if ((event.terms.pressurePsi ?? 0) > (before?.pressurePsi ?? 0)) {
    kept.countsFrom = event.t;
    if (stretch) {
      stretch.to = Math.max(stretch.from, off ?? event.t);
      stretch.ended = "raised";
    }
  } else if (stretch && off !== undefined && off < stretch.from + kept.needMinutes * MINUTE_MS) {
    stretch.to = off;
    stretch.ended = load.unloadedAt === undefined ? "lost" : "out";
  }
  if (wasOver) reopenOrEndShort(load, process);
  // The clock has a new end, and what was answered at the old one was of a shorter time.
  delete load.endAnswer;
  quiet(state, `${load.id}/`);
}

function reopenOrEndShort(load: Load, process: StageRun): void {
  const end = process.kept && completesAt(process.kept);
  if (load.unloadedAt !== undefined) {
    if (end === undefined) process.endedShort = true;
    else process.endedAt = end;
    return;
  }
  // It ends by itself again, at once where the heat stayed on long enough.
  reopen(process, "running");
  for (const later of load.stages.slice(load.stages.indexOf(process) + 1)) {
    const kept = later.kept && { ...later.kept, stretches: [], gaps: [] };
    if (end !== undefined || later.state === "waiting") continue;
    reopen(later, "waiting");
    if (kept) later.kept = kept;
  }
}
