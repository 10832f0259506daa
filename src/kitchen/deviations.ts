/**
 * Where what happened departs from what the recipe asks. Deviations are worked out from the
 * record each time, so a corrected time corrects them; only dispositions are written.
 */

import {
  LONG_MINUTES,
  LOW_TEMPERATURE_F,
  REPROCESS_WITHIN_HOURS,
} from "../reckon/trade-numbers.ts";
import type { DeviationCode } from "./deviation-codes.ts";
import type { Disposition } from "./events.ts";
import { countTrouble, loadsOf } from "./jars.ts";
import { dialDoubt, gaugeTargetPsi } from "./loads/gauge-target.ts";
import { lowReadings, lowReadingWords } from "./loads/low-readings.ts";
import { stoodOver } from "./loads/standing.ts";
import { runOfRole } from "./owners.ts";
import { applies } from "./questions/factor-questions.ts";
import { leftDoubts } from "./questions/heard-doubts.ts";
import { potOf } from "./spoken-names.ts";
import { isOver } from "./stage-run.ts";
import { hasRole, rulesOf } from "./stages/kinds.ts";
import type { Batch, Deviation, Load, StageRun, State, Stretch, UnbrokenTime } from "./state.ts";
import { HOUR_MS, MINUTE_MS } from "./time.ts";
import { achievedMinutes, beyondAllowance, completesAt, restarts } from "./unbroken-time.ts";

/** A seal check after this is late: unsealed jars can no longer be reprocessed. */
const SEAL_CHECK_BY_MS = REPROCESS_WITHIN_HOURS * HOUR_MS;

/** Codes of a batch and of the loads its jars went through, in the order they happened. */
export function batchDeviations(state: State, batch: Batch, now: number): Deviation[] {
  const list = [
    ...stageDeviations(batch, now),
    ...warmReadings(batch),
    ...factorDeviations(batch),
    ...countDeviations(state, batch),
    ...kitchenDeviations(state, batch, now),
    ...loadsOf(state, batch).flatMap((load) => loadDeviations(load, batch, now)),
  ];
  for (const change of batch.changes) {
    list.push(deviation("ingredient-changed", null, change.at, change.detail));
  }
  for (const late of batch.late) list.push(lateDeviation(late));
  return list.sort((a, b) => a.at - b.at);
}

function deviation(
  code: DeviationCode,
  stage: string | null,
  at: number,
  detail: string,
  disposition: Deviation["disposition"] = "carried-on",
): Deviation {
  return { code, stage, at, detail, disposition };
}

function lateDeviation(late: { at: number; written: number; what: string }): Deviation {
  const minutes = Math.round((late.written - late.at) / MINUTE_MS);
  return deviation("written-late", null, late.at, `${late.what}: written ${minutes} min after`);
}

function minutesText(ms: number): string {
  const minutes = Math.round(ms / MINUTE_MS);
  if (minutes < 120) return `${minutes} min`;
  return `${Math.floor(minutes / 60)} h${minutes % 60 ? ` ${minutes % 60} min` : ""}`;
}

function stageDeviations(batch: Batch, now: number): Deviation[] {
  return batch.stages.flatMap((run) => {
    if (run.state !== "skipped") return [...potDeviations(run), ...windowDeviations(run, now)];
    if (run.spec.optional === true) return potDeviations(run);
    const left = deviation("skipped", run.id, run.endedAt ?? now, `${run.spec.title} left out`);
    return [left, ...potDeviations(run)];
  });
}

function windowDeviations(run: StageRun, now: number): Deviation[] {
  const { startedAt } = run;
  const { window } = run.spec;
  const rules = rulesOf(run.spec).window;
  if (!rules || !window || startedAt === undefined) return [];
  const took = (run.endedAt ?? now) - startedAt;
  const fixed = window.minMinutes === window.maxMinutes;
  if (rules.short && run.endedAt !== undefined && took < window.minMinutes * MINUTE_MS) {
    const detail = `${minutesText(took)} of at least ${minutesText(window.minMinutes * MINUTE_MS)}`;
    return [deviation(rules.short, run.id, run.endedAt, detail)];
  }
  if (rules.long && !fixed && took > window.maxMinutes * MINUTE_MS) {
    const at = startedAt + window.maxMinutes * MINUTE_MS;
    const detail = `${minutesText(took)} of at most ${minutesText(window.maxMinutes * MINUTE_MS)}`;
    return [deviation(rules.long, run.id, at, detail)];
  }
  return [];
}

