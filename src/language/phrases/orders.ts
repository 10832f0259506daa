// data table
import type { Family } from "./family.ts";

/** Orders to the program: batches, timers, reminders, notes, corrections, speaking and silence. */
export const ORDERS: readonly Family[] = [
  {
    intent: "begin",
    phrases: [
      `
        (time for|it is time for|up for|ready for|on to|we are on to|i am ready for|we are ready
        for|moving on to|let us move on to|now for|and now for) {lot}
      `,
      `
        [<let>|i am|we are] [start|begin|get going on|going to] (pickle|pickling) [some|the|our|my|
        a batch of|those|these|up] {recipe=pickled-beets} beets
      `,
      `
        [<let>] (dill|pickle) [some|the|our|my|a batch of|those|these] {recipe=dilled-green-beans}
        [green|dilly] beans
      `,
      `
        [<let>] {recipe=sauerkraut} (make|turn) [the|some|this|that|our] cabbage into (kraut|
        sauerkraut)
      `,
      `
        [<let>] (pressure can|pressure cook) [some|the|our|my] {recipe=snap-beans} [green|snap|
        string] beans
      `,
      `
        {lot} [<let>] (start|begin|go|to start|to begin|start up|get going|get started) [on|with]
        [it|them|that|those|these|that one|on it|on them|now]
      `,
      `
        {lot} [<let>] (do|make|can|put up|get|run|have|save|pickle|put by|start|begin) (it|that|
        them|those|these|that one|some|a batch|one) [going|started|up|of (them|it|those)]
      `,
      `
        (i have|i have got|we have|we have got|here are|there are|got|here is|there is) {lot} (to
        do|to can|to put up|to make|to pickle|to start|ready to start|ready|here|to get through)
        [so] <let> (start|begin|go|get going|get started|do it|do them|can them|make it|start
        those|start them)
      `,
      "(how about|let us have) {lot} (next|now|today|then|this time)",
      `
        [(<got>|here is|here are|with|i am using|we are using|let us use|let us take|take|use|for)]
        [about|all|roughly] [<the>|some] {produce} [here|ready|to use|to put up|to do|to can|picked|
        washed] [so|and|now|then] [<let>] (<start>|make|turn them into|turn it into|make them into|
        make it into) [on] {lot}
      `,
      "[<let>] (put|get) {lot} (up|by) [now|today]",
      "[<let>] (turn|make|put|use) [about] [<the>|some] {produce} (into|for|to make|as) {lot}",
      `
        (<got>|here is|here are) [about] {produce} (for|to make|to make into|to turn into|to go into|
        to put up as) {lot} [[so] <let> (start|begin|go|get going|get started)]
      `,
      "<let> start {lot}",
      "[<let>] <start> [up|in on|making|with|on|off] {lot}",
      "[<we>|i] [am|are|will be|would be] [now|just] <starting> {lot}",
      `
        [<let>] (start|begin|open|set up|create|run) [a|another|one|the first|a new|the next]
        (batch|lot|round|run|session) [of|with|for] {lot}
      `,
      "new batch [of] {lot}",
      `
        (today it is|next up is|next up|first up|first up is|today we are doing|today is|on today
        is|first batch is|up first|next batch is|up next) {lot}
      `,
      `
        (i have|i have got|we have|we have got|here are|there are|got) {lot} (to do|to can|to put
        up|to make|to pickle|to start|ready to start)
      `,
      "{lot} (is|are) (next|first|starting|up next|going in next)",
      `
        [<let>] (have a go at|get|put on|put together|throw together|get cracking on|crack on
        with|get a batch of|get going making|get stuck into|go ahead with|bring on) {lot} [going|
        started|on|under way|underway|on the go]
      `,
      "[<let>|i am|we are] (go|going) (with|for) {lot}",
      "i (am|will be) (here to|ready to) (make|can|do|start|put up) {lot}",
      "(i want|i would like|we want|give me) {lot} [today|started|going]",
    ],
  },
  {
    intent: "hold",
    phrases: [
      `
        [<let>] (wait|hold|hold on|hold up|hang on|hang tight|hold everything|hold it|hold it
        there|pause|stand by|stop|stop there|hold off|hold that thought|pause it|pause that|wait
        up|halt|hold your horses|freeze everything|pause everything|pause here|pause there|stop
        for now|hold for now|time out|wait there|whoa|sit tight|stop right there|put it on hold|
        put everything on hold|put that on hold|stop everything|stay there|bear with me)
        [<a-moment>|for now|there|on|up|right there|everything]
      `,
      "<a-moment>",
      "(hold|hold on|hold it|hang on|wait|stop|stop there|<a-moment>) <quiet-reason>",
      "<quiet-reason> [so] (hold|hold on|hold it|hang on|wait|stop there|<a-moment>)",
      "[<let>] (give|allow) me <a-moment>",
      `
        (i need|need|i will need|we need|just need) [to take] (<a-moment>|a break|to stop|to step
        away|a pause|a breather|to pause|to step out|to stop for a bit|to step away for a minute|
        to take a break|to step away <a-moment>|to step out <a-moment>|to stop <a-moment>|to pause
        <a-moment>|to go|to get the door|to answer the phone|to answer the door|to catch up|to sit
        down|to rest|a rest) [<a-moment>]
      `,
      `
        [<let>] (take|have|i am taking|we are taking|i will take) a (break|breather|pause|rest|
        short break|little break|quick break) [here|for now|now|<a-moment>]
      `,
      `
        [<let>] (pause|hold|stop|suspend|put off) [<the>] {target} [<a-moment>|for now|there|for a
        while]
      `,
      "[<let>] (pause|hold|suspend) the (process|processing|clock|clocks|time) [<a-moment>|for now]",
      "[<let>] (put|leave) [<the>] {target} on hold [<a-moment>|for now]",
      "[<let>] (leave|park) [<the>] {target} for (now|a bit|a while|a minute|the moment)",
      `
        (i will|i have to|i am going to|let me) (step away|step out|be right back|be back|go get
        the door|go answer the door|get the phone|get the door|answer the phone|answer the door)
        [<a-moment>|now]
      `,
      `
        (be right back|back in <a-moment>|not just yet|i am not ready|i am not ready yet|not
        ready|not ready yet|we are not ready|we are not ready yet|i will be right back|stepping
        away|stepping out|stepping away <a-moment>|brb)
      `,
      "[<let>] hold off [on] [<the>] [{target}] [<a-moment>|for now]",
    ],
  },
  {
    intent: "resume",
    phrases: [
      `
        [<let>] (resume|continue|carry on|go on|keep going|proceed|get going again|get going|get
        back to it|get on with it|keep on|pick up where we left off|pick it back up|press on|go
        again|start again|start up again|unpause|restart the prompts|back to work|get back to
        work|go back to work|keep at it|get moving|get moving again|move along|push on|get rolling
        again|pick it up again|carry on where we left off|go on from there|get back at it|go ahead
        and continue|continue on|continue where we left off|take up where we left off|go on with
        it|go back to it|get on) [with it|now|again|then|from here|from there|with everything|
        where we left off|with that]
      `,
      `
        [<let>] (resume|continue|continue with|carry on with|go on with|keep going with|keep going
        on|unpause|pick up|take up|get on with|get back to work on|restart|go ahead with|press on
        with|proceed with|take off hold|pick up with) [<the>] {target} [again|now]
      `,
      `
        [<let>] (get going|get started|start|go|get on|get moving) [with|on] [<the>] {target}
        again
      `,
      "[<let>] (pick|take|start|get) [<the>] {target} (back up|up again|going again) [now]",
      "[<let>] (take|get) [<the>] {target} off hold",
      "[<let>] take (it|that|everything) off hold",
      `
        (i am|we are|i have come|all right i am|okay i am) (back|back now|ready again|back at it|
        here again|ready to go on|ready to continue|ready to carry on|ready to resume|back again|
        back in the kitchen|ready to go again|ready to keep going)
      `,
      `
        (back to it|back to work|break is over|break over|off we go|off we go again|on we go|
        onward|let us roll|ready to go on|ready again|ready to continue|back now|let us go|let us
        go on then|back at it|okay go|end of break|go on then|pause over)
      `,
    ],
  },
  {
    intent: "abandon",
    phrases: [
      `
        [<let>] (stop|end|quit|finish) [<the>|this] ({target}|batch|it) (for good|altogether|
        entirely|completely)
      `,
      `
        [<let>] (call|cancel) (the whole thing|the batch|this batch|the whole batch|everything|
        {target}|the whole lot) off
      `,
      "[<let>] call (this|the|that) [whole] (batch|lot|thing) off [<why-abandon>]",
      "[<let>] call off (the whole thing|everything|the batch|this batch)",
      `
        [<let>] (toss|abandon|scrap|dump|throw out|throw away|give up on|ditch|give up|kill|drop|
        cancel|chuck|quit|call off|stop|bin|end|trash|discard|pitch|forget|forget about|get rid
        of|write off|scratch|bail on|bail out of|do away with|pull the plug on|junk|throw in the
        towel on) (<the>|this|that|the whole|this whole|that whole|the entire|the rest of the|the
        rest of this) (batch|lot|run|recipe|whole batch|session|thing|whole thing|whole lot|
        project) [out|away|off|altogether|entirely|for good|of {target}]
      `,
      `
        [<let>] (abandon|scrap|give up on|ditch|call off|give up|write off|throw out the batch of|
        forget|pull the plug on|forget about|stop making|dump|junk|throw out|bail on|toss out|
        trash|toss|chuck|do away with|cancel|quit|end) [<the>] {target} [batch|for good|
        altogether|entirely|out|off]
        [<why-abandon>]
      `,
      "[<let>] (abandon|scrap|call off|cancel|toss) [<the>] (batch|lot|load) [of] {target}",
      `
        [<let>] (abandon|scrap|call|throw) (it|this|this one|that|that one|everything) (off|
        altogether|for good|entirely|all)
      `,
      `
        [<let>] (abandon|scrap|call off|give up on|ditch|give up) (it|this|this one|that|that one|
        everything|it all) [<why-abandon>]
      `,
      "[<let>] (forget|drop) the whole (thing|batch)",
      `
        [<the>] {target} (is|are) [all|just] (ruined|spoiled|burnt|burned|scorched|no good|moldy|
        mush) (ditch|scrap|abandon|dump|forget) (it|them|the batch|that batch|the lot|the whole
        batch)
      `,
      `
        (i|we) (give up|quit|am giving up|are giving up|am giving up on {target}|am abandoning
        {target}|am giving up on this batch|am giving up on it|am scrapping it|am scrapping this
        batch|am calling it off)
      `,
      `
        (i am|we are) (giving up on|abandoning|scrapping|ditching|tossing|dumping|calling off|
        quitting|junking|chucking|pitching|writing off|bailing on) [<the>|this] (batch|{target}|
        whole batch|lot|whole thing) [batch|out]
      `,
      `
        (i am|we are) (giving up on|abandoning|scrapping|ditching|calling off|quitting|bailing on|
        calling) (it|this|this one|that one|everything|the whole thing) [off]
      `,
      "[<let>] (throw|toss|chuck|pitch|dump) [<the>|this|this whole|the whole] batch [out|away]",
      "[<let>] (throw|toss|chuck) [<the>] {target} batch [out|away]",
      "[<the>] {target} (is|are) a (write off|loss|lost cause|goner)",
      "this batch is (ruined|a loss|a write off|no good|done for|a goner|a lost cause)",
      "(toss|throw|chuck|pitch|dump) the whole (batch|lot) [out|away]",
      "we are not (doing|making|finishing|going to finish) [<the>] {target} [after all|any more]",
    ],
  },
  {
    intent: "focus",
    phrases: [
      "[<let>] (take|bring|get|put) (me|us) [back|over] to [<the>] {target} [now]",
      "[<let>] (work on|do some work on|get to work on|tackle) [<the>] {target} [now|next]",
      "(show me|switch to|go to|pull up|bring up|focus on|open) [<the>] {target:open} (batch|lot)",
      "[<the>] {target} let us (look at|do|work on|talk about|get to) (those|that|them|it|this) [now]",
      `
        [<let>] (go|switch|move|turn|jump|go on|go over|go back|get back|come back|change|hop|
        skip|switch over|switch back|move over|head|return|flip|shift|back|swap|go now|turn back|
        cut) [over|back|on] (to|to the) [<the>] {target} [now|please|for a minute|for a bit|batch]
      `,
      `
        [<let>] (talk about|focus on|look at|concentrate on|see to|show me|pull up|bring up|show|
        deal with|see about|attend to|tend to|turn our attention to|turn to|think about|check on|
        see|check in on|have a look at|take a look at|pay attention to|get back on) [<the>]
        {target} [now|next|for a minute|for a bit]
      `,
      "(back|over|on|now|and now|now back|now over) (to|for|on to) [<the>] {target} [now]",
      "(now|next|and now) [<the>] {target}",
      "what about [<the>] {target}",
      `
        (this is|i am talking about|i mean|i meant|this is about|i am on|we are on|i am working
        on|we are working on|i am with|speaking of|regarding|as for|i am at|it is about|about)
        [<the>] {target} [now]
      `,
      "[<the>] {target}",
      "[<the>] {target} [now|next|please]",
    ],
  },
  {
    intent: "disposition",
    set: { what: "refrigerate" },
    phrases: [
      `
        <am> (putting|sticking|placing|keeping|popping|moving|storing) <the-jars> (in|into) the
        (fridge|refrigerator|icebox|cold)
      `,
      "<am> (refrigerating|chilling) <the-jars>",
      `
        [<will>] (put|stick|place|move|pop|keep|throw|shove|set|get|chill|store|tuck|save)
        <the-jars> (in|into|to|inside) [the] (fridge|refrigerator|icebox|cooler|ice box|cold)
      `,
      "[<will>] (refrigerate|chill) <the-jars>",
      `
        <the-jars> (is|are|can|goes|go|should|will) [going|go|all go|be] (in|into|to) the (fridge|
        refrigerator|icebox)
      `,
      "(fridge|refrigerator) [it|them|that one|for <the-jars>|for now]",
      "(refrigerate|in the fridge|into the fridge|to the fridge) [with] [it|them|<the-jars>]",
      "<will> eat <the-jars> (first|soon|this week|now|fresh|tonight)",
    ],
  },
  {
    intent: "disposition",
    set: { what: "freeze" },
    phrases: [
      "<am> (putting|sticking|popping|moving) <the-jars> (in|into) the (freezer|deep freeze)",
      "<am> freezing <the-jars>",
      "[<will>] (freeze) <the-jars>",
      `
        [<will>] (put|stick|move|pop|throw|place|get) <the-jars> (in|into|to) the (freezer|deep
        freeze|deep freezer|chest freezer)
      `,
      "<the-jars> (is|are|can|goes|go|will) [going|go] (in|into|to) the (freezer|deep freeze)",
      `
        (freeze|freezer|into the freezer|in the freezer|to the freezer) [it|them|for <the-jars>|
        for it|for them]
      `,
    ],
  },
  {
    intent: "disposition",
    set: { what: "reprocess" },
    phrases: [
      "<am> (reprocessing|processing) <the-jars> [again]",
      `
        <am> (running|putting|sending) <the-jars> (through again|back through|back in the canner|
        through the canner again|back in)
      `,
      "[<will>] put <the-jars> through (again|a second time|the canner again|once more)",
      `
        [<will>] (reprocess|re process|process|recan|re can) <the-jars> [again|over|over again|
        with new lids|with a new lid|today|all over]
      `,
      `
        [<will>] (run|put|send|do) <the-jars> (through again|through the canner again|back
        through|back through the canner|back in the canner|back in|over again|through once more|
        again in the canner|through a second time|back into the canner|in the canner again|over|
        again)
      `,
      "[<will>] reprocess",
      "reprocessing [<the-jars>]",
      "(<the-jars>) (goes|go|is going|are going) back (in|into|through) the canner",
      `
        [<will>] (give|try) <the-jars> (another go|another run|again|a second go|a second run|
        another process|another turn) [in the canner|through the canner]
      `,
      "<will> reprocess <the-jars>",
      `
        [<will>] (put|get) [a] new (lid|lids) on <the-jars> and (reprocess|process [it|them]
        again|run [it|them] again|run [it|them] through again|redo [it|them])
      `,
      "[<will>] redo <the-jars>",
    ],
  },
  {
    intent: "disposition",
    set: { what: "discard" },
    phrases: [
      `
        <am> (throwing|tossing|chucking|pitching|dumping|putting) <the-jars-closed> (out|away|in
        the trash|in the garbage|in the bin|in the compost)
      `,
      `
        <am> (discarding|tossing|dumping|binning|trashing|chucking|throwing out|throwing away|
        getting rid of|pitching) <the-jars-closed>
      `,
      `
        [<will>] (throw|toss|chuck|pitch|fling|put|dump|tip|pour|get) <the-jars-closed> (out|away|
        in the trash|in the garbage|in the bin|in the compost|on the compost|down the drain|into
        the trash|in the rubbish|onto the compost)
      `,
      `
        [<will>] (discard|toss|dump|bin|trash|destroy|chuck|pitch|throw out|throw away|get rid of|
        toss out|dispose of|junk|chuck out|scrap) <the-jars-closed>
      `,
      `
        <the-jars-closed> (goes|go|has to go|have to go|is going|are going|should go) (out|
        in the trash|in the garbage|in the bin|to the compost|in the compost)
      `,
      "[<the-jars-closed> is] (discard|discarded|thrown out|trash|garbage)",
    ],
  },
  {
    intent: "disposition",
    set: { what: "undecided" },
    phrases: [
      `
        [<will>] (decide|figure it out|figure that out|think about it|think on it|worry about it|
        deal with it|deal with that|deal with them|see about that|sort it out|decide about it|
        decide on that|decide about that|sort that out) (later|later on|tomorrow|afterward|
        afterwards|in the morning|then)
      `,
      `
        [i|we] (have not|can not|do not|not) (decided|know|decide) [yet] [(about|on) (it|that|
        them|those|<the-jars-closed>)] [yet|now|right now]
      `,
      `
        (undecided|not sure yet|i am not sure yet|i do not know yet|i am undecided|ask me later|
        let me think about it|leave it undecided|not decided yet|no idea yet|we will see|i am
        still thinking|let me think|i need to think about it|i will think about it)
      `,
    ],
  },
  {
    intent: "disposition",
    set: { what: "carried-on" },
    phrases: [
      `
        [<will>] (carry on|go on|keep going|continue|leave it|go ahead|proceed|keep it|use it|
        accept it|let it go|press on) (anyway|as it is|as is|regardless|all the same|as they are|
        just the same|even so)
      `,
      `
        (carried on|we carried on|i carried on|kept going|i kept going|we kept going|went on
        anyway|it is fine as it is|we went on|leave it as it is|we are carrying on|leave it be|let
        it be)
      `,
    ],
  },
  {
    intent: "disposition",
    set: { what: "restarted" },
    phrases: [
      `
        [<will>] (start|begin|restart) (the time|the clock|the process|the timer|the processing|
        the processing time|timing|the whole time|it|it all|the count) (over|again|over again|from
        the beginning|from zero|from the top|from scratch|all over|all over again)
      `,
      "[<will>] restart [the] (time|clock|process|processing|processing time|timing|count)",
      "[<will>] (start|begin) over",
      `
        (restarted|i restarted it|we restarted|started over|we started over|i started the time
        over|restarting|starting over|starting the time over|i am starting over|we are starting
        over|restarted the time|i restarted the time|start from zero|back to zero)
      `,
    ],
  },
  {
    intent: "timer-set",
    phrases: [
      "[<want>] time (me|us|it|this|that|them) [for] {minutes:duration}",
      `
        [<want>] <set-timer> [a|the|another|my|an|a new] timer <timer-for> [<the>] {label:thing}
        {minutes:duration}
      `,
      "[<want>] (set|start|run|do) {minutes:duration} (for|on) [<the>] {label:thing}",
      "[<want>] (set|put) [<the>] {label:thing} (for|at|on) {minutes:duration}",
      "[<want>] (put|set) (me) (down|up) for {minutes:duration} [<timer-for> {label:thing}]",
      "[a|another|new] timer {minutes:duration} {label:thing}",
      "[a|another|new] timer {label:thing} {minutes:duration}",
      `
        [<want>] <set-timer> [a|the|another|my|an|a new|us a|me a] timer (for|of|at|on|to)
        {minutes:duration} [<timer-for> {label:thing}]
      `,
      `
        [<want>] <set-timer> [a|the|another|my|an|a new] timer <timer-for> [<the>] {label:thing}
        (for|of|at|to) {minutes:duration}
      `,
      `
        [<want>] <set-timer> [a|another|an|the|my|a new] {minutes:duration} timer [<timer-for>
        {label:thing}]
      `,
      "[<want>] <set-timer> [a|another|an|the|my|a new] {minutes:duration} {label:thing} timer",
      `
        [<want>] <set-timer> [a|another|an|the|my|a new] {label:thing} timer (for|of|at|to)
        {minutes:duration}
      `,
      "[<want>] <set-timer> [a|the] timer {minutes:duration} [<timer-for> {label:thing}]",
      "[<want>] <set-timer> [a|the] {label:thing} timer {minutes:duration}",
      "[a|another|new] timer [for|of|on] {minutes:duration} [<timer-for> {label:thing}]",
      "[a|another|new] timer <timer-for> [<the>] {label:thing} [for|of|at] {minutes:duration}",
      "[a|an|another|the|new] {minutes:duration} timer [<timer-for> {label:thing}]",
      "[a] {minutes:duration} {label:thing} timer",
      "[a|the|new] {label:thing} timer [for|of|at|to|is] {minutes:duration}",
      "[<want>] time [<the>] {label:thing} for {minutes:duration}",
      "[<want>] time {minutes:duration} [<timer-for> {label:thing}]",
      "(give|allow) (me|us|the|<the>) {minutes:duration} [<timer-for> {label:thing}]",
      "(give|allow) [<the>] {label:thing} {minutes:duration}",
      `
        [<want>] (ding|ring|beep|wake|call|buzz|alert|holler at|tell|shout at|nudge|ping|poke|yell
        at|warn|chime|sound|notify|give me a shout|give me a holler|sing out|let me know|call out|
        call me|shout|yell|speak up) [me|us|a bell|the bell|an alarm] (in|after)
        {minutes:duration} [<timer-for> {label:thing}]
      `,
      `
        [<want>] (count|count down|countdown|start a countdown of|start counting|do a countdown
        of|start a countdown for|begin a countdown of|run a countdown of) [down|off|me down] [for|
        from] {minutes:duration} [<timer-for> {label:thing}]
      `,
      "[<want>] (set|put) [an|the] alarm (for|in) {minutes:duration} [<timer-for> {label:thing}]",
      "{minutes:duration} (for|on) {label:thing}",
      "{minutes:duration} on the (clock|timer) [<timer-for> {label:thing}]",
      `
        [<want>] (give|set|put|get|start|throw|i need|need) [me|us] {minutes:duration} (on|in) (a|
        the|my|another) (timer|clock|countdown) [<timer-for> {label:thing}]
      `,
      `
        [<want>] (put|set) {minutes:duration} on [<the>] [{label:thing}|a timer|the timer|the
        clock|a clock|timer|clock] [timer] [<timer-for> {label:thing}]
      `,
      "{label:thing} {minutes:duration} timer",
      "[<want>] (set|start|put) {minutes:duration} [<timer-for> {label:thing}]",
      `
        [<want>] (start|begin) (timing|a timer) [for] {minutes:duration} [<timer-for>
        {label:thing}]
      `,
      "[<want>] (keep|keep an eye on the) time for {minutes:duration} [<timer-for> {label:thing}]",
      "[<want>] keep track of {minutes:duration} [<timer-for> {label:thing}]",
      "countdown {minutes:duration}",
    ],
  },
  {
    intent: "timer-add",
    phrases: [
      `
        [<want>] (put|stick|throw|give|set|slap|pop|chuck) [on] (another|an extra|an additional|a
        further) {minutes:length} [more|extra|longer|additional] [on|onto|to|for|on to] [<the>]
        {target:timer} [timer]
      `,
      "{minutes:length} [more|extra] (on|to|onto|for) the (timer|clock)",
      "another {minutes:more} (on|to|onto|for) [<the>] {target:timer} [timer]",
      `
        (i|we) (need|want|could use|will need) [another] ({minutes:length} (more|extra|longer)|
        {minutes:more}) (on|for|onto) (the (timer|clock)|(that|this) (timer|one|clock)|[<the>]
        {target:timer} [timer])
      `,
      `
        [another|an extra|an additional] {minutes:length} [more|extra] (on|to|onto) the (timer|
        clock)
      `,
      `
        [<want>] (put|add|stick|throw) [on] [another|an extra|an additional] {minutes:length}
        [more|extra] (on|to|onto) the (timer|clock)
      `,
      `
        [<want>] (add|tack|bump|tag) [on] [another|an extra|an additional|a further]
        {minutes:length} [more|extra|longer|additional] [on|onto|to|for|on to] [<the>]
        {target:timer} [timer]
      `,
      `
        [<want>] (put|add|stick|throw|tack|set|slap|tag|pop) [on] [another|an extra|an additional|
        a further] {minutes:more} [more|extra] (on|onto|to|for|on to) [<the>] {target:timer}
        [timer]
      `,
      `
        [<want>] (put|add|stick|throw|tack|give it|give me|give that|give them|give us|set) [on]
        [another|an extra|an additional|a further] {minutes:more} [more|extra|longer] [on|to] [it|
        that|the timer|the clock|this]
      `,
      `
        [<want>] add [an extra|another] {minutes:length} [more|extra] [to (it|that|the timer|the
        clock|this one|this)|on to it|on]
      `,
      `
        [<want>] give [<the>] {target:timer} [timer] (another|an extra|an additional|a further)
        {minutes:length} [more|longer|extra]
      `,
      "[<want>] give [<the>] {target:timer} [timer] {minutes:more} [more|longer|extra]",
      "[<want>] give (it|that|this|them) (another|an extra) {minutes:length} [more|longer]",
      `
        [an extra|another|a further] {minutes:more} [more|extra|longer] [on|for|to] [[<the>]
        {target:timer}] [timer]
      `,
      `
        (another|an extra|a further|an additional|extra) {minutes:length} [more] [(on|for|to)
        [<the>] ({target:timer}|timer)] [timer]
      `,
      "[<the>] {target:timer} [timer] needs (another|an extra) {minutes:length} [more|longer]",
      "[<the>] {target:timer} [timer] needs {minutes:more} [more|longer]",
      `
        (it|that|they|i|we) (needs|need|wants|want) (another|an extra) {minutes:length} [more|
        longer]
      `,
      "(it|that|they|i|we) (needs|need|wants|want) {minutes:more} [more|longer]",
      `
        [<want>] (extend|lengthen|increase|bump|prolong|stretch|push|push back|bump up|push out)
        [<the>] [{target:timer}] [timer] (by|for|another|an extra) [another|an extra]
        {minutes:length} [more]
      `,
      "[<want>] (extend|lengthen|bump) (it|that) (by|for|another) [another] {minutes:length}",
      "[<want>] make [<the>] [{target:timer}] [timer] {minutes:length} longer",
      `
        [<want>] (leave|let) [<the>] {target:timer} (go|run|cook|for|on|in) [for|on|another]
        [another] {minutes:more} [longer|more]
      `,
      `
        [<want>] (let|leave|run) [<the>] {target:timer} [go|run|timer] [for] (another|an extra)
        {minutes:length}
      `,
      `
        [<want>] (let|leave) (it|that|them) [go|run|cook|have] [for] (another|an extra)
        {minutes:length}
      `,
      "{minutes:length} (more|longer|extra) [(on|for|to) [<the>] ({target:timer}|timer)] [timer]",
    ],
  },
  {
    intent: "timer-cancel",
    phrases: [
      "[<want>] (kill|cancel|stop|delete|clear|drop|end) [<the>] {target:known-timer}",
      "(i am|we are) done with [<the>] [{target:timer}] timer",
      "[<the>] {target:timer} timer is (done with|no longer needed|not needed)",
      "(stop|quit|no more) timing [<the>] {target:timer}",
      "(stop|quit) timing",
      `
        [<want>] <kill> [<the>|that|this] timer [now|off|please] [<timer-for> [<the>]
        {target:timer}]
      `,
      "[<want>] <kill> [<the>|that] {target:timer} (timer|countdown|alarm) [off]",
      "[<want>] (turn|shut|switch|call|take) [<the>|that] [{target:timer}] timer off",
      `
        [<want>] (kill|cancel|delete|clear|stop) [<the>] (timer|countdown|alarm|clock) (for|on|
        named|called) [<the>] {target:timer}
      `,
      "[<want>] <kill> [<the>|all the|all|all of the] (timers|timer|countdown|countdowns)",
      "[i|we] (do not|no longer) need [<the>] [{target:timer}] timer [any more|any longer|now]",
      "no [more] (need for) [<the>] [{target:timer}] timer",
      "never mind [about] [<the>] [{target:timer}] timer",
      `
        [<the>] [{target:timer}] timer (can go|is not needed|off|is off|is not needed any more|can
        stop)
      `,
      "no more [{target:timer}] timer",
      "[<the>] {target:timer} timer cancel",
    ],
  },
  {
    intent: "remind",
    phrases: [
      "[<want>] <remind-me> {when:future} <remind-to> {text}",
      "[<want>] <remind-me> [<remind-to>] {text} {when:future}",
      "[<want>] <remind-me> <remind-to> {text}",
      "[<want>] <remind-me> {when:future} [that] {text}",
      "{when:future} <remind-me> <remind-to> {text}",
      `
        [<want>] (set|make|add|put in|create|leave) [me] (a|another) reminder [for] {when:future}
        <remind-to> {text}
      `,
      `
        [<want>] (set|make|add|put in|create|leave) [me] (a|another) reminder <remind-to> {text}
        {when:future}
      `,
      "[<want>] (set|make|add|put in|create) [me] (a|another) reminder <remind-to> {text}",
      "reminder [for] {when:future} [<remind-to>] {text}",
      "reminder [<remind-to>] {text} {when:future}",
      "do not let me forget [to|that|about] {text} {when:future}",
      "do not let me forget {when:future} [to|that] {text}",
      "do not let me forget [to|that|about] {text}",
    ],
  },
  {
    intent: "note",
    phrases: [
      `
        [<want>] (put in|put|stick in|make|leave|write|jot|type in|keep|take down) [me] a (note|
        line|record|memo) [in (the log|the book|the record|there|here)] [that|saying|saying that|
        of|about|to say|to say that] {text}
      `,
      `
        [<want>] (note|make a note|take a note|jot down|write down|record|log|put down|jot|note
        down|put a note|add a note|leave a note|make note|take note|mark down|scribble down|get
        this down|take this down|put in the log|write in the log|put in the notes|add to the log|
        put it down|write it down|put on record|set down|put it in the log|write it in the log|
        note for the log|note for the record|put on the record|note in the log|keep a note|keep a
        record|note to the log|new note|add to the notes|write this down|jot this down|note this|
        log this|log a note|note this down|record this|record a note|make a record|add note|batch
        note|put this in the log|enter in the log|enter a note|make a note in the log|make a note
        for next time|add a note to the log|make a note of this|take a memo|memo|just a note|let
        the record show|let the log show|please note) [that|saying|saying that|of the fact that|
        down that|to say|to say that|says|which says|for next time|here that|of how|in the log
        that|for the record|for the log] {text}
      `,
      `
        (note to self|for the record|for the log|for the notes|side note|for my notes|for our
        notes|for next time|just so it is written down|on the record) {text}
      `,
      "note {text}",
    ],
  },
  {
    intent: "note",
    phrases: ["{text:pinged}"],
  },
  {
    intent: "correct-time",
    phrases: [
      `
        [<no>] (that|it|this) (was|happened|started|began|should be|should have been|should read|
        really was|was actually|was really|must have been|would have been|ought to be|really
        happened|actually happened|really started|actually started|was more like|was about|were)
        [really|actually|in fact|more like|about|around|closer to|back] [at|since] [about]
        {at:moment} [already|not now|in fact|actually]
      `,
      "[<no>] (make|call|set|change) (that|it|the time) [to|at|really] {at:moment} [not now]",
      `
        [<no>] (i mean|i meant|i meant to say|make that|rather|correction|sorry|or rather)
        {at:moment}
      `,
      `
        [<no>] (i|we) (put|got|took|started|lit|did|noticed|saw|opened|closed|loaded|turned|said|
        meant|added|filled|finished|should have said|forgot to say that was|forgot to say it was|
        set) (them|it|that|those|this|these) [in|out|up|on|off|down|going|over] [already|actually|
        really|at|back|more like] {at:moment} [already]
      `,
      `
        [<no>] (i|we) (actually|really) (put|got|took|started|lit|did|noticed|saw|opened|closed|
        loaded|turned|filled|finished|set) (them|it|that|those|this|these) [in|out|up|on|off|down|
        going] [already|at|back] {at:moment}
      `,
      `
        (they|those|these|it) (went|came|got|were|was) [in|out|on|off] [already|actually|really|
        at] {at:moment}
      `,
      `
        (that|it|this) (actually|really) (was|happened|started|began|went in|came out) [at|about|
        more like|around] {at:moment}
      `,
      `
        [<no>] (i|we) (was|were|am|are) late (saying|telling you|reporting) (that|it|so) [it|that]
        [was] {at:moment}
      `,
      `
        (fix|correct|change|adjust|move|amend) (that|the|that to|it|it to|the time on that) [time|
        start] [to|of that to|back to] {at:moment}
      `,
      "(correct|fix|change|set) the (time|start|start time) [of that] to {at:moment}",
      "correction [that|it] was {at:moment}",
      "<no> {at:moment}",
      "[<no>] not now {at:moment}",
      `
        [<no>] it (has been|has already been|is already|is) {at:lasting} [already|now|since that|
        since then]
      `,
      "(that|it|this) (was|happened) {at:lasting} (before|earlier|sooner|ago)",
      `
        (i should have (told you|said|mentioned)|i forgot to (tell you|say|mention)|i never (told
        you|said)|i meant to (tell you|say)) [that] (that|it|this) (was|happened|started|began)
        [at|about|around|back at] {at:moment}
      `,
      "{at:ago}",
    ],
  },
  {
    intent: "hush",
    phrases: [
      "[<want>] <stop-talking> [up|now|down|please] [for] {minutes:duration}",
      `
        [<want>] <stop-talking> [now|a while|for a while|for now|for a bit|for a minute|already|a
        bit|over there|there|will you|would you|a moment|for a moment|for the moment|a little
        while|for a little while]
      `,
      "[<want>] (leave|let) me (alone|be) for {minutes:duration}",
      `
        [<want>] (leave me alone|let me be|no more noise|turn the noise off|turn off the alarm|
        stop that noise|stop that racket|stop the noise|silence the alarm|stop ringing|stop the
        alarm|stop the bell|mute the alarm|quit ringing|turn that alarm off|quit beeping|quit
        that|turn that off|cut it out|cut the noise|turn that noise off|shut that off|stop that
        beeping|silence that)
      `,
      `
        [<want>] (give|get) me [some] {minutes:duration} (of|of some) (quiet|silence|peace|peace
        and quiet)
      `,
      "[i] [want|need] {minutes:duration} of (quiet|silence|peace|peace and quiet) [please]",
      "quiet time for {minutes:duration}",
      "for {minutes:duration} <stop-talking>",
      "<quiet-reason> (hush|quiet|be quiet|shush)",
      "[<want>] <stop-talking> [now|for a bit|for a minute|a moment] <quiet-reason>",
      `
        [<want>] (do not (talk|speak|say (anything|a word))|no more talking) [for] [the next]
        [{minutes:duration}]
      `,
      "[<want>] no more talking until i (say so|tell you|say)",
      `
        [<want>] (not a (peep|word|sound)|no (talking|noise|chatter)) [out of you|from you] [for
        {minutes:duration}]
      `,
    ],
  },
  {
    intent: "unhush",
    phrases: [
      `
        [<want>] (speak|talk|start talking|start speaking|go back to talking|resume talking|be
        heard) (up again|again|to me again|up now|up|now|to me|out loud again|out loud)
      `,
      `
        you do not (need|have) to be (quiet|silent) (any more|any longer|now)
      `,
      `
        you (can|may|could) [go ahead and] (speak|talk|start talking|make noise|pipe up|come back
        on|come back|speak up|talk to me|be loud|start speaking) [again|now|up again|up now|up|
        once more|to me again]
      `,
      `
        [<want>] (unmute|un mute|unhush|un hush|unsilence|end the quiet|stop hushing|come off
        mute|voice on|sound on|voice back on|sound back on|turn your voice on|turn the voice on|
        turn the sound on|turn the sound back on|turn your voice back on|turn the voice back on|
        turn on your voice|turn on the sound|stop being quiet|end quiet|no more quiet|no longer
        quiet|come out of hush|start talking again|start speaking again|switch the voice on|switch
        the voice back on|switch the sound on|bring your voice back|bring back the voice|turn the
        volume back on|turn yourself back on|make noise again|use your voice again|use your voice)
        [yourself|now|again]
      `,
      `
        (quiet time is over|hush is over|the quiet is over|quiet is over|end hush|hush off|mute
        off|quiet over|hush over|cancel the hush|cancel hush|enough quiet|that is enough quiet|
        enough silence|mute is off|cancel the mute|cancel mute|lift the hush|end of quiet|end the
        hush|undo the hush|stop the hush|i can hear you again|let me hear you again|let me hear
        you|i want to hear you again|talk to me)
      `,
    ],
  },
];

