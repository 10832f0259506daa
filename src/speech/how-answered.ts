/** How an open question is answered, in words that the screen shows and the voice says. */

import type { Decision } from "../kitchen/decide/decision.ts";
import { type AnswerKind, answerKind, type Question } from "../kitchen/questions/questions.ts";
import { mayWait } from "../kitchen/questions/set-up.ts";
import { usualHolds } from "../kitchen/spoken-names.ts";
import type { State } from "../kitchen/state.ts";

type Expected = Extract<Decision, { kind: "ask" }>["expects"];

/** Of questions that are asked back. */
export const TO_ANSWER: Record<Expected, string> = {
  yes: "answer yes or no",
  either: "answer yes or no",
  heard: "answer yes or no",
  number: "answer with a number",
  minutes: "answer with minutes, or I don't know",
  when: "answer with a time, or no",
  which: "answer by name, or no",
};

const TAKES: Record<AnswerKind, string> = {
  "yes-no": "answer yes or no",
  choice: "answer with one of them",
  percent: "answer with a number, such as five percent",
  inches: "answer with a number, such as half an inch",
  pounds: "answer with a number, or never tested",
  feet: "answer in feet, such as 6200 feet",
  count: "answer with a number",
  minutes: "answer with minutes, or I don't know",
  jars: "answer all sealed, or the numbers that did not",
  holds: `answer like ${usualHolds("and")}`,
};

/** Of questions that guard safety or set the kitchen up. */
export function howAnswered(state: State, question: Question): string {
  const choices = question.choices && `answer ${question.choices.join(", ")}`;
  const later = mayWait(state, question) ? ", or later" : "";
  return `${choices ?? TAKES[answerKind(question)]}${later}`;
}
