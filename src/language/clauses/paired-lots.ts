/**
 * Several varieties of one food in one breath, each with its weight: "dilly beans, both sorts,
 * Provider two pounds, Dragon Tongue one and a half", "four pounds each of Provider and Blue Lake".
 */
import { type Command, commandOf } from "../../kitchen/command.ts";
import { wordsOf as foodWords, mentionsIn } from "../../recipe/foods/name-foods.ts";
import { BESIDE } from "../beside-words.ts";
import { type Context, isWaitedFor } from "../context.ts";
import { clausesIn } from "../evidence/split.ts";
import { wordSet } from "../grammar/word-set.ts";
import { TELLING } from "../guards.ts";
import { begunBy } from "../values/gated-lots.ts";
import { RECIPE_NAMES } from "../values/recipe-names.ts";
import type { SpokenLot } from "../values/spoken-lots.ts";
import { numbersAt } from "../values/spoken-numbers.ts";
import { unitIn, weighedAt } from "../values/spoken-weights.ts";
import { textOf, type Utterance } from "../words.ts";

const MOST_NAME_WORDS = 3;
const HEAVIEST_BARE_LB = 60;

/** Words with capitals that name no variety. */
const NO_NAME = wordSet(
  "i the a an and but so now well then okay right both beans bean dill dilly pickles pickle beets",
  "god lord please ma mom mum dad mama grandma two three four five six seven eight nine",
  "ten one pounds",
  "provider's start set let's we i've baith honey sugar lass got have take use found put whew phew",
  "okay yer your you yeah guess here there that's from oh with plus also and another",
  "just hon love mate dear folks starting making doing going begin beginning listen hang go",
);
/** In a sentence with one of these nothing is begun. */
const NOT_BEGUN = wordSet(
  "not never no if when was were had did yesterday last how what why who should would could left",
  "enough sealed opened open filled jars boiling done finished better tastes liked prefer seeds",
  "instead",
);

const ARTICLE = /^(the|my|our|they|them|those|these|that)$/;

const WITHIN_NAME = /^(de|du|di|da|del|des|la|von|van)$/;

type Place = { at: number; next: number };
type Named = Place & { name: string };
type Weighed = Place & { weightLb: number; unit: number };

