// data table
import type { Intent } from "../../kitchen/command.ts";

/**
 * What an intent is made up of, in any order: every one of `must` has to be said, and every other
 * word has to be among `may`. For what no phrase has foreseen. Reports are kept narrow: nothing
 * may stand here that could turn one into a question, a wish, a plan or its opposite.
 */
export type Bag = {
  intent: Intent;
  set?: Readonly<Record<string, string | number | true>>;
  must: readonly string[];
  may: readonly string[];
  /** True where it may begin like a question. */
  asking?: true;
};

export const BAGS: readonly Bag[] = [
  // --- from the stove
  {
    intent: "boiling",
    must: ["<boil-seen>"],
    may: [
      "<said-of-it>",
      "{target}",
      "<when>",
      "<lasting>",
      "[and] {covered=true} <covered>",
      `come|came|reached|hit|started|begun|began|gotten|up|back|hard|nicely|steady|steadily|strong|
      strongly|beautiful|lovely|big|goes|whole|thing|finally|good|nice|full|together`,
    ],
  },
  {
    intent: "boil-lost",
    must: ["<boil-any>", "<boil-loss>"],
    may: [
      "<said-of-it>",
      "{target}",
      "<when>",
      "[for] [about] {at:lasting}",
      "on (me|us)",
      "its|their|i|completely|totally|somehow|entirely|down|away|back|altogether|went",
    ],
  },
  {
    intent: "pressure",
    must: ["<at-value> {value:number} <pressure-unit>|{value:number} <pressure-unit>"],
    may: [
      "<it>|<we>|<gauge-name>|<is>|<shows>|<still>|<gauge-tail>|<when>|<way>|<approx>|the canner",
      "on the|canner|she|all|and|there|here",
    ],
  },
  {
    intent: "pressure",
    must: ["{value:number}", "<gauge-name>"],
    may: ["<it>|<we>|<is>|<shows>|<still>|<gauge-tail>|<when>|<way>|<approx>|<at>|<climbed>|and"],
  },
  {
    intent: "pressure-lost",
    must: ["<gauge-name>", "<falling>"],
    may: [
      "<said-of-it>|i|on me|on us|<when>|again|fast|from|to|than|too|way|back|off|away|a lot|quick",
      "{number} [<psi>]|target|the mark|where it should be|what it should be|what we need|a bit",
      "where it needs to be|where we need it|below|under|in the canner|canner|all|some|some of|bit",
    ],
  },
  {
    intent: "temperature",
    must: ["[<at-value>|<fell-to>] {value:number} <temp-unit>"],
    may: [
      "<temp-subject>|<it>|<we>|<is>|<shows>|<still>|<temp-tail>|<when>|<way>|<approx>|{target}",
      "there|here|and|the|in the canner|over|all",
    ],
  },
  {
    intent: "temperature",
    must: ["[<at-value>|<fell-to>] {value:temperature}", "<temp-subject>"],
    may: ["<is>|<shows>|<still>|<temp-tail>|<when>|<way>|<approx>|in|of|there|here|and|the"],
  },
  {
    intent: "weight-rocking",
    must: ["<weight>", "<rocking>"],
    may: ["<said-of-it>|<steady>|<when>|<lasting>|i|can|hear|see|started|begun|began|to|a|going"],
  },
  {
    intent: "venting",
    must: ["steam|venting|steaming", "<steaming>|<from-vent>|venting|steaming"],
    may: [
      "<said-of-it>|<steady>|<from-vent>|<when>|<lasting>|good|nice|strong|solid|full|plume|column",
      "stream|jet|of|canner|vent|out|started|begun|to|can see|i see|i|lots of|plenty of|a lot of",
    ],
  },
  {
    intent: "water-low",
    must: ["water|the water level|water level", "<lowish>"],
    may: [
      "<said-of-it>|<bit>|<in-pot>|<when>|level|<the> (lids|jars|tops|jar tops|lid tops|rims)|in",
      "add|more|need to|needs|i|of|top it up|top up|some|to|getting|running|gone|than it should be",
      "{target}",
    ],
  },
  {
    intent: "loaded",
    must: ["<all-in-canner>|[{count:whole}] (jars|pints|quarts|half pints)|rack", "<loaded-in>"],
    may: [
      "<said-of-it>|i|put|set|lowered|got|placed|safely|down|snug|nicely|<when>|<lid-on>|every one",
      "last|first|second|load|going|went|up|is|all of|all the|ready",
    ],
  },
  // --- jars
  {
    intent: "jars-filled",
    must: ["{count:whole} [full|filled|good] <jars-or-size>"],
    may: [
      "<tally>|<filled-word>|it|that|we|i|have|has|is|are|got|all|and|so|in all|in total|total|now",
      "all told|altogether|so far|of {target}|from {target}|{target}|made|filled|packed|<the>|just",
      "out of this batch|from this batch|out of it|out of that|from that|up|about|exactly|another",
    ],
  },
  {
    intent: "sealed",
    set: { all: true },
    must: [
      "<all-jars>|<other-jars>|[the] (whole|entire) (batch|lot|load|bunch)|all",
      "<sealed>|<went-down>",
    ],
    may: [
      "<said-of-it>|i|checked|<other-jars>|<all-jars>|{number} (for|of|out of) {number}|lids|jars",
      "good|fine|nice|tight|well|perfectly|jar|lid|down|up|up tight|great|single|last|nicely|too",
      "of {target}|{target}",
    ],
  },
  {
    intent: "sealed",
    must: ["<some-jars>|<numbered>", "<sealed>|<went-down>|good seals"],
    may: [
      "<said-of-it>|i|so far|good|fine|nice|tight|well|too|both|now|lids|jars|nicely|counted",
      "of {target}|{target}",
    ],
  },
  {
    intent: "seal-failed",
    must: [
      "{count} [<of-them>|lids|jars|lid|jar]|<numbered>|[on|number|jar|lid] [jar|number] {jars}",
      "<seal-failure>",
    ],
    may: [
      "<said-of-it>|i|lid|lids|jar|jars|seal|on|number|found|there|still|that|which|with|never|too",
      "looks like|had|out of {number}|of the {number}|of {target}|{target}",
    ],
  },
  {
    intent: "jar-broken",
    must: [
      "{count} [<of-them>|jars|jar|pint|quart|pints|quarts|glass]|<numbered>|[jar|number] {jars}",
      "<broke>|broken|busted|shattered|cracked|smashed",
    ],
    may: [
      "<said-of-it>|i|there|jar|jars|in|canner|water|pot|on me|on us|had|found|lost|in there|up",
      "of {target}|{target}",
    ],
  },
  {
    intent: "set-aside",
    must: ["{count} [<of-them>|jars|jar|pint|quart|pints|quarts]", "<left-aside>"],
    may: [
      "<said-of-it>|i|put|set|keeping|kept|leaving|left|holding|held|setting|putting|only|not|full",
      "half|to|for|will|let us|let me|partial|short|jar|did not fill",
    ],
  },
  {
    intent: "opened",
    must: ["{count} <jars-or-size>", "of [<the>] {target}", "<opened-it>"],
    may: [
      `we|i|have|has|just|up|for (supper|dinner|lunch|breakfast)|tonight|today|now|
      and|another|last`,
      "from the (shelf|pantry|cellar|basement)|off the shelf|out of the pantry|is|are|got|was|were",
    ],
  },
  {
    intent: "disposition",
    set: { what: "refrigerate" },
    must: [
      "(in|into|to|inside|for) [the] (fridge|refrigerator|icebox|cooler)|refrigerate|chill",
      "<jar-meant>",
    ],
    may: ["<doing-with>|put|stick|pop|set|keep|placing|moving|goes|go|move|throw|tuck|shove|the"],
  },
  {
    intent: "disposition",
    set: { what: "freeze" },
    must: ["(in|into|to) [the] [deep] (freezer|freeze)|freeze|freezing", "<jar-meant>"],
    may: ["<doing-with>|put|stick|pop|set|keep|placing|moving|goes|go|move|throw|the"],
  },
  {
    intent: "disposition",
    set: { what: "reprocess" },
    must: [
      `reprocess|reprocessing|redo|(run|put|send|process|can|do) <jar-meant>|processing|[a] new
      (lid|lids)`,
      `reprocess|reprocessing|redo|again|over|back in|back through|back in the canner|
      through again|back into the canner`,
    ],
    may: [
      `<doing-with>|<jar-meant>|through|the canner|in the canner|with|[a] new (lid|lids)|
      on|once more`,
      "into the canner|get|give|tomorrow|another run|another go",
    ],
  },
  {
    intent: "disposition",
    set: { what: "discard" },
    must: [
      `(in|into|to) [the] (trash|garbage|bin|compost|rubbish)|out|away|discard|discarding|trash|
      dump|toss|chuck|ditch|throw out|pitch`,
      "<jar-meant>",
    ],
    may: [
      "<doing-with>|throw|throwing|toss|tossing|chuck|chucking|put|goes|go|going|pitch|the|gets",
    ],
  },
  {
    intent: "altitude",
    must: ["{feet:number} feet", "altitude|elevation|up|high|above sea level|at|here|kitchen"],
    may: [
      "we|i|are|am|is|it|our|my|the|this|live|sit|sits|cook|place|house|about|around|exactly|of|in",
      "roughly|nearly|just over|just under|here|altitude|elevation|kitchen|to|be|set|for|almost",
    ],
  },
  // --- work done
  {
    intent: "done",
    must: ["<done>"],
    may: [
      "<said-of-it>|i|am|with|step|part|bit|job|stage|now|too|well|task|{target}|<doing>|<things>",
      "up|here|over|thing|pretty much|yes|got|everything|one|that one|for now|<when>|lot|finally",
    ],
  },
  {
    intent: "done",
    set: { target: "jars" },
    must: ["<jars-hot>|the (last|final) (jar|one)", "<out-of>|off the rack|on the towel"],
    may: [
      `<took>|<said-of-it>|i|am|safely|taking|lifting|pulling|hauling|getting|fishing|
      bringing|came`,
      "coming|come|unloading|now|going|<when>|the last of|carefully|up|hoisting|hoisted|out",
    ],
  },
  // --- questions
  {
    intent: "time-left",
    asking: true,
    must: ["<how-long>|time left|[the] time (on|for|with)|minutes left|hours left|left on"],
    may: [
      `<asked-of-it>|<the> timer|[<the>] {target}|left|to go|longer|more|yet|still|
      until|till|till|go`,
      `before|done|ready|finished|out|off|over|up|come out|the jars|jars|wait|need|
      needs|take|takes`,
      `cook|process|boil|remaining|time|on|in|for|with|got|get|the clock|clock|is
      up|goes off|rings`,
      "check|what|keep|going|canner|finish|end|ends|everything|be|i am|we are|looking at|talking",
    ],
  },
  {
    intent: "finish-time",
    asking: true,
    must: [
      "<when-ask> (is|are|will|would|do|does|can|could|should|am|shall|must)|finish time|how soon",
      "<finished-word>",
    ],
    may: [
      "<asked-of-it>|[<the>] {target}|the jars|jars|canner|everything|load|out|up|off|expect|be|to",
      "able|take|pull|lift|get|remove|them|timer|going|supposed|due|of the canner|about|think|soon",
      "likely|done|with|by|lids|in|rest|at|heat|turn off|figure|reckon|suppose|guess|imagine|say",
    ],
  },
  {
    intent: "overview",
    asking: true,
    must: [
      `status|rundown|overview|summary|update|recap|report|(everything|things|all of it|it all|whole
      kitchen|whole works|whole thing|all this|everybody|all the batches)`,
      `status|rundown|overview|summary|recap|how|where|what|fill me in|catch me up|run
      me through|bring me up|give me|tell me|show me|read me`,
    ],
    may: [
      `<asked-of-it>|of|on|with|for|the|a|quick|full|kitchen|everything|things|going|
      doing|at|stand`,
      "is|are|stands|running|cooking|so far|to date|to speed|in|all|batches|going on|along|coming",
      "progressing|holding up|looking|go|please|over|every|batch|pot|timer|timers|me|where|got",
    ],
  },
  {
    intent: "what-next",
    asking: true,
    must: [
      "what|which|tell me",
      `next|after this|after that|then|coming|coming up|follows|after this one|after that
      one|afterward|afterwards|following|to come`,
    ],
    may: [
      `<asked-of-it>|step|stage|job|task|thing|happens|happen|comes|come|up|one|the|
      on the list|is|got`,
      "start|on|else|plan|for|to do|to|do|doing|in line|on deck|next|ahead",
    ],
  },
  {
    intent: "what-now",
    asking: true,
    must: [
      "what|anything|something|which|where|tell me what",
      `(i|we|me|my|us|hands) [be|should|need|have|supposed]|step|stage|needs doing|
      needs my|needs me|current`,
    ],
    may: [
      `<asked-of-it>|now|right now|do|doing|to|should|supposed|be|need|needs|job|
      task|step|stage|on|at`,
      "for|is|the|here|current|hands|working|attention|doing|at the moment|moment|there|next step",
      "must|plate|waiting|present|this minute|minute|getting|with|busy|of|in|thing|something",
    ],
  },
  {
    intent: "repeat",
    asking: true,
    must: [
      `say|said|repeat|hear|heard|catch|caught|missed|miss|come again|pardon|once more|again|one more
      time|what was that|get`,
      `again|repeat|repeating|once more|one more time|not|could not|did not|missed|miss|
      what|pardon|over|catch`,
    ],
    may: [
      `<asked-of-it>|that|it|me|last|bit|part|one|thing|was|were|did|could|you|i|
      please|quite|of|to|can`,
      `instruction|instructions|step|message|just|said|say|time|for|by|the|all|any|
      what|louder|slower`,
      `not|a little|a bit|slowly|what you said|over the (fan|noise|water|radio|steam|
      racket)|prompt|back`,
      "have|need|let|like|run|go|tell|give|read|hear|heard|sorry|would|mind|repeating|moment|line",
    ],
  },
  {
    intent: "help",
    asking: true,
    must: ["help|commands|options|instructions|(say|ask|tell) [to] [you]|use|work|works|choices"],
    may: [
      `what|how|can|do|i|you|me|my|this|it|the|a|are|is|need|some|show|list|to|
      know|should|does|of|am`,
      `could|would|with|with you|here|thing|else|all|give|tell|understand|talk|for|
      things|kinds|sort`,
      "available|possible|be|say|please|will|supposed|we",
    ],
  },
  // --- orders
  {
    intent: "timer-set",
    asking: true,
    must: [
      "{minutes:duration}",
      "timer|clock|alarm|countdown|count down|time|count|ring|beep|ding|buzz|wake me",
    ],
    may: [
      `<want>|set|start|put|give|get|make|run|begin|need|want|like|for|on|in|a|
      an|the|me|us|i|we|to|at`,
      `up|of|another|new|kitchen|egg {label=egg}|have|going|when|it is up|that is|
      started|can|could`,
      `(for|called|named|labeled) [<the>] {label:thing}|go|off|after|from now|count|
      down|that lasts`,
      `add|is|just|do|create|time|throw|set it|let us|will|would|you|with|could|
      can|may|should|called`,
    ],
  },
  {
    intent: "timer-add",
    asking: true,
    must: ["[another|an extra|an additional] {minutes:length} [more|longer|extra]", "<lengthen>"],
    may: [
      `<want>|on|to|for|it|that|them|the|a|up|by|i|we|timer|clock|more|longer|
      extra|out|onto|of|is|this`,
      "(on|to|for|onto) [<the>] {target:timer} [timer]|{target} [timer]|get|on there|go|needs|need",
      `(bump|push|extend|stretch|give|let|leave) [<the>] {target:timer} [timer] [up|out|
      go|run|have]`,
    ],
  },
  {
    intent: "timer-cancel",
    asking: true,
    must: ["timer|countdown|alarm", "<kill>|do not need|no longer need|never mind|no more|off"],
    may: [
      `<want>|the|that|my|this|for|on|a|i|we|any more|any longer|now|all|one|it|
      <the>|up|of|can|timers`,
      "[<the>] {target:timer} timer|(for|on) [<the>] {target:timer}|please|go|running|is|just",
    ],
  },
  {
    intent: "undo",
    asking: true,
    must: [
      `undo|take back|take (that|it|this) back|scratch|cancel|strike|erase|reverse|delete|back up|
      go back|mistake|wrong|ignore|disregard|forget|(did not|do not) mean|misspoke|forget`,
      "that|it|last|this|what|one|mistake",
    ],
    may: [
      `i|you|was|is|a|the|my|thing|one|said|say|just|what|command|report|entry|
      part|bit|to|please|me|no`,
      `let us|want to|last|an error|oops|whoops|by|made|that|it|not|right|wait|
      sorry|step|from the log`,
      "heard|got|wrong|actually|all|undo|back",
    ],
  },
  {
    intent: "hush",
    asking: true,
    must: [
      `quiet|hush|shush|silent|silence|mute|muted|stop talking|(do|not) not (talk|speak)|no talking|
      quit talking|pipe down|shut up|zip it|stop yakking|stop chattering|hold your tongue`,
    ],
    may: [
      `<want>|be|stay|go|keep|for|a|the|while|bit|minute|moment|some|now|please|
      you|your|voice|me|us|i`,
      `{minutes:duration}|little|yourself|in here|need|would|could|can|it|on|of|time|
      down|up|will|to|and`,
    ],
  },
  {
    intent: "unhush",
    asking: true,
    must: [
      "talk|talking|speak|speaking|voice|sound|unmute|volume|chatting|chat",
      "again|now|back|on|up|can|may|start|unmute|resume",
    ],
    may: [
      `you|your|the|to|me|us|it|is|okay|all right|fine|safe|go ahead|and|please|
      free|turn|come|start|i`,
      "want|need|hear|let|ready|for you|quiet|over|of|being|stop|time|would|could",
    ],
  },
  {
    intent: "hold",
    must: [
      `wait|hold|pause|stop|hang on|hold on|break|breather|stand by|freeze|hold up|sit
      tight|step away|second|minute|moment|sec`,
    ],
    may: [
      `<a-moment>|<let>|give me|take|need|on|up|for|a|the|here|there|now|everything|
      it|that|please|i|we`,
      `have|got to|to|get|answer|door|phone|right|things|where|is|are|you|let|me|
      us|just|will|[<the>] {target}`,
      `step|away|out|go|check|find|someone is at the door|the phone is ringing|put|on
      hold|quick|must`,
    ],
  },
  {
    intent: "resume",
    must: [
      `back|resume|continue|carry on|keep going|go on|proceed|ready|going again|unpause|
      press on|pick up|pick it up`,
    ],
    may: [
      `<let>|i am|we are|i|we|am|are|to|it|with|on|again|now|going|get|getting|
      work|where we left off|go`,
      `[<the>] {target}|from|here|there|everything|that|the|okay|keep|carry|move|all|
      set|start|up|and`,
      "rolling|cooking|moving|this|things|at it|now then|done waiting|break is over|you can",
    ],
  },
  {
    intent: "abandon",
    must: [
      `abandon|abandoning|scrap|scrapping|give up|giving up|call off|calling off|toss|throw out|dump|
      ditch|bail|bailing|write off|calling it quits|throw away|throwing out|quit|quitting`,
      `(this|that|the|whole|entire|my|our) [whole|entire] (batch|lot|thing|run|load|
      project)|on {target}|<the> {target}|{target} batch|it all`,
    ],
    may: [
      `<let>|i|we|am|are|going|to|on|off|of|out|away|for good|altogether|and|up|
      with|it|the|this|that|all`,
      "batch|want|just|will|have|had|enough|done|is|no good|ruined|entirely|completely|now|quits",
    ],
  },
];

