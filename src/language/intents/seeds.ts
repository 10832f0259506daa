import type { MeaningOf } from "./meaning.ts";

/** Saved seed: what there is, how it sprouted, how long it lasts. */
export const seeds: MeaningOf<"seeds"> = {
  cost: "harmless",
  asked: true,
  when: ["always"],
  slots: { target: "name" },
  example: "what seed have I saved",
  wordings: [
    "what (seed|seeds) (have|do|did) (i|we) (save|saved|have|got|kept|put away) [up]",
    `how (good|old|fresh) (is|are) [<the>] [{target:open}] (seed|seeds)`,
    `how long (do|does|will|can) [<the>] [{target:open}] (seed|seeds) (keep|last|stay good|be good|
    store|live) [for]`,
    `(how many|what share|what part) [of] [<the>] [{target:open}] (seed|seeds) (sprouted|germinated|
    came up|grew)`,
    `how (did|was) [<the>] [{target:open}] (germination test|germination|seed test|test) (go|come
    out|turn out)`,
    "what (is|was) the germination [rate] [of [<the>] {target:open}] [seed|seeds]",
    "(is|are) [<the>] [{target:open}] (seed|seeds) [still] (good|alive|any good|too old|viable)",
    "(do|should|must) (i|we) sow [<the>] [{target:open}] [seed|seeds] (thicker|more thickly|thick)",
    "what do (you|we) know about [<the>] [{target:open}] (seed|seeds)",
    "how thick (do|should|must) (i|we) sow [<the>] [{target:open}] [seed|seeds]",
    "will [<the>] [{target:open}] (seed|seeds) [still] (sprout|come up|germinate|grow)",
  ],
};
