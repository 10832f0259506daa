/** Makes the file of the model from the corpus. */
import { FRAMES, type Frame, type Sentence, seenOf } from "./corpus.ts";
import { type LinearModel, type Models, packModel } from "./linear-model.ts";
import { type Example, train } from "./train.ts";

const PASSES = 6;
/** Together they keep the file under 400 kB. */
const INTENT_BYTES = 240_000;
const FRAME_BYTES = 48_000;

/** The two models of a corpus: what is meant, and how. */
export function modelsOf(sentences: readonly Sentence[]): Models {
  const seen = sentences.map(({ text, situation }) => seenOf(text, situation));
  const classes = [...new Set(sentences.flatMap(({ intents }) => intents))].sort();
  const about = sentences.map(({ intents }, index): Example => {
    const right = intents.map((intent) => classes.indexOf(intent));
    return { features: seen[index]?.what ?? new Int32Array(), right: [...new Set(right)] };
  });
  const countOf = (one: Frame) => sentences.filter(({ frame }) => frame === one).length;
  const counts = new Map(FRAMES.map((frame) => [frame, countOf(frame)]));
  const most = Math.max(...counts.values());
  const framed = sentences.flatMap(({ frame }, index): Example[] => {
    if (frame === undefined) return [];
    const features = seen[index]?.how ?? new Int32Array();
    const weight = Math.sqrt(most / (counts.get(frame) ?? most));
    return [{ features, right: [FRAMES.indexOf(frame)], weight }];
  });
  return {
    intents: train(about, { classes, passes: PASSES, absolute: 0.2, bytes: INTENT_BYTES }),
    frames: train(framed, { classes: FRAMES, passes: PASSES, absolute: 0.05, bytes: FRAME_BYTES }),
  };
}

const DIGITS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

/** Bytes in base 64. */
function base64(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += 3) {
    const three = ((bytes[at] ?? 0) << 16) | ((bytes[at + 1] ?? 0) << 8) | (bytes[at + 2] ?? 0);
    const left = bytes.length - at;
    for (let digit = 0; digit < 4; digit++) {
      text += digit > left ? "=" : (DIGITS[(three >> (18 - 6 * digit)) & 63] ?? "");
    }
  }
  return text;
}

function sourceOf(name: string, model: LinearModel): string {
  const { classes, bias, unit } = model;
  return [
    `export const ${name} = {`,
    `  classes: ${JSON.stringify(classes)},`,
    `  bias: ${JSON.stringify([...bias])},`,
    `  unit: ${unit},`,
    `  weights: "${base64(packModel(model))}",`,
    "};",
  ].join("\n");
}

/** The source of `weights.ts`. */
export function modelSource(sentences: readonly Sentence[]): string {
  const { intents, frames } = modelsOf(sentences);
  return [
    "// data table",
    "/** Learned from the sentences of ../corpus by `npm run train`; never written by hand. */",
    sourceOf("INTENT_MODEL", intents),
    sourceOf("FRAME_MODEL", frames),
    "",
  ].join("\n");
}
