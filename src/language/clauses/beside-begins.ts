/**
 * Words of an order to begin that its recipe does not account for: "but figs", "with rice",
 * "they're the white kind". None is dropped: the kitchen refuses them, or asks.
 */
import type { Command } from "../../kitchen/command.ts";
import { recipeNames } from "../../recipe/find-recipe.ts";
import { otherSort, strangePlaces } from "../../recipe/foods/beside-food.ts";
import { mentionsIn } from "../../recipe/foods/name-foods.ts";
import { isPlainWord } from "../../recipe/foods/said-food.ts";
import type { Library } from "../../recipe/library.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import type { Context } from "../context.ts";
import { isElsewhere } from "../evidence/elsewhere.ts";
import { wordSet } from "../grammar/word-set.ts";
import { RECIPE_NAMES } from "../values/recipe-names.ts";
import { type Utterance, utteranceOf, wordAt } from "../words.ts";

type Begin = Command<"begin">;

/** Before what goes in along with the food, or in its place. */
const JOINS = wordSet("but with plus using add adding containing featuring instead into mixed");
/** Before what goes in along with the food that was named first. */
const ADDS = wordSet("but add adding mixed");
/** Before what goes in along with the food, and does not replace it. */
const ALONG = wordSet("with and plus add adding");
/** What these say of a food is not what is begun. */
const DENIES = wordSet("not no without never");
/** Talk of other people or of another time does not say what is begun. */
const TALKS = wordSet("i we you he she who everybody my our your his her tomorrow yesterday while");
const SORTS = wordSet("one ones kind kinds type types sort sorts variety varieties fleshed flesh");
/** Between a word and the food or the sort that it describes. */
const MARKS = /[,;:.!?()–—]|\s-\s/;
/** Behind one that joins, these name nothing that goes into a jar. */
const HARMLESS = wordSet(
  "me us you him her them it that this these those someone somebody help lid lids band bands",
  "ring rings rack canner stove burner timer vinegar salt sugar lemon juice acid pectin spice",
  "spices water care love fun luck pleasure radio music gloves glove knife board recipe sea",
  "kosher canning please first now then today tonight later soon quick quickly hurry careful",
  "slow slowly go hold wait not no only just do does did make keep use using we i be is are",
  "and or if so as by till until before after same tested friend friends sister brother",
  "mother mom dad kids family neighbor husband wife son daughter grandma grandpa what which",
  "from whatever gauge clock eye bottled each every fresh new clean good usual proper full",
  "half quarter third quarters thirds right time day room thing things company brine syrup",
);

function namesOf(recipe: Recipe): Set<string> {
  const names = [...recipeNames(recipe), ...(RECIPE_NAMES[recipe.id] ?? [])];
  return new Set(names.flatMap((name) => name.toLowerCase().split(/[^\p{L}]+/u)));
}

/** Pieces of a sentence between its marks and before its "but", by the places of their words. */
function pieces({ text, words }: Utterance): [from: number, to: number][] {
  const cuts = [0];
  for (let at = 1; at < words.length; at += 1) {
    const between = text.slice(words[at - 1]?.end, words[at]?.start);
    if (MARKS.test(between) || wordAt(words, at) === "but") cuts.push(at);
  }
  return cuts.map((from, index) => [from, cuts[index + 1] ?? words.length]);
}

type Beside = { beside: string[]; aside: string[] };

class Order {
  private readonly words: readonly string[];
  private readonly named: ReadonlySet<string>;
  /** Places of words that make something else of each recipe, alone and along with its food. */
  private readonly alone: readonly ReadonlySet<number>[];
  private readonly along: readonly ReadonlySet<number>[];
  private readonly ofFood: readonly boolean[];

  constructor(
    private readonly said: Utterance,
    private readonly recipes: readonly Recipe[],
    private readonly library: Library,
    private readonly known: ReadonlySet<string>,
    private readonly variety: ReadonlySet<string>,
  ) {
    this.words = said.words.map(({ word }) => word);
    this.named = new Set(recipes.flatMap((one) => [...namesOf(one)]));
    const places = (seasons: boolean) =>
      recipes.map((one) => strangePlaces(one, library.tables, this.words, seasons));
    this.alone = places(false);
    this.along = places(true);
    const foods = mentionsIn(this.words);
    this.ofFood = this.words.map((_, at) => foods.some(({ from, to }) => at >= from && at < to));
  }

  /** What is left over in a piece, as it was said. */
  read([from, to]: [number, number], found: Beside): void {
    const { text, words } = this.said;
    const places = this.leftOver(from, to);
    const [first] = places;
    const last = places.at(-1);
    if (first === undefined || last === undefined) return;
    const said = text.slice(words[first]?.start, words[last]?.end);
    (this.talks(from, to) ? found.aside : found.beside).push(said);
  }

