/**
 * What an utterance says about critical factors. A factor is confirmed only by a clause that its
 * wording and a few fillers cover from end to end, in an utterance with nothing left over.
 */
import type { Confirm } from "../../kitchen/command.ts";
import type { Context } from "../context.ts";
import { Grammar, type Match, type Phrase, type Run } from "../grammar/matcher.ts";
import { skipsOf } from "../grammar/passing-over.ts";
import { skipTable } from "../grammar/phrase-book.ts";
import { WordPlaces } from "../grammar/word-places.ts";
import { numbersAt } from "../values/spoken-numbers.ts";
import { type Utterance, utteranceOf, type Word } from "../words.ts";
import { FACTOR_FILLERS, FACTOR_LISTS, FACTOR_WORDINGS, GUESSES } from "./factor-wordings.ts";

type Held = "yes" | "no";
/** Where a wording stands only: beside another fact of the filling, or in answer to a question. */
type Place = "beside" | "asked";
type Wording = { held: Held; phrase: Phrase; value?: number; only?: Place };

/** A recipe's own factors come with the words that confirm them. */
type AskedFactor = NonNullable<Context["factors"]>[number];

const grammar = new Grammar(FACTOR_LISTS);
const fillers = skipTable(FACTOR_FILLERS);
/** The longest first. */
const guesses = GUESSES.map((guess) => guess.split(" ")).sort((a, b) => b.length - a.length);
const known = new Map<string, Wording[]>();

function wordingsOf({ id, words = [] }: AskedFactor): Wording[] {
  const own = words.map((one) =>
    utteranceOf(one)
      .words.map(({ word }) => word)
      .join(" "),
  );
  const {
    value,
    yes,
    no,
    beside = [],
    asked = [],
  } = FACTOR_WORDINGS.get(id) ?? { subject: "", yes: own, no: [] };
  const key = `${id} ${yes.join("|")}`;
  const before = known.get(key);
  if (before) return before;
  const made = [
    ...yes.map((one) => ["yes", one, {}] as const),
    ...beside.map((one) => ["yes", one, { only: "beside" }] as const),
    ...asked.map((one) => ["yes", one, { only: "asked" }] as const),
    ...no.map((one) => ["no", one, {}] as const),
  ]
    .filter(([, source]) => source !== "")
    .map(([held, source, only]): Wording => {
      const phrase = grammar.phrase(source);
      return { held, phrase, ...only, ...(value === undefined ? {} : { value }) };
    });
  known.set(key, made);
  return made;
}

function runOf(clause: readonly Word[]): Run {
  const words = clause.map(({ word }) => word);
  const alts = clause.map(({ alt }) => alt);
  return {
    ...{ words, alts, places: new WordPlaces(words, alts) },
    skips: skipsOf(words, { fillers }, false),
    read: (_kind, at) => numbersAt(clause, at).map(({ value, next }) => ({ value, next, cost: 0 })),
    lists: [],
  };
}

/** The clause itself, without guesses before or after it. */
export function withoutGuesses(words: readonly Word[]): {
  words: readonly Word[];
  guessed: boolean;
} {
  const standsAt = (guess: readonly string[], from: number) =>
    guess.every((word, at) => words[from + at]?.word === word);
  const before = guesses.find((guess) => standsAt(guess, 0));
  if (before) return { words: words.slice(before.length), guessed: true };
  const behind = guesses.find((guess) => {
    const from = words.length - guess.length;
    return from > 0 && standsAt(guess, from);
  });
  if (behind) return { words: words.slice(0, words.length - behind.length), guessed: true };
  return { words, guessed: false };
}

function heldBy({ held, value }: Wording, match: Match): Omit<Confirm, "factor"> {
  const said = match.captures.find(({ slot }) => slot === "value")?.value;
  if (typeof said !== "number") return { held };
  // What is right goes by the recipe.
  if (value === undefined) return { held, value: said };
  return { held: said === value ? "yes" : said < value ? "no" : "unsure", value: said };
}

/** Wordings of a factor, denials first: "not new lids" contains the wording of a yes. */
type Candidates = { id: string; wordings: readonly Wording[] };

/** `filling`: another clause tells of it; `open`: the factor whose question waits. */
type ToldBeside = { filling?: boolean; open?: string | undefined };

