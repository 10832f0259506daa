import { RISING } from "../values/rough-values.ts";
import type { MeaningOf } from "./meaning.ts";

/** A full boil is seen. */
export const boiling: MeaningOf<"boiling"> = {
  cost: "clearing",
  tellsOf: { about: "boil", comes: true },
  plainly: true,
  report: true,
  shaken: {
    clause: [
      RISING,
      /\b(in|at|on|round|around) the (middle|edges?|rim|sides?)\b|\bone side\b|\bkettle\b/,
      /^(it|she) is boiling in this kitchen\b/,
    ],
  },
  when: ["stage:pot", "load:in-water"],
  slots: { target: "name", at: "instant", covered: "flag" },
  example: "it's boiling and the lids are covered",
  topical: true,
  doubting: ["once"],
  wordings: [
    `[<boil-lead>] <boil-report> [<boil-where>] [<hard>] [<with-bubbles>] [<when>|<lasting>|since
    now] [<boil-where>] [[<and>] {covered=true} <covered>] [<start-tail>]`,
    `[<boil-lead>] <boil-report> [<and>] {covered=true} <covered> [<when>|<lasting>]`,
    "[<boil-subject>] [has|have] [already|just] boiled [up] <when>",
    "<covered> {covered=true} [and] <boil-report> [<when>|<lasting>] [<start-tail>]",
    "<boil-report> [and] [everything is|all is|all] {covered=true} covered [<when>]",
    `(since|as of) {at:past} <boil-report> [[<and>] {covered=true} <covered>]|
    {at:past} <boil-report> [[<and>] {covered=true} <covered>]|(we have|there is) [got] lift
    off`,
  ],
  spoken: [
    "it is boiling [now|and the lids are covered {covered=true}]",
    "the {target} (is|are) boiling",
    "the (new|fresh|second) {target} (is|are) boiling",
    "(it is|we are) at a [full|rolling] boil",
    "(full|rolling) boil",
    "we have a [full|rolling] boil",
  ],
  bags: [
    {
      beside: true,
      must: ["<boil-seen>"],
      may: `
        <said-of-it>|{target}|<when>|<lasting>|[and] {covered=true} <covered>|come|came|
        reached|hit|started|begun|began|gotten|up|back|hard|nicely|steady|steadily|strong|
        strongly|beautiful|lovely|big|goes|whole|thing|finally|good|nice|full|together
      `,
    },
  ],
  lists: {
    be: "is|are|has|have|am|has been|have been|been|has got|have got",
    "with-bubbles": `
      (with|and) [<the>] (loads|lots|plenty|heaps|tons) of [big] bubbles|[and] [big|great big]
      bubbles (everywhere|all over)|lids and all under [the] water {covered=true}
    `,
    boil: `
      (a|the|it is|full|that|another) [<full>] [<full>] (boil|boiling|rolling)|
      <full> [<full>] boil|boil|boiling|boiling point|the boiling point
    `,
    boiling: `
      boiling|a boiling|a rolling|a bubbling hard|rolling|at the boil|on the boil|
      (bubbling|bubblin|galloping|leaping|churning) (hard|away|<like>|over the top|full on|
      furiously|fiercely|vigorously|all over|right up|for real)|
      boiling and (bubbling|rolling|spitting|tumbling)|rolling and boiling|up and (boiling|rolling)|
      galloping|roiling|(properly|truly|really|fairly|well and truly) (boiling|rolling)
    `,
    "boil-lead": `
      that is|there it is|there she (goes|blows)|now|yes|at last|and now|i see|i can see|i have
      got|we have got|it is <the> {target} that is
    `,
    "boil-where": `
      (in|inside|on|in all of) [<the>] ({target}|big one|stove|back|front|both|pan|little pot) [of
      the stove|burner|ring|hob]|
      (at|on) the (back|front) [of the stove|burner|ring|hob]|(in|on) (both|there|here)|
      (over|around|round|all around|all over|across|all across|right across|over the top of)
      [<the>] [whole] (jars|lids|tops|glasses|top|surface|pot|middle)|all the way across|
      from side to side
    `,
    "start-tail": `
      (start|count|begin|set|run) [<the>] (clock|timer|time|count|it|counting|timing|again|from
      now|that again) [now|again|please|from now|over]|
      start|start now|so start [the clock]|the clock is running|restart the (clock|count|time)
    `,
    arrive: `
      come to|came to|come up to|came up to|came back to|come back to|reached|hit|got to|gotten
      to|got up to|is at|are at|is up to|is up at|is on|is back to|is back at|is back on|are
      back to|are back at|made it to|gone to|risen to|rose to|is to|got back to|comes to|has|
      got|has just come to|returned to|is holding at|is in|come back up to|came back up to|is up
      on|is back up to|is back
      up at|has hit|has reached|has got to|is going at|are at|are on|are up to|is now at|climbed
      to|worked up to|got itself to|fetched up at|brought to|arrived at|is come to|come on to|
      came on to|has come on to|is into|went to|went into|gone into|got itself up to
    `,
    covered: `
      [<lids>] (are|is|all|still|are all|are still|are well|well|fully|nicely) covered [with
      water|by water|up] [too|as well|by <depth>|with <depth>|by <depth> of water|with <depth>
      of water]|
      [<lids>] covered [with water] [too|as well|by <depth>]|
      [<lids>] [are|is|all|are all|are well|are still|well|still] (under|underwater|under water|
      under the water|submerged|below the water|beneath the water)|
      [<got>] [still] [the] water [is|well|still|is well|is still] [comes|stands] [at least]
      [<depth>] (over|above) [<lids>|the lids]|
      [<got>] [at least] [a good] <depth> [of water] (over|above|on top of) [<lids>|them|the
      tops]|
      (plenty of|enough) water (over|above) [<lids>|them]|
      [the|there is] water (covers|is covering|covering|comes over|goes over) <lids> [by
      <depth>]|
      [<lids>] (are|is|sit) (under|below|beneath|by|with) <depth> [of water] [over them]|
      [<lids>] (are|is) all under [<depth> of] water|
      <lids> (are|is) (well|all|fully|completely) (under|submerged|covered over)|
      [<got>|<the> lids have] [a good|about|at least|still] <depth> [of water] <over> [<lids>|them|
      it|<the> tops|the lot]|
      <lids> [are|is] [all|well|a good] (under|drowned|submerged|covered) [and all|as well|too|
      with <depth>|by <depth>|<depth>]|
      <lids> [are|is] <depth> (under|down|deep) [the water|water]|
      [the] water [is|comes|stands|sits] [still|well|good and|right] (deep|high) <over> [<lids>|
      them|the tops]|
      water (well|all|right) over [<lids>|them|the tops]|(all|everything) under [the] water|
      [everything|all of it|all of them|they] [is|are] (submerged|underwater|drowned)
    `,
    over: `
      over|above|atop|on top of|on top|over top of|over the top of|up over|past the top of|to
      spare
    `,
    depth: `
      (an|one|1|two|2|three|3|a couple of|a good|a full) [good|full] (inch|inches)|
      (one|two|three|1|2|3) and a half inches|an inch and a half|an inch or (two|more)|
      [an|one|1|a good] (inch|inches) [and] (a|one) half [inch]|a good inch and a half|inch|
      (one|1|two|2|three|3) and [a] half inch|(two|three) fingers|a finger
    `,
    and: "and|with|plus|and the|while",
    "boil-seen": `
      boiling [<hard>]|
      [at|to|on|up to|back to|back at|into|back on] (a|the|our|that|it is) [<full>] [<full>]
      (boil|roll)|
      [at|to|on|into] <full> [<full>] boil|(started|begun|began) to (boil|roll)|
      boil (started|is on|is up|is back|on|up|is going)|
      rolling [<hard>]|
      bubbling (hard|like mad|like crazy|away hard|good and hard)
    `,
    "boil-report": `
      there it (goes|is) <boil-now>|
      (the|our) (canner|pot|water) is (there|up to it) <boil-now>|
      [<boil-subject>] [<be>] [<still>] [<still>] <boiling> [<hard>] [<hard>] [again|now] [over
      here]|
      (<it>|{target}|everything) (boils|boil) [<hard>] [again|now]|
      [<boil-subject>] [<still>] [have|has|is|are] [<still>] <arrive> <boil> [again|now] [over
      here]|
      [<boil-subject>] [<be>] [<still>] (at|to|on|back at|back to|back on|up to|up at|going at|
      going at it at|holding at|into|in) <boil> [again|now|and holding]|
      [<boil-subject>] [<still>] [has|have] [just] (started|begun|began|commenced|starts|
      gotten) [up] (boiling|to boil|rolling|to roll|bubbling hard|boil|to bubble hard) [<hard>]
      [again|now]|
      (<boil-subject>|<we>) [has|have] [<still>] (came|come|got|went|rolled|comes|gone|gotten|
      made it) [right|back|all the way] [up] [to|into|on] <boil> [again|now]|
      <got> [<us>] [back] [<full>] <boil> [again|now] [going|on|on {target}|in {target}|here|at
      last]|
      <got> [<the>] {target} [back] [up] (boiling|at <boil>|to <boil>|rolling) [again|now|
      <hard>]|
      (<got>|<we> have) [it|them|that|everything|her|him|this] [back] [up] (boiling|at <boil>|
      to <boil>) [again|now|<hard>]|
      [a] <full> [<full>] boil [going|on|reached|again|now|in {target}|on {target}|here|back]|
      [a|the|our] [<full>] [<full>] boil (is|has) [been] [<still>] (on|back|up|going|here|
      reached|back on|back up|going again|underway|started|come|come back|returned|back now|
      come up|begun|good|rolling)|
      [the] boil [has] (came|come|started|returned|back) [back] [on|up|again]|
      there (is|goes) (the|a|our|my) [<full>] [<full>] boil [at last|now]|
      [the] boiling [has] (started|begun|resumed)|
      [<it>|{target}] [is] (boiling|rolling) [<hard>] [in {target}]|
      [the] bubbles are rolling|<boil> (reached|achieved|on)|
      [<boil-subject>] [<be>] [<still>] [at|to|come to|reached|up to] (a|the|that|one of those)
      [<full>] (boil|boils) [that|which] <not-stirred-down>|
      [<boil-subject>] [<still>] (keeps|keeps on|kept|does not stop|will not stop|never stops)
      (boiling|bubbling|rolling) [even] [while|as] <stirring>|
      [<boil-subject>] [<be>] [at] a <full> [<full>] boil|
      <got> [<us>] [a|the|that] [<full>] [<full>] boil [on|going|up] [again|now] [(for|on|in)
      [<the>]
      {target}]|
      that is <boil-subject> [<still>] (boiling|rolling|at the boil|up to the boil|on the boil|at
      a [<full>] boil)|
      (back|right back|up) (at|to|on|up to) [<full>] boil [again|now]|
      [and] boiling (again|now)|[<boil-subject>] [is] boiling [<still>] for real [now|this time]
    `,
    "not-stirred-down": `
      (will|does|do|can|could) not (stir down|be stirred down|go away|stop|quit|go down|die down)
      [while] [<stirring>]|
      (you|i|we) can not stir (down|it down|away)|no matter how <stirring>
    `,
    stirring: "(i|we|you) (stir|stirred|am stirring|are stirring) [it|them|that|hard|like mad]",
    "boil-subject": `
      <it>|{target}|we|everything|things|the whole (thing|pot|works|lot)|
      both (of them|pots|canners|kettles|ones)|both|they both|the both of them|them both|
      [<the>] (water|pot|canner|kettle|one|stuff|liquid) (in|with|of|for|at|on|round|around) [<the>]
      ({target}|back|front|stove|jars|lids|spices|big one)|
      {target} (canner|one|ones|pot|pan|pots|bath|stuff|mix)|
      {target} (in|on|with|for|at) [<the>] ({target}|back|front|stove|spices|big one|jars) [burner|
      ring|hob|of the stove|in|in it]|
      {target} and {target}|
      [<the>] [first|second|other|big|little|small|back|front|last] (one|pot|canner|stuff|works|
      boiler|pickling stuff|sugar|vinegary stuff|beast|thing|pan|cauldron)|
      (canners|pots|jars|lids|the lot|the jars)
    `,
    "boil-now": `
      it is boiling|boiling|a boil|a full boil|a rolling boil|the boil|we are boiling|at a boil
    `,
    us: "us|me|ourselves|myself",
  },
};
