/** What is not a plain yes or a plain report although a wording fits it: it clears nothing. */

import type { Command } from "../../kitchen/command.ts";
import type { Context } from "../context.ts";
import { wordSet } from "../grammar/word-set.ts";
import { MEANINGS } from "../intents/all.ts";
import { isQualified } from "../qualifying.ts";
import { numbersAt } from "../values/spoken-numbers.ts";
import { textOf, type Utterance } from "../words.ts";
import { unsureAnswer } from "./answers.ts";

/** What is heard, and the clauses that its commands stand in. */
type Plain = {
  reading: "sure" | "ask" | "unknown";
  commands: readonly Command[];
  candidates: readonly Command[];
  clauses?: readonly Utterance[];
  /** Clauses that were neither used nor idle talk. */
  left?: readonly Utterance[];
  /** Every word was weighed already. */
  accounted?: true;
};

/** Words of a yes, and of saying once more what was asked. */
const YES_WORDS = wordSet(
  "yes yeah yep yup yea aye sure okay indeed course certainly absolutely definitely right true",
  "affirmative they it that all every everyone each both of em them these those were was are is",
  "has have did do does am the lot last single one whole time entire way through throughout sir",
  "maam honey love dear sugar hon lass ma damn bloody well just i we you bet mm uh huh hm mhm",
  "correct exactly confirmed checked made held stayed kept new brand covered under water",
  "boiling boil sealed bottled jar jars lid lids a full rolling by means please oh mam steady",
  "stayed boiled way good hard strong vented pressure fell itself alone at and",
);
/** "Near enough", "some of them": whoever answers so does not know. */
const NO_YES = new RegExp(
  "\\b(" +
    "near enough|nearly|almost|about|more or less|mostly|most|some|one side|sort of|" +
    "kind of|except|bar|but|apart|until|till|will|would|should|ought|think|hope|guess|" +
    "reckon|suppose|probably|maybe|might|fairly|pretty" +
    ")\\b",
);

/**
 * A yes to a question that guards safety stands alone, or beside words that say the same again:
 * "yes, some" and "yes, Mum, I'm coming" are none.
 */
export function yesAlone<H extends Plain>(heard: H, said: Utterance, { question }: Context): H {
  const counted = oneOfSeveral(heard, said);
  if (counted) return { ...heard, reading: "ask", commands: [], candidates: [counted] };
  if (!question?.guards) return heard;
  const [likely] = heard.candidates;
  if (heard.reading === "ask" && likely?.intent === "yes" && question.kind === "yes-no") {
    const plain = saysYes(said);
    const commands = plain ? [likely] : [];
    // Asked back, its yes would take what was said beside it for nothing: the words are kept.
    return { ...heard, reading: plain ? "sure" : "unknown", commands, candidates: commands };
  }
  const yes = heard.commands.find(({ intent }) => intent === "yes");
  if (heard.reading !== "sure" || !yes) return heard;
  const others = heard.commands.flatMap(({ intent }, at) => {
    return intent === "yes" ? [] : (heard.clauses?.[at]?.words.map(({ start }) => start) ?? []);
  });
  const words = said.words.filter(({ start }) => !others.includes(start)).map(({ word }) => word);
  const all = words.join(" ");
  // "Yes, I was away" says no more than what the question said.
  const away = heard.commands.some(({ intent }) => intent === "was-away");
  const beside = others.length > 0 && NO_YES.test(textOf(said.words));
  if (!beside && !away && words.every((word) => YES_WORDS.has(word))) return heard;
  const unsure = heard.commands.length === 1 && NO_YES.test(all) && unsureAnswer(said, question);
  if (unsure) return { ...heard, commands: [unsure], candidates: [unsure] };
  return { ...heard, reading: "unknown", commands: [], candidates: [], whole: false };
}

/** What says once more that it held. */
const HELD_ON = /\b(it )?never (let up|stopped|dropped|wavered|quit)\b|\bnever touched it\b/g;
const BEGINS_YES = /^(oh |well |um |uh )*(yes|yeah|yep|yup|aye|sure|of course|indeed|certainly)\b/;

/** A yes, and what was asked said again. */
function saysYes({ words, asked }: Utterance): boolean {
  const all = textOf(words);
  if (asked || !BEGINS_YES.test(all) || NO_YES.test(all)) return false;
  const left = all.replaceAll(HELD_ON, " ").split(" ");
  return left.every((word) => word === "" || YES_WORDS.has(word));
}

/** "Six, seven, who's counting": one number of several is no answer. */
function oneOfSeveral({ reading, commands, clauses }: Plain, said: Utterance): Command | undefined {
  const at = commands.findIndex(({ intent, slots }) => {
    return intent === "answer" && "value" in slots && typeof slots.value === "number";
  });
  const clause = clauses?.[at];
  if (reading !== "sure" || !clause) return undefined;
  const own = new Set(clause.words.map(({ start }) => start));
  const more = said.words.some(({ start }, place) => {
    return !own.has(start) && numbersAt(said.words, place).length > 0;
  });
  return more ? commands[at] : undefined;
}

/** Whether what is said in a clause takes nothing from a report in another. */
function isOfItself(command: Command | undefined): boolean {
  if (!command || command.intent === "undo" || command.intent === "hold") return false;
  return MEANINGS[command.intent].cost !== "harmless";
}

/**
 * A report that would clear a doubt or set a value is asked back where something in its sentence
 * takes its plainness; what else was said is still acted on.
 */
export function unhedged<H extends Plain>(heard: H, said: Utterance, context: Context): H {
  if (heard.reading !== "sure" || heard.accounted) return heard;
  const others = heard.clauses?.filter((_, at) => isOfItself(heard.commands[at]));
  const failed = heard.commands.some(({ intent }) => intent === "seal-failed");
  const plain = heard.commands.map((one, at) => {
    if (failed && one.intent === "sealed" && one.slots.all) return false;
    // "No, make that six": what else takes the plainness of a report puts a count right.
    if (one.intent === "jars-filled" && (one.slots.corrected || one.slots.not)) return true;
    return !isQualified(one, said, context, heard.clauses?.[at], others);
  });
  if (plain.every((is) => is)) return heard;
  const commands = heard.commands.filter((_, at) => plain[at]);
  const doubted = heard.commands.filter((_, at) => !plain[at]);
  if (commands.length === 0) {
    // Asked back, a yes would take an answer of safety without what was said beside it.
    const answers = context.question?.guards && doubted.every(({ intent }) => intent === "answer");
    const reading = answers ? "unknown" : "ask";
    return { ...heard, reading, candidates: answers ? [] : doubted, commands: [] };
  }
  const clauses = heard.clauses?.filter((_, at) => plain[at]);
  const dropped = heard.clauses?.filter((_, at) => !plain[at]) ?? [];
  const left = [...dropped, ...(heard.left ?? [])];
  return { ...heard, commands, left, ...(clauses ? { clauses } : {}) };
}
