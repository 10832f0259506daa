import type { Command, Intent } from "../kitchen/command.ts";
import { answerTo, bareAnswer } from "./answers.ts";
import type { Context } from "./context.ts";
import { FILLERS, HEDGES, OPENERS } from "./fillers.ts";
import { finishSlots } from "./finish-slots.ts";
import { FORGIVING, isNoReport, REPORTS, TELLING } from "./guards.ts";
import { Grammar, type Match, type Run } from "./matcher.ts";
import { ALL_LISTS, FAMILIES } from "./phrases/all-families.ts";
import { slotReader } from "./slots.ts";
import { type Meaning, namesOf } from "./targets.ts";
import { type Utterance, wordsOf } from "./words.ts";

/** A command, and what the name in it can mean (several where it fits several). */
export type Understood = Command & { refersTo?: Meaning };

type Phrase = {
  intent: Intent;
  set: Readonly<Record<string, string | number | true>>;
  matcher: (run: Run, at: number) => Match[];
  order: number;
  /** Words it can begin with; undefined where it can begin with a slot. */
  firsts: Set<string> | undefined;
};

type Compiled = {
  /** Phrases by each word of which they need one; and those that need none. */
  byNeed: Map<string, Phrase[]>;
  needless: Phrase[];
  fillers: SkipTable;
  openers: SkipTable;
  hedges: SkipTable;
  /** Every word of every phrase. */
  plain: Set<string>;
};

/** Phrases of passed-over words by their first word. */
type SkipTable = Map<string, string[][]>;

const FILLER_COST = 0.05;
const HEDGE_COST = 2;
/** A word nobody expected; two of them are too many. */
const STRANGER_COST = 3;
const MOST_STRANGE = 2 * STRANGER_COST;
/** Shorter utterances have no word to spare. */
const FEWEST_WITH_STRANGER = 4;

let compiled: Compiled | undefined;

function skipTable(phrases: readonly string[]): SkipTable {
  const table: SkipTable = new Map();
  for (const phrase of phrases) {
    const words = phrase.split(" ");
    const known = table.get(words[0] ?? "");
    if (known) known.push(words);
    else table.set(words[0] ?? "", [words]);
  }
  return table;
}

function compile(): Compiled {
  const grammar = new Grammar(ALL_LISTS);
  const all: Compiled = {
    byNeed: new Map(),
    needless: [],
    fillers: skipTable(FILLERS),
    openers: skipTable(OPENERS),
    hedges: skipTable(HEDGES),
    plain: grammar.vocabulary,
  };
  let order = 0;
  for (const family of FAMILIES) {
    for (const source of family.phrases) {
      const { matcher, firsts, needs } = grammar.phrase(source);
      const set = family.set ?? {};
      const phrase = { intent: family.intent, set, matcher, order: order++, firsts };
      if (!needs) all.needless.push(phrase);
      for (const word of needs ?? []) {
        const known = all.byNeed.get(word);
        if (known) known.push(phrase);
        else all.byNeed.set(word, [phrase]);
      }
    }
  }
  for (const phrase of [...FILLERS, ...OPENERS, ...HEDGES]) {
    for (const word of phrase.split(" ")) all.plain.add(word);
  }
  return all;
}

function skipsFrom(words: readonly string[], at: number, table: SkipTable): number[] {
  const found = table.get(words[at] ?? "") ?? [];
  return found
    .filter((phrase) => phrase.every((word, step) => words[at + step] === word))
    .map((phrase) => at + phrase.length);
}

/**
 * For each place, the places one can be at after passing over fillers, itself first. `strangers`
 * lets words be passed over that are no fillers, at a price that allows one of them.
 */
function skipsOf(
  words: readonly string[],
  all: Compiled,
  strangers: boolean,
): { at: number; cost: number }[][] {
  const skips: { at: number; cost: number }[][] = [];
  for (let at = words.length; at >= 0; at -= 1) {
    const reached = [{ at, cost: 0 }];
    for (const next of skipsFrom(words, at, all.fillers)) {
      for (const place of skips[next] ?? []) {
        if (reached.some((known) => known.at === place.at)) continue;
        reached.push({ at: place.at, cost: place.cost + FILLER_COST });
      }
    }
    if (strangers && at < words.length && !TELLING.has(words[at] ?? "")) {
      reached.push({ at: at + 1, cost: STRANGER_COST });
    }
    skips[at] = reached;
  }
  return skips;
}

