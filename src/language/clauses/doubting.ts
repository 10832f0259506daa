/** Clauses that take from what is said beside them, or take it back. */
import { wordSet } from "../grammar/word-set.ts";
import { isOwnMatter } from "../qualifying.ts";
import { textOf, type Utterance } from "../words.ts";

/** Whether a clause beside a report may take from it. */
export function makesDoubt(clause: Utterance): boolean {
  if (isOwnMatter(clause)) return false;
  const { words } = clause;
  const forgot = words.some(({ word }) => word === "forgot");
  return words.some(({ word }) => {
    return MAKES_DOUBT.has(word) && !(forgot && /^(almost|nearly)$/.test(word));
  });
}

/** In a clause beside a report these can make it a wish, a tale, a condition or its opposite. */
const MAKES_DOUBT = wordSet(
  "if unless until till when whenever wish hope hoping think thought guess maybe perhaps",
  "probably might say says said told tells claims reckon reckons ask asked dreamed dream",
  "pretend suppose used imagine yesterday almost nearly not no never none nothing only should",
  "would could may must was were stopped stops stop quit lost dropped fell died wait yet unsure",
  "give gives gave loose flex flexes springs wiped thinned except bar pigs lie kidding joking",
);

const BACK = new RegExp(
  "^(no|nope|not|not yet|not really|not quite|no no|wrong|never mind|scratch that|strike that|" +
    "forget that|(no )?(it|that|they|she|he) (is|are|was|were|has|have|did|does) not" +
    "( yet| really)?|(i am )?only (joking|kidding)|i take (it|that) back|not true)$",
);

/** "No, it's not": what was said before it does not hold. */
export function takesBack({ words }: Utterance): boolean {
  return BACK.test(textOf(words));
}
