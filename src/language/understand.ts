import { type Command, type Confirm, commandOf, type Intent } from "../kitchen/command.ts";
import { answerTo, bareAnswer, UNSURE } from "./answers/answers.ts";
import { isGuess, partedFrom } from "./answers/confirms.ts";
import { joinedReading, slotsOf } from "./clauses/clauses.ts";
import type { Context } from "./context.ts";
import type { Joined } from "./grammar/bags.ts";
import type { SlotReader } from "./grammar/matcher.ts";
import { skipsOf, tailsOf } from "./grammar/passing-over.ts";
import { type BookRun, type PhraseBook, phraseBook } from "./grammar/phrase-book.ts";
import { WordPlaces } from "./grammar/word-places.ts";
import { beginsAsking, isNoReport } from "./guards.ts";
import { MEANINGS } from "./intents/all.ts";
import { withJars } from "./named-jars.ts";
import { wholeReading } from "./readings.ts";
import { withoutFirstThoughts } from "./second-thoughts.ts";
import { takenApart } from "./spelling/run-together.ts";
import { lateReport } from "./told-late.ts";
import { finishSlots } from "./values/finish-slots.ts";
import { jarsNamed } from "./values/jar-names.ts";
import { slotReader } from "./values/slots.ts";
import { spokenNames } from "./values/targets.ts";
import { textOf, type Utterance, utteranceOf, type Word } from "./words.ts";

/** How much each assumption takes off the certainty, which is 1 without any. */
const DOUBTS = {
  /** Said with "I think" or the like. */
  hedged: 0.25,
  /** Put together from two clauses. */
  joined: 0.1,
  /** The words were not in a known order. */
  gathered: 0.15,
  /** Words that change nothing stood among them. */
  beside: 0.3,
  /** An unexpected word was skipped. */
  stranger: 0.35,
  /** Run-together words were taken apart. */
  apart: 0.05,
  /** Side remarks were skipped. */
  asides: 0.05,
};

/** Shorter utterances have no word to spare. */
const FEWEST_WITH_STRANGER = 4;

const UNKNOWN: Command = { intent: "unknown", slots: {}, confidence: 0 };

function runOf(said: Utterance, context: Context, book: PhraseBook): BookRun {
  const words = said.words.map(({ word }) => word);
  const alts = said.words.map(({ alt }) => alt);
  const within = said.within && matchedOf.get(said.within)?.run;
  return {
    words,
    alts,
    places: new WordPlaces(words, alts, within?.places),
    skips: skipsOf(words, book, false),
    read: slotReader(said, context, spokenNames(context), book.plain),
    lists: [],
    within,
    matches: [],
  };
}

type Fitting = Joined & { doubt: number };
type Refused = (intent: Intent) => boolean;

/** The words as one phrase, then with side remarks, then as two clauses. */
function found(run: BookRun, book: PhraseBook, refused: Refused): Fitting | undefined {
  for (const asides of [false, true]) {
    const whole = wholeReading(run, book, { asides, strangers: false }, refused);
    if (!whole) continue;
    const doubt = (asides ? DOUBTS.asides : 0) + (whole.hedged ? DOUBTS.hedged : 0);
    return { intent: whole.of.intent, slots: slotsOf(whole), hedged: whole.hedged, doubt };
  }
  const joined = joinedReading(run, book, refused);
  return joined && { ...joined, doubt: DOUBTS.joined + (joined.hedged ? DOUBTS.hedged : 0) };
}

/** In no known word order, but with all words known to belong to one intent. */
function gathered(run: BookRun, book: PhraseBook, refused: Refused): Fitting | undefined {
  const bag = book.bags.read(run, book, refused);
  return bag && { ...bag, doubt: bag.beside ? DOUBTS.beside : DOUBTS.gathered };
}

/** With one unexpected word skipped. */
function lenient(run: BookRun, book: PhraseBook, refused: Refused): Fitting | undefined {
  if (run.words.length < FEWEST_WITH_STRANGER) return undefined;
  const skips = skipsOf(run.words, book, true);
  const loose = { ...run, lists: [], matches: [], skips };
  const whole = wholeReading(loose, book, { asides: false, strangers: true }, refused);
  if (!whole || (MEANINGS[whole.of.intent].unasked && beginsAsking(run.words))) return undefined;
  return {
    intent: whole.of.intent,
    slots: slotsOf(whole),
    hedged: whole.hedged,
    doubt: DOUBTS.stranger + (whole.hedged ? DOUBTS.hedged : 0),
  };
}

/** At this certainty nothing was guessed: the words were matched from end to end, in order. */
export const CERTAIN = 0.9;