/** A brine or syrup that lost its boil, or was taken off before its time. */
function potDeviations(run: StageRun): Deviation[] {
  const list: Deviation[] = [];
  const { kept } = run;
  const { condition } = rulesOf(run.spec);
  if (!kept || !condition || run.spec.heat?.holdMinutes === 0) return list;
  const done = isOver(run) ? "carried-on" : "undecided";
  list.push(...lossDeviations(kept, run.id, condition.loss(undefined), done));
  if (run.endedShort && run.endedAt !== undefined) {
    const got = Math.floor(achievedMinutes(kept, run.endedAt));
    const detail = `${run.spec.title}: ${got} of ${kept.needMinutes} min`;
    list.push(deviation("skipped", run.id, run.endedAt, detail));
  }
  return list;
}

/** How a loss is described, `%` standing for the minutes reached; any other was simply lost. */
const LOSS_DETAILS: Partial<Record<NonNullable<Stretch["ended"]>, string>> = {
  uncovered: "lids uncovered after % min",
  off: "heat off after % min",
};

/**
 * Each loss, and the restart that answered it: two codes for one incident. `otherwise` is what was
 * done about a loss that no restart answered.
 */
function lossDeviations(
  kept: UnbrokenTime,
  stage: string,
  code: DeviationCode,
  otherwise: Disposition,
): Deviation[] {
  const list: Deviation[] = [];
  kept.stretches.forEach((stretch, index) => {
    if (stretch.to === undefined || stretch.ended === "out") return;
    const next = kept.stretches[index + 1];
    const minutes = (stretch.to - stretch.from) / MINUTE_MS;
    const got = `${Math.round(minutes * 10) / 10}`;
    // Once the time was full, there is nothing to start over.
    const full = minutes >= kept.needMinutes;
    const detail =
      LOSS_DETAILS[stretch.ended ?? "lost"] ?? `lost after % of ${kept.needMinutes} min`;
    const what = next ? "restarted" : full ? "carried-on" : otherwise;
    // Raised terms are reported once for the load, with what they were before.
    if (stretch.ended !== "unwatched" && stretch.ended !== "raised") {
      list.push(deviation(code, stage, stretch.to, detail.replace("%", got), what));
    }
    if (!next) return;
    const again = `the whole ${kept.needMinutes} min again`;
    list.push(deviation("process-restarted", stage, next.from, again, "restarted"));
  });
  return list;
}

function factorDeviations(batch: Batch): Deviation[] {
  const list: Deviation[] = [];
  for (const factor of batch.recipe.critical) {
    if (!applies(batch, factor)) continue;
    const said = batch.confirmed.find((one) => one.factor === factor.id);
    const asking = batch.stages.find((run) => run.spec.asks.includes(factor.id));
    const stage = asking?.id ?? null;
    for (const { factor: id, at, held } of batch.reopened) {
      if (id !== factor.id) continue;
      const now = held === null ? "then in doubt" : "then denied";
      list.push(deviation("contradicted", stage, at, `${id}: confirmed, ${now}`));
    }
    if (said?.held) continue;
    if (said) {
      const code = factor.id === "headspace" ? "headspace" : "critical-unrecorded";
      list.push(deviation(code, stage, said.at, `${factor.id}: answered no`));
    } else if (asking && isOver(asking) && batch.state === "complete") {
      const at = asking.endedAt ?? batch.endedAt ?? batch.begunAt;
      list.push(deviation("critical-unrecorded", stage, at, `${factor.id}: nobody confirmed it`));
    }
  }
  return list;
}

function countDeviations(state: State, batch: Batch): Deviation[] {
  if (batch.state !== "complete" || !batch.option) return [];
  const trouble = countTrouble(state, batch);
  return trouble
    ? [deviation("jar-count", checkIn(state, batch), batch.endedAt ?? 0, trouble)]
    : [];
}

/** The id of the stage in which a batch's jars were counted. */
function checkIn(state: State, batch: Batch): string | null {
  const load = loadsOf(state, batch).at(-1);
  return (load && runOfRole(load, "seals")?.id) ?? null;
}

/** Doubts that leave the tested time unknown until an altitude is given. */
const UNTIL_SETTLED: ReadonlySet<string> = new Set(["denied", "untested", "then"]);

function kitchenDeviations(state: State, batch: Batch, now: number): Deviation[] {
  const until = batch.endedAt ?? now;
  const during = (at: number) => at >= batch.begunAt && at <= until;
  const list: Deviation[] = [];
  for (const set of state.clockSets) {
    if (!during(set.at)) continue;
    const by = `${set.byMs < 0 ? "back" : "forward"} ${minutesText(Math.abs(set.byMs))}`;
    list.push(deviation("clock-changed", null, set.at, `the wall clock was set ${by}`));
  }
  for (const failure of state.logFailures) {
    if (failure.to < batch.begunAt || failure.from > until) continue;
    const detail = `${failure.events} events written late: the disk refused them`;
    list.push(deviation("log-not-written", null, failure.from, detail));
  }
  for (const doubt of state.doubts) {
    // A boil that was confirmed after all leaves one doubt: the altitude.
    const again = state.doubts.some((one) => one !== doubt && one.detail === doubt.detail);
    const its = doubt.why === "then" ? batch.loads.includes(doubt.owner ?? "") : during(doubt.at);
    if (!its || (doubt.why === "no-boil" && again)) continue;
    const open = doubt.settledFt === undefined && UNTIL_SETTLED.has(doubt.why ?? "");
    const what = open ? "undecided" : "carried-on";
    list.push(deviation("altitude-doubt", null, doubt.at, doubt.detail, what));
  }
  return list;
}

