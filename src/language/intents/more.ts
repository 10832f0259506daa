import type { MeaningOf } from "./meaning.ts";

/** The rest of what was being said. */
export const more: MeaningOf<"more"> = {
  cost: "harmless",
  when: ["always"],
  slots: {},
  example: "read me more",
  wordings: [
    `more|tell me more|read [me] more|say more|[and] the rest [of it|of that|of the list]|(read|
    tell|
    give) me the rest [of it|of the list]|keep (reading|talking|telling me)|go on reading|[and] the
    next one on the list|what (are the others|about the others|are the rest|else is there|other
    ones are there)|you stopped in the middle|finish (your sentence|what you were saying)|read on|
    (continue|finish) the list|next page|and the others|what comes after that on the list`,
  ],
};
