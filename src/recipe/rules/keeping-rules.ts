import {
  IN_OIL_DAYS,
  STRONGEST_BRINE_PERCENT,
  WARMEST_FERMENT_F,
} from "../../reckon/trade-numbers.ts";
import { gramsInBatch } from "../batch-amount.ts";
import { foodsNamed, withoutDenied } from "../foods/name-foods.ts";
import type { Ingredient, Recipe, Stage } from "../recipe.ts";
import { isFat, isThickener } from "./additions.ts";
import {
  type CheckedRecipe,
  danger,
  type Finding,
  ingredientPlace,
  PUBLICATIONS,
  type Rule,
  warning,
} from "./finding.ts";
import { hasFood } from "./keeping.ts";
import { phrases } from "./phrases.ts";
import { foodsOf, produceGrams } from "./produce-weight.ts";
import { isAtTable, statementsOf, tells } from "./statements.ts";

/*
 * Dangers of how a food is kept, whatever its processes say.
 */

const DAY_MINUTES = 24 * 60;

/** Food for the shelf by its words, and no process behind it. */
export const shelfWithoutProcess: Rule = ({ recipe, keeping }) => {
  const { said } = keeping;
  if (!said || !hasFood(recipe)) return [];
  const meant =
    said.word === "jars"
      ? "closed jars, and nothing says that they are kept cold"
      : `"${said.word}": kept without cold`;
  const message =
    `${meant}, and no tested process stands behind it: refrigerate or freeze it, and say so, or ` +
    "take a recipe with a tested table";
  return [danger("no-process", said.where, message, PUBLICATIONS.principles)];
};

const EGG = /\beggs?\b/;
const WARM = phrases("room temp(erature)?", "(on|at) the (counter|bar)", "leave ~3 out");

/** Eggs, milk and cheese keep in the cold alone, pickled or not, and while they wait. */
export const eggsAndDairy: Rule = ({ recipe, shelf }) =>
  recipe.ingredients.flatMap((one): Finding[] => {
    if (!foodsOf(one).some(({ name }) => name === "egg or milk") || isThickener(one)) return [];
    const warm = statementsOf(recipe).find((one) => tells(one, WARM));
    const stands = EGG.test(one.name.toLowerCase()) ? warm : undefined;
    if (!shelf && !stands) return [];
    const message =
      `${one.name}: no process at home makes eggs or dairy safe out of the cold, in vinegar or ` +
      "not; keep them in the refrigerator from the first hour";
    return [
      danger("eggs-dairy", stands?.where ?? ingredientPlace(one), message, PUBLICATIONS.eggs),
    ];
  });

const BAKED = phrases(
  "cakes?|breads?|brownies|muffins?|loaf|loaves|gingerbread|fruitcake|bak(e|ed|ing)",
);

/** Cake and bread closed in their jars: moist, low in acid, and never processed. */
export const bakedInJars: Rule = ({ recipe, shelf }) => {
  const flour = recipe.ingredients.find((one) => /\bflour|batter|dough\b/i.test(one.name));
  const said = statementsOf(recipe).find((one) => tells(one, BAKED) && !isAtTable(one.text));
  if (!shelf || !flour || !said) return [];
  const message =
    "cake and bread in a closed jar are moist and low in acid, and no process was tested for " +
    "them: bake them in a pan, and freeze what is to keep";
  return [danger("baked-in-jars", said.where, message, PUBLICATIONS.baked)];
};

const UNDER_OIL = phrases(
  "(in|under|with) ~4 oil",
  "(cover|top|fill|drown|pour)* ~4 oil",
  "oil ~3 (keeps|over|on top|to cover)",
  "confit",
  "(garlic|herb|basil|chil[ei]|pepper) oil",
);

/** What would grow botulism under oil: moist vegetables, garlic and herbs. */
function spoilsUnderOil(one: Ingredient): boolean {
  const foods = foodsNamed(withoutDenied(one.name));
  const kinds = ["vegetable", "herb", "any fish", "any meat"];
  return !isFat(one) && foods.some(({ kind, name }) => kinds.includes(kind) || name === "tomato");
}

/** Longest that it is kept, days; the stage's own words where they name weeks or months. */
function daysKept({ recipe, kinds }: CheckedRecipe): number {
  const kept = recipe.stages.filter((stage) => isKeeping(kinds, stage));
  return Math.max(
    ...kept.map(
      ({ window, typicalMinutes }) => (window?.maxMinutes ?? typicalMinutes) / DAY_MINUTES,
    ),
    0,
  );
}

