/**
 * What a sentence that is no plain answer is likely to answer: it is asked back, and its words are
 * kept besides, so that a yes takes nothing else that was said for granted.
 */
import { type Command, commandOf } from "../../kitchen/command.ts";
import type { Context, OpenQuestion } from "../context.ts";
import { clausesIn } from "../evidence/split.ts";
import { numbersAt } from "../values/spoken-numbers.ts";
import { textOf, type Utterance } from "../words.ts";
import { answerTo } from "./answers.ts";
import { confirmInClause } from "./confirms.ts";

/** Whoever says one of these has not looked, or answers two ways. */
const UNCERTAIN = new RegExp(
  "\\b(not|think|guess|maybe|probably|about|roughly|something|some|or|almost|nearly|hope|few|" +
    "except|but|half|should|must|might|homemade|finger|except)\\b",
);

/** The one value or choice in all of it; undefined where there is none, or another. */
export function likelyAnswer(
  said: Utterance,
  question: OpenQuestion,
  { factors = [] }: Context,
): Command | undefined {
  if (said.asked || UNCERTAIN.test(textOf(said.words))) return undefined;
  const clauses = clausesIn(said);
  const told = clauses.flatMap((clause): Command[] => {
    const answer = answerTo(clause, question);
    if (answer) return [answer];
    const confirm = confirmInClause(clause, said, factors);
    if (!confirm || confirm.factor !== question.key) return [];
    return [commandOf("factor", { ...confirm }, { confirms: [confirm] })];
  });
  // Another number anywhere may be the one that is right.
  const numbers = question.kind === "choice" ? [] : measured(said);
  const all = told.length > 0 || question.kind !== "percent" ? told : numbers;
  const [first] = all;
  const values = [...all, ...numbers].map(({ slots }) => ("value" in slots ? slots.value : slots));
  const same = new Set(values.map((value) => JSON.stringify(value)));
  const unsure = first && "unsure" in first.slots;
  return same.size === 1 && !unsure ? first : undefined;
}

/** The numbers of a sentence as answers. */
function measured(said: Utterance): Command[] {
  return said.words.flatMap((_, at) => {
    const number = numbersAt(said.words, at).at(-1);
    return number ? [commandOf("answer", { value: number.value })] : [];
  });
}
