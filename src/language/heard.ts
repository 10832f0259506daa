/** What a sentence comes to, once all the evidence is weighed. */
import type { Command, Evidence } from "../kitchen/command.ts";
import type { OwnWords } from "../kitchen/own-words.ts";
import type { Frame } from "./model/corpus.ts";
import type { Guess } from "./model/shipped.ts";
import type { Utterance } from "./words.ts";

/**
 * `whole`: a wording covers the sentence from its first word to its last. `clauses`: those that the
 * commands stand in. `polite`: a report wrapped in a question.
 */
export type Read = Omit<Heard, "unused"> &
  Pick<Guess, "intents"> & {
    whole?: boolean;
    clauses?: readonly Utterance[];
    left?: readonly Utterance[];
    polite?: boolean;
    accounted?: true;
    /** The words in which doubts are looked for, where not in all of them. */
    rest?: Utterance;
  };

export type Heard = {
  /** `sure`: it is acted on; `ask`: a closed question about the first candidate; else nothing. */
  reading: "sure" | "ask" | "unknown";
  /** What is acted on, in the order it was said; empty unless sure. */
  commands: readonly Command[];
  /** What it may mean, the likeliest first; at most three. */
  candidates: readonly Command[];
  /** How it is meant, as far as the model knows. */
  frame: Frame;
  /** The doubt it raises about jars at stake, where nothing is done about it. */
  evidence?: Evidence;
  /** The doubt it raises if its commands turn out to change nothing. */
  otherwise?: Evidence;
  /** What is asked about besides, where something else is acted on. */
  asked?: Command;
  /** Clauses that were neither used nor idle talk, as they were said. */
  unused?: readonly string[];
  /** The memory it is acted on by: a yes that was once said to the same words. */
  memory?: OwnWords;
};