/** The factors with those of their wordings that could stand in these words. */
function candidatesIn(run: Run, factors: readonly AskedFactor[], told: ToldBeside): Candidates[] {
  return factors.flatMap((factor) => {
    const all = wordingsOf(factor).filter(({ phrase, only }) => {
      const stands = !only || (only === "beside" ? told.filling : told.open === factor.id);
      return stands && phrase.lastStart(run) >= 0;
    });
    return all.length > 0 ? [{ id: factor.id, wordings: all.toReversed() }] : [];
  });
}

/** What one clause says, if a wording covers it from its first word to its last. */
function confirmIn(clause: readonly Word[], candidates: readonly Candidates[]) {
  if (candidates.length === 0) return undefined;
  const { words, guessed } = withoutGuesses(clause);
  const run = runOf(words);
  if (words.length === 0) return undefined;
  const ends = (at: number) => run.skips[at]?.some((place) => place.at === words.length) ?? false;
  const starts = (run.skips[0] ?? []).map(({ at }) => at);
  for (const { id, wordings } of candidates) {
    for (const wording of wordings) {
      for (const start of starts.filter((at) => at < words.length)) {
        const match = wording.phrase.match(run, start).find(({ next }) => ends(next));
        if (!match) continue;
        const said = heldBy(wording, match);
        const guess = said.held === "unsure" ? {} : { leans: said.held };
        if (!guessed) return { factor: id, ...said };
        return { factor: id, ...said, held: "unsure", ...guess } as const;
      }
    }
  }
  return undefined;
}

/**
 * What one clause of several says about a factor, unless something is excepted in the sentence.
 * @param filling another clause tells of the filling
 */
export function confirmInClause(
  clause: Utterance,
  said: Utterance,
  factors: readonly AskedFactor[],
  filling = false,
): Confirm | undefined {
  if (clause.asked || said.words.some(({ word }) => EXCEPTING.has(word))) return undefined;
  return confirmIn(clause.words, candidatesIn(runOf(clause.words), factors, { filling }));
}

/** Clauses about factors, and the words that are left without them. */
type Parted = { confirms: Confirm[]; rest: readonly Word[] };

const JOINERS = new Set(["with", "and", "using", "but"]);
/** "In every jar but one" is not in every jar. */
const EXCEPTING = new Set(["but", "except", "excepting", "save", "apart", "minus", "bar"]);
const LONGEST_CLAUSE = 14;
/** Longer utterances are stories. */
const MOST_WORDS = 30;

/** Those of the wordings that could stand between two places. */
function within(all: readonly Candidates[], run: Run, from: number, end: number): Candidates[] {
  return all.flatMap(({ id, wordings }) => {
    const some = wordings.filter(({ phrase }) => phrase.mayStandIn(run, from, end));
    return some.length > 0 ? [{ id, wordings: some }] : [];
  });
}

/**
 * Takes the clauses about factors out of an utterance, the longest first.
 * @param open the factor that is asked about, where words may count that only answer a question
 */
export function partedFrom(
  words: readonly Word[],
  asked: readonly AskedFactor[],
  open?: string,
): Parted {
  const run = runOf(words);
  if (words.length > MOST_WORDS) return { confirms: [], rest: words };
  const candidates = candidatesIn(run, asked, { open });
  if (candidates.length === 0) return { confirms: [], rest: words };
  for (let length = Math.min(LONGEST_CLAUSE, words.length); length > 0; length -= 1) {
    for (let from = 0; from + length <= words.length; from += 1) {
      const standing = within(candidates, run, from, from + length);
      const confirm = confirmIn(words.slice(from, from + length), standing);
      const behind = words[from + length]?.word ?? "";
      if (!confirm || (confirm.held === "yes" && EXCEPTING.has(behind))) continue;
      const joined = JOINERS.has(words[from - 1]?.word ?? "");
      const before = words.slice(0, joined ? from - 1 : from);
      const behindIt = words.slice(from + length);
      const { confirms, rest } = partedFrom([...before, ...behindIt], asked, open);
      return { confirms: [confirm, ...confirms], rest };
    }
  }
  return { confirms: [], rest: words };
}

/** Whether the words are only a guess: "I think so", "probably". */
export function isGuess(words: readonly Word[]): boolean {
  const left = withoutGuesses(words.filter(({ word }) => !BESIDE_GUESS.has(word)));
  if (!left.guessed) return false;
  return left.words.length === 0 || isGuess(left.words);
}

const BESIDE_GUESS = new Set(["um", "uh", "oh", "well", "yes", "yeah", "yep", "okay", "so", "no"]);
