// data table
import type { Family } from "./family.ts";

/** Questions the program answers, and the short words of a conversation. */
export const QUESTIONS: readonly Family[] = [
  {
    intent: "what-now",
    phrases: [
      `
        what is it (you want me to do|i am (to do|meant to do|supposed to do)|i (should|need to) do)
        [now|next then]
      `,
      `
        i [have] lost (my place|track) [what (am i (meant|supposed|to) [to] (be doing|do|be at)|do i
        do|should i be doing|was i doing)] [now]
      `,
      `
        what is (to do|to be done|there to do|for me to do|there for me to do|left to do|left for
        me to do) [now|right now|here]
      `,
      `
        (is there|have you got) (anything|something) (for me|i can do|i should do|to do|i can be
        doing) [to do] [now|right now]
      `,
      `
        what (are|should|do) my hands (supposed to be doing|supposed to do|be doing|doing|do|need
        to do|to be doing|be on)
      `,
      `
        what (can|should|do) i (be getting on with|get on with|get started on|be getting ready|do
        in the meantime|do meanwhile|do while i wait)
      `,
      `
        [and|so] what (now|do i do|do i do now|should i do|should i do now|should i be doing|am i
        doing|am i doing now|do we do|do we do now|should we do|should we be doing|am i supposed
        to do|am i supposed to be doing|am i to do|needs doing|needs doing now|needs to be done|
        needs me|needs me now|needs my hands|are my hands for|is my job|is my job now|is needed|is
        needed now|do you need|do you need me to do|do you want me to do|are we doing|are we doing
        now|are we on|is it now|must i do|shall i do|would you like me to do|can i do|can i do
        now|can i be doing|is to be done|should i be working on|needs attention|needs my
        attention|are we supposed to do|do i need to do|do i need to be doing|have i got to do|
        have i to do|is for me to do|is on my plate|am i meant to do|am i meant to be doing|is the
        current step|is the current stage|step are we on|step am i on|stage are we on|stage am i
        on|step is this|do i need to do now|do you want now|do i have to do|is there to do|are you
        waiting on|are you waiting for|do you need from me|is waiting on me|is waiting for me|do
        my hands do|wants doing|is up|is up now|to do|task am i on|should i be on) [now|right now|
        at the moment|here|just now|at this point|this minute|today|at present]
      `,
      `
        where (was i|were we|am i|did we leave off|did i leave off|did we stop) [now|at|in this|in
        the recipe|in all this|then]
      `,
      "where are we [now|right now|in this|in the recipe|in all this]",
      "what (step|stage) (are we|am i) (on|at|in) [now]",
      "what is (the|this|my) (current|present) (step|stage|job|task)",
      "(what is|which is) (the|my) (job|step|task|current step) [now|right now]",
      `
        (tell|give|show|remind) me what (to do|i should do|i should be doing|i do|needs doing|i
        need to do|we are doing|i am doing|i am supposed to do|i am supposed to be doing|now|i
        have to do|my job is) [now|right now]
      `,
      `
        [give|tell|read] me (my job|the current step|the step i am on|something to do|my orders|my
        instructions|my task)
      `,
      "(what am i|what are we) (on|at|up to) [now]",
      `
        (remind me where we are|remind me where i am|current step|my job|what should my hands be
        doing|anything for me to do|is there anything for me to do|anything for me|anything i
        should be doing|is there anything i should do|is there anything i should be doing|do you
        need me|am i needed|anything i need to do|is there anything i need to do|anything to do|do
        you need anything from me|do i need to do anything|do i need to do anything now|anything
        need doing|tell me the current step|anything for my hands)
      `,
      "what (do|shall|should) i do (right now|at this point|here)",
      "what (exactly) (should|do) i do now",
      "now what",
      "what is going on with my hands",
    ],
  },
  {
    intent: "what-next",
    phrases: [
      "what is my next (move|task|job|thing|chore|step|duty|thing to do)",
      "what have (i|we) (to do|got to do) (next|after this|after that|then)",
      "[and] then what (do|should|will|would|can) (i|we) [do|be doing]",
      `
        what (will|would|is going to|should|does) (come|be|happen|follow) (next|after that|after
        this|then|afterwards)
      `,
      `
        what (stage|step|job|task) (follows|comes after this|comes after that|do we do next|do i
        do next|are we on next)
      `,
      `
        (what do|what will|what should) (i|we) (start|work on|tackle|do|move to|go to|get to|be
        on|begin) (next|after this|after that|then)
      `,
      `
        what (do|will|should|are) (we|i) [do|doing|be doing] (after|once|when) [<the>] ({target}|
        jars) [are done|is done|is finished|are finished|are out|come out]
      `,
      `
        what (comes|happens|is|goes) (after|following) [<the>] ({target}|jars|process|boil|step|
        stage|processing|venting|cooling|<doing>) [are done|is done|
        is finished|are finished|are out|come out]
      `,
      `
        [and|so] what (is|comes|happens|do i do|do we do|goes|follows|will i do|am i doing|are we
        doing|should i do|is there|is coming|will happen|else is coming|is due|shall we do|is the
        plan|is to come|will we do|is up|is on) (after that|after this|next|then|afterward|
        afterwards|after|following that|following this|later|coming|after this one|after that one|
        coming up|coming next|up next|due next|next up|the next step|next on the list|following|on
        deck|after the next one|once that is done|once this is done|when this is done|when that is
        done|after i finish|when i finish this|after these|after it|from here|from there|from now)
      `,
      `
        what is (next|the next step|the next thing|the next stage|the next job|up next|coming up|
        coming|coming next|coming after this|the step after this|the step after|the following
        step|ahead|on deck|my next job|my next step|my next task|due next|our next step|the next
        task|next up|next on the list|next after this|next after that|the next one|the next thing
        to do|after the process|to follow|later)
      `,
      "what (comes|happens) (next|after that|after this|then|now|after)",
      "(and|so) (then|then what|next|after that|what then|after this|what next|what after that)",
      `
        (what then|then what|what next|what after that|what after this|after that what|and then|
        what follows|what comes next|coming up|after that|after this|what follows that|what
        follows this|what to do next|what is after)
      `,
      `
        what (will|should|do|would|must|can) (i|we) (do|be doing|need to do|have to do|start|get
        to|get ready|have) (next|after this|after that|then|afterwards|when this is done|once this
        is done|when that is done|later)
      `,
      `
        (tell|give|show|read) me (what is next|the next step|what comes next|what comes after|what
        comes after this|what happens next|what is coming|what is coming up|what to do next|what i
        do next|the next thing|what is after this|what is after that|what we do next|what follows|
        my next job|the step after this)
      `,
      `
        (which|what) (step|stage|job|task|batch|load|one) (is|comes|goes) (next|after this|after
        that|up next)
      `,
      `
        (what|which) is the next (batch|load|one|task|step) [after this|after that|in line|in the
        queue]
      `,
      "(what is|read me|tell me) the (step|stage|one|thing) after (this|that|this one|that one)",
      `
        (next what|look ahead|what is in store|where do we go from here|where do i go from here|
        what do we have coming up|what have we got coming|what have we got next|what do we have
        next|what have we got coming up|what have i got next|what do i have next|preview the next
        step)
      `,
    ],
  },
  {
    intent: "time-left",
    phrases: [
      `
        (have|has|do|does|did) ([<the>] {target:open}|they|it|we) [got|have] (long|much longer|much time) [left|to
        go|yet|still] [now]
      `,
      `
        how (is|are) [<the>] [{target:timer}] (timer|timers|clock|countdown) (doing|coming|coming
        along|getting on|looking|going) [for time|on time]
      `,
      `
        how (is|are) [<the>] {target} (for time|on time|doing for time|doing on time|coming on
        time|fixed for time)
      `,
      `
        <how-long> (have|has|do|does|did|is|are|will|would|must) [<the>] {target:open} [got|have|
        left|to go|need|take|be|still|has|remaining|stay|have left|have to go|have got|got left|
        got to go|still need|run|still have|need to go|still have to go|need yet|got yet|in for|
        going to be|going to take|still got to go|left to go|cook|process] [left|to go|yet|still|
        now|in there|longer|more]
      `,
      `
        <how-long> (until|till|before|to) [<the>] {target:open} (is|are|comes|come|be|can come|
        goes off|go off|finishes|finish|ends|is due|are due|rings|has|can be) [done|ready|out|
        finished|up|over|to come out|through|off|lifted] [out|now|off]
      `,
      `
        <how-long> (until|till|before) (it|that|they|this|those|i|we|everything) (is|are|comes|
        come|am|can|goes|finish|finishes|ends|rings|take|can take|get|have) [come|take|done|ready|
        out|finished|up|over|the jars|them|it|off|to take] [out|now|the jars out|off]
      `,
      `
        <how-long> (until|till|before) [<the>] ({target:open}|timer|clock|bell|alarm|time|process)
        (goes off|rings|runs out|is up|ends|sounds|dings|beeps|goes|finishes)
      `,
      `
        <how-long> (until|till|before|to) (the end|it ends|the end of the process|i take the jars
        out|the jars come out|we take them out|the bell|done|ready|finished|it rings)
      `,
      `
        <how-long> [is|has|have] [left|to go|more|remaining|it|that|this|they|now|longer|still]
        [got|left|to go|now|have|is left|remains|remaining] [(on|for|in|with|of|till) [<the>]
        {target:open}] [timer|now]
      `,
      `
        <how-long> (do|have|does|has|will|is|are|must|did) (we|i|it|that|they|this|those|these|
        you|everything) [got|have|left|to go|need|take|be|still|got left|have left|have to go|got
        to go|have to wait|need to go|still have|to wait|still need|going to be|going to take|run|
        still have to go|got to wait|to run] [left|to go|yet|still|now|longer|more] [(on|for|with|
        in) [<the>] {target:open}]
      `,
      "<how-long> (for|on|in|with|about) [<the>] {target:open} [now|still|left|yet|timer]",
      "<how-long>",
      `
        (is there|have we got|do we have|have i got|do i have) [still] (much|any|a lot of|plenty
        of|more|very much) time left [(on|for|with) [<the>] {target:open}]
      `,
      `
        (what|how much) time (is|has|have) [left|remaining] [<the>|on] [<the>] [{target:open}]
        [got] [left|remaining]
      `,
      `
        [what is|tell me|give me|check] [the|my] (time left|remaining time|time remaining|minutes
        left|countdown|time to go|minutes remaining|time still to go) [(on|for|in|with) [<the>]
        {target:open}] [timer]
      `,
      "what is [still] (left|remaining|still left) (on|for|in) [<the>] {target:open} [timer]",
      `
        what (does|do|is) [<the>] {target:open} [timer] (have left|say|got left|have to go|have|
        at|have remaining|on|down to)
      `,
      `
        (how is the time|how are we for time|how are we doing for time|how are we doing on time|
        how is the time doing|how am i doing for time|how is the clock|what does the clock say|
        what does the timer say|where is the timer|where is the timer at|time check|what is on the
        clock|check the timer|check the timers|check the clock|what are the timers|what are the
        timers at|what is the timer at|what is the timer on) [on|for|with] [[<the>] {target:open}]
      `,
      `
        (are we|is it) (almost|nearly|close to|getting close to) (done|there|time|finished|over)
        [on|with|for] [[<the>] {target:open}]
      `,
      "(is|are) [<the>] {target} (almost|nearly|close to) (done|ready|finished|out)",
      `
        [<the>] {target} (how long|how much longer|time left|how many minutes|how much time)
        [left|to go]
      `,
      `
        (tell me|let me know) how (long|much longer|much time) [is left|we have|is left on it|it
        has|it has left|they have|they have left|there is|to go|it has got|they have got] [on|for]
        [[<the>] {target:open}] [has|have] [left|got]
      `,
      "when (is|are) [<the>] {target:open} timer (going off|going to go off|up|done|over|due)",
      `
        (when|how soon) (does|will|do) [<the>] {target:open} timer (go off|ring|end|finish|run
        out|be done|be up)
      `,
    ],
  },
  {
    intent: "finish-time",
    phrases: [
      `
        [<the>] {target} (finish|finishing|finished|done|ready|come out|coming out|out|be done|be
        ready) [is] (when|at what time|what time|at when)
      `,
      `
        <when-ask> (will|would|can|should) (i|we) [be able to|get to] (take|lift|pull|get|have|
        open|stop|turn off) [<the>|all the] ({target:open}|them|it|the jars|jars|the canner|the
        heat|the lid) [out|off|up|down|ready|done] [of the canner|of the water]
      `,
      `
        <when-ask> (do|does|will|can|should|must|may|would|shall|could) [<the>|i|we|all the|you|
        it|they|everything|that|this|those] [{target:open}] (come out|be done|finish|be ready|be
        finished|take out|pull|lift|end|be through|be out|get done|stop|take|take them out|take it
        out|be over|come off|expect to be done|get to stop|pull them|lift them out|be cool|be
        complete|come out of the canner|be done with|go to bed|be due|be done today|get out|come
        off the heat|take them off|pull out|come off the stove|be sealed|be checked|check the
        seals|open the canner|open the lid|be able to take|be up|stop boiling|stop processing|come
        up) [<the>|all the] [{target:open}] [out|off|now|today|up|at]
      `,
      `
        <when-ask> (do|does|will|can|should) [<the>] (jars|lids|load|canner|first load|next load|
        pints|quarts) (come|come out|be|get|finish) [out|done|ready|finished|of the canner|out of
        the canner|cool|off]
      `,
      `
        <when-ask> (is|are) [<the>|it|they|that|everything|we|this|i|all this|all that]
        [{target:open}] (done|ready|finished|out|due|over|coming out|due out|through|going to be
        done|going to be ready|going to be finished|due to come out|due to be done|going to
        finish|finishing|to come out|complete|supposed to be done|supposed to come out|supposed to
        be ready|supposed to finish|going to come out|up|expected to be done|expected|ending|to be
        done|scheduled to come out|set to finish|likely to be done|going to be through|off) [out|
        by|now|with|at]
      `,
      `
        tell me when (i|we) can (take|lift|pull|get|open|stop|turn off) [<the>|all the]
        ({target:open}|them|it|the jars|jars|the canner|the heat|the lid) [out|off|up|down]
      `,
      `
        (how late|by when) (will|do|does) (we|i|it|they|[<the>] {target:open}) (be done|finish|be
        ready|be finished|be at it|go|run|be)
      `,
      `
        (what is|tell me|give me|say|show me) [the|my|our] (finish time|finishing time|end time|
        time of finishing|done time|ending time|completion time|finish|eta|ready time|stop time)
        [(of|for|on) [<the>] {target:open}]
      `,
      "(finish time|end time|finishing time) [(of|for|on) [<the>] {target:open}]",
      "[<the>] {target} (finish time|end time|when)",
      "when (is|are) [<the>] {target:open} (finished|done|ready|due|over|out)",
      `
        (tell me when|what time|when) (it|they|we|[<the>] {target:open}) (will be|is going to be|
        are going to be|should be|is supposed to be|would be) (done|ready|finished|out|over|
        through)
      `,
      `
        what time (is|are|will) [<the>] {target:open} [be] (done|ready|finished|due|out|over|
        coming out|end|finish|come out)
      `,
      "(what|which) hour will (it|they|we|[<the>] {target:open}) be (done|ready|finished)",
      `
        when can (i|we) (stop|go|sit down|quit|call it a day|leave|rest|turn off the heat|turn the
        heat off|turn it off|turn off the burner)
      `,
    ],
  },
  {
    intent: "overview",
    phrases: [
      `
        where are we (at|at now|with everything|with things|on everything|at with everything|at
        with things|at on everything)
      `,
      `
        what all (do we have|have we got|have i got|do i have|is) [going|running|on|cooking] [on|
        now|right now|here]
      `,
      `
        (run|go) (through|over) (everything|all) [that is] (going|running|on) [on] [now]
      `,
      `
        (run|walk|take|talk) (me|us) through (everything|it all|what is going|what is running|what
        is on|the whole thing|everything that is going|everything that is running|everything that
        is on|all of it) [on|here|now]
      `,
      `
        how (is|are) (everything|things|it|we|it all|things going|all of it|all of this|everything
        else|this|all that|the kitchen|everybody|the batches|all the batches|the whole kitchen|my
        batches|everyone) [all] [going|doing|coming along|looking|coming|getting on|getting along|
        shaping up|holding up|faring|progressing|running|standing] [so far|along|now|today|in
        there|over there|in the kitchen]
      `,
      `
        what (is|are|have we|do we have|have i|do i have|have you|all is|all have we) [got]
        [everything|all|we|all] [running|going|on|going on|cooking|on the go|on the stove|in
        progress|active|happening|in the works|in the kitchen|under way|underway|on the boil|
        working|open|in the canner|on the burners|on the heat|on right now|up] [now|right now|at
        the moment|in the kitchen|here|today|just now|on]
      `,
      `
        (what is the|give me the|give me a|give me an|tell me the|let me have a|let us have a|i
        want a|i need a|show me the|show me a|read me the|run me through the|show me an|how about
        a|can i get a|can i have a|may i have a|could i get a|read me a|read the) [full|quick|
        whole|brief|complete|short|general|kitchen] (status|overview|rundown|report|summary|state
        of play|state of things|lay of the land|situation|run down|status report|update|list|lay
        of the kitchen|big picture|state of the kitchen|recap|roundup|status update|picture|run
        through|whole picture|progress report|sitrep) [of everything|on everything|of the kitchen|
        please|for everything|of what is running|of all batches|of the batches|of where we are|of
        where we stand|now]
      `,
      `
        [full|quick|short|kitchen|brief] (status|overview|rundown|report|summary|status report|
        update|recap) [(of|on|for) (everything|it all|all of it|the kitchen|all the batches|all
        batches|the batches|things)]
      `,
      `
        (run|go|read|list) (down|over|through|off) (everything|it all|all of it|all the batches)
        [for me|with me|again]
      `,
      `
        (status|overview|rundown|report|summary|status report|update|sitrep|recap|progress report|
        full report|where do we stand|where do things stand|where does everything stand|where are
        we with everything|where are things|how do things stand|how do we stand|list everything|
        run it down for me|run it down|run everything down|bring me up to date|catch me up|fill me
        in|update me|bring me up to speed|what is where|what is everything doing|tell me
        everything|show me everything|how goes it|how is it all|what is the story|what is the
        state of things|list the batches|list all batches|list what is running|list the timers|
        what timers are running|what timers do i have|what timers are on|what timers have we got|
        what batches are running|what batches do we have|what batches have we got|how many batches
        are running|how many batches do we have|go over everything|read off everything|read
        everything off|what are we running|show me the kitchen|how many timers do i have|how many
        timers are running|show me all batches|show me all the batches|show all|tell me what is
        running|tell me what is going on|tell me what is on|tell me what we have on|tell me where we are|tell me where we stand|tell me how
        things stand|tell me how everything is going|tell me how everything is doing|tell me how
        we are doing|tell me how it is all going|tell me where everything is|tell me where
        everything stands|tell me where things stand|show me what is running|show me where we are|
        what is the situation|what is the state of the kitchen|what all is going|what all is
        running|what all have we got going|what all is on|what is all going on|list all timers|
        list all the timers|read me the timers) [now|today|right now|on everything]
      `,
      `
        (how far|how far along) (are we|is everything|are things|have we got|am i|are the batches|
        have we come) [with everything]
      `,
      `
        where (are|is|have) (we|everything|things|all the batches|everybody) [at|gotten to|got to|
        now|with everything|with it all|on everything|stand|standing] [now|right now]
      `,
    ],
  },
  {
    intent: "how-much",
    phrases: ["{what:asked}"],
  },
  {
    intent: "help",
    phrases: [
      `
        what (do|can|could|will|would) you (know how to do|help with|help me with|offer|handle|
        manage|take care of|answer|tell me|do for me|do for us)
      `,
      `
        (what|which) (words|commands|phrases|things|sentences) (will|do|can|would|could|should|
        might) (you|i|we) (take|understand|know|use|say|recognize|have|follow|accept|listen for|
        give you)
      `,
      `
        how (do|should|can|would) i (talk|speak|use|work|run|ask|start|begin|get help) [to|with|
        for] [you|this|this thing|it|a batch|things|for help|help] [please]
      `,
      `
        (show|tell|teach|give) me (how to (use you|use this|work this|talk to you|start|begin)|
        what to say|the basics|a hint|some hints|the list|the list of commands|a list|everything
        you can do|everything i can say|what you know|what you understand|some help|the options|my
        choices|the possibilities)
      `,
      `
        (tell|show) me what you (can|are able to|know how to) (do|help with|help me with) [for me]
      `,
      `
        i do not know how to (work|use|run|talk to) (this|you|it|this thing) [help me|can you help
        me|can you help|please help]
      `,
      `
        (help|help me|help please|i need help|i need some help|need help|need some help|i need a
        hand|give me a hand|help me out|can you help|can you help me|could you help me|help me out
        here|i am lost|i am stuck|i am confused|a little help|some help|show help|show me the
        help|instructions|show the commands|list the commands|list commands|show commands|
        commands|options|i am not sure what to say|i do not know what to say|i do not know how
        this works|i do not know how to use this|i do not know what i can say|i do not understand
        how this works|how do i use this|how do i use you|how do i work this|how do i do this|how
        does this work|how do you work|how does this thing work|how do i talk to you|how do i talk
        to this|how should i talk to you|how do i start|how do i begin|how do i get started|how do
        i start a batch|what are my options|what are my choices|what are the commands|what are the
        options|what can you do|what can i say|what can i ask|what can i ask you|what can i tell
        you|what can we say|what do you do|what do you understand|what do you know|what else can
        you do|what else can i say|what all can you do|what all can i say|what words do you know|
        what words can i use|what commands are there|what commands do you know|what commands do
        you have|what should i say|what should i say to you|what am i able to say|what am i
        allowed to say|what do i say|what do i say to you|what sort of things can i say|what kind
        of things can i say|what kinds of things can i say|what sorts of things can i say|what
        things can i say|what things can you do|what are you able to do|what are you for|what are
        you good for|what is it you do|what is it you can do|what is this|how can you help|how can
        you help me|how can i talk to you|tell me what you can do|tell me what i can say|tell me
        how this works|show me what you can do|show me what i can say|explain how this works|
        explain yourself|teach me|teach me how to use this|show me how this works|show me how to
        use this|show me the commands|show me my options|read me the commands|what can you help
        with|what can you help me with|what might i say|which words can i use|give me some help|
        give me the commands|give me a list of commands|give me some examples|list what i can say|
        list what you can do|list my options|what may i say|what can i do here|what can i do with
        you|what can i do|what do you listen for|what do you respond to|what phrases do you know|
        what could i say|i could use some help|i could use a hand|lend me a hand|i need
        assistance|assistance|user guide|show the guide|what is it i can say|how do i talk to it|
        what is possible) [here|now|again|with this|to you|please]
      `,
    ],
  },
  {
    intent: "repeat",
    phrases: [
      `
        [sorry] i missed (what you said|the last bit|the last part|the last one|what you just
        said|your last|some of that|what that was)
      `,
      `
        [sorry] [i] (could|can|did|do) not [quite] (hear|catch|make out|get|understand|follow)
        (that|you|it|what you said|a word|a thing|the last bit|that one|that last bit|the last
        part|any of that) [over (<the>) (fan|noise|water|boil|racket|steam|din|radio|kettle|pot|
        canner)]
      `,
      "(what|how) (was|is) (that|the last one|it) [you said] [again|once more]",
      "once again [for me]",
      "what did you [just] (say|tell me|tell us|ask|ask me|want|announce) [again|just now]",
      "(run|say|give me|tell me) (that|it) (by|past) me (again|once more|one more time)",
      "let me (hear|have) (that|it|the last one) (again|once more|one more time)",
      `
        (would you mind|do you mind|could i trouble you [by|to]|mind) (repeating|saying|repeat|say)
        (yourself|that|it|that last bit|what you said) [again|once more|one more time]
      `,
      `
        (speak|talk) (up|louder|slower|more slowly|a bit louder|a little louder|a bit slower)
        [please]
      `,
      `
        (say|read|tell|speak|give|run|repeat|play|go over|go through|announce|state|read out|read
        off) [me|us|to me] (it|that|this|the last one|that last one|the last thing|the last bit|
        the last part|that part|that bit|that last bit|the instruction|the step|the instructions|
        the last step|that step|the whole thing|what you said|what you just said|your last|that
        one|the last instruction|the message|the last message|the prompt|the last prompt|that last
        part|this step|the current step|that last thing) [to me|for me|back|by me|me|out|over]
        (again|once more|one more time|over|back|over again|another time|a second time|one time
        more|louder|slower|slowly|more slowly|again slower|again louder|again slowly|again more
        slowly|a little louder|a bit louder|a bit slower|a little slower|up louder)
      `,
      `
        (say|read|speak|repeat) (that|it|this) [again] (louder|slower|{slower=true} more slowly|
        {slower=true} slowly|a little louder|a bit slower)
      `,
      `
        (repeat|say again|read again|come again|once more|one more time|again|pardon|pardon me|beg
        pardon|beg your pardon|i beg your pardon|sorry|say what|what|huh|eh|excuse me|play it
        again|run that by me again|run it by me again|say once more|louder|slower|more slowly|say
        it louder|say it slower|a little louder|a bit louder|a little slower|can not hear you|i
        can not hear you|i could not hear you|could not hear you|i did not hear you|i did not hear
        that|i did not catch that|did not catch that|i missed that|missed that|i missed it|missed
        it|i did not get that|did not get that|i did not hear|did not hear that|i did not quite
        catch that|i did not quite get that|i did not hear what you said|i could not hear that|
        could not hear that|i did not understand that|i did not follow that|i did not follow|what
        did you say|what was that|what did you just say|what was that again|what did you say
        again|what was it you said|what were you saying|what was that you said|what was the last
        thing|what was the last thing you said|what was that last thing|what was that last bit|
        what was that last part|what was that last one|what was the last step|what was the step
        again|what was it again|what is that again|what now again|how is that again|how was that|
        you said what|you were saying|what were you saying|one more time please|one more time
        louder|tell me again|tell me once more|tell me one more time|read me that again|remind me
        what you said|remind me what that was|let me hear that again|let me hear it again|i need
        to hear that again|i want to hear that again|hear that again|could i hear that again|can i
        hear that again|can i hear it again|may i hear that again|one more time for me|the last
        one again|last one again|that again|that one again|from the top|repeat after yourself|same
        again|say your last again|go over that again|go over it again|go through that again|give
        me that again|give it to me again|give me that one more time|give me that once more|back
        up and say that again|i forgot what you said|what was the question|what was the question
        again|repeat the question|say the question again|read that back|read that back to me|read
        it back|read it back to me|come back with that|louder please|i lost you|i lost that|i was
        not listening|i was not paying attention|say again please|please repeat|sorry what|sorry
        what was that|sorry i missed that|sorry i did not catch that|what what|wait what|wait what
        was that|wait what did you say|hang on what was that|hold on what was that) [again|please|
        for me|then|now|there|over the noise]
      `,
      `
        repeat (that|it|yourself|the last one|the last thing|the last step|the instruction|the
        instructions|what you said|the step|the question|this|please|the last bit|the last part|
        the message|the prompt|that last one|that last thing|that last part|that last bit|what you
        just said|the last instruction|that part|the current step|this step|the last prompt|the
        last message|the last announcement|your last|the last thing you said|the alarm) [again|for
        me|back|to me|please|louder|slower|once more|one more time|slowly|more slowly]
      `,
    ],
  },
  {
    intent: "undo",
    phrases: [
      `
        (forget|ignore|disregard|scratch|never mind) (what i|what i have|that thing i|the last thing
        i) [just] (told you|said|told|told to you|reported)
      `,
      `
        (that is wrong|that was wrong|no|oops|whoops|sorry|wait|mistake|my mistake|that is not
        right|no wait|no sorry|i was wrong|i misspoke) (take it back|take that back|undo it|undo
        that|undo|scratch that|cancel that|strike that|forget that|go back|delete that|erase that|
        ignore that|back up|forget it)
      `,
      `
        (forget|ignore|disregard|never mind) (i said that|i said anything|i said it|what i said|
        what i just said|that one|i said so|i ever said that)
      `,
      `
        (take|put|turn|roll|bring|walk) (that|it|this|that last one|the last one|that one|the last
        thing|that last thing|that last bit) back
      `,
      `
        [<let>] (take back|undo|reverse|cancel|scratch|strike|erase|delete|forget|disregard|
        ignore|unsay|withdraw|retract|scrub|remove|revoke|roll back|back out|belay|void|rescind|
        wipe out|wipe|nix|backtrack|unrecord|never mind) (that|it|this|the last|the last one|the
        last thing|my last|that last one|that last thing|that last bit|the last thing i said|what
        i said|what i just said|that last command|that one|the last entry|the last command|the
        last report|my last report|that entry|the last bit|that report|that last report|the last
        step|my last command|that last step|what i said last|my last words|that last|the previous
        one|the last note|that note|that last note|the previous command|that from the record|that
        from the log|that last entry|that command)
      `,
      `
        (undo|oops|whoops|my mistake|my bad|that was a mistake|that was wrong|that is wrong|that
        is not right|that was not right|that is not what i meant|that is not what i said|i did not
        mean that|i did not mean to say that|i misspoke|i made a mistake|i was mistaken|mistake|
        wrong|i take that back|i take it back|i was wrong|that was an error|it was a mistake|belay
        that|go back one|step back|go back a step|back up one|back up a step|back up|go back|go
        one back|never happened|that did not happen|that never happened|i did not say that|you
        misheard me|you misheard|you heard me wrong|you heard wrong|you got that wrong|you got it
        wrong|you misunderstood|you misunderstood me|i spoke too soon|spoke too soon|false alarm|
        correction|i said that wrong|i said it wrong|strike that from the record|as you were|i did
        not mean it|i did not say done|i pressed that by accident|i hit that by accident|that was
        by accident|that was an accident|by mistake|pressed by mistake|i hit the wrong key|wrong
        key|wrong button|wrong one|wrong batch|that was premature|one step back|that was the wrong
        one|that was the wrong batch|not that|that was not me|not that one|i jumped
        the gun|jumped the gun|that was not for you|not for you|i was not talking to you|i was not
        talking to you then) [please|sorry|oops|undo that|undo it|undo|there|please undo|take that
        back|scratch that]
      `,
    ],
  },
  {
    intent: "yes",
    phrases: [
      "<yes-word> [<yes-word>] [<yes-tail>] [please|sir|maam|indeed]",
      "(that is right|that is correct|right|i am sure|it did|it is|it was|it has) <yes-word>",
      `
        i (surely|certainly|sure|most certainly|do indeed) [do|did|am|have|will]
      `,
      `
        (do it|go ahead|please do|go for it|do that|do so|make it so|by all means|of course|that
        is right|that is correct|that is the one|that is it exactly|that is true|you bet|you got
        it|you bet you|i am sure|i am certain|quite sure|i am positive|certainly|go right ahead|
        yes go ahead|all good yes|it did|it was|it is|they are|they were|they did|i did|we did|i
        have|we have|i am|we are|it has|they have|it held|it did hold|it held fine|they do|it
        does|i do|we do|you can|you may|confirmed|confirm|i confirm|affirmative|sounds right|that
        sounds right|that will do it|exactly right|exactly|precisely|definitely|
        absolutely|most definitely|sure is|sure did|sure was|sure are|why not|fine do it|okay do
        it|all right do it|go on and do it|yes i am sure|it kept boiling|it stayed on the boil|it
        never stopped|it boiled throughout|it boiled the whole time|it boiled all the way|without
        a break|the whole time|all the way through|throughout|i would say so|i think so|i believe
        so|i suppose so|i guess so|looks that way|it looks that way|so it is|so it did|i would|i
        will|we will|i want to|i do want to|of course it did|of course it is|of course i am|one
        hundred percent|hundred percent|no doubt|without a doubt|without question|for sure|that it
        is|that it did|that it was|that i am|that they are|that they did|you heard me|you heard
        right|you heard me right|i mean it|just do it|please go ahead|go ahead and do it|go ahead
        please) [please|sure|now|then|thanks]
      `,
    ],
  },
  {
    intent: "no",
    phrases: [
      "<no-word> [<no-word>] [<no-tail>] [please|sir|maam|thanks|thank you]",
      `
        (heavens|goodness|gracious|good heavens|lord|dear) no
      `,
      `
        (do not|do not do that|do not do it|please do not|better not|i would rather not|rather
        not|not yet|not now|not at all|not really|leave it|leave it be|leave it alone|leave that|
        keep it|keep it as it is|absolutely not|certainly not|of course not|no way|not a chance|no
        chance|not on your life|i do not want to|i do not want that|i do not think so|i think not|
        i think i will pass|it did not|it was not|it is not|they are not|they were not|they did
        not|i did not|we did not|i have not|we have not|i am not|we are not|it has not|they have
        not|they do not|it does not|i do not|we do not|forget it|never mind|nevermind|never mind
        that|stop do not|wait do not|hold on do not|that is not right no|no need|not necessary|by
        no means|under no circumstances|i am not sure|not sure|negatory|i said no|that is a no|it
        is a no|i would say no|i will pass|pass|skip it|i guess not|i suppose
        not|afraid not|i am afraid not|not quite|do nothing|let us not|i changed my mind|changed
        my mind|i have changed my mind|on second thought no|i would not|i will not|we will not|
        rather you did not|not this time|not today|wait no|keep going do not) [please|now|then|
        thanks|yet|thank you|after all|just yet]
      `,
    ],
  },
  {
    intent: "acknowledge",
    phrases: [
      `
        (okey (doke|dokey|dokie)|okay (doke|dokey|dokie)|okie dokie|righty ho|right you are|right oh|
        very good|fair enough|will do|jolly good|i hear you|much obliged)
      `,
      `
        [<ack>] <ack> [<ack>] [then|there|now|that|you|so much|very much|much|a lot|kindly|for
        that|sir|maam|to know|enough|for telling me|for the warning|for the reminder|for letting
        me know|for the heads up|for reminding me|dear|friend|on that]
      `,
    ],
  },
];

