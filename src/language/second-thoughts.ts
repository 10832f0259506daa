import { wordSet } from "./grammar/word-set.ts";
import { numbersAt, type Parsed } from "./values/spoken-numbers.ts";
import type { Utterance, Word } from "./words.ts";

/** "Six pounds, no, eight pounds": where a number is corrected at once, only the second counts. */

/** Words that may stand between the "no" and the second number. */
const AFTER_NO = wordSet("wait sorry actually rather make it that i mean meant hang on hold");
/** The most words after the first number that are repeated after the second. */
const MOST_REPEATED = 3;

function longestNumber(words: readonly Word[], at: number): Parsed<number> | undefined {
  return numbersAt(words, at).toSorted((a, b) => b.next - a.next)[0];
}

/** Where the second number begins after a "no" at this place; undefined where there is none. */
function secondNumber(words: readonly Word[], no: number): number | undefined {
  let at = no + 1;
  while (AFTER_NO.has(words[at]?.word ?? "")) at += 1;
  return longestNumber(words, at) && at;
}

/** Words `from` up to `to` and words from `again` on are the same. */
function repeats(words: readonly Word[], from: number, to: number, again: number): boolean {
  for (let at = from; at < to; at += 1) {
    if (words[at]?.word !== words[again + at - from]?.word) return false;
  }
  return true;
}

/** The place of the first number, before a "no"; what follows it is repeated after the second. */
function firstNumber(words: readonly Word[], no: number, second: number): number | undefined {
  const behindSecond = longestNumber(words, second)?.next ?? second;
  for (let at = 0; at < no; at += 1) {
    const first = longestNumber(words, at);
    if (!first || first.next > no || no - first.next > MOST_REPEATED) continue;
    if (repeats(words, first.next, no, behindSecond)) return at;
  }
  return undefined;
}

/** The utterance without a number that was taken back; unchanged where there is none. */
export function withoutFirstThoughts(said: Utterance): Utterance {
  const { words } = said;
  const no = words.findIndex(({ word }, at) => word === "no" && at > 0);
  if (no < 0) return said;
  const second = secondNumber(words, no);
  const first = second === undefined ? undefined : firstNumber(words, no, second);
  if (first === undefined || second === undefined) return said;
  return { ...said, words: [...words.slice(0, first), ...words.slice(second)] };
}
