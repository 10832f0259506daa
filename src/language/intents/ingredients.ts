import { withRecipe } from "../values/named-recipe.ts";
import type { MeaningOf } from "./meaning.ts";

/** The ingredients, one at a time. */
export const ingredients: MeaningOf<"ingredients"> = {
  cost: "harmless",
  asked: true,
  when: ["always"],
  slots: { target: "name", recipe: "name" },
  example: "read me the ingredients one by one",
  finish: ({ target }) => ({ slots: withRecipe(target) }),
  wordings: [
    `(read|give|tell|list) [me] [out] [all] (the ingredients|the recipe|what goes in|the amounts|the
    quantities|everything that goes in) [(for|of|in|into) [<the>] {target}] <one-by-one>`,
    `(read|give|tell) [me] [<the>] {target} (ingredients|recipe) <one-by-one>`,
    `[can you] <one-by-one> [now] [read|give|tell] [me] (the ingredients|what goes in) [(for|of|in)
    [<the>] {target}]`,
    `(read|give|tell) me (one|the first|the next) ingredient [and then wait|and wait|at a time|
    first|
    and then wait till i find it]`,
    "(first|next) ingredient|what is the (first|next) ingredient",
    `(go|walk|run|take me|walk me) through the ingredients [with me] [(for|of) [<the>] {target}]
    [<one-by-one>]`,
    "i want to (measure|weigh|get) [out] (the ingredients|everything) <one-by-one>",
  ],
  lists: {
    "one-by-one": `
      [slowly] (one by one|one at a time|slowly|line by line|one after the other|one after another|
      a line at a time|step by step|one thing then the next|one thing at a time)
    `,
  },
};
