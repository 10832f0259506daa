import type { MeaningOf } from "./meaning.ts";

/** A reminder at a future time. */
export const remind: MeaningOf<"remind"> = {
  cost: "changing",
  inPieces: true,
  when: ["always"],
  slots: { when: "instant", text: "text" },
  example: "remind me at six to check the crock",
  wordings: [
    "[<want>] <remind-me> {when:future} <remind-to> {text}",
    "[<want>] <remind-me> [<remind-to>] {text} {when:future}",
    "[<want>] <remind-me> <remind-to> {text}",
    "[<want>] <remind-me> {when:future} [that] {text}",
    "{when:future} <remind-me> <remind-to> {text}",
    `[<want>] (set|make|add|put in|create|leave) [me] (a|another) reminder [for] {when:future}
    <remind-to> {text}`,
    `[<want>] (set|make|add|put in|create|leave) [me] (a|another) reminder <remind-to> {text}
    {when:future}`,
    "[<want>] (set|make|add|put in|create) [me] (a|another) reminder <remind-to> {text}",
    "reminder [for] {when:future} [<remind-to>] {text}",
    "reminder [<remind-to>] {text} {when:future}",
    "do not let me forget [to|that|about] {text} {when:future}",
    "do not let me forget {when:future} [to|that] {text}",
    "do not let me forget [to|that|about] {text}",
  ],
  lists: {
    "remind-me": `
      remind me|remind us|remember to remind me|remember to tell me|nudge me|tell me|prod me|i
      need reminding|i need a reminder|i need to be reminded|give me a reminder|jog my memory|
      poke me|prompt me|i want a reminder|i would like a reminder|you remind me|i want to be
      reminded|ping me|make sure i remember|help me remember|be sure to remind me
    `,
    "remind-to": `
      to|that|about|that i need to|that i have to|i need to|that we need to|i should|i have to|
      of|so i|it is time to|that it is time to|saying|saying to|that i should|for|we need to|we
      have to|i want to|i must|regarding|i am to
    `,
  },
};
