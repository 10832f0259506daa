/**
 * One lot more for the recipe that is running: "chuck in a pound and a half of Contender as well",
 * "found more, Golden, three pounds, they go in with the rest".
 */
import { type Command, commandOf } from "../../kitchen/command.ts";
import type { Context, NamedBatch } from "../context.ts";
import { wordSet } from "../grammar/word-set.ts";
import { beginsAsking } from "../guards.ts";
import { refFor } from "../values/finish-slots.ts";
import { runningLotAt } from "../values/running-lots.ts";
import { weighedAt } from "../values/spoken-weights.ts";
import { textOf, type Utterance, wordAt } from "../words.ts";
import { begunAs, nameOfLot, namesIn } from "./paired-lots.ts";

const PUT =
  "(?:add|chuck|throw|toss|pop|bung|stick|put|tip|sling|shove|squeeze|have|get)(?:ing|ting)?";
const ADDS = new RegExp(
  `\\b${PUT}\\b(?: \\S+){0,9}? (?:in|into|to|with|too|as well|along|together)\\b|` +
    "\\badd(?:ing)? (?:it|them|that|this|those|the|an?|another|some|in)\\b|" +
    "\\b(?:go|goes|going) in\\b|\\bon top of (?:it|them|that|those)\\b|" +
    "\\b(?:turned up|came to light)$|" +
    "\\b(?:there (?:is|are)|(?:i|we) (?:found|have got)|forgot) .*\\b(?:too|as well|also)\\b|" +
    "\\b(?:for|in) the same (?:brine|syrup|pot|batch)\\b|\\bwith the (?:others|rest)\\b",
);
/** "There's some Jade as well", "a bit of Jade in with them": a lot that nobody weighed. */
const UNWEIGHED = new RegExp(
  "^(?:(?:oh|and|wait|hold on|hang on|so|well|okay|ah|no|also|look|actually|sorry|just|then) )*" +
    "(?:(?:there (?:is|are)|i (?:have )?found|we (?:have )?found|i have got|we have got|here is|" +
    "here are|add|put in|i forgot|we forgot) )?(?:the |some |a few |a (?:bit|handful|bowl|basket|" +
    "bunch|little) of )*(?:more )?N(?: beans| beets| cucumbers| tomatoes)? " +
    "(?:too|as well|also|in (?:with|among) (?:them|it|those|the others|the rest)|to go in|" +
    "for the same (?:pot|brine))(?: (?:i forgot|to go in|please|now|too))*$",
);
/** With one of these nothing is put in here and now. */
const NOT_NOW = new RegExp(
  "\\b(if|should|would|could|might|may|maybe|wish|not|never|later|tomorrow|yesterday|next|will i|" +
    "some time|last (year|week|time|summer)|jars?|pints?|quarts?|fridge|freezer|compost|seeds?|" +
    "filled|sealed|cooler|market|what|how|when|who|why|start|begin|get (?:on|going|started))\\b",
);
const ASKS_FOR = /^(?:oh |and |so |hey |right |okay )*can (?:you|we) /;
/** Where an unquoted, uncapitalized name ends. */
const BEHIND = wordSet("in into to with too as along together and please also now here there");
/** An order to add nothing but a lot and its weight: "add National, four pounds". */
const ADD_ONE = /^(?:(?:oh|and|so|okay|also|then|please|now|can you|could you) )*add /;
/** "Oh and Blue Lake too, a pound and a half". */
const ONE_MORE = /^(?:(?:oh|ah|wait|so|well) )*and (?:the |some )?(.+?) (?:too|as well|also)\b/;
/** How an order ends in which a name without capitals may be a variety's. */
const TO_THE_REST = new RegExp(
  "(?:as well|too|also|\\bin|in there|(?:in (?:along )?with|to|into) (?:it|them|those|that|these|" +
    "(?:the|this|that|our) (?:rest|others|batch|lot|beans|beets|cucumbers|pickles|tomatoes)))" +
    "(?: (?:please|now|then|would you|will you))*$",
);
const NO_NAME = wordSet(
  "more them those these it that this ones others rest same beans bean beets beet cucumbers cukes",
  "tomatoes produce stuff ice water brine salt vinegar sugar pressure weight jars lids ours mine",
);
const MOST_NAME_WORDS = 3;

type Weighed = { weightLb: number; at: number; next: number };

function weightsIn({ words }: Utterance): Weighed[] {
  const found: Weighed[] = [];
  for (let at = 0; at < words.length; at += 1) {
    const [weight] = weighedAt(words, at);
    if (!weight) continue;
    found.push({ weightLb: weight.value.weightLb, at, next: weight.next });
    at = weight.next - 1;
  }
  return found;
}

function skipped(said: Utterance, from: number): number {
  let at = from;
  while (/^(of|the|my|our|those|these|them|more)$/.test(wordAt(said.words, at))) at += 1;
  return at;
}

