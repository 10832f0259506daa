/** Jars standing undisturbed before their seals are checked. */
import { COOL_HOURS, COOL_USUAL_HOURS } from "../../reckon/trade-numbers.ts";
import { NOTHING_USUAL, type StageRules, USUALLY_PLANNED, USUALLY_SAID } from "./rules.ts";

export const cool: StageRules = {
  kind: "cool",
  role: "cooling",
  ofCanner: "after",
  onceForCanner: true,
  thermometer: null,
  length: "usual",
  restsAsTested: false,
  usual: {
    ...NOTHING_USUAL,
    title: "cool",
    say: "Let the jars stand untouched.",
    short: "",
    minutes: COOL_USUAL_HOURS * 60,
    window: { minMinutes: COOL_HOURS.min * 60, maxMinutes: COOL_HOURS.max * 60 },
  },
  shelf: "rest",
  food: "jars",
  clock: "at-begin",
  ends: "window",
  watched: false,
  waits: true,
  learned: false,
  guarded: false,
  window: { short: "cool-short", long: null, opens: "prompt", reminded: false },
  date: null,
  condition: null,
  plan: USUALLY_PLANNED,
  says: { ...USUALLY_SAID, turn: "when-to-check", opens: "check-seals", closes: "check-seals" },
  shows: { done: "cooled, on to the seal check", needed: null },
};
