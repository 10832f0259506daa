import type { SlotsOf } from "../../kitchen/command.ts";
import { type FoodGate, gateBegin, gateFood, gateWith } from "../../recipe/foods/food-gate.ts";
import type { Food } from "../../recipe/foods/foods.ts";
import { readSaidFood, varietyIn } from "../../recipe/foods/said-food.ts";
import type { Library } from "../../recipe/library.ts";
import type { Context } from "../context.ts";
import { type SpokenLot, titledRecipe } from "./spoken-lots.ts";

/** What may be begun of a lot that was said, checked against the foods of the library. */

type BeginSlots = SlotsOf["begin"];

/** A whole name of several words says which recipe; a single word may fit several. */
function isWholeName({ recipes, named, told }: SpokenLot): boolean {
  return recipes.length === 1 && (named.includes(" ") || told === true);
}

function gateOf(lot: SpokenLot, library: Library): FoodGate {
  const [id = ""] = lot.recipes;
  const recipe = library.recipes.get(id);
  if (!recipe || !isWholeName(lot)) {
    const gate = gateBegin(library, lot.said);
    const begun = gate.is === "tested" ? library.recipes.get(gate.recipe) : undefined;
    return begun && isWith(lot) ? gateWith(library, begun, lot.beside) : gate;
  }
  if (isWith(lot)) return gateWith(library, recipe, lot.beside);
  if (lot.beside !== "") return gateFood(library, recipe, lot.beside);
  const whole = gateBegin(library, lot.said);
  const same = whole.is === "tested" && whole.recipe === id;
  return same ? whole : { is: "tested", recipe: id, foods: [], options: recipe.processes };
}

/** Something goes in with it; a name with a capital letter is a variety's all the same. */
function isWith({ joined, beside }: SpokenLot): boolean {
  return joined === true && beside !== "" && !/^\p{Lu}/u.test(beside);
}

/** Things made of any food (`jam`): an unknown word before one is the food. */
const OF_ANY_FOOD = ["jam", "jelly", "marmalade", "butter", "sauce", "salsa", "juice", "syrup"];

/** "The violet jam": a form alone is no recipe for whatever is named with it. */
function isMadeOf({ named, said }: SpokenLot): boolean {
  const { forms } = readSaidFood(said);
  return !named.includes(" ") && OF_ANY_FOOD.some((form) => forms.has(form));
}

function foodSlots(foods: readonly Food[], variety: string | undefined) {
  return {
    ...(foods.length > 0 ? { foods: foods.map(({ name }) => name) } : {}),
    ...(variety === undefined ? {} : { variety }),
  };
}

/** Kept while it is asked which recipe is meant; the kitchen checks them against the one chosen. */
function foodAndVariety({ said, variety, recipes }: SpokenLot) {
  const foods = [...new Set(readSaidFood(said).heads.map(({ food }) => food))];
  const named = variety === undefined && recipes.length > 0 ? undefined : varietyIn(said, foods);
  return foodSlots(foods, named);
}

/** A name with capitals is kept whole, whatever its words mean alone: "Half Runner". */
function wholeName(said: string | undefined, found: string | undefined): string | undefined {
  const whole = said?.split(" ").every((word) => /^\p{Lu}/u.test(word));
  return said && found && whole && said.includes(found) ? said : found;
}

/** What the gate makes of it; undefined where it knows none of the words. */
function heldSlots(lot: SpokenLot, library: Library): BeginSlots | undefined {
  const gate = gateOf(lot, library);
  const { variety, recipes } = lot;
  switch (gate.is) {
    case "tested": {
      // Words that are part of a recipe's name are not a variety.
      const named =
        variety === undefined && recipes.length > 0 ? undefined : wholeName(variety, gate.variety);
      return { recipe: gate.recipe, ...foodSlots(gate.foods, named) };
    }
    // The kitchen knows whether that was asked before.
    case "name-or-food":
      return { recipe: gate.recipe, variety: gate.name };
    case "which":
      return {
        named: lot.named,
        choices: [...(recipes.length > 1 ? recipes : gate.recipes)],
        ...foodAndVariety(lot),
      };
    case "untested":
      return { named: lot.named, untested: gate };
    case "unknown":
      return isMadeOf(lot) || isWith(lot) ? { named: lot.said } : undefined;
  }
}

/** By recipe names alone. */
function namedSlots(lot: SpokenLot, context: Context): BeginSlots {
  const recipe = titledRecipe(lot, context);
  return {
    ...(recipe ? { recipe } : { named: lot.named, choices: lot.recipes }),
    ...(lot.variety ? { variety: lot.variety } : {}),
  };
}

/** Of several recipes, the one that is put up as was said: "in the pressure canner". */
function inThatWay(lot: SpokenLot, { library }: Context): SpokenLot {
  const { method, pack, recipes } = lot;
  if (!library || recipes.length < 2 || (!method && !pack)) return lot;
  const fit = recipes.filter((id) =>
    library.recipes.get(id)?.processes.some((one) => {
      return (!method || one.method === method) && (!pack || one.pack === pack);
    }),
  );
  return fit.length === 1 ? { ...lot, recipes: fit, told: true } : lot;
}

/** The recipe, foods and variety of a lot, or what was said and why it fits none. */
export function begunBy(spoken: SpokenLot, context: Context): BeginSlots {
  const lot = inThatWay(spoken, context);
  const held = context.library && heldSlots(lot, context.library);
  const { weightLb, jar, pack, method } = lot;
  return {
    ...(held ?? namedSlots(lot, context)),
    ...(weightLb === undefined ? {} : { weightLb }),
    ...(jar ? { jar } : {}),
    ...(pack ? { pack } : {}),
    ...(method ? { method } : {}),
  };
}
