/** The clauses of a sentence as they belong together: each one fact, or what is said beside one. */
import type { Command, Intent } from "../../kitchen/command.ts";
import type { Context } from "../context.ts";
import { clausesIn } from "../evidence/split.ts";
import { opensOnly } from "../fillers.ts";
import { wordSet } from "../grammar/word-set.ts";
import { beginsAsking } from "../guards.ts";
import { MEANINGS } from "../intents/all.ts";
import { isMoment, toldLate } from "../told-late.ts";
import { surelyUnderstood } from "../understand.ts";
import { isLotDetail } from "../values/spoken-lots.ts";
import { numbersAt } from "../values/spoken-numbers.ts";
import type { Utterance } from "../words.ts";

/** The clauses that may each say something; empty where the sentence is a single one. */
export function wholeClauses(said: Utterance, context: Context): Utterance[] {
  const all = askedAlike(clausesIn(said), said);
  if (all.length < 2) return runTogether(said, context) ?? [];
  return joined(together(withoutOpeners(all, context), said, context), said, context);
}

const MOST_TOGETHER = 3;

/** Clauses that are one report together: "eight pints filled and wiped, and my feet hurt". */
function together(clauses: readonly Utterance[], said: Utterance, context: Context): Utterance[] {
  const list: Utterance[] = [];
  for (let at = 0; at < clauses.length; ) {
    const first = clauses[at] as Utterance;
    let union = first;
    let next = at + 1;
    for (let end = Math.min(at + MOST_TOGETHER, clauses.length); end > at + 1; end -= 1) {
      // The whole sentence has been tried before its clauses.
      if (end - at === clauses.length) continue;
      const span = spanning(first, clauses[end - 1] as Utterance, said);
      const { report, plainly } = MEANINGS[surelyUnderstood(span, context)?.intent ?? "unknown"];
      if (!report || !plainly) continue;
      [union, next] = [span, end];
      break;
    }
    list.push(union);
    at = next;
  }
  return list;
}

const OWN_QUESTION = /^(what|how|when|where|which|who|whose|why)$/;

/** Whether only the last of several clauses asks: "it's come to the boil, shall I turn it down?" */
function asksLast(clauses: readonly Utterance[]): boolean {
  const last = clauses.at(-1);
  if (!last || clauses.length < 2) return false;
  const words = last.words.map(({ word }) => word);
  return beginsAsking(words) || words.some((word) => OWN_QUESTION.test(word));
}

/** Whether all of a sentence is a question, and not only what is said last in it. */
export function asksThroughout(said: Utterance): boolean {
  return said.asked && !asksLast(clausesIn(said));
}

/** "It's boiling and the lids are covered?" asks of both; "that's done, what's next?" does not. */
function askedAlike(clauses: readonly Utterance[], said: Utterance): readonly Utterance[] {
  const alike = said.asked && !asksLast(clauses);
  return alike ? clauses.map((clause) => ({ ...clause, asked: true })) : clauses;
}

/** What a second clause begins with where nothing stands between it and the first. */
const BEGINS = wordSet("keep carry go set start stop remind tell note hush give put resume say");
const ASKS = wordSet("what how when where");
const ASKED_WITH = wordSet(
  "is are was do does did will would can should shall am long much many next now time have has",
  "else",
);

/** "I'm back keep going", "the jars are washed what's next": two clauses with no mark between. */
export function runTogether(said: Utterance, context: Context): Utterance[] | undefined {
  const { words } = said;
  if (said.cut || words.length > MOST_RUN_TOGETHER) return undefined;
  if (clausesIn(said).length > 1) return undefined;
  for (let at = 2; at < words.length; at += 1) {
    const asks = ASKS.has(words[at]?.word ?? "") && ASKED_WITH.has(words[at + 1]?.word ?? "");
    const begins = asks || BEGINS.has(words[at]?.word ?? "");
    if (!begins || words[at]?.start === words[at - 1]?.start) continue;
    const first = { ...said, words: words.slice(0, at), asked: false, within: said };
    const second = { ...said, words: words.slice(at), within: said };
    const [one, other] = [first, second].map((part) => surelyUnderstood(part, context));
    if (!one || !other || one.intent === other.intent || opensOnly(first.words)) continue;
    const { answer, slots, cost } = MEANINGS[one.intent];
    if (cost === "clearing" && !asks) continue;
    const open = "text" in slots || SAYS_LITTLE.has(one.intent) || answer === true;
    if (!open && !MEANINGS[other.intent].report) return [first, second];
  }
  return undefined;
}

