import type { MeaningOf } from "./meaning.ts";
import { ofRecord } from "./of-record.ts";

/** A jar has left the shelf, to be eaten. */
export const opened: MeaningOf<"opened"> = {
  cost: "changing",
  report: true,
  when: ["always"],
  ofRecord: true,
  slots: { target: "name", count: "count", size: "size", jars: "numbers" },
  example: "we opened a pint of the beets",
  doubting: ["used"],
  parts: ["bare"],
  finish: ofRecord,
  wordings: [
    `[<we>|i|i have|we have|just] [just] <opened-it> [up] <one-of-them> [of|from|in] [<the>]
    [{target:open}] [<at-table>]`,
    `[<we>|i|i have|we have|just] [just] <opened-it> [up] [<the>] {target} <one-of-them>
    [<at-table>]`,
    "<one-of-them> [is|has been|got|was|were|are|just got] (opened|open|eaten|used|used up) [now]",
    `[<we>|i|i have|we have|just] [just] (had|brought up|took out|started) <one-of-them>
    (for (supper|dinner|lunch|breakfast)|tonight|open|opened)`,
    `[<we>|i|i have|we have|just] [just] (opened|cracked|popped|broke|cracked open|opened up|broke
    into) [us|me|ourselves|myself] [open|up] {count} [<jars-or-size>] of [<the>|our|my] [last (fall|
    year|summer|winter|spring|season) is|this year is] {target:open} [(from|off|out of) the (pantry|
    shelf|cellar|basement)] [for [<the>|my|our] (supper|dinner|lunch|breakfast|toast|tea|table)]`,
    `[<we>|i|i have|we have|just|i just|we just] [just] (opened|used|used up|ate|finished|
    finished off|opened up|are opening|am opening|finished up|cracked open) {count=1} (the|our|
    my) [last|first|only] <jars-or-size> of [<the>] {target:open} [for (supper|dinner|lunch|
    breakfast)|tonight|today|last night|this (morning|afternoon|evening)|from the pantry]`,
    `[<we>|i|i have|we have|just|i just|we just] [just] (opened|open|opening|cracked open|used|
    used up|ate|broke open|broke into|popped open|popped|finished|finished off|took|eaten|
    finished up|went through|opened up|am opening|are opening|am going to open|brought up|
    started|dipped into) [up] {count} <jars-or-size> of [<the>] {target:open} [for (supper|
    dinner|lunch|breakfast)|tonight|today|last night|this (morning|afternoon|evening)|from the
    pantry|from the shelf|off the shelf]`,
    `[<we>|i|i have|we have|just|i just|we just] [just] (opened|cracked open|used|used up|ate|
    broke open|popped open|finished|finished off|eaten|opened up|am opening|are opening) {count}
    [<jars-or-size>] [of] [{target}] [for (supper|dinner|lunch)|tonight|today|from the pantry|
    from the shelf]`,
    `[<we>|i|i have|we have|just] [just] <opened-it> [up] (a|an|another|one|one of the|one of our|
    the last|our last|my last|the other) {count=1} [jar of [<the>]] {target:open} {bare=true}
    [<at-table>]`,
    `[<we>|i|i have|we have|just] [just] <opened-it> [up] {count:whole} [<jars-or-size>] [of
    [<the>]] {target:open} {bare=true} [<at-table>]`,
    `[<we>|i|i have|we have|just] (opened|cracked open|used|opened up) {count} {target} (jar|
    jars|pint|pints|quart|quarts)`,
    `{count} <jars-or-size> of [<the>] {target:open} [is|are|got|was|were] (opened|open|used|
    eaten|used up|gone) [for (supper|dinner|lunch)|today]`,
    "take {count} <jars-or-size> of [<the>] {target:open} off the shelf",
  ],
  bags: [
    {
      must: ["{count} <jars-or-size>", "of [<the>] {target}", "<opened-it>"],
      may: `
        we|i|have|has|just|up|for (supper|dinner|lunch|breakfast)|tonight|today|now|and|
        another|last|from the (shelf|pantry|cellar|basement)|off the shelf|out of the pantry|
        is|are|got|was|were
      `,
    },
  ],
  lists: {
    "one-of-them": "<numbered>|{jars:jar-list}",
    "at-table": `
      [for [<the>|my|our] (supper|dinner|lunch|breakfast|toast|tea|table)] (tonight|today|now|just
      now|last night|this (morning|afternoon|evening|week))|for [<the>|my|our] (supper|dinner|lunch|
      breakfast|toast|tea|table)|(from|off|out of) the (pantry|shelf|cellar|basement)|
      [on] (monday|tuesday|wednesday|thursday|friday|saturday|sunday) [night]
    `,
    "opened-it": `
      (opened|open|opening|ate|used|cracked open|finished|finished off|eaten|used up|popped
      open|dug into|broke open|opened up|polished off|went through|had|cracked)
    `,
  },
};