/** Lists that belong to these families alone. */
export const ORDER_LISTS: Readonly<Record<string, readonly string[]>> = {
  "a-moment": [
    `
      [just|for|for just|about] (a|one|half a|another) (moment|minute|second|sec|bit|while|little
      while|tick|mo|few minutes|little bit|couple of minutes|short while|spell|jiffy|few|couple
      minutes|few seconds|few moments|second here|minute here)
    `,
    "just a (moment|minute|second|sec|tick|bit)",
    "for {number} minutes",
  ],
  will: [
    "i will",
    "we will",
    "let us",
    "i am going to",
    "we are going to",
    "i would",
    "we can",
    "just",
    "i want to",
    "we want to",
    "i would like to",
    "i think i will",
    "go ahead and",
    "i guess i will",
    "we should",
    "i should",
    "i had better",
    "we had better",
    "i have to",
    "we have to",
    "i will just",
    "better",
    "might as well",
    "i might as well",
    "we will just",
    "let me",
    "i plan to",
    "i can",
    "i am",
  ],
  "quiet-reason": [
    `
      (the baby is (sleeping|asleep|crying)|[the] phone is ringing|there is somebody at the door|
      somebody at the door|i am on the (phone|telephone)|somebody is (here|at the door)|
      someone is (here|at the door)|i have company|i have a headache)
    `,
  ],
  "why-abandon": [
    `
      [because|since|as] (they are|it is|they have|it has|that is) [all|gone|just|completely]
      (ruined|spoiled|burnt|burned|scorched|no good|bad|off|moldy|mush|a mess|a loss|wrecked|
      past saving|beyond saving|not worth it|done for|gone bad|gone off|gone)
    `,
  ],
  "the-jars": [
    "<the-jars-closed>",
    "{count} of (them|those|these)",
    "what is left",
    "the extra",
    "the extra jar",
    "the leftover",
    "the odd jar",
    "[the] [jar|jars|number|numbers] {jars}",
    "my <numbered>",
    "[<the>] {target}",
  ],
  "the-jars-closed": [
    "(those|these|the) [other|last] {count} [jars|pints|quarts|ones]",
    "it",
    "them",
    "that",
    "those",
    "these",
    "this",
    "that one",
    "those ones",
    "this one",
    "<numbered>",
    "{count} [<of-them>|jars|jar|pints|quarts]",
    "[the|that|those|these|this] (jar|jars|pint|pints|quart|quarts|one|ones)",
    "the (failed|bad|unsealed|loose|other|broken|last|soft) (jar|jars|one|ones|lid|lids)",
    "the ones that (failed|did not seal)",
    "the one that (failed|did not seal)",
    "the jar that (failed|did not seal)",
    "the jars that (failed|did not seal)",
    "all of them",
    "them all",
    "both (jars|lids|pints|quarts|ones)",
    "both of (those|these|the jars|those jars)",
    "each of (them|those)",
    "the (two|three|pair) of them",
    "(whichever|any|the ones|the one|all|the jars|the jar) that (failed|did not seal|did not take)",
    "both",
    "both of them",
    "those jars",
    "the rest",
    "these jars",
    "the lot",
    "them both",
    "[jar|jars|number|numbers] {jars}",
    "what is in (it|them|that jar|those jars|the jar)",
  ],
  want: [
    "i want you to",
    "i need you to",
    "i would like you to",
    "i want",
    "i would like",
    "i need",
    "let us",
    "go ahead and",
    "we need",
    "you can",
    "i would like to",
    "i want to",
    "let me",
    "you should",
    "we want",
    "i need to",
    "do",
    "you had better",
    "we should",
    "i will",
    "time to",
  ],
  am: ["i am", "we are", "i am just", "i am going to be"],
  "set-timer": [
    "set",
    "start",
    "put",
    "make",
    "give me",
    "run",
    "begin",
    "add",
    "get",
    "put on",
    "set up",
    "i need",
    "i want",
    "need",
    "create",
    "i would like",
    "set me",
    "start me",
    "give us",
    "can i have",
    "can i get",
    "can we get",
    "can we have",
    "could i have",
    "may i have",
    "set us",
    "i could use",
    "let us have",
    "let us set",
    "let us start",
    "start up",
    "set off",
    "get me",
    "kick off",
    "have",
    "throw on",
    "set going",
    "start running",
    "start off",
    "fire up",
    "do",
    "i am going to need",
    "we need",
    "turn on",
    "put up",
  ],
  "timer-for": [
    "for",
    "on",
    "to",
    "named",
    "called",
    "labeled",
    "labelled",
    "and call it",
    "until",
    "of",
    "marked",
    "for my",
    "call it",
    "till i",
    "to check",
    "label it",
    "name it",
    "with the label",
    "about",
    "with the name",
  ],
  kill: [
    "kill",
    "cancel",
    "stop",
    "delete",
    "clear",
    "forget",
    "turn off",
    "drop",
    "remove",
    "end",
    "shut off",
    "get rid of",
    "quit",
    "scratch",
    "dump",
    "never mind",
    "ditch",
    "lose",
    "switch off",
    "take off",
    "forget about",
    "drop off",
    "call off",
    "scrap",
    "kill off",
    "dismiss",
    "abort",
    "nix",
    "knock off",
    "erase",
    "wipe",
    "can",
    "halt",
    "disable",
    "discard",
    "toss",
    "take away",
    "take down",
  ],
  "remind-me": [
    "remind me",
    "remind us",
    "remember to remind me",
    "remember to tell me",
    "nudge me",
    "tell me",
    "prod me",
    "i need reminding",
    "i need a reminder",
    "i need to be reminded",
    "give me a reminder",
    "jog my memory",
    "poke me",
    "prompt me",
    "i want a reminder",
    "i would like a reminder",
    "you remind me",
    "i want to be reminded",
    "ping me",
    "make sure i remember",
    "help me remember",
    "be sure to remind me",
  ],
  "remind-to": [
    "to",
    "that",
    "about",
    "that i need to",
    "that i have to",
    "i need to",
    "that we need to",
    "i should",
    "i have to",
    "of",
    "so i",
    "it is time to",
    "that it is time to",
    "saying",
    "saying to",
    "that i should",
    "for",
    "we need to",
    "we have to",
    "i want to",
    "i must",
    "regarding",
    "i am to",
  ],
  no: [
    "whoops",
    "no",
    "actually",
    "wait",
    "sorry",
    "correction",
    "no wait",
    "oh wait",
    "well actually",
    "no actually",
    "hold on",
    "scratch that",
    "no sorry",
    "oops",
    "i mean",
    "wait no",
    "whoops",
    "i was wrong",
    "my mistake",
    "wait actually",
    "sorry no",
    "sorry actually",
    "oh no",
    "hang on",
    "to be exact",
    "i meant",
    "i meant to say",
    "i should say",
    "i should have said",
    "let me correct that",
    "to correct that",
    "what i meant was",
    "make that",
    "not now",
    "i forgot to say",
    "i forgot to tell you",
    "i forgot",
    "truth is",
    "come to think of it",
    "on second thought",
    "strike that",
    "hold up",
    "my bad",
    "in fact",
  ],
};