const MOST_RUN_TOGETHER = 20;
const SAYS_LITTLE = wordSet("focus acknowledge repeat");

/** The clauses without those that only open a sentence, unless one may answer what is asked. */
function withoutOpeners(clauses: readonly Utterance[], { question }: Context) {
  const telling = question ? [] : clauses.filter(({ words }) => !opensOnly(words));
  return telling.length > 0 ? telling : clauses;
}

/** A clause that only tells more of the one before it is joined to it. */
function joined(clauses: readonly Utterance[], said: Utterance, context: Context): Utterance[] {
  const list: Utterance[] = [];
  for (const clause of clauses) {
    const before = list.at(-1);
    const whole = before && spanning(before, clause, said);
    const moment = whole && isMoment(clause, context) && toldLate(whole, context);
    if (whole && (moment || isOne(whole, before, clause, context))) list[list.length - 1] = whole;
    else list.push(clause);
  }
  return list;
}

/** Whether two clauses say one thing that neither says alone. */
function isOne(whole: Utterance, one: Utterance, other: Utterance, context: Context): boolean {
  if (other.words.length > MOST_DETAIL_WORDS) return false;
  const meant = (said: Utterance) => surelyUnderstood(said, context)?.intent;
  if (isLotDetail(other)) return meant(whole) === "begin";
  if (![...one.words, ...other.words].some((_, at, all) => numbersAt(all, at).length > 0)) {
    return false;
  }
  const [first, second] = [meant(one), meant(other)];
  // "The beans are all packed, seven pints".
  const counted = first === "done" && second === "jars-filled";
  if (counted) return other.words.length <= MOST_COUNT_WORDS && meant(whole) === second;
  return !first && !second && MEANINGS[meant(whole) ?? "unknown"].inPieces === true;
}

const MOST_DETAIL_WORDS = 8;
const MOST_COUNT_WORDS = 3;

/** From the first word of one clause to the last of another. */
function spanning(first: Utterance, last: Utterance, said: Utterance): Utterance {
  const [from, to] = [first.words[0], last.words.at(-1)];
  const words = said.words.filter(({ start, end }) => {
    return start >= (from?.start ?? 0) && end <= (to?.end ?? 0);
  });
  return { ...first, words };
}

/** Whether a clause behind words for the log is no part of them: a question, or an order. */
function isBeside(intent: Intent, text: Intent): boolean {
  if (intent === "focus") return false;
  const { cost, asked } = MEANINGS[intent];
  return cost === "harmless" || asked === true || (text === "note" && ORDERS.has(intent));
}

const ORDERS = wordSet("timer-set timer-add timer-cancel remind hush undo");

/**
 * Words for the log and what is asked or ordered beside them: "note the dill was bought, and what's
 * next?". Undefined where all of it is for the log.
 */
export function besideText(
  said: Utterance,
  { intent }: Command,
  context: Context,
): { command: Command; clause: Utterance }[] | undefined {
  const clauses = clausesIn(said);
  const [first, last, before] = [clauses[0], clauses.at(-1), clauses.at(-2)];
  if (!("text" in MEANINGS[intent].slots) || !first || !last || !before) return undefined;
  const command = surelyUnderstood(last, context);
  if (!command || !isBeside(command.intent, intent)) return undefined;
  const clause = spanning(first, before, said);
  const text = surelyUnderstood(clause, context);
  if (text?.intent !== intent) return undefined;
  return [
    { command: text, clause },
    { command, clause: last },
  ];
}