/** Lists that belong to the bags alone. */
export const BAG_LISTS: Readonly<Record<string, readonly string[]>> = {
  "said-of-it": [
    `
      (it|that|this|they|we|she|the|a|an|our|my|these|those|is|are|has|have|been|got|now|just|already|
      again|here|there|and|so|all|both|of|them|everything|one|ones|us|ourselves|another|every|each|
      any more|with)
    `,
  ],
  "asked-of-it": [
    `
      (what|when|where|how|is|are|do|does|will|would|can|could|should|has|have|we|i|it|they|that|this|
      those|these|the|my|our|me|us|a|an|of|and|so|now|tell|give|show|to|about|got|am|you|all|at|then|
      there|going|just|let|know|them|us|for|must|shall|in|supposed|whole|right|here|again)
    `,
  ],
  "boil-seen": [
    "boiling [<hard>]",
    `[at|to|on|up to|back to|back at|into|back on] (a|the|our|that|its) [<full>]
    [<full>] (boil|roll)`,
    "[at|to|on|into] <full> [<full>] boil",
    "(started|begun|began) to (boil|roll)",
    "boil (started|is on|is up|is back|on|up|is going)",
    "rolling [<hard>]",
    "bubbling (hard|like mad|like crazy|away hard|good and hard)",
  ],
  "boil-any": [
    "[the|our|my|a|that|its|it is] [<full>] [<full>] (boil|boiling|bubbling|roll|rolling)",
  ],
  "boil-loss": [
    `
      (lost|losing|stopped|quit|died|dropped below|fell below|dropped under|off|no more|no longer|gone
      flat|gone out|gone|went flat|went out|went away|went off|quitting|stopping|ended|faded|gave out|
      dying|dead|broke|slipped below|petered out|fizzled|fizzled out|dropped off|fell off|fallen off|
      out of|down from|come off|came off|not any more|dropped out of|fell out of|ceased|let up)
    `,
  ],
  falling: [
    `
      (dropping|dropped|drops|falling|fell|falls|fallen|lost|losing|gone|sinking|sank|going down|
      slipping|slipped|sagging|sagged|went down|slid|sliding|tanked|tanking|dipped|dipping|too low|
      bled off|bleeding off|came down|come down|coming down|crashed|dwindling|not holding)
    `,
    "(is|has gone|went|gone|getting|got|gotten|are|now) (low|down|below target|under)",
    "(below|under|less than) (target|the mark|{number}|where it should be|where it needs to be)",
  ],
  lowish: [
    `
      (low|lower|down|below|dropping|dropped|short|under|sinking|running out|boiled down|boiled away|
      boiling away|shallow|going down|gone down|fallen|falling|fell|running low|getting low|too low|
      boiled off|shy|run down)
    `,
  ],
  "loaded-in": [
    `
      (loaded|lowered|[down] in|in the canner|into the canner|in the water|into the water|in the pot|
      into the pot|in the bath|in the water bath|down in there|in there|in the rack|inside|aboard|
      down in the water|under the water)
    `,
  ],
  "seal-failure": [
    "<failed>",
    `
      (did|will|would|has|have|could|do|does|had|can) not (seal|sealed|take|taken|hold|held|go down|
      gone down|stay down|stay sealed|pop|popped|ping|pinged|get sealed|make it|suck down|pull down)
    `,
    `
      (bad seal|no seal|failed|unsealed|loose|popped up|came up|still up|up|popping|bad seals|no
      seals|duds|a dud|dud|failures|failure|not down|not sealed|never sealed|never popped|is up|
      never took|never went down|fail|did not|failing)
    `,
  ],
  "left-aside": [
    `
      (aside|to the side|to one side|left over|leftover|extra|out of the load|half full|part full|not
      full|only half|back|for the fridge|off to the side|that will not fit|that does not fit|
      will not fit|does not fit|too many|partly full|partly filled|short)
    `,
  ],
  "opened-it": [
    `
      (opened|open|opening|ate|used|cracked open|finished|finished off|eaten|used up|popped open|dug
      into|broke open|opened up|polished off|went through|had|cracked)
    `,
  ],
  "jar-meant": [
    `
      (it|them|that|those|these|this|that one|this one|those ones|these ones|both|both of them|both of
      those|all of them|the lot|them both|them all|the rest|the jar|that jar|the jars|those jars|these
      jars|this jar|the other one|the others|the odd one|the extra|those two|these two)
    `,
    "<numbered>",
    "the (failed|bad|unsealed|loose|broken|last|short|odd|extra) (one|ones|jar|jars)",
    "{count} [<of-them>|jars|jar|pints|quarts|pint|quart]",
  ],
  "doing-with": [
    `
      (i|we|am|are|is|will|would|can|let us|going|to|just|should|have|has|be|had better|better|i think|
      guess|in|with|for|on|now|then|and|straight|right|get|so|out|one|ones|jar|jars|up|want|need|needs|
      has to|have to|needs to|need to|gets|goes)
    `,
  ],
  "finished-word": [
    `
      (done|finished|ready|out|over|through|finish|end|ends|come out|coming out|comes out|finishes|
      complete|take|pull|lift|due|up|finishing|stop|wrap up|get out|be able to)
    `,
  ],
  lengthen: [
    `
      (more|another|extra|add|tack|bump|extend|longer|lengthen|stretch|increase|push|additional|
      prolong|tag)
    `,
    "(bump|push|extend|stretch|lengthen) [<the>] {target:timer} [timer] [up|out|by|back]",
  ],
};
