import type { MeaningOf } from "./meaning.ts";

/** Which batch or clock was just mentioned, or is ringing. */
export const which: MeaningOf<"which"> = {
  cost: "harmless",
  asked: true,
  when: ["always"],
  slots: {},
  example: "which one is that",
  wordings: [
    `(which|what) (one|batch|timer|load|alarm|pot|jars|recipe|lot|canner) (is|was|are) (that|it|
    this|
    those|ringing|beeping|going off) [for|ringing|beeping|going off|again]`,
    "which [one|batch|pot|timer|load] (do|did|are) you (mean|talking about|meant|on about|meaning)",
    "(what|who) (is|was) that (beep|alarm|bell|noise|timer|ring|ringing|beeping|sound) [for|about]",
    "(what|which) (is|was) (that|it) (for|about)|what (is|was) (ringing|beeping|going off)",
    "[for] which (one|batch|load|pot|timer|of them|lot)",
    "(which|what) (batch|one|pot|load) (was|is) that (about|for|from)",
    "whose (timer|alarm|turn|clock) (is|was) (that|it)",
    "what are you talking about|which is which|what is that one",
    "i heard (a beep|a bell|something|the alarm|beeping) what (is|was) (it|that) [for|about]",
  ],
};
