import type { MeaningOf } from "./meaning.ts";

/** What was not understood. */
export const unknown: MeaningOf<"unknown"> = {
  cost: "harmless",
  when: ["always"],
  slots: {},
};
