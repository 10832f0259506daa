import { type Food, isNoFood } from "./foods.ts";
import {
  isFormOf,
  type Mention,
  mentionsIn,
  withoutDenied,
  withoutVinegar,
  wordsOf,
} from "./name-foods.ts";

/**
 * What a person's words say about food: which foods, in which form, and what is left over, such as
 * a variety. A few words are expected (`okra dills`, `the Yellow Pear`), not a whole sentence.
 */

/** True where a name says only the food's color. */
export function isColor(word: string): boolean {
  return COLORS.has(word);
}

/** Whether a name is nothing but colors. */
export function isColorName(name: string): boolean {
  return name.toLowerCase().split(" ").every(isColor);
}

/** What is made of a food, by the words that say so. Each form is in its own list. */
const FORM_WORDS: Readonly<Record<string, string>> = {
  jam: "jam jams preserves preserve conserve",
  jelly: "jelly jellies jellied",
  marmalade: "marmalade marmalades",
  butter: "butter butters",
  sauce: "sauce sauces applesauce ketchup catsup paste passata marinara",
  salsa: "salsa salsas",
  relish: "relish relishes chutney chutneys piccalilli",
  pickle: "pickle pickles pickled dills dilled dilly gherkins gherkin",
  ferment: "kraut sauerkraut fermented ferment kimchi crock brined",
  juice: "juice juices nectar cider",
  puree: "puree purees pureed purée mash mashed refried",
  stock: "stock broth bouillon",
  soup: "soup soups stew chowder chili-con-carne",
  syrup: "cordial",
  filling: "filling fillings pie",
  leather: "leather",
  crushed: "crushed quartered",
  creamed: "creamed cream-style",
  seed: "seed seeds",
};

const FORM_OF = new Map(
  Object.entries(FORM_WORDS).flatMap(([form, words]) =>
    words.split(" ").map((word) => [word, form] as const),
  ),
);

const list = (words: string) => new Set(words.split(" "));
/** Words that are never part of a food or a name. */
const SMALL = list(
  "a an the some my our your his her their this that these those of for in into on to with " +
    "and or plus also all batch batches lot lots load more another new bit few couple little " +
    "other own about around roughly maybe nearly almost over is are it its it's we're i'm " +
    "here start begin make making do doing can canning put up can't",
);
/** Words of state, size and cut: they describe the food and are never a variety. */
const PLAIN = list(
  "ripe unripe overripe underripe fresh freshly picked frozen thawed raw cooked canned home " +
    "homegrown local organic heirloom big small large medium tiny baby young old tender firm " +
    "soft hard sweet sour tart hot mild whole half halves halved sliced slices slice diced " +
    "chopped cubed cubes pieces peeled cored pitted shelled cut plain mixed assorted light " +
    "heavy syrup water brine pickling cooking eating dried dry soaked good nice best last " +
    "first leftover spare yesterday's today's garden market",
);
/** Words of pack, jar, method and amount: never a variety. */
const KITCHEN = list(
  "pack packed hot raw cold pint pints quart quarts half-pint half-pints halfpint halfpints " +
    "jar jars boiling bath waterbath steam steamer pressure canner cooker pounds pound lb lbs " +
    "kilo kilos ounces bushel bushels peck gallon gallons cup cups dozen one two three four " +
    "five six seven eight nine ten eleven twelve twenty thirty headspace dial weighted gauge",
);
const COLORS = list("red yellow orange green white black purple blue pink golden gold striped");
/** Between two foods that both go into the jar. */
const JOINS = list("and with plus or & also");

