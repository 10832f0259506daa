/** The model that is shipped, read at the first sentence that asks for it. */
import { FRAMES, type Frame } from "./corpus.ts";
import type { Situation } from "./features.ts";
import { featuresOf, manner } from "./features.ts";
import { type Likely, likely, type Manners, type Models, unpackModel } from "./linear-model.ts";
import { FRAME_MODEL, INTENT_MODEL, LEARNED_MANNERS } from "./weights.ts";

function bytesOf(weights: string): Uint8Array {
  return Uint8Array.from(atob(weights), (character) => character.charCodeAt(0));
}

let read: Models | undefined;

export function shippedModels(): Models {
  read ??= {
    intents: unpackModel(INTENT_MODEL, bytesOf(INTENT_MODEL.weights)),
    frames: unpackModel(FRAME_MODEL, bytesOf(FRAME_MODEL.weights)),
    manners: LEARNED_MANNERS,
  };
  return read;
}

/** What words are taken to mean and how they are meant, by the model; probabilities are 0 to 1. */
export type Guess = { intents: Likely[]; frames: Readonly<Record<Frame, number>> };

export function guess(
  words: readonly string[],
  asked: boolean,
  situation: Situation,
  models: Models,
): Guess {
  const frames = Object.fromEntries(FRAMES.map((frame) => [frame, 0])) as Record<Frame, number>;
  for (const { name, probability } of likely(models.frames, manner(words, asked))) {
    frames[name as Frame] = probability;
  }
  const meant = likely(models.intents, featuresOf(words, situation));
  return { intents: inManner(meant, frames, models.manners), frames };
}

/** To the power of 3/4, by roots, which every machine gives alike. */
function tempered(value: number): number {
  const root = Math.sqrt(value);
  return root * Math.sqrt(root);
}

/** Takes together what is likely to be meant and how: a question is no report. Found by trying. */
function inManner(
  meant: readonly Likely[],
  frames: Readonly<Record<Frame, number>>,
  manners: Manners,
): Likely[] {
  const weighed = meant.map(({ name, probability }) => {
    const row = Object.hasOwn(manners, name) ? manners[name] : undefined;
    if (!row) return { name, probability };
    const fits = FRAMES.reduce((sum, frame, at) => sum + frames[frame] * (row[at] ?? 1), 0);
    return { name, probability: probability * tempered(fits) };
  });
  const all = weighed.reduce((sum, { probability }) => sum + probability, 0);
  return weighed
    .map(({ name, probability }) => ({ name, probability: probability / all }))
    .sort((a, b) => b.probability - a.probability);
}
