/** The model that is shipped, read at the first sentence that asks for it. */
import { FRAMES, type Frame } from "./corpus.ts";
import type { Situation } from "./features.ts";
import { featuresOf, manner } from "./features.ts";
import { type Likely, likelihoods, type Models, ranked, unpackModel } from "./linear-model.ts";
import { FRAME_MODEL, INTENT_MODEL, LEARNED_MANNERS } from "./weights.ts";

function bytesOf(weights: string): Uint8Array {
  return Uint8Array.from(atob(weights), (character) => character.charCodeAt(0));
}

let read: Models | undefined;

export function shippedModels(): Models {
  read ??= {
    intents: unpackModel(INTENT_MODEL, bytesOf(INTENT_MODEL.weights)),
    frames: unpackModel(FRAME_MODEL, bytesOf(FRAME_MODEL.weights)),
    manners: INTENT_MODEL.classes.map((intent) => LEARNED_MANNERS[intent] ?? []),
  };
  return read;
}

/** What words are taken to mean and how they are meant, by the model; probabilities are 0 to 1. */
export type Guess = {
  intents: Likely[];
  frames: Readonly<Record<Frame, number>>;
  /** The words end in a question mark. */
  marked?: boolean;
};

export function guess(
  words: readonly string[],
  asked: boolean,
  situation: Situation,
  models: Models,
): Guess {
  const manners = likelihoods(models.frames, manner(words, asked));
  const meant = likelihoods(models.intents, featuresOf(words, situation));
  inManner(meant, manners, models);
  const frames = {} as Record<Frame, number>;
  FRAMES.forEach((frame, at) => {
    frames[frame] = manners[at] ?? 0;
  });
  return { intents: ranked(models.intents.classes, meant), frames, marked: asked };
}

/** To the power of 3/4, by roots, which every machine gives alike. */
function tempered(value: number): number {
  const root = Math.sqrt(value);
  return root * Math.sqrt(root);
}

/**
 * Takes together what is likely to be meant and how, in place: a question is no report. Found by
 * trying.
 */
function inManner(meant: Float64Array, frames: Float64Array, { manners }: Models): void {
  let all = 0;
  for (let to = 0; to < meant.length; to++) {
    const row = manners[to] ?? [];
    let fits = 0;
    for (let at = 0; at < frames.length; at++) fits += (frames[at] ?? 0) * (row[at] ?? 1);
    meant[to] = (meant[to] ?? 0) * tempered(fits);
    all += meant[to] ?? 0;
  }
  for (let to = 0; to < meant.length; to++) meant[to] = (meant[to] ?? 0) / all;
}
