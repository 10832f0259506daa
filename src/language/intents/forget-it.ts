import { textOf } from "../words.ts";
import type { MeaningOf } from "./meaning.ts";
import { takingBack } from "./taking-back.ts";

/** About the last thing or nothing in particular: asked about, never an undo by itself. */
export const forgetIt: MeaningOf<"forget-it"> = {
  cost: "changing",
  when: ["always"],
  slots: {},
  parts: ["what"],
  example: "never mind",
  // "Because I will forget" is told of oneself.
  finish: (_raw, _context, _plain, { words }) => {
    const all = textOf(words);
    if (/\b(i|we|will|would|might|always|never) forget\b/.test(all)) return undefined;
    // "Undo your coat" is said to somebody else.
    return /\b(your (?!last|note|record|log|list)|his|her|their)\b/.test(all)
      ? undefined
      : { slots: {} };
  },
  wordings: [
    `[oh|ah|well|no|okay|actually|just] (forget|forget about|never mind|nevermind|disregard|
    ignore|drop) [it|that|this|all that|about it|about that] [please|then|now|for now]`,
    "[oh|ah|well|no|okay|actually] (it|that) does not matter [now|any more]",
    // What it is about has no report that could be found by it.
    ...takingBack("{what:thing}"),
  ],
  spoken: ["never mind"],
};
