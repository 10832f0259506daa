/** Running lots as they are named beside their jars: "Dragon Tongue", "the Boston", "P". */
import type { Context, NamedBatch } from "../context.ts";
import { wordSet } from "../grammar/word-set.ts";
import { type Utterance, unaccented, wordAt } from "../words.ts";
import type { Parsed } from "./spoken-numbers.ts";

const PRODUCE = /^(beans?|beets?|cucumbers?|cukes?|tomatoes|tomato|pickles|ones)$/;

function nameWords(variety: string): string[] {
  return (
    unaccented(variety)
      .toLowerCase()
      .match(/[\p{L}\p{N}]+/gu) ?? []
  );
}

/** "Marketmores", "Providers": several of one. */
function isWordOf(said: string, word: string): boolean {
  return said === word || said === `${word}s` || `${said}s` === word;
}

/** Words of names that say much else besides. */
const EVERYDAY = wordSet(
  "blue green yellow purple white black orange brown dark light sweet early late half giant large",
  "little small great long short round dwarf bush pole market super best first good cherry paste",
  "heart wonder beauty pride star moon king queen lady mountain river lake garden summer winter",
  "pickling slicing cutting brandy straight eight hundred thousand pepper beans bean beet beets",
  "tomato tomatoes cucumber cucumbers pickle pickles sugar snow snap kitchen",
);
const LEAST_LETTERS = 5;

/** "The Boston", "three of the marzano": a word of the name that says nothing else. */
function isTelling(word: string): boolean {
  return word.length >= LEAST_LETTERS && !EVERYDAY.has(word);
}

/** How many words from here on name a lot; 0 where they do not. */
function namedBy({ text, words }: Utterance, at: number, lot: NamedBatch): number {
  const name = nameWords(lot.variety ?? "");
  const written = (place: number) => text.slice(words[place]?.start, words[place]?.end);
  const same = (place: number) => isWordOf(wordAt(words, at + place), name[place] ?? "");
  let length = 0;
  while (length < name.length && same(length)) length += 1;
  if (length === name.length && length > 0) return length;
  // A part of a name is an everyday word unless it is written as a name.
  if (length > 0 && /^\p{Lu}/u.test(written(at))) return length;
  if (name.some((word) => isTelling(word) && isWordOf(wordAt(words, at), word))) {
    return Math.max(1, length);
  }
  const marked = lot.mark !== undefined && /^\p{Lu}$/u.test(lot.mark) && written(at) === lot.mark;
  return marked && !/^[AI]$/.test(lot.mark ?? "") ? 1 : 0;
}

/** The lot that is named from this word on, its produce included; none where two fit as well. */
export function runningLotAt(
  said: Utterance,
  at: number,
  running: Context["running"],
): Parsed<NamedBatch> | undefined {
  const all = running.map((lot) => ({ lot, length: namedBy(said, at, lot) }));
  const longest = Math.max(0, ...all.map(({ length }) => length));
  const [found, another] = all.filter(({ length }) => length === longest);
  if (longest === 0 || !found || another) return undefined;
  const next = at + longest;
  const produce = PRODUCE.test(wordAt(said.words, next));
  return { value: found.lot, next: produce ? next + 1 : next };
}
