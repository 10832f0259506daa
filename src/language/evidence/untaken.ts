/**
 * What is told and leads to nothing. Nobody knows what it was about, so it is kept while it may be
 * about jars at stake: silence about a sentence would say that all was well.
 */
import type { Command, Evidence } from "../../kitchen/command.ts";
import { OF_PROCESS } from "../../kitchen/questions/heard-doubts.ts";
import { type Context, runs } from "../context.ts";
import { beginsAsking } from "../guards.ts";
import { isIntent, MEANINGS } from "../intents/all.ts";
import type { Frame } from "../model/corpus.ts";
import type { Likely } from "../model/linear-model.ts";
import type { Guess } from "../model/shipped.ts";
import { frameOf, idleness } from "../weighing.ts";
import { textOf, type Utterance } from "../words.ts";
import { isOfAnotherDay, whenOf } from "./doubts.ts";
import { isElsewhere, isOnTheStove } from "./elsewhere.ts";

type Subject = Evidence["about"];

/** In these frames nothing is told that happened here, where the model is this sure of them. */
const NOT_TOLD: readonly Frame[] = ["wished", "imagined", "elsewhere"];
const SURELY = 0.4;

/** "They'll warm up in the bath, right?": told, and only then asked. */
const TAGGED = /,\s*(right|okay|ok|yeah|yes|huh|eh|no|innit|is it|isn't it|won't they)\s*\?+\s*$/i;

/** What is shorter, or likelier to be nothing for the kitchen, is let go. Found by trying. */
const LEAST_SAID = 3;
const IDLE = 0.6;
/** Work at the table takes hours, and people talk. */
const IDLE_AT_THE_TABLE = 0.15;
/** The same of words that tell of less, or of food that was not sound. */
const IDLE_IF_TELLING = 0.5;
const TELLING = new RegExp(
  "\\b(hardly|scarcely|barely|pinch|cut (it |them )?(right )?(down|back)|went easy|left out|" +
    "stretched|thinned|watered|ran out|frost|frozen|blight|dead|rot|rotten|mold|mush|mushy|" +
    "bruised|slimy|spoilt|" +
    "past (it|its|their) best)\\b",
  "i",
);
/** Below this, children and the washing are only part of the story. */
const HARDLY_IDLE = 0.1;
/** How likely a meaning has to be to say what is doubted. */
const LIKELY = 0.25;
const LIKELY_AT_THE_TABLE = 0.5;
/** What is shorter than this, at the table, is a word with the pots. */
const LEAST_AT_THE_TABLE = 6;

function likelySubject(intents: readonly Likely[], least: number): Subject | undefined {
  const likely = intents.filter(({ probability }) => probability >= least);
  return likely.flatMap(({ name }) =>
    isIntent(name) ? (MEANINGS[name].tellsOf?.about ?? []) : [],
  )[0];
}

/** Whether food is in jars, or was put into them lately. */
export function isInJars(context: Context): boolean {
  const { loads = [], running } = context;
  const inJars = runs([...loads, ...running], ({ food }) => food === "jars");
  return isHeated(context) || inJars || running.length === 0;
}

/** Whether nothing is put up now: what is told may be about jars on the shelf. */
function isPutAway({ loads = [], running }: Context): boolean {
  return running.length === 0 && loads.length === 0;
}

/** Whether jars are in a canner that may be hot. */
export function isHeated({ loads = [], running }: Context): boolean {
  const inside = runs([...loads, ...running], ({ ofCanner }) => ofCanner === "inside");
  return inside || loads.some((load) => load.inside);
}

/** What it is about, where nothing in it says so: the heat, or what is in the jars or goes in. */
function subjectNow(said: Utterance, context: Context): Subject | undefined {
  if (isHeated(context)) return "boil";
  const atTheTable = said.words.length >= LEAST_AT_THE_TABLE && context.running.length > 0;
  const inJars = (context.loads ?? []).length > 0 && isInJars(context);
  return inJars || atTheTable || isPutAway(context) ? "jars" : undefined;
}

/** "He has put it back": what somebody else did is no order. */
function isOfSomebody(words: readonly string[]): boolean {
  return words.slice(0, 2).some((word) => OTHERS.has(word));
}
const OTHERS: ReadonlySet<string> = new Set(["he", "she", "they", "somebody", "someone"]);

/** The doubt in a statement that nothing came of; undefined where it is idle talk or a question. */
export function untakenDoubt(
  said: Utterance,
  guess: Guess,
  commands: readonly Command[],
  context: Context,
): Evidence | undefined {
  const { intents, frames } = guess;
  const words = said.words.map(({ word }) => word);
  const asks = beginsAsking(words) || (said.asked && !TAGGED.test(said.text));
  if (asks || said.words.length < LEAST_SAID) return undefined;
  if (NOT_TOLD.reduce((sum, one) => sum + frames[one], 0) >= SURELY) return undefined;
  const inJars = isInJars(context);
  const idle = idleness(guess);
  const telling = TELLING.test(said.text) ? IDLE_IF_TELLING : IDLE_AT_THE_TABLE;
  if (idle >= (inJars && !isPutAway(context) ? IDLE : telling)) return undefined;
  if (isPutAway(context) && said.words.length < LEAST_AT_THE_TABLE) return undefined;
  if (isOnTheStove(words)) return undefined;
  const [best] = intents;
  // An order or a question that was not understood tells of nothing either.
  const meaning = best && isIntent(best.name) ? MEANINGS[best.name] : undefined;
  const told = !meaning || meaning.report || meaning.tellsOf;
  const done = isOfSomebody(words) || whenOf(said).past === true;
  if (frameOf(guess) === "ordered" && !told && !done) return undefined;
  const subject = likelySubject(intents, inJars ? LIKELY : LIKELY_AT_THE_TABLE);
  if (!subject && idle >= HARDLY_IDLE && isElsewhere(said)) return undefined;
  const heated = isHeated(context);
  const meant = subject && (heated || !OF_PROCESS.has(subject)) ? subject : undefined;
  const about = commands.some(isTakenOut) ? "jars" : (meant ?? subjectNow(said, context));
  const over = !heated && !isOfAnotherDay(said);
  const when = over ? ({ past: true } as const) : whenOf(said);
  const more = DEPARTS.test(textOf(said.words)) ? { more: true as const } : {};
  return about && { strength: "trace", about, text: said.text, ...when, ...more };
}

/** Jars that were taken out: no answer about the boil of the others covers them. */
const isTakenOut = ({ intent, slots }: Command) =>
  intent === "done" && "target" in slots && slots.target === "jars";

/** With one of these more is told than that something is done. */
const DEPARTS = new RegExp(
  "\\b(not|never|half|some|few|only|instead|without|raw|cold|warm|forgot|skipped|but|except|" +
    "since|all week|extra|less|more|with)\\b",
);