const WRITTEN_WORD = /[\p{L}\p{M}\d']+/gu;
/** A word that sounds like a food's even where no food is known by it: `zorkberries`. */
const FOODLIKE = /(?:berr(?:y|ies)|fruits?|melons?|beans?|squash(?:es)?|roots?|greens|nuts?)$/;

export type SaidFood = {
  /** The words as said, in lower case. */
  words: readonly string[];
  /** Foods from left to right, herbs and spices and water left out. */
  mentions: readonly Mention[];
  /** The foods that are checked: the last of each row of nouns, `pear` of `tomato pears`. */
  heads: readonly Mention[];
  /** Foods that stand before another as its name: `peach` of `peach tomatoes`. */
  modifiers: readonly Mention[];
  /** What is made of it: `jam`, `pickle`; empty where the words name only the food. */
  forms: ReadonlySet<string>;
  /** Words that are not a food, form, small word, size, pack, jar or method. */
  rest: readonly string[];
  /**
   * Words that tell which of several is meant: neither a food's name nor a form nor a small word.
   */
  telling: readonly string[];
  /** The words of `rest` that sound like a food all the same. */
  foodlike: readonly string[];
};

/**
 * Inside a food's name only the last word can be a form: butter beans are not butter. In a name of
 * several words without the food's own, it is none: Amish Paste.
 */
function isOwnForm({ food, name, from, to }: Mention, at: number): boolean {
  const words = name.split(/[ -]/);
  const own = food.name.split(/[ -]/);
  const called = words.length === 1 || words.some((word) => own.includes(word));
  return at === to - 1 && to > from && (called || isNoFood(food) || food.kind === "broth");
}

/** A text without varieties' names, whatever their words mean alone: Amish Paste. */
export function withoutNames(text: string): string {
  const words = wordsOf(text);
  const names = mentionsIn(words).filter(
    (one) => one.to - one.from > 1 && !isOwnForm(one, one.to - 1),
  );
  return words.filter((_, at) => !names.some(({ from, to }) => at >= from && at < to)).join(" ");
}

function formsIn(words: readonly string[], mentions: readonly Mention[]): Set<string> {
  const forms = new Set<string>();
  words.forEach((word, at) => {
    const within = mentions.find(({ from, to }) => at >= from && at < to);
    const form = !within || isOwnForm(within, at) ? FORM_OF.get(word) : undefined;
    if (form) forms.add(form);
    if (word === "cream" || word === "creamed") forms.add("creamed");
  });
  // Fruit is packed in syrup, or made into one.
  if (
    /^syrups?$/.test(words.at(-1) ?? "") &&
    !/^(?:in|light|medium|heavy)$/.test(words.at(-2) ?? "")
  ) {
    forms.add("syrup");
  }
  return forms;
}

/** True where nothing joins two foods: the first is then the second's name. */
function isRow(words: readonly string[], one: Mention, next: Mention): boolean {
  return !words.slice(one.to, next.from).some((word) => JOINS.has(word) || word === "in");
}

/** The form that a word says a food is made into: `jam` of `preserves`. */
export function formOf(word: string): string | undefined {
  return FORM_OF.get(word);
}

/** A small word, or one of state, size, pack, jar, method or amount. */
export function isPlainWord(word: string): boolean {
  return SMALL.has(word) || PLAIN.has(word) || KITCHEN.has(word) || /^\d/.test(word);
}

/** Reads the few words in which a person names a food. */
export function readSaidFood(said: string): SaidFood {
  const words = wordsOf(withoutVinegar(withoutDenied(said)).replaceAll("&", " and "));
  const all = mentionsIn(words);
  const forms = formsIn(words, all);
  const named = all.filter(({ food }) => !isNoFood(food));
  // `pickles` is cucumbers only where no other food is named.
  const bare = named.filter((one) => one.name !== "pickle");
  const foods = bare.length > 0 ? bare : named;
  const broth = foods.at(-1)?.food.kind === "broth";
  const modifiers = foods.filter((one, at) => {
    const next = foods[at + 1];
    return next !== undefined && next.food !== one.food && (broth || isRow(words, one, next));
  });
  const rest = words.filter(
    (word, at) =>
      !all.some(({ from, to }) => at >= from && at < to) &&
      !isPlainWord(word) &&
      !FORM_OF.has(word),
  );
  return {
    words,
    mentions: foods,
    heads: foods.filter((one) => !modifiers.includes(one)),
    modifiers,
    forms,
    rest: rest.filter((word) => !JOINS.has(word)),
    telling: words.filter(
      (word, at) =>
        !foods.some(({ from, to }) => at >= from && at < to) &&
        !SMALL.has(word) &&
        !FORM_OF.has(word),
    ),
    foodlike: rest.filter((word) => FOODLIKE.test(word)),
  };
}

/**
 * The variety that the words name, whole and as written; undefined where they name none. Words of
 * pack, jar, method, size and ripeness are never one, nor is a color alone in small letters.
 */
export function varietyIn(said: string, foods: readonly Food[]): string | undefined {
  const written = said.replaceAll("’", "'").match(WRITTEN_WORD) ?? [];
  const words = written.map((one) => one.toLowerCase());
  const mentions = mentionsIn(words);
  const nouns = foods.flatMap(({ name }) => name.split(/[ -]/));
  const isNoun = (word: string) => nouns.some((noun) => isFormOf(word, noun));
  const kept = written.filter((one, at) => {
    const word = words[at] ?? "";
    const within = mentions.find(({ from, to }) => at >= from && at < to);
    if (within && isNoFood(within.food)) return false;
    if (isNoun(word) || (FORM_OF.has(word) && (!within || isOwnForm(within, at)))) return false;
    if (within && within.to - within.from > 1) return true;
    const capital = one !== word && at > 0 && PLAIN.has(word);
    return capital || !isPlainWord(word);
  });
  const named = kept.some((one) => {
    const word = one.toLowerCase();
    // Written as a name, a color is one: Golden.
    return (!COLORS.has(word) || one !== word) && !isPlainWord(word);
  });
  return named ? kept.join(" ") : undefined;
}
