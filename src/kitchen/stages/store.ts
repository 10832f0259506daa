/** Kept until its best-by date. */
import { daysWords } from "../../reckon/number-words.ts";
import { BEST_BY_DAYS } from "../../reckon/trade-numbers.ts";
import {
  NOTHING_SHOWN,
  NOTHING_USUAL,
  type StageRules,
  USUALLY_PLANNED,
  USUALLY_SAID,
} from "./rules.ts";

const DAY_MINUTES = 24 * 60;

export const store: StageRules = {
  kind: "store",
  role: null,
  ofCanner: null,
  onceForCanner: false,
  thermometer: null,
  length: "usual",
  restsAsTested: false,
  usual: {
    ...NOTHING_USUAL,
    title: "store",
    say:
      "Wipe, label, and put the jars somewhere cool and dark. " +
      `Best within ${daysWords(BEST_BY_DAYS)}.`,
    sayUnprocessed:
      "Label them and put them in the refrigerator. Without a process they are not for the shelf.",
    minutes: BEST_BY_DAYS * DAY_MINUTES,
    window: { minMinutes: 0, maxMinutes: BEST_BY_DAYS * DAY_MINUTES },
  },
  shelf: "rest",
  food: "away",
  clock: "at-begin",
  ends: "date",
  watched: false,
  waits: true,
  learned: false,
  guarded: false,
  window: null,
  date: "until",
  condition: null,
  plan: USUALLY_PLANNED,
  says: { ...USUALLY_SAID, closes: "past-best" },
  shows: NOTHING_SHOWN,
};
