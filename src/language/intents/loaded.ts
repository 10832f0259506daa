import type { MeaningOf } from "./meaning.ts";

/** No canner of a kitchen holds more: the number means something else. */
const MOST_IN_CANNER = 40;

/** Jars are in the canner. */
export const loaded: MeaningOf<"loaded"> = {
  cost: "changing",
  plainly: true,
  tellsOf: { about: "jars" },
  report: true,
  shaken: {
    clause: [
      /\b(to go|to come|left)$/,
      /^all in$|\b(fridge|freezer|dishwasher|truck|car|van|washer|groceries)\b/,
      /\b(are|is|am) (all )?(going|being|getting)\b|\bbut one\b/,
    ],
  },
  when: ["load:waiting"],
  finish: (raw) => (Number(raw.count ?? 0) > MOST_IN_CANNER ? undefined : { slots: raw }),
  slots: {
    target: "name",
    at: "instant",
    count: "count",
    size: "size",
    together: "flag",
    counts: "numbers",
  },
  example: "the jars are in the canner",
  wordings: [
    `(they|the jars|everything|both|it|both lots|the lots|both sizes) [have] [all|both] (went|gone|
    go|are) in together {together=true} [all the same|anyway|at once|in one load] [<when>]`,
    `<we> [have|just|have just] (put|loaded|lowered|set) (them|the jars|everything|both) [all|both]
    in together {together=true} [all the same|anyway|at once] [<when>]`,
    `[<the>|all <the>|all] [{count:whole}] (jars|pints|quarts|half pints) [are|is] [all|now]
    (loaded|loaded up|loaded in|in place|in the rack and down) [<when>]`,
    `[<all-in-canner>] (is|are|went|have gone|go|got|have been put|have been lowered|are now|are
    all|are all now|are down|are safely|has gone|have all gone|all went) [now|all|safely|
    already|lowered|loaded|down|back] (in|into|inside|down in|down into|in the water of|under
    water in) [the] [<the>] (canner|pot|water bath|bath|water|kettle|pressure canner|canning
    pot|water bath canner|hot water|big pot|rack) [now|and the lid is on|with the lid on|lid is
    on] [<when>]`,
    `[the|all the|all|all my|my|our] [{count:whole}] (jars|pints|quarts|half pints|load) (is|
    are|went|have gone|got) [all|now|already|safely|back] in [<when>] [<lid-on>]`,
    `(everything|the load|the rack|the first load|the second load|the next load|the last load)
    (is|went|has gone|has gone back) [now|all] in [<when>]`,
    `[<the>] (canner|pot|load|rack|{target}|water bath|pressure canner) [is|has been] [now|all|
    fully] (loaded|loaded up|full of jars|full|filled with jars|loaded and ready|all loaded)
    [<lid-on>] [<when>]`,
    `[<we>|i] [have|just|have just] (put|loaded|lowered|set|placed|dropped|got|lower|put in|
    loaded in|eased|slid) [<the>|all the|all|all of the] [{count:whole}] (jars|load|rack|pints|
    quarts|half pints|last jar|first load|second load|next load|last load) [down] (in|into|in
    the canner|into the canner|into the water|in the water|in the pot|into the pot|in the bath|
    into the bath|down|in the water bath|in the pressure canner|into the water bath|into the
    pressure canner|into the hot water) [now] [<lid-on>] [<when>]`,
    `(<we>|i) [have|just|have just] (put|lowered|loaded|set|got) (them|those|these) [all] (in|down|
    down in) [the (canner|pot|bath)] [<lid-on>] <when>`,
    `[<we>|i] [have|just|have just] (loaded|filled|loaded up|finished loading|done loading|got
    loaded) [<the>] (canner|pot|water bath|rack|pressure canner|kettle) [up] [<lid-on>] [<when>]`,
    "[<we>|i] [am|are|have] (done|finished) loading [<the>|up] [canner|pot|jars] [<when>]",
    "[all] (loaded|loaded up|loaded in) [now|and ready] [<lid-on>] [<when>]",
    "(jars|all jars|pints|quarts|load) [is|are] in [the canner|the pot|the water|the bath]",
    "[the] load [{number}|one|two|three] is in [the canner|the pot] [<when>]",
    "[<the>] canner [has] [got] (it is|all it is|all the|the|a full) (load|jars) [in it|in]",
    "[the] jars are (down|lowered|submerged) [in the canner] [<when>]",
    `[<we>|i] (have|got|have got) [<the>] [all the] jars in [the canner|the water|the pot]
    [<when>]`,
    `[<we>|i] [have|got|have got] [<the>] (canner|pot|rack|kettle|water bath|jars|load) [all]
    loaded [up] [<lid-on>] [<when>]`,
    `[<the>] rack (is|has been|has) (down|lowered|gone down|in|dropped) [in the water|in the
    canner] [with the jars] [<when>]`,
    "(<we>|i) [have|just] lowered the rack [of jars] [into the canner|in] [<when>]",
    `[<the>] {target} (is|are|went) (in|into) the (canner|water bath|pressure canner|pot|water|
    bath) [now] [<when>]`,
    "[<the>] (beets|beans|pickles|tomatoes) (is|are) in the canner",
    `(i|we) [have|just|have just] (put|got|set|lowered|loaded|placed) [all] [<the>] {target}
    [jars] [all] [down] (in|into) the (canner|water bath|pressure canner|bath) [now] [<when>]`,
    `[that is] <load> [is|are|was|has|have|got|went|that are|that is] [now|all|both|just|safely|
    already|been|gone|sitting|standing|sat|put|set|lowered|loaded|tucked|packed|down] <went-in>
    [<went-in>] [and] [<lid-on>] [<lid-on>] [<no-room>] [<when>|<lasting>]`,
    `[<we>|i] [have|had|just|have just|finally|all] <put-in> [down|in] <named-load> <went-in>
    [<went-in>]
    [and] [<lid-on>] [<lid-on>] [<no-room>] [<when>]`,
    `[<we>|i] [have|had|just|have just|finally] (put in|loaded|lowered|lowered in|loaded in|set
    down)
    <load> [and] [<lid-on>] [<lid-on>] [<no-room>] [<when>]`,
    `[<we>|i] [have|had|just|have just|finally] <put-in> [down] <went-in> <load> [and] [<lid-on>]
    [<when>]`,
    `(in|down|and in) (they|it|she|them|we) (all|go|goes|went|all went|all go) [<went-in>] [all
    {count:whole}] [and] [<lid-on>] [<when>]`,
    `[only] {count:whole} [<jars-or-size>] (fit|fitted|would fit) [in] [<vessel>] [and they are
    in|so
    {count} (is|are) in]`,
  ],
  spoken: ["the jars are in [the canner]", "the canner is loaded", "they are in the canner"],
  bags: [
    {
      beside: true,
      must: ["<all-in-canner>|[{count:whole}] (jars|pints|quarts|half pints)|rack", "<loaded-in>"],
      may: `
        <said-of-it>|i|put|set|lowered|got|placed|safely|down|snug|nicely|<when>|<lid-on>|every
        one|last|first|second|load|going|went|up|is|all of|all the|ready
      `,
    },
  ],
  lists: {
    "loaded-in": `
      (loaded|lowered|[down] in|in the canner|into the canner|in the water|into the water|in the
      pot|into the pot|in the bath|in the water bath|down in there|in there|in the rack|inside|
      aboard|down in the water|under the water)
    `,
    load: "<named-load>|they|them",
    "named-load": `
      <every-jar>|[that is] the (last|final|very last) [of the|of my|of our] (jar|one|{size}|of
      them|
      jars|of it|lot)|[all] [<the>] [first|second|next|last|whole] load|
      [all|there is|there are|that is|with|got|we have|i have|we have got|<the>] {count:whole}
      [<jars-or-size>|of <the> lot|more]|
      {count:whole} and all|
      [<the>] {target} (jars|ones|load|glasses|{size})|[<the>] (jars|glasses|{size})|
      they both|both [of them|loads]|[<the>] rack [of jars] [with {count:whole}]
    `,
    "went-in": `
      in|in there|inside|inside there|down in|down in there|[down] in place|aboard|
      [down|right down|straight] (in|into|inside|inside of|in the bottom of|down in|down into|under)
      <vessel>|in the rack [in <vessel>]|on the rack [in <vessel>]|under [the] water|swimming
    `,
    "put-in": `
      put|loaded|lowered|set|placed|dropped|got|eased|slid|popped|stood|lifted|let down|tucked|
      plunked|plopped|moved|stuck|sunk|sank|shoved|fitted|laid|put back|put in|set down|
      loaded in|lowered in
    `,
    "no-room": `
      [and|but] (one|the last|the seventh|the eighth|the last one|one more|the other one) (did not|
      would not|will not|does not) (fit|go|go in|fit in)
    `,
    "lid-on": `
      [i|i have|we have|got|have got|i got|and i have] [put|shut|locked|turned|twisted|clamped]
      [the|it is|that|her] (cover|lid) (on|down|locked|locked on|shut|tight|on top|till it (locked|
      clicked)|until it (locked|clicked)|to locked|locked down)|
      [and|with] [the|it is|that] (lid|cover|top) [is|has|has been|has gone] (on|down|shut|closed|
      locked|on tight|clamped|fastened|sealed down|clicked shut|locked down|clicked|on top|fast|
      closed fast|on it|locked shut|back on)|locked|it is locked|
      [and|with] (the lid|lid|the lids|lids) [is|are] (on|down|closed|locked|locked on|in
      place)|
      and (covered|closed|locked|locked down|ready to go|ready)
    `,
    "all-in-canner": `
      [<the>|all|all of <the>|all the] [{count:whole}] (jars|pints|quarts|half pints|half pint
      jars|pint jars|quart jars|load)|
      everything|they|they all|all of them|the (first|second|third|next|last) load|the rack|the
      last of the jars|the whole load|it|the last jar|all
    `,
  },
};
