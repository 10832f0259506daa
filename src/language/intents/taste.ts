import type { Finish, MeaningOf } from "./meaning.ts";

const finishTaste: Finish = ({ scores, scoreName, score, ...rest }) => {
  const named = typeof scoreName === "string" ? { [scoreName]: score } : {};
  const all = { ...named, ...scores };
  // "Lost half its brine": a part of something is no score.
  if (Object.values(all).some((one) => typeof one === "number" && one > 0 && one < 1))
    return undefined;
  return { slots: { ...rest, ...all } };
};

/** Scores of a tasting, by their names. */
export const taste: MeaningOf<"taste"> = {
  cost: "changing",
  when: ["always"],
  ofRecord: true,
  slots: { target: "name", taster: "name", words: "text" },
  parts: ["scores", "scoreName", "score"],
  example: "crunch four",
  forgiving: true,
  unasked: true,
  finish: finishTaste,
  wordings: [
    `<taste-lead> {target:open} [today] [gets|is|got|and it is|comes out at|i would say|i give
    it|scores|i say] {scores}`,
    "{target:open} <taste-word> [score|scores|is|gets] {scores}",
    `<taste-lead> [today] {target:open} [out] [gets|is|got|scores|we give it|they are|it is]
    {scores}`,
    "<taste-lead> {scores} (for|on) {target:open}",
    "{scores} (for|on) {target:open}",
    `[<taste-lead>] [the] {scoreName:score-name} (on|for|of|in) [<the>] {target:open} (is|gets|
    was|rates|got|are|scores) [a|at|about] {score:number}`,
    "[i|we] [would] (give|gave|rate|rated|score|scored) {target:open} [a|at|as] {scores}",
    `(for|on) [<the>] {target:open} [i|we] [would] [say|give|gave|rate|rated|score|scored]
    {scores}`,
    "[the|its|their] {scores}",
    `{target:open} (get|gets|got|scored|score|scores|rate|rates|is|are|has|have|earn|earns) [a]
    {scores}`,
    "{target:open} {scores}|<taste-lead> {scores}",
    `{taster:person} [would] (gives|gave|give|rates|rated|scores|scored|says|said|tasted|tried)
    [<the>] {target:open} [is|are|was|gets|got|a|at|as|and (gives|gave) it|and (says|said) [it
    is]] {scores}`,
    `(i|we) [have|just|all] (tasted|tried|sampled) [<the>] {target:open} [(from|off|out of) the
    (shelf|
    pantry|cellar|basement|fridge|crock)] [today|tonight|for (supper|dinner|lunch)]`,
    "<taste-lead> {target:open} (for|by|with) {taster:person} {scores}",
    "(for|from|by) {taster:person} [<the>] {target:open} [is|are|gets|got] {scores}",
    "{taster:person} <taste-word> [of] [<the>] {target:open} [is|are|gets|got] {scores}",
  ],
  lists: {
    "taste-lead": `
      taste|tasted|tasting|i tasted|we tasted|taste test|tasting notes|tasting notes for|taste
      of|taste score for|taste scores for|score for|scores for|taste test of|taste test for|the
      taste of|tasting of|taste notes|tasting note for|rate|score|rating for|trying|tried|i
      tried|we tried|taste for|taste rating for|record taste for|sampled|i sampled|record a
      taste of|opinion on|for
    `,
    "taste-word": "taste|tasting|taste test|tasted",
  },
};
