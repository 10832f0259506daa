import { FACTOR_WORDINGS } from "../answers/factor-wordings.ts";
import type { Finish, MeaningOf } from "./meaning.ts";
import { takingBack } from "./taking-back.ts";

/**
 * The first factor the words may be about (`about`, a guess) that the kitchen has; else the one
 * that is asked about. A guess confirms nothing.
 */
const finishFactor: Finish = ({ about, ...rest }, { factors, question }) => {
  if (about === undefined) return { slots: rest };
  const named = (about as string[]).find((id) => !factors || factors.some((one) => one.id === id));
  const key = question?.key ?? "";
  const asked = FACTOR_WORDINGS.has(key) ? key : undefined;
  const meant = named ?? asked;
  return meant === undefined ? undefined : { slots: { ...rest, factor: meant } };
};

/**
 * Critical factors hold or do not, in whole clauses read by confirms.ts; or an answer is to be
 * changed.
 */
export const factor: MeaningOf<"factor"> = {
  cost: "clearing",
  tellsOf: { about: "jars" },
  when: ["asked:factor"],
  slots: { factor: "word", value: "number", held: "word", takenBack: "flag" },
  parts: ["about"],
  example: "change my answer",
  unasked: true,
  finish: finishFactor,
  wordings: [
    {
      set: { held: "unsure" },
      phrases: [
        "[i want to|i need to|i have to|let me|i would like to] change (my|that|the) [last] answer",
        "[i want to|i need to|i have to|let me|i would like to] take back my [last] answer",
        "[i think] (my|that|the) [last] answer was (wrong|not right|not true|a mistake)",
        "i (answered|said) that wrong",
        "that answer was (wrong|not right|not true|a mistake)",
        "what i (said|answered) [there|before|just now] was (wrong|not right|not true)",
      ],
    },
    ...[...FACTOR_WORDINGS].map(([factor, { subject }]) => ({
      set: { factor, held: "unsure", takenBack: true } as const,
      phrases: takingBack(subject),
    })),
  ],
};
