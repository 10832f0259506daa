// data table
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
};

export const FACTOR_LISTS: Readonly<Record<string, string>> = {
  vinegar: "[the|our|my] [white|cider|apple cider|distilled|store-bought] vinegar",
  labeled: "(labeled|labelled|marked|sold as)",
  we: "(i|we) [have]",
  juice: "[the|our|my] [lemon|lime|lemon and lime] juice",
  acid: "[the] (acid|lemon juice|lime juice|citric acid|bottled lemon juice)",
  "empty-jars": "[all] [the|our|my] [empty] jars",
  hot: "(hot|boiling hot|boiling|still boiling|straight off the boil|hot off the boil)",
  cool: "(cold|cool|cooled|lukewarm|warm|raw)",
  food: "(it|it all|they|they all|all of it|everything|the food|all of them)",
  headspace: "[the] (headspace|head space)",
  "each-jar": "(in|on|of) (every|each|every single) jar",
  lids: "[the|our|my] [canning] lids",
  new: "([brand] new|fresh|unused)",
  "some-of": "(one|two|three|some|a few|a couple|half|most) of [the|our|my|these]",
  old: "(old|used|reused|second-hand|second hand|not new|not brand new)",
  "last-year": "(last year|last year is|last season|last season is)",
  salt: "[the] [pure] [canning|pickling|canning and pickling] salt",
};

export const FACTOR_WORDINGS: Readonly<Record<string, FactorWording>> = {
  "vinegar-5-percent": {
    value: 5,
    yes: [
      "{value} percent",
      "(it|that|<vinegar>) (is|was) [only] [a] [<labeled>] [at] {value} percent",
      "(it|<vinegar>|the label|the bottle|the jug) (says|reads) {value} percent",
      "[it is] [<labeled>] {value} percent (vinegar|acid|acidity|acetic acid)",
      "[it is] [store-bought] [and] <labeled> {value} percent",
      "<we> (used|using|got) [a] {value} percent [acid|acidity] vinegar",
      "(it|that|<vinegar>) has {value} percent (acid|acidity)",
    ],
    no: [
      "(it|that|<vinegar>) is not [<labeled>] five percent",
      "(it|that|<vinegar>) is not [<labeled>] 5 percent",
      "not (five|5) percent",
      "[(it|that|<vinegar>) is] (less than|under|below|weaker than) (five|5) percent",
      "[(it|that|<vinegar>) is] (homemade|home made|not store-bought|not labeled)",
      "homemade vinegar",
    ],
  },
  "bottled-juice": {
    yes: [
      "(it|<juice>) is bottled",
      "[<we>] [used] bottled (lemon juice|lime juice|juice|lemon|lime)",
      "(it|<juice>) is (from|out of) (a|the) bottle",
      "(it|<juice>) is bottled (and|) not key lime",
    ],
    no: [
      "(it|<juice>) is (fresh|fresh squeezed|freshly squeezed|not bottled|key lime|squeezed)",
      "[<we>] [used] (fresh|fresh squeezed|key lime) [lemon|lime] juice",
      "not bottled",
    ],
  },
  "acid-in-every-jar": {
    yes: [
      "<acid> [is|went] in (every|each|every single) jar",
      "(every|each|every single) jar (got|has|had) (it is|its) (acid|lemon juice|citric acid)",
      "(every|each|every single) jar (got|has) <acid>",
      "[<we>] (put|added) <acid> (in|to) (every|each|every single) jar",
    ],
    no: [
      "not (every|each) jar (got|has|had) [it is|its] [acid|lemon juice|citric acid]",
      "(one|two|some|a few) [of the] (jar|jars) (has|have|got) no (acid|lemon juice)",
      "[<we>] (forgot|left out) <acid>",
      "no (acid|lemon juice|citric acid)",
    ],
  },
  "sterile-jars": {
    yes: [
      "<empty-jars> (are|were) [all] (sterile|sterilized|boiled)",
      "[all] sterile jars",
      "<we> (boiled|sterilized) <empty-jars>",
    ],
    no: [
      "<empty-jars> (are|were) not (sterile|sterilized|boiled)",
      "(i|we) did not (boil|sterilize) <empty-jars>",
      "<empty-jars> (are|were) [only|just] (washed|clean|rinsed)",
    ],
  },
  "hot-pack-hot": {
    yes: [
      "<food> [was|were] [all] (packed|filled) <hot>",
      "<food> went in <hot>",
      "[it was] still boiling when [we|i] filled",
    ],
    no: [
      "[<food>] [was|were] (packed|filled) <cool>",
      "<food> (went in|was|were) <cool>",
      "went in <cool>",
      "<food> (was|were) not (hot|boiling)",
      "[<food>] [was|were] not (packed|filled) hot",
    ],
  },
  headspace: {
    yes: [
      "<headspace> [is|was] checked [<each-jar>]",
      "<headspace> is (right|good|correct|fine) [<each-jar>]",
      "<we> checked <headspace> [<each-jar>]",
    ],
    no: [
      "<headspace> (is|was) not (checked|right|good|correct) [<each-jar>]",
      "(i|we) did not check <headspace>",
      "<headspace> is (off|wrong|short|too small|too big|too little|too much)",
    ],
  },
  "new-lids": {
    yes: [
      "<new> lids",
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
      "[it is|<we> used] (table|iodized|sea) salt",
      "<we> (cut|halved|reduced) <salt>",
    ],
  },
};

/** Words that add nothing to such a clause and may stand anywhere in it. */
export const FACTOR_FILLERS: readonly string[] = [
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