const isKeeping = (kinds: CheckedRecipe["kinds"], { kind }: Stage) =>
  kinds[kind].length === "usual" && kinds[kind].role === null;

/** Soaked for a day in citric acid, as published for garlic and herbs that go into oil. */
function isAcidified({ recipe, kinds }: CheckedRecipe): boolean {
  const citric = recipe.ingredients.some(({ name }) => /\bcitric acid\b/i.test(name));
  return (
    citric &&
    recipe.stages.some((stage) => {
      const soak = stage.window?.minMinutes ?? stage.typicalMinutes;
      return kinds[stage.kind].restsAsTested && soak >= DAY_MINUTES;
    })
  );
}

/** Garlic, herbs and vegetables under oil, but for four cold days or in the freezer. */
export const underOil: Rule = (subject) => {
  const { recipe, keeping } = subject;
  const oil = recipe.ingredients.find(
    (one) => one.role === "fat" || /\boil\b/i.test(withoutDenied(one.name)),
  );
  const food = recipe.ingredients.find(
    (one) => spoilsUnderOil(one) || /\bgarlic in\b/i.test(one.name),
  );
  if (!oil || !food || keeping.place === "frozen" || keeping.place === "dried") return [];
  if (keeping.place === "cold" && isAcidified(subject)) return [];
  const garlic = recipe.ingredients.some(({ name }) => /\bgarlic\b/i.test(withoutDenied(name)));
  // With a process, all fat is a danger by its own rule; garlic is the worst of it.
  if (recipe.processes.length > 0 && !garlic) return [];
  const days = daysKept(subject);
  if (keeping.place === "cold" && days <= IN_OIL_DAYS) return [];
  const said = statementsOf(recipe).some((one) => tells(one, UNDER_OIL));
  const message =
    `${food.name} under oil can grow botulism without a sign, even chilled: refrigerate it for ` +
    `${IN_OIL_DAYS} days at most, or freeze it`;
  const make = keeping.place === "shelf" || garlic || said ? danger : warning;
  const rule = garlic ? "garlic-in-oil" : "food-in-oil";
  return [make(rule, ingredientPlace(oil), message, PUBLICATIONS.inOil)];
};

/** A room's degrees, and not a limit or an oven's. */
const DEGREES =
  /(?<!\b(?:above|over|under|below|than|to) )\b(8[1-9]|9\d|10\d|11[0-5]) ?(?:°|degrees?|f\b)/;

/** A ferment told or written warmer than any published one. */
export const fermentTooWarm: Rule = ({ recipe, known, kinds }) => {
  const crock = recipe.stages.find(({ kind }) => kinds[kind].thermometer === "culture");
  if (!crock) return [];
  const tested = known.some(({ formula }) => formula?.fermentF);
  const said = statementsOf(recipe).find(
    (one) => (!one.stage || one.stage === crock) && tells(one, DEGREES),
  );
  const spoken = Number(DEGREES.exec(said?.text ?? "")?.[1] ?? 0);
  const warmest = Math.max(tested ? 0 : (crock.temperatureF?.max ?? 0), spoken);
  if (warmest <= WARMEST_FERMENT_F) return [];
  const message =
    `${warmest} degrees is too warm: above ${WARMEST_FERMENT_F} a ferment softens and spoils ` +
    "before it is sour; keep it at 60 to 75";
  const where = warmest === spoken && said ? said.where : `stages.${crock.id}`;
  return [danger("ferment-temperature", where, message, PUBLICATIONS.ferment)];
};

/** So much salt that nothing sours, and no acid forms. */
export const fermentTooSalty: Rule = ({ recipe }) => {
  const salt = recipe.ingredients.find(({ role }) => role === "salt");
  if (recipe.class !== "ferment" || !salt) return [];
  const grams = gramsInBatch(recipe, salt, "high") ?? 0;
  const all = grams + produceGrams(recipe) + waterGrams(recipe);
  const percent = (100 * grams) / all;
  if (percent <= STRONGEST_BRINE_PERCENT) return [];
  const message =
    `salt is ${percent.toFixed(0)} percent of all in the crock; above ` +
    `${STRONGEST_BRINE_PERCENT} hardly anything sours: take the tested salt, 2 to 5 percent`;
  return [danger("ferment-salt", ingredientPlace(salt), message, PUBLICATIONS.strongBrine)];
};

function waterGrams(recipe: Recipe): number {
  return recipe.ingredients
    .filter(({ role }) => role === "water")
    .reduce((sum, one) => sum + (gramsInBatch(recipe, one, "low") ?? 0), 0);
}
