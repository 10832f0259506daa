/** A time to wait: salting, soaking, draining. Too short and too long are both departures. */
import {
  NOTHING_SHOWN,
  NOTHING_USUAL,
  type StageRules,
  USUALLY_PLANNED,
  USUALLY_SAID,
} from "./rules.ts";

export const rest: StageRules = {
  kind: "rest",
  role: null,
  ofCanner: null,
  onceForCanner: false,
  thermometer: "room",
  length: "written",
  restsAsTested: true,
  usual: NOTHING_USUAL,
  shelf: "rest",
  food: "table",
  clock: "at-begin",
  ends: "window",
  watched: false,
  waits: true,
  learned: false,
  guarded: false,
  window: { short: "rest-short", long: "rest-long", opens: "alarm", reminded: true },
  date: null,
  condition: null,
  plan: USUALLY_PLANNED,
  says: USUALLY_SAID,
  shows: NOTHING_SHOWN,
};
