import type { Intent } from "../../kitchen/command.ts";
import { FILLERS, HEDGES, OPENERS } from "../fillers.ts";
import { ALL_LISTS, FAMILIES } from "../phrases/all-families.ts";
import type { PlainWords } from "../values/targets.ts";
import { BagReader } from "./bags.ts";
import { Grammar, type Phrase, type Run } from "./matcher.ts";

/** One phrase of a family, and its place in the order of preference. */
export type FamilyPhrase = {
  intent: Intent;
  set: Readonly<Record<string, string | number | true>>;
  phrase: Phrase;
  order: number;
  /** Holds a slot that takes any words, so that what follows cannot be told from it. */
  open: boolean;
};

/** Phrases of passed-over words by their first word. */
export type SkipTable = ReadonlyMap<string, readonly string[][]>;

/** Everything phrases are known by, made once, at the first utterance. */
export type PhraseBook = {
  /** Phrases by each word of which they need one; and those that need none. */
  byNeed: ReadonlyMap<string, readonly FamilyPhrase[]>;
  needless: readonly FamilyPhrase[];
  fillers: SkipTable;
  openers: SkipTable;
  hedges: SkipTable;
  /** Side remarks: whole clauses that say nothing the kitchen has to know. */
  aside: Phrase;
  bags: BagReader;
  /** Every word of every phrase. */
  plain: PlainWords;
};

const OPEN_SLOT = /\{(?:\w+:)?(?:text|asked|thing|person|open|timer|pinged|lot|label|produce)\}/;

function skipTable(phrases: readonly string[]): SkipTable {
  const table = new Map<string, string[][]>();
  for (const phrase of phrases) {
    const words = phrase.split(" ");
    const known = table.get(words[0] ?? "");
    if (known) known.push(words);
    else table.set(words[0] ?? "", [words]);
  }
  return table;
}

function* sources(): Generator<string> {
  for (const family of FAMILIES) yield* family.phrases;
  for (const list of Object.values(ALL_LISTS)) yield* list;
  yield* FILLERS;
  yield* OPENERS;
  yield* HEDGES;
}

/** The words of all phrases, gathered when a name is first heard that might be misheard. */
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
  const grammar = new Grammar(ALL_LISTS);
  const byNeed = new Map<string, FamilyPhrase[]>();
  const needless: FamilyPhrase[] = [];
  let order = 0;
  for (const { intent, set = {}, phrases } of FAMILIES) {
    for (const source of phrases) {
      const phrase = grammar.phrase(source);
      const one = { intent, set, phrase, order: order++, open: OPEN_SLOT.test(source) };
      if (!phrase.needs) needless.push(one);
      for (const word of phrase.needs ?? []) {
        const known = byNeed.get(word);
        if (known) known.push(one);
        else byNeed.set(word, [one]);
      }
    }
  }
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

const known = new WeakMap<readonly string[], FamilyPhrase[]>();

/** The phrases whose needed words were said. */
export function candidates(book: PhraseBook, run: Run): FamilyPhrase[] {
  const before = known.get(run.has);
  if (before) return before;
  const found = new Set(book.needless);
  for (const word of run.has) {
    for (const phrase of book.byNeed.get(word) ?? []) found.add(phrase);
  }
  const able = [...found].filter(({ phrase }) => phrase.couldMatch(run.has));
  known.set(run.has, able);
  return able;
}
