import { gramsInBatch } from "../batch-amount.ts";
import { gateTitle } from "../foods/food-gate.ts";
import { type Food, isLowAcid } from "../foods/foods.ts";
import { withoutDenied } from "../foods/name-foods.ts";
import {
  neighborOf,
  neighborSaid,
  producedFoods,
  saidIn,
  wasTested,
} from "../foods/tested-foods.ts";
import { type Neighbor, type ProcessTable, sourceLine } from "../process-table.ts";
import type { Ingredient, Recipe } from "../recipe.ts";
import { isAddition } from "./additions.ts";
import {
  danger,
  type Finding,
  ingredientPlace,
  optionPlace,
  PUBLICATIONS,
  type Rule,
} from "./finding.ts";
import { isWater } from "./liquids.ts";
import { foodsOf, isSeasoning, mainGrams } from "./produce-weight.ts";

/** Something under a name unknown to the check may be at most this share of the produce. */
const UNKNOWN_SHARE = 0.05;
/** Not food, in any amount: other rules measure it. */
const PLAIN =
  /\b(vinegar|acid|juice|salt|sugar|honey|syrup|molasses|sweetener|stevia|pectin|wine)s?\b/i;

/**
 * Low-acid food, by its class or by what is in it, in any process other than pressure. Acid
 * changes that only in an acidified recipe, whose acid is measured against the produce: the lemon
 * juice in a quart of tomatoes is enough for the tomatoes alone.
 */
export const lowAcidBoilingWater: Rule = ({ recipe, known }) => {
  const acid =
    recipe.class === "acidified" &&
    recipe.ingredients.some((one) => one.role === "acid" && !one.optional);
  const found = recipe.ingredients.find(
    (one) => foodsOf(one).some(isLowAcid) && !isSeasoning(recipe, one),
  );
  const bare = found && !acid && recipe.class !== "ferment" && recipe.class !== "seed";
  if (recipe.class !== "low-acid" && !bare) return [];
  const food = found?.name ?? recipe.title;
  // A juice was tested with so much of other vegetables: their share has a rule of its own.
  const measured = known.filter(({ table, formula }) => table.mixed && formula?.lowAcidLb);
  return recipe.processes
    .filter((option) => option.method !== "pressure")
    .filter((option) => recipe.class === "low-acid" || measured.every((m) => m.option !== option))
    .map((option) =>
      danger(
        "low-acid-boiling-water",
        optionPlace(option),
        `${food}: low-acid food is safe on a shelf only by pressure; botulism survives boiling`,
        PUBLICATIONS.principles,
      ),
    );
};

/**
 * Broth covers low-acid food as water does, and fruit juice covers fruit; anywhere else they are
 * food themselves.
 */
function covers(recipe: Recipe, one: Ingredient, food: Food): boolean {
  const { kind } = food;
  if (recipe.class === "low-acid") return kind === "broth";
  return (
    recipe.class === "acid" && kind === "fruit" && !isLowAcid(food) && /\bjuice\b/i.test(one.name)
  );
}

function because(name: string, neighbor: Neighbor | undefined): string {
  return neighbor ? `not for ${name}. ${neighbor.why}` : `not for ${name}`;
}

/** What is wrong with an ingredient by the table; undefined where the table was tested for it. */
function faultOf(table: ProcessTable, recipe: Recipe, one: Ingredient): string | undefined {
  const foods = foodsOf(one);
  const other = foods.find((food) => !wasTested(table, food) && !covers(recipe, one, food));
  if (other && !isSeasoning(recipe, one)) return because(one.name, neighborOf(table, other));
  if (one.role === "produce" && foods.length === 0) {
    return `and ${one.name} names no food known here; write which it is, as \`Roma tomatoes\``;
  }
  const neighbor = neighborSaid(table, one.name);
  if (foods.length > 0 && neighbor) return because(one.name, neighbor);
  if (foods.length > 0 || PLAIN.test(one.name)) return undefined;
  const grams = one.role === "spice" && !one.amount ? 0 : (gramsInBatch(recipe, one, "low") ?? 0);
  const much = UNKNOWN_SHARE * mainGrams(recipe);
  return grams > much && !isWater(one) ? `not with this much ${one.name}` : undefined;
}

/** Another food's time is not a tested time: the table must have been tested for every food. */
export const untestedFood: Rule = ({ recipe, known }) =>
  recipe.ingredients
    .filter((one) => !isAddition(one))
    .flatMap((one) => {
      for (const { table, made } of known) {
        const fault = made.ingredients.includes(one) && faultOf(table, made, one);
        if (!fault) continue;
        const message = `the table was tested for ${table.food}, ${fault}`;
        return [danger("untested-food", ingredientPlace(one), message, sourceLine(table.source))];
      }
      return [];
    });

function wordsOf({ title, ingredients, stages }: Recipe): string {
  const said = stages.map((stage) => `${stage.title}. ${stage.say}`);
  return [title, ...ingredients.map((one) => one.name), ...said].join(". ");
}

/** A food in another form takes another time: whole is not crushed, one food alone is not soup. */
export const untestedForm: Rule = ({ known }) =>
  known.flatMap(({ option, table, made }): Finding[] => {
    const place = optionPlace(option);
    const source = sourceLine(table.source);
    if (table.says && !saidIn(wordsOf(made), table.says)) {
      const lacking = `and nothing here says "${table.says[0]}"`;
      const message = `the table was tested for ${table.food}, ${lacking}`;
      return [danger("untested-food", place, message, source)];
    }
    const neighbor = neighborSaid(table, made.title);
    if (neighbor) {
      const fault = because(made.title, neighbor);
      const message = `the table was tested for ${table.food}, ${fault}`;
      return [danger("untested-food", "title", message, source)];
    }
    const foods = new Set(made.ingredients.flatMap((one) => foodsOf(one).map(({ name }) => name)));
    foods.delete("broth");
    if (!table.mixed || foods.size > 1) return [];
    const message = `the table was tested for ${table.food}, not for one food alone`;
    return [danger("untested-food", place, message, source)];
  });

/** A recipe named for a food that none of its tables was tested for and no ingredient names. */
export const untestedTitle: Rule = ({ recipe, tables, known }) => {
  const food = gateTitle(recipe, tables);
  const [first] = known;
  if (!food || !first || known.some(({ table }) => wasTested(table, food))) return [];
  if (producedFoods(recipe).all.includes(food)) return [];
  const fault = because(recipe.title, neighborOf(first.table, food));
  const message = `the table was tested for ${first.table.food}, ${fault}`;
  return [danger("untested-food", "title", message, sourceLine(first.table.source))];
};

const UNSOUND = /\b(dead|frost\w*)\b.*\bvines?\b|\b(mold\w*|rott\w*|spoil\w*|decay\w*|blight\w*)\b/;

/** Unsound food may have lost its acid: the times are for sound food. */
export const unsound: Rule = ({ recipe, shelf }) =>
  recipe.ingredients
    .filter((one) => shelf && foodsOf(one).length > 0 && UNSOUND.test(withoutDenied(one.name)))
    .map((one) => {
      const message = "spoiled food, and tomatoes from dead vines, may have lost their acid";
      return danger("unsound-produce", ingredientPlace(one), message, PUBLICATIONS.tomatoes);
    });
