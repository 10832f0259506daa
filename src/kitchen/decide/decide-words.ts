/** Deciding to forget what a person's own words were found to mean. */
import type { DatedFact } from "../events.ts";
import type { OwnWords, Saying } from "../own-words.ts";
import { type Deciding, type Decision, done, refused } from "./decision.ts";

/** The fact that a memory is dropped. */
export function forgotten({ words, stages, question }: Saying, t: number): DatedFact {
  return { type: "words-forgotten", words, stages: [...stages], question, t };
}

/** All of them, the one of a number as they are listed, or the one learned last. */
export function decideForgetWords({ state, now, wish }: Deciding<"forget-words">): Decision {
  const { all, number } = wish.command.slots;
  const known = state.ownWords;
  if (known.length === 0) return refused("I have learned none of your words.");
  const last = number ?? known.length;
  const one: OwnWords | undefined = known[last - 1];
  if (!all && !one) return refused(`There is no number ${last}: I have learned ${known.length}.`);
  const which = all ? known : one ? [one] : [];
  return done(...which.map((words) => forgotten(words, now)));
}
