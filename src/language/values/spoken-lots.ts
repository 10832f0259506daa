import { isNoFood } from "../../recipe/foods/foods.ts";
import { mentionsIn } from "../../recipe/foods/name-foods.ts";
import type { Context } from "../context.ts";
import { URGES } from "../fillers.ts";
import { wordSet } from "../grammar/word-set.ts";
import { editDistance } from "../spelling/sound.ts";
import type { Utterance, Word } from "../words.ts";
import { wordAt } from "../words.ts";
import { type Way, wayAt } from "./lot-ways.ts";
import { weightAt } from "./spoken-weights.ts";
import { fuzzyAt, type Names, type PlainWords } from "./targets.ts";

/** What is to be begun: "fourteen pounds of crushed tomatoes", "Provider dilly beans, 8 lb". */
export type SpokenLot = {
  recipes: string[];
  named: string;
  /** What describes the food and its variety, as written: all but weight, pack, jar and method. */
  said: string;
  /** The part beside the name that does not point to a recipe. */
  beside: string;
  /** What stands beside the name goes in with it: `the snap beans with bacon`. */
  joined?: true;
  /** Words beside the name told which of several recipes it is: `tomatoes, the crushed kind`. */
  told?: true;
  variety?: string;
  weightLb?: number;
  exact: boolean;
} & Way;

/** Words that mean nothing in the description of a lot. */
const EMPTY = wordSet(
  "a an the some my our those these this that of with from using about around roughly it is at",
  "batch lot round load for and as i we have got which weighs weighing variety today now please",
  "then another more first new fresh picked just there are here today's called worth total all",
  "in recipe next up out big little small couple crate row rows bushel basket lug going started",
  "again them it ones afternoon morning evening already yet each apiece me us okay lass honey dear",
  "thereabouts damn bloody wretched lovely mess heap right well so oh hey",
);

/** Behind a name, these say what goes into the jars with it: "with bacon", "in honey". */
const JOINS = wordSet("with and in plus");

/** Words for produce as such: never a variety. */
const PRODUCE = wordSet(
  "bean beans beet beets cucumber cucumbers cuke cukes tomato tomatoes cabbage cabbages berry",
  "berries apple apples peach peaches pear pears carrot carrots corn chile chiles chili chilies",
  "pepper peppers onion onions rhubarb cranberries grapes apricots plums cherries strawberries",
  "blueberries raspberries blackberries asparagus chicken fish meat beef produce fruit vegetables",
);

/** Words that rule out an order to begin. */
const REFUSED = wordSet(
  "not never if when what who why how would could might maybe tomorrow yesterday week month",
  "year last wish hope someday sometime should did was were had will because timer minutes",
  "minute later tonight until before after love hate eat ate sunday monday tuesday wednesday",
  "thursday friday saturday winter summer fall spring season time hour hours day days you your",
  "they he she mother grandmother neighbor tasted taste good better best sick tired lids open",
  "opened reminder market store buy need needs look looks bought sell sold done finished",
  "out boiling boil sealed but back up through into",
  "let us start begin want go do make making can to be like would tell said say says note",
  "by remind jar jars pints pint quarts quart while canner get",
);

/** How a clause begins that says what kind a lot is: "these are". */
const OF_A_LOT = wordSet("it that these those they");

/**
 * Whether a clause tells no more than a detail of a lot named before it: a weight, a variety, a
 * jar. At least a weight, or "these are", has to be said.
 */
export function isLotDetail({ text, words }: Utterance): boolean {
  const nothing = { from: -1, next: -1, recipes: [], said: "", exact: true };
  const found = described(text, words, 0, nothing);
  if (!found || found.loose.length > MOST_DETAIL) return false;
  const led = OF_A_LOT.has(wordAt(words, 0)) && /^(are|is)$/.test(wordAt(words, 1));
  return found.weightLb !== undefined || (led && found.loose.length > 0);
}

const MOST_DETAIL = 4;
/** More words than this beside a lot are not a variety. */
const MOST_NAME_WORDS = 3;

type Named = { from: number; next: number; recipes: string[]; said: string; exact: boolean };

/** The longest recipe name anywhere from here on, or else the best misheard one. */
function recipeIn(
  words: readonly Word[],
  from: number,
  names: Names,
  plain: PlainWords,
): Named | undefined {
  let best: Named | undefined;
  for (let at = from; at < words.length; at += 1) {
    for (let count = Math.min(7, words.length - at); count > 0; count -= 1) {
      const said = words
        .slice(at, at + count)
        .map((word) => word.word)
        .join(" ");
      const entry = names.byName.get(said);
      if (!entry || entry.recipes.length === 0) continue;
      if (!best || count > best.next - best.from) {
        // "Snap beans in the pressure canner": two names of one recipe with a word in common.
        const same = best?.recipes.length === 1 && entry.recipes.includes(best.recipes[0] ?? "");
        const from = best && same && best.next > at ? best.from : at;
        best = { from, next: at + count, recipes: entry.recipes, said, exact: true };
      }
      break;
    }
  }
  if (best && (best.recipes.length === 1 || best.next - best.from > 1)) {
    return longerMisheard(words, best, names) ?? best;
  }
  const misheard = misheardIn(words, from, names, plain);
  const longer = misheard && (!best || misheard.next - misheard.from > best.next - best.from);
  return longer ? misheard : best;
}

