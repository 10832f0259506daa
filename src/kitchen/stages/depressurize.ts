/** A closed canner coming to zero by itself, then the wait before its lid is opened. */
import { LID_WAIT_MINUTES } from "../../reckon/trade-numbers.ts";
import type { StageRules } from "./rules.ts";

export const depressurize: StageRules = {
  kind: "depressurize",
  role: "coming-down",
  ofCanner: "inside",
  onceForCanner: false,
  thermometer: null,
  length: "usual",
  restsAsTested: false,
  usual: {
    title: "to zero",
    say: null,
    sayUnprocessed: null,
    minutes: LID_WAIT_MINUTES,
    window: null,
    attended: false,
    uses: [],
  },
  shelf: "heat",
  food: "jars",
  clock: "at-sign",
  ends: "wait-after-sign",
  watched: false,
  waits: false,
  learned: false,
  guarded: false,
  window: null,
  date: null,
  condition: null,
  plan: { hands: "none", work: "if-attended", burner: false, byJars: false, foreseeable: true },
  says: {
    turn: "recipe",
    lost: "boil",
    opens: "may-go-on",
    closes: "go-on",
    ends: "lid-may-come-off",
  },
  shows: { done: null, needed: null },
};
