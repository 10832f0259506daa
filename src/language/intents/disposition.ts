import type { MeaningOf } from "./meaning.ts";

/** What is done about a jar or a load. */
export const disposition: MeaningOf<"disposition"> = {
  cost: "changing",
  when: ["load:out", "asked:seals", "asked:disposition"],
  ofRecord: true,
  slots: { target: "name", what: "word", count: "count", jars: "numbers" },
  example: "put it in the fridge",
  unasked: true,
  wordings: [
    {
      set: { what: "refrigerate" },
      phrases: [
        `<am> (putting|sticking|placing|keeping|popping|moving|storing) <the-jars> (in|into) the
        (fridge|refrigerator|icebox|cold)`,
        "<am> (refrigerating|chilling) <the-jars>",
        `[<will>] (put|stick|place|move|pop|keep|throw|shove|set|get|chill|store|tuck|save)
        <the-jars> (in|into|to|inside) [the] (fridge|refrigerator|icebox|cooler|ice box|cold)`,
        "[<will>] (refrigerate|chill) <the-jars>",
        `<the-jars> (is|are|can|goes|go|should|will) [all] [going|go|be] [now] (in|into|to) the
        (fridge|refrigerator|icebox)`,
        "(fridge|refrigerator) [it|them|that one|for <the-jars>|for now]",
        "(refrigerate|in the fridge|into the fridge|to the fridge) [with] [it|them|<the-jars>]",
        "<will> eat <the-jars> (first|soon|this week|now|fresh|tonight)",
      ],
    },
    {
      set: { what: "freeze" },
      phrases: [
        "<am> (putting|sticking|popping|moving) <the-jars> (in|into) the (freezer|deep freeze)",
        "<am> freezing <the-jars>|[<will>] (freeze) <the-jars>",
        `[<will>] (put|stick|move|pop|throw|place|get) <the-jars> (in|into|to) the (freezer|deep
        freeze|deep freezer|chest freezer)`,
        `<the-jars> (is|are|can|goes|go|will) [all] [going|go] [now] (in|into|to) the
        (freezer|deep freeze)`,
        `(freeze|freezer|into the freezer|in the freezer|to the freezer) [it|them|for <the-jars>|
        for it|for them]`,
      ],
    },
    {
      set: { what: "reprocess" },
      phrases: [
        "<am> (reprocessing|processing) <the-jars> [again]",
        `<am> (running|putting|sending) <the-jars> (through again|back through|back in the
        canner|through the canner again|back in)`,
        "[<will>] put <the-jars> through (again|a second time|the canner again|once more)",
        `[<will>] (reprocess|re process|process|recan|re can) <the-jars> [again|over|over again|
        with new lids|with a new lid|today|all over]`,
        `[<will>] (run|put|send|do) <the-jars> (through again|through the canner again|back
        through|back through the canner|back in the canner|back in|over again|through once more|
        again in the canner|through a second time|back into the canner|in the canner again|
        over|again)`,
        "[<will>] reprocess|reprocessing [<the-jars>]",
        "(<the-jars>) (goes|go|is going|are going) back (in|into|through) the canner",
        `[<will>] (give|try) <the-jars> (another go|another run|again|a second go|a second run|
        another process|another turn) [in the canner|through the canner]`,
        `[<will>] (put|get) [a] new (lid|lids) on <the-jars> and (reprocess|process [it|them]
        again|run [it|them] again|run [it|them] through again|redo [it|them])`,
        "[<will>] redo <the-jars>",
      ],
    },
    {
      set: { what: "discard" },
      phrases: [
        `[<we>|i|i have|we have|had to] [just] (threw|tossed|chucked|pitched|dumped|binned|trashed)
        [out|away] {count} (jar|jars|pint|pints|quart|quarts) of [<the>] {target:open} [out|away]`,
        `[<we>|i|i have|we have|had to] [just] (threw|tossed|chucked|pitched|dumped|binned|trashed)
        [out|away] <numbered> [out|away|in the (trash|garbage|bin|compost)]`,
        `[<the>] <numbered> (is|are|was|went|has gone) [all|a bit|very|so] (cloudy|brown|murky|dark|
        soft|mushy|gray|pink|funny|odd|strange) [and|so] [<we>|i] [have] [just] (threw|tossed|
        chucked|pitched|dumped|binned|thrown) (it|them) [out|away]`,
        `<am> (throwing|tossing|chucking|pitching|dumping|putting) <the-jars-closed> (out|away|
        in the trash|in the garbage|in the bin|in the compost)`,
        `<am> (discarding|tossing|dumping|binning|trashing|chucking|throwing out|throwing away|
        getting rid of|pitching) <the-jars-closed>`,
        `[<will>] (throw|toss|chuck|pitch|fling|put|dump|tip|pour|get) <the-jars-closed> (out|
        away|in the trash|in the garbage|in the bin|in the compost|on the compost|down the
        drain|into the trash|in the rubbish|onto the compost)`,
        `[<will>] (discard|toss|dump|bin|trash|destroy|chuck|pitch|throw out|throw away|get rid
        of|toss out|dispose of|junk|chuck out|scrap) <the-jars-closed>`,
        `<the-jars-closed> (goes|go|has to go|have to go|is going|are going|should go) (out|in
        the trash|in the garbage|in the bin|to the compost|in the compost)`,
        "[<the-jars-closed> is] (discard|discarded|thrown out|trash|garbage)",
      ],
    },
    {
      set: { what: "undecided" },
      phrases: [
        `[<will>] (decide|figure it out|figure that out|think about it|think on it|worry about
        it|deal with it|deal with that|deal with them|see about that|sort it out|decide about
        it|decide on that|decide about that|sort that out) (later|later on|tomorrow|afterward|
        afterwards|in the morning|then)`,
        `[i|we] (have not|can not|do not|not) (decided|know|decide) [yet] [(about|on) (it|that|
        them|those|<the-jars-closed>)] [yet|now|right now]`,
        `(undecided|not sure yet|i am not sure yet|i do not know yet|i am undecided|ask me later|
        let me think about it|leave it undecided|not decided yet|no idea yet|we will see|i am
        still thinking|let me think|i need to think about it|i will think about it)`,
      ],
    },
    {
      set: { what: "carried-on" },
      phrases: [
        `[<will>] (carry on|go on|keep going|continue|leave it|go ahead|proceed|keep it|use it|
        accept it|let it go|press on) (anyway|as it is|as is|regardless|all the same|as they
        are|just the same|even so)`,
        `(carried on|we carried on|i carried on|kept going|i kept going|we kept going|went on
        anyway|it is fine as it is|we went on|leave it as it is|we are carrying on|leave it be|
        let it be)`,
      ],
    },
    {
      set: { what: "restarted" },
      phrases: [
        `[<will>] (start|begin|restart) (the time|the clock|the process|the timer|the processing|
        the processing time|timing|the whole time|it|it all|the count) (over|again|over again|
        from the beginning|from zero|from the top|from scratch|all over|all over again)`,
        "[<will>] restart [the] (time|clock|process|processing|processing time|timing|count)",
        "[<will>] (start|begin) over",
        `(restarted|i restarted it|we restarted|started over|we started over|i started the time
        over|restarting|starting over|starting the time over|i am starting over|we are starting
        over|restarted the time|i restarted the time|start from zero|back to zero)`,
      ],
    },
  ],
  spoken: [
    {
      set: { what: "refrigerate" },
      phrases: ["put (it|them) in the fridge", "refrigerate (it|them)", "in the fridge"],
    },
    { set: { what: "freeze" }, phrases: ["freeze (it|them)"] },
    { set: { what: "reprocess" }, phrases: ["reprocess (it|them)", "process (it|them) again"] },
    { set: { what: "discard" }, phrases: ["throw (it|them) out"] },
    { set: { what: "carried-on" }, phrases: ["carry on as it is"] },
  ],
  bags: [
    {
      set: { what: "refrigerate" },
      must: [
        "(in|into|to|inside|for) [the] (fridge|refrigerator|icebox|cooler)|refrigerate|chill",
        "<jar-meant>",
      ],
      may: "<doing-with>|put|stick|pop|set|keep|placing|moving|goes|go|move|throw|tuck|shove|the",
    },
    {
      set: { what: "freeze" },
      must: ["(in|into|to) [the] [deep] (freezer|freeze)|freeze|freezing", "<jar-meant>"],
      may: "<doing-with>|put|stick|pop|set|keep|placing|moving|goes|go|move|throw|the",
    },
    {
      set: { what: "reprocess" },
      must: [
        `reprocess|reprocessing|redo|(run|put|send|process|can|do) <jar-meant>|processing|[a] new
        (lid|lids)`,
        `reprocess|reprocessing|redo|again|over|back in|back through|back in the canner|through
        again|back into the canner`,
      ],
      may: `
        <doing-with>|<jar-meant>|through|the canner|in the canner|with|[a] new (lid|lids)|on|
        once more|into the canner|get|give|tomorrow|another run|another go
      `,
    },
    {
      set: { what: "discard" },
      must: [
        `(in|into|to) [the] (trash|garbage|bin|compost|rubbish)|out|away|discard|discarding|
        trash|dump|toss|chuck|ditch|throw out|pitch`,
        "<jar-meant>",
      ],
      may: `
        <doing-with>|throw|throwing|toss|tossing|chuck|chucking|put|goes|go|going|pitch|the|
        gets
      `,
    },
  ],
  lists: {
    "jar-meant": `
      (it|them|that|those|these|this|that one|this one|those ones|these ones|both|both of them|
      both of those|all of them|the lot|them both|them all|the rest|the jar|that jar|the jars|
      those jars|these jars|this jar|the other one|the others|the odd one|the extra|those two|
      these two)|
      <numbered>|
      the (failed|bad|unsealed|loose|broken|last|short|odd|extra) (one|ones|jar|jars)|
      {count} [<of-them>|jars|jar|pints|quarts|pint|quart]
    `,
    "doing-with": `
      (i|we|am|are|is|will|would|can|let us|going|to|just|should|have|has|be|had better|better|
      i think|guess|in|with|for|on|now|then|and|straight|right|get|so|out|one|ones|jar|jars|up|
      want|need|needs|has to|have to|needs to|need to|gets|goes)
    `,
    will: `
      i will|we will|let us|i am going to|we are going to|i would|we can|just|i want to|we want
      to|i would like to|i think i will|go ahead and|i guess i will|we should|i should|i had
      better|we had better|i have to|we have to|better|might as well|i might as well|let me|i
      plan to|i can|i am
    `,
    "the-jars": `
      <the-jars-closed>|what is left|the extra|the extra jar|the leftover|the odd jar|[the]
      [jar|jars|number|numbers] {jars}|my <numbered>|[<the>] {target}
    `,
    "the-jars-closed": `
      {count=1} (the|that) (one|other|other one|odd one)|
      (those|these|the) [other|last] {count} [jars|pints|quarts|ones]|
      it|them|that|those|these|this|<numbered>|{count} [<of-them>|jars|jar|pints|quarts]|
      [the|that|those|these|this] (jar|jars|pint|pints|quart|quarts|one|ones)|
      the (failed|bad|unsealed|loose|other|broken|last|soft) (jar|jars|one|ones|lid|lids)|
      all of them|them all|
      all [of] [the|my|our|these|those] (jars|pints|quarts)|both (jars|lids|pints|quarts|ones)|
      both of (those|these|the jars|those jars)|each of (them|those)|the (two|three|pair) of them|
      (whichever|any|the ones|the one|all|the jars|the jar) that (failed|did not seal|did not
      take)|
      both|both of them|the rest|the lot|them both|[jar|jars|number|numbers] {jars}|what is in
      (it|them|that jar|those jars|the jar)
    `,
    am: "i am|we are|i am going to be",
  },
};
