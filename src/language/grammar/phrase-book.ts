import type { Intent } from "../../kitchen/command.ts";
import { ASIDES, FILLERS, HEDGES, OPENERS } from "../fillers.ts";
import { meanings } from "../intents/all.ts";
import { SHARED_LISTS } from "../intents/shared-lists.ts";
import type { PlainWords } from "../values/targets.ts";
import { BagReader } from "./bags.ts";
import { Grammar, type Match, type Phrase, type Run } from "./matcher.ts";
import type { Passable, SkipTable } from "./passing-over.ts";
import { alternatives } from "./pattern.ts";
import { ANY_FIGURE } from "./word-places.ts";

/** One phrase of a meaning, and its place in the order of preference. */
export type MeaningPhrase = {
  intent: Intent;
  set: Readonly<Record<string, unknown>>;
  phrase: Phrase;
  order: number;
  /** Contains a slot that takes any words, so that what follows cannot be separated from it. */
  open: boolean;
};

/** Everything known about the phrases, made once, at the first utterance. */
export type PhraseBook = Passable & {
  /** Phrases by the words one of which has to occur, and those without such words. */
  byNeed: ReadonlyMap<string, readonly MeaningPhrase[]>;
  needless: readonly MeaningPhrase[];
  bags: BagReader;
  /** Every word of every phrase. */
  plain: PlainWords;
};

const OPEN_SLOT = /\{(?:\w+:)?(?:text|asked|thing|person|open|timer|pinged|lot|label|produce)\}/;

/** A table of these phrases. */
export function skipTable(phrases: readonly string[]): SkipTable {
  const table = new Map<string, string[][]>();
  for (const phrase of phrases) {
    const words = phrase.split(" ");
    const known = table.get(words[0] ?? "");
    if (known) known.push(words);
    else table.set(words[0] ?? "", [words]);
  }
  return table;
}

/** Every phrase in the order of preference, with the slots it fills; those for speech come last. */
export function phrases(): { intent: Intent; set: MeaningPhrase["set"]; source: string }[] {
  const all = meanings();
  const said = [
    ...all.flatMap(([intent, { wordings = [] }]) => wordings.map((one) => ({ intent, one }))),
    ...all.flatMap(([intent, { spoken = [] }]) => spoken.map((one) => ({ intent, one }))),
  ];
  return said.flatMap(({ intent, one }) => {
    const { set, phrases } = typeof one === "string" ? { set: {}, phrases: [one] } : one;
    return phrases.flatMap(alternatives).map((source) => ({ intent, set, source }));
  });
}

/** Every list of the wordings by its name. */
export function lists(): Readonly<Record<string, string>> {
  const own = meanings().map(([, { lists }]) => lists);
  return Object.assign({ aside: ASIDES }, SHARED_LISTS, ...own);
}

function* sources(): Generator<string> {
  for (const { source } of phrases()) yield source;
  yield* Object.values(lists());
  yield* FILLERS;
  yield* OPENERS;
  yield* HEDGES;
}

/** The words of all phrases, gathered when a name that may be misheard is first heard. */
function plainWords(): PlainWords {
  let words: Set<string> | undefined;
  return {
    has(word) {
      if (!words) {
        words = new Set();
        for (const source of sources()) {
          const bare = source.replace(/<[^>]*>|\{[^}]*\}/g, " ");
          for (const found of bare.match(/[a-z0-9'-]+/g) ?? []) words.add(found);
        }
      }
      return words.has(word);
    },
  };
}

function makeBook(): PhraseBook {
  const grammar = new Grammar(lists());
  const byNeed = new Map<string, MeaningPhrase[]>();
  const needless: MeaningPhrase[] = [];
  phrases().forEach(({ intent, set, source }, order) => {
    const phrase = grammar.phrase(source);
    const one = { intent, set, phrase, order, open: OPEN_SLOT.test(source) };
    if (!phrase.needs) needless.push(one);
    for (const word of phrase.needs ?? []) {
      const known = byNeed.get(word);
      if (known) known.push(one);
      else byNeed.set(word, [one]);
    }
  });
  return {
    byNeed,
    needless,
    fillers: skipTable(FILLERS),
    openers: skipTable(OPENERS),
    hedges: skipTable(HEDGES),
    aside: grammar.phrase("<aside>"),
    bags: new BagReader(grammar),
    plain: plainWords(),
  };
}

let made: PhraseBook | undefined;

/** The phrases of this program. */
export function phraseBook(): PhraseBook {
  made ??= makeBook();
  return made;
}

/** A phrase whose required words were said, and the last place where it could begin. */
type Candidate = { of: MeaningPhrase; last: number };

/** An utterance matched against all phrases. */
export type BookRun = Run & {
  /** That of the sentence these words are a part of. */
  within: BookRun | undefined;
  candidates?: readonly Candidate[];
  /** What matched from each place on so far. */
  matches: { of: MeaningPhrase; match: Match }[][];
};

/** All words said, and those that contractions can stand for. */
function wordsIn({ words, alts }: Run): Set<string> {
  const all = new Set(words);
  for (const alt of alts) if (alt) all.add(alt);
  if (words.some((word) => /^\d/.test(word))) all.add(ANY_FIGURE);
  return all;
}

/** The phrases whose required words were said in their order. */
export function candidatePhrases(book: PhraseBook, run: BookRun): readonly Candidate[] {
  if (run.candidates) return run.candidates;
  const able: Candidate[] = [];
  const seen = new Set<MeaningPhrase>();
  const add = (of: MeaningPhrase) => {
    const last = of.phrase.lastStart(run);
    if (last < 0 || seen.has(of)) return;
    seen.add(of);
    able.push({ of, last });
  };
  const around = run.within?.candidates;
  if (around) for (const { of } of around) add(of);
  else {
    book.needless.forEach(add);
    for (const word of wordsIn(run)) book.byNeed.get(word)?.forEach(add);
  }
  run.candidates = able;
  return able;
}