/** "Ten pounds of apples for applesauce": the recipe is what the produce is for. */
function purposeIn(
  words: readonly Word[],
  from: number,
  names: Names,
  plain: PlainWords,
): Named | undefined {
  const place = words.findIndex(({ word }, at) => at > from && word === "for");
  if (place < 0) return undefined;
  const named = recipeIn(words, place + 1, names, plain);
  return named?.exact ? named : undefined;
}

/** The most words before a correctly heard name, one of which may have been misheard. */
const MOST_WORDS_MISHEARD = 3;

/** "Dialed green beans": a name heard right except for one letter of its first word. */
function longerMisheard(words: readonly Word[], best: Named, names: Names): Named | undefined {
  const longer = [...names.byName.values()].filter(({ name, recipes }) => {
    return recipes.length > 0 && name.endsWith(` ${best.said}`);
  });
  for (let more = 1; more <= MOST_WORDS_MISHEARD && more <= best.from; more += 1) {
    const from = best.from - more;
    const before = words.slice(from, best.from).map(({ word }) => word);
    if (before.join(" ").length < 5 || EMPTY.has(before[0] ?? "")) continue;
    const said = `${before.join(" ")} ${best.said}`;
    const near = longer.filter(({ name }) => editDistance(said, name, 1) <= 1);
    const [entry] = near;
    if (!entry || near.length > 1) continue;
    const { recipes, name } = entry;
    return { from, next: best.next, recipes, said: name, exact: false };
  }
  return undefined;
}

/** The first recipe name that sounds or is spelled like the words. */
function misheardIn(
  words: readonly Word[],
  from: number,
  names: Names,
  plain: PlainWords,
): Named | undefined {
  for (let at = from; at < words.length; at += 1) {
    if (EMPTY.has(wordAt(words, at))) continue;
    const near = fuzzyAt(words, at, names, true, plain);
    if (near && near.value.recipes.length > 0) {
      const { recipes, name } = near.value;
      return { from: at, next: near.next, recipes, said: name, exact: false };
    }
  }
  return undefined;
}

/** Reads everything from here to the end as one lot; undefined where that fails. */
export function lotAt(
  text: string,
  words: readonly Word[],
  at: number,
  end: number,
  names: Names,
  plain: PlainWords,
): SpokenLot | undefined {
  const within = words.slice(0, end);
  const named = purposeIn(within, at, names, plain) ?? recipeIn(within, at, names, plain);
  return named && lotNamed(text, within, at, named);
}

/** Whether two foods with these words between them may be one thing: `peach and plum`. */
function isJoined(between: readonly string[]): boolean {
  return between.every((word) => /^(and|or|with|in|plus|on)$/.test(word));
}

/** The same where no recipe has that name, but a food does: `the elderberries`. */
export function foodLotAt(
  text: string,
  words: readonly Word[],
  at: number,
  until: number,
): SpokenLot | undefined {
  const within = words.slice(0, until);
  const spoken = within.slice(at).map(({ word }) => word);
  const foods = mentionsIn(spoken);
  const [first] = foods;
  if (!first || foods.every(({ food }) => isNoFood(food))) return undefined;
  let end = first.to;
  for (const { from, to } of foods) if (isJoined(spoken.slice(end, from))) end = to;
  const [from, next] = [at + first.from, at + end];
  const said = within
    .slice(from, next)
    .map(({ word }) => word)
    .join(" ");
  return lotNamed(text, within, at, { from, next, recipes: [], said, exact: true });
}

type Described = { weightLb?: number; way: Way; loose: number[]; kept: number[] };

const OF_THEMSELVES = /^(i|we) (am|are|feel|know|hope|think|swear|promise) /;
const AT_WORK = / (using|making|doing|canning|pickling|starting|putting|going)$/;

/** What stands beside the name; undefined where a word rules out an order to begin. */
function described(
  text: string,
  words: readonly Word[],
  at: number,
  named: Named,
): Described | undefined {
  const found: Described = { way: {}, loose: [], kept: [] };
  let behind = false;
  for (let next = at; next < words.length; ) {
    if (next === named.from) {
      found.kept.push(next);
      next = named.next;
      continue;
    }
    const weight = found.weightLb === undefined ? weightAt(words, next) : undefined;
    if (weight) {
      found.weightLb = Math.round(weight.value * 1000) / 1000;
      next = weight.next;
      continue;
    }
    const way = wayAt(words, next, behind);
    behind = way !== undefined;
    if (way) {
      Object.assign(found.way, way.value);
      next = way.next;
      continue;
    }
    const urged = urgedAt(words, next);
    if (urged > next) {
      next = urged;
      continue;
    }
    const word = wordAt(words, next);
    // "Seven pounds, I'm beat already": people who talk about themselves name no variety.
    const speaks = [word, wordAt(words, next + 1), wordAt(words, next + 2)].join(" ");
    if (OF_THEMSELVES.test(speaks) && !AT_WORK.test(speaks)) return undefined;
    if (word === "they" && wordAt(words, next + 1) === "are") {
      next += 2;
      continue;
    }
    if (REFUSED.has(word) || (word === "going" && wordAt(words, next + 1) === "to")) {
      return undefined;
    }
    const written = text[words[next]?.start ?? 0] ?? "";
    const works = word !== "going" && word.length > 4 && word.endsWith("ing");
    if (works && !(next > at && /\p{Lu}/u.test(written))) return undefined;
    if (!EMPTY.has(word)) {
      found.loose.push(next);
      found.kept.push(next);
    } else if (next > named.from && JOINS.has(word)) {
      found.kept.push(next);
    }
    next += 1;
  }
  return found;
}

