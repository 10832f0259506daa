import type { MeaningOf } from "./meaning.ts";

/** Being back: what was held goes on; otherwise the answer is how things stand. */
export const back: MeaningOf<"back"> = {
  cost: "changing",
  when: ["working"],
  slots: {},
  example: "i'm back",
  unasked: true,
  wordings: [
    `[okay|right|well|hello|hi|all right] (i am|we are|i have come|i just got|i got) [just] back
    [now|again|in the kitchen|home] [now|what did i miss]`,
    "[okay|right|well] (back|back again|back now|home again|here again|i am here again|i am home)",
  ],
  spoken: ["i am back"],
};
