import { askedForIn } from "../values/asked-for.ts";
import { namedIn, withRecipe } from "../values/named-recipe.ts";
import type { MeaningOf } from "./meaning.ts";

/** An amount, or another figure of the recipe. */
export const howMuch: MeaningOf<"how-much"> = {
  cost: "harmless",
  when: ["working"],
  slots: {
    target: "name",
    recipe: "name",
    what: "text",
    subject: "name",
    amount: "number",
    unit: "word",
    size: "size",
  },
  example: "how much dill per jar",
  finish: ({ what }, context, plain, said) => {
    const named = withRecipe(namedIn(said, context, plain));
    return { slots: { ...named, ...(what as object), ...askedForIn(said.words) } };
  },
  wordings: ["{what:asked}"],
  spoken: ["{what:asked}"],
};