/**
 * Turns words into one command. Deterministic; any text at all gives an answer, in bounded time.
 * What is not certainly an order, a question the program answers, or a report is `unknown`.
 */
export function understand(words: string, context: Context): Command {
  const named = jarsNamed(words, context);
  const plain = named && understandUtterance(utteranceOf(named.text), context);
  const [about, ...others] = (plain && named && withJars([plain], named, context)) ?? [];
  if (about && others.length === 0) return about;
  return understandUtterance(withoutFirstThoughts(words, context), context);
}

/** The same of an utterance in which what was corrected is put right already. */
export function understandUtterance(said: Utterance, context: Context): Command {
  const asked = answeringAsked(said, context);
  if (asked) return asked;
  const plain = understoodWords(said, context);
  if (plain.intent === "yes" && plain.confidence < CERTAIN && context.question) {
    return commandOf("answer", { value: UNSURE, unsure: true });
  }
  const confirming = withConfirms(said, context);
  if (confirming?.intent === "factor" && !MEANINGS[plain.intent].report) return confirming;
  if (plain.intent !== "unknown" && plain.confidence >= CERTAIN) return plain;
  return confirming ?? plain;
}

/** Side remarks and fillers alone; a yes or a no is never passed over. */
function saysNothing(words: readonly Word[], said: Utterance, context: Context): boolean {
  if (words.some(({ word }) => YES.has(word) || NO.has(word))) return false;
  const book = phraseBook();
  return tailsOf(runOf({ ...said, words: [...words] }, context, book), book, true)[0] !== undefined;
}

const YES = new Set(["yes", "yeah", "yep", "yup", "okay", "sure"]);
const NO = new Set(["no", "nope", "nah"]);

/** What answers the open question about a factor, and says nothing else. */
function answeringAsked(said: Utterance, { factors, question }: Context): Command | undefined {
  const open = question?.key;
  if (said.asked || said.cut || !factors?.some(({ id }) => id === open)) return undefined;
  const { confirms, rest } = partedFrom(said.words, factors, open);
  const alone = aloneWith(confirms, rest);
  const [first] = alone ?? [];
  if (!first || alone?.some(({ factor, held }) => factor !== open || held === "no"))
    return undefined;
  return commandOf("factor", { ...first }, { confirms: alone ?? [] });
}

/** A report with clauses about critical factors beside it, or such clauses alone. */
function withConfirms(said: Utterance, context: Context): Command | undefined {
  if (said.asked || said.cut || !context.factors) return undefined;
  const { confirms, rest } = partedFrom(said.words, context.factors);
  if (confirms.length === 0) return undefined;
  const alone = aloneWith(confirms, saysNothing(rest, said, context) ? [] : rest);
  const [first] = alone ?? [];
  if (first) return commandOf("factor", { ...first }, { confirms: alone ?? [] });
  const command = understoodWords({ ...said, words: [...rest] }, context);
  const certain = MEANINGS[command.intent].report && command.confidence >= CERTAIN;
  // "Five percent, then I watered it": what was changed after takes from what it was.
  if (CHANGES.has(command.intent)) return undefined;
  return certain && !isCount(command, rest)
    ? { ...command, confirms: agreed(confirms) }
    : undefined;
}

const CHANGES: ReadonlySet<Intent> = new Set(["topped-up", "added", "instead"]);

const FILLED = new Set(["filled", "full", "packed", "done", "finished", "ready"]);

/** "Six jars" beside a clause may count the jars it holds for. */
function isCount({ intent }: Command, words: readonly Word[]): boolean {
  return intent === "jars-filled" && !words.some(({ word }) => FILLED.has(word));
}

/** Contradictory clauses about one factor settle it neither way. */
function agreed(confirms: readonly Confirm[]): Confirm[] {
  return confirms.map((one) => {
    const other = confirms.some(({ factor, held }) => factor === one.factor && held !== one.held);
    return other ? { ...one, held: "unsure" } : one;
  });
}

/** What is confirmed where only a yes, a no or a guess stands beside the clauses. */
function aloneWith(confirms: Confirm[], rest: readonly Word[]): Confirm[] | undefined {
  const words = rest.filter(({ word }) => !YES.has(word));
  const yes = words.length < rest.length;
  const left = words.filter(({ word }) => !NO.has(word));
  const no = left.length < words.length;
  if (left.length > 0 && !isGuess(left)) return undefined;
  return agreed(confirms).map((one): Confirm => {
    const against = one.held === "yes" ? no : yes;
    return left.length > 0 || against ? { ...one, held: "unsure" } : one;
  });
}

