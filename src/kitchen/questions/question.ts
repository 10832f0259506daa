/** A question of the kitchen's: what it is about, and what answers it. */

export type QuestionKind =
  | "altitude"
  | "altitude-doubt"
  | "guide"
  | "no-boil"
  | "gauge"
  | "gauge-tested"
  | "gauge-off"
  | "factor"
  | "cover"
  | "still-covered"
  | "gap"
  | "end"
  | "still"
  | "heard"
  | "broken"
  | "disposition"
  | "seals"
  | "sealed-line"
  | "set-up";

export type Question = {
  key: string;
  kind: QuestionKind;
  text: string;
  /** Whose it is, where several are running; its text begins with it. */
  lead?: string;
  /** As it is asked, after its lead, once the whole was asked that day. */
  short?: string;
  /** The batch, load or canner it is about. */
  about: string | null;
  /** Which factor, gap or deviation. */
  detail?: string;
  /** Which brew or filling a factor is asked of, 0 the first. */
  round?: number;
  choices?: string[];
  /** Other words for what is offered. */
  alsoSaid?: string[];
  /** Of two choices, all words for the one that says that all is as it should be. */
  right?: string[];
  /** The lots it is about, where there are several. */
  batches?: string[];
  /** What answers it, where that differs from others of its kind. */
  takes?: AnswerKind;
};

/** Kinds of answers: one of another kind does not answer the question. */
export type AnswerKind =
  | "yes-no"
  | "choice"
  | "percent"
  | "inches"
  | "pounds"
  | "feet"
  | "count"
  | "minutes"
  | "jars"
  | "holds";

/** What a question between two choices offers: the words for each, first those it is asked in. */
export function eitherOf(
  right: string[],
  wrong: string[],
): Pick<Question, "choices" | "alsoSaid" | "right" | "takes"> {
  const choices = [...right.slice(0, 1), ...wrong.slice(0, 1)];
  return { choices, alsoSaid: [...right, ...wrong], right, takes: "choice" };
}
