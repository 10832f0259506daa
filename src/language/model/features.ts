/**
 * What a learned model sees of a sentence: its words, runs of words, pieces of words, and the
 * moment it was said in, each as a number below `FEATURES`.
 */

import { conceptsOf } from "./concepts.ts";

/** What the kitchen was doing when something was said. */
export type Situation = {
  /** Kinds of stage that run: `process`, `heat`. */
  stages: readonly string[];
  /** The open question, if there is one: `vinegar-5-percent`, `end`. */
  question?: string;
};

export const NOWHERE: Situation = { stages: [] };

/** Features are hashed into this many places; two may share one. */
export const FEATURES = 1 << 21;

const SHORTEST_PIECE = 3;
const LONGEST_PIECE = 5;
const STEM = 4;
/** In a sentence this short, the open question tells most about what it means. */
const SHORT = 4;

const NUMBERS = new Set(
  (
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen " +
    "fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty " +
    "ninety hundred thousand half quarter dozen couple"
  ).split(" "),
);

const BASIS = 0x811c9dc5 | 0;

/** FNV-1a over characters, going on from those before them. */
function hashed(text: string, before = BASIS): number {
  let hash = before;
  for (let index = 0; index < text.length; index++) {
    hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  }
  return hash;
}

/** Kinds of features, by how their names begin. */
const BEGIN = {
  word: hashed("u "),
  pair: hashed("b "),
  three: hashed("t "),
  over: hashed("s "),
  stem: hashed("p "),
  piece: hashed("c "),
  concept: hashed("o "),
  concepts: hashed("oo "),
};

/** Any number, in figures or words, counts as the same. */
function generalised(word: string): string {
  const code = word.charCodeAt(0);
  return (code >= 48 && code <= 57) || NUMBERS.has(word) ? "#" : word;
}

/** The features of one sentence: the hashes of their names, folded to the places there are. */
class FeaturePlaces {
  private readonly places: number[] = [];

  add(hash: number): void {
    this.places.push(((hash >>> 11) ^ hash) & (FEATURES - 1));
  }

  /** In ascending order, each once. */
  sorted(): Int32Array {
    const all = Int32Array.from(this.places).sort();
    let count = 0;
    for (const place of all) if (count === 0 || all[count - 1] !== place) all[count++] = place;
    return all.slice(0, count);
  }
}

/** The words and the runs of two and three of them. */
function addRuns(said: readonly string[], found: FeaturePlaces): void {
  for (const word of said) found.add(hashed(word, BEGIN.word));
  for (let at = -1; at < said.length; at++) {
    const pair = ` ${said[at + 1] ?? "$"}`;
    const first = said[at] ?? "^";
    found.add(hashed(pair, hashed(first, BEGIN.pair)));
    if (at + 1 >= said.length) continue;
    const third = ` ${said[at + 2] ?? "$"}`;
    found.add(hashed(third, hashed(pair, hashed(first, BEGIN.three))));
  }
}

/** How something is meant shows in its words and their order: in ascending order, each once. */
export function manner(words: readonly string[], asked: boolean): Int32Array {
  const found = new FeaturePlaces();
  const said = words.map(generalised);
  addRuns(said, found);
  said.forEach((word, at) => {
    if (at + 2 < said.length) found.add(hashed(` ${said[at + 2]}`, hashed(word, BEGIN.over)));
    if (at < 3) found.add(hashed(`${at} ${word}`));
  });
  found.add(hashed(`n ${Math.min(said.length, 8)}`));
  if (asked) found.add(hashed("?"));
  return found.sorted();
}

/** The beginning of a word, and all its pieces with their place at its edge. */
function addPieces(word: string, found: FeaturePlaces): void {
  if (word.length > STEM) found.add(hashed(word.slice(0, STEM), BEGIN.stem));
  const edged = `<${word}>`;
  for (let at = 0; at + SHORTEST_PIECE <= edged.length; at++) {
    let hash = BEGIN.piece;
    const end = Math.min(at + LONGEST_PIECE, edged.length);
    for (let next = at; next < end; next++) {
      hash = hashed(edged[next] ?? "", hash);
      if (next + 1 - at >= SHORTEST_PIECE) found.add(hash);
    }
  }
}

function addConcepts(words: readonly string[], found: FeaturePlaces): void {
  const meant: string[] = [];
  for (const word of words) {
    const concepts = conceptsOf(word);
    for (const concept of concepts) found.add(hashed(concept, BEGIN.concept));
    if (concepts[0] !== undefined) meant.push(concepts[0]);
  }
  meant.forEach((one, at) => {
    const first = hashed(`${one} `, BEGIN.concepts);
    for (const other of meant.slice(at + 1, at + 4)) {
      if (other !== one) found.add(hashed(other, first));
    }
  });
}

/**
 * The features of words that were said, each once, in ascending order.
 * @param words lower case, without punctuation, contractions taken apart
 */
export function featuresOf(words: readonly string[], situation: Situation): Int32Array {
  const found = new FeaturePlaces();
  const said = words.map(generalised);
  addRuns(said, found);
  for (const word of new Set(words)) addPieces(word, found);
  addConcepts(words, found);
  const question = `q ${situation.question ?? ""}`;
  for (const moment of [...situation.stages.map((kind) => `k ${kind}`), question]) {
    const hash = hashed(moment);
    found.add(hash);
    if (moment === question && !situation.question && said.length >= SHORT) continue;
    for (const word of said) found.add(hashed(` ${word}`, hash));
  }
  return found.sorted();
}
