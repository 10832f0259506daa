import type { MeaningOf } from "./meaning.ts";

/** Which batch people mean from now on. */
export const focus: MeaningOf<"focus"> = {
  cost: "harmless",
  when: ["several-batches"],
  slots: { target: "name" },
  example: "switch to the beets",
  forgiving: true,
  wordings: [
    "[<let>] (take|bring|get|put) (me|us) [back|over] to [<the>] {target} [now]",
    "[<let>] (work on|do some work on|get to work on|tackle) [<the>] {target} [now|next]",
    "(show me|switch to|go to|pull up|bring up|focus on|open) [<the>] {target:open} (batch|lot)",
    `[<the>] {target} let us (look at|do|work on|talk about|get to) (those|that|them|it|this)
    [now]`,
    `[<let>] (go|switch|move|turn|jump|go on|go over|go back|get back|come back|change|hop|skip|
    switch over|switch back|move over|head|return|flip|shift|back|swap|go now|turn back|cut)
    [over|back|on] (to|to the) [<the>] {target} [now|please|for a minute|for a bit|batch]`,
    `[<let>] (talk about|focus on|look at|concentrate on|see to|show me|pull up|bring up|show|
    deal with|see about|attend to|tend to|turn our attention to|turn to|think about|check on|
    see|check in on|have a look at|take a look at|pay attention to|get back on) [<the>] {target}
    [now|next|for a minute|for a bit]`,
    "(back|over|on|now|and now|now back|now over) (to|for|on to) [<the>] {target} [now]",
    "(now|next|and now) [<the>] {target}|what about [<the>] {target}",
    `(this is|i am talking about|i mean|i meant|this is about|i am on|we are on|i am working on|
    we are working on|i am with|speaking of|regarding|as for|i am at|it is about|about) [<the>]
    {target} [now]`,
    "[<the>] {target} [now|next|please]",
  ],
  spoken: ["switch to the {target}", "go to the {target}"],
};