const URGED = URGES.map((phrase) => phrase.split(" "));

/** Where words end that only hurry or beg: "chop chop", "if you please". */
function urgedAt(words: readonly Word[], at: number): number {
  const said = URGED.find((phrase) =>
    phrase.every((word, step) => wordAt(words, at + step) === word),
  );
  return at + (said?.length ?? 0);
}

/** Whether a word that joins stands before a place, an article between them or not. */
function isGoingWith(words: readonly Word[], at = 0): boolean {
  const before = wordAt(words, at - 1);
  return JOINS.has(ARTICLES.has(before) ? wordAt(words, at - 2) : before);
}

const ARTICLES = wordSet("the a an some my our");

function lotNamed(
  text: string,
  within: readonly Word[],
  at: number,
  named: Named,
): SpokenLot | undefined {
  const beside = described(text, within, at, named);
  if (!beside) return undefined;
  const { weightLb, way, loose } = beside;
  const written = (place: number) => text.slice(within[place]?.start, within[place]?.end);
  const name = named.exact
    ? text.slice(within[named.from]?.start, within[named.next - 1]?.end)
    : named.said;
  const said = beside.kept.map((place) => (place === named.from ? name : written(place)));
  const telling = inOneRow(loose, within);
  const [first] = telling;
  const last = telling.at(-1);
  const lot: SpokenLot = {
    recipes: named.recipes,
    named: named.said,
    exact: named.exact,
    said: said.join(" "),
    beside: loose.map(written).join(" "),
    ...(isGoingWith(within, loose[0]) ? { joined: true as const } : {}),
    ...way,
    ...(weightLb === undefined ? {} : { weightLb }),
  };
  if (first === undefined || last === undefined) return lot;
  if (named.recipes.length === 0) return loose.length > MOST_NAME_WORDS ? undefined : lot;
  const chosen = narrowed(
    lot.recipes,
    loose.map((place) => wordAt(within, place)),
  );
  if (chosen) {
    const parts = chosen.split("-");
    const beside = loose.filter((place) => !parts.includes(wordAt(within, place))).map(written);
    return { ...lot, recipes: [chosen], told: true, beside: beside.join(" ") };
  }
  if (telling.length > MOST_NAME_WORDS || last - first + 1 !== telling.length) return undefined;
  return { ...lot, ...varietyOf(text, within, first, last, named) };
}

/** A few words in one row; of others, those that are no plain noun of produce. */
function inOneRow(loose: readonly number[], words: readonly Word[]): readonly number[] {
  const [first = 0] = loose;
  const row = (loose.at(-1) ?? 0) - first + 1 === loose.length;
  if (row && loose.length <= MOST_NAME_WORDS) return loose;
  return loose.filter((place) => !PRODUCE.has(wordAt(words, place)));
}

/**
 * The one of several recipes that the words around the name single out: "tomatoes, the crushed
 * kind".
 */
function narrowed(recipes: readonly string[], loose: readonly string[]): string | undefined {
  if (recipes.length < 2) return undefined;
  const told = recipes.filter((id) => loose.some((word) => id.split("-").includes(word)));
  return told.length === 1 ? told[0] : undefined;
}

/** The variety as said, without a plain noun at its end ("Provider beans"). */
function varietyOf(
  text: string,
  words: readonly Word[],
  first: number,
  last: number,
  named: Named,
): { variety?: string } {
  const beside = last > named.next || wordAt(words, last + 1) === "for";
  const until = beside && PRODUCE.has(wordAt(words, last)) ? last - 1 : last;
  const from = words[first];
  const to = words[until];
  return until < first || !from || !to ? {} : { variety: text.slice(from.start, to.end) };
}

/** The recipe a lot means; where its name fits several, the only one with that title, if any. */
export function titledRecipe(lot: SpokenLot, context: Context): string | undefined {
  if (lot.recipes.length <= 1) return lot.recipes[0];
  const titled = lot.recipes.filter(
    (id) =>
      id.replaceAll("-", " ") === lot.named ||
      context.recipes.some(
        (recipe) => recipe.id === id && recipe.title.toLowerCase() === lot.named,
      ),
  );
  return titled.length === 1 ? titled[0] : undefined;
}
