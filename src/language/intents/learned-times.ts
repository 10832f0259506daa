import type { MeaningOf } from "./meaning.ts";

/** What was learned of how long things take here. */
export const learnedTimes: MeaningOf<"learned"> = {
  cost: "harmless",
  asked: true,
  when: ["always"],
  slots: {},
  example: "what did you learn",
  wordings: [
    "what (did you|have you) (learn|learned|learnt) [from me|about me|so far|today|about my times]",
    "what (did you|have you) (learn|learned|learnt) (about|of) (my stove|this stove|this kitchen)",
    "(what|which) (times|minutes) (have you|did you) (learn|learned|learnt)",
    "how (fast|quick|slow) am i [usually]",
  ],
};
