import { textOf } from "../words.ts";
import type { MeaningOf } from "./meaning.ts";

/** A lid that is up holds nothing; "none came up" says that all are down. */
const UP = new RegExp(
  "(?<!\\b(?:no|none|nothing|not|never|neither|nobody)\\b.*)" +
    "\\b(?:pop(?:ped|s|ping)|come|comes|came|sprang|sprung|bounced|is|are|still) " +
    "(?:right |straight |back )*up\\b(?! tight)",
);

/** Lids are down after cooling. */
export const sealed: MeaningOf<"sealed"> = {
  cost: "clearing",
  plainly: true,
  report: true,
  shaken: {
    clause: [/\b(soft|clicks?|loose|rings? hard|screwed the (rings|bands)|to me)\b/],
  },
  when: ["load:out", "asked:seals"],
  ofRecord: true,
  slots: { target: "name", all: "flag", count: "count", jars: "numbers" },
  parts: ["size"],
  finish: ({ size: _size, ...slots }, _context, _plain, { words }) =>
    UP.test(textOf(words)) ? undefined : { slots },
  example: "they all sealed",
  wordings: [
    {
      set: { all: true },
      phrases: [
        `[<pressed> [and]] <all-jars> [have|has|are|is|got|have been|has been|of them|all|now]
        [all|now|finally|really]
        (<sealed>|<went-down>) [now|up|tight|well|too|<sealed-tail>]`,
        `<pressed> [and] (none|not one|no lid|nothing|not a one|never a one) [of them] (gave|gives|
        give|moved|moves|move|flexed|flexes|budged|budges|clicked|clicks|came up|popped up|fell
        off|came off|was loose|is loose)`,
        `(none|not one|not a one) [of (them|the lids|the jars)] (gives|give|flexes|flex|moves|gave|
        flexed) [when i (press|push) [it|them]]`,
        `<all-jars> [have|has] [all] (a good|good|a tight) (seal|seals) [now]`,
        `<all-jars> [have|has|are|is|got] [all|now|finally|really] <sealed> [now|up|nice and
        tight|well|beautifully|too]`,
        "<all-jars> [just|all|have|has|have all] <went-down> [now|tight|nice and tight]",
        "<other-jars> [have|has|are|is|got] [all] (<sealed>|<went-down>) [now]",
        `[they are|it is|we are] all (sealed|down|tight|sealed up|sealed tight|popped down|
        sucked down)`,
        `all [<of-them>|the seals|seals] (sealed|are good|good|are fine|are tight|took|held|look
        good|are holding|sealed up|are sealed)`,
        `(<the>|all the|all|every) (seals|seal) (is|are|took|held|look|looks) [all] [good|fine|
        tight|down|sound|solid|great|okay]`,
        `[i checked|i have checked|checked] [all|every|the] [jars|lids|jar|seals|them] [and]
        (they are|they have|everything is|everything|all|all are|they|every one|every one is|
        each one is) [all] sealed`,
        "[we have|i have|got|we got|there are|i got] (a|one) hundred percent [sealed|seal|seals]",
        `[we have|we got|got|i have|i got] (all|every) (seals|lids|jars|lid|jar) (down|sealed|
        tight)`,
        `(none|no jars|not one|no lids|not a single one|none of the lids|none of them|none of the
        jars|not a jar|no jar|nothing) [has|have] (failed|failed to seal|are unsealed|is
        unsealed|did not seal|came up|is loose|are loose)`,
        `(no failures|no failed seals|no bad seals|no duds|full seal|every lid is down|all down|
        all sealed)`,
        "the (whole|entire) (lot|batch|load) [has|is] (sealed|is sealed|sealed up)",
        "[the] (lids|jars) (have|are) [all] (sealed|popped|gone down|pinged|sealed up|down)",
      ],
    },
    `<some-jars> [have|has|are|is|got|of them have|of them are|more have] [all|now] <sealed>
    [now|so far|already]`,
    `(the first|the other|another|so far|that is|that makes|make it|those) {count:whole} [<of-them>|
    jars|lids|of mine] [have|has|are|is] [all|now|just] (<sealed>|<went-down>) [now|so far|
    <sealed-tail>]`,
    `
      {count} [<jars-or-size>] [have|has|are|is] [all|now|just] (<sealed>|<went-down>)
      <sealed-tail>
    `,
    "<some-jars> [just|have|has|more] <went-down> [now|so far]",
    "{count} (good|sound|solid) (seals|seal)",
    `(<we>|i) (have|got|have got|count|counted) {count:whole} [jars|lids|pints|quarts] [that are|
    that have|that] <sealed> [so far|now]`,
    `(<we>|i) (have|got|have got|count) {count:whole} (sealed|good seals|good ones|down) [so far|
    now|already]`,
    `[that is|that makes|makes] {count:whole} [jars|of them|lids|pints|quarts] (sealed|sealed so
    far|sealed now|down)`,
    "<numbered> [have|has|are|is|got] [all|both|now|just] (<sealed>|<went-down>|fine) [now|too]",
    "the seal on <numbered> (is|took|has) [good|fine|tight|taken|held]",
    "{jars:jar-list} [have|are] [all|both|now|just] (<sealed>|<went-down>) [now|too]",
    "sealed {count:whole} [<of-them>|jars|so far]",
    "seals on {jars} [are good|took]",
  ],
  spoken: [
    { set: { all: true }, phrases: ["all sealed", "they are all sealed", "everything sealed"] },
    "{count:whole} sealed",
    "(jar|jars|number) {jars} sealed",
  ],
  bags: [
    {
      beside: true,
      set: { all: true },
      must: [
        "<all-jars>|<other-jars>|[the] (whole|entire) (batch|lot|load|bunch)|all",
        "<sealed>|<went-down>",
      ],
      may: `
        <said-of-it>|i|checked|<other-jars>|<all-jars>|{number} (for|of|out of) {number}|lids|
        jars|good|fine|nice|tight|well|perfectly|jar|lid|down|up|up tight|great|single|last|
        nicely|too|of {target}|{target}
      `,
    },
    {
      beside: true,
      must: ["<some-jars>|<numbered>", "<sealed>|<went-down>|good seals"],
      may: `
        <said-of-it>|i|so far|good|fine|nice|tight|well|too|both|now|lids|jars|nicely|counted|
        of {target}|{target}
      `,
    },
  ],
  lists: {
    "all-jars": `
      <every-jar>|<all-lids> [of|from|on|in|with] [<the>] {target} [they|they all]|
      all [of] [<the>|{count:whole} [of the]] [{target}] (jars|ones|lids|glasses|{target})|[<the>]
      {target} [jars|lids] all|
      (each|every) [single|last|one of <the>] {target} [jar|lid|one]|the whole row|all in a row|
      [each|every] (one|lid) [of them] all|all the (red|green|yellow) ones|all [of] <the> lids [on
      [<the>] {target}]|all|all of them|all of the jars|all the jars|all of the lids|all the lids|
      everything|
      everyone|everybody|they|they all|they have all|the lot|the whole lot|the jars|the lids|
      the jars all|the lids all|both|both of (them|those|these|the jars)|both (jars|lids|pints|
      quarts)|
      (every|each) (single|last|and every|blessed) [last] (one|lid|jar|seal|pint|quart) [of
      (them|these|those|mine|ours|the lot|the jars|the lids|my jars|our jars|the pints|the
      quarts)]|
      (every|each) (lid|jar|pint|quart|one) [of (them|these|those|mine|ours|the lot|the jars|
      the lids|my jars|our jars|the pints|the quarts)]|
      all (of them|of the jars|the jars|of these|of those|our jars|my jars) have|
      the whole batch|the whole load|the entire batch|the whole canner|the whole bunch|all our
      jars|all my jars|all of it|all jars|all lids|the pints|the quarts|all the pints|all the
      quarts|all {count} [<of-them>|jars|lids|pints|quarts]|all (of|the) {count} [jars|lids|
      pints|quarts]|the (beets|beans|pickles|tomatoes) all|all the (beets|beans|pickles|
      tomatoes)
    `,
    "all-lids": `
      all [of] [<the>] (lids|jars|glasses|seals|ones)|every [single|last] (lid|jar|one)|<the> lids
    `,
    pressed: `
      [i|we|i have|we have] [just|now] (pressed|pushed|pushed on|pressed on|tapped|checked|tested|
      tried|knocked on|felt|lifted|picked up|went over|went down|poked|prodded|thumbed) [on] [all|
      each|every] [and every] [last|single] (one|lid|jar|of them|them all|them|the lids|the jars|
      the lot|the
      row|the line|in turn) [in turn|of them|myself|with (my|a|one) (finger|thumb|spoon)|by (the
      lid|it is lid|their lids)|one by one|one after another|[right] in the middle|again]
    `,
    "sealed-tail": "so far|up|tight|nicely|good|well|hard|down|this morning|overnight|as well|too",
    "other-jars": `
      all the others|the others|the rest|all the rest|the other ones|everything else|all the
      other jars|the other jars|all of the others|all the other ones|the remaining jars|the
      remaining ones|the others all|the rest all|the rest of the jars|every other one|all
      others|all the remaining jars|the rest of the lids|[all] [the] rest of them|all the other
      lids
    `,
    "went-down": `
      went down|
      [have|has] (popped|pinged|sealed|sucked|pulled|snapped) [down] [in|tight|nice and
      tight]|[have|has] gone down [in|tight|nice and tight]|
      [have|has|all] (taken|held|caught|latched|gripped|stuck|drawn in|drawn down|drawed down|drawed
      in|sucked in|sucked down|gone concave)|took|caught|hold|held|drew (in|down)|sucked (in|down)|
      pulled (in|down)|popped (in|down)|dimpled [in]|clicked down|sealed up|sealed fine|took a
      seal|got a good seal|made a seal|sealed perfectly|
      sealed properly|sealed solid|(went|gone) ping|gone concave|took a good seal|went down tight|
      sealed beautifully|took the seal
    `,
  },
};
