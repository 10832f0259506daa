/**
 * Reports that are wrapped in a question or an order to write them down: "could you put down ten
 * pounds on the gauge", "did I mention it's been boiling since ten to two".
 */

const LEAD = "^\\W*(?:(?:and|so|hey|okay|ok|please|right|well|oh|um)\\W+)*";
const WRITES =
  "make a note|make note|put|write|mark|log|record|jot|note|get|take|set|enter|tick|chalk";
const ASKED = new RegExp(
  `${LEAD}(?:(?:can|could|would|will) (?:you|ye|ya) (?:please |just |kindly )*)?(${WRITES})\\b` +
    "(?: (?:it|this))?(?: down| up| in)?(?: (?:that|as|for me that|in the log that))?" +
    "[,:]?\\s+(.+?)" +
    "(?: (?:down|off|please|for me|in the log|would you|will you|if you would))*\\W*$",
  "i",
);
const MENTIONED = new RegExp(
  `${LEAD}(?:did i (?:mention|say|tell you|tell ye)|have i (?:mentioned|said)|` +
    "(?:did|do) you know|guess what|for the record|" +
    "you know what|can you believe|would you believe)(?: to you)?(?: that)?[,:]?\\s+(.+?)\\W*$",
  "i",
);

/** What is told in such a sentence, as it might be said plainly, the likeliest way first. */
export function toldWithin(text: string): string[] {
  const mentioned = MENTIONED.exec(text)?.[1];
  if (mentioned) return [mentioned];
  const told = ASKED.exec(text)?.[2];
  if (!told) return [];
  const said = told.replace(/ (?:down |in )?as (?=\w)/i, " are ");
  return said === told ? [told] : [said, said.replace(" are ", " "), said.replace(" are ", " is ")];
}