/** What departed in one load, as it concerns one batch's jars in it. */
function loadDeviations(load: Load, batch: Batch, now: number): Deviation[] {
  const part = load.parts.find((one) => one.batch === batch.id);
  const cooled = part && !load.parts.every((one) => one.again - one.failedAgain >= one.jars);
  const list = load.stages
    .filter((run) => run.state !== "skipped" && (cooled || !hasRole(run.spec, "cooling")))
    .flatMap((run) => windowDeviations(run, now));
  const process = runOfRole(load, "treatment");
  const stage = process?.id ?? null;
  const short = load.disposed.find((one) => one.code === "process-short")?.what ?? "undecided";
  for (const run of load.stages) {
    const { condition, watched } = rulesOf(run.spec);
    if (!run.kept || !condition || !watched) continue;
    const code = condition.loss(load.terms?.method);
    list.push(...lossDeviations(run.kept, run.id, code, short));
    list.push(...gapDeviations(run, short));
  }
  const [low] = lowReadings(load);
  const lost = process && rulesOf(process.spec).condition?.loss(load.terms?.method);
  if (low && lost) list.push(deviation(lost, stage, low.at, lowReadingWords(load, low), short));
  if (load.endAnswer?.yes === false) {
    const pressed = load.terms?.method === "pressure";
    const code = pressed ? "pressure-lost" : "boil-lost";
    const done = load.disposed.find((one) => one.code === code)?.what ?? "undecided";
    const detail = pressed ? NOT_PRESSED : NOT_THROUGHOUT;
    list.push(deviation(code, stage, load.endAnswer.at, detail, done));
  }
  for (const one of leftDoubts(load)) {
    const said = one.held === false ? "it was not all right" : "nobody said how it was";
    list.push(deviation("unheard", stage, one.at, `"${one.text}": ${said}`, "undecided"));
  }
  for (const at of load.endReopened) {
    list.push(deviation("contradicted", stage, at, "the answer for its end was taken back"));
  }
  if (process) list.push(...lengthDeviations(load, process), ...raisedDeviations(load, process));
  if (load.terms?.method === "low-temperature") list.push(...highReadings(load, stage));
  const doubt = dialDoubt(load);
  if (doubt) list.push(deviation("gauge-untested", stage, load.openedAt, doubt));
  for (const low of load.waterLow) {
    list.push(
      deviation(
        "water-low",
        stage,
        low.at,
        low.covered ? "topped up, lids still covered" : "water low",
      ),
    );
  }
  if (cooled) list.push(...checkDeviations(load, now));
  if (part) list.push(...standDeviations(load, part), ...sealDeviations(load, part));
  for (const late of load.late) list.push(lateDeviation(late));
  return list;
}

const NOT_PRESSED = "not at the pressure throughout, not vented, or not left to fall by itself";
const NOT_THROUGHOUT = "not a full boil throughout, or the lids not covered at the end";

/** Time nobody watched, where it was long enough to be asked about. */
function gapDeviations(run: StageRun, otherwise: Disposition): Deviation[] {
  const { kept } = run;
  if (!kept) return [];
  const long = beyondAllowance(kept);
  return kept.gaps.flatMap((gap) => {
    if (gap.held === undefined && !long) return [];
    const restarted = kept.stretches.some((stretch) => stretch.from >= gap.to);
    const what = gap.held ? "carried-on" : restarted ? "restarted" : otherwise;
    const said = gap.held === undefined ? "" : gap.held ? ": it held" : ": it did not hold";
    const detail = `${minutesText(gap.to - gap.from)} unwatched${said}`;
    return [deviation("unwatched", run.id, gap.from, detail, what)];
  });
}

