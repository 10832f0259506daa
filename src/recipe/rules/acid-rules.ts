import { acidAgainstTested } from "../../reckon/acid.ts";
import { gramsOf } from "../../reckon/measure.ts";
import { G_PER_LB, ML_PER_CUP } from "../../reckon/units.ts";
import { cupsOf, parseAmount } from "../amount.ts";
import { JAR_CUPS } from "../jar-volume.ts";
import type { Ingredient, Recipe } from "../recipe.ts";
import { perJar } from "../scale.ts";
import { danger, type Finding, ingredientPlace, type Rule, SOURCES, warning } from "./finding.ts";

const TESTED_PERCENT = 5;
/** Measuring and household weights are no finer than this. */
const TOLERANCE = 0.01;

const isVinegar = (one: Ingredient) => one.role === "acid" && /vinegar/i.test(one.name);
const isCitrus = (one: Ingredient) => one.role === "acid" && /lemon|lime|citrus/i.test(one.name);

function cupsIn(recipe: Recipe, wanted: (one: Ingredient) => boolean): number {
  const chosen = recipe.ingredients.filter((one) => wanted(one) && !one.optional);
  return chosen.reduce((sum, one) => sum + (cupsOf(one.amount) ?? 0), 0);
}

/** Produce altogether, grams: weights as written, cups by household weights, else the yield. */
export function produceGrams(recipe: Recipe): number {
  let grams = 0;
  for (const one of recipe.ingredients) {
    if (one.role !== "produce" || one.optional) continue;
    const amount = parseAmount(one.amount ?? "");
    if (!amount || amount.kind === "count") continue;
    const quantity = amount.high * amount.perUnit;
    grams += amount.kind === "mass" ? quantity : (gramsOf(quantity, one.name) ?? 0);
  }
  return grams > 0 ? grams : recipe.yield.weightLb * G_PER_LB;
}

/** Cups of 5 percent vinegar that hold as much acid as the recipe's own. */
function vinegarCups(recipe: Recipe): number {
  const chosen = recipe.ingredients.filter((one) => isVinegar(one) && !one.optional);
  return chosen.reduce(
    (sum, one) => sum + ((cupsOf(one.amount) ?? 0) * (one.strengthPercent ?? 0)) / TESTED_PERCENT,
    0,
  );
}

/** What is wrong with a vinegar's strength: by its number, or by what its name says. */
function weakVinegar({ name, strengthPercent }: Ingredient): string | undefined {
  if (/home-?made|\bmy own\b/i.test(name)) {
    return "nobody knows the strength of homemade vinegar; take a bought one of 5 percent";
  }
  if (strengthPercent === undefined) {
    return "the vinegar's strength is not given; write strengthPercent, 5 on its label";
  }
  const named = Number(/(\d+(?:\.\d+)?) ?(?:%|percent)/i.exec(name)?.[1] ?? strengthPercent);
  const least = Math.min(named, strengthPercent);
  if (least >= TESTED_PERCENT) return undefined;
  return `the vinegar has ${least} percent acid; tested recipes take 5 or more`;
}

/** Vinegar under 5 percent, or of a strength nobody wrote down or can know. */
export const vinegarStrength: Rule = ({ recipe, shelf }) =>
  recipe.ingredients.filter(isVinegar).flatMap((one) => {
    const message = weakVinegar(one);
    const make = shelf ? danger : warning;
    return message
      ? [make("vinegar-strength", ingredientPlace(one), message, SOURCES.pickles)]
      : [];
  });

function againstTested(
  recipe: Recipe,
  mine: number,
  tested: number,
  testedLb: number,
): number | undefined {
  const share = (cups: number, produceG: number) => ({
    vinegarMl: cups * ML_PER_CUP,
    strengthPercent: TESTED_PERCENT,
    produceG,
  });
  const outcome = acidAgainstTested(
    share(mine, produceGrams(recipe)),
    share(tested, testedLb * G_PER_LB),
  );
  return outcome.ok ? outcome.value.value : undefined;
}

function place(recipe: Recipe, wanted: (one: Ingredient) => boolean): string {
  const found = recipe.ingredients.find(wanted);
  return found ? ingredientPlace(found) : "ingredients";
}

/** Less vinegar to the produce or to the water than the tested recipe has. */
export const vinegarDiluted: Rule = ({ recipe, formula }) => {
  const tested = formula?.vinegarCups;
  if (!formula || tested === undefined || recipe.class === "ferment") return [];
  const mine = vinegarCups(recipe);
  const where = place(recipe, isVinegar);
  const percent = againstTested(recipe, mine, tested, formula.produceLb);
  const findings: Finding[] = [];
  if (percent !== undefined && percent < 100 * (1 - TOLERANCE)) {
    const share = Math.round(percent);
    const message = `vinegar for the produce is ${share} percent of the tested recipe's`;
    findings.push(danger("vinegar-diluted", where, message, SOURCES.pickles));
  }
  const water = cupsIn(recipe, (one) => one.role === "water" && one.into !== "soak");
  const liquidShare = mine / (mine + water);
  const testedShare = tested / (tested + (formula.waterCups ?? 0));
  if (mine > 0 && liquidShare < testedShare * (1 - TOLERANCE)) {
    const message =
      `vinegar is ${Math.round(100 * liquidShare)} percent of the liquid; ` +
      `the tested recipe has ${Math.round(100 * testedShare)}`;
    findings.push(danger("vinegar-diluted", where, message, SOURCES.pickles));
  }
  return findings;
};