function isCapital({ text, words }: Utterance, at: number): boolean {
  const word = words[at];
  return word !== undefined && /^\p{Lu}[\p{Ll}'’]/u.test(text.slice(word.start));
}

/** Names with capitals, the first word of a sentence only where another sort is named, too. */
export function namesIn(said: Utterance): Named[] {
  const { text, words } = said;
  const found: Named[] = [];
  for (let at = 0; at < words.length; at += 1) {
    const fits = (place: number) => {
      const expanded = words[place]?.start === words[place - 1]?.start;
      return !expanded && isCapital(said, place) && !NO_NAME.has(words[place]?.word ?? "");
    };
    if (!fits(at)) continue;
    let next = at + 1;
    const joined = () => text.slice(words[next - 1]?.end, words[next]?.start) === " ";
    while (next - at < MOST_NAME_WORDS && fits(next) && joined()) next += 1;
    // "Jaune de Chine".
    if (WITHIN_NAME.test(words[next]?.word ?? "") && fits(next + 1) && joined()) next += 2;
    const name = text.slice(words[at]?.start, words[next - 1]?.end).replace(/['’]s$/, "");
    found.push({ at, next, name });
    at = next - 1;
  }
  return found;
}

/** Where a name without capitals ends that no mark ends. */
const BEHIND = wordSet("and plus about then all going in they which for with i we both too also");

/** Words of names that mean something else elsewhere: "Kentucky Wonder". */
const OF_NAMES = wordSet("wonder star king queen lady best early");

function isPlain(word: string): boolean {
  if (OF_NAMES.has(word)) return true;
  const idle = BESIDE.has(word) || TELLING.has(word) || BEHIND.has(word);
  return /^\p{L}{3,}$/u.test(word) && !idle && !NO_NAME.has(word) && !NOT_BEGUN.has(word);
}

/** A name without capitals from here on, up to where it ends. */
function plainNameAt(said: Utterance, from: number): Named | undefined {
  const { text, words } = said;
  const at = ARTICLE.test(words[from]?.word ?? "") ? from + 1 : from;
  let next = at;
  const joined = (place: number) =>
    place === at || text.slice(words[place - 1]?.end, words[place]?.start) === " ";
  while (next - at < MOST_NAME_WORDS && isPlain(words[next]?.word ?? "") && joined(next)) next += 1;
  const ends = next > at && (endsAt(said, next) || BEHIND.has(words[next]?.word ?? ""));
  return ends ? { at, next, name: text.slice(words[at]?.start, words[next - 1]?.end) } : undefined;
}

/** A name without capitals that begins a clause, with its weight behind it. */
function nameBefore(said: Utterance, weightAt: number): Named | undefined {
  const { text, words } = said;
  let at = weightAt;
  const begins = (place: number) =>
    place === 0 || /[,.;:!–—]/.test(text.slice(words[place - 1]?.end, words[place]?.start));
  while (weightAt - at < MOST_NAME_WORDS && isPlain(words[at - 1]?.word ?? "") && !begins(at)) {
    at -= 1;
  }
  const before = words[at - 1]?.word ?? "";
  const first = begins(at) || /^(and|plus|the)$/.test(before);
  if (at === weightAt || !first) return undefined;
  return { at, next: weightAt, name: text.slice(words[at]?.start, words[weightAt - 1]?.end) };
}

/** Names as a voice is written down, without capitals: only right beside a weight. */
function plainNamesIn(said: Utterance): Named[] {
  const { words } = said;
  const found: Named[] = [];
  for (let at = 0; at < words.length; at += 1) {
    const [weight] = weighedAt(words, at);
    const number = weight ?? numbersAt(words, at).toSorted((a, b) => b.next - a.next)[0];
    if (!number) continue;
    const of = words[number.next]?.word === "of";
    const behind = of || weight ? plainNameAt(said, number.next + (of ? 1 : 0)) : undefined;
    const name = (endsAt(said, number.next) ? undefined : behind) ?? nameBefore(said, at);
    if (name) found.push(name);
    at = Math.max(number.next, name?.next ?? 0) - 1;
  }
  return found;
}

/** Whether nothing else is said in the same breath: a mark, "and" or the end comes next. */
function endsAt({ text, words }: Utterance, next: number): boolean {
  const behind = text.slice(words[next - 1]?.end, words[next]?.start ?? text.length);
  return next >= words.length || /[,.;:!–—]/.test(behind) || words[next]?.word === "and";
}

/**
 * Weights, and numbers without a unit that stand alone or before a name: "Provider two pounds, Blue
 * Lake three", "two pounds of Provider and three of Blue Lake".
 */
function weightsIn(said: Utterance, names: readonly Named[]): Weighed[] {
  const { words } = said;
  // "Three of Dragon Tongue", "two of the Blue Lake", "three Dragon Tongue".
  const ofName = (place: number) => {
    const of = words[place]?.word === "of" ? place + 1 : place;
    const from = ARTICLE.test(words[of]?.word ?? "") ? of + 1 : of;
    return names.some(({ at }) => at === from);
  };
  const found: Weighed[] = [];
  for (let at = 0; at < words.length; at += 1) {
    const before = found.at(-1);
    if (before && words[at]?.word === "same" && /^(for|with|of)$/.test(words[at + 1]?.word ?? "")) {
      found.push({ ...before, at, next: at + 1 });
      continue;
    }
    const [weight] = weighedAt(words, at);
    const [bare] = weight ? [] : numbersAt(words, at);
    // "Two kilos of the one and one and a half of the other": of the unit before.
    const unit = found.at(-1)?.unit ?? 1;
    const one = weight
      ? {
          weightLb: weight.value.weightLb,
          next: weight.next,
          unit: unitIn(words.slice(at, weight.next)),
        }
      : bare &&
          bare.value > 0 &&
          bare.value <= HEAVIEST_BARE_LB &&
          (endsAt(said, bare.next) || ofName(bare.next))
        ? { weightLb: Math.round(bare.value * unit * 1000) / 1000, next: bare.next, unit }
        : undefined;
    if (!one) continue;
    found.push({ at, ...one });
    at = one.next - 1;
  }
  return found;
}

/** The recipe named in the sentence, by the longest of its names. */
function recipeIn({ words }: Utterance, context: Context): string | undefined {
  const all = ` ${textOf(words)} `;
  const isThere = (id: string) =>
    context.recipes.length === 0 || context.recipes.some((one) => one.id === id);
  const named = Object.entries(RECIPE_NAMES)
    .filter(([id]) => isThere(id))
    .flatMap(([id, names]) => names.map((name) => ({ id, name: name.toLowerCase() })))
    .filter(({ name }) => all.includes(` ${name} `))
    .sort((a, b) => b.name.length - a.name.length);
  const has = (pattern: RegExp) => pattern.test(all);
  const fixed =
    has(/ (dilly|dillies) /) || (has(/ beans? /) && has(/ (dill|dilled) /))
      ? "dilled-green-beans"
      : has(/ beets? /) && has(/ (pickled?|pickling|brine) /)
        ? "pickled-beets"
        : undefined;
  if (fixed && isThere(fixed)) return fixed;
  const [first] = named;
  const several = named.filter(({ name }) => name === first?.name);
  return several.length === 1 ? first?.id : undefined;
}

/** Whether names and weights take turns, as far as the words go. */
function isByTurns(names: readonly Named[], weights: readonly Weighed[]): boolean {
  return names.every((_, index) => {
    const own = weights[index]?.at ?? 0;
    return own > (names[index - 1]?.at ?? -1) && own < (names[index + 1]?.at ?? Infinity);
  });
}

/** Each name with its own weight, if every name has one. */
function paired(names: readonly Named[], weights: readonly Weighed[], said: Utterance) {
  const each = said.words.some(({ word }) => /^(each|apiece)$/.test(word));
  if (each && weights.length === 1) {
    return names.map(({ name }) => ({ name, weightLb: weights[0]?.weightLb ?? 0 }));
  }
  if (weights.length !== names.length || !isByTurns(names, weights)) return undefined;
  return names.map(({ name }, index) => ({ name, weightLb: weights[index]?.weightLb ?? 0 }));
}

/**
 * The beginnings in a sentence with at least two names and a weight for each; empty for any other.
 * Without a recipe in it, the one begun last is meant.
 */
export function pairedLots(said: Utterance, context: Context): Command[] {
  if (said.asked || said.cut || isWaitedFor(context)) return [];
  if (said.words.some(({ word }) => NOT_BEGUN.has(word))) return [];
  if (/^(is|are|do|does)$/.test(said.words[0]?.word ?? "")) return [];
  const written = namesIn(said);
  const recipeSaid = recipeIn(said, context);
  const names = written.length < 2 && recipeSaid ? plainNamesIn(said) : written;
  const weights = weightsIn(said, names).filter(({ at }) => {
    return !names.some((name) => at >= name.at && at < name.next);
  });
  const measured = said.words.some((_, at) => weighedAt(said.words, at).length > 0);
  if (names.length < 2 || !measured) return [];
  const again = context.running.find(({ variety = "" }) =>
    names.some(({ name }) => name === variety),
  );
  const recipe = recipeSaid ?? again?.recipe ?? context.running.at(-1)?.recipe;
  const lots = recipe ? paired(names, weights, said) : undefined;
  if (!recipe || !lots) return [];
  return lots.map(({ name, weightLb }) => begunAs(name, recipe, weightLb, context));
}

const LEADS = wordSet(
  "so okay right well now today it is we are i am doing making do make the some putting up um oh",
);

/** A name, unless it is another food's or an ingredient's. */
export function nameOfLot(written: string | undefined, recipe: string, context: Context) {
  if (written === undefined) return undefined;
  const { ingredients = [], yield: made } = context.library?.recipes.get(recipe) ?? {};
  const others = ingredients.filter(({ role }) => role !== "produce").map((one) => one.name);
  const ours = mentionsIn(foodWords(made?.produce ?? "")).map(({ food }) => food);
  const spoken = foodWords(written);
  const strange = mentionsIn(spoken).some(({ food }) => !ours.includes(food));
  const isOther = others.some((one) => foodWords(one).some((word) => spoken.includes(word)));
  return strange || isOther ? undefined : written;
}

/** The recipe, where words say nothing but its name. */
function recipeAlone(piece: Utterance, context: Context): string | undefined {
  const recipe = recipeIn(piece, context);
  const names = RECIPE_NAMES[recipe ?? ""] ?? [];
  const own = new Set(names.flatMap((name) => name.toLowerCase().split(" ")).concat("dillies"));
  return piece.words.every(({ word }) => own.has(word) || LEADS.has(word)) ? recipe : undefined;
}

/** A piece that is nothing but a name of a variety. */
function nameAlone(piece: Utterance, recipe: string, context: Context): string | undefined {
  const from = ARTICLE.test(piece.words[0]?.word ?? "") ? 1 : 0;
  const name = piece.words.slice(from);
  const [first, last] = [name[0], name.at(-1)];
  if (!first || !last || name.length > MOST_NAME_WORDS) return undefined;
  if (!name.every(({ word }) => isPlain(word)) || recipeIn(piece, context)) return undefined;
  const written = piece.text.slice(first.start, last.end);
  return nameOfLot(written, recipe, context);
}

/** "Pickled beets. National, Chioggia, Golden": a recipe and its lots, which nobody weighed yet. */
export function listedLots(said: Utterance, context: Context): Command[] {
  if (said.asked || said.cut || isWaitedFor(context) || context.running.length > 0) return [];
  const pieces = clausesIn(said);
  const [first, last] = [pieces[0], pieces.at(-1)];
  if (!first || !last || pieces.length < 3) return [];
  const ahead = recipeAlone(first, context);
  const recipe = ahead ?? recipeAlone(last, context);
  if (!recipe) return [];
  const rest = ahead ? pieces.slice(1) : pieces.slice(0, -1);
  const names = rest.map((one) => nameAlone(one, recipe, context));
  if (names.some((name) => name === undefined)) return [];
  return names.map((name = "") => begunAs(name, recipe, undefined, context));
}

/** The beginning of one lot by the name it was given; a name that is a word of its food is one. */
export function begunAs(
  name: string,
  recipe: string,
  weightLb: number | undefined,
  context: Context,
): Command {
  const lot: SpokenLot = {
    recipes: [recipe],
    named: recipe,
    said: name,
    beside: name,
    variety: name,
    exact: true,
    told: true,
    ...(weightLb === undefined ? {} : { weightLb }),
  };
  const slots = begunBy(lot, context);
  const unnamed = slots.recipe !== undefined && slots.variety === undefined;
  return commandOf("begin", unnamed ? { ...slots, variety: name } : slots);
}
