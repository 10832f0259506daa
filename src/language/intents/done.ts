import { type Context, underWay } from "../context.ts";
import { wordSet } from "../grammar/word-set.ts";
import { isTarget } from "../values/named-recipe.ts";
import { textOf } from "../words.ts";
import { looksAt } from "./looked.ts";
import type { MeaningOf } from "./meaning.ts";

/** With one of these, words about how it was done may say that it was not. */
const NOT_ALL = wordSet("not no never none without except but only yet still most some almost");

/** Jars filled too far are not just filled. */
const OVERFILLED = /\bto the (very )?(brim|rim|top|lip)\b/;
/** "I added peppers" tells of something new; "I added the peppers" of a step that is known. */
const ADDED = /\badded (?!the\b|my\b|our\b|all\b|it\b|them\b|those\b|everything\b)\w/;

/** What is put away there is not thereby done: `disposition` tells of it. */
const COLD = wordSet("refrigerator freezer");

/** Whether what is under way at the table brings such things there, where its steps are known. */
function bringsThere(where: string, thing: unknown, { running }: Context): boolean {
  const told = underWay(running).flatMap(({ instructions }) => instructions ?? []);
  if (told.length === 0) return !COLD.has(where);
  const named = isTarget(thing) && thing.said === "jars" ? [where, "jar"] : [where];
  return told.some((one) => named.every((word) => one.includes(word)));
}

/** What ferments is skimmed and checked many times before it is done. */
const LOOKED = /^((i|we|and|so|have|just) )*(skimmed|stirred|checked|looked)\b/;

