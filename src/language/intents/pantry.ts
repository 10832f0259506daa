import { isTarget } from "../values/named-recipe.ts";
import type { MeaningOf } from "./meaning.ts";
import { ofRecord } from "./of-record.ts";

/** What is left of what was put by, what goes first, and where it stands. */
export const pantry: MeaningOf<"pantry"> = {
  cost: "harmless",
  asked: true,
  when: ["always"],
  ofRecord: true,
  slots: { target: "name" },
  parts: ["bare"],
  finish: ({ target, ...raw }, ...rest) => {
    const said = isTarget(target) ? target.said : target;
    const all = said === "jars" || said === undefined;
    return ofRecord(all ? raw : { target, ...raw }, ...rest);
  },
  example: "how many jars of beets are left",
  wordings: [
    `what (is|have (we|i) got|do (we|i) have) left of [<the>|our] {target:open}
    [<in-the-pantry>]`,
    `(which|what) jars (are|do (we|i) have|have (we|i) got) left of [<the>|our] {target:open}`,
    `how many [jars of|pints of|quarts of] [<the>] {target:open} (are left|are there|do (we|i)
    have|have (we|i) got|is left|remain|have (we|i)) [left|put up|put by] [<in-the-pantry>]`,
    `how many [jars of|pints of|quarts of] [<the>] {target:open} (are|is) [left] <in-the-pantry>`,
    `how many [more] [jars of|pints of|quarts of] [<the>] {target:open} {bare=true}
    [do|have] (we|i) [still] (got|have)
    [left|put up|put by] [<in-the-pantry>]`,
    `how (much|many) [of] [<the>] {target:open} (is|are|have we|do we have|have i) [got] left
    [<in-the-pantry>]`,
    `what (is|do (we|i) have|have (we|i) got|is left) [left|put up|put by] <in-the-pantry>`,
    "what (is|do (we|i) have|have (we|i) got) [left] (put up|put by|stored|canned)",
    `(what|which) [one|ones|jar|jars|batch] (should|do|shall|must) (we|i) (eat|use|open|use up)
    (first|next|soon)`,
    "(what|which) [jars|ones|one] (goes|go|is|are|has) [the] (first|oldest|to go first)",
    `(where|in which place) (are|is|did (i|we) put|did (i|we) store|have (i|we) put) <the>
    {target} <put-by>`,
    "where (is|are) [<the>] {target:open} {bare=true} [now|kept]",
    `(do|have) (we|i) [still] (have|got) [any] [jars of] [<the>] {target} [left] <in-the-pantry>`,
    "(are|is) there [any] [more] [jars of] {target} [left] <in-the-pantry>",
    "(read|list|show|tell) me (the pantry|what is in the pantry|the stores|what we have put by)",
    "(is|are) (anything|any jars) [left] (past|over) [its|their|it is] (date|best)",
  ],
  lists: {
    "in-the-pantry": `
      (in|on|down|from) [<the>] (pantry|shelf|cellar|cupboard|larder|shelves|freezer|fridge|store
      room|storeroom|basement)|down cellar
    `,
    "put-by": "jars|stored|kept|now stored|put by|that i put up|we put up",
  },
};
