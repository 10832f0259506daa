import type { MeaningOf } from "./meaning.ts";

/** A held batch goes on. */
export const resume: MeaningOf<"resume"> = {
  cost: "changing",
  when: ["working"],
  slots: { target: "name" },
  example: "carry on with the beets",
  forgiving: true,
  topical: true,
  givesWay: ["focus"],
  wordings: [
    `[<let>] (resume|continue|carry on|go on|keep going|proceed|get going again|get going|get
    back to it|get on with it|keep on|pick up where we left off|pick it back up|press on|go
    again|start again|start up again|unpause|restart the prompts|back to work|get back to work|
    go back to work|keep at it|get moving|get moving again|move along|push on|get rolling again|
    pick it up again|carry on where we left off|go on from there|get back at it|go ahead and
    continue|continue on|continue where we left off|take up where we left off|go on with it|go
    back to it|get on) [with it|now|again|then|from here|from there|with everything|where we
    left off|with that]`,
    `[<let>] (resume|continue|continue with|carry on with|go on with|keep going with|keep going
    on|unpause|pick up|take up|get on with|get back to work on|restart|go ahead with|press on
    with|proceed with|take off hold|pick up with) [<the>] {target} [again|now]`,
    "[<let>] (get going|get started|start|go|get on|get moving) [with|on] [<the>] {target} again",
    "[<let>] (pick|take|start|get) [<the>] {target} (back up|up again|going again) [now]",
    "[<let>] (take|get) [<the>] {target} off hold",
    "[<let>] take (it|that|everything) off hold",
    `(i am|we are|i have come|all right i am|okay i am) (back|back now|ready again|back at it|
    here again|ready to go on|ready to continue|ready to carry on|ready to resume|back again|
    back in the kitchen|ready to go again|ready to keep going)`,
    `(back to it|back to work|break is over|break over|off we go|off we go again|on we go|
    onward|let us roll|ready to go on|ready again|ready to continue|back now|let us go|let us go
    on then|back at it|okay go|end of break|go on then|pause over)`,
  ],
  spoken: ["carry on [with the {target}]", "resume [the {target}]"],
  bags: [
    {
      must: [
        `back|resume|continue|carry on|keep going|go on|proceed|ready|going again|unpause|press
        on|pick up|pick it up`,
      ],
      may: `
        <let>|i am|we are|i|we|am|are|to|it|with|on|again|now|going|get|getting|work|where we
        left off|go|[<the>] {target}|from|here|there|everything|that|the|okay|keep|carry|move|
        all|set|start|up|and|rolling|cooking|moving|this|things|at it|now then|done waiting|
        break is over|you can
      `,
    },
  ],
};
