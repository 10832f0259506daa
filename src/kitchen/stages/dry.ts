/** Drying until it shows a sign, within a window of days or weeks. */
import {
  NOTHING_SHOWN,
  NOTHING_USUAL,
  type StageRules,
  USUALLY_PLANNED,
  USUALLY_SAID,
} from "./rules.ts";

export const dry: StageRules = {
  kind: "dry",
  role: null,
  ofCanner: null,
  onceForCanner: false,
  thermometer: null,
  length: "written",
  restsAsTested: false,
  usual: NOTHING_USUAL,
  shelf: "rest",
  food: "away",
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
