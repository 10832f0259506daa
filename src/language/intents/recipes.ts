import type { MeaningOf } from "./meaning.ts";

/** The recipes there are. */
export const recipes: MeaningOf<"recipes"> = {
  cost: "harmless",
  asked: true,
  when: ["always"],
  slots: {},
  example: "what recipes do you know",
  wordings: [
    `(what|which) [all] [other] recipes (do you know|do you have|have you got|are there|are in
    there|
    can i make|can we make|have we got)`,
    "(list|read|show|tell|give) [me] [all] (the|your|my) recipes|[list] recipes|recipe list",
    "[show me|read me|give me] (the|your) (list of recipes|recipe list|recipes)",
    "what (can|could) (i|we) (put up|can|make|preserve|pickle) [with you|here|today]",
    "what (else|all) (can|could) (i|we) (put up|can|make|preserve|pickle)",
    "what [all] do you know how to (can|make|put up|preserve|pickle)",
    "how many recipes (do you know|are there|have you got|do you have)",
    "(do you have|have you got|are there) [any] [other|more] recipes",
  ],
};
