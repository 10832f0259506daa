import type { MeaningOf } from "./meaning.ts";

/** What follows the work at hand. */
export const whatNext: MeaningOf<"what-next"> = {
  cost: "harmless",
  when: ["always"],
  slots: {},
  parts: ["target"],
  example: "what's next",
  forgiving: true,
  givesWay: ["done"],
  wordings: [
    "what is my next (move|task|job|thing|chore|step|duty|thing to do)",
    "what have (i|we) (to do|got to do) (next|after this|after that|then)",
    "[and] then what (do|should|will|would|can) (i|we) [do|be doing]",
    `what (will|would|is going to|should|does) (come|be|happen|follow) (next|after that|after
    this|then|afterwards)`,
    `what (stage|step|job|task) (follows|comes after this|comes after that|do we do next|do i do
    next|are we on next)`,
    `(what do|what will|what should) (i|we) (start|work on|tackle|do|move to|go to|get to|be on|
    begin) (next|after this|after that|then)`,
    `what (do|will|should|are) (we|i) [do|doing|be doing] (after|once|when) [<the>] ({target}|
    jars) [are done|is done|is finished|are finished|are out|come out]`,
    `what (comes|happens|is|goes) (after|following) [<the>] ({target}|jars|process|boil|step|
    stage|processing|venting|cooling|<doing>) [are done|is done|is finished|are finished|are
    out|come out]`,
    `[and|so] what (is|comes|happens|do i do|do we do|goes|follows|will i do|am i doing|are we
    doing|should i do|is there|is coming|will happen|else is coming|is due|shall we do|is the
    plan|is to come|will we do|is up|is on) (after that|after this|next|then|afterward|
    afterwards|after|following that|following this|later|coming|after this one|after that one|
    coming up|coming next|up next|due next|next up|the next step|next on the list|following|on
    deck|after the next one|once that is done|once this is done|when this is done|when that is
    done|after i finish|when i finish this|after these|after it|from here|from there|from now)`,
    `what is (next|the next step|the next thing|the next stage|the next job|up next|coming up|
    coming|coming next|coming after this|the step after this|the step after|the following step|
    ahead|on deck|my next job|my next step|my next task|due next|our next step|the next task|
    next up|next on the list|next after this|next after that|the next one|the next thing to do|
    after the process|to follow|later)`,
    "what (comes|happens) (next|after that|after this|then|now|after)",
    "(and|so) (then|then what|next|after that|what then|after this|what next|what after that)",
    `(what then|then what|what next|what after that|what after this|after that what|and then|
    what follows|what comes next|coming up|after that|after this|what follows that|what follows
    this|what to do next|what is after)`,
    `what (will|should|do|would|must|can) (i|we) (do|be doing|need to do|have to do|start|get to|
    get ready|have) (next|after this|after that|then|afterwards|when this is done|once this is
    done|when that is done|later)`,
    `(tell|give|show|read) me (what is next|the next step|what comes next|what comes after|what
    comes after this|what happens next|what is coming|what is coming up|what to do next|what i
    do next|the next thing|what is after this|what is after that|what we do next|what follows|
    my next job|the step after this)`,
    `(which|what) (step|stage|job|task|batch|load|one) (is|comes|goes) (next|after this|after
    that|up next)`,
    `(what|which) is the next (batch|load|one|task|step) [after this|after that|in line|in the
    queue]`,
    "(what is|read me|tell me) the (step|stage|one|thing) after (this|that|this one|that one)",
    `(next what|look ahead|what is in store|where do we go from here|where do i go from here|
    what do we have coming up|what have we got coming|what have we got next|what do we have
    next|what have we got coming up|what have i got next|what do i have next|preview the next
    step)`,
  ],
  spoken: ["what is next", "what comes next"],
  bags: [
    {
      asking: true,
      must: [
        "what|which|tell me",
        `next|after this|after that|then|coming|coming up|follows|after this one|after that one|
        afterward|afterwards|following|to come`,
      ],
      may: `
        <asked-of-it>|step|stage|job|task|thing|happens|happen|comes|come|up|one|the|on the
        list|is|got|start|on|else|plan|for|to do|to|do|doing|in line|on deck|next|ahead
      `,
    },
  ],
};
