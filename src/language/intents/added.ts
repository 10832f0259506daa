import { foodsNamed } from "../../recipe/foods/name-foods.ts";
import type { Context } from "../context.ts";
import { wordSet } from "../grammar/word-set.ts";
import { spokenNames } from "../values/targets.ts";
import type { Word } from "../words.ts";
import type { MeaningOf } from "./meaning.ts";

/** Things that are put somewhere without going into the food. */
const NO_FOOD = wordSet(
  "jar jars lid lids band bands ring rings canner pot kettle rack burner note timer log water it",
  "them that this these those one ones more everything all things stuff seals label labels tape",
);

const INTO_JARS = /\bput (the |my |our |all the )?\w+ (\w+ )?(in|into) (the |my |our )?jars\b/;

/** "I put the beets in the jars": what a batch is of is not added to it. */
function isOwnFood(food: string, words: readonly Word[], context: Context): boolean {
  const all = words.map(({ word }) => word);
  if (!INTO_JARS.test(all.join(" ")) || all.some((word) => MORE.has(word))) return false;
  return (spokenNames(context).byName.get(food.toLowerCase())?.batches.length ?? 0) > 0;
}

const MORE = wordSet("some more extra also too few little handful besides");

/** Something was added to the food or the jars. */
export const added: MeaningOf<"added"> = {
  cost: "raising",
  tellsOf: { about: "jars" },
  report: true,
  when: ["working"],
  slots: { food: "text", amount: "text" },
  example: "I threw in a banana",
  parts: ["known"],
  finish: ({ food, amount, known }, context, _plain, { words: all }) => {
    if (isOwnFood(String(food), all, context)) return undefined;
    // "There's a crack in it" puts nothing in.
    if (known === true && foodsNamed(String(food)).length === 0) return undefined;
    const words = String(food ?? "").split(" ");
    const named = words.some((word) => !NO_FOOD.has(word)) && !NO_FOOD.has(words.at(-1) ?? "");
    return named ? { slots: { food, amount } } : undefined;
  },
  wordings: [
    `<we> [have] [just|also] (added|threw in|tossed in|dropped in|mixed in|stirred in|chucked in|
    slipped in) [<some>] {food:thing} [too|as well|besides|<into>]`,
    "<we> [have] [just|also] put in [<some>] {food:thing} [too|as well|besides]",
    `<we> [have] [just|also] (put|threw|tossed|dropped|stirred|mixed|chucked|slipped) [<some>]
    {food:thing} (in too|in as well|in besides|in also|in with them|in with it|<into>)`,
    `there (is|are) [<some>] {food:thing} in (it|them|there|this|each jar|every jar|the jars) [too|
    as well|besides] {known=true}`,
  ],
  lists: {
    some: "some|a|an|a few|a little|a bit of|a cup of|one|two|extra|more|a handful of|the",
    into: `
      in (it|them|there|each jar|every jar|the brine|the syrup|the pot)|to (it|them|each jar|
      every jar|the jars|the brine|the syrup)|into (it|them|the jars|each jar|the brine|the syrup|
      the pot)|in the jars
    `,
  },
};
