/**
 * Draws a tenth of the corpus to be labeled a second time by somebody who does not see the first
 * labels: `run.mjs draw-blind FOLDER`. Writes what was said, the stage that ran and the question
 * that waited, in pieces `blind-1.tsv` and so on. A sentence is drawn by its digest, so the draw is
 * the same each time, a corpus that grows keeps what was drawn, and neighbors are torn apart.
 */
import { createHash } from "node:crypto";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Sentence } from "../../../src/language/model/corpus.ts";
import { corpus } from "./corpus-files.ts";

const ONE_IN = 10;
const PIECE = 420;

const folder = process.argv[2];
if (folder === undefined) throw new Error("run.mjs draw-blind FOLDER");

function lineOf({ text, situation }: Sentence): string {
  return [text, situation.stages.join(","), situation.question ?? ""].join("\t");
}

const drawn = [...new Set([...corpus().values()].flat().map(lineOf))]
  .map((line) => ({ line, digest: createHash("sha256").update(line).digest() }))
  .filter(({ digest }) => digest.readUInt32BE(0) % ONE_IN === 0)
  .sort((a, b) => Buffer.compare(a.digest.subarray(4), b.digest.subarray(4)))
  .map(({ line }) => line);
const pieces = Math.round(drawn.length / PIECE);
const size = Math.ceil(drawn.length / pieces);
for (let piece = 0; piece < pieces; piece++) {
  const lines = drawn.slice(piece * size, (piece + 1) * size);
  writeFileSync(join(folder, `blind-${piece + 1}.tsv`), `${lines.join("\n")}\n`);
}
console.log(`${drawn.length} sentences in ${pieces} pieces of at most ${size}`);