/** Names with capitals that are no running lot's, and no first word of a sentence. */
function newNames(said: Utterance, { running }: Context): string[] {
  const { text, words } = said;
  return namesIn(said).flatMap(({ at, name }) => {
    const begins = at === 0 || /[.!?]/.test(text.slice(words[at - 1]?.end, words[at]?.start));
    const weighed = weighedAt(words, at + name.split(" ").length).length > 0;
    const last = words[at + name.split(" ").length - 1];
    const owner = last && /['’]s$/.test(text.slice(last.start, last.end));
    const known = owner || runningLotAt(said, at, running) !== undefined;
    return known || (begins && !weighed) ? [] : [name];
  });
}

/** A name without capitals behind its weight, where nothing else is known by it. */
function plainName(said: Utterance, { next }: Weighed, recipe: string, context: Context) {
  if (!TO_THE_REST.test(textOf(said.words))) return undefined;
  const from = skipped(said, next);
  const rest = said.words.slice(from);
  const length = rest.findIndex(({ word }) => BEHIND.has(word));
  const name = length < 0 ? rest : rest.slice(0, length);
  const [first, last] = [name[0], name.at(-1)];
  if (!first || !last || name.length > MOST_NAME_WORDS) return undefined;
  if (name.some(({ word }) => NO_NAME.has(word) || /^\d/.test(word))) return undefined;
  return nameOfLot(said.text.slice(first.start, last.end), recipe, context);
}

/** The name in an order of nothing but a lot and its weight. */
function onlyName(said: Utterance, { at: from, next }: Weighed): string | undefined {
  const all = textOf(said.words);
  const order = ADD_ONE.exec(all) ?? undefined;
  const more = order ? undefined : ONE_MORE.exec(all);
  const first = order ? order[0].trim().split(" ").length : more ? all.indexOf(more[1] ?? "") : -1;
  if (first < 0) return undefined;
  const start = order ? first : all.slice(0, first).trim().split(" ").length;
  const words = said.words.slice(skipped(said, start), from);
  const name = words.filter(({ word }) => !BEHIND.has(word));
  const rest = said.words.slice(next).every(({ word }) => BEHIND.has(word));
  const [one, last] = [name[0], name.at(-1)];
  if (!rest || !one || !last || name.length > MOST_NAME_WORDS) return undefined;
  if (name.some(({ word }) => NO_NAME.has(word) || /^\d/.test(word))) return undefined;
  return said.text.slice(one.start, last.end);
}

/** The recipe of the running lots that it goes in with: those named, or the one begun last. */
function recipeFor(said: Utterance, { running }: Context): string | undefined {
  const named = said.words.flatMap((_, at) => runningLotAt(said, at, running)?.value ?? []);
  return (named.at(-1) ?? running.at(-1))?.recipe;
}

function moreOf(lot: NamedBatch, weightLb: number, said: Utterance, context: Context): Command {
  const target = lot.variety?.toLowerCase() ?? "";
  const ref = refFor(target, "change-batch", said, context);
  return commandOf("change-batch", { target, moreLb: weightLb }, { ref });
}

/** A lot of a new name that goes in with the others, and no weight is said. */
function unweighedLot(said: Utterance, recipe: string, context: Context): Command | undefined {
  const [name, other] = newNames(said, context);
  if (name === undefined || other !== undefined) return undefined;
  const all = textOf(said.words).replace(name.toLowerCase(), "N");
  const variety = UNWEIGHED.test(all) ? nameOfLot(name, recipe, context) : undefined;
  return variety === undefined ? undefined : begunAs(variety, recipe, undefined, context);
}

/**
 * What is put in with what is running: a lot of a new name, or more of one that runs; undefined
 * where no weight or more than one is said.
 */
export function addedLot(whole: Utterance, context: Context): Command | undefined {
  // "Two more pounds of Provider".
  const said = { ...whole, words: whole.words.filter(({ word }) => word !== "more") };
  const all = textOf(said.words);
  const asks = said.asked || beginsAsking(said.words.map(({ word }) => word));
  if (said.cut || context.question || (asks && !ASKS_FOR.test(all))) return undefined;
  const [weight, another] = weightsIn(said);
  const only = weight && onlyName(said, weight);
  if (NOT_NOW.test(all)) return undefined;
  const recipe = recipeFor(said, context);
  if (recipe && !weight) return unweighedLot(said, recipe, context);
  if (!(only ?? ADDS.test(all))) return undefined;
  if (!recipe || !weight || another) return undefined;
  const named = (at: number) => runningLotAt(said, at, context.running);
  const before = only === undefined ? -1 : said.words.findIndex((_, at) => named(at));
  const running = named(before >= 0 ? before : skipped(said, weight.next));
  if (running) return moreOf(running.value, weight.weightLb, said, context);
  const [name, other] = newNames(said, context);
  if (other !== undefined) return undefined;
  const variety =
    name ?? nameOfLot(only, recipe, context) ?? plainName(said, weight, recipe, context);
  if (variety === undefined) return undefined;
  return begunAs(variety, recipe, weight.weightLb, context);
}
