import type { MeaningOf } from "./meaning.ts";

/** A jar was given away. */
export const given: MeaningOf<"given"> = {
  cost: "changing",
  report: true,
  when: ["always"],
  ofRecord: true,
  slots: { target: "name", count: "count", size: "size", jars: "numbers", to: "name" },
  example: "gave a jar of the beets to the neighbors",
  doubting: ["would"],
  wordings: [
    "<we-gave> [away] <what-jars> [away]",
    "<we-gave> [away] <what-jars> [away] to {to:thing}",
    "<we-gave> {to:thing} <what-jars>",
    "(sent|i sent|we sent) {to:thing} (home|off) with <what-jars>",
    "<what-jars> (went|is going|are going|goes) to {to:thing}",
    "<what-jars> (was|were|got|has been|have been) (given|gifted|donated) [away] [to {to:thing}]",
  ],
  lists: {
    "we-gave":
      "[<we>|i|i have|we have|just] [just] (gave|given|gifted|donated|handed|brought|dropped off)",
    "what-jars": `
      <numbered> [of|from] [<the>] [{target:open}]|
      {count} [<jars-or-size>] of [<the>|our|my] {target:open}|
      [<the>] {target} <numbered>
    `,
  },
};