const PUT_IN =
  /\b(put|got|loaded|lowered|set) (it|them|those|these|that)( all)? (in|down)\b(?! the\b)/;

/**
 * "I put them in at half past one" corrects a time, unless nothing is in a canner yet: then it is
 * first told. Whether this meaning is the other of the two.
 */
function isOtherOfPutIn({ words }: Utterance, intent: Intent, { loads = [] }: Context): boolean {
  if (intent !== "correct-time" && intent !== "loaded") return false;
  const first = loads.length > 0 && !loads.some(({ inside }) => inside);
  return intent === (first ? "correct-time" : "loaded") && PUT_IN.test(textOf(words));
}

/** A sentence's words, ready to be matched. */
type Matched = {
  said: Utterance;
  run: BookRun;
  book: PhraseBook;
  refused: Refused;
  context: Context;
};

const matchedOf = new WeakMap<Utterance, Matched>();

function matched(said: Utterance, context: Context): Matched {
  const before = matchedOf.get(said);
  if (before?.context === context) return before;
  const book = phraseBook();
  const known = new Map<Intent, boolean>();
  const refused: Refused = (intent) => {
    const answer =
      known.get(intent) ?? (isNoReport(said, intent) || isOtherOfPutIn(said, intent, context));
    known.set(intent, answer);
    return answer;
  };
  const made = { said, run: runOf(said, context, book), book, refused, context };
  matchedOf.set(said, made);
  return made;
}

/** Reads the values of slots from an utterance. */
export function readerIn(said: Utterance, context: Context): SlotReader {
  return matched(said, context).run.read;
}

function finish({ said, context }: Matched, from: Fitting | undefined): Command | undefined {
  return from && finishSlots(from.intent, from.slots, 1 - from.doubt, said, context);
}

/** By a wording from end to end, run-together words taken apart where nothing else fits. */
function inOrder(whole: Matched): Command | undefined {
  const plain = finish(whole, found(whole.run, whole.book, whole.refused));
  if (plain) return plain;
  const late = lateReport(whole.said, whole.context, (rest) => {
    const told = matched(rest, whole.context);
    return finish(told, found(told.run, told.book, told.refused));
  });
  if (late) return late;
  const apart = takenApart(whole.said);
  if (!apart) return undefined;
  const loose = { ...matched(apart, whole.context), refused: whole.refused };
  const taken = found(loose.run, loose.book, loose.refused);
  return finish(loose, taken && { ...taken, doubt: taken.doubt + DOUBTS.apart });
}

/** Words as one command, where a wording covers them surely; undefined where none does. */
export function surelyUnderstood(said: Utterance, context: Context): Command | undefined {
  const known = sureOf.get(said);
  if (known?.context === context) return known.command;
  const command = sureIn(said, context);
  sureOf.set(said, { context, command });
  return command;
}

const sureOf = new WeakMap<Utterance, { context: Context; command: Command | undefined }>();

function sureIn(said: Utterance, context: Context): Command | undefined {
  if (said.words.length === 0 || said.cut) return undefined;
  const answer = context.question ? answerTo(said, context.question) : undefined;
  const command = answer ?? inOrder(matched(said, context));
  return command && command.confidence >= CERTAIN ? command : undefined;
}

/**
 * Words as one report, where all of them belong to it or change nothing; undefined where one does
 * not.
 */
export function accountedFor(said: Utterance, context: Context): Command | undefined {
  if (said.words.length === 0 || said.cut || said.asked) return undefined;
  const whole = matched(said, context);
  const found = finish(whole, gathered(whole.run, whole.book, whole.refused));
  return found && found.confidence > LEAST_KNOWN ? found : undefined;
}

/** A meaning that doubts its own words comes to no more than this, and is asked about. */
export const LEAST_KNOWN = 0.3;

/** Words as one command, by the wordings alone. */
function understoodWords(said: Utterance, context: Context): Command {
  if (said.words.length === 0) return UNKNOWN;
  const answer = context.question ? answerTo(said, context.question) : undefined;
  if (answer) return answer;
  const whole = matched(said, context);
  const { run, book, refused } = whole;
  if (said.cut) {
    const kept = wholeReading(run, book, { asides: false, strangers: false }, refused);
    const open = kept && Object.hasOwn(MEANINGS[kept.of.intent].slots, "text");
    return (open && finishSlots(kept.of.intent, slotsOf(kept), 1, said, context)) || UNKNOWN;
  }
  return (
    inOrder(whole) ??
    finish(whole, gathered(run, book, refused)) ??
    finish(whole, lenient(run, book, refused)) ??
    bareAnswer(said) ??
    UNKNOWN
  );
}
