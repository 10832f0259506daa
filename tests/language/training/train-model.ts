/** `npm run train`: learns the model from the corpus and writes its file. */
import { writeFileSync } from "node:fs";
import { modelSource } from "../../../src/language/model/make-model.ts";
import { allSentences } from "./corpus-files.ts";

const FILE = "src/language/model/weights.ts";
const sentences = allSentences();
const began = performance.now();
const source = modelSource(sentences);
writeFileSync(FILE, source);
const seconds = Math.round((performance.now() - began) / 100) / 10;
const kilobytes = Math.round(source.length / 1000);
console.log(`${FILE}: ${sentences.length} sentences, ${kilobytes} kB, ${seconds} s`);
