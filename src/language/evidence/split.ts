/** The clauses of a sentence, split at its punctuation and at conjunctions. */
import { wordSet } from "../grammar/word-set.ts";
import type { Utterance } from "../words.ts";

const JOINERS = wordSet("and but then so also plus while");
const MARK = /[,.;:!?–—]|\s-\s|\.\.\./;

/** Each clause as an utterance of its own, without a conjunction at its beginning. */
export function clausesIn(said: Utterance): Utterance[] {
  const { text, words } = said;
  const cuts = [0];
  for (let at = 1; at < words.length; at++) {
    const [before, here] = [words[at - 1], words[at]];
    if (!before || !here || before.start === here.start) continue;
    if (MARK.test(text.slice(before.end, here.start)) || JOINERS.has(here.word)) cuts.push(at);
  }
  cuts.push(words.length);
  return cuts.slice(1).flatMap((end, index): Utterance[] => {
    let from = cuts[index] ?? 0;
    while (from < end && JOINERS.has(words[from]?.word ?? "")) from += 1;
    if (from >= end) return [];
    const piece = words.slice(from, end);
    const behind = text.slice(piece.at(-1)?.end ?? 0);
    return [{ text, words: piece, asked: /^\s*["'”’)]*\?/.test(behind), cut: false }];
  });
}
