import type { MeaningOf } from "./meaning.ts";

/** How much time a clock has left. */
export const timeLeft: MeaningOf<"time-left"> = {
  cost: "harmless",
  when: ["working", "timer"],
  slots: { target: "name" },
  example: "how long have the beets got",
  forgiving: true,
  topical: true,
  wordings: [
    `<wants-to-know> how (long|much longer|many minutes) [<the>] {target} (has|have|is|are|will be|
    need|needs) [got] [left|to go|still]`,
    `(have|has|do|does|did) ([<the>] {target:open}|they|it|we) [got|have] (long|much longer|much
    time) [left|to go|yet|still] [now]`,
    `how (is|are) [<the>] [{target:timer}] (timer|timers|clock|countdown) (doing|coming|coming
    along|getting on|looking|going) [for time|on time]`,
    `how (is|are) [<the>] {target} (for time|on time|doing for time|doing on time|coming on time|
    fixed for time)`,
    `<how-long> (have|has|do|does|did|is|are|will|would|must) [<the>] {target:open} [got|have|
    left|to go|need|take|be|still|has|remaining|stay|have left|have to go|have got|got left|got
    to go|still need|run|still have|need to go|still have to go|need yet|got yet|in for|going to
    be|going to take|still got to go|left to go|cook|process] [left|to go|yet|still|now|in
    there|longer|more]`,
    `<how-long> (until|till|before|to) [<the>] {target:open} (is|are|comes|come|be|can come|goes
    off|go off|finishes|finish|ends|is due|are due|rings|has|can be) [done|ready|out|finished|
    up|over|to come out|through|off|lifted] [out|now|off]`,
    `<how-long> (until|till|before) (it|that|they|this|those|i|we|everything) (is|are|comes|
    come|am|can|goes|finish|finishes|ends|rings|take|can take|get|have) [come|take|done|ready|
    out|finished|up|over|the jars|them|it|off|to take] [out|now|the jars out|off]`,
    `<how-long> (until|till|before) [<the>] ({target:open}|timer|clock|bell|alarm|time|process)
    (goes off|rings|runs out|is up|ends|sounds|dings|beeps|goes|finishes)`,
    `<how-long> (until|till|before|to) (the end|it ends|the end of the process|i take the jars
    out|the jars come out|we take them out|the bell|done|ready|finished|it rings)`,
    `<how-long> [is|has|have] [left|to go|more|remaining|it|that|this|they|now|longer|still]
    [got|left|to go|now|have|is left|remains|remaining] [(on|for|in|with|of|till) [<the>]
    {target:open}] [timer|now]`,
    `<how-long> (do|have|does|has|will|is|are|must|did) (we|i|it|that|they|this|those|these|you|
    everything) [got|have|left|to go|need|take|be|still|got left|have left|have to go|got to go|
    have to wait|need to go|still have|to wait|still need|going to be|going to take|run|still
    have to go|got to wait|to run] [left|to go|yet|still|now|longer|more] [(on|for|with|in)
    [<the>] {target:open}]`,
    "<how-long> (for|on|in|with|about) [<the>] {target:open} [now|still|left|yet|timer]",
    `(is there|have we got|do we have|have i got|do i have) [still] (much|any|a lot of|plenty of|
    more|very much) time left [(on|for|with) [<the>] {target:open}]`,
    `(what|how much) time (is|has|have) [left|remaining] [<the>|on] [<the>] [{target:open}] [got]
    [left|remaining]`,
    `[what is|tell me|give me|check] [the|my] (time left|remaining time|time remaining|minutes
    left|countdown|time to go|minutes remaining|time still to go) [(on|for|in|with) [<the>]
    {target:open}] [timer]`,
    "what is [still] (left|remaining|still left) (on|for|in) [<the>] {target:open} [timer]",
    `what (does|do|is) [<the>] {target:open} [timer] (have left|say|got left|have to go|have|at|
    have remaining|on|down to)`,
    `(how is the time|how are we for time|how are we doing for time|how are we doing on time|how
    is the time doing|how am i doing for time|how is the clock|what does the clock say|what does
    the timer say|where is the timer|where is the timer at|time check|what is on the clock|
    check the timer|check the timers|check the clock|what are the timers|what are the timers at|
    what is the timer at|what is the timer on) [on|for|with] [[<the>] {target:open}]`,
    `(are we|is it) (almost|nearly|close to|getting close to) (done|there|time|finished|over)
    [on|with|for] [[<the>] {target:open}]`,
    "(is|are) [<the>] {target} (almost|nearly|close to) (done|ready|finished|out)",
    `[<the>] {target} (how long|how much longer|time left|how many minutes|how much time) [left|
    to go]`,
    `(tell me|let me know) how (long|much longer|much time) [is left|we have|is left on it|it
    has|it has left|they have|they have left|there is|to go|it has got|they have got] [on|for]
    [[<the>] {target:open}] [has|have] [left|got]`,
    "when (is|are) [<the>] {target:open} timer (going off|going to go off|up|done|over|due)",
    `(when|how soon) (does|will|do) [<the>] {target:open} timer (go off|ring|end|finish|run out|
    be done|be up)`,
  ],
  spoken: [
    "(how long|how much longer) [for the {target:open}]",
    "how much time is left",
    "how long have the {target:open} got",
  ],
  bags: [
    {
      asking: true,
      must: ["<how-long>|time left|[the] time (on|for|with)|minutes left|hours left|left on"],
      may: `
        <asked-of-it>|<the> timer|[<the>] {target}|left|to go|longer|more|yet|still|until|till|
        till|go|before|done|ready|finished|out|off|over|up|come out|the jars|jars|wait|need|
        needs|take|takes|cook|process|boil|remaining|time|on|in|for|with|got|get|the clock|
        clock|is up|goes off|rings|check|what|keep|going|canner|finish|end|ends|everything|be|i
        am|we are|looking at|talking
      `,
    },
  ],
  lists: {
    "how-long": `
      how long|how much longer|how much time|how many minutes|how many more minutes|how much
      more time|how long still|how much time still|how many hours|about how long|how much more|
      how many minutes more|for how long|how long left|how much time left|how many minutes left|
      how long to go|how soon|roughly how long|what time left|how many more hours|how many
      seconds|how far|how much time remaining|how much time is left|how long is left|how many
      minutes are left|how many minutes remain|how much time remains|how long remains|how much
      is left
    `,
  },
};
