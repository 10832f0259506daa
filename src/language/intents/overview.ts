import type { MeaningOf } from "./meaning.ts";

/** Everything that is under way. */
export const overview: MeaningOf<"overview"> = {
  cost: "harmless",
  when: ["always"],
  slots: {},
  example: "what's running",
  forgiving: true,
  wordings: [
    `[<wants-to-know>] how (everything|things|it|it all|all of it|the whole lot) (is|are) [all]
    (going|doing|coming along|coming on|getting on|looking|shaping up|holding up)`,
    `how (is|are) [the] [whole] (show|lot|business|shebang|circus|operation|outfit) [all] (going|
    doing|coming along|coming on|getting on|looking|shaping up|holding up) [now|so far]`,
    `where are we (at|at now|with everything|with things|on everything|at with everything|at with
    things|at on everything)`,
    `what all (do we have|have we got|have i got|do i have|is) [going|running|on|cooking] [on|
    now|right now|here]`,
    "(run|go) (through|over) (everything|all) [that is] (going|running|on) [on] [now]",
    `(run|walk|take|talk) (me|us) through (everything|it all|what is going|what is running|what
    is on|the whole thing|everything that is going|everything that is running|everything that is
    on|all of it) [on|here|now]`,
    `how (is|are) (everything|things|it|we|it all|things going|all of it|all of this|everything
    else|this|all that|the kitchen|everybody|the batches|all the batches|the whole kitchen|my
    batches|everyone) [all] [going|doing|coming along|looking|coming|getting on|getting along|
    shaping up|holding up|faring|progressing|running|standing] [so far|along|now|today|in there|
    over there|in the kitchen]`,
    `what (is|are|have we|do we have|have i|do i have|have you|all is|all have we) [got]
    [everything|all|we|all] [running|going|on|going on|cooking|on the go|on the stove|in
    progress|active|happening|in the works|in the kitchen|under way|underway|on the boil|
    working|open|on the burners|on the heat|on right now|up] [now|right now|at the
    moment|in the kitchen|here|today|just now|on]`,
    `(what is the|give me the|give me a|give me an|tell me the|let me have a|let us have a|i want
    a|i need a|show me the|show me a|read me the|run me through the|show me an|how about a|can i
    get a|can i have a|may i have a|could i get a|read me a|read the) [full|quick|whole|brief|
    complete|short|general|kitchen] (status|overview|rundown|report|summary|state of play|state
    of things|lay of the land|situation|run down|status report|update|list|lay of the kitchen|
    big picture|state of the kitchen|recap|roundup|status update|picture|run through|whole
    picture|progress report|sitrep) [of everything|on everything|of the kitchen|please|for
    everything|of what is running|of all batches|of the batches|of where we are|of where we
    stand|now]`,
    `[full|quick|short|kitchen|brief] (status|overview|rundown|report|summary|status report|
    update|recap) [(of|on|for) (everything|it all|all of it|the kitchen|all the batches|all
    batches|the batches|things)]`,
    `(run|go|read|list) (down|over|through|off) (everything|it all|all of it|all the batches)
    [for me|with me|again]`,
    `(status|overview|rundown|report|summary|status report|update|sitrep|recap|progress report|
    full report|where do we stand|where do things stand|where does everything stand|where are we
    with everything|where are things|how do things stand|list everything|run it
    down for me|run it down|run everything down|bring me up to date|catch me up|fill me in|
    update me|bring me up to speed|what is where|what is everything doing|tell me everything|
    show me everything|how goes it|how is it all|what is the story|what is the state of things|
    list the batches|list all batches|list what is running|list the timers|what timers are
    running|what timers do i have|what timers are on|what timers have we got|what batches are
    running|what batches do we have|what batches have we got|how many batches are running|how
    many batches do we have|go over everything|read off everything|read everything off|what are
    we running|show me the kitchen|how many timers do i have|how many timers are running|show me
    all batches|show me all the batches|show all|tell me what is running|tell me what is going
    on|tell me what is on|tell me what we have on|tell me where we are|tell me where we stand|
    tell me how things stand|tell me how everything is going|tell me how everything is doing|
    tell me how we are doing|tell me how it is all going|tell me where everything is|tell me
    where everything stands|tell me where things stand|show me what is running|show me where we
    are|what is the situation|what is the state of the kitchen|what all is going|what all is
    running|what all have we got going|what all is on|what is all going on|list all timers|list
    all the timers|read me the timers) [now|today|right now|on everything]`,
    `(how far|how far along) (are we|is everything|are things|have we got|am i|are the batches|
    have we come) [with everything]`,
    `where (are|is|have) (we|everything|things|all the batches|everybody) [at|gotten to|got to|
    now|with everything|with it all|on everything|stand|standing] [now|right now]`,
  ],
  spoken: ["what is running"],
  bags: [
    {
      asking: true,
      must: [
        `status|rundown|overview|summary|update|recap|report|(everything|things|all of it|it all|
        whole kitchen|whole works|whole thing|all this|everybody|all the batches)`,
        `status|rundown|overview|summary|recap|how|where|what|fill me in|catch me up|run me
        through|bring me up|give me|tell me|show me|read me`,
      ],
      may: `
        <asked-of-it>|of|on|with|for|the|a|quick|full|kitchen|everything|things|going|doing|at|
        stand|is|are|stands|running|cooking|so far|to date|to speed|in|all|batches|going on|
        along|coming|progressing|holding up|looking|go|please|over|every|batch|pot|timer|
        timers|me|where|got
      `,
    },
  ],
};
