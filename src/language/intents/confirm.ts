import type { MeaningOf } from "./meaning.ts";

/** Critical factors hold, or do not, in so many words; read by confirms.ts. */
export const confirm: MeaningOf<"confirm"> = {
  cost: "clearing",
  when: ["asked:factor"],
  slots: {},
  example: "yes, new lids",
  answer: true,
};
