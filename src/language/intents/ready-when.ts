import { withRecipe } from "../values/named-recipe.ts";
import type { MeaningOf } from "./meaning.ts";

/** When a batch may be eaten, or is at its best. */
export const readyWhen: MeaningOf<"ready-when"> = {
  cost: "harmless",
  asked: true,
  when: ["always"],
  ofRecord: true,
  slots: { target: "name", recipe: "name" },
  example: "when can we eat the pickled beets",
  finish: ({ target }) => ({ slots: withRecipe(target) }),
  wordings: [
    `(when|how soon|what day) (can|will|may|could|should) (we|i|you) [be able to] <eat> (it|them|
    these|those|[<the>] {target}) [jars|at the earliest]`,
    `(when|how soon) (is|are|will) (it|they|these|[<the>] {target}) [be] (ready|fit|good|done|right)
    to (eat|open|taste|be eaten|be opened)`,
    `how long (until|till|before) (we|i) can <eat> (it|them|these|[<the>] {target})`,
    `how long (do|does|must|should) (it|they|these|[<the>] {target}) (cure|have to cure|have to
    stand|
    need to cure|need to stand|stand|sit|have to sit|need to sit|want) [on the shelf] [before (we|i)
    (eat|open|can eat|can open) (it|them)|before eating|before they are good|before opening]`,
    `when (do|does|will) (it|they|these|[<the>] {target}) (taste right|taste best|be at (it is|
    their)
    best|come into their own|be cured)`,
    "(is|are) (it|they|[<the>] {target}) ready to (eat|open|taste) [yet|now]",
    "when (are|is) (it|they|[<the>] {target}) at (it is|their) best",
    "when (can|may|should) (i|we) open (a|the first) jar [of [<the>] {target}]",
  ],
  lists: { eat: "(eat|open|taste|try|have|serve|start eating)" },
};
