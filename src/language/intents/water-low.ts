import type { MeaningOf } from "./meaning.ts";
import { finishUncovered } from "./uncovered.ts";

/** There is too little water in the canner. */
export const waterLow: MeaningOf<"water-low"> = {
  cost: "raising",
  tellsOf: { about: "water", goes: true },
  report: true,
  when: ["load:in-water"],
  slots: { target: "name", at: "instant", uncovered: "flag" },
  finish: finishUncovered,
  example: "the water is below the lids",
  wordings: [
    `[<the>|{target}] water [level] [<in-pot>] [is|has|has gotten|has got|has gone|is getting|
    looks|seems|getting|gets|has become|has been] [<bit>] [<bit>] (low|down|short|too low|
    getting low|going down|boiled down|boiled away|running low|running out|down a lot|dropped|
    down too far|dropping|lower than it was|lower than it should be|low on me|sinking|boiling
    away|boiling off|boiling down|running down|disappearing|shallow|falling|going) [<in-pot>]
    [<when>]`,
    `[<the>] water [level] [<in-pot>] [is|has|has gone|went|dropped|fell|has dropped|has fallen|
    is down|has boiled|boiled|came|sank|has come|is getting|has sunk|got|has got] [<bit>] [down|
    now|lower] (below|under|beneath|past|down past|down to|than) [<the>|the top of the|the tops
    of the|the level of the] (lids|jars|tops|lid|tops of the jars|jar tops|rims|necks|lid tops|
    jar lids) [<when>]`,
    `(<we>|{target}|<it>|i) (am|is|are|has|have) [<bit>] [<bit>] [getting|running|gone|gotten]
    [<bit>] ((low|short|down|shy|dry) (of|on|in)|out of) water [level] [<in-pot>] [<when>]`,
    "[<bit>] (running|getting) [<bit>] (low|short|dry|down) [of|on] [water] [<in-pot>] [<when>]",
    `<lids> (is|are) [now|all|no longer|not] [starting to be|starting to|beginning to] (showing|
    show|uncovered|exposed|sticking out|poking out|peeking out|above the water|above water|not
    covered|poking up|sticking up|sticking out of the water|poking out of the water|poking
    through|no longer covered|visible above the water|above the waterline) [any more|of the
    water|now] [<when>]`,
    `[<the>|all the] (lids|lid|tops|jar tops|lid tops|tops of the jars) (is|are) [now|all] (out
    of the water|coming out of the water|bare|dry|high and dry|out of water|out) [now] [<when>]`,
    `<lids> (is|are) (no longer|not) (covered|under water|under the water|under) [any more|any
    longer|now|with water] [<when>]`,
    `(i|we|you) (can|could) see (the|all the|some of the|some) (lids|jar tops|tops of the jars|
    tops|lids above the water|lids out of the water|tops of the lids|jars sticking out|jar lids)
    [<when>]`,
    `(some of the|a few of the|a couple of|one of the|two|some|a few|one|the tops of the) (lids|
    jars|lid|jar|jar tops) (is|are) (showing|uncovered|exposed|sticking out|poking out|out of
    the water|above the water|not covered|no longer covered|bare) [<when>]`,
    "there is not enough water [in there] [left] to cover [<the>] (jars|lids|tops) [any more|now]",
    `[<the>] (tops of [the] (jars|lids)|jar tops|lids|jars) (is|are) [now|all|starting to be]
    (showing|sticking up|poking up|standing) (above|out of|over) the (water|waterline) [now]
    [<when>]`,
    "the lids have come (out of the water|uncovered|up out of the water) [<when>]",
    `[<the>] jars (are|is) (not|no longer) [all|quite|fully] (covered|under|under water|under the
    water|covered with water|covered by water) [any more|any longer|now] [<when>]`,
    `[<the>] water [level] was [<bit>] [<bit>] (low|down|short) [(so|and|but) i|i] [have|just|
    have just] (topped (it|it back|the canner|the pot|up)|added|filled|poured) [in|it|up|some|
    more|a little|boiling|hot|water|off|back|again] [boiling|hot|water|up|more] [water] [<when>]`,
    `i [have|just|have just] (topped it up|topped it off|topped up|topped off|added some|added
    more|added boiling water|topped it up with boiling water) [because|since|as] [<the>] water
    [level] was [<bit>] [<bit>] (low|down|short) [<when>]`,
    `(there is not|not|there is hardly) enough water [<in-pot>] [over <the> (lids|jars)|left]
    [any more] [<when>]`,
    "[the] water does not cover <the> (lids|jars) [any more] [<when>]",
    "low [on] water [<in-pot>] [<when>]|low (in|on) [<the>] water [<when>]",
    "[<the>] water (is|has) (not|no longer) (covering|over) <the> (lids|jars) [any more] [<when>]",
    `[<the>] {target} (is|has) [almost|nearly|about] (boiled dry|boiling dry|out of water|dry|
    boiled down|going dry|run dry|gone dry) [<when>]`,
    "the water needs topping up [<when>]",
    "[<the>] {target} (needs|could use|wants) [more|some|some more|a bit more] water [<when>]",
  ],
  spoken: ["the water is low", "the water is below the lids"],
  bags: [
    {
      must: ["water|the water level|water level", "<lowish>"],
      may: `
        <said-of-it>|<bit>|<in-pot>|<when>|level|<the> (lids|jars|tops|jar tops|lid tops|rims)|
        in|add|more|need to|needs|i|of|top it up|top up|some|to|getting|running|gone|than it
        should be|{target}
      `,
    },
  ],
  lists: {
    lowish: `
      (low|lower|down|below|dropping|dropped|short|under|sinking|running out|boiled down|boiled
      away|boiling away|shallow|going down|gone down|fallen|falling|fell|running low|getting
      low|too low|boiled off|shy|run down)
    `,
    "in-pot": `
      (in|inside|down in) [<the>] (canner|pot|water bath|bath|kettle|pressure canner)|
      (in|inside|down in) {target}|in there|in here
    `,
    bit: `
      (really|a bit|a little|very|too|awfully|pretty|now|quite|kind of|rather|getting|sort of|a
      tad|a touch|somewhat|way|looking|fairly|starting to get|starting to run|dangerously|
      getting a bit|getting a little|getting pretty|starting to look|on the)
    `,
  },
};
