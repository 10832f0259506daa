/**
 * How far a second labeling of the corpus, made without sight of the first, agrees with it:
 * `run.mjs compare-labels FILE... [--mark] [--each]`. The files are those of `draw-blind` with two
 * columns more: meanings and frame. Agreement is the share of sentences labeled alike, kappa what
 * of it chance does not explain (Cohen, 1960). Where the meanings differ, the right outcome is a
 * question: `--mark` writes the second into the corpus beside the first, as `done|boiling`.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { basename } from "node:path";
import { FRAMES } from "../../../src/language/model/corpus.ts";
import { corpusLines } from "./corpus-files.ts";

type Label = { meaning: string; frame: string };

const words = process.argv.slice(2);
const files = words.filter((word) => !word.startsWith("--"));
if (files.length === 0) throw new Error("run.mjs compare-labels FILE... [--mark] [--each]");

/** Several meanings are compared whatever their order; each counts once. */
function alike(meaning: string): string {
  return [...new Set(meaning.split("+"))].sort().join("+");
}

function secondLabels(): Map<string, Label> {
  const second = new Map<string, Label>();
  for (const file of files) {
    for (const [at, line] of readFileSync(file, "utf8").trimEnd().split("\n").entries()) {
      const columns = line.split("\t");
      const [meaning = "", frame = ""] = columns.slice(3);
      const known = FRAMES.some((one) => one === frame);
      if (columns.length !== 5 || meaning === "" || !known) {
        throw new Error(`${basename(file)}:${at + 1}: not a sentence with its meanings and frame`);
      }
      second.set(columns.slice(0, 3).join("\t"), { meaning, frame });
    }
  }
  return second;
}

/** Agreement of two labelings, and Cohen's kappa. */
function agreement(pairs: readonly (readonly [string, string])[]): [number, number] {
  const share = (side: 0 | 1) => {
    const counts = new Map<string, number>();
    for (const pair of pairs) counts.set(pair[side], (counts.get(pair[side]) ?? 0) + 1);
    return counts;
  };
  const [firsts, seconds] = [share(0), share(1)];
  const same = pairs.filter(([a, b]) => a === b).length / pairs.length;
  let chance = 0;
  for (const [label, count] of firsts) {
    chance += (count / pairs.length) * ((seconds.get(label) ?? 0) / pairs.length);
  }
  return [same, (same - chance) / (1 - chance)];
}

const second = secondLabels();
const compared: { text: string; first: Label; other: Label }[] = [];
for (const { path, lines } of corpusLines()) {
  const marked = lines.map((line) => {
    const columns = line.split("\t");
    const [text = "", meaning = "", frame = "", , stage = "", question = ""] = columns;
    const other = line.startsWith("#") ? undefined : second.get([text, stage, question].join("\t"));
    if (!other) return line;
    const [own = ""] = meaning.split("|");
    compared.push({ text, first: { meaning: own, frame }, other });
    if (alike(own) === alike(other.meaning)) return line;
    return [text, `${own}|${other.meaning}`, ...columns.slice(2)].join("\t");
  });
  if (words.includes("--mark")) writeFileSync(path, marked.join("\n"));
}
const meanings = compared.map(({ first, other }) => {
  return [alike(first.meaning), alike(other.meaning)] as const;
});
const frames = compared.map(({ first, other }) => [first.frame, other.frame] as const);
const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
for (const [name, pairs] of [
  ["meanings", meanings],
  ["frames", frames],
  ["meaning or chatter", meanings.map(([a, b]) => [`${a === "unknown"}`, `${b === "unknown"}`])],
] as const) {
  const [same, kappa] = agreement(pairs as readonly (readonly [string, string])[]);
  console.log(`${name}: ${percent(same)} of ${pairs.length} alike, kappa ${kappa.toFixed(3)}`);
}
const apart = new Map<string, number>();
for (const [a, b] of meanings)
  if (a !== b) apart.set(`${a} | ${b}`, (apart.get(`${a} | ${b}`) ?? 0) + 1);
for (const [pair, count] of [...apart].sort((a, b) => b[1] - a[1]).slice(0, 25)) {
  console.log(String(count).padStart(5), pair);
}
if (words.includes("--each")) {
  for (const { text, first, other } of compared) {
    if (alike(first.meaning) === alike(other.meaning)) continue;
    console.log(`${first.meaning} ${first.frame}\t${other.meaning} ${other.frame}\t${text}`);
  }
}
