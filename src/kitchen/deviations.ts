/**
 * Where what happened departs from what the recipe asks. Deviations are worked out from the
 * record each time, so a corrected time corrects them; only dispositions are written.
 */

import type { Disposition } from "./events.ts";
import { countTrouble, loadsOf } from "./jars.ts";
import { achievedMinutes, beyondAllowance, completesAt, restarts } from "./kept.ts";
import { LOW_TEMPERATURE_F } from "./loads/canner-stages.ts";
import { potOf } from "./names.ts";
import { isLoad, type Owner, runOfKind } from "./owners.ts";
import { applies } from "./questions.ts";
import { isOver } from "./stage-run.ts";
import type { Batch, Deviation, Kept, Load, StageRun, State, Stretch } from "./state.ts";
import { HOUR_MS, MINUTE_MS } from "./time.ts";

/** A process may run over by this before it is written down as a matter of quality. */
export const LONG_MINUTES = 10;
/** A seal check after this is late: unsealed jars can no longer be reprocessed. */
export const SEAL_CHECK_BY_MS = 24 * HOUR_MS;

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
  code: string,
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

function stageDeviations(owner: Owner, now: number): Deviation[] {
  const list: Deviation[] = [];
  for (const run of owner.stages) {
    const { window, kind } = run.spec;
    if (run.state === "skipped" && run.spec.optional !== true && !isLoad(owner)) {
      list.push(deviation("skipped", run.id, run.endedAt ?? now, `${run.spec.title} left out`));
    }
    if (kind === "heat") list.push(...heatDeviations(run));
    if (!window || run.startedAt === undefined || run.state === "skipped") continue;
    if (kind !== "rest" && kind !== "ferment" && kind !== "dry") continue;
    list.push(...windowDeviations(run, run.startedAt, now, window));
  }
  return list;
}

function windowDeviations(
  run: StageRun,
  startedAt: number,
  now: number,
  window: { minMinutes: number; maxMinutes: number },
): Deviation[] {
  const took = (run.endedAt ?? now) - startedAt;
  const fixed = window.minMinutes === window.maxMinutes;
  if (run.endedAt !== undefined && took < window.minMinutes * MINUTE_MS) {
    const detail = `${minutesText(took)} of at least ${minutesText(window.minMinutes * MINUTE_MS)}`;
    return [deviation("rest-short", run.id, run.endedAt, detail)];
  }
  if (!fixed && took > window.maxMinutes * MINUTE_MS) {
    const at = startedAt + window.maxMinutes * MINUTE_MS;
    const detail = `${minutesText(took)} of at most ${minutesText(window.maxMinutes * MINUTE_MS)}`;
    return [deviation("rest-long", run.id, at, detail)];
  }
  return [];
}

/** A brine or syrup that lost its boil, or was taken off before its time. */
function heatDeviations(run: StageRun): Deviation[] {
  const list: Deviation[] = [];
  const { kept } = run;
  if (!kept || run.spec.heat?.holdMinutes === 0) return list;
  list.push(...lossDeviations(kept, run.id, "boil-lost", isOver(run) ? "carried-on" : "undecided"));
  if (run.endedShort && run.endedAt !== undefined) {
    const got = Math.floor(achievedMinutes(kept, run.endedAt));
    const detail = `${run.spec.title}: ${got} of ${kept.needMinutes} min`;
    list.push(deviation("skipped", run.id, run.endedAt, detail));
  }
  return list;
}

/** What a loss is called, `%` for the minutes there had been; any other was simply lost. */
const LOSS_DETAILS: Partial<Record<NonNullable<Stretch["ended"]>, string>> = {
  uncovered: "lids uncovered after % min",
  raised: "% min under a pressure too low for the altitude do not count",
};

/**
 * Each loss, and the restart that answered it: two codes of one incident. `otherwise` is what was
 * done about a loss that no restart answered.
 */
