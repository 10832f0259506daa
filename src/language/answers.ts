import { choiceIn } from "./choosing.ts";
import type { Question } from "./context.ts";
import { wordSet } from "./grammar/word-set.ts";
import type { Understood } from "./understand.ts";
import { numbersAt } from "./values/spoken-numbers.ts";
import type { Utterance } from "./words.ts";

/** Words that stand around a bare answer and add nothing. */
const AROUND = wordSet(
  "um uh er well so oh just about maybe make it i say would think that is we have at the please",
  "okay sir only exactly around feet jars of them there are got say like probably my our",
);

/** A bare number, allowing for "about", "I'd say" and the like before it. */
function bareNumber(said: Utterance): number | undefined {
  const { words } = said;
  let from = 0;
  while (from < words.length) {
    for (const number of numbersAt(words, from)) {
      const rest = words.slice(number.next);
      if (rest.every(({ word }) => AROUND.has(word))) return number.value;
    }
    if (!AROUND.has(words[from]?.word ?? "")) return undefined;
    from += 1;
  }
  return /^(none|nothing|no jars)$/.test(words.map(({ word }) => word).join(" ")) ? 0 : undefined;
}

/** Words that answer a question of number with none at all. */
function noneAtAll(said: Utterance): boolean {
  const all = said.words.map(({ word }) => word).join(" ");
  return /^(none|none of them|not one|not a single one|not any|zero)$/.test(all);
}

function answer(said: Utterance, value: number | string, confidence: number): Understood {
  return { intent: "answer", slots: { value }, confidence, text: said.text };
}

/** Asked whether it boiled throughout, a boil once lost is a no, and no news of now. */
function lostBoil(said: Utterance): Understood | undefined {
  const all = said.words.map(({ word }) => word).join(" ");
  if (!/^(no )?(it|we) (has |have )?lost (the|its|our) boil$/.test(all)) return undefined;
  return { intent: "no", slots: {}, confidence: 1, text: said.text };
}

/**
 * The answer to the question that waits, where the words are one; a new report, an order or a yes
 * or no goes on to be understood as itself.
 */
export function answerTo(said: Utterance, question: Question): Understood | undefined {
  if (question.kind === "choice" || question.choices) {
    const chosen = choiceIn(said, question.choices ?? []);
    if (chosen !== undefined) return answer(said, chosen, 1);
  }
  if (question.kind === "yes-no") return lostBoil(said);
  const number = bareNumber(said);
  if (number !== undefined && !hasFeet(said)) return answer(said, number, 1);
  if (question.kind !== "text" && noneAtAll(said)) return answer(said, 0, 0.9);
  return undefined;
}

function hasFeet(said: Utterance): boolean {
  return said.words.some(({ word }) => word === "feet" || word === "meters");
}

/** A bare number or "both", said although no question is known of. */
export function bareAnswer(said: Utterance): Understood | undefined {
  if (said.asked) return undefined;
  const number = numbersAt(said.words, 0).find(({ next }) => next === said.words.length);
  if (number) return answer(said, number.value, 0.5);
  const all = said.words.map(({ word }) => word).join(" ");
  const known = /^(the )?(both|neither|none|all|first|second|third|last)( one| of them)?$/.exec(
    all,
  );
  return known ? answer(said, known[2] ?? all, 0.5) : undefined;
}
