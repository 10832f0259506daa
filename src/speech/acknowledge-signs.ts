/** Answers to a canner's signs: boil, steam, pressure, temperature, and their loss. */

import { stageClock } from "../kitchen/agenda.ts";
import type { DatedFact } from "../kitchen/events.ts";
import { gaugeTargetPsi } from "../kitchen/loads/gauge-target.ts";
import { isLoad, type Owner, ownerOf, runOf, runOfRole } from "../kitchen/owners.ts";
import { OVER_PRESSURE_PSI } from "../kitchen/probe/probe-rules.ts";
import { BOILING_WATER, OFF_BOIL_F } from "../kitchen/questions/altitude-doubts.ts";
import { heldForCanner } from "../kitchen/settle.ts";
import { potOf, upper } from "../kitchen/spoken-names.ts";
import { hasRole } from "../kitchen/stages/kinds.ts";
import type { Load, StageRun } from "../kitchen/state.ts";
import { wallOf } from "../kitchen/state.ts";
import { HOUR_MS, MINUTE_MS, upToMinute } from "../kitchen/time.ts";
import { current, isLost, OFF_PROCESS_LIMIT_MS, offMs } from "../kitchen/unbroken-time.ts";
import { judgeBoil } from "../reckon/boiling.ts";
import { countWords, inchesWords } from "../reckon/number-words.ts";
import { withCommas } from "../reckon/reckoned.ts";
import {
  COVER_IN,
  LID_WAIT_MINUTES,
  LOW_TEMPERATURE_F,
  LOW_TEMPERATURE_READ_MINUTES,
  OFF_PROCESS_HOURS,
  VENT_MINUTES,
} from "../reckon/trade-numbers.ts";
import { readingSentence } from "./reading-sentences.ts";
import { clockWords, durationWords, momentWords } from "./spoken-time.ts";
import type { Told } from "./told.ts";

/** "at ten past four", said of an instant of kitchen time. */
export function at(told: Told, t: number): string {
  return momentWords(wallOf(told.state, t), wallOf(told.state, told.now), told.state.zone);
}

/** "ten past four", said of an end. */
export function endClock(told: Pick<Told, "state">, t: number): string {
  return clockWords(upToMinute(wallOf(told.state, t)), told.state.zone);
}

export function signSentence(told: Told, ownerId: string, fact: DatedFact): string {
  const owner = ownerOf(told.state, ownerId);
  if (!owner) return "";
  const run =
    isLoad(owner) && fact.type === "steam"
      ? (runOfRole(owner, "venting") ?? runOfRole(owner, "treatment"))
      : "stage" in fact && typeof fact.stage === "string"
        ? runOf(owner, fact.stage)
        : runOfRole(owner as Load, "treatment");
  if (!run?.kept) return "";
  if (isLoad(owner) && owner.terms?.method === "steam" && !current(run.kept)) {
    return "A full column of steam. Tell me its temperature.";
  }
  if (tooSoon(told, owner, run)) return `${startedSentence(told, run)} ${TOO_SOON}`;
  if (run.kept.unconfirmedAt !== undefined) return `Boiling ${at(told, run.kept.unconfirmedAt)}.`;
  return startedSentence(told, run);
}

const TOO_SOON = "The canner is not hot yet: keep the pot hot, and fill once it is.";

/** Whether food that is packed hot boils before there is a hot canner to take it. */
function tooSoon({ before, now }: Told, owner: Owner, run: StageRun): boolean {
  const was = before.batches[owner.id];
  const held = was && runOf(was, run.id);
  return was !== undefined && held !== undefined && heldForCanner(before, was, held, now);
}

/** "Twelve minutes, until ten past four"; after a loss "Twelve minutes again". */
function startedSentence(told: Told, run: StageRun): string {
  const { kept } = run;
  if (!kept || kept.stretches.length === 0) return "";
  // A jelly's mark is said with its reading.
  if (run.spec.heat?.until === "jelling-point") return "";
  if (kept.needMinutes === 0) return `${upper(potOf(run))} boiling.`;
  const shown = stageClock(run);
  if (!shown || shown.lost) return "";
  const length = durationWords(kept.needMinutes * MINUTE_MS);
  const until = `until ${endClock(told, shown.dueAt)}.`;
  if (kept.stretches.length > 1) return `${upper(length)} again, ${until}`;
  return upper(isKnown(told, run) ? until : `${length}, ${until}`);
}

/** How long what was said about a time counts as known, ms. */
const KNOWN_MS = 12 * HOUR_MS;

