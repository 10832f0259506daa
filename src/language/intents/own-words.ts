import type { MeaningOf } from "./meaning.ts";

/** Which of the person's own words have been learned. */
export const ownWords: MeaningOf<"own-words"> = {
  cost: "harmless",
  asked: true,
  when: ["always"],
  slots: {},
  example: "what have you learned of my words",
  wordings: [
    `(what|which) [words] (have you|did you) (learned|learn|learnt|picked up|pick up) (of|from|
    about) (my words|my own words|my way of talking|the way i talk|how i talk|what i say)`,
    `(what|which) of my [own] (words|sayings|expressions) (have you (learned|learnt|kept)|do you
    (know|remember|keep)|did you (learn|keep))`,
    "(what|which) [own] words of mine (have you (learned|learnt|kept)|do you (know|remember|keep))",
    "(read|show|tell|list) [me] (my [own] words|the words you [have] learned [from me])",
  ],
};
