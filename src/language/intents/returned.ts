import type { MeaningOf } from "./meaning.ts";
import { ofRecord } from "./of-record.ts";

/** A jar that was given away is brought back. */
export const returned: MeaningOf<"returned"> = {
  cost: "changing",
  report: true,
  when: ["always"],
  ofRecord: true,
  slots: { target: "name", count: "count", jars: "numbers" },
  example: "Anna gave a jar of the beets back",
  parts: ["bare", "size", "who"],
  finish: ({ size: _size, who: _who, ...raw }, ...rest) => ofRecord(raw, ...rest),
  wordings: [
    `[<gift-taker> (did not|does not|do not) (want|like|need|take|eat|have room for) (it|them|that|
    any|<gift-jars>) [and|so]] <gift-back>`,
    `<gift-taker> (gave|brought|sent|handed|passed) (it|them|that one|<gift-jars>) back
    [<back-again>]`,
    "<gift-taker> (returned|brought back|gave back|sent back|handed back) (it|them|<gift-jars>)",
    `(i|we) (got|took|fetched|have got) (it|them|that one|<gift-jars>) back [from
    {who:thing}] [<back-again>]`,
  ],
  lists: {
    "gift-taker":
      "she|he|they|nobody|[<the>] (neighbors|neighbor|neighbour|neighbours)|<who>|{who:person}",
    "gift-back": `
      [so] (it|they|that one|<gift-jars>) (is|are|was|were|came|has come|have come|went) back
      [home|again] [<back-again>]|
      (i|we) [have] (put|took|got) (it|them|<gift-jars>) back [<back-again>]
    `,
    "back-again":
      "(on|onto|to) the shelf|in [to] the (pantry|cellar|cupboard|store)|unopened|again",
    "gift-jars": `
      <numbered> [of|from] [<the>] [{target:open}]|
      {count} <jars-or-size> of [<the>|our|my] {target:open}|
      (the|our|my|a|an|one) {count=1} {target:open} {bare=true}|[the|our|my] jar {count=1}|
      [<the>] {target} <numbered>
    `,
  },
};
