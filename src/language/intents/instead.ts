import type { MeaningOf } from "./meaning.ts";

/** Moves the last thing that was said to what it was really about. */
export const instead: MeaningOf<"instead"> = {
  cost: "changing",
  when: ["several-batches"],
  slots: { target: "name" },
  example: "no, the beets",
  unasked: true,
  wordings: [
    `(no|no no|not that one|not those|not them|wrong one|wrong batch|sorry|oops) [no|sorry|wait]
    [i mean|i meant|i was talking about|that was|it was|those were|it is|make that|for] [<the>]
    {target} [i mean|i meant|instead|rather]`,
    "i (mean|meant) [<the>] {target} [not (that one|those|them|{other:target})]",
    "(that was|it was|that is|those were|make that) [<the>] {target} not [<the>] {other:target}",
  ],
  parts: ["other"],
};
