import type { Finish, MeaningOf } from "./meaning.ts";
import { finishUncovered } from "./uncovered.ts";

/** "It's only simmering" is how it should be, but for what has to boil. */
const finishBoilLost: Finish = (raw, context, plain, said) => {
  const timed = context.loads?.some(({ stages }) => stages.some((stage) => stage.timed));
  const simmers = raw.simmers === true && !timed;
  return simmers ? undefined : finishUncovered(raw, context, plain, said);
};

/** A boil that was there is lost. */
export const boilLost: MeaningOf<"boil-lost"> = {
  cost: "raising",
  tellsOf: { about: "boil", goes: true },
  report: true,
  when: ["stage:pot", "load:in-water"],
  slots: { target: "name", at: "instant", uncovered: "flag" },
  parts: ["simmers"],
  finish: finishBoilLost,
  example: "it stopped boiling",
  topical: true,
  wordings: [
    "(it|{target}) went (flat|still|quiet) [no more boil|there is no boil|no boil] [<when>]",
    `[(<it>|{target}|<we>)] [has|have|is|just|has just] (went|gone|fell|fallen|dropped|come|
    came|slipped|going|drifted|is|are|falling|dropping|coming) (off|out of|below|under|from)
    (the|a|its|it is|full|rolling|my) [<full>] (boil|boiling) [<when>]`,
    `[(<it>|{target}|<we>)] [has|have|just|has just|is] (went|fell|fallen|dropped|gone|dropping|
    falling|down) [back] [down] (below|under) (boiling|a boil|the boil|a rolling boil|the
    boiling point) [<when>]`,
    `[(<it>|{target}|<we>)] [has|have|just|has just] (stopped|quit|ceased) (boiling|bubbling|
    rolling) [<when>]`,
    "[(<it>|{target}|<we>)] [is|are] (no longer|no more) <boil-state> [<any-more>] [<when>]",
    "(<it>|{target}|<we>) (is|are) not <boil-state> (any more|any longer) [<when>]",
    "not <boil-state> (any more|any longer) [<when>]",
    "[(<it>|{target})] no longer (boils|boiling) [<when>]",
    `<we> [have|just|have just] (lost|lose|are losing|losing) [the|our|my|its|it is] [<full>]
    [<full>] (boil|rolling boil|boiling) [<when>]`,
    `[just] (lost|losing) [the|our|my] [<full>] [<full>] boil [{target}|in {target}|on {target}]
    [<when>]`,
    `(<it>|{target}) [has|have|just|has just|is] (lost|losing|lost it is|lose) [the|its|it is|
    their] [<full>] [<full>] boil [<when>]`,
    `[the|our|my] [<full>] boil [has|is|has just|just] (<gone>|lost|stopped|over|went out|went
    off|went away|went down|went|been lost|broken|faltered|fell off|dropped|fell|fell away|gave
    out|given out|let up|gone out|gone down|gone off|gone away|gone flat) [<when>]`,
    `[<the>] boiling [has|is|just|has just] (stopped|quit|died down|ended|gone|died|let up|
    slowed down|ceased|died away|fizzled|fizzled out) [<when>]`,
    `[(<it>|{target})] [has|just|has just|is] (went|gone|dropped|come|fell|fallen|died|dying|
    calmed|settled|dropping|down) [back] [down] to (a|just a|only a|nothing but a|barely a|
    bare) (simmer|bare simmer) [<when>]`,
    `(<it>|{target}|<we>) (is|are) (back|down|back down) to [just|only|barely|hardly] [a|a bare]
    (simmer|simmering) [<when>]`,
    "(<it>|{target}) (has|have) gone (flat|still|quiet) [<when>]",
    "no [more] boil [any more|any longer|now|in {target}] [<when>]",
    "there is no [longer a] boil [any more|now] [<when>]",
    `(<we>|{target}|<it>) (do|does) not have [a|the|its|our] [<full>] [<full>] boil (any more|
    any longer) [<when>]`,
    "[the|our] [<full>] boil was (lost|gone|interrupted|broken) [<when>]",
    "<it> (stopped|quit) [boiling|bubbling] on (me|us) [<when>]",
    "boil (lost|gone|broken|interrupted) [in {target}|on {target}|{target}] [<when>]",
    "off the boil [<when>]",
    `[<the>] <burner> [has|have|just|has just|is] (went out|gone out|out|died|dead|blew out|blown
    out|quit|cut out|turned itself off|ran out|run out|ran dry) [on (me|us)]
    [under (it|the canner|the jars)] [<when>]`,
    `[there is|i have got|we have got] no (flame|fire|gas|heat) [left|at all] [under (there|here|it|
    them|<the> (canner|pot|jars))] [now] [<when>]`,
    `[<the>] [gas|propane|tank] regulator (froze|has frozen|is frozen|iced|has iced|quit|has quit)
    [up|over|solid|shut] [<when>]`,
    "[<the>] (power|electricity|pilot|pilot light) [has|just] (went|gone|is) off [<when>]",
    "<we> [have|just|have just] (ran|run) out of (gas|propane|heat) [<when>]",
    `(<it>|{target}) is [down to] (only|just|barely|hardly) [at] [a] (simmer|simmering) [now]
    [<when>] {simmers=true}`,
    `<we> [have|just|have just] [accidentally] (turned|switched|shut|knocked) (it|the heat|the
    burner|the gas|the stove|the flame|the wrong burner|the canner) off (by (mistake|accident)|
    accidentally) [<when>]`,
    `<we> [have|just|have just] [accidentally] (turned|switched|shut|knocked) off (it|the heat|the
    burner|the gas|the stove|the flame|the canner) (by (mistake|accident)|accidentally) [<when>]`,
    `<we> [have|just|have just] accidentally (turned|switched|shut|knocked) (it|the heat|the burner|
    the gas|the stove|the flame|the canner) off [<when>]`,
  ],
  spoken: [
    "it stopped boiling",
    "the {target} stopped boiling",
    "it went off the boil",
    "we lost the boil",
    "the boil stopped",
  ],
  bags: [
    {
      must: ["<boil-any>", "<boil-loss>"],
      may: `
        <said-of-it>|{target}|<when>|[for] [about] {at:lasting}|on (me|us)|its|their|i|
        completely|totally|somehow|entirely|down|away|back|altogether|went
      `,
    },
  ],
  lists: {
    gone: `
      gone|lost|out|off|dead|dropped|dropped off|died|died down|died off|died away|dying|
      fallen|fallen off|faded|stopped|quit|down|broken|interrupted
    `,
    burner: `
      flame|burner|gas|fire|pilot|pilot light|stove|hob|propane|heat|power|electricity|electric
    `,
    "any-more": "any more|any longer|now|at all|again",
    "boil-any": `
      [the|our|my|a|that|its|it is] [<full>] [<full>] (boil|boiling|bubbling|roll|rolling)
    `,
    "boil-loss": `
      (lost|losing|stopped|quit|died|dropped below|fell below|dropped under|off|no more|no
      longer|gone flat|gone out|gone|went flat|went out|went away|went off|quitting|stopping|
      ended|faded|gave out|dying|dead|broke|slipped below|petered out|fizzled|fizzled out|
      dropped off|fell off|fallen off|out of|down from|come off|came off|not any more|dropped
      out of|fell out of|ceased|let up)
    `,
    "boil-state": "boiling [<hard>]|rolling|(at|on) (a|the) [<full>] [<full>] (boil|roll)",
  },
};
