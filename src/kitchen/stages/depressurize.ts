/** A closed canner coming to zero by itself, then the wait before its lid is opened. */
import { LID_WAIT_MINUTES } from "../../reckon/trade-numbers.ts";
import {
  NOTHING_SHOWN,
  NOTHING_USUAL,
  type StageRules,
  USUALLY_PLANNED,
  USUALLY_SAID,
} from "./rules.ts";

export const depressurize: StageRules = {
  kind: "depressurize",
  role: "coming-down",
  ofCanner: "inside",
  onceForCanner: false,
  thermometer: null,
  length: "usual",
  restsAsTested: false,
  usual: { ...NOTHING_USUAL, title: "to zero", minutes: LID_WAIT_MINUTES },
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
  plan: { ...USUALLY_PLANNED, present: true },
  says: { ...USUALLY_SAID, ends: "lid-may-come-off" },
  shows: NOTHING_SHOWN,
};
