import type { MeaningOf } from "./meaning.ts";

/** A germination test; it comes only from the command line. */
export const germination: MeaningOf<"germination"> = {
  cost: "changing",
  when: ["always"],
  slots: { seed: "name", sprouted: "count", of: "count", days: "number" },
};
