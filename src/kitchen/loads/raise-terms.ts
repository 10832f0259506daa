/**
 * A load whose terms go up after its process has begun: the kitchen turned out to lie higher than
 * was thought. Its process then runs to the longer time from its own start, or begins again under
 * the higher pressure; where the heat is off already, it was too short. Nothing is ever shortened.
 */
import type { ProcessTerms } from "../../recipe/recipe.ts";
import { runOfRole } from "../owners.ts";
import { quiet } from "../settle.ts";
import { isOver, reopen } from "../stage-run.ts";
import type { Load, StageRun, State } from "../state.ts";
import { completesAt } from "../unbroken-time.ts";
import { gaugeDoubt, gaugeTargetPsi } from "./gauge-target.ts";

/** Whether terms ask for more time or pressure than others, and for less of neither. */
export function asksMore(terms: ProcessTerms, than: ProcessTerms): boolean {
  const byMinutes = terms.minutes - than.minutes;
  const byPsi = (terms.pressurePsi ?? 0) - (than.pressurePsi ?? 0);
  return byMinutes >= 0 && byPsi >= 0 && byMinutes + byPsi > 0;
}

/**
 * Puts the raised terms into a load whose process has begun; `stages` are those terms' own, and
 * `shown` what its gauge had to show before, psi. A gauge that turns out true raises nothing.
 */
export function raiseTerms(
  state: State,
  load: Load,
  event: { t: number; terms: ProcessTerms; shown: number },
  stages: StageRun[],
): void {
  const process = runOfRole(load, "treatment");
  const kept = process?.kept;
  const before = load.terms;
  const { gauge } = load;
  const target = gaugeTargetPsi({ gauge, terms: event.terms }) ?? 0;
  // By a dial that is not to be trusted no time counts, whatever it shows.
  const untrue = gauge?.kind === "dial" && gaugeDoubt(gauge) !== undefined;
  const moreAsked = (event.terms.pressurePsi ?? 0) > (before?.pressurePsi ?? 0);
  const higher = moreAsked || (!untrue && target > event.shown);
  if (!process || !kept || !(higher || !before || asksMore(event.terms, before))) return;
  load.terms = event.terms;
  kept.raised = (kept.raised ?? 0) + 1;
  // What is still to be said names the new time, pressure and depth of water.
  for (const run of load.stages) {
    run.spec = stages.find((one) => one.id === run.id)?.spec ?? run.spec;
  }
  const { terms } = event;
  const from = { fromMinutes: kept.needMinutes, fromPsi: before?.pressurePsi };
  load.raised.push({ at: event.t, ...from, fromShown: event.shown });
  kept.needMinutes = terms.minutes;
  if (higher) {
    kept.countsFrom = event.t;
    const stretch = kept.stretches.at(-1);
    if (stretch && (stretch.to === undefined || stretch.ended === "out")) {
      stretch.to ??= Math.max(stretch.from, event.t);
      stretch.ended = "raised";
    }
  } else if (isOver(process)) goesOn(load, process, event.t);
  if (isOver(process)) reopenOrEndShort(load, process);
  // The clock has a new end, and the answer at the old one was about a shorter time.
  delete load.endAnswer;
  quiet(state, load.id);
}

/**
 * A time that was full goes on only while its boil does. Once the heat is off or the jars are out,
 * nothing after the old end counts; until then somebody is asked whether it has held since.
 */
function goesOn(load: Load, { kept, endedAt }: StageRun, now: number): void {
  const stretch = kept?.stretches.at(-1);
  if (!kept || !stretch || endedAt === undefined) return;
  if (stretch.to === undefined) {
    if (now > endedAt) kept.gaps.push({ from: endedAt, to: now, cause: "time-full" });
  } else if (stretch.ended === "out") {
    stretch.to = endedAt;
    if (load.unloadedAt === undefined) stretch.ended = "off";
  }
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