function lengthDeviations(load: Load, process: StageRun): Deviation[] {
  const { kept } = process;
  if (!kept || load.unloadedAt === undefined) return [];
  const out = load.unloadedAt;
  const end = completesAt(kept);
  if (process.endedShort || process.state === "skipped" || end === undefined) {
    const got = Math.floor(achievedMinutes(kept, out) * 10) / 10;
    const done = load.disposed.find((one) => one.code === "process-short");
    const detail = `${got} of ${kept.needMinutes} min`;
    return [deviation("process-short", process.id, out, detail, done?.what ?? "undecided")];
  }
  const heatOff = kept.stretches.at(-1)?.to ?? out;
  const overMs = heatOff - end;
  if (overMs <= LONG_MINUTES * MINUTE_MS) return [];
  return [
    deviation("process-long", process.id, heatOff, `${minutesText(overMs)} over the tested time`),
  ];
}

/** An altitude found to be higher than its band once the process had begun. */
function raisedDeviations(load: Load, { id, kept, endedShort }: StageRun): Deviation[] {
  const { terms } = load;
  if (!terms || !kept) return [];
  const at = (min: number, psi?: number | null) => `${min} min${psi ? ` at ${psi} psi` : ""}`;
  const feet = terms.altitudeFt + (terms.altitudeUncertaintyFt ?? 0);
  const asked = at(terms.minutes, terms.pressurePsi);
  return load.raised.map((one) => {
    const again = kept.stretches.some(({ from }) => from >= one.at);
    const short = load.disposed.find(({ code }) => code === "process-short")?.what ?? "undecided";
    const what = endedShort ? short : again ? "restarted" : "carried-on";
    const before = at(one.fromMinutes, one.fromPsi);
    if (asked !== before) {
      return deviation(
        "altitude-raised",
        id,
        one.at,
        `at ${feet} ft ${asked}, not ${before}`,
        what,
      );
    }
    const dial = `the dial had to show ${gaugeTargetPsi(load)} psi, not ${one.fromShown}`;
    return deviation("pressure-lost", id, one.at, dial, what);
  });
}

/** Readings of a crock or a rest above what its recipe allows: only a matter of quality. */
function warmReadings(batch: Batch): Deviation[] {
  return batch.stages.flatMap((run) => {
    const { temperatureF } = run.spec;
    const pot = rulesOf(run.spec).thermometer === "pot";
    if (!temperatureF || pot || run.startedAt === undefined) return [];
    const { startedAt, endedAt = Number.POSITIVE_INFINITY } = run;
    return batch.readings
      .filter(({ at, what, unit }) => {
        return what === potOf(run) && unit === "F" && at >= startedAt && at <= endedAt;
      })
      .filter(({ value }) => value > temperatureF.max)
      .map(({ at, value }) => {
        const detail = `${value} F: ${temperatureF.max} F at most is asked`;
        return deviation("temperature-high", run.id, at, detail);
      });
  });
}

function highReadings(load: Load, stage: string | null): Deviation[] {
  return load.readings
    .filter((one) => one.unit === "F" && one.value > LOW_TEMPERATURE_F.max)
    .map((one) => deviation("temperature-high", stage, one.at, `${one.value} F: softer pickles`));
}

function checkDeviations(load: Load, now: number): Deviation[] {
  const check = runOfRole(load, "seals");
  if (!check || load.unloadedAt === undefined) return [];
  const by = load.unloadedAt + SEAL_CHECK_BY_MS;
  const end = check.endedAt ?? now;
  if (end <= by || check.state === "abandoned") return [];
  const detail = `${minutesText(end - by)} past ${REPROCESS_WITHIN_HOURS} h`;
  return [deviation("seal-check-late", check.id, by, detail)];
}

/** Filled jars that stood before the canner longer than they may. */
function standDeviations({ loadedAt }: Load, part: Load["parts"][number]): Deviation[] {
  if (!part.stood || loadedAt === undefined || stoodOver(part, loadedAt) === 0) return [];
  const { from, mayMinutes } = part.stood;
  const most = minutesText(mayMinutes * MINUTE_MS);
  const stood = minutesText(loadedAt - from);
  const detail = `${stood} from the first jar to the canner: ${most} at most`;
  return [deviation("waited", null, loadedAt, detail, "undecided")];
}

function sealDeviations(load: Load, part: Load["parts"][number]): Deviation[] {
  if (part.failed === 0) return [];
  const words = load.disposed.filter((one) => one.code === "seal-failed");
  const which = part.failedJars.length > 0 ? ` (${part.failedJars.join(", ")})` : "";
  const detail = `${part.failed} did not seal${which}`;
  const check = runOfRole(load, "seals");
  const at = check?.startedAt ?? load.unloadedAt ?? load.openedAt;
  const done = words.at(-1)?.what ?? "undecided";
  return [deviation("seal-failed", check?.id ?? null, at, detail, done)];
}

/** Restarts of a load's process. */
export function loadRestarts(load: Load): number {
  const kept = runOfRole(load, "treatment")?.kept;
  return kept ? restarts(kept) : 0;
}
