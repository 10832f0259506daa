/** A time from memory is compared with the person's own guide before a batch begins with it. */
import { lasting } from "../../../recipe/choose-process.ts";
import type { ProcessTerms } from "../../../recipe/recipe.ts";
import type { DatedFact } from "../../events.ts";
import { guideQuestion, isUncompared, tableRowOf, withGuide } from "../../questions/guide.ts";
import type { Question } from "../../questions/questions.ts";
import {
  askMinutes,
  type Deciding,
  type Decision,
  done,
  type Present,
  refused,
} from "../decision.ts";

/** No process lasts longer, minutes. */
const LONGEST_MINUTES = 600;

type Compared = { terms: ProcessTerms | null; facts: DatedFact[] };

/**
 * The terms a batch begins on: the longer of the two times where the guide gives a different one.
 * Asks where nobody has looked yet; a person who does not know begins all the same, and is told so.
 */
export function comparedWithGuide(
  { state, wish, now }: Deciding<"begin">,
  terms: ProcessTerms | null,
): Compared | Decision {
  if (!isUncompared(state, terms)) {
    return { terms: terms && withGuide(state, terms), facts: [] };
  }
  const oursMinutes = terms.minutes;
  const minutes = state.rehearsal ? oursMinutes : wish.amount;
  if (minutes === undefined || (minutes !== null && minutes > LONGEST_MINUTES)) {
    return askMinutes(wish, guideQuestion(terms));
  }
  if (minutes === null) return { terms, facts: [] };
  const assumed = state.rehearsal ? { assumed: true } : {};
  return {
    terms: minutes > oursMinutes ? lasting(terms, minutes) : terms,
    facts: [{ ...compared(terms, minutes, now), ...assumed }],
  };
}

function compared(terms: ProcessTerms, minutes: number, t: number) {
  const row = { ...tableRowOf(terms), minutes, oursMinutes: terms.minutes };
  return { type: "guide-compared", row, t } as const;
}

/** What the guide says about a load whose time came from another row than its batch began with. */
export function answerFromGuide(
  { state, now }: Present,
  question: Question,
  minutes: number,
): Decision {
  const terms = state.loads[question.about ?? ""]?.terms;
  if (!terms || !(minutes > 0 && minutes <= LONGEST_MINUTES)) return refused(question.text);
  return done(compared(terms, minutes, now));
}
