import type { Library } from "../library.ts";
import { type ProcessTable, type ProcessTables, sourceLine } from "../process-table.ts";
import type { Recipe } from "../recipe.ts";
import { belongs, gateAddition, isAdditive, isOwnFood } from "./addition-gate.ts";
import type { Untested } from "./food-gate.ts";
import { type Food, isNoFood } from "./foods.ts";
import { type Mention, mentionsIn, wordsOf } from "./name-foods.ts";
import { hasForms, insteadOf, isSeed, tablesOf } from "./near-recipes.ts";
import { formOf, isPlainWord } from "./said-food.ts";
import { neighborSaid, producedFoods } from "./tested-foods.ts";

/**
 * Words said along with a recipe's name that make something else of it: another food, another sort
 * of its food, a dish, a thickener, another way of preserving.
 */

const list = (words: string) => new Set(words.split(/\s+/));
/** What food is cooked into, in the singular; no process covers it unless its recipe is that. */
const DISHES = list(
  "casserole goulash ragout ragu hash gravy lasagna stuffing meatloaf loaf meatball dumpling " +
    "cobbler crumble cake pudding mousse trifle custard dip lemonade limeade punch smoothie wine " +
    "liqueur brandy cordial fudge candy chutney tapenade bruschetta caponata ratatouille pizza " +
    "enchilada tamale taco stirfry fry glaze confit rillette terrine aspic slaw coleslaw medley " +
    "compote coulis curd curry dressing spread bisque ravioli burrito stroganoff potpie " +
    "cassoulet tagine bolognese alfredo vodka rum whiskey bourbon beer mix",
);
/** What was done to food that no recipe here does, and that no time was tested with. */
const PREPARED = list(
  "fried stewed brandied candied caramelized caramelised roasted baked grilled barbecued smoked " +
    "cured breaded battered stuffed marinated curried glazed braised sautéed sauteed scalloped " +
    "buttered whipped thickened blended liquidized fermenting sprouted honeyed chocolate",
);
/** Words of a state in which a recipe's food comes: no other way of preserving it. */
const STATES = list("crushed quartered seed seeds");

function isOf(words: ReadonlySet<string>, word: string): boolean {
  return words.has(word) || (word.endsWith("s") && words.has(word.slice(0, -1)));
}

/** "White" beside peaches, "Asian" beside pears: together another food's name. */
export function otherSort(recipe: Recipe, tables: ProcessTables, word: string): Food | undefined {
  if (mentionsIn([word]).length > 0) return undefined;
  for (const { name } of producedFoods(recipe).main) {
    const whole = wordsOf(`${word} ${name}`);
    const [found] = mentionsIn(whole);
    const both = found !== undefined && found.from === 0 && found.to === whole.length;
    if (both && !isNoFood(found.food) && !belongs(recipe, tables, found.food)) return found.food;
  }
  return undefined;
}

/** A dish, another form or another way of preserving than the recipe's. */
function isMadeOtherwise(recipe: Recipe, tables: ProcessTables, word: string): boolean {
  if (isOf(DISHES, word) || PREPARED.has(word)) return true;
  const form = STATES.has(word) ? undefined : formOf(word);
  if (form !== undefined && !hasForms(recipe, new Set([form]))) return true;
  const own = tablesOf(recipe, tables);
  return own.length > 0 && own.every((table) => isNamed(table, word));
}

function isNamed(table: ProcessTable, word: string): boolean {
  return !isPlainWord(word) && neighborSaid(table, word) !== undefined;
}

/**
 * The places of words that make something else of a recipe; foods of several words are whole.
 * @param seasons whether what seasons a jar may be among them; alone it would replace the food
 */
export function strangePlaces(
  recipe: Recipe,
  tables: ProcessTables,
  words: readonly string[],
  seasons: boolean,
): Set<number> {
  const mentions = mentionsIn(words);
  const strange = new Set<number>();
  words.forEach((word, at) => {
    const within = mentions.find(({ from, to }) => at >= from && at < to);
    const odd = within
      ? isStrangeFood(recipe, tables, within, seasons ? before(words, within) : undefined)
      : isMadeOtherwise(recipe, tables, word) || isAdditive(recipe, word);
    if (odd) strange.add(at);
  });
  return strange;
}

/** The words before a food that tell how much of it there is: `a head of garlic`. */
function before(words: readonly string[], { from }: Mention): string {
  return words.slice(Math.max(0, from - 2), from + 1).join(" ");
}

function isStrangeFood(
  recipe: Recipe,
  tables: ProcessTables,
  { food, name }: Mention,
  seasoning: string | undefined,
): boolean {
  if (isNoFood(food)) return false;
  const own =
    seasoning === undefined
      ? isOwnFood(recipe, tables, food)
      : belongs(recipe, tables, food, seasoning);
  return !own || (name !== food.name && isAdditive(recipe, name));
}

/** What a recipe was not tested with, and what is tested of the food instead. */
function untestedBeside(
  library: Library,
  recipe: Recipe,
  said: string,
  food: Food,
  reason: { why: string; source: string },
): Untested {
  const instead = insteadOf(library, food).filter((id) => id !== recipe.id);
  const nearby = isSeed(recipe) ? [] : [recipe.id];
  return { is: "untested", said, food, ...reason, nearby, instead };
}

/**
 * Checks words said beside a recipe's name against it: what they make of it, or undefined where
 * that is not known.
 */
export function gateBeside(library: Library, recipe: Recipe, text: string): Untested | undefined {
  const { tables } = library;
  const words = wordsOf(text);
  const [own] = producedFoods(recipe).main;
  if (!own) return undefined;
  const sort = words.flatMap((word) => otherSort(recipe, tables, word) ?? [])[0];
  const gate = gateAddition(recipe, tables, sort ? sort.name : text);
  if (gate.is === "changes") {
    return untestedBeside(library, recipe, text, gate.food ?? own, gate);
  }
  const odd = words.find((word) => isMadeOtherwise(recipe, tables, word));
  if (odd === undefined) return undefined;
  const [table] = tablesOf(recipe, tables);
  const why = table
    ? `The time was tested for ${table.food}, and not for "${odd}".`
    : `This recipe is not for "${odd}".`;
  const source = table ? sourceLine(table.source) : "";
  return untestedBeside(library, recipe, text, own, { why, source });
}

/**
 * Whether a recipe has something of that name beside its main food, so that more or less of it
 * changes what was tested.
 */
export function isMeasured(recipe: Recipe, word: string): boolean {
  const stem = word.toLowerCase().replace(/(?:ies|e?s|y)$/, "");
  const main = recipe.ingredients.find(({ role }) => role === "produce");
  return recipe.ingredients.some((one) => {
    const beside = one !== main && one.role !== "water";
    return beside && stem.length > 2 && one.name.toLowerCase().includes(stem);
  });
}
