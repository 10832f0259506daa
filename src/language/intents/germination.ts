import type { MeaningOf } from "./meaning.ts";

/** A germination test; only the command line says so. */
export const germination: MeaningOf<"germination"> = {
  cost: "changing",
  when: ["always"],
  slots: { seed: "name", sprouted: "count", of: "count", days: "number" },
};
