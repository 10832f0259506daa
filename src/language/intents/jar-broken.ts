import type { MeaningOf } from "./meaning.ts";

/** "The cracked one", "the jar that burst": it was told of before. */
const TOLD_OF =
  /\bthe (broken|broke|cracked|burst|busted|bust|smashed|shattered|split|(one|jar) (that|which)) /;

/** A jar is broken. */
export const jarBroken: MeaningOf<"jar-broken"> = {
  cost: "raising",
  tellsOf: { about: "jars" },
  report: true,
  when: ["stage:filling", "load:in-canner", "load:out", "asked:seals"],
  slots: { target: "name", count: "count", jars: "numbers", toldOf: "flag" },
  example: "a jar broke",
  finish: ({ target, count, jars }, _context, _plain, { text }) => ({
    slots: { target, count, jars, ...(TOLD_OF.test(text) ? { toldOf: true } : {}) },
  }),
  wordings: [
    "<numbered> [just|has|have|both] <broke> [<going-in>]",
    "<some-jars> [just|has|have] <broke> [<going-in>]",
    `(a|one|one of the|another|one of our|one of my) {count=1} (jar|jars|pint|quart|pints|
    quarts|half pint|pint jar|quart jar) [just|has] <broke>`,
    `[<we>|i] [have|got|have got|had|there is|there are|found] {count} (broken|cracked|busted|
    shattered) (jar|jars|one|ones|pint|quart|pints|quarts) [in the canner|here|in the pot|in the
    water]`,
    `[<we>|i] [have|just|have just] (broke|broken|cracked|dropped|dropped and broke|dropped and
    smashed|smashed) {count} (jar|jars|of the jars|of them|pint|quart|pints|quarts|jar on the
    floor)`,
    `[<we>|i] [have|just|have just] (broke|broken|cracked|smashed|dropped) (jar|number|jar
    number) {jars}`,
    `[<we>|i] [have|just|have just] (lost|had) {count} [jar|jars|pint|quart] (to breakage|in the
    canner|break|crack|shatter|break on me|to a crack|break in the canner|breakage|crack in the
    canner)`,
    `[<we>|i] [have] [just] lost {count} (jar|jars|pint|quart|pints|quarts) [[it|they|that one]
    [just] <broke>]`,
    `[the] bottom (fell|came|dropped|broke|cracked|blew|popped|has come|has fallen|has gone|
    went) (out|off|right out|clean off|clean out) [of] {count} (jar|jars|of the jars|of them|of
    them jars|of those jars|pint|quart)`,
    `[the] bottom (fell|came|dropped|broke|cracked|blew|popped) (out|off|right out) [of] [jar|
    number|jar number] {jars}`,
    `there is {count=1} (glass in the water|broken glass in the canner|broken glass in the water|
    a jar broken in the canner|a broken jar in there)`,
    "{count=1} (jar broke|broken jar|jar is broken|cracked jar|jar cracked|jar breakage)",
    "{count} (broken|cracked|broke) [jar|jars]",
  ],
  spoken: ["a jar broke {count=1}"],
  bags: [
    {
      must: [
        "{count} [<of-them>|jars|jar|pint|quart|pints|quarts|glass]|<numbered>|[jar|number] {jars}",
        "<broke>|broken|busted|shattered|cracked|smashed",
      ],
      may: `
        <said-of-it>|i|there|jar|jars|in|canner|water|pot|on me|on us|had|found|lost|in there|
        up|of {target}|{target}
      `,
    },
  ],
  lists: {
    "going-in": `
      [as (it|they) (was|were)|when (it|they) (was|were)] (going|coming|lifted) (in|into|out of) the
      (water|canner|pot|bath)|(when|as) (it|they|i|we) (went|put it|put them|poured|lowered it|
      lowered them|lifted it|lifted them) [in|into|out] [the (water|canner|pot)]
    `,
    broke: `
      broke|cracked|is broken|is cracked|has broken|has cracked|shattered|burst|has burst|bust|
      has bust|has gone and (split|cracked|broken|burst)|bust on me|has a crack|has a crack in
      it|blew|blew out|split|lost its bottom|exploded|went to pieces|broke in the canner|
      cracked in the canner|broke on me|cracked on me|broke in the pot|got broken|fell apart|
      are broken|are cracked|have broken|have cracked|broke its bottom|dropped its bottom|
      snapped|came apart
    `,
  },
};