/** A load of the same recipe was told the same time earlier that day. */
function isKnown({ state: { batches, loads }, now }: Told, run: StageRun): boolean {
  const all = Object.values(loads);
  const load = all.find(({ stages }) => stages.includes(run));
  const recipeOf = (one: Load) => batches[one.batch]?.recipe.id;
  return all.some((one) => {
    const before = runOfRole(one, "treatment")?.kept?.stretches[0]?.from;
    if (load === undefined || one === load || before === undefined) return false;
    if (now - before > KNOWN_MS) return false;
    return recipeOf(one) === recipeOf(load) && one.terms?.minutes === load.terms?.minutes;
  });
}

export function pressureSentence(told: Told, loadId: string, psi: number): string {
  const load = told.state.loads[loadId];
  if (!load) return "";
  const process = runOfRole(load, "treatment");
  const old = told.before.loads[loadId];
  const was = old && runOfRole(old, "treatment")?.kept?.stretches.length;
  const zero = runOfRole(load, "coming-down");
  if (zero?.state === "running" && zero.kept) {
    const shown = current(zero.kept);
    const whole = countWords(LID_WAIT_MINUTES, "minute");
    const open = shown ? endClock(told, shown.from + LID_WAIT_MINUTES * MINUTE_MS) : "";
    return shown
      ? `At zero. Wait ${whole} before the lid comes off, until ${open}.`
      : `${psi} pounds; wait for zero.`;
  }
  if (!process?.kept) return `${psi} pounds.`;
  const target = gaugeTargetPsi(load);
  const over = target !== undefined && psi > target + OVER_PRESSURE_PSI ? overWords(target) : "";
  if (process.kept.stretches.length > (was ?? 0)) {
    const started = startedSentence(told, process);
    return over ? `${started} ${over}` : started;
  }
  const raised = process.kept.stretches.at(-1)?.ended === "raised";
  if (isLost(process.kept) && !raised && old && runOfRole(old, "treatment")?.kept)
    return lostSentence(told, loadId, undefined);
  if (target !== undefined && psi < target)
    return `${psi} pounds. It wants ${target} at your altitude.`;
  return `${psi} pounds. ${over || "Good."}`;
}

function overWords(target: number): string {
  return (
    `Well above the ${target} it wants: the time counts, but jars may lose liquid. ` +
    "Turn the heat down a little."
  );
}

/** A pressure canner that is not brought back (window of a mistake: Univ. of Nebraska-Lincoln). */
const COLD =
  " If it goes cold instead, leave it shut until it has come down by itself: " +
  `within ${countWords(OFF_PROCESS_HOURS, "hour")} the jars may be processed again from the ` +
  "start, with new lids; longer, throw them out.";

export function lostSentence(told: Told, ownerId: string, stage: string | undefined): string {
  const owner = ownerOf(told.state, ownerId);
  const run = stage
    ? runOf(owner, stage)
    : owner && (runOfRole(owner, "treatment") ?? runOfRole(owner, "venting"));
  if (!owner || !run?.kept) return "The clock is stopped.";
  const vent = isLoad(owner) ? runOfRole(owner, "venting") : undefined;
  if (vent?.kept && isLost(vent.kept) && vent.state === "running") {
    return `The clock is stopped. ${bringBack(owner, vent)}`;
  }
  if (run.kept.stretches.length === 0) return "Tell me when it is back.";
  const method = isLoad(owner) ? owner.terms?.method : undefined;
  const water =
    method === "boiling-water" && run.kept.stretches.length === 1
      ? " Top up with boiling water."
      : "";
  return `The clock is stopped. ${bringBack(owner, run)}${method === "pressure" ? COLD : water}`;
}

/** What to do about a clock that has stopped. */
export function bringBack(owner: Owner, run: StageRun): string {
  const { needMinutes = 0 } = run.kept ?? {};
  if (hasRole(run.spec, "venting")) {
    return `Bring the steam back; the ${countWords(VENT_MINUTES, "minute")} start again.`;
  }
  const method = isLoad(owner) ? owner.terms?.method : undefined;
  const back =
    method === "pressure" ? "to pressure" : method === "steam" ? "to full steam" : "to a full boil";
  const need = durationWords(needMinutes * MINUTE_MS);
  return `Bring it back ${back} and tell me: the whole ${need} start again.`;
}

/** The heat is off: the next step where the time was full, else its clock stops. */
export function turnedOffSentence(told: Told, loadId: string): string {
  const load = told.state.loads[loadId];
  const process = load && runOfRole(load, "treatment");
  return process?.kept && isLost(process.kept)
    ? lostSentence(told, loadId, undefined)
    : "Heat off.";
}

