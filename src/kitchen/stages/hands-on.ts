/** Work that goes on until the person says it is done. */
import {
  NOTHING_SHOWN,
  NOTHING_USUAL,
  type StageRules,
  USUALLY_PLANNED,
  USUALLY_SAID,
} from "./rules.ts";

export const handsOn: StageRules = {
  kind: "hands-on",
  role: null,
  ofCanner: null,
  onceForCanner: false,
  thermometer: null,
  length: "written",
  restsAsTested: false,
  usual: { ...NOTHING_USUAL, attended: true },
  shelf: "hands",
  food: "table",
  clock: "none",
  ends: "word",
  watched: false,
  waits: false,
  learned: true,
  guarded: false,
  window: null,
  date: null,
  condition: null,
  plan: { ...USUALLY_PLANNED, byJars: true, present: true },
  says: USUALLY_SAID,
  shows: NOTHING_SHOWN,
};
