// data table
import { VINEGAR_PERCENT } from "../../reckon/trade-numbers.ts";

/**
 * Whole clauses that say whether a critical factor holds. None may be true in a kitchen where it
 * does not: part of what the question asks never confirms it.
 */
type FactorWording = {
  /**
   * For a factor asked about as a number: its phrases contain a {value}, and only this one confirms
   * it.
   */
  value?: number;
  /** Phrases that say it holds, and that it does not, in the language of pattern.ts. */
  yes: readonly string[];
  no: readonly string[];
  /** Phrases that say it holds where another clause tells of the filling. */
  beside?: readonly string[];
};

export const FACTOR_LISTS: Readonly<Record<string, string>> = {
  vinegar: `
    [the|our|my|this|that|plain|ordinary] [white|cider|apple cider|distilled|malt|wine|
    white wine|rice|red wine|store bought|distilled white|plain] vinegar [bottle|label]
  `,
  labeled: "(labeled|labelled|marked|sold as|labeled as|labelled as)",
  label: `
    [the|it is] [back of the|vinegar] (label|bottle|jug|vinegar|small print)|
    [the|its] (label|sticker|print|small print|writing|figure) (on|of) [the|my|our|this|that] [white|
    cider|vinegar|big|plain] (jug|bottle|jar|vinegar|carton)|
    [the] [vinegar] (jug|bottle) label
  `,
  percent: "(percent|per cent) [acidity|acid|acetic|acetic acid|strength|strong]",
  we: "(i|we) [have]",
  juice: "[the|our|my] [lemon|lime|lemon and lime] juice",
  acid: "[the] (acid|lemon juice|lime juice|citric acid|bottled lemon juice)",
  "empty-jars": "[all] [the|our|my] [empty] jars",
  hot: `
    (hot|boiling hot|piping hot|boiling|still boiling|hot off the boil|
    [hot|boiling|boiling hot|still boiling] (straight|right) (off|from) the (boil|stove|heat|pot))
  `,
  cool: "(cold|cool|cooled|lukewarm|warm|raw)",
  food: "(it|it all|they|they all|all of it|everything|the food|all of them)",
  headspace: "[the] (headspace|head space)",
  "each-jar": "(in|on|of) (every|each|every single) jar",
  lids: `
    [all] [the|our|my|these|those|them|all the] [canning|jar|flat|metal] (lids|tops|caps|covers)
  `,
  new: "([all] [brand|all] new|fresh|unused)",
  fresh: `
    [fresh|new|straight|right|just|came|come|they came] (out of|from|off|out) (the|a|their|it is)
    [brand]
    [new|fresh|unopened|sealed] (box|sleeve|packet|package|pack|carton|shop|store)|
    [still] in (the|their) [new|fresh|paper|original] (box|sleeve|paper sleeve|packet|package|
    cellophane|wrapper|wrapping|carton)|
    [and] (i|we) [just] (opened|bought|got|broke open|tore open|unwrapped|cracked) (the|a|that|them|
    this|one) [brand] [new|fresh] [box|pack|packet|sleeve|package] [of lids] [just now|today|
    yesterday|this (morning|afternoon|week)|a minute ago|fresh|for this]|
    [and] [from] (a|the) [new] (box|packet|pack) [that] [i|we] [just] (opened|bought) [today|
    yesterday|this morning]|[and] never [been] used [before]|bought (today|yesterday|this week)
  `,
  they: "(they|these|those|all of them|every one|every one of them|every last one|it)",
  "some-of": "(one|two|three|some|a few|a couple|half|most) of [the|our|my|these]",
  inches: "[of] [an|a] (inch|inches)",
  gap: `
    (headspace|head space|headroom|head room|(room|space|air|gap|clear) [at|on|up|to] [the] [top|
    rim]|
    (below|under|from|off|to|short of) the (rim|top|lip|brim)|at the top|on top|up top|free)
  `,
  every: `
    (in|into|to|for|on|with) (every|each|every single|each and every|all of|all) [last]
    (jar|quart|pint|one|the jars|jars|them|of them|the quarts|the pints|the lot|half pint)
    [of them|of the lot]|
    (per|a) (jar|quart|pint|half pint)
  `,
  amount: `
    ([a|one|two|three|four|half a|half|a quarter|quarter|one half|2|1] [level|heaped|good|big|of a]
    (teaspoon|teaspoons|tablespoon|tablespoons|tea spoon|spoon|spoons|spoonful|spoonfuls|measure|
    measures|scoop)) [of] [the]
  `,
  produce: `
    [the|my|our|those|these|them] (beets|beans|carrots|tomatoes|peaches|pears|apples|fruit|food|
    sauce|jam|applesauce|juice|corn|berries|meat|chicken|stock|pieces|slices)
  `,
  packing: `
    when (i|we) (packed|ladled|filled|put|spooned|jarred|canned) [it|them|<produce>] [in|up]
    [the jars]|going in|when (they|it) went in|at packing
  `,
  old: "(old|used|reused|second hand|not new|not brand new)",
  "last-year": "(last year|last year is|last season|last season is)",
  salt: "[the] [pure] [canning|pickling|canning and pickling] salt",
};

