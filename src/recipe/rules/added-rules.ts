import { gateAddition } from "../foods/addition-gate.ts";
import { danger, type Finding, type Rule } from "./finding.ts";
import { phrases } from "./phrases.ts";
import { isAtTable, statementsOf, toldAt } from "./statements.ts";

/** Something put into the pot or the jars by a sentence and not by the list of ingredients. */
const ADDING = phrases(
  "add",
  "(whisk|stir|mix|toss|throw|drop|slip) in",
  "(thicken|dust|coat)* ~2 with",
  "(dredge|roll|coat)* ~3 in",
  "(spoon|spoonful|handful|slug|splash|knob|pat|slice|clove|piece)s? of",
);

/** What the words put in is judged as what a person says they added. */
export const addedInWords: Rule = ({ recipe, tables, shelf }) =>
  statementsOf(recipe).flatMap((said): Finding[] => {
    const found = shelf && !isAtTable(said.text) ? toldAt(said, ADDING) : undefined;
    if (!found) return [];
    const what = said.text
      .slice(found.index)
      .split(/\b(?:before|until|then|after|from|for|so)\b/)[0];
    const gate = gateAddition(recipe, tables, what ?? "");
    // Water is judged by what thins the acid.
    if (gate.is !== "changes" || /\b(?:water|ice)\b/.test(gate.said)) return [];
    const message = `"${gate.said.trim()}" is said, and no ingredient lists it. ${gate.why}`;
    return [danger("added-in-words", said.where, message, gate.source)];
  });