/** A stage is done. Jars out of the canner, the heat off and the canner ready are parts of it. */
export const done: MeaningOf<"done"> = {
  cost: "clearing",
  report: true,
  shaken: {
    clause: [
      /\b(so done|about done|done in|half|not|back in|toast|dead|man)\b/,
      /\b(supper|dishes|laundry|dinner)\b/,
      /\blids?\b.* on the (counter|table)\b/,
    ],
  },
  when: ["working"],
  slots: { target: "name", at: "instant" },
  parts: ["count", "number", "size", "how", "where", "other"],
  finish: ({ how, where, ...slots }, context, _plain, said) => {
    if (typeof where === "string" && !bringsThere(where, slots.target, context)) return undefined;
    if (how !== undefined && said.words.some(({ word }) => NOT_ALL.has(word))) return undefined;
    const all = textOf(said.words);
    if (LOOKED.test(all) && looksAt(context)) return undefined;
    if (OVERFILLED.test(all) || ADDED.test(all)) return undefined;
    return { slots: { target: slots.target, at: slots.at } };
  },
  learnedAs: { "heat-off": { target: "heat off" } },
  example: "that's done",
  topical: true,
  anyStep: true,
  doubting: ["once"],
  wordings: [
    "[all] done with (this|that) [one|step|part|bit|job|stage|lot]",
    `[<the>] water is [good and|nice and|now|up to temperature and] hot in [<the>] {target=canner}
    canner [now|already]`,
    "that [about|just about|pretty much] (does|did) it [for (that|those|the {target}|now)]",
    `(i|we) (have|got|have got) [<the>] [all the] {target=jars} jars (out|up and out|out of the
    canner|on the rack|on the towel)`,
    "[<the>] ({target}|<things>) (are|is) [all|now] in <its-place>",
    "[<the>] ({target}|<things>) [all] <did> and <did>",
    "<things> and <things> (are|is) [all] (<done>|<did>|ready)",
    `{target=jars} (pulled|i pulled|we pulled|i have pulled|we have pulled|just pulled|i just
    pulled|unloaded|i unloaded|lifted|i lifted|we lifted|i have lifted|pulling|i am pulling|
    lifting|i am lifting|removing|removed|hoisting|taking|taking up|hauling) [<the>|all the|
    all] (jars|pints|quarts|half pints|load|rack) [<when>]`,
    "that takes care of (that|it|them|those|the {target}|that one)",
    "(onward|on) [to] (the next|the next one|next)",
    "on with (it|the next|the next one)",
    `{target=jars} [<the>] [{number}] (jars|pints|quarts) (are|is) (coming|going) out [of the
    canner|of the water] [now]`,
    `[<it>|<we>|i|everything|all] [am|is|are|has|have|got|all|has all] [been|now|just|all|
    finally|pretty much] <done> [with it|with that|with this|with those|with them|here|now|too|
    as well] [<when>]`,
    `[<we>|i|just|i just|we just|i have|we have|have|i have just] (finished|done|completed|got
    done|got through|finished up|wrapped up|got finished|got it|made it) [with] [it|that|this|
    them|those|those ones|that one|that step|this step|the step|that part|that bit|the last one|
    that job|that lot|with them|with it|up|up with that|the last of it|the last of them|
    everything] [<when>]`,
    "next [one|step|please|thing|up|job|task|stage|bit|part]",
    "(moving|move) (on|right along|right on|ahead)",
    `(move|moving|go|going|let us move|let us go|on|let us get|get) [on] to (the next|the next
    one|the next step|the next thing|the next stage|the next part|next|the next job|the next
    bit)`,
    `(done|finished|ready|i am ready|we are ready|all ready|i am all ready) [and ready] (for|to
    do|to go to|to move on to|with) (the next|the next one|the next step|what is next|more|the
    next thing|next|the next stage|the next job|whatever is next)`,
    `[i am|we are|all|i am all|it is|it is all|that is|everything is|they are|they are all]
    (ready|set|done and ready) [to go] [now|here]`,
    `that is (that|it|it then|the last one|the last of it|the last of them|them all|all of it|
    all of them|the lot|everything|all done|all|a wrap|me done|the end of that|everything done|
    the last of those|one done|job done|behind us|off the list)`,
    `(check|check that off|tick|tick that off|mark it done|mark that done|mark this done|check
    that one off|cross that off|cross that off the list|cross it off|consider it done|mark it
    finished|mark that as done|mark it as done|mark that complete|job done|mission accomplished|
    there we go|step done|all finished|stage done|step finished|step complete|stage complete|we
    are there|finito|and done|done here|nothing left to do here)`,
    `(mark|check off|tick off|cross off) [<the>] ({target}|<doing>) [as] [done|complete|
    finished|off|off the list]`,
    `[<the>] ({target}|<things>) (is|are|has|have|got|all) [been|now|just|all|both|finally|all
    now] (<done>|ready|<did>|in place|ready to go|all ready|<did> and <did>|<did> <did> and
    <did>) [now|too|as well|up] [<when>]`,
    `(everything|all|they|it|that|that one|this one|every one|all of them|all of it|the lot|we|
    those) [is|are|has|have] [been|now|all|both|finally] (<did>|<did> and <did>|<did> and ready|
    <did> <did> and <did>|in place|ready to go) [now|up] [<when>]`,
    "[all] <did> [and <did>] [now|up] [<when>]",
    "[all] <did> and ready [to go]",
    `[<we>|i|just|i just|we just|i have|we have|have|i have just|i am|we are|am|all] [just|all|
    now] (finished|done|through|done with|finished with|through with|completed|got done|got done
    with|finished up|wrapped up|am done with|got through|all done with|got finished|over with)
    [with] [all|up] [<the>] (<doing>|<doing> [up|of] [<the>] ({target}|<things>|them|it|those)|
    <doing> and <doing>|{target}|<doing> and <doing> [<the>] ({target}|<things>)) [<when>]`,
    `[the] lids [are] [all] on [and] [the] bands [are] [all] on [and] [all] (done|finished|
    ready) [<when>]`,
    `(i am|we are|i believe i am|i am all) (through|finished|done) with (that|this) (bit|part|
    step|job|lot)`,
    `(that is|this is) me (finished|done|through) [with [<the>] ({target}|<things>|<doing>)]
    [<when>]`,
    `[<the>|all the|that is the|that is all the|that is] <doing> [of {target}] (is|are|has|has
    been) [been|now|all|finally] <done> [now] [<when>]`,
    "[the] <doing> [<the>] ({target}|<things>) is [all] <done> [<when>]",
    "that is [all] [<the>] (<doing>|{target}|<things>) [all] (<done>|<did>)",
    "[<the>] (<doing>|{target} <doing>) <done>",
    "[<the>] {target} <done>",
    `[i|we] [have] [just|all|now] [got] [all] (<did>) [all|up] [<the>] [all the] ({target}|
    <things>|them|it) [<when>]`,
    "[i|we] [have] [just] <did> and <did> [<the>] ({target}|<things>|them|it|everything) [<when>]",
    "[i|we] have [just] <did> (everything|all of it|all of them|it all|them all)",
    `(got|i got|we got|i have got|we have got|i have|we have) [all] [<the>] ({target}|<things>|
    everything|them|it|them all|it all|all of it|all of them) [all] (<did>|<done>|ready) [up|
    now] [<when>]`,
    "[<the>] (stage|step|job|task|prep|batch|process|timer) is [now|all] <done>",
    "all the ({target}|<things>) are (<done>|<did>|<did> and <did>)",
    "<done-jars-out>",
    "i have <did> (<things>|{target}) and <did> (<things>|{target}|them)",
    "[<the>] ({target}|<things>) <did>",
    `[i|we] [have] [just|all|now] [got] <did-it> [all|up] [<the>] [all the] ({target}|<things>|them|
    it|it all|them all|everything) [up] <how-done> [<when>]`,
    `[i|we] [have] [just|all|now] [got] (<the> ({target}|<things>)|them|it|it all|them all|
    everything|
    every last one|every one|the lot) [all] <did-it> [and <did-it>] [up|<how-done>] [<when>]`,
    `[<the>] ({target}|<things>|they|it|everything) [is|are|has|have] [been|now|all|just] <did-it>
    [and
    <did-it>] [up] <how-done> [<when>]`,
    `[all] [<the>] ({number}|a) (pounds|pound|pecks|bushels|bushel|peck) [of] [<the>] [{target}]
    [is|are] [now|all] <did-it> [and <did-it>] [<how-done>]`,
    `[<the>] ({target}|<things>) [all|is|are|now] <did-it> <did-it> [and] [<did-it>] [up|
    <how-done>]`,
    `[<the>] [{target}|fifteen pound] (lid|lids|weight|cover|bands|rings|caps|tops)
    [is|are|came|come|
    went|has gone] [all|now|back|both] (on|on tight|on finger tight|on and [finger] tight|back
    on|off|locked|
    locked down|down|clamped|in place) [<how-tight>] [now] [<when>]`,
    `(<took-up>|put|got|pulled) [<the>] [{target}] (lid|lids|weight|cover|bands|rings) [back|all]
    (on|off|back on|on tight) [<how-tight>] [now] [<when>]`,
    `[<the>] [{target}] (skins|stems|ends|seeds|pits|foam|bubbles|tops|tails|fat|peels|husks|silk|
    scum|pods|strings|cores|bones) [is|are|all] [now|all] (off|out|skimmed|gone) [<how-done>]`,
    `[i|we] [have] [just] (took|taken|got|cut|skimmed|pulled|picked|scooped|worked|chased|pinched)
    [out|off] [<the>|all the] (skins|stems|ends|blossom ends|seeds|pits|foam|bubbles|tops|tails|fat|
    peels|husks|silk|scum|pods|strings|cores|bones) [all] [off|out] [<how-done>]`,
    `[<the>] (sugar|salt|dill|garlic|spices|vinegar|pectin|mustard seed|peppers|onions|herbs) [is|
    are] [all] (in|stirred in) [<when>]`,
    `[<the>] {target} (has|have) had (it is|their) [whole] (scrub|soak|wash|chill|bath|trim|
    rinse|
    time|boil|cook|rest|salting) [<when>]`,
    `[<the>|that is [<the>|all the]] <doing> [of [<the>] ({target}|<things>)] [is|are] [now|all]
    (over|past|at an end|behind (me|us)|finished with)`,
    `[<the>] ({target}|<things>|they) (is|are|have) (done|finished|through) [with] [their] <doing>
    [<when>]`,
    `([<the>] ({target}|<things>) (is|are|has been) [all|now] (<done>|<did>) [and <did>]|<it-did>
    [<the>]
    ({target}|<things>)) [and|but|only] [<the>] {other:target} [one|ones] [is|are|has|have]
    <not-so>`,
    "<jars-on-board>",
    {
      set: { target: "canner" },
      phrases: [
        "[<the>] (canner|canner water) is [now] (hot enough|up to heat|ready for the jars)",
        "[<the>] (canner|canner water) is (up to|at) temperature",
        "[<the>] canner water is hot [now]",
        "[<the>] water in <the> canner is [now|good and] (hot|hot enough|up to (heat|temperature))",
        "[<the>] (canner|canner water) has come [up] to (heat|temperature)",
      ],
    },
    {
      set: { target: "heat off" },
      phrases: [
        `[<the>] <heat> [is|has been|went|has gone|got turned|was turned] [now|all] off
        [now|<when>]`,
        `[<person>] [have|has] [just|gone and|went and]
        (turned|turn|shut|switched|killed|cut|put|knocked|clicked|flicked) [it]
        off [<the>] <heat> [under (it|them|the (canner|pot))] [now|<when>]`,
        `[<person>] [have|has] [just|gone and|went and]
        (turned|turn|shut|switched|took|taken|knocked|clicked|flicked|put)
        (it|[<the>] <heat>) [right|all the way|clean] off [under (it|them|the (canner|pot))]
        [now|<when>]`,
        `[<person>] [have|has] [just|gone and|went and] (killed|cut|doused|shut|put out) [<the>]
        <heat> [under (it|them|the
        (canner|pot))] [now|<when>]`,
        `[<person>] [have|has] [just|gone and|went and] (took|taken|pulled|slid|lifted|moved)
        (it|her|[<the>] (canner|pot)) [right|
        clean] off [of] [<the>] <heat> [now|<when>]`,
        "(it|she|[<the>] (canner|pot)) is [now] off [<the>] <heat> [now|<when>]",
      ],
    },
  ],
  spoken: [
    "that is done",
    "the {target} (is|are) done",
    "finished with the {target}",
    { set: { target: "jars" }, phrases: ["the jars are out", "jars are out [of the canner]"] },
    { set: { target: "heat off" }, phrases: ["[the] heat is off"] },
    { set: { target: "canner" }, phrases: ["[the] canner is (ready|hot)"] },
  ],
  bags: [
    {
      must: ["<done>"],
      may: `
        <said-of-it>|i|am|with|step|part|bit|job|stage|now|too|well|task|{target}|<doing>|
        <things>|up|here|over|thing|pretty much|yes|got|everything|one|that one|for now|<when>|
        lot|finally
      `,
    },
    {
      set: { target: "jars" },
      must: ["<jars-hot>|the (last|final) (jar|one)", "<out-of>|off the rack|on the towel"],
      may: `
        <took>|<said-of-it>|i|am|safely|taking|lifting|pulling|hauling|getting|fishing|
        bringing|came|coming|come|unloading|now|going|<when>|the last of|carefully|up|hoisting|
        hoisted|out
      `,
    },
  ],
  lists: {
    done: `
      done|finished|all done|all finished|complete|completed|over with|taken care of|all set|
      through|all through|done with|all taken care of|good to go|seen to|dealt with|out of the
      way|done and dusted|squared away|over and done with|wrapped up
    `,
    did: `
      <did-it>|warm|hot|clean|cooled|cool|dry|tender|fingertip tight|on ice|in the crock|submerged
    `,
    "did-it": `
      trimmed|sliced|washed|packed|filled|peeled|chopped|salted|drained|rinsed|mixed|weighed|
      sorted|snapped|topped|tailed|topped and tailed|stemmed|pitted|cored|blanched|skinned|
      shredded|pounded|tamped down|cooked|wiped|ladled|cleaned|scrubbed|cut|cut up|strained|
      measured|iced|chilled|mashed|crushed|scalded|roasted|heated|warmed|skimmed|
      ground|diced|minced|squeezed|spread out|prepped|prepared|hulled|picked over|lidded|capped|
      marked|husked|shelled|soaked|sterilized|layered|pressed|weighed down|salted down|packed
      away|dissolved|tightened|all cut|cut and cored|scraped|dried|slipped|quartered|halved|put
      away|shelved|stored|measured out|mixed up|stirred in|added|poured|debubbled|screwed on|
      checked
    `,
    things: `
      rims|bands|lids|jars|dill|garlic|peppers|onions|ice|salt|lemon juice|acid|vinegar|
      bubbles|headspace|rings|spices|sugar|brine|syrup|water|peels|skins|stems|ends|cores|pits|
      cucumbers|cukes|cabbage|berries|fruit|vegetables|slices|onions and peppers|jars and lids|
      labels|weights|crock|canner|kettle|tops|beans|pods
    `,
    "its-place": `
      [the] jars {where=jar}|the crock {where=crock}|the brine {where=brine}|the pot {where=pot}|
      [the] ice {where=ice}|the freezer {where=freezer}|the dehydrator {where=dehydrator}|
      the (fridge|refrigerator) {where=refrigerator}
    `,
    "how-done": `
      (with|in|into|on|onto|through|from|by|to) [the|a|an|my|some|one|two|half] {how:thing}|
      [finger|fingertip] tight|away from (me|my face)|<like>|(nice and|good and) [small|fine|thin|
      even|clean|tight]|small|fine|thin|clean|in (half|halves|quarters|chunks|slices|pieces|rounds|
      spears|strips|inches)|one by one|by hand|all of (it|them)|every (one|bit)|down to the last one
    `,
    "how-tight": `
      finger tight|fingertip tight|tight|snug|hand tight|not too tight|to (fingertip|finger tight)|
      as tight as (fingers|fingertips) (go|will go)|good and (tight|snug)|and (locked|clamped)
    `,
    "took-up": `
      [i|we] [have] [just] (put|got|screwed|twisted|took|taken|lifted|set|placed|dropped)
    `,
    "it-did": `
      [i|we] [have] [just] (finished|done|completed|<did>|am done with|am finished with|are done
      with|got done with)
    `,
    "not-so": `
      not [yet|begun|started|done|touched|so|at all]|[still|yet] (going|to do|to come|to go|waiting|
      to be done)|waiting|next|later|to follow|not (been|even) (touched|begun|started) [yet]
    `,
    "time-up": `
      ([the|their|that is] (time|timer|bell|clock|minutes) [is|was|has|were] (up|over|by|gone|went|
      rang|rung|done|out|gone off|went off|finished)|it (rang|went off|went ding|beeped)|ding ding)
      [and|so]
    `,
    "on-board": `
      (on|onto|to|upon|over on|out on) [the|a|my|our|that] [folded|clean|old|tea|dish|kitchen|big|
      wooden|cutting|cooling] (towel|towels|board|rack|counter|cloth|table|bench|granite|tea towel|
      dishtowel|dish towel|worktop|sideboard|boards) [to cool|cooling] [by the (stove|window)|now]
    `,
    "jars-on-board": `
      {target=jars} [<time-up>] [<every-jar>|they|they are|it is|all|all of them|{count:whole}
      [<jars-or-size>|of them]|<the> (jars|{size}|glasses|load)] [is|are|was|were|have|has] [all|
      now|
      been|safely|up and] [out|sitting|set|standing|resting|lined up|laid|cooling|lifted|stood]
      [out|up|there] [and] [cooling] <on-board> [<when>]|
      {target=jars} [<time-up>] [and|so] [i|we|i have|we have|she|he] [have|has] [just|now|finally]
      (took|taken|lifted|pulled|hauled|got|fished|tonged|set|moved|hoisted|put|had) [up|out]
      (<every-jar>|
      them|them all|it|<the> [{target}] (jars|{size}|glasses|load)|{count:whole} [<jars-or-size>|of
      them]) [all] [up|out|off] [and] [set (them|it)|out] [<on-board>] [with (the|my) tongs]
      [<when>]
    `,
    took: `
      [i am|we are|i have|we have|i|we] [just|now] (taking|lifting|pulling|hauling|fishing|
      bringing|getting|removing|unloading|took|taken|lifted|pulled|hauled|removed|hoisting|
      hoisted|fetching|brought|fished|got)|
      take|lift|pull|bring|we will take|i will take|let us take|i will lift|i will pull|let us
      lift|let us pull|let us get|get|i will get|haul|fish|going to take
    `,
    "jars-hot": `
      [<the>] (last|final) (jar|one|of them|of the jars|pint|quart)|
      [<the>|all] (jars|pints|quarts|half pints|load|lot|rack)|
      <the> (first|second|third|last) load|everything|all of them|all {count:whole} [jars|
      pints|quarts]|the whole load|them|them all
    `,
    "out-of": `
      out|out of the canner|out of the water|out of the pot|out of there|out of the bath|out of
      the kettle|from the canner|up and out|out of the water bath|out onto the towel|out on the
      towel|out to cool|up out of the canner|off the rack|out of it|from the pot|from the water|
      out of the hot water
    `,
    "done-jars-out": `
      {target=jars} <took> <jars-hot> <out-of> [<when>]|
      {target=jars} <took> out <jars-hot> [<when>]|
      {target=jars} (unload|unloaded|unloading|i unloaded|i am unloading|we unloaded|emptied|i
      have unloaded|i emptied|empty|i will unload|let us unload) [<the>] (canner|pot|load|jars|
      water bath|rack|pressure canner) [<when>]|
      {target=jars} [<the>|all|all the|my|our] [{number}] (jars|pints|quarts|half pints|load)
      (is|are|came|have come|have been taken|are all|are now|are safely|have been lifted) [all|
      now|safely] (<out-of>|on the towel|on the rack|on the counter|on the towels|on a towel|
      cooling|on the cooling rack|resting|on the table|out cooling) [<when>]|
      {target=jars} (everything|all of them|they|they all|the whole load|the lot) (is|are|came)
      [all|now] (<out-of>|on the towel|on the rack|on the counter) [<when>]|
      {target} (is|are|came|have come|has come) [all|now] (out of the canner|out of the water
      bath|out of the water|out of the pot|out of the canner now|out) [<when>]|
      <took> {target} (out of the canner|out of the water bath|out of the water|out of the pot|
      out) [<when>]|
      {target=jars} jars [are] (out|out now|out of the canner|on the towel)
    `,
    heat: `
      (heat|burner|stove|gas|fire|flame|burners|ring|hob|range|element|hot plate|cooktop|eye|gas
      ring|
      stove top)
    `,
    person: "i|we|he|she|they|<who>",
  },
};
