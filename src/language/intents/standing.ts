import type { MeaningOf } from "./meaning.ts";

/** Whether everything is going as planned. */
export const standing: MeaningOf<"standing"> = {
  cost: "harmless",
  asked: true,
  when: ["always"],
  slots: {},
  example: "are we late",
  wordings: [
    "how do we stand [now|today|for time|with the plan|with the day]",
    `(are we|am i) [still|running|going to be] (late|on time|behind|on schedule|ahead|behind
    schedule|on track|ahead of the plan|behind the plan|good for time|all right for time) [now]`,
    "how (late|far behind|far ahead|much behind) (are we|am i) [now|running]",
    "(are we|am i) (going to|gonna) (make it|be done in time|finish in time|be finished in time)",
    "will (we|i) (make it|be done in time|finish in time|get it all done) [today|tonight]",
    "(did|have) (i|we) (miss|missed|forget|forgotten) (anything|something)",
    "(is|are) (everything|it|things|all) [still] (on time|on track|going to plan|on schedule|okay)",
    "how is the (plan|schedule|day) (looking|going|coming|holding up|holding)",
    "(does|is) the plan [still] (hold|holding|good|on|stand)",
    "is [there] (anything|something) (wrong|late|overdue|lost|the matter)",
  ],
};
