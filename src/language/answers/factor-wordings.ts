// data table
import type { FactorId } from "../../recipe/critical-factors.ts";
import { VINEGAR_PERCENT } from "../../reckon/trade-numbers.ts";

/**
 * Whole clauses that say whether a critical factor holds. None may be true in a kitchen where it
 * does not: part of what the question asks never confirms it.
 */
type FactorWording = {
  /** Words that mention it, and that may where none mentions another: they confirm nothing. */
  mentions: RegExp;
  perhaps?: RegExp;
  /** What an answer about it is said to be about, in the language of pattern.ts. */
  subject: string;
  /** What it may be called as the subject of an answer that names a choice. */
  nouns?: string;
  /** Words that all of it is called by there, where not all usual ones are. */
  wholes?: string;
  /** No "ones" stands behind its choices: "hot ones" are jars. */
  noOnes?: true;
  /** What is said of something else, though it names a choice. */
  otherwise?: RegExp;
  /** Words that can be about it. */
  belongs?: RegExp;
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
  /** Phrases that say it holds in a sentence that only answers the question about it. */
  asked?: readonly string[];
};

export const FACTOR_LISTS: Readonly<Record<string, string>> = {
  vinegar: `
    [the|our|my|this|that|plain|ordinary] [white|cider|apple cider|distilled|malt|wine|
    white wine|rice|red wine|store bought|distilled white|plain] vinegar [bottle|label]
  `,
  labeled: "(labeled|labelled|marked|written|sold as|labeled as|labelled as)",
  label: `
    [the|it is] [back of the|vinegar] (label|bottle|jug|vinegar|small print)|
    [the|its] (label|sticker|print|small print|writing|figure) (on|of) [the|my|our|this|that]
    [white|
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
  "each-one": `
    (every|each|every single|every last|each and every) (one|jar|last one) [of (them|these|those|the
    lot)]|all of (them|these|those|it|the jars)|all [of] [the|my|our] jars|the [whole] lot
  `,
  "as-always": "(same as|same one as|like|as|the same as) (always|usual|every time|ever)|as usual",
  boxed: `
    (fresh|new|straight|right|just|come) (out of|from|off|out) (the|a|their) [brand] [new|fresh|
    unopened|
    sealed] (box|sleeve|packet|package|packaging|pack|carton|wrapper|cellophane|shop|store)|
    from a [brand] (new|fresh|sealed|unopened) (box|sleeve|packet|package|pack|carton)|
    [from] [a] [brand] (new|fresh) (box|sleeve|packet|package|pack) [of lids] [[i|we] [have]
    [only|just] (opened|cracked|bought) [it|that|one] [open] [today|just now|this morning]]|
    [i|we] [have] [only|just] (opened|cracked|started|broke|unwrapped|tore|bought) [open] a
    [brand] (new|fresh|sealed) (box|sleeve|packet|package|pack) [of lids] [open] [for (these|
    them|this|it)] [today|just now|this morning]|
    [i|we] [have] [only|just] bought (them|those|these) [today|yesterday|this (morning|week)]
  `,
  unused: `
    unused|(never|not) [been] (used|on a jar) [before|yet]|
    (none|not one) of (them|these|those) (is|has|have|was|were) [ever] [been] used [before]
  `,
  "very-hot": `
    [all|all of it|very|still|good and|nice and] [piping|boiling|steaming|scalding|bubbling|
    smoking|real|really] hot [and (boiling|bubbling)|as (blazes|can be|anything|hell)]| [all|
    still] (boiling|piping hot)
  `,
  "off-heat": `
    [straight|right|fresh] (off|from|out of|off of) [the|a] [boiling|hot] (boil|stove|heat|burner|
    hob|flame|pot|kettle|pan)
  `,
  "straight-off": `
    (straight|right|fresh) (off|from|out of|off of) [the|a] (boil|stove|heat|burner|hob|flame)|
    (straight|right) (off|from|out of|off of) [the|a] boiling (pot|kettle|pan)|off the boil [and]
    [straight|right] into the jars|[it] never (left|came off) the boil
  `,
  jarred: "(packed|filled|ladled|jarred|canned|spooned|poured|went in|put in)",
  "own-acid": "(lemon|juice|acid|<acid>|dose|share|shot|some lemon|some acid)",
  "in-each": `
    (in|into|to) (<each-one>|each|all of them|every (quart|pint|half pint)|each (quart|pint|half
    pint))
  `,
  gauged: `
    [i|we] [have] (used|measured with|checked with|with|by|went by) [the|my|a|our] [little|plastic]
    [headspace|measuring] (stick|ruler|tool|gauge|measure|tape|bubbler|notch)|[the|my] (stick|
    ruler|tool) says| to the mark|
    [i|we] [have] [just] (measured|checked) [it|them] [(in|on)] [all|<each-one>] [with (the|a|my)
    (stick|ruler|tool|gauge)]|
    <as-always>|(like|as|by|per|as per) the (recipe|book|guide) [says|wants|asks|calls for|has it]
  `,
  left: `
    (it|that|there) (is|was)|(i|we) (have|have got|got|left|leave|gave) [them|it] [all]|left [them|
    it] [all]|they (are|have|have got|got) [all]|they have all got|right at|just|(it|they) all
    (have|got)|and|with
  `,
  exact: `
    (exactly|exact|left|each|apiece|all the way round|on the (nose|dot|button)|dead on|bang on|
    spot on|to the line)
  `,
  "white-vinegar": `
    [the|my|our|a|plain|ordinary|regular|usual|standard|the usual|the regular|the plain] [store
    bought|store|shop|distilled] (white|cider|apple cider|wine|white wine|malt|distilled|distilled
    white) [vinegar|stuff|kind|sort|one] [from the (store|shop|supermarket)]|
    [the] (usual|ordinary|regular|plain|standard) [stuff|kind|one]|[the] (store|shop) (stuff|
    kind|brand)| [the|plain|regular|ordinary|usual] [store|shop|store bought] vinegar [from the
    (store|shop)]|
    [the] (store|shop) bought [vinegar|stuff|kind]|from [the] (store|shop|supermarket)
  `,
  "read-off": `
    [it|<label>] says [so] [right] (here|there|on it|on <label>|on the front)|it is [right]
    [written] on (it|<label>)|i am (looking at|reading) (it|
    <label>)|[i|we] [have] [just] (checked|looked|read) [it|the label|the bottle] [off <label>]|
    (reading|read) [it] off <label>|(it|<label>) says [it] [right here|here]|<as-always>
  `,
  "from-shop": "[straight] (from|out of|off) the (store|shop|supermarket)",
  ten: `
    [for] [the|a] [whole|full|good] (ten|10|twelve|fifteen|twenty) [full|whole] minutes
  `,
  sterilized: "(sterilized|sterilised|boiled)",
  "smells-good": `
    [and] [it] smells [nicely|just|all|nice and] (good|right|fine|clean|sour|fresh|lovely|like
    kraut|
    like it should|as it should|like pickles)
  `,
  "bad-smell": "[bad|off|funny|foul] smell [at all]",
  "by-recipe": `
    [just|exactly] (by|per|to|as per|like|as) [the] recipe [says|has it|wants|calls for]|
    [just|exactly] what the recipe (says|wants|calls for|asks for)|
    [i|we] [have] followed the recipe [exactly|to the letter]|(according to|same as|exactly like)
    the recipe|[exactly] as written|to the (gram|letter)
  `,
  "all-salt": `
    (all of it|all <salt>|all of <salt>|every (bit|grain|last grain|last bit) [of (it|
    <salt>)]|the [whole] lot|[the] (full|whole) (amount|measure) [of salt]| (everything|all
    <salt>|all) the recipe (says|asks for|calls for|wants)|not a grain less)
  `,
};

const WORDINGS: Readonly<Record<FactorId, FactorWording>> = {
  "vinegar-5-percent": {
    mentions:
      /\b(vinegar|vinegars|acidity|acetic|percent|per cent)\b|\b(bottle|label|jug)\b.* (says?|reads?|marked)\b|\b(says?|reads?) .*\b(bottle|label|jug)\b/,
    subject: "vinegar|strength of the vinegar|vinegar strength|percent|percentage|acidity",
    belongs: /\b(vinegar|percent|label|bottle|strength|strong|weak|grain)/,
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
    asked: [
      `
        [<read-off>] [it is] [<white-vinegar>] [it is|it has|it says|says|<we>
        (got|used|using)|i have got|<label> (says|reads)] [the|a|at|of] [<labeled>] [at]
        {value} <percent> [vinegar|stuff|kind|sort|one] [<read-off>] [it is]
        [<white-vinegar>] [<read-off>]
      `,
      "[the] (acidity|strength|acid) [is|of|says] {value} [<percent>]",
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
    mentions:
      /\b(bottled?|fresh|squeezed?|key|real|pressed) .*\b(lemons?|limes?|juice)\b|\b(lemons?|limes?|juice)\b.* (bottled?|fresh|squeezed?|pressed)\b/,
    subject: "bottled juice|juice|bottle",
    nouns: "juice|lemon juice|lime juice",
    belongs: /\b(juice|lemons?|limes?|bottled?|fresh|squeezed)/,
    // "Bottled the lot" tells of jars.
    wholes: "all of it|every (?:last )?one|this time",
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
    asked: [
      `
        [not fresh] [it|they|juice|lemon|lime|<juice>] [is|was|are|comes|came] [all] [straight|
        right] (from [a|the]|out of (a|the)) bottle [<from-shop>]
      `,
      "it (came|comes) in a bottle [<from-shop>]",
      "[the] bottle [kind|stuff|juice]",
      `
        (bottled is what (i|we) used|bottled every drop|always bottled|(i|we) only [ever]
        (use|used|buy) bottled)
      `,
      `
        [it is|<we> used|used] [all] [the|plain] [store|shop|store bought] bottled
        [lemon|lime] [juice|stuff|kind|sort|one] [<from-shop>] [<as-always>|every one|all of it|and not fresh|not fresh|not squeezed]
      `,
      "not (fresh|squeezed) [but] bottled",
      "the stuff (in|from|out of) the bottle",
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
    mentions: /\b(lemons?|limes?|citric|lemon juice|lime juice|acid)\b/,
    subject: "acid|lemon juice|citric acid|lemon",
    nouns: "acid|lemon juice|lime juice|citric acid",
    belongs: /\b(acid|juice|lemons?|limes?|citric|every|all of them)/,
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
    asked: [
      "<each-one>",
      "[it is|it went|<own-acid>] in all",
      "(each jar|all [the] jars|(they have all|they all|all) got it|<own-acid> <each-one>)",
      "<amount> <each-one>",
      "[i|we] did (<each-one>|them all|all of them)",
      "(did not miss (one|any|a one)|not one missed|none missed|missed none)",
      `
        [<own-acid>] [it is|they are|it went|is|went|<we> put it|<we> put|<we> added it|<we>
        added] [<amount>] [<own-acid>] <in-each>
      `,
      `
        (<each-one>|they all|they each|each) (got|has|have|had) (it|[it is|their] <amount>
        [<own-acid>]|[it is|their] <own-acid>)
      `,
      "[<we>] [put|gave|added] <amount> [<own-acid>] (<every>|<in-each>|each|apiece)",
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
    mentions:
      /\b(steril\w*)\b|\b(boiled|boiling|scalded|dishwasher|rinsed|washed|oven|simmered)\b.* (jars?|glasses)\b|\b(jars?|glasses)\b.* (boiled|boiling|scalded|dishwasher|rinsed|washed|oven|simmered)\b/,
    subject: "empty jars|jars being (sterile|sterilized)|sterilizing [the jars]",
    nouns: "jars|empty jars|jars and all",
    belongs: /\b(steril|wash|clean|boil|jars?)/,
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
    asked: [
      `
        [<we>|they were|they have been|they are|<empty-jars> were|<empty-jars>] [all] [properly|
        fully] <sterilized> [them|them all|all of them|<empty-jars>] [<each-one>] [in (the
        canner|boiling water|a pot|a big pot|the big pot)] [<ten>] [at a [full|rolling]
        boil]
      `,
      "<each-one> [was|is|has been] <sterilized> [<ten>]",
      "[they (had|got)] <ten> in [the] boiling water",
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
    mentions:
      /\b(hot|cold|cool|cooled|lukewarm|warm|raw)\b.* (packed|filled|went in|in the jars|into the jars)\b|\b(packed|filled|went in|put in|going in)\b.* (hot|cold|cool|cooled|lukewarm|warm|raw|boiling)\b/,
    subject: "pack|packing|hot pack|food being hot|packing [it|them] hot",
    belongs: /\b(hot|cold|cool|warm|heat|boil|pot)/,
    noOnes: true,
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
    asked: [
      "<very-hot> [<off-heat>] [<each-one>|all]",
      "<straight-off> [<each-one>|and into the jars]",
      "<straight-off> <very-hot>",
      `
        [<food>|<produce>] [was|were] [still|all] (boiling|bubbling|hot|piping hot|boiling
        hot|at a [full|rolling] boil) [away|hard] <packing>
      `,
      "(<food>|<produce>) (was|were) <very-hot> [<off-heat>] [<packing>]",
      `
        [<we>|<food>|<produce>] [was|were|all] <jarred> [it|them|it all|<produce>|all of it]
        [in|up|into the jars|in the jars|the jars] [all] (<very-hot>|<straight-off>)
        [<off-heat>] [<each-one>]
      `,
      "<very-hot> (packed|filled) [<each-one>]",
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
    mentions: /\b(head ?space|head ?room|brim|brimful|overfilled|underfilled)\b/,
    perhaps:
      /\b(inch|inches|centimet\w+|millimet\w+|finger|thumb|gap|space|room)\b.* (top|rim|lip|neck|left|empty|above|jars?|each|every|air)\b|\b(left|leave|empty|air|top|rim|lip)\b.* (inch|inches|centimet\w+|millimet\w+|finger|thumb|gap|space|room)\b|\b(to|at) the (top|rim|lip|mouth|neck)\b/,
    subject: "headspace|head space|room at the top",
    belongs: /\b(headspace|head space|inch|inches|fill|overfill|rim|brim|room|gap|space|full)/,
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
    asked: [
      `
        [<gauged>] [<left>] [<exact>|a good] {value} <inches> [<exact>] [of|as] [down]
        [<gap>] [<each-jar>|all round|all around|<in-each>|<each-one>] [<gauged>]
      `,
      `
        [<gauged>] [<left>] [<exact>|a good] {value=1} (an|one) inch [<exact>] [of] [down]
        [<gap>] [<each-jar>|all round|all around|<in-each>|<each-one>] [<gauged>]
      `,
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
    mentions:
      /\b(lids?|caps?|tops|covers|flats|dome|domes)\b.* (new|unused|used|reused|re-used|old|auld|fresh|year|year's|box|sleeve|packet|package|pack|drawer|before|second ?hand|never|same|bought)\b|\b(new|unused|used|reused|re-used|old|auld|fresh|year|year's|box|sleeve|packet|package|drawer|second ?hand|same|bought)\b.* (lids?|caps?|tops|covers|flats|domes?)\b/,
    perhaps: /\blids?\b/,
    subject: "lids|lid|lids being new|new lids",
    nouns: "lids|caps|tops",
    belongs: /\b(lids?|new|old|used|box)\b/,
    otherwise: /^(?!.*\blids?\b).*\b(jars?|rings?|bands?|pots?|gauges?)\b/,
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
      "[all] <new> <lids> [on] [and] [screwed] (fingertip|finger) tight",
    ],
    asked: [
      "[<they> are|<they> were|<they> have|all] <unused> [<boxed>]",
      "<new> [lids|ones] <unused> [<boxed>]",
      "<unused> <new> [lids]",
      "<boxed> [and] [<unused>|<new>]",
      `
        [<lids>|<they>] [are|is|were] [all] [brand|all] [spanking] new [ones|uns|lids]
        [<each-one>] [<boxed>]
      `,
      "(first time|first use) (used|they are used|on a jar|for (them|these|those))",
      `
        (every|each|every single|every last) (lid|one) [of (them|these)] (is|was) [brand] new
        [<boxed>]
      `,
      "[<they>] [are|came] out of a [brand] new (box|pack|packet|sleeve|package)",
      `
        (always [brand] new|new <as-always>|[brand] new always|new for (this
        batch|these|this lot))
      `,
      "<we> (bought|got|used) [brand] new ones [<boxed>]",
      "[all] fresh (ones|lids) [<boxed>]",
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
    mentions:
      /\b(slime|slimy|mold|moldy|mould|mouldy)\b|\b(kraut|crock|ferment|brine)\b.* (smells?|stinks?|sound|soft|pink)\b/,
    subject: "ferment|crock",
    nouns: "ferment|crock|kraut",
    yes: [
      "([the] ferment|it|the crock|the kraut) is [perfectly] sound",
      `
        [there is] no slime [and] no (mold|mold below the surface|mold below) [and] no (bad smell|
        smell|off smell)
      `,
    ],
    asked: [
      `
        [it is|the (crock|kraut|ferment) is] [perfectly|absolutely|quite|good and|nice and|
        completely|all] sound [as (a bell|can be)|throughout|all through|right through|all the
        way (down|through)] [<smells-good>]
      `,
      "[it is] sound [and] no slime [and] [no mold]",
      "[it is] sound [and] no mold [and] [no slime] [<smells-good>|no <bad-smell>]",
      "[there is] no slime [and] no mold [and] (no <bad-smell>|<smells-good>)",
      "[there is] no mold [and] no slime [and] (no <bad-smell>|<smells-good>)",
      "[there is] no (slime|mold) [or] (mold|slime) or <bad-smell>",
      "[there is] no (slime or mold|mold or slime) [and] (no <bad-smell>|<smells-good>)",
      "none of (that|those|these|them)",
      "no none of (that|those|these|them)",
      "no nothing like that [at all]",
      "no it is [perfectly|quite] sound",
      `
        not a (bit|trace|sign|hint) of (slime mold or smell|slime or mold or smell|any of
        (it|that))
      `,
      "(everything|all) [is] sound",
      "nothing (like that|of the (kind|sort)) [at all]",
    ],
    no: [
      "([the] ferment|it|the crock|the kraut) is (not sound|slimy|moldy|soft and slimy|bad)",
      "there is (slime|mold|mold below the surface|a bad smell|an off smell)",
      "it smells (bad|off|rotten|foul|putrid)",
    ],
  },
  "full-salt": {
    mentions: /\bsalt(ed|y)?\b/,
    subject: "salt",
    nouns: "salt",
    yes: [
      "all <salt> is in",
      "all <salt> is in [and] [it is] [by the|as the] recipe",
      "<we> (put|got) all <salt> in",
    ],
    asked: [
      "<all-salt> [is in|went in|is all in|in] [<by-recipe>]",
      "[all] <by-recipe>",
      "(it|<salt>) (is|went) all in [<by-recipe>]",
      "(it all|all of it|all) (went in|is in) [<by-recipe>]",
      "(i|we) [have] put (it all|all of it|all <salt>) in [<by-recipe>]",
      "(i|we) [have] put in (it all|all of it|all <salt>|<all-salt>) [<by-recipe>]",
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

/** Those of a factor by its id; a recipe may have factors of its own, which are not here. */
export const FACTOR_WORDINGS: ReadonlyMap<string, FactorWording> = new Map(
  Object.entries(WORDINGS),
);

/** Those that the words mention, the likeliest first. */
export function factorsMentioned(joined: string): string[] {
  const all = [...FACTOR_WORDINGS];
  const surely = all.filter(([, { mentions }]) => mentions.test(joined));
  return [...surely, ...all.filter(([, { perhaps }]) => perhaps?.test(joined))].map(([id]) => id);
}

/** Words that add nothing to such a clause and may stand anywhere in it. */
export const FACTOR_FILLERS: readonly string[] = [
  ...["dear", "love", "honey", "hon", "sir", "dear me", "you know"],
  ...["damn", "damned", "goddamn", "bloody", "blasted", "sodding", "blessed", "stupid", "shiny"],
  ...["thank god", "thank goodness", "praise be", "thank heavens", "thank you", "there"],
  ...["um", "uh", "er", "oh", "well", "okay", "so", "now", "right", "just", "actually"],
  ...["and", "also", "too", "as well", "of course", "for sure", "definitely", "aye"],
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
  ...["by eye", "i eyeballed it", "eyeballed it", "eyeballed", "a finger", "about a finger"],
  ...["a finger is width", "about a finger is width", "give or take", "or so", "at least"],
];