export const FACTOR_WORDINGS: Readonly<Record<string, FactorWording>> = {
  "vinegar-5-percent": {
    value: VINEGAR_PERCENT,
    yes: [
      "{value} percent",
      `
        (it|that|<vinegar>|<label>) (is|was|are) [only|but] [a] [<labeled>] [at] {value}
        <percent> [vinegar] [on <label>]
      `,
      `
        (it|that|<vinegar>|<label>) (says|reads|shows|states|gives) [only|but]
        {value} [<percent>] [acidity] [on (it|<label>)] [right here|right there]
      `,
      `
        (it|that|<vinegar>|<label>) (says|reads|shows|states) acidity [of|is]
        {value} [<percent>]
      `,
      "(it|<vinegar>|<label>) (has|had|got) {value} <percent> [on (it|<label>)]",
      "{value} [<percent>] [is what] (it|<label>) (says|reads)",
      "{value} <percent> [on <label>|it says|vinegar]",
      "<vinegar> [at|of] {value} <percent> [on <label>]",
      "(it|<vinegar>|<label>) is {value} [<percent>] by (the|it is) (label|bottle)",
      `
        <we> (used|using|put in|poured in) [the|a|our|my] [white|cider|malt]
        {value} <percent> [vinegar|stuff|kind|one]
      `,
      "(it|that|<vinegar>) (is|was) [only] [a] [<labeled>] [at] {value} percent",
      "(it|<vinegar>|the label|the bottle|the jug) (says|reads) {value} percent",
      "[it is] [<labeled>] {value} percent (vinegar|acid|acidity|acetic acid)",
      "[it is] [store bought] [and] <labeled> {value} percent",
      "<we> (used|using|got) [a] {value} percent [acid|acidity] vinegar",
      "(it|that|<vinegar>) has {value} percent (acid|acidity)",
    ],
    no: [
      "(it|that|<vinegar>) is not [<labeled>] five percent",
      "(it|that|<vinegar>) is not [<labeled>] 5 percent",
      "not (five|5) percent",
      "[(it|that|<vinegar>) is] (less than|under|below|weaker than) (five|5) percent",
      "[(it|that|<vinegar>) is] (homemade|home made|not store bought|not labeled)",
      "(homemade|home made) vinegar",
      `
        <we> (used|put in|poured in|have) [my|our|the|some|a] [own] (homemade|home made)
        [vinegar|stuff]
      `,
      `
        (it|that|<vinegar>) (is|was) [my|our] [own] (homemade|home made|the salad kind|
        watered down|diluted) [vinegar|stuff]
      `,
      "(it|that|<vinegar>) is (only|but|just) (four|three|4|3) [<percent>]",
      "(it|that|<vinegar>) is [a lot|much|a bit] (weaker|too weak|weaker than that)",
    ],
  },
  "bottled-juice": {
    yes: [
      "(it|<juice>) is bottled",
      "[<we>] [used] bottled (lemon juice|lime juice|juice|lemon|lime)",
      "(it|<juice>) is (from|out of) (a|the) bottle",
      "(it|<juice>) is bottled (and|) not key lime",
      "[it is|<we> used] (bottled|the bottled) [lemon|lime] (juice|stuff|kind|sort)",
      `
        <juice> (was|were|comes|came|is) [all] (bottled|out of a bottle|from a bottle|from
        the bottle|out of the bottle)
      `,
      "[it is] [the] (kind|sort|stuff) (from|out of|in) (the|a) bottle",
    ],
    no: [
      "(it|<juice>) is (fresh|fresh squeezed|freshly squeezed|not bottled|key lime|squeezed)",
      "[<we>] [used] (fresh|fresh squeezed|key lime) [lemon|lime] juice",
      "not bottled",
      `
        <we> squeezed [it|them|the|some|a|real] [fresh|real] [lemon|lemons|lime|limes]
        [ourselves|myself|ourself|by hand]
      `,
      `
        <juice> (was|came) (fresh|freshly squeezed|squeezed|off the tree|out of (a|the)
        (lemon|lemons|lime))
      `,
    ],
  },
  "acid-in-every-jar": {
    yes: [
      "<acid> [is|went] in (every|each|every single) jar",
      "(every|each|every single) jar (got|has|had) (it is) (acid|lemon juice|citric acid)",
      "(every|each|every single) jar (got|has) <acid>",
      "[<we>] (put|added) <acid> (in|to) (every|each|every single) jar",
      `
        [<we>] [have] [put|added|gave|spooned|got|measured|dosed] [<amount>] <acid> [in|went
        in|is in] [<amount>] <every>
      `,
      "[<we>] [put|added|spooned|gave] <amount> <acid> <every>",
      "<acid> [is|went] in [<amount>] <every>",
      `
        (every|each|every single|every last) (jar|one|quart|pint) (got|has|had|gets) [it is|
        it is] [<amount>] <acid>
      `,
      "all [of] [the|them] [jars|quarts|pints] (got|have|had) [their] [<amount>] <acid>",
    ],
    no: [
      "not (every|each) jar (got|has|had) [it is] [acid|lemon juice|citric acid]",
      "(one|two|some|a few) [of the] (jar|jars) (has|have|got) no (acid|lemon juice)",
      "[<we>] (forgot|left out) <acid>",
      "no (acid|lemon juice|citric acid)",
      `
        <we> (forgot|missed|skipped|left out|left off|forgot to add|forgot to put in|did not
        put|never put|never added|did not add|have not put) [any] (<acid>|lemon|lime|citric)
        [in|in there|out]
      `,
      `
        <we> (forgot|missed|skipped|left out|forgot to put|did not put|never put) [any]
        (<acid>|lemon|citric) (in|on|out of|for) [the] [last|first|number|jar] (one|two|
        three|four|some|few|a few|it|them|couple|a couple) [of them|jars|jar|or two]
      `,
      "no (<acid>|lemon|citric) (went|is|was|got|goes) in [it|them|there]",
      "(<acid>|lemon|citric) (did not|never) (go|went|got) in",
    ],
  },
  "sterile-jars": {
    yes: [
      "<empty-jars> (are|were) [all] (sterile|sterilized|boiled)",
      "[all] sterile jars",
      `
        [all] [the|my|our] [little] [jam|jelly|empty] (jars|glasses) [are|were|have been|has
        been|was|got] [all] (boiled|boiling|sterilized|in boiling water|kept boiling) [for]
        [the|a] [whole|full|good] (ten|10|twelve|fifteen|twenty) [full|whole] minutes
      `,
      `
        <we> (boiled|sterilized) [the|my|our|those] [little] [jam|jelly|empty] (jars|
        glasses) [for] [the|a] [whole|full|good] (ten|10|twelve|fifteen|twenty) [full]
        minutes
      `,
      "(jars|glasses) [are|were] [all] (sterile|sterilized)",
      "<we> (boiled|sterilized) <empty-jars>",
    ],
    no: [
      "<empty-jars> (are|were) not (sterile|sterilized|boiled)",
      "(i|we) (did not|never) (boil|boiled|sterilize|sterilized) <empty-jars>",
      "<empty-jars> (are|were) [only|just] (washed|clean|rinsed)",
      `
        <we> [only|just] (rinsed|washed) [the|my|our] [little] [jam|jelly|empty] jars [only]
        [out] [under the tap|with water|in hot water|in the dishwasher|in soapy water]
      `,
      `
        [the|my|our] [jam] jars (are|were|came|come) [only|just] [hot|straight|right] [hot]
        (from|out of|through) the (dishwasher|oven|cupboard|tap|sink)
      `,
    ],
  },
  "hot-pack-hot": {
    yes: [
      "<food> [was|were] [all] (packed|filled) <hot>",
      "<food> went in <hot>",
      "[it was] still boiling when [we|i] filled",
      `
        (<food>|<produce>) (was|were) [all|still] (boiling|bubbling|piping hot|hot|boiling
        hot) <packing>
      `,
      `
        (<food>|<produce>) [all] went in [piping|boiling|steaming|straight off the boil]
        [hot|boiling] [off the (boil|stove|heat)|just so]
      `,
      `
        <we> (packed|filled|put|ladled) (<food>|<produce>) [in] [piping|boiling|steaming]
        hot [off the (boil|stove|heat)]
      `,
    ],
    no: [
      "[<food>] [was|were] (packed|filled) <cool>",
      "<food> (went in|was|were) <cool>",
      "went in <cool>",
      "<food> (was|were) not [very|all that|really] (hot|boiling) [any more] [<packing>]",
      "[<food>] [was|were] not (packed|filled) hot",
      "(<food>|<produce>) did not go in [to the jars] hot",
      "(<food>|<produce>) did not go in hot [to the jars]",
      "(<food>|<produce>) did not go into [the|my|our] jars hot",
      `
        (<food>|<produce>) (was|were|went in) [only|barely|just|but|a bit|all|stone] <cool>
        [<packing>] [straight|right] [from|out of] [the] [fridge|refrigerator|icebox]
      `,
      `
        <we> (packed|filled|put) (<food>|<produce>) [in] [only|barely|stone] <cool>
        [straight|right] [from|out of] [the] [fridge|refrigerator|icebox]
      `,
      `
        (<food>|<produce>) (sat|stood|waited) [for] [half an hour|an hour|twenty minutes|
        thirty minutes|forty minutes]
      `,
    ],
  },
  headspace: {
    yes: [
      "<headspace> [is|was] checked [<each-jar>]",
      "<headspace> is (right|good|correct|fine) [<each-jar>]",
      "<we> (checked|measured) <headspace> [<each-jar>|on all|of all|on every one|in all of them]",
      `
        [there is|<we> [left]|left|it has|they have|with|and] [exactly|a good] {value}
        <inches> [of] <gap> [<each-jar>|all round|in all of them|of each]
      `,
      `
        [there is|<we> [left]|left|it has|they have|with|and] [exactly|a good] {value=1} (an
        inch|one inch) [of] <gap> [<each-jar>|all round|in all of them|of each]
      `,
      `
        <headspace> [is|of|at] [exactly] {value} <inches> [<each-jar>|in all of them|on all|
        all round]
      `,
      `
        <headspace> [is|of|at] [exactly] {value=1} an inch [<each-jar>|in all of them|on
        all|all round]
      `,
      "[<we>] left {value} <inches> [<each-jar>|in all of them|in each|all round]",
    ],
    beside: [
      "[with|and|at] [exactly|a good] {value} <inches> [<each-jar>|in all of them|in each|all round]",
    ],
    no: [
      "<headspace> (is|was) not (checked|right|good|correct) [<each-jar>]",
      "(i|we) did not check <headspace>",
      "<headspace> is (off|wrong|short|too small|too big|too little|too much)",
      `
        [<we>] [filled] [it|they|them|jars|the jars|some|one|two|three|the last one] [of them|of
        the jars|jars] [is|are|was|were] [filled|full] [right|clear|all the way|plumb|full] [up]
        (to|over) the [very|tippy] (brim|top|rim|lip)
      `,
      `
        (one|two|three|they|some|it) [of them|of the jars|jars] (is|are) (too full|brimming|brimming
        over|overfull|overfilled|not full enough)
      `,
      `
        <we> (overfilled|filled too full|did not leave enough) [room|space|them|some|one|
        two|it] [at the top]
      `,
      "not enough (headspace|head space|room at the top|room)",
    ],
  },
  "new-lids": {
    yes: [
      "<new> lids",
      "<new> <fresh>",
      "(<lids>|<they>) (are|is|were) [all] <new> [<fresh>] [<fresh>]",
      "<lids> [all] <new> [<fresh>] [<fresh>]",
      "[all] <new> <lids> [<fresh>|on all of them|on every one|on each] [<fresh>]",
      "<lids> [are|is|came|come|were] <fresh> [<fresh>]",
      "(<lids>|<they>) (have|were) never [been] used [before]",
      `
        <we> [have] (used|using|put on|got|opened|took|have|put) [all] [a|the] [box of|pack
        of] <new> <lids> [on] [<fresh>]
      `,
      `
        <we> [have] (cracked|opened|broke open|got to open|tore open) (the|a|that) [brand]
        new box of [shiny] lids [for (these|this|them|it)]
      `,
      "(<lids>|they) are [all] <new>",
      "<we> (used|using|put on|got) [all] <new> lids",
      "[<lids>] all <new>",
    ],
    no: [
      "<old> lids",
      "(those|these|they|the lids) (are|were) [<last-year>] [<old>] (lids|ones)",
      "<last-year> lids",
      "no new lids",
      "<we> reused [<some-of>] [the|our|my|some|these] [old] lids",
      "<some-of> (lids|them) (are|were) [all] [<last-year>] <old> [ones|lids] [off [<old>] jars]",
      "(<lids>|they) (are|were) [all] <old>",
      "<we> (used|using|put on|got) <old> (lids|ones)",
      "(old|used) ones",
      `
        (<lids>|<they>) [have|had|are|is|were] [already|all] [been] used [once|twice|before|
        already|after all]
      `,
      "[<we> used] (used|reused) lids",
      `
        [<we>|<they> are|<lids> are] [used|put on|using|took] the same (lids|ones) (as|from|again|
        as in) [last
        year|before|last time]
      `,
      `
        (<lids>|<they>) (are|is) [the ones|the lids] [from] <last-year> [ones|lids] [that
        <we> used]
      `,
      "(<lids>|<they>) (are|is|were) not new [after all]",
      "(<lids>|<they>) (are|is) [all] (bent|dented|rusty|rusted|cracked|scratched)",
    ],
  },
  "sound-ferment": {
    yes: [
      "([the] ferment|it|the crock|the kraut) is [perfectly] sound",
      `
        [there is] no slime [and] no (mold|mold below the surface|mold below) [and] no (bad smell|
        smell|off smell)
      `,
    ],
    no: [
      "([the] ferment|it|the crock|the kraut) is (not sound|slimy|moldy|soft and slimy|bad)",
      "there is (slime|mold|mold below the surface|a bad smell|an off smell)",
      "it smells (bad|off|rotten|foul|putrid)",
    ],
  },
  "full-salt": {
    yes: [
      "all <salt> is in",
      "all <salt> is in [and] [it is] [by the|as the] recipe",
      "<we> (put|got) all <salt> in",
    ],
    no: [
      "not all <salt> is in",
      "[<we>] [used] [a] (less|half the|reduced|half as much) salt",
      `
        [<we>] [used|put|put in] [only|but|just] (half|a third|a quarter|some) [of] [the]
        salt [in|on] [the] [cabbage|kraut|crock|brine]
      `,
      "<we> (left|took|scooped|forgot) [out] [some of|half|all] [the] [salt] [out|again]",
      "[it is|<we> used] (table|iodized|sea) salt",
      "<we> (cut|halved|reduced) <salt>",
    ],
  },
};

