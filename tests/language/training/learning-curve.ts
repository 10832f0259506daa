/**
 * How well people are understood whom the model has not read, by the number of writers it has read
 * and by how near a sentence is to the nearest it was trained on: `run.mjs learning-curve FILE...`,
 * where the files of the corpus named are left out of the training and tried. Each writer counts
 * with no more than 150 lines, so that writers are counted and not lines.
 */
import { createHash } from "node:crypto";
import type { Sentence } from "../../../src/language/model/corpus.ts";
import { featuresOf, NOWHERE } from "../../../src/language/model/features.ts";
import { modelsOf } from "../../../src/language/model/make-model.ts";
import { utteranceOf } from "../../../src/language/words.ts";
import { corpus, wordings } from "./corpus-files.ts";
import { judged, KINDS, type Kind } from "./judged.ts";

const MOST_LINES = 150;
const NUMBERS = [5, 10, 20, 40];
/** Shares of features in common with the nearest sentence. */
const NEAR = [0.2, 0.3, 0.4, 0.6, 1.01];

const held = process.argv.slice(2);
const files = corpus();
const missing = held.find((file) => !files.has(file));
if (held.length === 0 || missing !== undefined) {
  throw new Error(`name files of the corpus: ${[...files.keys()].join(", ")}`);
}
const tried = held.flatMap((file) => files.get(file) ?? []);

/** The writers that are not tried, shuffled by the digest of their names. */
function writers(): Sentence[][] {
  const byName = new Map<string, Sentence[]>();
  for (const [file, sentences] of files) {
    if (held.includes(file)) continue;
    for (const sentence of sentences) {
      const name = `${file} ${sentence.speaker}`;
      byName.set(name, [...(byName.get(name) ?? []), sentence]);
    }
  }
  const digest = (name: string) => createHash("sha256").update(name).digest("hex");
  return [...byName]
    .filter(([, lines]) => lines.length >= MOST_LINES / 3)
    .sort(([a], [b]) => (digest(a) < digest(b) ? -1 : 1))
    .map(([, lines]) => lines);
}

function featuresIn({ text }: Sentence): Int32Array {
  const said = utteranceOf(text).words.map(({ word }) => word);
  return featuresOf(said, NOWHERE);
}

/** For each sentence tried, the share of features it has in common with the nearest one read. */
function nearness(read: readonly Sentence[]): number[] {
  const all = read.map(featuresIn);
  const having = new Map<number, number[]>();
  for (const [at, features] of all.entries()) {
    for (const feature of features) {
      const list = having.get(feature);
      if (list) list.push(at);
      else having.set(feature, [at]);
    }
  }
  return tried.map((sentence) => {
    const own = featuresIn(sentence);
    const common = new Uint16Array(all.length);
    let nearest = 0;
    for (const feature of own) {
      for (const at of having.get(feature) ?? []) {
        const shared = ++common[at]!;
        nearest = Math.max(nearest, shared / (own.length + all[at]!.length - shared));
      }
    }
    return nearest;
  });
}

type Row = Map<Kind, number>;

function count(row: Row, kind: Kind): Row {
  return row.set(kind, (row.get(kind) ?? 0) + 1);
}

/** Shares of what is meant for the kitchen, and of traps those acted on. */
function print(name: string, row: Row): void {
  const sum = (kinds: readonly Kind[]) => kinds.reduce((all, one) => all + (row.get(one) ?? 0), 0);
  const meant = sum(KINDS.filter((kind) => kind !== "trap" && kind !== "left"));
  const traps = sum(["trap", "left"]);
  const shares = KINDS.filter((kind) => kind !== "left").map((kind) => {
    const of = kind === "trap" ? traps : meant;
    return `${((100 * (row.get(kind) ?? 0)) / of).toFixed(1)} %`.padStart(14);
  });
  console.log(name.padEnd(34), String(meant).padStart(6), ...shares);
}

const order = writers();
console.log(
  "".padEnd(34),
  "meant",
  ...KINDS.filter((k) => k !== "left").map((k) => k.padStart(14)),
);
for (const number of [...NUMBERS, order.length]) {
  const all = number === order.length;
  const lines = order.slice(0, number).flatMap((own) => (all ? own : own.slice(0, MOST_LINES)));
  const models = modelsOf([...lines, ...wordings()]);
  const near = all ? nearness(lines) : [];
  const row: Row = new Map();
  const rows = NEAR.map((): Row => new Map());
  for (const [at, sentence] of tried.entries()) {
    const { kind } = judged(sentence, models);
    count(row, kind);
    if (all) count(rows[NEAR.findIndex((share) => (near[at] ?? 0) < share)]!, kind);
  }
  print(`${number} writers, ${lines.length} lines`, row);
  if (!all) continue;
  rows.forEach((one, at) => {
    print(`  nearest shares ${NEAR[at - 1] ?? 0} to ${Math.min(1, NEAR[at] ?? 1)}`, one);
  });
}
