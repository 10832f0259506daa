import type { MeaningOf } from "./meaning.ts";

/** Drops what the person's own words were learned to mean: the last of them, one, or all. */
export const forgetWords: MeaningOf<"forget-words"> = {
  cost: "changing",
  when: ["always"],
  slots: { all: "flag", number: "number" },
  example: "forget the last of my words",
  unasked: true,
  wordings: [
    `[<let>] (forget|drop|unlearn) (the last [one] (of my words|you learned|of the words you
    learned)|my last words|the words you learned last|what you learned last|what you just learned)`,
    "[<let>] (forget|drop|unlearn) number {number:whole} of my words",
    {
      set: { all: true },
      phrases: [
        `[<let>] (forget|drop|unlearn) [all] [of] (my words|my own words|the words you [have]
        learned [from me]|(all|everything) you [have] learned (of|from|about) (my words|me))`,
      ],
    },
  ],
};
