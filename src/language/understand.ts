import type { Command, Intent } from "../kitchen/command.ts";
import { answerTo, bareAnswer } from "./answers.ts";
import { type Joined, joinedReading, slotsOf } from "./clauses.ts";
import type { Context } from "./context.ts";
import type { Run } from "./grammar/matcher.ts";
import { skipsOf } from "./grammar/passing-over.ts";
import { ANY_FIGURE } from "./grammar/pattern-facts.ts";
import { type PhraseBook, phraseBook } from "./grammar/phrase-book.ts";
import { beginsAsking, isNoReport } from "./guards.ts";
import { MEANINGS } from "./intents/all.ts";
import { wholeReading } from "./readings.ts";
import { takenApart } from "./run-together.ts";
import { withoutFirstThoughts } from "./second-thoughts.ts";
import { finishSlots } from "./values/finish-slots.ts";
import { markedJars } from "./values/lid-marks.ts";
import { slotReader } from "./values/slots.ts";
import { type Meaning, namesOf } from "./values/targets.ts";
import { type Utterance, wordsOf } from "./words.ts";

/** A command, and what the name in it can mean (several where it fits several). */
export type Understood = Command & { refersTo?: Meaning };

/** How much less sure each thing makes that had to be assumed; certain is 1. */
const DOUBTS = {
  /** Said with "I think" or the like. */
  hedged: 0.25,
  /** Put together from two clauses. */
  joined: 0.1,
  /** The words were in no known order. */
  gathered: 0.15,
  /** A word was passed over that nobody expected. */
  stranger: 0.35,
  /** Words were taken apart that had been run together. */
  apart: 0.05,
  /** Side remarks were passed over. */
  asides: 0.05,
};

/** Shorter utterances have no word to spare. */
const FEWEST_WITH_STRANGER = 4;

function unknown(text: string): Understood {
  return { intent: "unknown", slots: {}, confidence: 0, text };
}

/** All words said, and what contractions can stand for. */
function hasOf(words: readonly string[], alts: readonly (string | undefined)[]): string[] {
  const has = new Set(words);
  for (const alt of alts) if (alt) has.add(alt);
  if (words.some((word) => /^\d/.test(word))) has.add(ANY_FIGURE);
  return [...has];
}

function runOf(said: Utterance, context: Context, book: PhraseBook): Run {
  const words = said.words.map(({ word }) => word);
  const alts = said.words.map(({ alt }) => alt);
  return {
    words,
    alts,
    has: hasOf(words, alts),
    skips: skipsOf(words, book, false),
    read: slotReader(said, context, namesOf(context), book.plain),
    lists: [],
  };
}

type Found = Joined & { doubt: number };
type Refused = (intent: Intent) => boolean;

/** The words as one phrase, then with side remarks, then as two clauses. */
function found(run: Run, book: PhraseBook, refused: Refused): Found | undefined {
  for (const asides of [false, true]) {
    const whole = wholeReading(run, book, { asides, strangers: false }, refused);
    if (!whole) continue;
    const doubt = (asides ? DOUBTS.asides : 0) + (whole.hedged ? DOUBTS.hedged : 0);
    return { intent: whole.of.intent, slots: slotsOf(whole), hedged: whole.hedged, doubt };
  }
  const joined = joinedReading(run, book, refused);
  return joined && { ...joined, doubt: DOUBTS.joined + (joined.hedged ? DOUBTS.hedged : 0) };
}

/** In no known order of words, but with all words known of one intent. */
function gathered(run: Run, book: PhraseBook, refused: Refused): Found | undefined {
  const bag = book.bags.read(run, book, refused);
  return bag && { ...bag, doubt: DOUBTS.gathered };
}

/** With one word passed over that nobody expected. */
function lenient(run: Run, book: PhraseBook, refused: Refused): Found | undefined {
  if (run.words.length < FEWEST_WITH_STRANGER) return undefined;
  const skips = skipsOf(run.words, book, true);
  const loose = { ...run, lists: [], skips };
  const whole = wholeReading(loose, book, { asides: false, strangers: true }, refused);
  if (!whole || (MEANINGS[whole.of.intent].unasked && beginsAsking(run.words))) return undefined;
  return {
    intent: whole.of.intent,
    slots: slotsOf(whole),
    hedged: whole.hedged,
    doubt: DOUBTS.stranger + (whole.hedged ? DOUBTS.hedged : 0),
  };
}

/**
 * Turns words into one command. Deterministic; any text at all gives an answer, in bounded time.
 * What is not surely an order, a question the program answers or a report is `unknown`.
 */
export function understand(text: string, context: Context): Understood {
  const plain = understoodPlainly(text, context);
  const marked = plain.intent === "unknown" ? markedJars(text, context.running) : undefined;
  if (!marked) return plain;
  const again = understoodPlainly(marked.text, context);
  if (!("jars" in MEANINGS[again.intent].slots) || "target" in again.slots) return plain;
  const refersTo = { recipes: [], batches: [marked.batch], timers: [] };
  return {
    ...again,
    slots: { ...again.slots, target: marked.batch },
    text,
    refersTo,
  } as Understood;
}

function understoodPlainly(text: string, context: Context): Understood {
  const book = phraseBook();
  const said = withoutFirstThoughts(wordsOf(text));
  if (said.words.length === 0) return unknown(text);
  const answer = context.question ? answerTo(said, context.question) : undefined;
  if (answer) return answer;
  const refused: Refused = (intent) => isNoReport(said, intent);
  const finish = (from: Found | undefined, within: Utterance): Understood | undefined =>
    from && finishSlots(from.intent, from.slots, 1 - from.doubt, within, context);
  const run = runOf(said, context, book);
  if (said.cut) {
    const kept = wholeReading(run, book, { asides: false, strangers: false }, refused);
    const open = kept && Object.hasOwn(MEANINGS[kept.of.intent].slots, "text");
    return (open && finishSlots(kept.of.intent, slotsOf(kept), 1, said, context)) || unknown(text);
  }
  const plain = finish(found(run, book, refused), said);
  if (plain) return plain;
  const apart = takenApart(said);
  const loose = apart && runOf(apart, context, book);
  const taken = loose && (found(loose, book, refused) ?? gathered(loose, book, refused));
  return (
    (taken && finish({ ...taken, doubt: taken.doubt + DOUBTS.apart }, apart)) ??
    finish(gathered(run, book, refused), said) ??
    finish(lenient(run, book, refused), said) ??
    bareAnswer(said) ??
    unknown(text)
  );
}
