import type { MeaningOf } from "./meaning.ts";

/** What is poured over the produce ran out, or more of it is made. */
export const brewMade: MeaningOf<"brew-made"> = {
  cost: "changing",
  tellsOf: { about: "jars" },
  plainly: true,
  report: true,
  when: ["stage:filling"],
  slots: { target: "name", count: "count", jars: "numbers" },
  example: "the brine ran out",
  wordings: [
    `[the|our|my|this|that] <brew> (ran out|has run out|is all gone|is gone|is all used up|is used
    up|gave out|did not reach|did not last|was not enough|is all out) [on (me|us)]
    [<after>|<at-jar>]`,
    `[<we>] (have run out|ran out|have just run out|just ran out|are out|are all out|am out|am all
    out) of [the] <brew> [<after>|<at-jar>]`,
    `[<we>] (making|am making|are making|made|made up|have made|have made up|am boiling|are
    boiling|am mixing|are mixing|mixed|am mixing up|are mixing up|mixed up|am starting|are
    starting|started|have started|am cooking|are cooking|am heating|are heating|put on|am putting
    on|have put on) <more> [<after>] [for [<the>] {target}]`,
    "<more> [is on|is on the stove|is coming|is going on|goes on] [now]",
  ],
  spoken: ["the brine ran out", "i am making another pot of brine"],
  lists: {
    brew: "(brine|syrup|pickling liquid|cooking liquid|covering liquid|liquid|broth)",
    more: `
      (another|a second|a new|a fresh|one more|a third) (pot|pan|batch|kettle|potful|round|lot) of
      [the] <brew>|(another|a second|a new|new|fresh|more|some more|a fresh|a third) <brew>|
      (another|a second|a fresh) (pot|potful)
    `,
    "at-jar": "(after|with|at|on) <numbered>",
    after: "(after|with|at) {count} [jars|pints|quarts|half pints|filled|of them] [filled|full]",
  },
};
