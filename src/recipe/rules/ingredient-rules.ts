import { gramsOf } from "../../reckon/measure.ts";
import { G_PER_LB, ML_PER_CUP } from "../../reckon/units.ts";
import { cupsOf, parseAmount } from "../amount.ts";
import type { Ingredient, Recipe } from "../recipe.ts";
import { produceGrams } from "./acid-rules.ts";
import { danger, type Finding, ingredientPlace, type Rule, SOURCES } from "./finding.ts";

const TOLERANCE = 0.02;
/** Salt a dry-salted ferment of one's own needs at least, share of the produce's weight. */
const LEAST_SALT_SHARE = 0.019;
const LIME_RINSES = 3;

/** Flour, starch, and the grains and noodles that give it off. */
const THICKENERS = [
  "flour roux starch cornstarch arrowroot tapioca",
  "rice barley oats pasta macaroni noodles?",
];
const THICKENING = new RegExp(`\\b(${THICKENERS.join(" ").replaceAll(" ", "|")})\\b`, "i");

/** Flour or starch keeps heat from the middle of a jar; no tested time covers it. */
export const thickener: Rule = ({ recipe, shelf }) => {
  if (!shelf) return [];
  return recipe.ingredients
    .filter((one) => one.role === "thickener" || (one.role !== "acid" && THICKENING.test(one.name)))
    .map((one) =>
      danger(
        "thickener",
        ingredientPlace(one),
        "flour or starch slows the heat; thicken it when the jar is opened",
        SOURCES.thickener,
      ),
    );
};

/** Oil in a shelf jar, and garlic kept in oil anywhere. */
export const oil: Rule = ({ recipe, shelf }) => {
  const fat = recipe.ingredients.find(
    (one) => one.role === "fat" || /\b(oil|lard|shortening)\b/i.test(one.name),
  );
  if (!fat) return [];
  const findings: Finding[] = [];
  const where = ingredientPlace(fat);
  if (recipe.ingredients.some((one) => /garlic/i.test(one.name) && one !== fat)) {
    const message = "garlic under oil can grow botulism, even chilled: make it fresh, keep it days";
    findings.push(danger("garlic-in-oil", where, message, SOURCES.oil));
  }
  if (shelf) {
    const message = "oil shields spores from the heat and creeps under lids; leave it out";
    findings.push(danger("oil", where, message, SOURCES.oil));
  }
  return findings;
};

function rinses(recipe: Recipe): number {
  const said = recipe.stages.filter((s) => /\brins/i.test(`${s.title} ${s.say}`));
  const thrice = said.some((s) =>
    /\b(three|3)\b[^.]*\btimes\b|\btimes\b[^.]*\b(three|3)\b/i.test(s.say),
  );
  return thrice ? LIME_RINSES : said.length;
}

/** Pickling lime left on the food uses up the acid: three rinses, each with an hour's soak. */
export const limeRinses: Rule = ({ recipe }) => {
  const lime = recipe.ingredients.find(
    (one) =>
      one.role === "lime" ||
      /\b(pickling|hydrated|slaked) lime\b|calcium hydroxide/i.test(one.name),
  );
  if (!lime || rinses(recipe) >= LIME_RINSES) return [];
  const message =
    "pickling lime is rinsed off three times, with an hour in fresh water each; " +
    `this recipe rinses ${rinses(recipe)} times`;
  return [danger("lime-rinses", ingredientPlace(lime), message, SOURCES.pickles)];
};

function saltGrams(recipe: Recipe): number {
  return recipe.ingredients
    .filter((one) => one.role === "salt" && !one.optional)
    .reduce((sum, one) => {
      const amount = parseAmount(one.amount ?? "");
      if (!amount || amount.kind === "count") return sum;
      const quantity = amount.low * amount.perUnit;
      return sum + (amount.kind === "mass" ? quantity : (gramsOf(quantity, one.name) ?? 0));
    }, 0);
}

function waterCups(recipe: Recipe): number {
  const water = (one: Ingredient) => one.role === "water" && !one.optional;
  return recipe.ingredients.filter(water).reduce((sum, one) => sum + (cupsOf(one.amount) ?? 0), 0);
}

/** Salt is what makes a ferment safe: no less than tested, by produce and by water. */
export const fermentSalt: Rule = ({ recipe, formula }) => {
  if (recipe.class !== "ferment") return [];
  const salt = recipe.ingredients.find((one) => one.role === "salt");
  const where = salt ? ingredientPlace(salt) : "ingredients";
  const grams = saltGrams(recipe);
  const produce = produceGrams(recipe);
  const needed = formula?.saltCups
    ? (gramsOf(formula.saltCups * ML_PER_CUP, "canning salt") ?? 0) / (formula.produceLb * G_PER_LB)
    : LEAST_SALT_SHARE;
  const findings: Finding[] = [];
  if (grams / produce < needed * (1 - TOLERANCE)) {
    const percent = ((100 * grams) / produce).toFixed(1);
    const tested = (100 * needed).toFixed(1);
    const message = `salt is ${percent} percent of the produce; tested is ${tested}`;
    findings.push(danger("ferment-salt", where, message, SOURCES.ferment));
  }
  const testedWater = formula?.waterCups;
  if (formula?.saltCups && testedWater) {
    const tested = (gramsOf(formula.saltCups * ML_PER_CUP, "canning salt") ?? 0) / testedWater;
    const water = waterCups(recipe);
    if (water > 0 && grams / water < tested * (1 - TOLERANCE)) {
      const message = "the brine holds less salt for its water than the tested recipe's";
      findings.push(danger("ferment-salt", where, message, SOURCES.ferment));
    }
  }
  return findings;
};
