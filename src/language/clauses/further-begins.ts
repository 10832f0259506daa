/**
 * Beginnings that leave out what was said before: "and pickled beets, seven pounds", "the beets
 * too", "same for the Blue Lake", "also the Dragon Tongue and the Blue Lake, three pounds each";
 * and several in one order.
 */
import { type Command, commandOf, type SlotsOf } from "../../kitchen/command.ts";
import { isNoFood } from "../../recipe/foods/foods.ts";
import { wordsOf as foodWords, mentionsIn } from "../../recipe/foods/name-foods.ts";
import { type Context, isWaitedFor, type NamedBatch } from "../context.ts";
import { phraseBook } from "../grammar/phrase-book.ts";
import { wordSet } from "../grammar/word-set.ts";
import { lotsIn, type ReadLot } from "../values/day-wish.ts";
import { refFor } from "../values/finish-slots.ts";
import { begunBy } from "../values/gated-lots.ts";
import { runningLotAt } from "../values/running-lots.ts";
import { foodLotAt, lotAt, type SpokenLot } from "../values/spoken-lots.ts";
import { smallWholeAt } from "../values/spoken-numbers.ts";
import { weighedAt } from "../values/spoken-weights.ts";
import { spokenNames } from "../values/targets.ts";
import { type Utterance, utteranceOf } from "../words.ts";

type BeginSlots = SlotsOf["begin"];

const MORE = /^\s*(?:(?:and|also|plus|and also|and then|then also)\b[\s,]*)+/i;
const SAME = /^\s*(?:and\s+|then\s+)*(?:the\s+)?same\s+(?:again\s+)?(?:for|with)\s+/i;
const LEAD = "(?:okay|right|now|so|let's|let us|please|can we|and|,|\\s)*";
const ORDER = new RegExp(`^\\s*${LEAD}\\b(?:start|begin|make|do)\\s+(?:both\\s+)?`, "i");
const TOO = /[\s,]+(?:too|as well|also)(?=\s*(?:[,.!;]|$|(?:please|then|and|now|thanks)\b))/i;
const EACH = /[\s,]+(?:at\s+)?([^,]*?)\s+(?:each|apiece|of each)[\s.!]*$/i;

/** Words that are never a variety's name. */
const NO_NAME = wordSet(
  "it that this them those these one ones lids lid jars jar boil boiling water heat pressure time",
  "timer salt vinegar sugar headspace rim rims rings canner pot stove burner phone door please",
  "thanks good fine okay yes no not done ready over still again what how when why who is are was",
  "were has have had will would could should can may might do does did",
);
/** Words that tell what was done, or what somebody has. */
const REPORTS = /\b(?:i|we|you|he|she|they|put|added|threw|got|have|in|into|out)\b/i;
const MOST_NAME_WORDS = 3;

type Asked = { rest: string; same: boolean; ordered: boolean };

/** What is left of a sentence that begins more; undefined for any other. */
function asked(text: string): Asked | undefined {
  const same = SAME.exec(text);
  if (same) return { rest: text.slice(same[0].length), same: true, ordered: false };
  const order = ORDER.exec(text);
  if (order) return { rest: text.slice(order[0].length), same: false, ordered: true };
  const more = MORE.exec(text);
  const too = TOO.exec(text);
  if (!more && !too) return undefined;
  const without = too
    ? `${text.slice(0, too.index)}${text.slice(too.index + too[0].length)}`
    : text;
  const rest = more ? without.replace(MORE, "") : without;
  return { rest, same: false, ordered: false };
}

/** "Three pounds each", said about all of them. */
function each(text: string): { rest: string; weightLb?: number } {
  const found = EACH.exec(text);
  if (!found) return { rest: text };
  const { words } = utteranceOf(found[1] ?? "");
  const [weight] = weighedAt(words, 0);
  if (!weight || weight.next !== words.length) return { rest: text };
  return { rest: text.slice(0, found.index), weightLb: weight.value.weightLb };
}