export function temperatureSentence(
  told: Told,
  owner: string | null,
  what: string,
  f: number,
): string {
  const load = owner === null ? undefined : told.state.loads[owner];
  const altitude = told.state.kitchen.altitudeFt;
  if (owner === null && what === BOILING_WATER && altitude !== null) return fullBoil(f, altitude);
  const process = load && runOfRole(load, "treatment");
  if (load?.terms?.method === "low-temperature" && process?.kept)
    return lowTemperature(told, load, process, f);
  if (
    load?.terms?.method === "boiling-water" &&
    process?.kept &&
    current(process.kept) &&
    altitude !== null
  ) {
    return fullBoil(f, altitude);
  }
  if (load?.terms?.method === "steam" && process?.kept) {
    return steamTemperature(told, load, process, f);
  }
  return readingSentence(told, owner, what, f);
}

/** "204 degrees at a full boil: right for 4,400 feet"; a doubt says more itself. */
function fullBoil(f: number, altitude: number): string {
  const { doubt, differenceF } = judgeBoil(f, altitude);
  if (differenceF < -OFF_BOIL_F) return `${f} degrees is far under a full boil.`;
  const right = doubt ? "" : `: right for ${withCommas(altitude)} feet`;
  return `${f} degrees at a full boil${right}.`;
}

/** A steam canner's reading: what starts its clock, stops it, or is still missing. */
function steamTemperature(told: Told, load: Load, process: StageRun, f: number): string {
  const old = told.before.loads[load.id];
  const was = (old && runOfRole(old, "treatment")?.kept) ?? undefined;
  const kept = process.kept;
  if (!kept) return "";
  if (kept.stretches.length > (was?.stretches.length ?? 0)) {
    return `${f} degrees. ${startedSentence(told, process)}`;
  }
  if (isLost(kept) && was && !isLost(was)) return lostSentence(told, load.id, undefined);
  if (current(kept)) return `${f} degrees. Good.`;
  if (load.hot === undefined) return `${f} degrees. It wants the boiling point of this place.`;
  return `${f} degrees. Tell me when a full column of steam comes out.`;
}

function lowTemperature(told: Told, load: Load, process: StageRun, f: number): string {
  const { min, max } = LOW_TEMPERATURE_F;
  if (f < min) {
    const lost = process.kept && process.kept.stretches.length > 0;
    const whole = durationWords((process.kept?.needMinutes ?? 0) * MINUTE_MS);
    return lost
      ? `${f} degrees is under ${min} degrees. Bring it back; the whole ${whole} start again.`
      : `${f} degrees. It starts at ${min} degrees.`;
  }
  const high = f > max ? ` Over ${max} degrees the pickles soften; turn it down.` : "";
  const old = told.before.loads[load.id];
  const was = (old && runOfRole(old, "treatment")?.kept?.stretches.length) ?? 0;
  const began = (process.kept?.stretches.length ?? 0) > was;
  const every = countWords(LOW_TEMPERATURE_READ_MINUTES, "minute");
  const next = process.state === "complete" ? "" : ` Read it again in ${every}.`;
  return `${f} degrees.${began ? ` ${startedSentence(told, process)}` : ""}${high}${next}`;
}

export function coverSentence(told: Told, loadId: string, covered: boolean): string {
  const load = told.state.loads[loadId];
  const process = load && runOfRole(load, "treatment");
  if (!load || !process?.kept) return "";
  if (!covered) {
    const inches = inchesWords(load.terms?.coverIn ?? COVER_IN.least);
    return (
      `Top up with boiling water to ${inches} over the lids. ` +
      "Tell me when it is a full boil again; the whole time counts from then."
    );
  }
  const old = told.before.loads[loadId];
  const was = (old && runOfRole(old, "treatment")?.kept?.stretches.length) ?? 0;
  return process.kept.stretches.length > was ? startedSentence(told, process) : "Good.";
}

export function vouchedSentence(told: Told, loadId: string, held: boolean): string {
  const load = told.state.loads[loadId];
  const run = load?.stages.find((one) => one.state === "running" && one.kept);
  if (!held && run?.kept && offMs(run.kept, told.now) > OFF_PROCESS_LIMIT_MS) {
    const hours = countWords(OFF_PROCESS_HOURS, "hour");
    return `Then it was off for over ${hours}, and is not started over.`;
  }
  if (!held)
    return "Then that time does not count. Bring it back and tell me; the whole time starts again.";
  const shown = run && stageClock(run);
  return shown ? `Good. It counts, until ${endClock(told, shown.dueAt)}.` : "Good. It counts.";
}
