import type { MeaningOf } from "./meaning.ts";

/** What comes due in the days ahead. */
export const coming: MeaningOf<"coming"> = {
  cost: "harmless",
  asked: true,
  when: ["always"],
  slots: { days: "number" },
  example: "what's due this week",
  wordings: [
    { set: { days: 7 }, phrases: ["what <due> [this week|the next few days|soon]"] },
    { set: { days: 1 }, phrases: ["what <due> today"] },
    { set: { days: 2 }, phrases: ["what <due> tomorrow"] },
    { set: { days: 14 }, phrases: ["what <due> next week"] },
    { set: { days: 31 }, phrases: ["what <due> (this|next|in the next) month"] },
  ],
  lists: {
    due: "(is due|comes due|is coming due|needs doing|wants doing|is coming up|wants a look)",
  },
};
