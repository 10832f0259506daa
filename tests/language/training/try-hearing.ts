/**
 * How well a writer is understood on whom the model was not trained: `run.mjs try-hearing
 * days-3.tsv`. By speaker: understood at once, asked about with the right meaning first, asked
 * wrongly, acted on wrongly, and not understood; and, of what is neither a report nor an order,
 * what was acted on all the same.
 */
import { isIntent, learned } from "../../../src/language/intents/all.ts";
import { modelsOf } from "../../../src/language/model/make-model.ts";
import { shippedModels } from "../../../src/language/model/shipped.ts";
import { corpus, wordings } from "./corpus-files.ts";
import { judged, KINDS, type Kind } from "./judged.ts";

const [held = "", ...flags] = process.argv.slice(2);
const files = corpus();
const tried = files.get(held);
if (!tried) throw new Error(`there is no ${held}; there are ${[...files.keys()].join(", ")}`);
const others = [...files].flatMap(([file, sentences]) => (file === held ? [] : sentences));
const models = flags.includes("shipped") ? shippedModels() : modelsOf([...others, ...wordings()]);

const rows = new Map<string, Map<Kind, number>>();
for (const sentence of tried) {
  if (sentence.intents.some((intent) => !isIntent(learned(intent).intent))) continue;
  const { kind, note } = judged(sentence, models);
  if (flags.includes(kind) || flags.includes("each"))
    console.log(`${kind}\t${sentence.text}\t${note}`);
  for (const key of ["all", `speaker ${sentence.speaker}`, `intent ${sentence.intents[0]}`]) {
    const row = rows.get(key) ?? new Map<Kind, number>();
    row.set(kind, (row.get(kind) ?? 0) + 1);
    rows.set(key, row);
  }
}
console.log("".padEnd(44), ...KINDS.map((kind) => kind.padStart(14)));
for (const [key, row] of [...rows].sort()) {
  console.log(key.padEnd(44), ...KINDS.map((kind) => String(row.get(kind) ?? 0).padStart(14)));
}
