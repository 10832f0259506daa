/** Each jar is found sealed or not; ends when every jar is accounted for. */
import { NOTHING_USUAL, type StageRules, USUALLY_PLANNED, USUALLY_SAID } from "./rules.ts";

export const sealCheck: StageRules = {
  kind: "seal-check",
  role: "seals",
  ofCanner: "after",
  onceForCanner: true,
  thermometer: null,
  length: "usual",
  restsAsTested: false,
  usual: {
    ...NOTHING_USUAL,
    title: "seal check",
    say: "Bands off. Press the middle of each lid.",
    short: "Bands off, press each lid.",
    minutes: 10,
    attended: true,
  },
  shelf: "hands",
  food: "jars",
  clock: "none",
  ends: "count",
  watched: false,
  waits: true,
  learned: true,
  guarded: true,
  window: null,
  date: null,
  condition: null,
  plan: { ...USUALLY_PLANNED, work: "can-wait", byJars: true },
  says: USUALLY_SAID,
  shows: { done: null, needed: "Say all sealed, or which jars did not" },
};
