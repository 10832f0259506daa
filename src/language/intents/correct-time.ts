import type { MeaningOf } from "./meaning.ts";

/** The last report happened at a different time. */
export const correctTime: MeaningOf<"correct-time"> = {
  cost: "changing",
  when: ["working"],
  slots: { at: "instant" },
  example: "that was five minutes ago",
  unasked: true,
  wordings: [
    `[<no>] (that|it|this) (was|happened|started|began|should be|should have been|should read|
    really was|was actually|was really|must have been|would have been|ought to be|really
    happened|actually happened|really started|actually started|was more like|was about|were)
    [really|actually|in fact|more like|about|around|closer to|back] [at|since] [about]
    {at:moment} [already|not now|in fact|actually]`,
    "[<no>] (make|call|set|change) (that|it|the time) [to|at|really] {at:moment} [not now]",
    `[<no>] (i mean|i meant|i meant to say|make that|rather|correction|sorry|or rather)
    {at:moment}`,
    `[<no>] (i|we) (put|got|took|started|lit|did|noticed|saw|opened|closed|loaded|said|
    meant|added|filled|finished|should have said|forgot to say that was|forgot to say it was|
    set) (them|it|that|those|this|these) [in|out|up|on|off|down|going|over] [already|actually|
    really|at|back|more like] {at:moment} [already]`,
    `<no> (i|we) (turned|shut) (them|it|that|those|this|these) (off|down|up|on) [already|actually|
    really|at|back|more like] {at:moment} [already]`,
    `[<no>] (i|we) (actually|really) (put|got|took|started|lit|did|noticed|saw|opened|closed|
    loaded|turned|filled|finished|set) (them|it|that|those|this|these) [in|out|up|on|off|down|
    going] [already|at|back] {at:moment}`,
    `(they|those|these|it) (went|came|got|were|was) [in|out|on|off] [already|actually|really|at]
    {at:moment}`,
    `(that|it|this) (actually|really) (was|happened|started|began|went in|came out) [at|about|
    more like|around] {at:moment}`,
    `[<no>] (i|we) (was|were|am|are) late (saying|telling you|reporting) (that|it|so) [it|that]
    [was] {at:moment}`,
    `(fix|correct|change|adjust|move|amend) (that|the|that to|it|it to|the time on that) [time|
    start] [to|of that to|back to] {at:moment}`,
    "(correct|fix|change|set) the (time|start|start time) [of that] to {at:moment}",
    "correction [that|it] was {at:moment}|<no> {at:moment}|[<no>] not now {at:moment}",
    `[<no>] it (has been|has already been|is already|is) {at:lasting} [already|now|since that|
    since then]`,
    "(that|it|this) (was|happened) {at:lasting} (before|earlier|sooner|ago)",
    `(i should have (told you|said|mentioned)|i forgot to (tell you|say|mention)|i never (told
    you|said)|i meant to (tell you|say)) [that] (that|it|this) (was|happened|started|began) [at|
    about|around|back at] {at:moment}`,
    "{at:ago}",
  ],
  spoken: ["that was {at:ago}"],
  lists: {
    no: `
      whoops|no|actually|wait|sorry|correction|no wait|hold on|scratch that|oops|i mean|wait no|
      i was wrong|my mistake|hang on|to be exact|i meant|i meant to say|i should say|i should
      have said|let me correct that|to correct that|what i meant was|make that|not now|i forgot
      to say|i forgot to tell you|i forgot|truth is|come to think of it|on second thought|
      strike that|hold up|my bad|in fact
    `,
  },
};