function lossDeviations(
  kept: Kept,
  stage: string,
  code: string,
  otherwise: Disposition,
): Deviation[] {
  const list: Deviation[] = [];
  kept.stretches.forEach((stretch, index) => {
    if (stretch.to === undefined || stretch.ended === "out") return;
    const next = kept.stretches[index + 1];
    const got = ((stretch.to - stretch.from) / MINUTE_MS).toFixed(1).replace(/\.0$/, "");
    const detail =
      LOSS_DETAILS[stretch.ended ?? "lost"] ?? `lost after % of ${kept.needMinutes} min`;
    const what = next ? "restarted" : otherwise;
    const as = stretch.ended === "raised" ? "altitude-doubt" : code;
    if (stretch.ended !== "unwatched") {
      list.push(deviation(as, stage, stretch.to, detail.replace("%", got), what));
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
    if (said?.held) continue;
    const asking = batch.stages.find((run) => run.spec.asks.includes(factor.id));
    const stage = asking?.id ?? null;
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
  return trouble ? [deviation("jar-count", "seal-check", batch.endedAt ?? 0, trouble)] : [];
}

/** Doubts that leave nobody knowing what is tested here, until an altitude is said. */
const UNTIL_SETTLED: ReadonlySet<string> = new Set(["denied", "untested"]);

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
    // A boil that was confirmed after all is one doubt, of the altitude.
    const again = state.doubts.some((one) => one !== doubt && one.detail === doubt.detail);
    if (!during(doubt.at) || (doubt.why === "no-boil" && again)) continue;
    const open = doubt.settledFt === undefined && UNTIL_SETTLED.has(doubt.why ?? "");
    const what = open ? "undecided" : "carried-on";
    list.push(deviation("altitude-doubt", null, doubt.at, doubt.detail, what));
  }
  return list;
}

/** What departed in one load, as it concerns one batch's jars in it. */
export function loadDeviations(load: Load, batch: Batch, now: number): Deviation[] {
  const part = load.parts.find((one) => one.batch === batch.id);
  const list: Deviation[] = [...stageDeviations(load, now)];
  const process = runOfKind(load, "process");
  const short = load.disposed.find((one) => one.code === "process-short")?.what ?? "undecided";
  for (const run of load.stages) {
    if (!run.kept || (run.spec.kind !== "process" && run.spec.kind !== "vent")) continue;
    list.push(...lossDeviations(run.kept, run.id, lossCode(load, run), short));
    list.push(...gapDeviations(run, short));
  }
  if (load.endAnswer?.yes === false) {
    const done = load.disposed.find((one) => one.code === "boil-lost")?.what ?? "undecided";
    list.push(deviation("boil-lost", "process", load.endAnswer.at, NOT_THROUGHOUT, done));
  }
  if (process) list.push(...lengthDeviations(load, process));
  if (load.terms?.method === "low-temperature") list.push(...highReadings(load));
  if (load.gauge?.untestedSeason !== undefined && load.gauge.testedSeason === undefined) {
    list.push(
      deviation("gauge-untested", "process", load.openedAt, "dial gauge not tested this season"),
    );
  }
  for (const low of load.waterLow) {
    list.push(
      deviation(
        "water-low",
        "process",
        low.at,
        low.covered ? "topped up, lids still covered" : "water low",
      ),
    );
  }
  if (part) list.push(...coolDeviations(load, now), ...sealDeviations(load, part));
  for (const late of load.late) list.push(lateDeviation(late));
  return list;
}

function lossCode(load: Load, run: StageRun): string {
  if (load.terms?.method === "pressure")
    return run.spec.kind === "vent" ? "boil-lost" : "pressure-lost";
  return load.terms?.method === "low-temperature" ? "temperature-lost" : "boil-lost";
}

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
  const off = load.stages.find((run) => run.id === "heat-off");
  const heatOff = off?.state === "complete" && off.endedAt !== undefined ? off.endedAt : out;
  const overMs = heatOff - end;
  if (overMs <= LONG_MINUTES * MINUTE_MS) return [];
  return [
    deviation("process-long", process.id, heatOff, `${minutesText(overMs)} over the tested time`),
  ];
}

/** Readings of a crock or a rest over what its recipe asks: softer, a matter of quality. */
function warmReadings(batch: Batch): Deviation[] {
  return batch.stages.flatMap((run) => {
    const { kind, temperatureF } = run.spec;
    if (!temperatureF || kind === "heat" || run.startedAt === undefined) return [];
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

function highReadings(load: Load): Deviation[] {
  return load.readings
    .filter((one) => one.unit === "F" && one.value > LOW_TEMPERATURE_F.max)
    .map((one) =>
      deviation("temperature-high", "process", one.at, `${one.value} F: softer pickles`),
    );
}

function coolDeviations(load: Load, now: number): Deviation[] {
  const list: Deviation[] = [];
  const cool = runOfKind(load, "cool");
  const check = runOfKind(load, "seal-check");
  const allAgain = load.parts.every((part) => part.again - part.failedAgain >= part.jars);
  if (cool?.endedShort && cool.endedAt !== undefined && cool.startedAt !== undefined && !allAgain) {
    const detail = `${minutesText(cool.endedAt - cool.startedAt)} of at least 12 h`;
    list.push(deviation("cool-short", cool.id, cool.endedAt, detail));
  }
  if (check && load.unloadedAt !== undefined && !allAgain) {
    const by = load.unloadedAt + SEAL_CHECK_BY_MS;
    const end = check.endedAt ?? now;
    if (end > by && check.state !== "abandoned") {
      list.push(deviation("seal-check-late", check.id, by, `${minutesText(end - by)} past 24 h`));
    }
  }
  return list;
}

function sealDeviations(load: Load, part: Load["parts"][number]): Deviation[] {
  if (part.failed === 0) return [];
  const words = load.disposed.filter((one) => one.code === "seal-failed");
  const which = part.failedJars.length > 0 ? ` (${part.failedJars.join(", ")})` : "";
  const detail = `${part.failed} did not seal${which}`;
  const at = runOfKind(load, "seal-check")?.startedAt ?? load.unloadedAt ?? load.openedAt;
  return [deviation("seal-failed", "seal-check", at, detail, words.at(-1)?.what ?? "undecided")];
}

/** Restarts of a load's process. */
export function loadRestarts(load: Load): number {
  const kept = runOfKind(load, "process")?.kept;
  return kept ? restarts(kept) : 0;
}