/** Where a phrase may begin: after fillers, politeness and hedges, in any mixture. */
function startsOf(run: Run, all: Compiled): Map<number, number> {
  const starts = new Map<number, number>([[0, 0]]);
  for (let at = 0; at < run.words.length; at += 1) {
    const cost = starts.get(at);
    if (cost === undefined) continue;
    const reach = (next: number, more: number) => {
      if (cost + more < (starts.get(next) ?? Number.POSITIVE_INFINITY)) {
        starts.set(next, cost + more);
      }
    };
    for (const place of run.skips[at] ?? []) reach(place.at, place.cost);
    for (const next of skipsFrom(run.words, at, all.openers)) reach(next, FILLER_COST);
    for (const next of skipsFrom(run.words, at, all.hedges)) reach(next, HEDGE_COST);
  }
  return starts;
}

type Best = { phrase: Phrase; match: Match; cost: number };

function bestMatch(said: Utterance, run: Run, all: Compiled, strange: boolean): Best | undefined {
  let best: Best | undefined;
  const end = run.words.length;
  const phrases = new Set(all.needless);
  for (const word of run.has) {
    for (const phrase of all.byNeed.get(word) ?? []) phrases.add(phrase);
  }
  for (const [start, startCost] of startsOf(run, all)) {
    if (start >= end) continue;
    const first = run.words[start] ?? "";
    for (const phrase of phrases) {
      if (phrase.firsts && !phrase.firsts.has(first)) continue;
      for (const match of phrase.matcher(run, start)) {
        const tail = run.skips[match.next]?.find((place) => place.at === end);
        if (!tail || match.next === start) continue;
        const cost = startCost + match.cost + tail.cost;
        if (strange && (cost >= MOST_STRANGE || !FORGIVING.has(phrase.intent))) continue;
        const better =
          !best || cost < best.cost || (cost === best.cost && phrase.order < best.phrase.order);
        if (better && !isNoReport(said, phrase.intent)) best = { phrase, match, cost };
      }
    }
  }
  return best;
}

function unknown(text: string): Understood {
  return { intent: "unknown", slots: {}, confidence: 0, text };
}

/** How sure a match is, from what had to be assumed. */
function confidenceOf(best: Best): number {
  const base = REPORTS.has(best.phrase.intent) ? 0.97 : 0.95;
  return Math.max(0.3, Math.round((base - best.cost * 0.15) * 100) / 100);
}

function runOf(said: Utterance, context: Context, all: Compiled): Run {
  const words = said.words.map(({ word }) => word);
  const alts = said.words.map(({ alt }) => alt);
  return {
    words,
    alts,
    has: new Set([...words, ...alts.flatMap((alt) => (alt ? [alt] : []))]),
    skips: skipsOf(words, all, false),
    read: slotReader(said, context, namesOf(context), all.plain),
    lists: [],
  };
}

/**
 * Turns words into one command. Deterministic; any text at all gives an answer, in bounded time.
 * What is not surely an order, a question the program answers or a report is `unknown`.
 */
export function understand(text: string, context: Context): Understood {
  compiled ??= compile();
  const said = wordsOf(text);
  if (said.words.length === 0) return unknown(text);
  const answer = context.question ? answerTo(said, context.question) : undefined;
  if (answer) return answer;
  const run = runOf(said, context, compiled);
  let best = bestMatch(said, run, compiled, false);
  if (!best && said.words.length >= FEWEST_WITH_STRANGER && !said.cut) {
    const lenient = {
      ...run,
      lists: [],
      skips: skipsOf(run.words, compiled, true),
    };
    best = bestMatch(said, lenient, compiled, true);
  }
  if (said.cut && best?.phrase.intent !== "note" && best?.phrase.intent !== "remind") {
    return unknown(text);
  }
  if (!best) return bareAnswer(said) ?? unknown(text);
  const slots: Record<string, unknown> = { ...best.phrase.set };
  for (const { slot, value } of best.match.captures) slots[slot] = value;
  return finishSlots(best.phrase.intent, slots, confidenceOf(best), said, context) ?? unknown(text);
}
