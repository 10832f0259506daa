/** Fill hot jars to the headspace; ends when the jars are counted. */
import {
  NOTHING_SHOWN,
  NOTHING_USUAL,
  type StageRules,
  USUALLY_PLANNED,
  USUALLY_SAID,
} from "./rules.ts";

export const fill: StageRules = {
  kind: "fill",
  role: "filling",
  ofCanner: null,
  onceForCanner: true,
  thermometer: null,
  length: "written",
  restsAsTested: false,
  usual: {
    ...NOTHING_USUAL,
    closing: "Free the bubbles, wipe the rims, lids on, bands fingertip tight.",
    attended: true,
  },
  shelf: "hands",
  food: "jars",
  clock: "none",
  ends: "count",
  watched: false,
  waits: false,
  learned: true,
  guarded: false,
  window: null,
  date: null,
  condition: null,
  plan: { ...USUALLY_PLANNED, work: "always", byJars: true, present: true },
  says: { ...USUALLY_SAID, turn: "how-many-jars" },
  shows: NOTHING_SHOWN,
};
