import { saysUncovered } from "../values/about.ts";
import { textOf, type Utterance } from "../words.ts";
import type { Finish } from "./meaning.ts";

/** Lids that stand out of the water are more than low water, and than a boil that is gone. */
export const finishUncovered: Finish = ({ target, at }, _context, _plain, said) => {
  if (isCovered(said)) return undefined;
  return { slots: { target, at, uncovered: saysUncovered(said) || undefined } };
};

export function isCovered({ words }: Utterance): boolean {
  return COVERED.test(textOf(words));
}

/** "The water is still well over the lids": there is enough. */
const COVERED = new RegExp(
  "^(?:\\w+ )?(?:the )?water (?:level )?is (?:(?:still|well|way|plenty|good|nicely|a|good|inch|" +
    "couple|of|two|inches|right) )*(?:over|above|covering) (?:all )?(?:the |my |our )?" +
    "(?:lids|jars|tops|jar tops)(?: still)?$",
);
