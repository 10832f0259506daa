import type { MeaningOf } from "./meaning.ts";
import { ofRecord } from "./of-record.ts";

/** A jar was given away. */
export const given: MeaningOf<"given"> = {
  cost: "changing",
  report: true,
  when: ["always"],
  ofRecord: true,
  slots: { target: "name", count: "count", size: "size", jars: "numbers", to: "name" },
  example: "gave a jar of the beets to the neighbors",
  doubting: ["would"],
  parts: ["bare"],
  finish: ofRecord,
  wordings: [
    "<we-gave> [away] <what-jars> [away]",
    "<we-gave> [away] <what-jars> [away] to {to:thing}",
    "<we-gave> {to:thing} <what-jars>",
    "(sent|i sent|we sent) {to:thing} (home|off) with <what-jars>",
    `[<we>|i] [have] [just] (took|take|brought|bring|carried|sent|give) <what-jars> [over|round|
    down|
    up|along] to {to:thing} [for (christmas|easter|the holidays|supper|dinner|lunch|a present)]`,
    `[<the>] <numbered> [<we>|i] [have] [just] (took|take|brought|bring|gave|give|sent) [it|them]
    [over|round|down|up|along] to {to:thing}`,
    "<what-jars> (went|is going|are going|goes|go|gone) [over|off] to {to:thing}",
    "<what-jars> (was|were|got|has been|have been) (given|gifted|donated) [away] [to {to:thing}]",
  ],
  lists: {
    "we-gave":
      "[<we>|i|i have|we have|just] [just] (gave|given|gifted|donated|handed|brought|dropped off)",
    "what-jars": `
      <numbered> [of|from] [<the>] [{target:open}]|
      {count} [<jars-or-size>] of [<the>|our|my] {target:open}|
      (the|our|my) [other|last] {count:whole} {target:open} {bare=true}|
      {count:whole} [of [<the>]] {target:open} {bare=true}|
      (a|another|one|the last|our last) {count=1} {target:open} {bare=true}|
      [<the>] {target} <numbered>
    `,
  },
};
