import { gramsOf } from "../../reckon/measure.ts";
import { G_PER_LB, ML_PER_CUP } from "../../reckon/units.ts";
import { cupsInBatch, gramsInBatch } from "../batch-amount.ts";
import type { TestedFormula } from "../process-table.ts";
import type { Recipe } from "../recipe.ts";
import { testedBy } from "./acid-rules.ts";
import { isAlkali, isCanningPowder, isFat, isLime, isThickener } from "./additions.ts";
import {
  type CheckedRecipe,
  danger,
  type Finding,
  ingredientPlace,
  optionPlace,
  PUBLICATIONS,
  type Rule,
  warning,
} from "./finding.ts";
import { thinningCups } from "./liquids.ts";
import { produceGrams } from "./produce-weight.ts";

const TOLERANCE = 0.02;
/** The least salt for a dry-salted ferment of one's own, as a share of the produce's weight. */
const LEAST_SALT_SHARE = 0.019;
const LIME_RINSES = 3;

/** Butter that keeps jam from foaming. */
const FOAM_BUTTER_CUPS = 1 / 48;

/** Flour or starch keeps heat from the middle of a jar; no tested time covers it. */
export const thickener: Rule = ({ recipe, shelf }) => {
  if (!shelf) return [];
  return recipe.ingredients
    .filter(isThickener)
    .map((one) =>
      danger(
        "thickener",
        ingredientPlace(one),
        `${one.name}: flour, starch, pasta, rice and bread slow the heat; leave it out, and add ` +
          "it when the jar is opened",
        PUBLICATIONS.thickener,
      ),
    );
};

/** Fat in a shelf jar. */
export const oil: Rule = ({ recipe, shelf }) => {
  const fat = recipe.ingredients.find(isFat);
  if (!fat || !shelf) return [];
  const where = ingredientPlace(fat);
  const cups = cupsInBatch(recipe, fat, "high") ?? Number.POSITIVE_INFINITY;
  if (recipe.class === "jam" && cups <= FOAM_BUTTER_CUPS) {
    const message = "this little fat only settles the foam; more would creep under the lids";
    return [warning("oil", where, message, PUBLICATIONS.oil)];
  }
  const why = "fat shields spores from the heat and creeps under lids; leave it out";
  const message = `${fat.name}: ${why}`;
  return [danger("oil", where, message, PUBLICATIONS.oil)];
};

/** Powders sold or told as a preservative, among the ingredients. */
export const canningPowder: Rule = ({ recipe }) =>
  recipe.ingredients.filter(isCanningPowder).map((one) => {
    const message =
      `${one.name} neither acidifies enough nor takes the place of the process; leave it out and ` +
      "use the tested acid and time";
    return danger("canning-powder", ingredientPlace(one), message, PUBLICATIONS.principles);
  });

/** Rinsing something other than food does not count. */
const RINSED_THING =
  /\brins\w*( off| out)?( the| your| all)? (jars?|lids?|colander|crock|pot|bowl|rims?|hands)\b/i;
const THREE_RINSES = /\brins[^.]*\b(three|3) times\b|\b(three|3) (times[^.,]*\brins|rins)/i;
const HOUR = /\b(an|one|1|full|each)[ -]hour\b|\bhour each\b|\b60 min|\b1 h\b/i;

/** How many rinses the stages ask for, and whether the food stands in fresh water for an hour. */
function rinsing({ recipe, kinds }: CheckedRecipe): { rinses: number; hours: boolean } {
  const texts = recipe.stages.map((stage) => `${stage.title}. ${stage.say}`);
  const sentences = texts.flatMap((text) => text.split(/[.;]/));
  const rinsed = sentences.filter((said) => /\brins/i.test(said) && !RINSED_THING.test(said));
  const thrice = rinsed.some((said) => THREE_RINSES.test(said) && !/\bstir/i.test(said));
  const hours = recipe.stages.some((stage, index) => {
    const text = texts[index] ?? "";
    const rests =
      kinds[stage.kind].thermometer === "room" &&
      (stage.window?.minMinutes ?? stage.typicalMinutes) >= 60;
    return /\brins|fresh/i.test(text) && (HOUR.test(text) || rests);
  });
  return { rinses: thrice ? LIME_RINSES : rinsed.length, hours };
}

