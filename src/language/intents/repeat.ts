import type { MeaningOf } from "./meaning.ts";

/** The last thing said, once more. */
export const repeat: MeaningOf<"repeat"> = {
  cost: "harmless",
  when: ["always"],
  slots: { slower: "flag", louder: "flag" },
  example: "say that again",
  forgiving: true,
  wordings: [
    `[sorry] i missed (what you said|the last bit|the last part|the last one|what you just said|
    your last|some of that|what that was)`,
    `[sorry] [i] (could|can|did|do) not [quite] (hear|catch|make out|get|understand|follow)
    (that|you|it|what you said|a word|a thing|the last bit|that one|that last bit|the last part|
    any of that) [over (<the>) (fan|noise|water|boil|racket|steam|din|radio|kettle|pot|canner)]`,
    "(what|how) (was|is) (that|the last one|it) [you said] [again|once more]",
    "once again [for me]",
    "what did you [just] (say|tell me|tell us|ask|ask me|want|announce) [again|just now]",
    "(run|say|give me|tell me) (that|it) (by|past) me (again|once more|one more time)",
    "let me (hear|have) (that|it|the last one) (again|once more|one more time)",
    `(would you mind|do you mind|could i trouble you [by|to]|mind) (repeating|saying|repeat|say)
    (yourself|that|it|that last bit|what you said) [again|once more|one more time]`,
    `(speak|talk) (up|louder|slower|more slowly|a bit louder|a little louder|a bit slower)
    [please]`,
    `(say|read|tell|speak|give|run|repeat|play|go over|go through|announce|state|read out|read
    off) [me|us|to me] (it|that|this|the last one|that last one|the last thing|the last bit|the
    last part|that part|that bit|that last bit|the instruction|the step|the instructions|the
    last step|that step|the whole thing|what you said|what you just said|your last|that one|the
    last instruction|the message|the last message|the prompt|the last prompt|that last part|
    this step|the current step|that last thing) [to me|for me|back|by me|me|out|over] (again|
    once more|one more time|over|back|over again|another time|a second time|one time more|
    louder|slower|slowly|more slowly|again slower|again louder|again slowly|again more slowly|a
    little louder|a bit louder|a bit slower|a little slower|up louder)`,
    `(say|read|speak|repeat) (that|it|this) [again] (louder|slower|{slower=true} more slowly|
    {slower=true} slowly|a little louder|a bit slower)`,
    `(repeat|say again|read again|come again|once more|one more time|again|pardon|pardon me|beg
    pardon|beg your pardon|i beg your pardon|sorry|say what|what|huh|eh|excuse me|play it again|
    run that by me again|run it by me again|say once more|louder|slower|more slowly|say it
    louder|say it slower|a little louder|a bit louder|a little slower|can not hear you|i can not
    hear you|i could not hear you|could not hear you|i did not hear you|i did not hear that|i
    did not catch that|did not catch that|i missed that|missed that|i missed it|missed it|i did
    not get that|did not get that|i did not hear|did not hear that|i did not quite catch that|i
    did not quite get that|i did not hear what you said|i could not hear that|could not hear
    that|i did not understand that|i did not follow that|i did not follow|what did you say|what
    was that|what did you just say|what was that again|what did you say again|what was it you
    said|what were you saying|what was that you said|what was the last thing|what was the last
    thing you said|what was that last thing|what was that last bit|what was that last part|what
    was that last one|what was the last step|what was the step again|what was it again|what is
    that again|what now again|how is that again|how was that|you said what|you were saying|what
    were you saying|one more time please|one more time louder|tell me again|tell me once more|
    tell me one more time|read me that again|remind me what you said|remind me what that was|
    let me hear that again|let me hear it again|i need to hear that again|i want to hear that
    again|hear that again|could i hear that again|can i hear that again|can i hear it again|may
    i hear that again|one more time for me|the last one again|last one again|that again|that one
    again|from the top|repeat after yourself|same again|say your last again|go over that again|
    go over it again|go through that again|give me that again|give it to me again|give me that
    one more time|give me that once more|back up and say that again|i forgot what you said|what
    was the question|what was the question again|repeat the question|say the question again|
    read that back|read that back to me|read it back|read it back to me|come back with that|
    louder please|i lost you|i lost that|i was not listening|i was not paying attention|say
    again please|please repeat|sorry what|sorry what was that|sorry i missed that|sorry i did
    not catch that|what what|wait what|wait what was that|wait what did you say|hang on what was
    that|hold on what was that) [again|please|for me|then|now|there|over the noise]`,
    `repeat (that|it|yourself|the last one|the last thing|the last step|the instruction|the
    instructions|what you said|the step|the question|this|please|the last bit|the last part|the
    message|the prompt|that last one|that last thing|that last part|that last bit|what you just
    said|the last instruction|that part|the current step|this step|the last prompt|the last
    message|the last announcement|your last|the last thing you said|the alarm) [again|for me|
    back|to me|please|louder|slower|once more|one more time|slowly|more slowly]`,
  ],
  spoken: ["say (that|it) again"],
  bags: [
    {
      asking: true,
      must: [
        `say|said|repeat|hear|heard|catch|caught|missed|miss|come again|pardon|once more|again|
        one more time|what was that|get`,
        `again|repeat|repeating|once more|one more time|not|could not|did not|missed|miss|what|
        pardon|over|catch`,
      ],
      may: `
        <asked-of-it>|that|it|me|last|bit|part|one|thing|was|were|did|could|you|i|please|quite|
        of|to|can|instruction|instructions|step|message|just|said|say|time|for|by|the|all|any|
        what|louder|slower|not|a little|a bit|slowly|what you said|over the (fan|noise|water|
        radio|steam|racket)|prompt|back|have|need|let|like|run|go|tell|give|read|hear|heard|
        sorry|would|mind|repeating|moment|line
      `,
    },
  ],
};
