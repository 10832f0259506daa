import type { MeaningOf } from "./meaning.ts";

/** A bare number, name or choice, which answers the question that waits. */
export const answer: MeaningOf<"answer"> = {
  cost: "clearing",
  when: ["asked"],
  slots: {
    value: "number",
    gauge: "word",
    readsHighPsi: "number",
    what: "word",
    held: "word",
    units: "word",
    all: "flag",
    about: "flag",
    untested: "flag",
    unsure: "flag",
    later: "flag",
    halfPints: "count",
    pints: "count",
    quarts: "count",
  },
  example: "nine",
  answer: true,
};
