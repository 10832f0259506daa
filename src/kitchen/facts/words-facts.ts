/** Facts about a person's own words: what they were found to mean, and that they are forgotten. */
import * as z from "zod/mini";
import { type OwnWords, type Saying, sameWords } from "../own-words.ts";
import type { State } from "../state.ts";
import { fact } from "./fact.ts";
import { text, word } from "./fields.ts";

const SAID = { words: text, stages: z.array(word), question: z.nullable(word) };

function without(state: State, said: Saying): OwnWords[] {
  return state.ownWords.filter((one) => !sameWords(one, said));
}

export const WORDS_FACTS = {
  /** A yes gave these words this meaning, for the moment they were said in. */
  "words-learned": fact({
    fields: { ...SAID, intent: word },
    follows: "nothing",
    own: true,
    undo: "never",
    evolve(state, { words, stages, question, intent, t }): boolean {
      const learned = { words, stages: [...stages], question, intent, at: t };
      state.ownWords = [...without(state, learned), learned];
      return true;
    },
  }),
  "words-forgotten": fact({
    fields: SAID,
    follows: "nothing",
    undone: (_, { words }) => `forgetting "${words}"`,
    evolve(state, event): boolean {
      state.ownWords = without(state, event);
      return true;
    },
  }),
};
