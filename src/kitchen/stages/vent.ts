/** Steady steam from the open vent, without a break, before a canner is closed. */
import { VENT_MINUTES } from "../../reckon/trade-numbers.ts";
import type { StageRules } from "./rules.ts";

export const vent: StageRules = {
  kind: "vent",
  role: "venting",
  ofCanner: "inside",
  onceForCanner: false,
  thermometer: null,
  length: "usual",
  restsAsTested: false,
  usual: {
    title: "vent",
    say: null,
    sayUnprocessed: null,
    minutes: VENT_MINUTES,
    window: null,
    attended: false,
    uses: [],
  },
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
  plan: { hands: "none", work: "if-attended", burner: false, byJars: false, foreseeable: true },
  says: {
    turn: "recipe",
    lost: "steam",
    opens: "may-go-on",
    closes: "go-on",
    ends: "steam-had",
  },
  shows: { done: null, needed: null },
};
