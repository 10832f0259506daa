import { numberWords } from "../../reckon/number-words.ts";
import { IN_OIL_DAYS } from "../../reckon/trade-numbers.ts";
import { findRecipe, recipeNames } from "../find-recipe.ts";
import type { Library } from "../library.ts";
import { type ProcessTable, type ProcessTables, sourceLine } from "../process-table.ts";
import type { ProcessOption, Recipe } from "../recipe.ts";
import { belongs, gateAddition } from "./addition-gate.ts";
import type { Food } from "./foods.ts";
import type { Mention } from "./name-foods.ts";
import {
  callsItself,
  hasForms,
  insteadOf,
  isMain,
  isProduct,
  isSeed,
  nearTo,
  needsBeside,
  reasonAgainst,
  tablesOf,
  titleWords,
} from "./near-recipes.ts";
import { isColor, readSaidFood, type SaidFood, varietyIn, withoutNames } from "./said-food.ts";
import { neighborSaid, optionsFor, producedFoods, testedFor } from "./tested-foods.ts";

/**
 * The food gate: what a person says goes into the jar, checked against the foods that a process was
 * tested for. Nothing untested passes; a tested neighbor is offered, never assumed.
 */

/** What was said is what was tested. */
type Tested = {
  is: "tested";
  recipe: string;
  /** The foods named; empty where the words name none, as with a variety's name. */
  foods: readonly Food[];
  /** The variety, whole and as written, where one is named. */
  variety?: string;
  /** The recipe's processes that were tested for all of these foods: raspberries go in raw only. */
  options: readonly ProcessOption[];
};

/** Not what was tested. */
export type Untested = {
  is: "untested";
  said: string;
  food: Food;
  /**
   * What is wrong, what similar food was tested, what can be done instead: sentences to be said.
   */
  why: string;
  source: string;
  /** Recipes of tested neighbors, the nearest first: offered, never taken. */
  nearby: readonly string[];
  /** Recipes tested for this food in a form other than the one asked for. */
  instead: readonly string[];
};

/** A variety's name that is also another food's: asked about once for this food and name. */
export type NameOrFood = {
  is: "name-or-food";
  recipe: string;
  /** The recipe's own food: `tomato`. */
  food: Food;
  /** The name, whole and as written: `Yellow Pear`. */
  name: string;
  /** The same in lower case, as it is remembered. */
  key: string;
  /** The other food that the name is: `pear`. */
  other: Food;
};

/** Several recipes fit, or one that holds more than was named: the person has to be asked which. */
type WhichRecipe = { is: "which"; said: string; recipes: readonly string[] };

/** The words name no known food: nothing is begun. */
type UnknownFood = { is: "unknown"; said: string };

export type FoodGate = Tested | Untested | NameOrFood | WhichRecipe | UnknownFood;

/**
 * The answer given to `name-or-food` for a food and a name in lower case: true for a variety, false
 * for the other food, undefined where it was not asked yet.
 */
export type Answered = (food: string, name: string) => boolean | undefined;

const never: Answered = () => undefined;
const MOST_NEARBY = 3;

function notTested(food: Food, table: ProcessTable | undefined): string {
  const tested = table ? ` The closest that was tested is ${table.food}.` : "";
  return (
    `No process here was tested for ${food.name} in this way.${tested} ` +
    "Freeze it or keep it in the refrigerator, or ask your extension service for a tested recipe."
  );
}

/** What no process was tested for whatever the recipe. */
const OF_KIND: Partial<Record<Food["kind"], { why: (name: string) => string; source?: string }>> = {
  poison: { why: (name) => `${name}: poisonous, and not to be put up in any way.` },
  oil: {
    why: () =>
      "What lies under oil can make botulism without a sign, and no process makes it safe to " +
      `store on a shelf. Keep it ${numberWords(IN_OIL_DAYS)} days at most in the refrigerator, ` +
      "or freeze it.",
    source: "National Center for Home Food Preservation, garlic in oil, reviewed 2015",
  },
};

/** What is said about a food for which none of the recipes meant was tested. */
function untested(
  library: Library,
  said: SaidFood,
  text: string,
  food: Food,
  of?: Recipe,
): Untested {
  const near = nearTo(library, food, said);
  const asked = of ? [of] : near;
  const instead = insteadOf(library, food).filter((id) => id !== of?.id);
  const others = instead.flatMap((id) => library.recipes.get(id) ?? []);
  const alike = asked.filter((recipe) => recipe === of || hasForms(recipe, said.forms));
  // A food that has a recipe of its own is not explained by what a different recipe leaves out.
  const groups = [alike, others.length > 0 ? others : near];
  const neighbor = reasonAgainst(groups, library.tables, food, text);
  const table = [of, ...others, ...near].flatMap((one) =>
    one ? tablesOf(one, library.tables) : [],
  )[0];
  const own = OF_KIND[food.kind];
  return {
    is: "untested",
    said: text,
    food,
    why: own?.why(food.name) ?? neighbor?.why ?? notTested(food, table),
    source: own?.source ?? neighbor?.source ?? (table ? sourceLine(table.source) : ""),
    nearby: own ? [] : asked.map(({ id }) => id).slice(0, MOST_NEARBY),
    instead,
  };
}

