/** Days to weeks of souring or seed ferment, checked in between. */
import {
  NOTHING_SHOWN,
  NOTHING_USUAL,
  type StageRules,
  USUALLY_PLANNED,
  USUALLY_SAID,
} from "./rules.ts";

export const ferment: StageRules = {
  kind: "ferment",
  role: null,
  ofCanner: null,
  onceForCanner: false,
  thermometer: "culture",
  length: "written",
  restsAsTested: true,
  usual: NOTHING_USUAL,
  shelf: "rest",
  food: "jars",
  clock: "at-begin",
  ends: "window",
  watched: false,
  waits: true,
  learned: false,
  guarded: false,
  window: { short: "rest-short", long: "rest-long", opens: "prompt", reminded: true },
  date: null,
  condition: null,
  plan: { ...USUALLY_PLANNED, foreseeable: false },
  says: USUALLY_SAID,
  shows: NOTHING_SHOWN,
};
