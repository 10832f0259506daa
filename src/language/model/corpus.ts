/** The sentences of the corpus, as models are trained on them. */
import { utteranceOf } from "../words.ts";
import { featuresOf, manner, type Situation } from "./features.ts";

/** How something is meant: as true now, as an order, as a question, or as none of these. */
export const FRAMES = [
  "said",
  "ordered",
  "asked",
  "wished",
  "denied",
  "imagined",
  "reported",
  "past",
  "elsewhere",
  "idle",
] as const;
export type Frame = (typeof FRAMES)[number];

/**
 * One line: what was said, what it means (several facts in the order said), and when. `open` where
 * two labelings differ: `intents` are those of both, and the right outcome is a question.
 */
export type Sentence = {
  text: string;
  intents: string[];
  open?: true;
  frame: Frame | undefined;
  speaker: string;
  situation: Situation;
};

/**
 * The sentences of one file of the corpus.
 * @throws Error naming a malformed line
 */
export function sentencesIn(file: string, text: string): Sentence[] {
  return text.split("\n").flatMap((line, index): Sentence[] => {
    if (line === "" || line.startsWith("#")) return [];
    const [said = "", intents = "", frame, speaker = "", stage = "", question = ""] =
      line.split("\t");
    const known = FRAMES.find((one) => one === frame);
    if (said === "" || intents === "" || !known) {
      throw new Error(`${file}:${index + 1}: not a sentence with its meaning and frame`);
    }
    const situation: Situation = {
      stages: stage === "" ? [] : [stage],
      ...(question === "" ? {} : { question }),
    };
    const open = intents.includes("|") ? { open: true as const } : {};
    const named = intents.split(/[+|]/);
    return [{ text: said, intents: named, ...open, frame: known, speaker, situation }];
  });
}

/** What the models see of a sentence: one for what it means, one for how it is meant. */
export function seenOf(text: string, situation: Situation): { what: Int32Array; how: Int32Array } {
  const { words, asked } = utteranceOf(text);
  const said = words.map(({ word }) => word);
  return { what: featuresOf(said, situation), how: manner(said, asked) };
}
