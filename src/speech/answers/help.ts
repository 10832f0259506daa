/** "What can I say": three lines of it, for this moment. */

import { activeOwners } from "../../kitchen/owners.ts";
import { questions } from "../../kitchen/questions/questions.ts";
import type { State } from "../../kitchen/state.ts";
import type { Known } from "./known.ts";

/** The most examples anybody keeps in mind. */
const MOST_EXAMPLES = 3;

export function helpNow(state: State, known: Known): string {
  const open = questions(state).find(({ key }) => state.asked[key] !== undefined);
  const examples = known.examples().slice(0, MOST_EXAMPLES);
  const idle = activeOwners(state).length === 0;
  const start = "Say start and a recipe, like start the dilly beans; say recipes to hear them.";
  const report = ["done", ...examples].join("; ");
  const now = open
    ? `Answer this: ${open.text}`
    : idle
      ? start
      : `Tell me what happens: ${report}.`;
  return [
    now,
    "Ask what now, how long, how much, can I turn it off, or is it safe.",
    "Undo takes the last thing back, note writes a thing down, timer for ten minutes sets one.",
  ].join(" ");
}
