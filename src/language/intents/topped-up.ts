import type { MeaningOf } from "./meaning.ts";

/** A brine or syrup was stretched, or jars were topped up, with something else. */
export const toppedUp: MeaningOf<"topped-up"> = {
  cost: "raising",
  report: true,
  when: ["working"],
  slots: { with: "text" },
  example: "I stretched the brine with water",
  wordings: [
    `<we> [have] [just] (topped|filled|eked) [<brew>|them|the jars|it] (up|out) [<brew>] with [some|
    a little|a bit of|plain|a cup of|boiling|hot] {with:thing}`,
    `<we> [have] [just] (stretched|thinned|diluted|watered|lengthened) (<brew>|it) [out|down] with
    [some|a little|a bit of|plain|a cup of|boiling|hot] {with:thing}`,
    `<we> [have] [just] added [some|a little|a bit of|plain|a cup of] {with:thing} to (<brew>|make
    it (go further|last|stretch|reach))`,
    "<we> [have] [just] (watered|thinned) (<brew>|it) [down] {with=water}",
  ],
  lists: { brew: "the (brine|syrup|vinegar|liquid|pickling liquid|juice|last jar|last jars)" },
};