/** Pickling lime left on the food uses up the acid: three rinses, each with an hour's soak. */
export const limeRinses: Rule = (subject) => {
  const lime = subject.recipe.ingredients.find(isLime);
  if (!lime) return [];
  const { rinses, hours } = rinsing(subject);
  if (rinses >= LIME_RINSES && hours) return [];
  const message =
    "pickling lime is rinsed off three times, with an hour in fresh water each; this recipe " +
    (rinses >= LIME_RINSES ? "has no such hour" : `rinses ${rinses} times`);
  return [danger("lime-rinses", ingredientPlace(lime), message, PUBLICATIONS.pickles)];
};

/** Soda and lye use up the acid that the time was tested with. */
export const alkali: Rule = ({ recipe, shelf }) => {
  if (!shelf || recipe.class === "low-acid") return [];
  return recipe.ingredients.filter(isAlkali).map((one) => {
    const message = `${one.name} uses up the acid that keeps this food safe; leave it out`;
    return danger("alkali", ingredientPlace(one), message, PUBLICATIONS.alkali);
  });
};

/** Salts that do not keep a ferment safe. */
const NO_SALT = /substitute|potassium|low[- ]sodium|reduced|lite\b|light salt/i;

/** Grams of salt that is sure to go in and of the right kind; what is poured off does not count. */
function saltGrams(recipe: Recipe, soaks: boolean): number {
  return recipe.ingredients
    .filter((one) => one.role === "salt" && !one.optional && !NO_SALT.test(one.name))
    .filter((one) => soaks || !/soak|rins/i.test(one.into ?? ""))
    .reduce((sum, one) => sum + (gramsInBatch(recipe, one, "low") ?? 0), 0);
}

const testedSaltGrams = (cups: number) => gramsOf(cups * ML_PER_CUP, "canning salt") ?? 0;

/** Salt of a tested recipe as a share of its produce; undefined where it names none. */
function testedSaltShare({ saltCups, produceLb }: TestedFormula): number | undefined {
  return saltCups ? testedSaltGrams(saltCups) / (produceLb * G_PER_LB) : undefined;
}

function saltOf(recipe: Recipe): string {
  const salt = recipe.ingredients.find((one) => one.role === "salt");
  return salt ? ingredientPlace(salt) : "ingredients";
}

/** Less salt for the produce, or for the water of a brine, than tested; one finding each. */
function saltShort(made: Recipe, formula: TestedFormula | undefined): Finding[] {
  const grams = saltGrams(made, false);
  const produce = produceGrams(made);
  const needed = (formula && testedSaltShare(formula)) ?? LEAST_SALT_SHARE;
  const findings: Finding[] = [];
  if (grams / produce < needed * (1 - TOLERANCE)) {
    const percent = ((100 * grams) / produce).toFixed(1);
    const tested = (100 * needed).toFixed(1);
    const message = `salt is ${percent} percent of the produce; tested is ${tested}`;
    findings.push(danger("ferment-salt", saltOf(made), message, PUBLICATIONS.ferment));
  }
  if (!formula?.saltCups || !formula.waterCups) return findings;
  const tested = testedSaltGrams(formula.saltCups) / formula.waterCups;
  const water = thinningCups(made);
  if (water > 0 && grams / water < tested * (1 - TOLERANCE)) {
    const message = "the brine holds less salt for its water than the tested recipe's";
    findings.push(danger("ferment-salt", saltOf(made), message, PUBLICATIONS.ferment));
  }
  return findings;
}

/** Salt is what makes a ferment safe: no less than tested, relative to produce and to water. */
export const fermentSalt: Rule = (subject) => {
  if (subject.recipe.class !== "ferment") return [];
  const tested = testedBy(subject).filter(({ formula }) => formula.saltCups);
  if (tested.length === 0) return saltShort(subject.recipe, undefined);
  return tested.flatMap(({ made, formula }) => saltShort(made, formula));
};

/** Pickles with less salt than tested are not pasteurized at low temperature. */
export const pasteurizedSalt: Rule = (subject) => {
  const { recipe } = subject;
  const cool = recipe.processes.find((option) => option.method === "low-temperature");
  if (!cool || recipe.class === "ferment") return [];
  return testedBy(subject).flatMap(({ made, formula }) => {
    const needed = testedSaltShare(formula);
    if (needed === undefined) return [];
    if (saltGrams(made, true) / produceGrams(made) >= needed * (1 - TOLERANCE)) return [];
    const message =
      "low-temperature pasteurization was not tested with less salt; use boiling water, and " +
      "take it out of the processes";
    return [danger("pasteurization", optionPlace(cool), message, PUBLICATIONS.reducedSalt)];
  });
};
