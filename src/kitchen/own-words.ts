/** A person's own words that a yes gave a meaning, which they have again in the same situation. */

export type OwnWords = {
  /** As said: in small letters, contractions written out, with a mark where it was a question. */
  words: string;
  /** The moment: the kinds of stages that ran, in order, and what was asked. */
  stages: string[];
  question: string | null;
  /** What they mean; an `Intent`, unless a later version wrote it. Values are found anew. */
  intent: string;
  /** When they were learned, kitchen time in ms. */
  at: number;
};

/** Words and the moment they were said in, whatever they mean. */
export type Saying = Pick<OwnWords, "words" | "stages" | "question">;

export function sameWords(one: Saying, other: Saying): boolean {
  return (
    one.words === other.words &&
    one.question === other.question &&
    one.stages.join(" ") === other.stages.join(" ")
  );
}
