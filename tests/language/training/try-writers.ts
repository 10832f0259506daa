/**
 * How well the model does on a writer it was not trained on: `run.mjs try-writers days-3.tsv`. For
 * each frame and speaker the share whose first guess, and one of the first three, is right.
 */
import { seenOf } from "../../../src/language/model/corpus.ts";
import { type LinearModel, likelihoods, ranked } from "../../../src/language/model/linear-model.ts";
import { modelsOf } from "../../../src/language/model/make-model.ts";
import { corpus, wordings } from "./corpus-files.ts";

const held = process.argv[2] ?? "";
const files = corpus();
const tried = files.get(held);
if (!tried) throw new Error(`there is no ${held}; there are ${[...files.keys()].join(", ")}`);
const others = [...files].flatMap(([file, sentences]) => (file === held ? [] : sentences));
const { intents, frames } = modelsOf([...others, ...wordings()]);
const likely = (model: LinearModel, said: Int32Array) =>
  ranked(model.classes, likelihoods(model, said));
const rows = new Map<string, { all: number; first: number; three: number; frame: number }>();
for (const sentence of tried) {
  const seen = seenOf(sentence.text, sentence.situation);
  const guesses = likely(intents, seen.what).map(({ name }) => name);
  const right = (name: string | undefined) => sentence.intents.includes(name ?? "");
  const frame = likely(frames, seen.how)[0]?.name === sentence.frame;
  for (const key of ["all", `frame ${sentence.frame}`, `speaker ${sentence.speaker}`]) {
    const row = rows.get(key) ?? { all: 0, first: 0, three: 0, frame: 0 };
    row.all += 1;
    row.first += right(guesses[0]) ? 1 : 0;
    row.three += guesses.slice(0, 3).some(right) ? 1 : 0;
    row.frame += frame ? 1 : 0;
    rows.set(key, row);
  }
}
const percent = (part: number, all: number) => `${((100 * part) / all).toFixed(1)} %`.padStart(8);
for (const [key, { all, first, three, frame }] of [...rows].sort()) {
  const shares = [first, three, frame].map((part) => percent(part, all)).join("");
  console.log(`${key.padEnd(44)}${String(all).padStart(6)}${shares}`);
}
