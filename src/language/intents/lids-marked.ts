import type { MeaningOf } from "./meaning.ts";

/** A single letter, or a few that are written in capitals: other short words are no marks. */
function isMark(letters: string, text: string): boolean {
  if (/^[b-z]$/.test(letters)) return true;
  return /^[a-z]{1,4}$/.test(letters) && new RegExp(`\\b${letters.toUpperCase()}\\b`).test(text);
}

/** What is written on the lids of a lot. */
export const lidsMarked: MeaningOf<"lids-marked"> = {
  cost: "changing",
  plainly: true,
  when: ["working"],
  slots: { target: "name", mark: "text" },
  example: "the Provider gets a P on the lid",
  finish: ({ mark, ...raw }, _context, _plain, { text }) => {
    const letters = String(mark).replace(/^(a|an|the|letters?) (?=\w)/, "");
    return isMark(letters, text) ? { slots: { ...raw, mark: letters } } : undefined;
  },
  wordings: [
    "[<the>] {target} [lids|jars] <gets-mark> <lid-sign> <on-its-lid>",
    "[<the>] {target} (lids|jars) <gets-mark> <lid-sign>",
    "[<the>] {target} (gets|takes|will have) <lid-sign>",
    "mark [<the>] {target} [lids|jars|ones] <lid-sign>",
    "[<the>] lids (of|on|for) [<the>] {target} <gets-mark> <lid-sign>",
    `[<we>] [am|are|have|will] (mark|marked|marking|label|labeling|put|putting|write|writing)
    [<the>] {target} [lids|jars|ones] (with|as|by) <lid-sign> [<on-its-lid>]`,
    `[<we>] [am|are|have|will] (put|putting|write|writing|wrote) <lid-sign> on [<the>] {target}
    [lids|jars|ones]`,
    "<lid-sign> (is|stands|goes on|on the lid is|means) [for] [<the>] {target} [lids|jars]",
    "[mark] <lid-sign> for [<the>] {target}",
  ],
  lists: {
    "gets-mark": "(get|gets|got|have|has|say|says|are marked|is marked|are|take|takes) [with]",
    "lid-sign": "{mark:thing}",
    "on-its-lid": "on [<the>|it|their|its|every] (lid|lids|top|tops)|on it|on top",
  },
};
