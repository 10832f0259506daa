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
  const { loads = [], running } = context;
  // Before the boil or the pressure no answer about it can settle what is told.
  if (loads.some(({ stages }) => stages.some(({ timed }) => timed))) return "boil";
  const atTheTable = said.words.length >= LEAST_AT_THE_TABLE && running.length > 0;
  const inJars = loads.length > 0 && isInJars(context);
  return inJars || atTheTable || isPutAway(context) ? "jars" : undefined;
}

/** "He has put it back": what somebody else did is no order. */
function isOfSomebody(words: readonly string[]): boolean {
  return words.slice(0, 2).some((word) => OTHERS.has(word));
}
const OTHERS: ReadonlySet<string> = new Set(["he", "she", "they", "somebody", "someone"]);

/** "Does it matter the lids sat in the damp": it is asked about what has happened. */
const ASKED_AFTER = new RegExp(
  "\\b((does|would|will) (it|that|this) (matter|hurt)|" +
    "(is|are) (it|that|this|they|those) (bad|ok|okay|all right|alright|fine|safe|spoiled|ruined))" +
    "(?=(?: \\S+){3})",
);
/** With one of these it is asked what would be, or how to do it. */
const WOULD_BE = /\b(if|when|whether|which|what|how|to|should|can|could|do|does it matter)\b/;
/** Ways of heating jars for which nothing was tested. */
const UNTESTED_WAY = new RegExp(
  "\\b(they|them|jars|these|those|lot|half|some)\\b.*" +
    "\\b((in|into) the (oven|microwave|dishwasher)|gallon)\\b",
);

/** Whether a question tells of something that has happened to what is put up. */
export function isAskedAfter({ words }: Utterance): boolean {
  const all = words.map(({ word }) => word).join(" ");
  const found = ASKED_AFTER.exec(all);
  return found !== null && !WOULD_BE.test(all.slice(found.index + found[0].length));
}

/** The doubt in a statement that nothing came of; undefined where it is idle talk or a question. */
export function untakenDoubt(
  said: Utterance,
  guess: Guess,
  commands: readonly Command[],
  context: Context,
): Evidence | undefined {
  const { intents, frames } = guess;
  const words = said.words.map(({ word }) => word);
  const surely = isAskedAfter(said) || (isInJars(context) && UNTESTED_WAY.test(textOf(said.words)));
  if (surely) {
    const about = subjectNow(said, context);
    return about && { strength: "trace", about, text: said.text, ...whenOf(said) };
  }
  const asks = beginsAsking(words) || (said.asked && !TAGGED.test(said.text));
  if (asks || said.words.length < LEAST_SAID) return undefined;
  if (NOT_TOLD.reduce((sum, one) => sum + frames[one], 0) >= SURELY) return undefined;
  const inJars = isInJars(context);
  const idle = idleness(guess);
  const telling = TELLING.test(said.text) ? IDLE_IF_TELLING : IDLE_AT_THE_TABLE;
  if (idle >= (inJars && !isPutAway(context) ? IDLE : telling)) return undefined;
  if (isPutAway(context) && said.words.length < LEAST_AT_THE_TABLE) return undefined;
  if (isOnTheStove(words) && !TELLING.test(said.text)) return undefined;
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
