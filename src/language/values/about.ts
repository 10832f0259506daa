/** Words beside a report that fill no slot and still matter. */
import { textOf, type Utterance } from "../words.ts";

const ABOUT = new RegExp(
  [
    "about|around|roughly|approximately|nearly|almost|close to|somewhere|something like|or so",
    "more or less|give or take|some|maybe|probably|just (over|under)|(over|under) a",
    "a (bit|little|hair|touch) (over|under|above|below)|i (think|guess|believe)",
  ]
    .map((words) => `\\b(${words})\\b`)
    .join("|"),
);

/** Whether a figure was said to be approximate. */
export function saysAbout(said: Utterance): boolean {
  return ABOUT.test(textOf(said.words));
}

const LIDS = /\b(lids?|jars?|tops?|rims?|necks?)\b/;
const BARE = new RegExp(
  [
    "uncover|expos|show|stick|pok|peek|bare|dry|can see|out of|above|below|under the lids",
    "no longer|not (cover|over|under)",
  ].join("|"),
);

/** Whether lids were said to stand out of the water: a loss, so one word for it is enough. */
export function saysUncovered(said: Utterance): boolean {
  const all = textOf(said.words);
  return LIDS.test(all) && BARE.test(all);
}
