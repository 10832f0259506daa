import type { MeaningOf } from "./meaning.ts";

/** A warning some minutes before something ends. */
export const warnAhead: MeaningOf<"warn-ahead"> = {
  cost: "changing",
  when: ["working"],
  slots: { minutes: "number", target: "name" },
  example: "tell me five minutes before the beets are done",
  wordings: [
    `<warn> {minutes:length} (before|ahead|ahead of time|beforehand|in advance|early|before the
    end|before the time|before time|before it ends|before the time is up|before time is up)`,
    `<warn> {minutes:length} (before|ahead of) [<the>] {target} [is|are|has|have|comes|come|goes|
    ends|end|needs|finishes|stops] [to come] [done|up|out|ready|over|finished|off|through|to go]`,
    `<warn> {minutes:length} before (it|that|they|this) (is|are|has to|have to|comes|come|ends|
    end) [done|up|out|ready|over|finished|off|come out]`,
    `<warn> when [<the>] ({target}|it|that|there) (has|have|is|are) [only] {minutes:length} (left|
    to go) [on <the> {target}]`,
    `<warn> when there (is|are) [only] {minutes:length} (left|to go) [(on|for) [<the>] {target}]`,
    `[can i have|give me|i want|i need|i would like] [a|some] {minutes:length} warning [(before|
    on|for|of) [<the>] ({target}|end) [ends|is done|are done|is up|comes out|come out]]`,
  ],
  lists: {
    warn: `
      [<let>|please|can you|could you|will you|would you] (tell|warn|remind|alert|call|shout|
      shout at|give a shout to|ping|buzz|holler at|let) me [know] [a|about]|
      [<let>|please|can you|could you|will you|would you] give me a (shout|call|warning|heads
      up|holler|yell|reminder)
    `,
  },
};
