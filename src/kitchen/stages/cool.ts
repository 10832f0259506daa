/** Jars standing undisturbed before their seals are checked. */
import { COOL_HOURS, COOL_USUAL_HOURS } from "../../reckon/trade-numbers.ts";
import type { StageRules } from "./rules.ts";

export const cool: StageRules = {
  kind: "cool",
  role: "cooling",
  ofCanner: "after",
  onceForCanner: true,
  thermometer: null,
  length: "usual",
  restsAsTested: false,
  usual: {
    title: "cool",
    say: "Let the jars stand untouched.",
    short: "",
    sayUnprocessed: null,
    minutes: COOL_USUAL_HOURS * 60,
    window: { minMinutes: COOL_HOURS.min * 60, maxMinutes: COOL_HOURS.max * 60 },
    attended: false,
    uses: [],
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
  plan: { hands: "none", work: "if-attended", burner: false, byJars: false, foreseeable: true },
  says: {
    turn: "when-to-check",
    lost: "boil",
    opens: "check-seals",
    closes: "check-seals",
    ends: "is-up",
  },
  shows: { done: "cooled, on to the seal check", needed: null },
};
