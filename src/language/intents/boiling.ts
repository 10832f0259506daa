import type { MeaningOf } from "./meaning.ts";

/** A full boil is seen. */
export const boiling: MeaningOf<"boiling"> = {
  cost: "clearing",
  plainly: true,
  report: true,
  when: ["stage:pot", "load:in-water"],
  slots: { target: "name", at: "instant", covered: "flag" },
  example: "it's boiling and the lids are covered",
  topical: true,
  doubting: ["once"],
  wordings: [
    "<boil-report> [<when>|<lasting>] [[<and>] {covered=true} <covered>]",
    "<covered> {covered=true} [and] <boil-report> [<when>]",
    "<boil-report> [and] [everything is|all is|all] {covered=true} covered [<when>]",
    `(since|as of) {at:past} <boil-report>|{at:past} <boil-report>|(we have|there is) [got] lift
    off`,
  ],
  spoken: [
    "it is boiling [now|and the lids are covered {covered=true}]",
    "the {target} (is|are) boiling",
    "(it is|we are) at a [full|rolling] boil",
    "(full|rolling) boil",
    "we have a [full|rolling] boil",
  ],
  bags: [
    {
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
    boil: `
      (a|the|its|full|that|another) [<full>] [<full>] (boil|boiling|rolling)|
      <full> [<full>] boil|boil|boiling|boiling point|the boiling point
    `,
    boiling: "boiling|a boiling|bubbling (hard|away|like mad)|rolling|at the boil|on the boil",
    arrive: `
      come to|came to|come up to|came up to|came back to|come back to|reached|hit|got to|gotten
      to|got up to|is at|are at|is up to|is up at|is on|is back to|is back at|is back on|are
      back to|are back at|made it to|gone to|risen to|rose to|is to|got back to|comes to|has|
      got|has just come to|returned to|is holding at|is in
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
      <lids> (are|is) (well|all|fully|completely) (under|submerged|covered over)
    `,
    depth: `
      (an|one|1|two|2|three|3|a couple of|a good|a full|half an) [good|full] (inch|inches)|
      (one|two|three|1|2|3) and a half inches|an inch and a half|an inch or (two|more)
    `,
    and: "and|with|plus|and the|while",
    "boil-seen": `
      boiling [<hard>]|
      [at|to|on|up to|back to|back at|into|back on] (a|the|our|that|its) [<full>] [<full>]
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
      <full> [<full>] boil [going|on|reached|again|now|in {target}|on {target}|here|back]|
      [a|the|our] [<full>] [<full>] boil (is|has) [been] [<still>] (on|back|up|going|here|
      reached|back on|back up|going again|underway|started|come|come back|returned|back now|
      come up|begun|good|rolling)|
      [the] boil [has] (came|come|started|returned|back) [back] [on|up|again]|
      there (is|goes) (the|a|our|my) [<full>] [<full>] boil [at last|now]|
      [the] boiling [has] (started|begun|resumed)|
      [<it>|{target}] [is] (boiling|rolling) [<hard>] [in {target}]|
      [the] bubbles are rolling|<boil> (reached|achieved|on)
    `,
    "boil-subject": `
      <it>|{target}|we|everything|things|the whole (thing|pot|works)|both (of them|pots|
      canners|kettles)|
      [<the>] (water|pot|canner|kettle) (in|with|of) {target}
    `,
    "boil-now": `
      it is boiling|boiling|a boil|a full boil|a rolling boil|the boil|we are boiling|at a boil
    `,
    us: "us|me|ourselves|myself",
  },
};
