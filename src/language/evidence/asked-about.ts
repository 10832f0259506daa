/** Whether words can be about what a question asks, by the words that belong to it. */
import type { OpenQuestion } from "../context.ts";
import { textOf, type Utterance } from "../words.ts";

/** By the beginning of a question's key. */
const BELONGS: readonly (readonly [string, RegExp])[] = [
  ["vinegar", /\b(vinegar|percent|label|bottle|strength|strong|weak|grain)/],
  ["bottled-juice", /\b(juice|lemons?|limes?|bottled?|fresh|squeezed)/],
  ["acid", /\b(acid|juice|lemons?|limes?|citric|every|all of them)/],
  ["hot-pack", /\b(hot|cold|cool|warm|heat|boil|pot)/],
  ["headspace", /\b(headspace|head space|inch|inches|fill|overfill|rim|brim|room|gap|space|full)/],
  ["new-lids", /\b(lids?|new|old|used|box)\b/],
  ["sterile", /\b(steril|wash|clean|boil|jars?)/],
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
  const found = BELONGS.find(([begin]) => key.startsWith(begin));
  return found?.[1].test(all) === true;
}
