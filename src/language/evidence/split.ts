/** The clauses of a sentence, split at its punctuation and at conjunctions. */
import { wordSet } from "../grammar/word-set.ts";
import { RECIPE_NAMES } from "../values/recipe-names.ts";
import { numbersAt } from "../values/spoken-numbers.ts";
import type { Utterance, Word } from "../words.ts";

const JOINERS = wordSet("and but then so also plus while because");
const MARK = /[,.;:!?–—]|\s-\s|\.\.\./;

/** "One hundred and ninety", "two and a half": the word in it joins no clauses. */
function isWithinNumber(words: readonly Word[], at: number): boolean {
  if (words[at]?.word !== "and") return false;
  const before = words[at - 1]?.word ?? "";
  if (/^(hundred|thousand)$/.test(before)) return numbersAt(words, at + 1).length > 0;
  const behind = words[at + 1]?.word === "a" ? words[at + 2]?.word : words[at + 1]?.word;
  return numbersAt(words, at - 1).length > 0 && /^(half|quarter)$/.test(behind ?? "");
}

/** Words around the "and" of recipes' names: "bread and butter". */
const NAMED = new Set(
  Object.values(RECIPE_NAMES)
    .flat()
    .flatMap((name) => name.toLowerCase().match(/\w+ and \w+/g) ?? []),
);

/** "For a while", "so far", "so much": no clause begins with these. */
function isWithinPhrase(words: readonly Word[], at: number): boolean {
  const [before = "", here = "", behind = ""] = [at - 1, at, at + 1].map((one) => {
    return words[one]?.word ?? "";
  });
  if (here === "while") return /^(a|good|little|long|quite|short|worth|the)$/.test(before);
  return here === "so" && /^(far|much|many|hot|hard|long|good)$/.test(behind);
}

function isWithinName(words: readonly Word[], at: number): boolean {
  return NAMED.has([at - 1, at, at + 1].map((place) => words[place]?.word ?? "").join(" "));
}

const clausesOf = new WeakMap<Utterance, readonly Utterance[]>();

/** Each clause as an utterance of its own, without a conjunction at its beginning. */
export function clausesIn(said: Utterance): readonly Utterance[] {
  const known = clausesOf.get(said);
  if (known) return known;
  const clauses = splitAtMarks(said);
  clausesOf.set(said, clauses);
  return clauses;
}

function splitAtMarks(said: Utterance): Utterance[] {
  const { text, words } = said;
  const cuts = [0];
  for (let at = 1; at < words.length; at++) {
    const [before, here] = [words[at - 1], words[at]];
    if (!before || !here || before.start === here.start) continue;
    const within = [isWithinNumber, isWithinName, isWithinPhrase].some((is) => is(words, at));
    const joins = JOINERS.has(here.word) && !within;
    if (joins || MARK.test(text.slice(before.end, here.start))) cuts.push(at);
  }
  cuts.push(words.length);
  return cuts.slice(1).flatMap((end, index): Utterance[] => {
    let from = cuts[index] ?? 0;
    while (from < end && JOINERS.has(words[from]?.word ?? "")) from += 1;
    if (from >= end) return [];
    const piece = words.slice(from, end);
    const behind = text.slice(piece.at(-1)?.end ?? 0);
    const asked = /^\s*["'”’)]*\?/.test(behind);
    return [{ text, words: piece, asked, cut: false, within: said }];
  });
}
