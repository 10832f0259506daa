import type { MeaningOf } from "./meaning.ts";

/** What there is to do at this moment. */
export const whatNow: MeaningOf<"what-now"> = {
  cost: "harmless",
  when: ["always"],
  slots: {},
  example: "what now",
  forgiving: true,
  givesWay: ["done", "resume"],
  wordings: [
    `what do you (want|need) me (at|on|doing|to do|to be doing|to be at|to be on|working on) [now|
    next|then]`,
    `what is it (you want me to do|i am (to do|meant to do|supposed to do)|i (should|need to) do)
    [now|next then]`,
    `i [have] lost (my place|track) [what (am i (meant|supposed|to) [to] (be doing|do|be at)|do i
    do|should i be doing|was i doing)] [now]`,
    `what is (to do|to be done|there to do|for me to do|there for me to do|left to do|left for me
    to do) [now|right now|here]`,
    `(is there|have you got) (anything|something) (for me|i can do|i should do|to do|i can be
    doing) [to do] [now|right now]`,
    `what (are|should|do) my hands (supposed to be doing|supposed to do|be doing|doing|do|need to
    do|to be doing|be on)`,
    `what (can|should|do) i (be getting on with|get on with|get started on|be getting ready|do in
    the meantime|do meanwhile|do while i wait)`,
    `[and|so] what (now|do i do|do i do now|should i do|should i do now|should i be doing|am i
    doing|am i doing now|do we do|do we do now|should we do|should we be doing|am i supposed to
    do|am i supposed to be doing|am i to do|needs doing|needs doing now|needs to be done|needs
    me|needs me now|needs my hands|are my hands for|is my job|is my job now|is needed|is needed
    now|do you need|do you need me to do|do you want me to do|are we doing|are we doing now|are
    we on|is it now|must i do|shall i do|would you like me to do|can i do|can i do now|can i be
    doing|is to be done|should i be working on|needs attention|needs my attention|are we
    supposed to do|do i need to do|do i need to be doing|have i got to do|have i to do|is for me
    to do|is on my plate|am i meant to do|am i meant to be doing|is the current step|is the
    current stage|step are we on|step am i on|stage are we on|stage am i on|step is this|do i
    need to do now|do you want now|do i have to do|is there to do|are you waiting on|are you
    waiting for|do you need from me|is waiting on me|is waiting for me|do my hands do|wants
    doing|is up|is up now|to do|task am i on|should i be on) [now|right now|at the moment|here|
    just now|at this point|this minute|today|at present]`,
    `where (was i|were we|am i|did we leave off|did i leave off|did we stop) [now|at|in this|in
    the recipe|in all this|then]`,
    "where are we [now|right now|in this|in the recipe|in all this]",
    "what (step|stage) (are we|am i) (on|at|in) [now]",
    "what is (the|this|my) (current|present) (step|stage|job|task)",
    "(what is|which is) (the|my) (job|step|task|current step) [now|right now]",
    `(tell|give|show|remind) me what (to do|i should do|i should be doing|i do|needs doing|i need
    to do|we are doing|i am doing|i am supposed to do|i am supposed to be doing|now|i have to
    do|my job is) [now|right now]`,
    `[give|tell|read] me (my job|the current step|the step i am on|something to do|my orders|my
    instructions|my task)`,
    "(what am i|what are we) (on|at|up to) [now]",
    `(remind me where we are|remind me where i am|current step|my job|what should my hands be
    doing|anything for me to do|is there anything for me to do|anything for me|anything i should
    be doing|is there anything i should do|is there anything i should be doing|do you need me|
    am i needed|anything i need to do|is there anything i need to do|anything to do|do you need
    anything from me|do i need to do anything|do i need to do anything now|anything need doing|
    tell me the current step|anything for my hands)`,
    "what (exactly) (should|do) i do now|now what|what is going on with my hands",
  ],
  spoken: ["what now", "what do i do now"],
  bags: [
    {
      asking: true,
      must: [
        "what|anything|something|which|where|tell me what",
        `(i|we|me|my|us|hands) [be|should|need|have|supposed]|step|stage|needs doing|needs my|
        needs me|current`,
      ],
      may: `
        <asked-of-it>|now|right now|do|doing|to|should|supposed|be|need|needs|job|task|step|
        stage|on|at|for|is|the|here|current|hands|working|attention|doing|at the moment|moment|
        there|next step|must|plate|waiting|present|this minute|minute|getting|with|busy|of|in|
        thing|something
      `,
    },
  ],
};
