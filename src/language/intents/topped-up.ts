import type { MeaningOf } from "./meaning.ts";

/** A brine or syrup was stretched, or jars were topped up, with something else. */
export const toppedUp: MeaningOf<"topped-up"> = {
  cost: "raising",
  tellsOf: { about: "jars" },
  report: true,
  when: ["working"],
  slots: { with: "text", brew: "word" },
  example: "I stretched the brine with water",
  wordings: [
    `[<we>] [have] [just] (topped|filled|eked) [<poured>|it {brew=it}] (up|out) with <thinner>
    {with:thing}`,
    `[<we>] [have] [just] (topped|filled|eked) (up|out) <poured> with <thinner> {with:thing}`,
    `[<we>] [have] [just] (topped|filled|eked) [<jars>] (up|out) [<jars>] with <thinner>
    {with:thing}`,
    `[<we>] [have] [just] (stretched|thinned|diluted|watered|lengthened) (<poured>|<jars>|it
    {brew=named}) [out|down] with <thinner> {with:thing}`,
    `<we> [have] [just] added [some|a little|a bit of|plain|a cup of] {with:thing} to (<poured>|
    <jars>|make it {brew=named} (go further|last|stretch|reach))`,
    "[<we>] [have] [just] (watered|thinned) (<poured>|<jars>|it {brew=named}) [down] {with=water}",
  ],
  lists: {
    poured: "the (brine|syrup|vinegar|liquid|pickling liquid|juice) {brew=named}",
    jars: "them|the jars|the last jar|the last jars",
    thinner: "[some|a little|a bit of|plain|a cup of|boiling|hot]",
  },
};
