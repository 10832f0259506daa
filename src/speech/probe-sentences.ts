/** What is said about a probe: what it saw, and where it and a person disagree. */

import { countWords } from "../reckon/number-words.ts";
import { PROBE_SILENT_SECONDS, PROBE_STUCK_MINUTES } from "../reckon/trade-numbers.ts";

const STUCK = countWords(PROBE_STUCK_MINUTES, "minute");
const SILENT = countWords(PROBE_SILENT_SECONDS, "second");

/** "200.6 degrees", "11.2 pounds". */
export function probeValue(kind: "temperature" | "pressure", value: number): string {
  const shown = (Math.round(value * 10) / 10).toFixed(1).replace(/\.0$/, "");
  return kind === "temperature" ? `${shown} degrees` : `${shown} pounds`;
}

export function stuckSentence(what: string, shown: string): string {
  const still = `The probe ${what} has shown exactly ${shown} for ${STUCK}.`;
  return `${still} I do not count on it until it moves.`;
}

export function silentSentence(what: string): string {
  return `Nothing from the probe ${what} for ${SILENT}. You have to watch, and tell me.`;
}

export function backSentence(what: string): string {
  return `The probe ${what} reads again.`;
}

export function tooHighSentence(what: string, shown: string): string {
  return `The probe ${what} shows ${shown}, more than is wanted. Turn the heat down a little.`;
}

export function heldSentence(minutes: number): string {
  const time = minutes === 1 ? "minute" : `${minutes} minutes`;
  return `The probe watched in that ${time}: it held.`;
}

export function fellSentence(shown: string): string {
  return `The probe shows that it fell to ${shown} while nobody watched. That time does not count.`;
}

/** Why a probe is not relied on, and which of its readings count all the same. */
export function unfitSentence(what: string, unfit: "slow" | "coarse"): string {
  const why = {
    slow: "reads too seldom: I need a reading every fifteen seconds at least",
    coarse: "shows too coarse steps: I need whole degrees Fahrenheit, or half pounds, or finer",
  }[unfit];
  return (
    `The probe ${what} ${why}. It begins and vouches for nothing, you have to watch; ` +
    "what it shows under the mark counts all the same."
  );
}

const NO_MINUTES = "While it reads so low no minutes count.";

export function boilDoubtSentence(shown: string, boilsAt: string): string {
  const under = `The probe shows ${shown}, and water boils at ${boilsAt} here.`;
  return `${under} ${NO_MINUTES} Is it really a full boil?`;
}

export function pressureDoubtSentence(shown: string, wanted: string): string {
  const under = `The probe shows ${shown}, under the ${wanted} that are wanted.`;
  return `${under} ${NO_MINUTES} Is the pressure really there?`;
}

export function gapDoubt(shown: string): string {
  return `The probe shows ${shown} in that time. Did it really hold?`;
}