/** A brine of one's own is at least half vinegar. */
export const homeBrine: Rule = ({ recipe, formula, shelf }) => {
  if (formula || recipe.class !== "acidified") return [];
  const mine = vinegarCups(recipe);
  const water = cupsIn(recipe, (one) => one.role === "water" && one.into !== "soak");
  if (mine === 0 || mine >= water * (1 - TOLERANCE)) return [];
  const message = "a brine without a tested recipe takes at least as much vinegar as water";
  const make = shelf ? danger : warning;
  return [make("vinegar-diluted", place(recipe, isVinegar), message, SOURCES.brine)];
};

/** Juice pressed at home differs from fruit to fruit; bottled key lime juice is weaker. */
const UNSTEADY_JUICE = /\b(fresh|freshly|squeezed|key lime|meyer)\b/i;

/** Bottled lemon or lime juice as tested, not less of it and no vinegar in its place. */
export const citrusShort: Rule = ({ recipe, formula }) => {
  const tested = formula?.citrusCups;
  if (!formula || tested === undefined) return [];
  const bottled = (one: Ingredient) => isCitrus(one) && !UNSTEADY_JUICE.test(one.name);
  const mine = cupsIn(recipe, bottled);
  const percent = againstTested(recipe, mine, tested, formula.produceLb);
  if (percent === undefined || percent >= 100 * (1 - TOLERANCE)) return [];
  const share = Math.round(percent);
  const message = `bottled juice for the produce is ${share} percent of the tested recipe's`;
  return [danger("juice-short", place(recipe, isCitrus), message, SOURCES.tomatoes)];
};

/** Acid that must be in a quart of tomatoes, cups; a smaller jar takes its share. */
const TOMATO_QUART_CUPS: [RegExp, number, string][] = [
  [/citric/i, 0.5 / 48, "1/2 teaspoon of citric acid"],
  [/lemon/i, 2 / 16, "2 tablespoons of bottled lemon juice"],
  [/vinegar/i, 4 / 16, "4 tablespoons of vinegar"],
];

function tomatoFault(recipe: Recipe, acid: Ingredient): string | undefined {
  const rule = TOMATO_QUART_CUPS.find(([name]) => name.test(acid.name));
  if (!rule) return `${acid.name} was not tested for tomatoes`;
  if (UNSTEADY_JUICE.test(acid.name)) return "the acid of pressed juice varies; take it bottled";
  for (const jar of recipe.jars) {
    const cups = cupsOf(perJar(acid, jar)?.replace(/ \(.*/, "")) ?? 0;
    const needed = (rule[1] * JAR_CUPS[jar]) / JAR_CUPS.quart;
    if (cups < needed * (1 - TOLERANCE)) {
      return `too little acid in a ${jar}: a quart takes ${rule[2]}, a pint half of that`;
    }
  }
  return undefined;
}

/** Tomatoes by class, or under another class with no acid added; low-acid sauces go by pressure. */
function wantsTomatoAcid(recipe: Recipe): boolean {
  if (recipe.class === "tomato") return true;
  const tomatoes = recipe.ingredients.some(
    (one) => one.role === "produce" && /\btomato(es)?\b/i.test(one.name),
  );
  const acid = recipe.ingredients.some((one) => one.role === "acid" && !one.optional);
  return recipe.class !== "low-acid" && tomatoes && !acid;
}

/** Acid in every jar of tomatoes, pressure or not. */
export const tomatoAcid: Rule = ({ recipe, shelf }) => {
  if (!shelf || !wantsTomatoAcid(recipe)) return [];
  const acids = recipe.ingredients.filter((one) => one.role === "acid");
  if (!acids.some((one) => !one.optional)) {
    const message = "tomatoes need acid in every jar: 2 tablespoons of bottled lemon juice a quart";
    return [danger("tomato-acid", "ingredients", message, SOURCES.tomatoAcid)];
  }
  const findings = acids.flatMap((acid) => {
    const message = tomatoFault(recipe, acid);
    return message
      ? [danger("tomato-acid", ingredientPlace(acid), message, SOURCES.tomatoAcid)]
      : [];
  });
  if (!recipe.critical.some((factor) => factor.id === "acid-in-every-jar")) {
    const message = "no stage asks whether every jar got its acid";
    findings.push(danger("tomato-acid", "stages", message, SOURCES.tomatoAcid));
  }
  return findings;
};
