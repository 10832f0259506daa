/** Makes the file of the model from the corpus. */
import { FRAMES, type Frame, type Sentence, seenOf } from "./corpus.ts";
import { type LinearModel, type Models, packModel } from "./linear-model.ts";
import { type Example, train } from "./train.ts";

const PASSES = 6;
/** Together they keep the file under 400 kB. */
const INTENT_BYTES = 262_000;
const FRAME_BYTES = 48_000;

/** Of a meaning that fewer sentences have, each teaches more, up to this many times as much. */
const SELDOM = 600;
const MOST_WEIGHT = 2;

/** Each meaning is taken to have been said so often in the way all sentences are. */
const PRIOR = 2;

/** How much oftener than all sentences one of a meaning is meant in each frame. */
function mannersOf(sentences: readonly Sentence[], classes: readonly string[]): number[][] {
  const framed = sentences.filter(({ frame }) => frame !== undefined);
  const count = (list: readonly Sentence[], one: Frame) =>
    list.filter(({ frame }) => frame === one).length;
  const shares = FRAMES.map((frame) => count(framed, frame) / framed.length);
  return classes.map((intent) => {
    const own = framed.filter(({ intents }) => intents.includes(intent));
    return FRAMES.map((frame, at) => {
      const share = shares[at] ?? 0;
      const here = (count(own, frame) + PRIOR * share) / (own.length + PRIOR);
      return share === 0 ? 1 : Math.round((100 * here) / share) / 100;
    });
  });
}

/** The two models of a corpus, what is meant and how, and how the one goes with the other. */
export function modelsOf(sentences: readonly Sentence[]): Models {
  const seen = sentences.map(({ text, situation }) => seenOf(text, situation));
  const classes = [...new Set(sentences.flatMap(({ intents }) => intents))].sort();
  const usual = new Map<string, number>();
  for (const { intents } of sentences) {
    for (const intent of new Set(intents)) usual.set(intent, (usual.get(intent) ?? 0) + 1);
  }
  const about = sentences.map(({ intents }, index): Example => {
    const right = intents.map((intent) => classes.indexOf(intent));
    const rarest = Math.min(...intents.map((intent) => usual.get(intent) ?? 1));
    const weight = Math.min(MOST_WEIGHT, Math.max(1, Math.sqrt(Math.sqrt(SELDOM / rarest))));
    return { features: seen[index]?.what ?? new Int32Array(), right: [...new Set(right)], weight };
  });
  const countOf = (one: Frame) => sentences.filter(({ frame }) => frame === one).length;
  const counts = new Map(FRAMES.map((frame) => [frame, countOf(frame)]));
  const most = Math.max(...counts.values());
  const framed = sentences.flatMap(({ frame }, index): Example[] => {
    if (frame === undefined) return [];
    const features = seen[index]?.how ?? new Int32Array();
    const weight = Math.sqrt(Math.sqrt(most / (counts.get(frame) ?? most)));
    return [{ features, right: [FRAMES.indexOf(frame)], weight }];
  });
  return {
    intents: train(about, { classes, passes: PASSES, absolute: 0.2, bytes: INTENT_BYTES }),
    frames: train(framed, { classes: FRAMES, passes: PASSES, absolute: 1, bytes: FRAME_BYTES }),
    manners: mannersOf(sentences, classes),
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

/** FNV-1a over all that a model is learned from: tells whose a model is. */
export function corpusDigest(sentences: readonly Sentence[]): string {
  let hash = 0x811c9dc5;
  for (const one of sentences) {
    for (const character of JSON.stringify(one)) {
      hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 0x01000193);
    }
  }
  return (hash >>> 0).toString(16).padStart(8, "0");
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

/** As the formatter leaves it, one meaning a line. */
function mannersSource({ intents, manners }: Models): string[] {
  const rows = intents.classes.map((intent, at) => {
    const row = manners[at] ?? [];
    return `  ${/^\w+$/.test(intent) ? intent : `"${intent}"`}: [${row.join(", ")}],`;
  });
  return [
    "export const LEARNED_MANNERS: Readonly<Record<string, readonly number[]>> = {",
    ...rows,
    "};",
  ];
}

/** The source of `weights.ts`. */
export function modelSource(sentences: readonly Sentence[]): string {
  const models = modelsOf(sentences);
  return [
    "// data table",
    "// biome-ignore-all lint/suspicious/noApproximativeNumericConstant: learned, no constants.",
    "/** Learned from the sentences of ../corpus by `npm run train`; never written by hand. */",
    sourceOf("INTENT_MODEL", models.intents),
    sourceOf("FRAME_MODEL", models.frames),
    ...mannersSource(models),
    `export const LEARNED_FROM = "${corpusDigest(sentences)}";`,
    "",
  ].join("\n");
}
