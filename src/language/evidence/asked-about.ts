/** Whether words can be about what a question asks, by the words that belong to it. */
import type { OpenQuestion } from "../context.ts";
import type { Utterance } from "../words.ts";

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

/** Whether what is said may be about what is asked; true of questions that have no words here. */
export function isAsked({ key = "" }: OpenQuestion, { words }: Utterance): boolean {
  const all = words.map(({ word }) => word).join(" ");
  const found = BELONGS.find(([begin]) => key.startsWith(begin));
  return found === undefined || found[1].test(all);
}
