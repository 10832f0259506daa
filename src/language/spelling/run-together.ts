import { wordSet } from "../grammar/word-set.ts";
import type { Utterance, Word } from "../words.ts";

/**
 * A second look at words written without their apostrophe: "waters boiling", "were at eleven
 * pounds". Only where the words as written make no sense, since "were" and "weights" are words.
 */

/** Things there is only one of, so that their plural is more likely "water is" or "water has". */
const SINGLE = wordSet(
  "water brine syrup jam jelly juice pressure gauge needle dial thermometer temp temperature",
  "weight jiggler rocker steam boil canner pot kettle altitude elevation everything everyone",
  "step stage vinegar sauce sauerkraut kraut batch load rack vent petcock timer one lid",
  "crock stove burner heat process tray kitchen salsa relish applesauce headspace that",
);

/** "Were" begins a statement only at the very beginning or after one of these. */
const BEFORE = wordSet("okay right and now so hey yes yeah yep uh um oh well finally hello there");

function expanded(words: readonly Word[], at: number): Word[] {
  const here = words[at]!;
  const { word, start, end } = here;
  if (word === "were" && (at === 0 || BEFORE.has(words[at - 1]?.word ?? ""))) {
    return [
      { word: "we", start, end },
      { word: "are", start, end },
    ];
  }
  const single = word.endsWith("s") ? word.slice(0, -1) : "";
  if (!SINGLE.has(single)) return [here];
  return [
    { word: single, start, end },
    { word: "is", alt: "has", start, end },
  ];
}

/** The utterance with run-together words taken apart; undefined where there were none. */
export function takenApart(said: Utterance): Utterance | undefined {
  const words = said.words.flatMap((_, at) => expanded(said.words, at));
  if (words.length === said.words.length) return undefined;
  const { text, asked, cut } = said;
  return { text, words, asked, cut };
}