/** Lists that belong to these families alone. */
export const QUESTION_LISTS: Readonly<Record<string, readonly string[]>> = {
  "how-long": [
    "how long",
    "how much longer",
    "how much time",
    "how many minutes",
    "how many more minutes",
    "how much more time",
    "how long still",
    "how much time still",
    "how many hours",
    "how long now",
    "about how long",
    "how much more",
    "how many minutes more",
    "for how long",
    "how long left",
    "how much time left",
    "how many minutes left",
    "how much longer now",
    "how long to go",
    "how soon",
    "roughly how long",
    "what time left",
    "how many more hours",
    "how many seconds",
    "and how long",
    "and how much longer",
    "how far",
    "how much time remaining",
    "how much time is left",
    "how long is left",
    "how many minutes are left",
    "how many minutes remain",
    "how much time remains",
    "how long remains",
    "how much is left",
  ],
  "when-ask": [
    "when",
    "what time",
    "what oclock",
    "at what time",
    "about when",
    "when exactly",
    "roughly when",
    "about what time",
    "at what hour",
    "what hour",
    "and when",
    "around what time",
    "around when",
    "by when",
    "by what time",
    "when about",
    "tell me what time",
    "just when",
    "so when",
  ],
  "yes-word": [
    "yes",
    "yeah",
    "yep",
    "yup",
    "yea",
    "yah",
    "sure",
    "aye",
    "uh huh",
    "mm hmm",
    "mhm",
    "affirmative",
    "certainly",
    "absolutely",
    "definitely",
    "of course",
    "correct",
    "indeed",
    "ya",
    "yessir",
    "yes siree",
    "yes indeed",
    "yes maam",
    "yes mam",
    "you betcha",
    "yep yep",
    "true",
    "okay yes",
    "okay yeah",
    "all right yes",
    "oh yes",
    "oh yeah",
    "sure thing",
    "you bet",
    "yes yes",
    "roger yes",
    "surely",
    "positive",
    "sure do",
    "by all means",
    "heck yes",
    "totally",
    "exactly",
    "oui",
    "well yes",
    "yup yup",
    "confirmed",
  ],
  "yes-tail": [
    "that is right yes",
    "yes",
    "right",
    "do it",
    "go ahead",
    "please",
    "please do",
    "that is right",
    "that is correct",
    "do that",
    "it is",
    "it did",
    "it was",
    "they are",
    "they did",
    "they have",
    "i am",
    "i am sure",
    "we did",
    "i did",
    "i do",
    "go for it",
    "of course",
    "i have",
    "it has",
    "we have",
    "we are",
    "it held",
    "all of them",
    "throughout",
    "it does",
    "they do",
    "they were",
    "i would",
    "i want to",
    "let us",
    "let us do it",
    "let us do that",
    "do so",
    "that is fine",
    "that is good",
    "that will do",
    "i will",
    "we do",
    "ma am",
    "thanks",
    "thank you",
    "go on",
    "that is it",
    "that one",
    "absolutely",
    "definitely",
    "enough",
    "do go ahead",
    "you can",
    "you may",
    "to that",
    "the whole time",
    "it held throughout",
    "all the way",
    "all the time",
    "toss it",
    "the lids are covered",
    "that is what i said",
    "that is what i meant",
    "that is the one",
    "i mean it",
    "we will",
    "i want that",
    "it stayed boiling",
    "it kept boiling",
    "it boiled throughout",
    "a full boil throughout",
    "full boil throughout",
    "they all are",
    "they all did",
    "they still are",
    "it still is",
    "it really is",
    "i really do",
    "that is so",
  ],
  "no-word": [
    "no",
    "nope",
    "nah",
    "no no",
    "negative",
    "uh uh",
    "naw",
    "nay",
    "oh no",
    "no thanks",
    "no thank you",
    "no way",
    "certainly not",
    "absolutely not",
    "definitely not",
    "not at all",
    "no sir",
    "no siree",
    "no sirree",
    "no indeed",
    "no maam",
    "no mam",
    "no thank you",
    "okay no",
    "well no",
    "heck no",
    "god no",
    "never",
    "of course not",
    "nuh uh",
    "not really",
  ],
  "no-tail": [
    "do not",
    "do not do it",
    "do not do that",
    "leave it",
    "it did not",
    "it was not",
    "it is not",
    "they are not",
    "they did not",
    "not yet",
    "not now",
    "thanks",
    "thank you",
    "i do not",
    "i did not",
    "we did not",
    "wait",
    "stop",
    "keep it",
    "leave it be",
    "it has not",
    "they have not",
    "i am not",
    "i have not",
    "we have not",
    "not at all",
    "way",
    "not that",
    "not that one",
    "i do not think so",
    "never mind",
    "forget it",
    "it does not",
    "they do not",
    "they were not",
    "we are not",
    "do not do anything",
    "leave it alone",
    "leave that alone",
    "leave them",
    "keep going",
    "not really",
    "please do not",
    "i changed my mind",
    "i have changed my mind",
    "changed my mind",
    "not this time",
    "not today",
    "keep them",
    "that is not right",
    "that is wrong",
    "that is not it",
    "it lost the boil",
    "need",
    "not quite",
    "i would rather not",
    "better not",
    "hold off",
    "it did not hold",
    "sorry",
    "let us not",
    "do not toss it",
    "do not abandon it",
    "i do not want to",
    "i do not want that",
    "not just yet",
    "not any more",
  ],
  ack: [
    "right you are",
    "right enough",
    "okay fine",
    "all right fine",
    "very well then",
    "good to hear",
    "okay good",
    "all right good",
    "okay great",
    "got you",
    "got it thanks",
    "thanks got it",
    "sure okay",
    "okay",
    "all right",
    "got it",
    "i got it",
    "got that",
    "thanks",
    "thank you",
    "many thanks",
    "i hear you",
    "heard",
    "heard you",
    "understood",
    "roger",
    "roger that",
    "will do",
    "noted",
    "on it",
    "i am on it",
    "copy",
    "copy that",
    "gotcha",
    "sounds good",
    "good",
    "fine",
    "very well",
    "i know",
    "i see",
    "cheers",
    "good to know",
    "right then",
    "right",
    "right o",
    "righto",
    "okey dokey",
    "okie dokie",
    "okay then",
    "great",
    "good enough",
    "all righty",
    "ten four",
    "i heard you",
    "i heard that",
    "i heard",
    "loud and clear",
    "message received",
    "received",
    "acknowledged",
    "that is fine",
    "that is good",
    "that is okay",
    "all good",
    "fair enough",
    "cool",
    "lovely",
    "perfect",
    "excellent",
    "much obliged",
    "appreciate it",
    "i appreciate it",
    "good good",
    "wonderful",
    "so noted",
    "okay okay",
    "thanks a lot",
    "thanks very much",
    "thank you kindly",
    "yes i heard",
    "yes i heard you",
    "yes i know",
    "i know i know",
    "i am coming",
    "coming",
    "i am going",
    "i have got it",
    "i understand",
    "makes sense",
    "sounds fine",
    "sure thing boss",
    "works for me",
    "fine by me",
    "fine with me",
    "that works",
    "good good",
    "very good",
    "good job",
    "well done",
    "nice",
    "nice work",
    "splendid",
    "aye aye",
    "done and noted",
    "consider it noted",
    "i will do that",
    "i will get to it",
    "i will see to it",
    "i am listening",
    "i am here",
    "okay got it",
    "that will do",
    "super",
    "terrific",
    "no problem",
    "no worries",
    "gotcha",
    "heard that",
    "point taken",
    "i will get on it",
    "right away",
    "right on",
    "okey doke",
    "you are right",
    "good thinking",
    "fine then",
    "good then",
    "i got you",
    "on my way",
    "i will",
    "thanks for that",
    "ta",
    "alrighty",
    "yes got it",
    "yes okay",
    "yeah okay",
    "yeah got it",
    "yep got it",
    "all right all right",
    "seen",
    "i saw",
    "i saw that",
    "i see that",
    "i see it",
    "taken care of thanks",
    "okay thank you",
    "duly noted",
    "good call",
    "thank you very much",
    "i will remember",
    "i will remember that",
  ],
};
