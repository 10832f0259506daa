import type { MeaningOf } from "./meaning.ts";

/** Jars have their labels: what was doubted of them is no longer asked about. */
export const labeled: MeaningOf<"labeled"> = {
  cost: "changing",
  report: true,
  when: ["always"],
  ofRecord: true,
  slots: { target: "name" },
  example: "the jars are labeled",
  wordings: [
    `[all] [<the>] (jars|pints|quarts) [of {target:open}] (are|have been) [all] [now] (labeled|
    labelled)`,
    "[all] [<the>] labels are [all] on",
    "[<the>] {target:open} (are|is|have been) [all] (labeled|labelled)",
    "<we> [have] [just] (labeled|labelled) [all] [<the>] ({target:open}|jars|pints|quarts)",
    "[all] [<the>] jars (labeled|labelled)",
  ],
};
