/** Steady steam from the open vent, without a break, before a canner is closed. */
import { VENT_MINUTES } from "../../reckon/trade-numbers.ts";
import {
  NOTHING_SHOWN,
  NOTHING_USUAL,
  type StageRules,
  USUALLY_PLANNED,
  USUALLY_SAID,
} from "./rules.ts";

export const vent: StageRules = {
  kind: "vent",
  role: "venting",
  ofCanner: "inside",
  onceForCanner: false,
  thermometer: null,
  length: "usual",
  restsAsTested: false,
  usual: { ...NOTHING_USUAL, title: "vent", minutes: VENT_MINUTES },
  shelf: "heat",
  food: "jars",
  clock: "at-sign",
  ends: "kept-time",
  watched: true,
  waits: false,
  learned: false,
  guarded: false,
  window: null,
  date: null,
  condition: {
    loss: () => "boil-lost",
    held: () => "steam pour steadily from the vent",
    minutes: () => VENT_MINUTES,
    readEvery: () => undefined,
  },
  plan: { ...USUALLY_PLANNED, present: true },
  says: { ...USUALLY_SAID, lost: "steam", ends: "steam-had" },
  shows: NOTHING_SHOWN,
};
