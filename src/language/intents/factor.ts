import type { MeaningOf } from "./meaning.ts";

/**
 * Critical factors hold, or do not, in so many words, read by confirms.ts; or an answer is to be
 * given anew.
 */
export const factor: MeaningOf<"factor"> = {
  cost: "clearing",
  when: ["asked:factor"],
  slots: { factor: "word", value: "number", held: "word" },
  example: "change my answer",
  unasked: true,
  wordings: [
    {
      set: { held: "unsure" },
      phrases: [
        "[i want to|i need to|i have to|let me|i would like to] change (my|that|the) [last] answer",
        "[i want to|i need to|i have to|let me|i would like to] take back my [last] answer",
        "[i think] (my|that|the) [last] answer was (wrong|not right|not true|a mistake)",
        "i (answered|said) that wrong",
        "that answer was (wrong|not right|not true|a mistake)",
        "what i (said|answered) [there|before|just now] was (wrong|not right|not true)",
      ],
    },
  ],
};
