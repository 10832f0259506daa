import type { MeaningOf } from "./meaning.ts";

/** An amount, or another figure of the recipe. */
export const howMuch: MeaningOf<"how-much"> = {
  cost: "harmless",
  when: ["working"],
  slots: { target: "name", what: "text", subject: "name" },
  example: "how much dill per jar",
  finish: ({ what, ...rest }) => ({ slots: { ...rest, ...(what as object) } }),
  wordings: ["{what:asked}"],
  spoken: ["{what:asked}"],
};