function tested(recipe: Recipe, tables: ProcessTables, said: SaidFood, text: string): Tested {
  // A clove of garlic beside the beans seasons them.
  const all = [...new Set(said.heads.map(({ food }) => food))];
  const foods = all.filter((food) => testedFor(recipe, tables, food));
  const each = foods.map((food) => optionsFor(recipe, tables, food));
  const options = recipe.processes.filter((option) => each.every((some) => some.includes(option)));
  const variety = varietyIn(text, all.length > 0 ? all : producedFoods(recipe).main);
  return { is: "tested", recipe: recipe.id, foods, options, ...(variety ? { variety } : {}) };
}

/**
 * True where the words may be a name: one food in the singular, or with further words of a name.
 */
function mayBeName(said: SaidFood, one: Mention, text: string): boolean {
  if (said.forms.size > 0 || /^\s*(?:an?|some)\b/i.test(text)) return false;
  return !one.plural || said.words.length > one.to - one.from;
}

/** A single word of another food's name stands for it: `Asian`, where pears are asked about. */
function readFor(recipe: Recipe, text: string): SaidFood {
  const said = readSaidFood(text);
  const own = producedFoods(recipe).main[0];
  if (said.heads.length > 0 || !own || said.words.length === 0) return said;
  const sorts = [text, ...said.rest].map((words) => readSaidFood(`${words} ${own.name}`));
  const whole = sorts.find(({ heads }) => {
    return heads.some(({ food }) => food !== own && food.name.includes(own.name));
  });
  return whole ?? said;
}

/**
 * Checks what a person says goes into the jars of a chosen recipe (`white peaches`, `Roma`, `the
 * Yellow Pear`) against the foods its processes were tested for. The last noun of a row is what is
 * checked: a pear tomato is a tomato. A name that is not a food's is a variety.
 */
export function gateFood(
  library: Library,
  recipe: Recipe,
  text: string,
  answered: Answered = never,
): FoodGate {
  const said = readFor(recipe, text);
  const { tables } = library;
  const own = producedFoods(recipe).main[0];
  const isStrange = ({ food }: Mention) => !testedFor(recipe, tables, food);
  const stranger = said.heads.find(isStrange);
  const odd = stranger ?? said.modifiers.find(isStrange);
  if (!odd) {
    if (said.foodlike.length > 0) return { is: "unknown", said: text };
    const head = said.heads[0]?.food ?? own;
    const wrong = head && formFault(recipe, tables, text);
    return wrong ? untested(library, said, text, head, recipe) : tested(recipe, tables, said, text);
  }
  const name = varietyIn(text, own ? [own] : []) ?? text.trim();
  const key = name.toLowerCase();
  const known = own && answered(own.name, key);
  if (known) return { ...tested(recipe, tables, { ...said, heads: [] }, text), variety: name };
  const bare = said.rest.every(isColor);
  const neighbor = stranger && bare && reasonAgainst([[recipe]], tables, odd.food, "");
  const asks = own && known === undefined && !neighbor && odd.food.kind !== "poison";
  // "Yellow Pears" may be a name beside tomatoes; "sweet potatoes" beside apples are none.
  const mayName = stranger ? mayBeName(said, odd, text) : !odd.plural || said.rest.length > 0;
  if (asks && said.forms.size === 0 && mayName) {
    return { is: "name-or-food", recipe: recipe.id, food: own, name, key, other: odd.food };
  }
  return untested(library, said, text, odd.food, recipe);
}

/**
 * Checks what goes into the jars of a chosen recipe with its own food (`with bacon`, `in honey`):
 * no variety, but an addition.
 */
export function gateWith(library: Library, recipe: Recipe, text: string): FoodGate {
  const { tables } = library;
  const gate = gateAddition(recipe, tables, text);
  const own = producedFoods(recipe).main[0];
  if (gate.is === "unknown" || !own) return { is: "unknown", said: text };
  if (gate.is !== "changes") return tested(recipe, tables, readSaidFood(""), "");
  const { why, source, food = own } = gate;
  return { is: "untested", said: text, food, why, source, nearby: [recipe.id], instead: [] };
}

/**
 * True where each table has a reason against the words said about a tested food: dried, creamed.
 */
function formFault(recipe: Recipe, tables: ProcessTables, text: string): boolean {
  const own = tablesOf(recipe, tables);
  const said = withoutNames(text);
  return own.length > 0 && own.every((table) => neighborSaid(table, said) !== undefined);
}

/**
 * Recipes that take all the foods said, in the form said; looser ones contain more than was said.
 */
function fitting(library: Library, said: SaidFood, text: string) {
  const foods = said.heads.map(({ food }) => food);
  const fit = [...library.recipes.values()].filter(
    (recipe) =>
      isSeed(recipe) === said.forms.has("seed") &&
      hasForms(recipe, said.forms) &&
      foods.every((food) => belongs(recipe, library.tables, food)) &&
      foods.some((food) => testedFor(recipe, library.tables, food) && isMain(recipe, food)) &&
      !formFault(recipe, library.tables, text),
  );
  const strict = fit.filter((recipe) => needsBeside(recipe).every((food) => foods.includes(food)));
  const titled = (recipe: Recipe) =>
    said.forms.size > 0 &&
    [...said.forms].every((form) => callsItself(recipe).title.forms.has(form));
  return { strict, loose: fit.filter((one) => !strict.includes(one) && titled(one)) };
}

