import type { MeaningOf } from "./meaning.ts";

const OF_TIME = /^(minutes?|hours?|seconds?|half|quarter|timers?|clock|longer|time)$/;

/** More time for a timer. */
export const timerAdd: MeaningOf<"timer-add"> = {
  cost: "changing",
  inPieces: true,
  when: ["timer"],
  slots: { target: "name", minutes: "number" },
  example: "add five minutes",
  // "Two more", with nothing that runs: of jars.
  finish: (raw, { timers }, _plain, said) => {
    const timed = said.words.some(({ word }) => OF_TIME.test(word));
    return timers.length === 0 && !timed ? undefined : { slots: raw };
  },
  forgiving: true,
  wordings: [
    `[<want>] (put|stick|throw|give|set|slap|pop|chuck) [on] (another|an extra|an additional|a
    further) {minutes:length} [more|extra|longer|additional] [on|onto|to|for|on to] [<the>]
    {target:timer} [timer]`,
    "{minutes:length} [more|extra] (on|to|onto|for) the (timer|clock)",
    "another {minutes:more} (on|to|onto|for) [<the>] {target:timer} [timer]",
    `(i|we) (need|want|could use|will need) [another] ({minutes:length} (more|extra|longer)|
    {minutes:more}) (on|for|onto) (the (timer|clock)|(that|this) (timer|one|clock)|[<the>]
    {target:timer} [timer])`,
    "[another|an extra|an additional] {minutes:length} [more|extra] (on|to|onto) the (timer|clock)",
    `[<want>] (put|add|stick|throw) [on] [another|an extra|an additional] {minutes:length} [more|
    extra] (on|to|onto) the (timer|clock)`,
    `[<want>] (add|tack|bump|tag) [on] [another|an extra|an additional|a further]
    {minutes:length} [more|extra|longer|additional] [on|onto|to|for|on to] [<the>]
    {target:timer} [timer]`,
    `[<want>] (put|add|stick|throw|tack|set|slap|tag|pop) [on] [another|an extra|an additional|a
    further] {minutes:more} [more|extra] (on|onto|to|for|on to) [<the>] {target:timer} [timer]`,
    `[<want>] (put|add|stick|throw|tack|give it|give me|give that|give them|give us|set) [on]
    [another|an extra|an additional|a further] {minutes:more} [more|extra|longer] [on|to] [it|
    that|the timer|the clock|this]`,
    `[<want>] add [an extra|another] {minutes:length} [more|extra] [to (it|that|the timer|the
    clock|this one|this)|on to it|on]`,
    `[<want>] give [<the>] {target:timer} [timer] (another|an extra|an additional|a further)
    {minutes:length} [more|longer|extra]`,
    "[<want>] give [<the>] {target:timer} [timer] {minutes:more} [more|longer|extra]",
    "[<want>] give (it|that|this|them) (another|an extra) {minutes:length} [more|longer]",
    `[an extra|another|a further] {minutes:more} [more|extra|longer] [on|for|to] [[<the>]
    {target:timer}] [timer]`,
    `(another|an extra|a further|an additional|extra) {minutes:length} [more] [(on|for|to)
    [<the>] ({target:timer}|timer)] [timer]`,
    "[<the>] {target:timer} [timer] needs (another|an extra) {minutes:length} [more|longer]",
    "[<the>] {target:timer} [timer] needs {minutes:more} [more|longer]",
    "(it|that|they|i|we) (needs|need|wants|want) (another|an extra) {minutes:length} [more|longer]",
    "(it|that|they|i|we) (needs|need|wants|want) {minutes:more} [more|longer]",
    `[<want>] (extend|lengthen|increase|bump|prolong|stretch|push|push back|bump up|push out)
    [<the>] [{target:timer}] [timer] (by|for|another|an extra) [another|an extra]
    {minutes:length} [more]`,
    "[<want>] (extend|lengthen|bump) (it|that) (by|for|another) [another] {minutes:length}",
    "[<want>] make [<the>] [{target:timer}] [timer] {minutes:length} longer",
    `[<want>] (leave|let) [<the>] {target:timer} (go|run|cook|for|on|in) [for|on|another]
    [another] {minutes:more} [longer|more]`,
    `[<want>] (let|leave|run) [<the>] {target:timer} [go|run|timer] [for] (another|an extra)
    {minutes:length}`,
    `[<want>] (let|leave) (it|that|them) [go|run|cook|have] [for] (another|an extra)
    {minutes:length}`,
    "{minutes:length} (more|longer|extra) [(on|for|to) [<the>] ({target:timer}|timer)] [timer]",
  ],
  spoken: ["add {minutes:length} [to the {target:known-timer} timer]", "{minutes:more}"],
  bags: [
    {
      asking: true,
      must: ["[another|an extra|an additional] {minutes:length} [more|longer|extra]", "<lengthen>"],
      may: `
        <want>|on|to|for|it|that|them|the|a|up|by|i|we|timer|clock|more|longer|extra|out|onto|
        of|is|this|(on|to|for|onto) [<the>] {target:timer} [timer]|{target} [timer]|get|on
        there|go|needs|need|(bump|push|extend|stretch|give|let|leave) [<the>] {target:timer}
        [timer] [up|out|go|run|have]
      `,
    },
  ],
  lists: {
    lengthen: `
      (more|another|extra|add|tack|bump|extend|longer|lengthen|stretch|increase|push|
      additional|prolong|tag)|
      (bump|push|extend|stretch|lengthen) [<the>] {target:timer} [timer] [up|out|by|back]
    `,
  },
};
