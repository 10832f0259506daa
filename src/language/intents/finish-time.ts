import type { MeaningOf } from "./meaning.ts";

/** At what time something will be done. */
export const finishTime: MeaningOf<"finish-time"> = {
  cost: "harmless",
  when: ["working"],
  slots: { target: "name" },
  example: "when do the jars come out",
  forgiving: true,
  topical: true,
  wordings: [
    `[<the>] {target} (finish|finishing|finished|done|ready|come out|coming out|out|be done|be
    ready) [is] (when|at what time|what time|at when)`,
    `<when-ask> (will|would|can|should) (i|we) [be able to|get to] (take|lift|pull|get|have|
    open|stop|turn off) [<the>|all the] ({target:open}|them|it|the jars|jars|the canner|the
    heat|the lid) [out|off|up|down|ready|done] [of the canner|of the water]`,
    `<when-ask> (do|does|will|can|should|must|may|would|shall|could) [<the>|i|we|all the|you|it|
    they|everything|that|this|those] [{target:open}] (come out|be done|finish|be ready|be
    finished|take out|pull|lift|end|be through|be out|get done|stop|take|take them out|take it
    out|be over|come off|expect to be done|get to stop|pull them|lift them out|be cool|be
    complete|come out of the canner|be done with|go to bed|be due|be done today|get out|come off
    the heat|take them off|pull out|come off the stove|be sealed|be checked|check the seals|
    open the canner|open the lid|be able to take|be up|stop boiling|stop processing|come up)
    [<the>|all the] [{target:open}] [out|off|now|today|up|at]`,
    `<when-ask> (do|does|will|can|should) [<the>] (jars|lids|load|canner|first load|next load|
    pints|quarts) (come|come out|be|get|finish) [out|done|ready|finished|of the canner|out of
    the canner|cool|off]`,
    `<when-ask> (is|are) [<the>|it|they|that|everything|we|this|i|all this|all that]
    [{target:open}] (done|ready|finished|out|due|over|coming out|due out|through|going to be
    done|going to be ready|going to be finished|due to come out|due to be done|going to finish|
    finishing|to come out|complete|supposed to be done|supposed to come out|supposed to be
    ready|supposed to finish|going to come out|up|expected to be done|expected|ending|to be
    done|scheduled to come out|set to finish|likely to be done|going to be through|off) [out|
    by|now|with|at]`,
    `tell me when (i|we) can (take|lift|pull|get|open|stop|turn off) [<the>|all the]
    ({target:open}|them|it|the jars|jars|the canner|the heat|the lid) [out|off|up|down]`,
    `(how late|by when) (will|do|does) (we|i|it|they|[<the>] {target:open}) (be done|finish|be
    ready|be finished|be at it|go|run|be)`,
    `(what is|tell me|give me|say|show me) [the|my|our] (finish time|finishing time|end time|
    time of finishing|done time|ending time|completion time|finish|eta|ready time|stop time)
    [(of|for|on) [<the>] {target:open}]`,
    "(finish time|end time|finishing time) [(of|for|on) [<the>] {target:open}]",
    "[<the>] {target} (finish time|end time|when)",
    `(tell me when|what time|when) (it|they|we|[<the>] {target:open}) (will be|is going to be|
    are going to be|should be|is supposed to be|would be) (done|ready|finished|out|over|
    through)`,
    `what time (is|are|will) [<the>] {target:open} [be] (done|ready|finished|due|out|over|coming
    out|end|finish|come out)`,
    "(what|which) hour will (it|they|we|[<the>] {target:open}) be (done|ready|finished)",
    `when can (i|we) (stop|go|sit down|quit|call it a day|leave|rest|turn off the heat|turn the
    heat off|turn it off|turn off the burner)`,
  ],
  spoken: [
    "when will the {target:open} be done",
    "when will (it|they) be done",
    "when do the jars come out",
  ],
  bags: [
    {
      asking: true,
      must: [
        `<when-ask> (is|are|will|would|do|does|can|could|should|am|shall|must)|finish time|how
        soon`,
        "<finished-word>",
      ],
      may: `
        <asked-of-it>|[<the>] {target}|the jars|jars|canner|everything|load|out|up|off|expect|
        be|to|able|take|pull|lift|get|remove|them|timer|going|supposed|due|of the canner|about|
        think|soon|likely|done|with|by|lids|in|rest|at|heat|turn off|figure|reckon|suppose|
        guess|imagine|say
      `,
    },
  ],
  lists: {
    "finished-word": `
      (done|finished|ready|out|over|through|finish|end|ends|come out|coming out|comes out|
      finishes|complete|take|pull|lift|due|up|finishing|stop|wrap up|get out|be able to)
    `,
    "when-ask": `
      when|what time|what oclock|at what time|about when|when exactly|roughly when|about what
      time|at what hour|what hour|around what time|around when|by when|by what time|when about|
      tell me what time
    `,
  },
};