/** Of several recipes, those that have the other words said in one of their names. */
function narrowed(recipes: Recipe[], words: readonly string[]): Recipe[] {
  return words.reduce((left, word) => {
    const having = left.filter((recipe) =>
      recipeNames(recipe).join(" ").split(/\W+/).includes(word),
    );
    return having.length > 0 ? having : left;
  }, recipes);
}

/** Whether one word alone may mean this recipe too. */
function isRival({ tables }: Library, recipe: Recipe, said: SaidFood): boolean {
  const { forms } = callsItself(recipe).title;
  if (said.heads.length === 0)
    return said.forms.size > 0 && [...said.forms].every((f) => forms.has(f));
  const main = said.heads.every(
    ({ food }) => testedFor(recipe, tables, food) && isMain(recipe, food),
  );
  return said.forms.size === 0 && main && !isProduct(recipe) && needsBeside(recipe).length === 0;
}

/**
 * The recipe with that whole name, where the name says more than a food that several recipes fit.
 */
function namedRecipe(library: Library, said: SaidFood, text: string): Recipe | undefined {
  const plain = text.trim().replace(/^(?:(?:the|a|an|some|my|our|batch of|batch)\s+)+/i, "");
  const named = findRecipe(library.recipes.values(), plain);
  if (!named || /[\s-]/.test(plain)) return named;
  const rivals = [...library.recipes.values()].filter(
    (one) => one !== named && !isSeed(one) && isRival(library, one, said),
  );
  return rivals.length === 0 ? named : undefined;
}

/**
 * Which recipe a person means by the food and form they name (`the beets`, `banana jam`,
 * `okra dills`), before any is begun. A recipe's whole name is that recipe; a food alone that fits
 * several is asked about; what fits none is untested, with the closest that was tested.
 */
export function gateBegin(library: Library, text: string, answered: Answered = never): FoodGate {
  const said = readSaidFood(text);
  const { tables } = library;
  const named = namedRecipe(library, said, text);
  if (named) {
    const title = titleWords(text);
    const odd = readSaidFood(title).heads.find(({ food }) => !testedFor(named, tables, food));
    if (odd && !isSeed(named)) return untested(library, said, text, odd.food, named);
    return tested(named, tables, said, said.heads.length > 0 ? text : "");
  }
  if (said.heads.length === 0) return withoutFood(library, said, text);
  const { strict, loose } = fitting(library, said, text);
  const fit = narrowed(strict.length > 0 ? strict : loose, said.telling);
  const ways = said.forms.size === 0 ? fit.filter((recipe) => !isProduct(recipe)) : fit;
  const found = ways.length > 0 ? ways : fit;
  const [one] = found;
  if (!one) return untested(library, said, text, firstStranger(library, said));
  const assumes = said.forms.size === 0 && callsItself(one).title.forms.size > 0;
  if (found.length > 1 || strict.length === 0 || assumes) {
    return { is: "which", said: text, recipes: found.map(({ id }) => id) };
  }
  const modifier = said.modifiers.find(({ food }) => !testedFor(one, tables, food));
  if (modifier && said.forms.size > 0) return untested(library, said, text, modifier.food, one);
  return modifier ? gateFood(library, one, text, answered) : tested(one, tables, said, text);
}

/** The food that the fewest recipes of that form take: it makes the whole untested. */
function firstStranger(library: Library, said: SaidFood): Food {
  const counted = said.mentions.map(({ food }) => {
    const fit = insteadOf(library, food).flatMap((id) => library.recipes.get(id) ?? []);
    const alike = fit.filter((recipe) => hasForms(recipe, said.forms));
    return { food, alike: alike.length, fit: fit.length };
  });
  counted.sort((a, b) => a.alike - b.alike || a.fit - b.fit);
  return counted[0]?.food as Food;
}

/** A form without a food is asked about, unless something unknown is named with it. */
function withoutFood(library: Library, said: SaidFood, text: string): FoodGate {
  const recipes = [...library.recipes.values()].filter(
    (recipe) =>
      said.forms.size > 0 &&
      [...said.forms].every((form) => callsItself(recipe).title.forms.has(form)),
  );
  if (said.rest.length > 0 || recipes.length === 0) return { is: "unknown", said: text };
  return { is: "which", said: text, recipes: recipes.map(({ id }) => id) };
}

/**
 * Checks a recipe's own title against its tables: the food it is named for, where none of its
 * processes was tested for it; undefined where the title is sound or names no food.
 */
export function gateTitle(recipe: Recipe, tables: ProcessTables): Food | undefined {
  if (recipe.processes.length === 0) return undefined;
  const named = readSaidFood(titleWords(recipe.title));
  return named.heads.find(({ food }) => !testedFor(recipe, tables, food))?.food;
}
