/** Weeks on the shelf for the flavor; a date, not work. */
import {
  NOTHING_SHOWN,
  NOTHING_USUAL,
  type StageRules,
  USUALLY_PLANNED,
  USUALLY_SAID,
} from "./rules.ts";

export const cure: StageRules = {
  kind: "cure",
  role: null,
  ofCanner: null,
  onceForCanner: false,
  thermometer: null,
  length: "written",
  restsAsTested: false,
  usual: {
    ...NOTHING_USUAL,
    title: "cure",
    say: "Leave the jars alone now. The flavor comes with time.",
  },
  shelf: "rest",
  food: "jars",
  clock: "at-begin",
  ends: "date",
  watched: false,
  waits: true,
  learned: false,
  guarded: false,
  window: null,
  date: "from",
  condition: null,
  plan: USUALLY_PLANNED,
  says: { ...USUALLY_SAID, opens: "ready-to-open" },
  shows: NOTHING_SHOWN,
};
