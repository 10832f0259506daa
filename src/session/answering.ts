/** What answers are made from besides the state: the library, the stores, what can be said now. */

import type { Command } from "../kitchen/command.ts";
import type { State } from "../kitchen/state.ts";
import { isIntent, MEANINGS } from "../language/intents/all.ts";
import { learnedReport } from "../plan/learning/learned-report.ts";
import type { Library } from "../recipe/library.ts";
import { jarRecords } from "../review/shelf/jar-records.ts";
import { pantryOf } from "../review/shelf/pantry.ts";
import { dueWithin } from "../review/shelf/reminders.ts";
import { seedLife, seedReports } from "../review/shelf/seeds.ts";
import { telling } from "../speech/intents.ts";
import type { Conversation } from "./conversation.ts";
import type { Pending } from "./dialogue.ts";
import { examplesNow } from "./hearing.ts";

type Place = { state: State; now: number; library: Library; pending: Pending | undefined };

/** Answers a question that writes nothing down; false where there is no answer. */
export function answered(talk: Conversation, command: Command, place: Place): boolean {
  const { state, now, library, pending } = place;
  const answer = telling(state, command, now, {
    library,
    jars: (one) => jarRecords(state, one, now),
    pantry: () => pantryOf(state, now),
    seeds: () => seedReports(state),
    seedLife,
    coming: (days) => dueWithin(state, now, days),
    learned: () => learnedReport(state).lines,
    examples: () => examplesNow(state, pending),
    exampleOf,
  });
  if (answer === undefined) return false;
  const rank = MEANINGS[command.intent].urgent ? "alarm" : "answer";
  if (typeof answer === "string") talk.say(rank, answer);
  else talk.read(answer);
  return true;
}

/** An example of a meaning; undefined where it has none, or is never said. */
export function exampleOf(intent: string): string | undefined {
  return isIntent(intent) ? MEANINGS[intent].example : undefined;
}

const NEXT =
  /^(and |okay )?(next( one| please)?|the next one|go on|continue|and then|keep going)[.!?]*$/i;

/**
 * Says the last thing again, or the next piece of what is being read out, where that is asked for.
 */
export function saidAgain(talk: Conversation, command: Command, text: string): boolean {
  if (command.intent === "repeat") {
    talk.repeat(command.slots);
    return true;
  }
  const next = talk.toRead?.paced === true && NEXT.test(text.trim());
  if (command.intent !== "more" && !next) return false;
  talk.readOn();
  return true;
}
