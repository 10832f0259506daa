import { textOf } from "../words.ts";
import type { MeaningOf } from "./meaning.ts";

/** A ping is the sound of a lid that seals, unless it pings under a finger or something is up. */
const PINGS = new RegExp(
  "^(?!.*\\b(not|never|no|none|but|except|bar|apart|press\\w*|push\\w*|touch\\w*|tap\\w*|pok\\w*|" +
    "prod\\w*|finger|thumb|up|open|loose|off|back|fail\\w*|duds?|flex\\w*|dome\\w*|still|in)\\b)" +
    ".*\\bping(s|ed|ing)?\\b",
);
/** Liquid may be lost under a lid that holds. */
const LIQUID_LOST =
  /\b(lost|losing) (\w+ ){0,2}(it is|the|their) (juice|liquid|brine|syrup|water)\b/;

/** Lids are not down after cooling. */
export const sealFailed: MeaningOf<"seal-failed"> = {
  cost: "raising",
  report: true,
  when: ["load:out", "asked:seals"],
  ofRecord: true,
  slots: { target: "name", all: "flag", count: "count", jars: "numbers", othersSealed: "flag" },
  parts: ["size", "seen"],
  example: "jar three didn't seal",
  finish: ({ size: _size, seen: _seen, ...slots }, _context, _plain, { words }) => {
    const all = textOf(words);
    return PINGS.test(all) || LIQUID_LOST.test(all) ? undefined : { slots };
  },
  doubting: ["when", "would"],
  wordings: [
    "<numbered> [just|still|both|has|have] <failed>",
    "{jars:jar-list} [just|still|both|have] <failed>",
    "<some-jars> [still|just|has|have] <failed>",
    "<nth> [just|still|has] <failed> [<others-fine>]",
    `{count} [one] [of [<the>]] [{target}] (jars|jar|lids|lid|pints|pint|quarts|quart) [(on|from)
    [<the>]
    {target}] [just|still|has|have] <failed> [(on|of|from|in) [<the>] {target}]
    [<when-seen>] [<others-fine>]`,
    `[there is|there are|got|we have|i have|found] {count} (dud|bad|loose|failed|unsealed)
    [{target}]
    (lid|lids|jar|jars|seal|seals|one|ones) [(on|in|of|from) [<the>] {target}]`,
    "<nth> [that|it is|its|has a|with the] lid [has|is|just|still] <failed>",
    "[the] (lid|lids) (on|of) <numbered> [still|just|has|have|both] <failed>",
    `(<numbered>|{jars:jar-list}|<some-jars>) [just|still|both|has|have] <failed> [and|but|
    though] {othersSealed=true} [all] (the others|the rest|the other ones|all the others|
    everything else|all others|the rest of them|all the rest|the other jars) [all] [did|have|
    are|has|is] [all] (sealed|did|fine|down|good|went down|seal|sealed up|sealed fine) [fine]`,
    `[the] (seal|lid) [on|of|for] [the] [jar|jars|number|lid] {jars} [has|just] (failed|broke|
    did not take|did not hold|is bad|is no good|never took|let go|has let go|gave out|is broken|
    gave way|came loose|did not seal|popped|popped up|came up|was bad|is gone|has gone|went|has
    popped|is off)`,
    "[the|a|one|<got>] (bad|failed|broken|no) seal [on|at] [jar|number|jars|lid|jar number] {jars}",
    `[<we>|i] [have|got|have got|had|found|there is|there are|there were] [a|the|one] {count}
    [<jars-or-size>|<of-them>|more|lids|lid] (that|which) [has|have] <failed>`,
    `(<we>|i|there is|there are|there were) [have|got|have got|had|found] {count} [bad|failed]
    (failed|failures|failure|bad seal|bad seals|unsealed|that failed|dud|duds|failed seals|
    failed seal|failed lids|unsealed jar|unsealed jars|failed jar|failed jars|jars unsealed|
    seal failure|seal failures|seals failed|lid up|lids up)`,
    `{count} (failed|failures|failure|bad seal|bad seals|unsealed|dud|duds|failed seal|failed
    seals|unsealed jars|unsealed jar|seal failure|seal failures|bad one|bad ones)`,
    `(no seal|failed seal|bad seal|failed|unsealed|did not seal|seal failed|seal failure) [on|
    is] [jar|jars|number|numbers|jar number|lid] {jars}`,
    "(the one|the jar) (that did not seal|that failed) is [jar|number|jar number] {jars}",
    "(the ones|the jars) (that did not seal|that failed) are [jars|numbers|number] {jars}",
    `[{othersSealed=true} all|everything|they all|every one|they] [of them|the jars|the lids]
    [are|have] (sealed|but) [except|but|apart from|except for|save for|all but|other than] [for|
    the] <not-sealed-tail>`,
    `{othersSealed=true} (all|everything|they all|every one|all of them|all the jars|all the
    lids|every jar|all of the jars|every lid|they have all|they are all) [have|are|is|has]
    (sealed|went down|down|sealed up|popped|good|pinged|popped down|gone down) (except|but|
    apart from|except for|save for|other than|but for|all but|minus) [for|the] <not-sealed-tail>`,
    `{othersSealed=true} (all but|everything but|every one but|all except|everything except|all
    jars but|all jars except|every jar but|every jar except) <not-sealed-tail> [have|has|are|
    is] (sealed|went down|down|sealed up|popped|good|popped down)`,
    "(jar|lid|number) {jars} (is|has) (not|no) [a] (sealed|seal|down|tight)",
    "{count} [of the|of them|of my|of our] [jars|lids|jar|lid] (is|are|has|have) not <sealed>",
    "one (lid|jar) [has|just|still] <failed>",
    "(a|a single) (lid|jar) [has|just|still] <failed>",
    "(we|i) (lost|have lost) (a|the|one) seal [on] [jar|number|jar number] {jars}",
    `[we have|i have|got|i found] [a] (dud|failed one) [at|on|is|it is] [jar|number|jar number]
    {jars}`,
    `[<the>|of <the>] {target} [jar|jars|number|numbers|row] {jars} [just|still|both|has|have]
    <failed> [<others-fine>]`,
    `(jar|jars|number|numbers) {jars} (of|in|from) [<the>|them] {target} [row|lot|batch|jars] [just|
    still|both|has|have] <failed> [<others-fine>]`,
    `[there is|there are|i have|i have got|we have|only|just] (<numbered>|{jars:jar-list}|
    <some-jars>|{count} [of] [<the>] {target} [jars|ones]|{count} [of <the>] lids [from|of] [<the>]
    {target}|{count} [of] <jars-or-size>) [that|which|lid|lids] [just|still|both|has|have|there]
    <failed> [<others-fine>]`,
    `[the|those] (lid|lids) [on|of|for|from] (<numbered>|[the] <jar> {jars}|{jars:jar-list}|
    <some-jars>) [just|still|simply|both|has|have] <failed> [<others-fine>]`,
    `{jars:jar-list} <failed> [<others-fine>]`,
  ],
  spoken: [
    "(jar|jars|number) {jars} did not seal",
    "(jar|jars) {jars} failed",
    "{count:whole} did not seal",
    "{count:whole} failed",
  ],
  bags: [
    {
      must: [
        "{count} [<of-them>|lids|jars|lid|jar]|<numbered>|[on|number|jar|lid] [jar|number] {jars}",
        "<seal-failure>",
      ],
      may: `
        <said-of-it>|i|lid|lids|jar|jars|seal|on|number|found|there|still|that|which|with|
        never|too|looks like|had|out of {number}|of the {number}|of {target}|{target}
      `,
    },
  ],
  lists: {
    "when-seen": `
      when (i|we) (looked|checked|pressed|pushed|came back|got up|came down) [in|on (it|them)|it|
      them] [{seen:past}]|{seen:past}
    `,
    nth: `
      [<the>] {jars:ordinal} [{target}] (jar|lid|one|pint|quart|jars|lids|ones) [of [<the>]
      {target}] [along|down|
      in]|
      [the] lid (on|of|for) [the] {jars:ordinal} [{target}] (jar|one|pint|quart) [of [<the>]
      {target}]
    `,
    "others-fine": `
      [and|but|though] {othersSealed=true} [all] (the others|the rest|the other ones|all the others|
      everything else|the rest of them|all the rest|the other jars|every other (jar|one|lid)|all
      other|others) [all] [did|have|are|has|is|were] [all] (sealed|did|fine|down|good|went down|
      seal|sealed up|sealed fine|firm|tight|holding|stuck good|hold|took|okay) [fine|firm|down|good]
    `,
    "in-hand": `
      [right|away|up] (under|beneath|at) (my|the|a) (finger|thumb|touch)|(when|if|as) (i|you|we)
      (press|pressed|push|pushed|poke|poked|touch|touched|tap|tapped|prod) [on|down on] [it|them|the
      middle]|when (pressed|pushed|poked|touched|tapped)|with (no|hardly any) (pull|effort|pulling)
      [at all]|to the touch|back at me|like a (frog|cricket|beetle|tin drum)|up and down|in and out|
      in my hand|a (bit|little)|still|without (any effort|pulling|force|any pull)
    `,
    failed: `
      [is|are|was|still|goes|go|went|makes|make|made|keep|keeps] [<still>] [a|just] (give|gives|
      gave|
      giving|move|moves|moved|moving|flex|flexes|flexing|click|clicks|clicking|clicky|ping|pings|
      pinging|boing|boings|springs|spring|wobbles|rocks|pops|popping) [noises|sounds|sound]
      <in-hand>
      [<in-hand>]|
      (gives|moves|flexes|boings)|(goes|go|went) (boing|click|clickety clack|clunk|thunk)
      [<in-hand>]|is (giving|moving)|
      [just|simply|has|have] (came|come|lifted|fell|popped|pulled|slid|comes|lifts|falls|went)
      [right|straight|clean] (off|away|apart) [<in-hand>]|
      (did|does|do|has|have|had|would|will) not [quite|ever] (draw|drawn|catch|caught|stick|stuck|
      suck|sucked|close|closed|latch|grip|pull|take|taken) [down|in|on] [<in-hand>]|
      (never|failed to|not) (drew|drawn|drawed|draw|catch|caught|stick|stuck|suck|sucked|pulled|
      pull|
      take|taken|took|closed) [down|in]|
      [is|are] [<still>] (humped|humped up|bumpy|proud|standing up|standing proud|not down|no good|
      puffed up|sticking up|not closed|a dud|duds|loose)|
      [is|are] [<still>] not (closed|taken|drawn down|drawn in|stuck|stuck down|firm)|
      [is|are|was|has|have|keeps|keep] [<still>] (popping|clicking|flexing|bouncing|springing|
      moving|springy|bouncy|poppy|domed|raised|humped|loose|flexing|wobbly|
      unsealed|unsuccessful|popped|pushed up|puffed up|pops|clicks|flexes|bounces|springs) [up|
      back|back up|up and down|down and up|up again|in and out] [when (i|you|we) (press|push|
      press on|push on|touch|press down on|tap|push down on) [it|them|the lid|the middle|the
      center]|on me]|
      (is|are|was) [<still>] not (sealed|sealing|down|tight|holding|sucked down|popped down)|
      [still] (is|are|has|have) not <sealed>|
      (do|does|did) not (seal|pop|ping|take|hold|go down|seal right|seal up|pull down|seal at
      all)|
      (would|will|could|can) not (seal|pop down|go down|take|hold)|
      never (did|would|quite) (seal|sealed|pop|take|ping|go down|hold|pop down)|
      never (sealed|popped|took|pinged|went down|held) [down|tight|on me|right]|
      (pops|clicks|flexes|moves|gives|bounces|springs back|still pops|still clicks|still flexes|
      pop|click|flex|goes up and down|springs up) when (i|you|we) (press|push|press on|push on|
      touch|press down on|tap) [it|them|the lid|the middle|the center]|
      failed|failed to seal|lost it is seal|lost the seal|lost their seal|is still up|are still
      up|spring back|came unsealed|
      (still pop|still click|still flex|still pop up|still give) [when i press them]|
      (pop|click|flex|give|bounce) when i press them|
      [still] (pop|pops|flex|flexes|bounce|bounces|click|clicks) up and down [when i press (it|
      them)]|
      came up again|has no seal|had no seal|did not get a seal|has failed|have failed|failed the
      seal|failed the seal check|stayed up|stayed domed|has a bad seal|came loose|have no seal|
      is a bust|missed it is seal|is a dud|(is|are|was|were) [<still>] up|came open|comes right
      off|lifts right off|
      has not popped|has let go|let go
    `,
    "seal-failure": `
      <failed>|
      (did|will|would|has|have|could|do|does|had|can) not (seal|sealed|take|taken|hold|held|go
      down|gone down|stay down|stay sealed|pop|popped|ping|pinged|get sealed|make it|suck down|
      pull down)|
      (bad seal|no seal|failed|unsealed|loose|popped up|came up|still up|up|popping|bad seals|
      no seals|duds|a dud|dud|failures|failure|not down|not sealed|never sealed|never popped|is
      up|never took|never went down|fail|did not|failing)
    `,
    "not-sealed-tail": `
      {count} [<of-them>|jar|jars|lid|lids]|<numbered>|[jar|jars|number|numbers] {jars}|for
      <numbered>
    `,
  },
};
