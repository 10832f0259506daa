/** Answers to an altitude: what it means for jars that are or were in a canner. */

import { stageClock } from "../kitchen/agenda.ts";
import type { DatedFact } from "../kitchen/events.ts";
import { gaugeTargetPsi } from "../kitchen/loads/gauge-target.ts";
import { activeOwners, hasBegun, isLoad, runOfRole } from "../kitchen/owners.ts";
import { upper } from "../kitchen/spoken-names.ts";
import { isOver } from "../kitchen/stage-run.ts";
import type { Load } from "../kitchen/state.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import { current } from "../kitchen/unbroken-time.ts";
import { boilingPointF } from "../reckon/boiling.ts";
import { inchesWords } from "../reckon/number-words.ts";
import { withCommas } from "../reckon/reckoned.ts";
import { endClock } from "./acknowledge-signs.ts";
import { durationWords } from "./spoken-time.ts";
import type { Told } from "./told.ts";

/** "Altitude 900 feet." And that a process which runs is never cut short by it. */
export function altitudeSentence(told: Told, feet: number): string {
  const { altitudeUncertaintyFt: off } = told.state.kitchen;
  const within =
    off > 0
      ? ` Give or take ${withCommas(off)} feet, so I go by ${withCommas(feet + off)} feet.`
      : "";
  const said = `Altitude ${feet} feet.${within}`;
  const loads = activeOwners(told.state).filter((one): one is Load => isLoad(one) && runs(one));
  const same = loads.filter(
    (load) => timesRaised(load) === timesRaised(told.before.loads[load.id]),
  );
  const [load] = same;
  const was = told.before.kitchen.altitudeFt;
  const nowhere = told.state.doubts.some((one) => {
    return one.why === "untested" && one.settledFt === undefined;
  });
  if (!load?.terms || was === null || was === feet || nowhere) return said;
  return `${said} The load in the canner keeps its ${minutesOf(load)}.`;
}

function timesRaised(load: Load | undefined): number {
  return (load && runOfRole(load, "treatment")?.kept?.raised) ?? 0;
}

function runs(load: Load): boolean {
  const process = runOfRole(load, "treatment");
  return hasBegun(load) && process !== undefined && !isOver(process);
}

function minutesOf(load: Load): string {
  const { terms } = load;
  if (!terms) return "time";
  const time = durationWords(terms.minutes * MINUTE_MS);
  return terms.pressurePsi === null ? time : `${time} at ${terms.pressurePsi} pounds`;
}

/** "At 4,000 feet ten minutes are tested, not five. It runs until ten past nine." */
export function raisedSentence(told: Told, id: string): string {
  const load = told.state.loads[id];
  const old = told.before.loads[id];
  const process = load && runOfRole(load, "treatment");
  if (!load?.terms || !old?.terms || !process?.kept) return "";
  const { terms } = load;
  const whole = durationWords(terms.minutes * MINUTE_MS);
  const feet = withCommas(terms.altitudeFt + (terms.altitudeUncertaintyFt ?? 0));
  const same = minutesOf(load) === minutesOf(old);
  if (same && gaugeTargetPsi(load) === gaugeTargetPsi(old)) return "";
  const tested = same
    ? `The dial had to show ${gaugeTargetPsi(load)} pounds, not ${gaugeTargetPsi(old)}.`
    : `At ${feet} feet the tested process is ${minutesOf(load)}, not ${minutesOf(old)}.`;
  if (load.unloadedAt !== undefined) {
    return process.endedShort ? `${tested} Those jars had less.` : tested;
  }
  const inches =
    terms.coverIn > old.terms.coverIn ? ` Keep ${inchesWords(terms.coverIn)} of water on.` : "";
  const shown = stageClock(process);
  if (current(process.kept) && shown) {
    return `${tested}${inches} It runs until ${endClock(told, shown.dueAt)}.`;
  }
  if (isOver(process)) return `${tested}${inches} It has had that.`;
  const again = `${upper(bringBack(load))} and tell me; the whole ${whole} count from then.`;
  return `${tested}${inches} ${again}`;
}

function bringBack(load: Load): string {
  const { terms } = load;
  if (terms?.gauge === "weighted") return `put the ${terms.pressurePsi} pound weight on`;
  if (terms?.method === "pressure") return `bring it to ${gaugeTargetPsi(load)} pounds`;
  return terms?.method === "steam" ? "bring it back to full steam" : "bring it back to a full boil";
}

/** What is said about a doubt of the altitude; the question itself follows. */
export function doubtSentence(
  told: Told,
  { why, detail }: Extract<DatedFact, { type: "altitude-doubt" }>,
): string {
  if (why === "denied" || why === "no-boil") return "";
  if (why === "untested") {
    const then = "What is in the canner is not as tested then. Say undo if that was wrong.";
    return `${upper(detail)}. ${then}`;
  }
  const feet = told.state.kitchen.altitudeFt ?? 0;
  const boils = Math.round(boilingPointF(feet));
  const usual = `At ${withCommas(feet)} feet water boils at about ${boils} degrees.`;
  const mend = why === undefined ? " Tell me the altitude if it is wrong." : "";
  return `${usual} Check the thermometer.${mend}`;
}
