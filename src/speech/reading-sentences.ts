/**
 * What a reported temperature means for its pot, crock or canner: how far there is to go, or what
 * does not fit. Only words: nothing is timed, started or stopped by them.
 */

import { activeOwners, isLoad, type Owner, ownerOf, runOfRole } from "../kitchen/owners.ts";
import { OFF_BOIL_F } from "../kitchen/questions/altitude-doubts.ts";
import { potOf, upper } from "../kitchen/spoken-names.ts";
import { isOver } from "../kitchen/stage-run.ts";
import { rulesOf } from "../kitchen/stages/kinds.ts";
import type { Load, StageRun, State } from "../kitchen/state.ts";
import { current } from "../kitchen/unbroken-time.ts";
import {
  BOIL_DOUBT_F,
  boilingPointF,
  JELLING_ABOVE_BOIL_F,
  jellingPoint,
} from "../reckon/boiling.ts";
import { steamTemperatureF } from "../reckon/steam.ts";
import type { Told } from "./told.ts";

/**
 * Steam that reads further than this, F, from the temperature of its pressure does not fit; our
 * choice.
 */
const STEAM_DOUBT_F = 4;
/** Sugar and salt raise the boiling point, but never this far above water's, F (our choice). */
const OVER_BOIL_F = 12;
/** A jelly this far over its mark is past it: the mark itself is within 1 F. */
const PAST_JELLING_F = 2;

type Read = { told: Told; what: string; f: number; boils: number };

/** "Canner at 100 degrees. Not warm enough yet: it wants 140 for a raw pack." */
export function readingSentence(told: Told, id: string | null, what: string, f: number): string {
  const plain = `${upper(what)} at ${f} degrees.`;
  const altitude = told.state.kitchen.altitudeFt;
  // What it was of before the report, which may have ended the stage.
  const owner = id === null ? standsWarm(told.before, what) : ownerOf(told.before, id);
  if (!owner || altitude === null) return plain;
  const read = { told, what, f, boils: Math.round(boilingPointF(altitude)) };
  const meaning = isLoad(owner) ? ofCanner(read, owner, altitude) : ofStage(read, owner, altitude);
  return meaning ? `${plain} ${meaning}` : plain;
}

function isPot({ spec }: StageRun): boolean {
  return rulesOf(spec).thermometer === "pot";
}

/** The owner of a hot pot or canner for a reading that nothing waits for. */
function standsWarm(state: State, what: string): Owner | undefined {
  return activeOwners(state).find((owner) => {
    if (isLoad(owner)) return what === "canner" && owner.loadedAt === undefined;
    return owner.stages.some((run) => isPot(run) && potOf(run) === what);
  });
}

function ofCanner({ f, boils }: Read, load: Load, altitude: number): string {
  const { terms } = load;
  if (!terms) return "";
  if (load.loadedAt === undefined) {
    if (terms.method === "steam" || f >= terms.waterStartF) return "";
    return `Not warm enough yet: it wants ${terms.waterStartF} for ${terms.pack} packs.`;
  }
  if (terms.method === "pressure") return ofSteam(f, load, altitude);
  const process = runOfRole(load, "treatment");
  if (!process || isOver(process)) return "";
  if (f > boils + OFF_BOIL_F) return tooHot(boils);
  return f < boils - BOIL_DOUBT_F
    ? `It boils at about ${boils} degrees here.`
    : "That is a boil here.";
}

/** A pressure canner's steam, against what its gauge last showed. */
function ofSteam(f: number, load: Load, altitude: number): string {
  const process = runOfRole(load, "treatment");
  const shown = load.readings.findLast((one) => one.unit === "psi")?.value;
  const timed = process?.kept && current(process.kept) ? load.terms?.pressurePsi : undefined;
  const psi = shown === undefined ? timed : shown - Math.max(0, load.gauge?.readsHighPsi ?? 0);
  if (psi === undefined || psi === null || (process && isOver(process))) return "";
  const steam = Math.round(steamTemperatureF(Math.max(0, psi), altitude));
  const pounds = `${Math.round(psi * 10) / 10} pounds`;
  if (Math.abs(f - steam) <= STEAM_DOUBT_F) return `Right for steam at ${pounds} here.`;
  const why =
    f < steam ? "Air left in the canner, the thermometer or the gauge" : "The thermometer or gauge";
  return `Steam at ${pounds} is about ${steam} here. ${why} may be off; go by the pressure.`;
}

function ofStage(read: Read, owner: Owner, altitude: number): string {
  const all = owner.stages.filter((one) => potOf(one) === read.what);
  const run = all.find((one) => !isOver(one)) ?? all.find(isPot);
  if (!run) return "";
  if (!isPot(run)) return ofLongStage(read, run);
  const until = run.spec.heat?.until;
  if (until === "jelling-point") return ofJelly(read, altitude);
  if (until === "boil") return ofPot(read, run);
  if (typeof until !== "object" || read.f >= until.temperatureF) return "";
  return `It wants ${until.temperatureF}.`;
}

/** A crock or a rest, compared with the room it needs; outside that is a matter of quality. */
function ofLongStage({ f }: Read, { spec }: StageRun): string {
  const range = spec.temperatureF;
  if (!range) return "";
  const { min, max } = range;
  const lives = rulesOf(spec).thermometer === "culture";
  if (f < min) {
    return lives
      ? `Under ${min} it may not ferment. Find it a warmer place.`
      : `Under the ${min} it wants.`;
  }
  if (f <= max) return "Right for it.";
  return lives
    ? `Over the ${max} it wants, so it may go soft. Find it a cooler place.`
    : `Over the ${max} it wants.`;
}

function ofJelly({ f, boils }: Read, altitude: number): string {
  const jells = jellingPoint(altitude);
  if (!jells.ok) return "";
  const mark = Math.round(jells.value.value);
  const where = `it jells at about ${mark} here, ${JELLING_ABOVE_BOIL_F} over the boil`;
  if (f > boils + 2 * OVER_BOIL_F) return `${tooHot(boils)} And ${where}.`;
  if (f > jells.value.value + PAST_JELLING_F) return `That is past it: ${where}. Off the heat now.`;
  if (f >= jells.value.value) return "That is the jelling point.";
  return `About ${Math.max(1, Math.round(jells.value.value - f))} to go: ${where}.`;
}

function ofPot({ f, boils }: Read, run: StageRun): string {
  if (f > boils + OVER_BOIL_F) return tooHot(boils);
  if (f >= boils - BOIL_DOUBT_F) return "That is a boil here.";
  const said = !isOver(run) && run.kept && current(run.kept);
  return said
    ? `It boils at about ${boils} degrees here, so it may not boil. Tell me if it lost its boil.`
    : `It boils at about ${boils} degrees here.`;
}

function tooHot(boils: number): string {
  return `Water boils at about ${boils} degrees here. Check the thermometer.`;
}
