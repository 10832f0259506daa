/**
 * How well a writer is understood on whom the model was not trained: `run.mjs try-hearing
 * days-3.tsv`. By speaker: understood at once, asked about with the right meaning first, asked
 * wrongly, acted on wrongly, and not understood; and, of what is neither a report nor an order,
 * what was acted on all the same.
 */
import type { Intent } from "../../../src/kitchen/command.ts";
import { parseIso } from "../../../src/kitchen/time.ts";
import type { Context } from "../../../src/language/context.ts";
import { hear } from "../../../src/language/hear.ts";
import { MEANINGS } from "../../../src/language/intents/all.ts";
import type { Sentence } from "../../../src/language/model/corpus.ts";
import { modelsOf } from "../../../src/language/model/make-model.ts";
import { shippedModels } from "../../../src/language/model/shipped.ts";
import { corpus, wordings } from "./corpus-files.ts";

const [held = "", ...flags] = process.argv.slice(2);
const files = corpus();
const tried = files.get(held);
if (!tried) throw new Error(`there is no ${held}; there are ${[...files.keys()].join(", ")}`);
const others = [...files].flatMap(([file, sentences]) => (file === held ? [] : sentences));
const models = flags.includes("shipped") ? shippedModels() : modelsOf([...others, ...wordings()]);

const KINDS = [
  "exact",
  "asked",
  "asked wrongly",
  "acted wrongly",
  "unknown",
  "left",
  "trap",
] as const;
type Kind = (typeof KINDS)[number];

function contextOf({ situation }: Sentence): Context {
  const nowMs = parseIso("2027-08-14T14:00:00", "America/Denver") ?? 0;
  const stages = situation.stages.map((kind) => {
    return { id: kind, title: kind, kind, state: "running" as const };
  });
  return {
    nowMs,
    zone: "America/Denver",
    recipes: [],
    running: [
      { id: "b-1", recipe: "dilled-green-beans", variety: "Provider" },
      { id: "b-2", recipe: "pickled-beets" },
    ],
    timers: [],
    loads: stages.length > 0 ? [{ id: "L1", canner: "canner", stages }] : [],
    ...(situation.question ? { question: { kind: "yes-no", key: situation.question } } : {}),
  };
}

/** In these frames nothing that is named is to be done or believed. */
const INDIRECT = new Set(["wished", "denied", "imagined", "reported", "past", "elsewhere", "idle"]);

function isTrap({ frame, intents }: Sentence): boolean {
  if (frame !== undefined && INDIRECT.has(frame)) return true;
  const [intent] = intents;
  return frame === "asked" && MEANINGS[intent as Intent]?.report === true;
}

function judged(sentence: Sentence): { kind: Kind; note: string } {
  const { reading, commands, candidates } = hear(sentence.text, contextOf(sentence), models);
  const right = (intent: string | undefined) => sentence.intents.includes(intent ?? "");
  const acted = commands.map(({ intent }) => intent);
  const guesses = candidates.map(({ intent, confidence }) => `${intent} ${confidence}`);
  const meant = `${sentence.intents.join("+")} ${sentence.frame}`;
  const note = `${meant} heard ${reading} ${acted.join("+")} | ${guesses.join(", ")}`;
  if (isTrap(sentence)) {
    const wrong = acted.some((intent) => MEANINGS[intent].cost !== "harmless");
    return { kind: wrong ? "trap" : "left", note };
  }
  if (reading === "sure") {
    const all = sentence.intents.filter((intent) => acted.includes(intent as Intent)).length;
    if (acted.every(right) && all === new Set(sentence.intents).size)
      return { kind: "exact", note };
    const harmless = acted.every((intent) => MEANINGS[intent].cost === "harmless");
    return { kind: acted.every(right) ? "exact" : harmless ? "unknown" : "acted wrongly", note };
  }
  if (reading === "ask")
    return { kind: right(candidates[0]?.intent) ? "asked" : "asked wrongly", note };
  return { kind: sentence.intents[0] === "unknown" ? "exact" : "unknown", note };
}

const rows = new Map<string, Map<Kind, number>>();
for (const sentence of tried) {
  if (sentence.intents.some((intent) => !Object.hasOwn(MEANINGS, intent))) continue;
  const { kind, note } = judged(sentence);
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