/** Words that add nothing to such a clause and may stand anywhere in it. */
export const FACTOR_FILLERS: readonly string[] = [
  ...["dear", "love", "honey", "hon", "sir", "dear me", "you know", "look", "see"],
  ...["damn", "damned", "goddamn", "bloody", "blasted", "sodding", "blessed", "stupid", "shiny"],
  ...["thank god", "thank goodness", "praise be", "thank heavens", "thank you", "there"],
  ...["um", "uh", "er", "oh", "well", "okay", "so", "now", "right", "just", "actually"],
  ...["and", "also", "too", "as well", "of course", "for sure", "definitely"],
];

/** Before or after a clause, these make it a guess, which confirms nothing. */
export const GUESSES: readonly string[] = [
  ...["i think", "i think so", "i think that", "i guess", "i guess so", "i believe", "i hope"],
  ...["i believe so", "i suppose", "i suppose so", "i reckon", "i reckon so", "i hope so"],
  ...["i would think so", "i would say so", "i would say", "i am guessing", "i assume"],
  ...["i figure", "i suspect", "probably", "maybe", "perhaps", "possibly", "likely"],
  ...["most likely", "very likely", "i am pretty sure", "pretty sure", "fairly sure"],
  ...["i am fairly sure", "i am not sure", "not sure", "as far as i know", "apparently"],
  ...["no idea", "i have no idea", "i can not tell", "i can not say", "who knows"],
  ...["i do not remember", "i can not remember", "i forget", "no clue"],
  ...["as far as i can tell", "supposedly", "more or less", "sort of", "kind of", "mostly"],
  ...["it should be", "they should be", "should be", "could be", "might be", "i do not know"],
  ...["do not know", "not really sure", "hard to say", "if i remember right", "almost"],
  ...["from memory", "i seem to remember", "about", "around", "roughly", "nearly"],
];