/** A lot named by its variety alone: of the recipe begun last. */
function varietyLot(text: string, last: NamedBatch): SpokenLot | undefined {
  const { words } = utteranceOf(text);
  const from = words.findIndex(({ word }) => !/^(the|some|my|our)$/.test(word));
  let weightLb: number | undefined;
  const name: typeof words = [];
  for (let at = Math.max(0, from); at < words.length; ) {
    const [weight] = weighedAt(words, at);
    if (weight && weightLb === undefined) {
      weightLb = weight.value.weightLb;
      at = weight.next;
      if (words[at]?.word === "of") at += 1;
      continue;
    }
    const word = words[at];
    if (word && !/^(the|of)$/.test(word.word)) name.push(word);
    at += 1;
  }
  const [first] = name;
  const end = name.at(-1);
  const odd = name.some(({ word }) => NO_NAME.has(word) || /^\d/.test(word));
  if (!first || !end || odd || name.length > MOST_NAME_WORDS) return undefined;
  const variety = text.slice(first.start, end.end);
  const base = { recipes: [last.recipe], named: last.recipe, exact: true, told: true } as const;
  const weight = weightLb === undefined ? {} : { weightLb };
  return { ...base, recipes: [last.recipe], said: variety, beside: variety, variety, ...weight };
}

/** Produce is named in the plural: `pears`; `Yellow Pear` is more likely a name. */
function namesProduce(text: string): boolean {
  return mentionsIn(foodWords(text)).some(({ plural, food }) => plural && !isNoFood(food));
}

/** "And one Dragon Tongue" of a lot that is running: no lot more. */
function isRunning({ variety = "", weightLb }: BeginSlots, { running }: Context): boolean {
  const name = utteranceOf(variety);
  const from = smallWholeAt(name.words, 0)?.next ?? 0;
  return weightLb === undefined && runningLotAt(name, from, running) !== undefined;
}

function isSure(lots: readonly SpokenLot[], { same, ordered, rest }: Asked): boolean {
  if (ordered) {
    // "The tomatoes, Yellow Pear" is one lot and its name.
    const whole = lots.every(({ named }) => named.includes(" ") || namesProduce(named));
    return whole && lots.length > 1 && /\b(?:and|plus)\b|&/i.test(rest);
  }
  const weighed = lots.some(({ weightLb }) => weightLb !== undefined);
  return same || weighed || lots.every(({ told, exact }) => exact && !told);
}

/** "The bread-and-butters, four pounds of cucumbers": produce weighed for the lot before. */
function withProduce(lots: readonly SpokenLot[]): SpokenLot[] {
  const list: SpokenLot[] = [];
  for (const lot of lots) {
    const { weightLb, recipes, variety } = lot;
    const before = list.at(-1);
    const [recipe = "", another] = before?.recipes ?? [];
    const same = another === undefined && recipes.length > 1 && recipes.includes(recipe);
    if (before && same && before.weightLb === undefined && weightLb !== undefined) {
      list[list.length - 1] = { ...before, weightLb, ...(variety ? { variety } : {}) };
    } else list.push(lot);
  }
  return list;
}

/** Where several recipes fit, the one begun last is meant again. */
function likeLast(slots: BeginSlots, last: NamedBatch | undefined): BeginSlots {
  const { choices, named, ...rest } = slots;
  const again = last && slots.variety !== undefined && choices?.includes(last.recipe);
  return again ? { ...rest, recipe: last.recipe } : slots;
}

/** The beginnings in a sentence that begins several things, or one more; empty for any other. */
export function furtherBegins(said: Utterance, context: Context): Command[] {
  const more = said.asked ? undefined : asked(said.text);
  if (!more || isWaitedFor(context) || REPORTS.test(more.rest)) return [];
  const { rest, weightLb } = each(more.rest);
  const last = context.running.at(-1);
  const plain = phraseBook().plain;
  const read: ReadLot = (text, words, at, end, names, known) =>
    lotAt(text, words, at, end, names, known) ??
    (last && !more.ordered && !namesProduce(text) ? varietyLot(text, last) : undefined) ??
    foodLotAt(text, words, at, end);
  const listed = lotsIn(rest, spokenNames(context), plain, read);
  if (!listed) return [];
  const lots = withProduce(listed);
  const all = lots.map((lot) => (weightLb === undefined ? lot : { ...lot, weightLb }));
  if (!isSure(all, more)) return [];
  const begun = all.map((lot) => likeLast(begunBy(lot, context), last));
  if (begun.some((slots) => isRunning(slots, context))) return [];
  return begun.map((slots): Command => {
    const ref =
      slots.named === undefined ? {} : { ref: refFor(slots.named, "begin", said, context) };
    return commandOf("begin", slots, { confidence: slots.choices ? 0.7 : 1, ...ref });
  });
}
