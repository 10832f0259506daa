import type { MeaningOf } from "./meaning.ts";

/** The pressure fell below what is needed. */
export const pressureLost: MeaningOf<"pressure-lost"> = {
  cost: "raising",
  tellsOf: { about: "pressure", goes: true },
  report: true,
  when: ["load:in-steam"],
  slots: { target: "name", at: "instant" },
  parts: ["value"],
  example: "the pressure dropped",
  doubting: ["should"],
  wordings: [
    `[<the>] (pressure|gauge|needle|dial|pressure gauge) <dropped> (off|away|down|low|too low|
    low on me|down on me|back|way down) [<when>]`,
    `[<the>] (pressure|gauge|needle|dial|pressure gauge) (dropped|fell|has dropped|has fallen|is
    dropping|is falling|sank|slipped|has slipped|drops|dipped|slid|went down|is sinking) [off|
    away|down|low] [on me|on us|again|too low|now|below target] [<when>]`,
    `[<the>] (pressure|gauge|needle|dial|{target}|it) <dropped> [back] [down] (below|under|less
    than) [the] [target|pressure|{value:number}|where it should be|where it needs to be|what we
    need|what it should be|where we need it] [<psi>|pressure|mark|line|target] [<when>]`,
    `[<the>] (pressure|gauge|needle) (dropped|fell|sank|slipped|dipped|has dropped|has fallen|
    has slipped|has dipped|slid|went down|dropped off|fell off) [down] to {value:number} [<psi>|
    <kpa>] [<when>]`,
    `<it> (dropped|fell|sank|slipped|has dropped|has fallen|dipped|has slipped|went down|has gone
    down) [down] to {value:number} (<psi>|<kpa>) [<when>]`,
    `<we> [have|just|have just|are] (lost|losing|lose) [the|our|all|some|all the] [steam]
    pressure [<when>]`,
    `[<we>|i] [have|are] [just] (lost|losing|lose) [the|our|all|our] pressure [in|on|at] [<the>]
    {target} [<when>]`,
    "(lost|losing|just lost) [the|our|all] pressure [<when>]",
    `(<it>|{target}) [has|just|has just|is] (lost|losing|lost it is|lost its) [its|it is|the|
    some|all] pressure [<when>]`,
    `[the] pressure (is|has) [been] (lost|gone|low|too low|gone down|dropping|falling|below
    target|off|under|not holding|going down|sinking|down|way down|slipping|gone low|fallen|
    dropped) [<when>]`,
    `(we are|it is|we are now|we have gone|it went|it has gone|it fell|it dropped|we dropped|we
    fell|we slipped|it slipped|we have dropped|it has dropped) (below|under) [the] (pressure|
    target|target pressure|{value:number} <psi>|pressure target) [<when>]`,
    "pressure (lost|drop|gone|down|dropped|fell) [<when>]",
    "no longer (at|up to|holding) pressure [any more] [<when>]",
    "not (at|up to|holding) pressure any more [<when>]",
    `(<it>|{target}|<we>) (is|are) not (at|holding|holding its|up to) pressure (any more|any
    longer) [<when>]`,
    `(<it>|{target}|<we>) (is|are) no longer (holding|holding its|holding the|keeping|at)
    pressure [any more|any longer|now] [<when>]`,
    "the pressure (will not|does not|would not|did not) hold [<when>]",
    "the pressure did not (hold|stay up|stay) [<when>]",
    `[<the>] (steam|steaming|venting|column of steam|plume of steam|plume) [has|have|just|has
    just|is|was] (stopped|quit|gone|died|died down|died away|lost|let up|ended|broken|gave out|
    petered out|faltered|dropped off) [coming|coming out] [on me|now] [<when>]`,
    `(<it>|{target}|<we>) [has|have|just|has just] (stopped|quit) (steaming|venting|blowing
    steam|letting off steam|putting out steam) [now] [<when>]`,
    "(no [more] steam|there is no [more] steam) [any more|any longer|now|coming out] [<when>]",
    "[<we>] [have|just|have just] (lost|losing) [the|our|all the] [column of] steam [<when>]",
    "[<the>] <weight> [has|have|just|has just] (stopped|quit) [<rocking>] [on me] [<when>]",
    "[<the>] <weight> is (no longer <rocking>|not <rocking> (any more|any longer)) [<when>]",
  ],
  spoken: ["the pressure dropped", "we lost pressure", "the pressure is down"],
  bags: [
    {
      must: ["<gauge-name>", "<falling>"],
      may: `
        <said-of-it>|i|on me|on us|<when>|again|fast|from|to|than|too|way|back|off|away|a lot|
        quick|{number} [<psi>]|target|the mark|where it should be|what it should be|what we
        need|a bit|where it needs to be|where we need it|below|under|in the canner|canner|all|
        some|some of|bit
      `,
    },
  ],
  lists: {
    dropped: `
      dropped|fell|went|has dropped|has fallen|has gone|is dropping|is falling|has come|came|
      sank|has sunk|slipped|has slipped|is going|drops|is|dipped|has dipped|slid|has slid|got|
      has got
    `,
    falling: `
      (dropping|dropped|drops|falling|fell|falls|fallen|lost|losing|gone|sinking|sank|going
      down|slipping|slipped|sagging|sagged|went down|slid|sliding|tanked|tanking|dipped|
      dipping|too low|bled off|bleeding off|came down|come down|coming down|crashed|dwindling|
      not holding)|
      (is|has gone|went|gone|getting|got|gotten|are|now) (low|down|below target|under)|
      (below|under|less than) (target|the mark|{number}|where it should be|where it needs to be)
    `,
  },
};
