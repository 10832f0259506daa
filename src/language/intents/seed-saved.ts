import type { MeaningOf } from "./meaning.ts";

/** Seed is put away; only the command line says so. */
export const seedSaved: MeaningOf<"seed-saved"> = {
  cost: "changing",
  when: ["always"],
  slots: {
    crop: "name",
    variety: "name",
    isolation: "text",
    fermentDays: "number",
    dryWeightG: "number",
    storage: "text",
    batch: "name",
  },
};
