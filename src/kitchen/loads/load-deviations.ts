/** What departed in one load of a canner. */
import type { ProcessTerms } from "../../recipe/recipe.ts";
import {
  LONG_MINUTES,
  LOW_TEMPERATURE_F,
  REPROCESS_WITHIN_HOURS,
} from "../../reckon/trade-numbers.ts";
import type { Disposition } from "../events.ts";
import { meets } from "../jars/canner-room.ts";
import { didFail, isEmptied, jarsIn } from "../jars/lots.ts";
import { runOfRole } from "../owners.ts";
import { leftDoubts } from "../questions/heard-doubts.ts";
import { hasRole, rulesOf } from "../stages/kinds.ts";
import type { Deviation, Load, LoadPart, StageRun, State } from "../state.ts";
import { HOUR_MS, MINUTE_MS } from "../time.ts";
import { achievedMinutes, beyondAllowance, completesAt, restarts } from "../unbroken-time.ts";
import { dialDoubt, gaugeTargetPsi } from "./gauge-target.ts";
import { lowReadings, lowReadingWords } from "./low-readings.ts";
import {
  deviation,
  lateDeviation,
  lossDeviations,
  minutesText,
  windowDeviations,
} from "./stage-deviations.ts";
import { stoodOver } from "./standing.ts";

/** A seal check after this is late: unsealed jars can no longer be reprocessed. */
const SEAL_CHECK_BY_MS = REPROCESS_WITHIN_HOURS * HOUR_MS;

/** What departed in one load, as it concerns some of the lots in it. */
export function loadDeviations(
  state: State,
  load: Load,
  parts: readonly LoadPart[],
  now: number,
): Deviation[] {
  if (parts.length === 0 && load.parts.length > 0) return [];
  const cooled = parts.length > 0 && !isEmptied(state, load);
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
  for (const part of parts) list.push(...partDeviations(state, load, part));
  for (const late of load.late) list.push(lateDeviation(late));
  return list.map((one) => ({ ...one, only: { ...one.only, load: load.id } }));
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

/** What departed for the jars of one lot in it. */
function partDeviations(state: State, load: Load, part: LoadPart): Deviation[] {
  const its = [...standDeviations(load, part), ...shortDeviations(load, part)];
  const only = { lot: part.lot };
  return [...its.map((one) => ({ ...one, only })), ...sealDeviations(state, load, part)];
}

/** Filled jars that stood before the canner longer than they may. */
function standDeviations({ loadedAt }: Load, part: LoadPart): Deviation[] {
  if (loadedAt === undefined || stoodOver(part, loadedAt) === 0) return [];
  const { from, mayMinutes } = part.stood;
  const most = minutesText(mayMinutes * MINUTE_MS);
  const stood = minutesText(loadedAt - from);
  const detail = `${stood} from the first jar to the canner: ${most} at most`;
  return [deviation("waited", null, loadedAt, detail, "undecided")];
}

/** Jars put in with others whose tested process is not theirs, where theirs was not met. */
function shortDeviations(load: Load, { terms }: LoadPart): Deviation[] {
  if (!terms || load.loadedAt === undefined || meets(load.terms, terms)) return [];
  const stage = runOfRole(load, "treatment")?.id ?? null;
  const psi = (one: ProcessTerms) => (one.pressurePsi ? ` at ${one.pressurePsi} psi` : "");
  const had = load.terms ? `${load.terms.minutes} min${psi(load.terms)}` : "none";
  const detail = `${terms.minutes} min${psi(terms)} were tested for ${terms.jar}s, not ${had}`;
  const done = load.disposed.find((one) => one.code === "process-short");
  return [deviation("process-short", stage, load.loadedAt, detail, done?.what ?? "undecided")];
}

function sealDeviations(state: State, load: Load, part: LoadPart): Deviation[] {
  const failed = jarsIn(state, load, part).filter(didFail);
  if (failed.length === 0) return [];
  const words = load.disposed.filter((one) => one.code === "seal-failed");
  const known = failed.flatMap(({ number, guessed }) => (guessed ? [] : [number]));
  const which = known.length > 0 ? ` (${known.join(", ")})` : "";
  const detail = `${failed.length} did not seal${which}`;
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
