/** Whether words can be about what a question asks, by the words that belong to it. */
import { FACTOR_WORDINGS } from "../answers/factor-wordings.ts";
import type { OpenQuestion } from "../context.ts";
import { textOf, type Utterance } from "../words.ts";

/** Words that can be about a question of no factor, by the beginning of its key. */
const BELONGS: readonly (readonly [string, RegExp])[] = [
  ["gauge", /\b(gauge|dial|needle|tested|pounds?)/],
  ["end", /./],
  ["cover", /\b(water|lids?|cover|inch|top)/],
];

/** Questions about the process itself. */
const OF_PROCESS = /^(end|cover|gap|still|no-boil)/;
const OF_PACKING = /\b(fill|pack|ladl|went in|jars?)/;

/**
 * Whether what is said may be about what is asked.
 * @param ofHeat it speaks of a boil, of water or of pressure
 */
export function isAsked(
  { key = "" }: OpenQuestion,
  { words }: Utterance,
  ofHeat: boolean,
): boolean {
  const all = textOf(words);
  if (ofHeat && !OF_PROCESS.test(key) && !OF_PACKING.test(all)) return false;
  const other = BELONGS.find(([begin]) => key.startsWith(begin))?.[1];
  return (FACTOR_WORDINGS.get(key)?.belongs ?? other)?.test(all) === true;
}
