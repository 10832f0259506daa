import type { MeaningOf } from "./meaning.ts";

/** Puts back what was taken back. */
export const redo: MeaningOf<"redo"> = {
  cost: "changing",
  when: ["always"],
  slots: {},
  example: "redo that",
  unasked: true,
  wordings: [
    `[no|wait|oops|sorry|actually] [<let>] (redo|re do|reinstate|restore) [it|that|the last one|the
    last thing]`,
    `[no|wait|oops|sorry|actually] [<let>] (put (it|that|the last one|what i took) back [in|on|
    again|the way it was]|undo the undo|undo that undo|take back the undo|bring (it|that) back)`,
    "[no|wait|oops|sorry|actually] (it|that) (was right|was right after all|did happen after all)",
    "[no|sorry|wait] i (should not have|did not mean to) (undo|take) (that|it) [back]",
    "[no|sorry|wait] i (should not have|did not mean to) (undone|taken) (that|it) [back]",
  ],
  spoken: ["put that back"],
};
