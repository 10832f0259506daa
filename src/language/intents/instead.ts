import type { MeaningOf } from "./meaning.ts";

/** Moves the last thing that was said to what it was really about. */
export const instead: MeaningOf<"instead"> = {
  cost: "changing",
  when: ["several-batches"],
  slots: { target: "name", jars: "numbers" },
  example: "no, the beets",
  unasked: true,
  wordings: [
    `(no|no no|not that one|not those|not them|wrong one|wrong batch|sorry|oops) [no|sorry|wait]
    [i mean|i meant|i was talking about|that was|it was|those were|it is|make that|for] [<the>]
    {target} [i mean|i meant|instead|rather]`,
    "i (mean|meant) [<the>] {target} [not (that one|those|them|{other:target})]",
    "(that was|it was|that is|those were|make that) [<the>] {target} not [<the>] {other:target}",
    `(no|no no|wait|no wait|sorry|oops|hang on|hold on) [no|sorry|wait|hang on] (i mean|i meant|that
    was|it was|that is|it is|make that|make it) <numbered> [i mean|i meant|instead|rather|not
    <numbered>|that failed|that did not seal]`,
    `(no|no no|wait|no wait|sorry|oops|hang on|hold on) [no|sorry|wait] <numbered> (failed|did not
    seal|did not take|did not hold) not ({other:number}|jar {other:number})`,
  ],
  parts: ["other"],
};
