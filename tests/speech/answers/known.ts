import type { State } from "../../../src/kitchen/state.ts";
import { jarRecords } from "../../../src/review/shelf/jar-records.ts";
import { pantryOf } from "../../../src/review/shelf/pantry.ts";
import { dueWithin } from "../../../src/review/shelf/reminders.ts";
import { seedLife, seedReports } from "../../../src/review/shelf/seeds.ts";
import { exampleOf } from "../../../src/session/answering.ts";
import type { Known } from "../../../src/speech/answers/known.ts";
import { theLibrary } from "../../scenarios/play.ts";

/** What answers are made from besides the state, as a session has it. */
export function knownOf(state: State, now = 0): Known {
  return {
    library: theLibrary(),
    jars: (one) => jarRecords(state, one, now),
    pantry: () => pantryOf(state, now),
    seeds: () => seedReports(state),
    seedLife,
    coming: (days) => dueWithin(state, now, days),
    learned: () => [],
    examples: () => [],
    exampleOf,
  };
}
