import { OR_ANOTHER } from "../values/rough-values.ts";
import type { MeaningOf } from "./meaning.ts";

/** Some number of jars is filled. */
export const jarsFilled: MeaningOf<"jars-filled"> = {
  cost: "changing",
  inPieces: true,
  plainly: true,
  report: true,
  shaken: {
    // "Five quarts and a pint": two sizes are no count.
    clause: [OR_ANOTHER, /\bonly half\b/, /^an? (half pint|pint|quart)$/],
    // "The feeders are filled, two of them": no jars are named.
    whole: /^(?!.*\b(jar|pint|quart|glass|bean|beet|pickle|lid)).*\bof them\b/,
  },
  when: ["stage:filling"],
  slots: {
    ...({ target: "name", count: "count", size: "size", brew: "number", not: "number" } as const),
    ...({ more: "flag", corrected: "flag", mixed: "flag" } as const),
  },
  parts: ["at", "when", "other", "bare"],
  // When they were filled is kept nowhere.
  finish: ({ target, count, size, not, more, bare }, { timers }) => {
    // Of minutes or of jars.
    if (bare === true && timers.length > 0) return undefined;
    return { slots: { target, count, size, not, more } };
  },
  example: "eight pints filled",
  wordings: [
    `[no|sorry] [it is|it was|that is|that was|i mean|i meant|make that|there are|i have] [only]
    {count:whole} [jars|pints|quarts|filled] not {not:number} [jars|pints|quarts|filled]`,
    `[<the>] [{target}] jars (are|were|was|is|make|makes|come to|came to) {count:whole} [not
    {other:number}] [in all|all told|altogether]`,
    `<we> (got|have|have got) [<the>] last [of [<the>]] [{target}] [jar|one|pint|quart|jars]
    (packed|
    filled|full|done) [that makes|that is] {count:whole} [of them] [all told|in all|altogether|
    total] [<jars-or-size>]`,
    `(i|we) [have] (filled|packed) (the last|the rest) of [<the>] {target} [{when:ago}]
    {count:whole} <jars-or-size> [in all|all told]`,
    `(i|we) [have] counted [<the>] {target} [jars] [(i|we) (filled|packed|did)] [and] there (is|are)
    {count:whole} [in all|all told|of them]`,
    `[already] (i|we) [have|already] put [<the>] {target} (in|into) [the] jars [it|they|there] (are|
    is|makes|gives) {count:whole} [<jars-or-size>]`,
    "<tally> {count:whole} <filled-state> [now|so far]",
    `[and|so] <tally> [all|about|exactly|a total of|all of|only|just|another {more=true}]
    {count:whole} [full|filled|packed|whole|good|even] <jars-or-size> [<filled-state>|filled|full|
    packed|ready|in all|all told|all together|altogether|total|done|up|ready to go|ready for the
    canner|all filled|filled up|packed and ready|lidded|all packed|capped|put up|ready to load|
    now|so far|of {target}|from {target}|for {target}|out of it|out of that|out of {target}|
    filled with {target}|in this batch|in total|from this batch|out of this batch|from that|on
    the counter|full]`,
    `[<we>|i] [have|just|have just] (filled|packed|filled up|got filled|ladled|got|made|ended up
    with|filled and lidded|put up|come out with|came out with|wound up with|managed|topped off|
    finished filling|finished packing|done filling|canned|ended with|finished with|come up with|
    came up with) [about|exactly|a total of|only|just|all|another {more=true}] {count:whole} [full]
    [<jars-or-size>] [of {target}|with {target}|in all|all told|altogether|total|now|so far|
    from that|up|from this batch|out of it|out of that|in total|full]`,
    `[<the>|all] {count:whole} <jars-or-size> (is|are|got|have been) [all|now|already]
    (<filled-state>|filled|full|packed|filled up|filled and lidded|ready to go in|packed and
    lidded|lidded|filled and wiped|ready for the canner|topped up)`,
    `[all] {count:whole} [full] <jars-or-size> [all] (<filled-state>|filled|full|packed|in all|
    all told|altogether|in total|ready for the canner|filled and lidded|packed and lidded|so
    far) [of {target}]`,
    "[and|that is|there is|<filled-state>] {count:whole} more {more=true} {bare=true}",
    "now is full {count:whole} more {more=true}",
    "[all] {count:whole} (are|have been) [all|now|already] (filled|full|packed|filled up|lidded)",
    `[<we>|i] [have] [ended up|wound up|just finished|finished] (filling|packing) [about|
    exactly] {count:whole} <jars-or-size> [in all|all told|of {target}]`,
    "{count:whole} <jars-or-size> [of {target}]",
    "{count:whole} (filled|full|packed)",
    "{size} {count:whole} [of them] [all] (filled|full|packed)",
    "(filled|packed|full) {count:whole} <jars-or-size>",
    `<it> (filled|made|came out to|came to|gave us|gave me|yielded|comes to|fills|makes|comes out
    to|came out at|works out to|fit in|fit into|went into|filled up|took|turned into|packed
    into|worked out to) [about|exactly|just|only] {count:whole} [full|filled|packed|even]
    [<jars-or-size>] [full|in all|altogether|of {target}]`,
    `{target} (filled|made|came out to|came to|gave us|gave me|yielded|comes to|fills|makes|
    packed into|fit in|fit into|went into) [about|exactly|just] {count:whole} [full]
    [<jars-or-size>]`,
    "<the> (last|final) one is filled [and] that (makes|is) {count:whole}",
    `(total|the total|the count|jar count|the jar count|count) [is|of] {count:whole}
    [<jars-or-size>] [filled]`,
    `[i|we] (count|counted|have counted) {count:whole} [full|filled] [<jars-or-size>] [filled|
    full]`,
    `[and|so|<we>] [<tally>|have filled|filled|have packed|packed|i make (it|that)] [about|exactly|
    a total of|all of|only|just] {count:whole} [more {more=true}] [full|good|whole|lovely|
    beautiful|lousy]
    <jars-or-size> [<filled-tail>] [<filled-tail>] [<leftover>] [<filled-tail>]`,
    `[<the>|them|those] {target} (made|filled|came to|came out at|gave|yielded|makes|fills) [me|us]
    [about|exactly|just] {count:whole} [full|good] <jars-or-size> [<filled-tail>] [<leftover>]`,
    `{count:whole} <jars-or-size> is what [<the>|them] {target} (came to|made|gave [me|us]|filled)`,
    `[<the>] {target} (is|are|fit|fits) [all] (in|into|packed in|in the|packed|filled|in jars)
    {count:whole} <jars-or-size> [now|in all|all told]`,
    `[<we>|i] [have] [just] [got] (filled|packed|finished) [<the>] last [(of|jar of) [<the>]
    {target}|[{target}] (jar|one)|of it|of them] [up|packed|filled] [<when>] [and] [that is|that
    makes] {count:whole} <jars-or-size> [<filled-tail>] [<filled-tail>]`,
    `[<we>|i] [have] got [<the>] last [{target}] (jar|one|of them) (filled|packed|done) [and] [that
    is|that makes] {count:whole} <jars-or-size> [<filled-tail>] [<filled-tail>]`,
    `[<we>|i] (count|counted|have counted) [<the>] [{target}] jars [(i|we) [have] (filled|packed|
    put up)] [and] (there is|there are|it is|that is|they are|i get|we have) {count:whole}
    [<jars-or-size>]`,
    `[already] [<we>|i] [have] [already] (put|packed|got) [<the>] {target} in [<the>] jars [and]
    (are|there are|that is|that makes|it is|it makes|they are) {count:whole} <jars-or-size>`,
    `<got> {count:whole} <jars-or-size> [all] (stood|sat|standing|sitting|lined up|waiting) [here|
    there|on the counter] [all] [filled|full|packed|ready]`,
    `jars (filled|packed) [and] [there are|that is] {count:whole} of (them|it)`,
  ],
  spoken: [
    "{count:whole} {size} filled",
    "{count:whole} jars filled",
    "[i] filled {count:whole} {size}",
    "that is {count:whole} {size}",
    "{count:whole} {size}",
  ],
  bags: [
    {
      beside: true,
      must: ["{count:whole} [full|filled|good] <jars-or-size>"],
      may: `
        <tally>|<filled-word>|it|that|we|i|have|has|is|are|got|all|and|so|in all|in total|
        total|now|all told|altogether|so far|of {target}|from {target}|{target}|made|filled|
        packed|<the>|just|out of this batch|from this batch|out of it|out of that|from that|up|
        about|exactly|another {more=true}
      `,
    },
  ],
  lists: {
    "filled-state": "<filled-word> [and] [<filled-word>] [and] [<filled-word>]",
    "filled-word": `
      filled|full|packed|lidded|capped|ready|wiped|done|ready to go|topped up|sealed up and
      ready|[the] lids (on|are on)|ladled|loaded up|filled up|ready for the canner|waiting|up|good
      to go
    `,
    "filled-tail": `
      (out of|from) (that|this|it|the|the whole) (lot|batch|bowl|bushel|basket|crate)|
      [all|and|now] (filled|full|packed|lidded|capped|wiped|done|ready|closed|packed up|filled up|
      put up|topped off) [and] [filled|full|packed|lidded|capped|wiped|ready|waiting] [up]
      [for (the|that) (canner|pot)]|
      [and] (ready|waiting) to go [in]|with [<the>|new|their] lids on|with {target}|of {target}|out
      of {target}|in all|all told|altogether|in total|so far|now|standing up|on the (counter|
      board|table|towel)|all wiped|rims wiped
    `,
    leftover: `
      [and|with|plus] [only] (a (bit|drop|dab|smidge|little|spoonful|cup|cupful|saucer|mug|dribble|
      taste)|some|half a jar) [that is] [left|left over|over|to spare|extra] [(in|for) (a|the|my)
      [coffee] (cup|mug|saucer|bowl|cook|supper|toast|tea|fridge|kids|table)]
    `,
    tally: `
      there is|here is|that is|that makes|makes|it makes|we have|i have|we have got|i have got|
      got|there are|here are|that gives us|that gives me|it gave us|it came to|that comes to|
      comes to|we got|i got|we ended up with|ended up with|we made|made|i made|we are at|i am
      at|it is|they are|all together|altogether|in all|we are up to|that makes it|that brings us
      to|that comes out to|came out to|it came out to|came to|it comes to|came out with|i come
      out with|that would be|that will be|all told|we are looking at|looks like|a total of|
      total of|that was|gives us|that fills
    `,
  },
};