  /** Whether a piece is about somebody or something else; never with the order itself in it. */
  private talks(from: number, to: number): boolean {
    const words = this.words.slice(from, to);
    if (from === 0 || words.some((word) => ALONG.has(word) || ADDS.has(word))) return false;
    const piece = this.said.words.slice(from, to);
    return words.some((word) => TALKS.has(word)) || isElsewhere({ ...this.said, words: piece });
  }

  private leftOver(from: number, to: number): number[] {
    const talks = this.talks(from, to);
    const places: number[] = [];
    let [joined, added, along] = [false, false, false];
    for (let at = from; at < to; at += 1) {
      const word = this.words[at] ?? "";
      const replaced = word === "instead" && this.words[at + 1] === "of";
      if (replaced || DENIES.has(word)) break;
      joined ||= JOINS.has(word);
      added ||= ADDS.has(word);
      along ||= ALONG.has(word);
      if (this.isStrange(at, added, along)) {
        if (!talks || !this.known.has(word)) places.push(at);
      } else if (!talks && (this.isSort(at, to) || (joined && this.isUnknown(at)))) places.push(at);
    }
    return places;
  }

  /** What is added goes into what was named first, not into a batch of its own. */
  private isStrange(at: number, added: boolean, along: boolean): boolean {
    const each = along ? this.along : this.alone;
    // The kitchen asks whether another food's name is this one's variety.
    if (!added && this.ofFood[at] && this.variety.has(this.words[at] ?? "")) return false;
    if (this.named.has(this.words[at] ?? "") && !(added && this.ofFood[at])) return false;
    return added ? each[0]?.has(at) === true : each.every((places) => places.has(at));
  }

  /** "White ones", "the white kind", "white" at the end of its piece. */
  private isSort(at: number, to: number): boolean {
    const [word = "", next = ""] = [this.words[at], this.words[at + 1]];
    const describes = at + 1 === to || SORTS.has(next) || this.named.has(next);
    return describes && this.recipes.some((one) => otherSort(one, this.library.tables, word));
  }

  private isUnknown(at: number): boolean {
    const word = this.words[at] ?? "";
    const plain = isPlainWord(word) || JOINS.has(word) || HARMLESS.has(word) || /ly$/.test(word);
    const written = this.said.text[this.said.words[at]?.start ?? 0] ?? "";
    return (
      !plain &&
      !this.ofFood[at] &&
      !this.named.has(word) &&
      !SORTS.has(word) &&
      !/\p{Lu}|\d/u.test(written)
    );
  }
}

function recipesOf(begins: readonly Begin[], library: Library): Recipe[] {
  const ids = begins.flatMap(({ slots }) => slots.recipe ?? slots.choices ?? []);
  return [...new Set(ids)].flatMap((id) => library.recipes.get(id) ?? []);
}

/** Orders to begin with the words that their recipes do not account for. */
function withBeside(
  commands: readonly Command[],
  text: string,
  context: Context,
): readonly Command[] {
  const { library, running } = context;
  const begins = commands.filter((one): one is Begin => one.intent === "begin");
  const recipes = library ? recipesOf(begins, library) : [];
  if (!library || recipes.length === 0) return commands;
  const said = utteranceOf(text);
  const known = running.flatMap(({ recipe }) => {
    const one = library.recipes.get(recipe);
    return one ? [...namesOf(one)] : [];
  });
  const names = begins.flatMap(({ slots }) => utteranceOf(slots.variety ?? "").words);
  const variety = new Set(names.map(({ word }) => word));
  const order = new Order(said, recipes, library, new Set(known), variety);
  const found: Beside = { beside: [], aside: [] };
  for (const piece of pieces(said)) order.read(piece, found);
  const { beside, aside } = found;
  const more = {
    ...(beside.length > 0 ? { beside: beside.join(", ") } : {}),
    ...(aside.length > 0 ? { aside: aside.join(", ") } : {}),
  };
  return commands.map((one) => {
    return one.intent === "begin" ? { ...one, slots: { ...one.slots, ...more } } : one;
  });
}

type Pending = { commands: readonly Command[]; candidates: readonly Command[] };

/** What was heard, with orders to begin that hold every word of theirs. */
export function wholeOrders<H extends Pending>(heard: H, text: string, context: Context): H {
  const commands = withBeside(heard.commands, text, context);
  return { ...heard, commands, candidates: withBeside(heard.candidates, text, context) };
}
