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
/** In a sentence this short, the open question tells most of what it means. */
const SHORT = 4;

const NUMBERS = new Set(
  (
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen " +
    "fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty " +
    "ninety hundred thousand half quarter dozen couple"
  ).split(" "),
);

/** FNV-1a over the characters of a feature's name, folded to the places there are. */
function placeOf(name: string): number {
  let hash = 0x811c9dc5;
  for (let index = 0; index < name.length; index++) {
    hash ^= name.charCodeAt(index);
    hash = Math.imul(hash, 0x01000193);
  }
  return ((hash >>> 11) ^ hash) & (FEATURES - 1);
}

/** Any number, in figures or words, counts as the same. */
function generalised(word: string): string {
  return /^\d/.test(word) || NUMBERS.has(word) ? "#" : word;
}

type Add = (name: string) => void;

/** The words and the runs of two and three of them. */
function addRuns(said: readonly string[], add: Add): void {
  const bounded = ["^", ...said, "$"];
  for (const word of said) add(`u ${word}`);
  for (let at = 0; at + 1 < bounded.length; at++) {
    const pair = `${bounded[at]} ${bounded[at + 1]}`;
    add(`b ${pair}`);
    if (at + 2 < bounded.length) add(`t ${pair} ${bounded[at + 2]}`);
  }
}

/** How something is meant shows in its words and their order: in ascending order, each once. */
export function manner(words: readonly string[], asked: boolean): Int32Array {
  const found = new Set<number>();
  const add = (name: string) => found.add(placeOf(name));
  const said = words.map(generalised);
  addRuns(said, add);
  said.forEach((word, at) => {
    if (at + 2 < said.length) add(`s ${word} ${said[at + 2]}`);
    if (at < 3) add(`${at} ${word}`);
  });
  add(`n ${Math.min(said.length, 8)}`);
  if (asked) add("?");
  return Int32Array.from(found).sort();
}

/**
 * The features of words that were said, each once, in ascending order.
 * @param words lower case, without punctuation, contractions taken apart
 */
export function featuresOf(words: readonly string[], situation: Situation): Int32Array {
  const found = new Set<number>();
  const add = (name: string) => found.add(placeOf(name));
  const said = words.map(generalised);
  addRuns(said, add);
  for (const word of new Set(words)) {
    if (word.length > STEM) add(`p ${word.slice(0, STEM)}`);
    const edged = `<${word}>`;
    for (let size = SHORTEST_PIECE; size <= LONGEST_PIECE; size++) {
      for (let at = 0; at + size <= edged.length; at++) add(`c ${edged.slice(at, at + size)}`);
    }
  }
  const standing = words.map((word) => conceptsOf(word)[0] ?? "-");
  for (const concept of new Set(words.flatMap(conceptsOf))) add(`o ${concept}`);
  const meant = standing.filter((one) => one !== "-");
  meant.forEach((one, at) => {
    for (const other of meant.slice(at + 1, at + 4)) if (other !== one) add(`oo ${one} ${other}`);
  });
  const question = `q ${situation.question ?? ""}`;
  for (const moment of [...situation.stages.map((kind) => `k ${kind}`), question]) {
    add(moment);
    if (moment === question && !situation.question && said.length >= SHORT) continue;
    for (const word of said) add(`${moment} ${word}`);
  }
  return Int32Array.from(found).sort();
}
