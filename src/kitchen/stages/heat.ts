/** Bring to a boil or a temperature, and hold it there where the recipe says so. */
import {
  NOTHING_SHOWN,
  NOTHING_USUAL,
  type StageRules,
  USUALLY_PLANNED,
  USUALLY_SAID,
} from "./rules.ts";

export const heat: StageRules = {
  kind: "heat",
  role: null,
  ofCanner: null,
  onceForCanner: false,
  thermometer: "pot",
  length: "to-its-sign",
  restsAsTested: false,
  usual: { ...NOTHING_USUAL, uses: ["burner"] },
  shelf: "heat",
  food: "pot",
  clock: "at-sign",
  ends: "sign",
  watched: false,
  waits: false,
  learned: true,
  guarded: false,
  window: null,
  date: null,
  condition: {
    loss: () => "boil-lost",
    held: () => "the pot hold its boil",
    minutes: () => undefined,
    readEvery: () => undefined,
  },
  plan: { ...USUALLY_PLANNED, hands: "start", burner: true, present: true, lookMinutes: 10 },
  says: USUALLY_SAID,
  shows: NOTHING_SHOWN,
};
