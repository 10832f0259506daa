/** The model that is shipped, read at the first sentence that asks for it. */
import { FRAMES, type Frame } from "./corpus.ts";
import type { Situation } from "./features.ts";
import { featuresOf, manner } from "./features.ts";
import { type Likely, likely, type Models, unpackModel } from "./linear-model.ts";
import { FRAME_MODEL, INTENT_MODEL } from "./weights.ts";

function bytesOf(weights: string): Uint8Array {
  return Uint8Array.from(atob(weights), (character) => character.charCodeAt(0));
}

let read: Models | undefined;

export function shippedModels(): Models {
  read ??= {
    intents: unpackModel(INTENT_MODEL, bytesOf(INTENT_MODEL.weights)),
    frames: unpackModel(FRAME_MODEL, bytesOf(FRAME_MODEL.weights)),
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
  return { intents: likely(models.intents, featuresOf(words, situation)), frames };
}
