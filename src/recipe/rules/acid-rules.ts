import { acidAgainstTested } from "../../reckon/acid.ts";
import { VINEGAR_PERCENT } from "../../reckon/trade-numbers.ts";
import { G_PER_LB, ML_PER_CUP } from "../../reckon/units.ts";
import { cupsOf } from "../amount.ts";
import { cupsInBatch, gramsInBatch } from "../batch-amount.ts";
import { JAR_CUPS } from "../jar-volume.ts";
import type { TestedFormula } from "../process-table.ts";
import type { Ingredient, Recipe } from "../recipe.ts";
import { perJar } from "../scale.ts";
import {
  type CheckedRecipe,
  danger,
  type Finding,
  ingredientPlace,
  PUBLICATIONS,
  type Rule,
  warning,
} from "./finding.ts";
import { isVinegar, strengthOf, thinningCups, thinningLiquids, vinegarCups } from "./liquids.ts";
import { countedGrams, lowAcidGrams, produceGrams, produceOf } from "./produce-weight.ts";

/** Measuring and household weights are no finer than this. */
const TOLERANCE = 0.01;

const isCitrus = (one: Ingredient) => one.role === "acid" && /lemon|lime|citrus/i.test(one.name);

/** Vinegar without a label that says how strong it is. */
const UNLABELED =
  /home-?made|kombucha|scrap|dilut|\bwater(ed)?\b|\b(my|we|our|ours|ourselves|myself|own)\b/i;

/** What is wrong with a vinegar's strength: by its number, or by what its name says. */
function weakVinegar(vinegar: Ingredient): string | undefined {
  if (UNLABELED.test(vinegar.name)) {
    const bought = `${VINEGAR_PERCENT} percent vinegar from a shop`;
    return `nobody knows the strength of such vinegar; use ${bought}, undiluted`;
  }
  const percent = strengthOf(vinegar);
  if (percent === undefined) {
    return `the vinegar's strength is missing; give strengthPercent, ${VINEGAR_PERCENT} as labeled`;
  }
  if (percent >= VINEGAR_PERCENT) return undefined;
  return `the vinegar has ${percent} percent acid; tested recipes take ${VINEGAR_PERCENT} or more`;
}

/** Vinegar under 5 percent, or of unknown strength. */
export const vinegarStrength: Rule = ({ recipe, shelf }) =>
  recipe.ingredients.filter(isVinegar).flatMap((one) => {
    const message = weakVinegar(one);
    const make = shelf ? danger : warning;
    return message
      ? [make("vinegar-strength", ingredientPlace(one), message, PUBLICATIONS.pickles)]
      : [];
  });

/** Acid for the produce as a percentage of the tested recipe's; undefined where none is weighed. */
function againstTested(
  { made, formula }: Tested,
  mine: number,
  tested: number,
): number | undefined {
  const share = (cups: number, produceG: number) => ({
    vinegarMl: cups * ML_PER_CUP,
    strengthPercent: VINEGAR_PERCENT,
    produceG,
  });
  const outcome = acidAgainstTested(
    share(mine, countedGrams(made, formula)),
    share(tested, formula.produceLb * G_PER_LB),
  );
  return outcome.ok ? outcome.value.value : undefined;
}

/** The recipe as one pack makes it, with the formula its table was tested with. */
type Tested = { made: Recipe; formula: TestedFormula };

/** Every tested formula the recipe claims, not only its first table's. */
export function testedBy({ known }: CheckedRecipe): Tested[] {
  return known.flatMap(({ made, formula }) => (formula ? [{ made, formula }] : []));
}

function place(recipe: Recipe, wanted: (one: Ingredient) => boolean): string {
  const found = recipe.ingredients.find(wanted);
  return found ? ingredientPlace(found) : "ingredients";
}

function thinnedBelow(recipe: Recipe, testedShare: number): Finding[] {
  const mine = vinegarCups(recipe);
  const findings = thinningLiquids(recipe)
    .filter((one) => cupsInBatch(recipe, one, "high") === undefined)
    .map((one) => {
      const message = `how much ${one.name} is that? Write it in cups, quarts or gallons`;
      return danger("vinegar-diluted", ingredientPlace(one), message, PUBLICATIONS.pickles);
    });
  const share = mine / (mine + thinningCups(recipe));
  if (mine === 0 || share >= testedShare * (1 - TOLERANCE)) return findings;
  const message =
    `vinegar is ${Math.round(100 * share)} percent of the liquid; ` +
    `the tested recipe has ${Math.round(100 * testedShare)}`;
  findings.push(danger("vinegar-diluted", place(recipe, isVinegar), message, PUBLICATIONS.pickles));
  return findings;
}

/** Less vinegar relative to the produce or the liquid than a tested recipe has. */
export const vinegarDiluted: Rule = (subject) =>
  testedBy(subject).flatMap((one): Finding[] => {
    const { made, formula } = one;
    const tested = formula.vinegarCups;
    if (tested === undefined) return [];
    const findings = thinnedBelow(made, tested / (tested + (formula.waterCups ?? 0)));
    const percent = againstTested(one, vinegarCups(made), tested);
    if (percent === undefined || percent >= 100 * (1 - TOLERANCE)) return findings;
    const share = Math.round(percent);
    const message = `vinegar for the produce is ${share} percent of the tested recipe's`;
    return [
      danger("vinegar-diluted", place(made, isVinegar), message, PUBLICATIONS.pickles),
      ...findings,
    ];
  });

/** Produce of unknown weight cannot be weighed against acid or salt. */
export const unweighedProduce: Rule = (subject) =>
  testedBy(subject).flatMap(({ made }) =>
    produceOf(made)
      .filter((one) => gramsInBatch(made, one, "high") === undefined)
      .map((one) => {
        const message = `acid and salt go by weight; write how heavy ${one.name} is, as \`4 lb\``;
        return danger("produce-unweighed", ingredientPlace(one), message, PUBLICATIONS.pickles);
      }),
  );

/** A larger share of produce without acid than the tested recipe has. */
export const lowAcidShare: Rule = (subject) =>
  testedBy(subject).flatMap(({ made, formula }) => {
    if (formula.lowAcidLb === undefined) return [];
    const mine = lowAcidGrams(made) / produceGrams(made);
    const tested = formula.lowAcidLb / formula.produceLb;
    if (mine <= tested * (1 + TOLERANCE)) return [];
    const message =
      `low-acid vegetables are ${Math.round(100 * mine)} percent of the produce; ` +
      `the tested recipe has ${Math.round(100 * tested)}`;
    return [danger("low-acid-share", "ingredients", message, PUBLICATIONS.tomatoes)];
  });

/** A brine of one's own is at least half vinegar. */
export const homeBrine: Rule = (subject) => {
  const { recipe, shelf } = subject;
  if (testedBy(subject).length > 0 || recipe.class !== "acidified") return [];
  const mine = vinegarCups(recipe);
  if (mine === 0 || mine >= thinningCups(recipe) * (1 - TOLERANCE)) return [];
  const message = "a brine without a tested recipe takes at least as much vinegar as water";
  const make = shelf ? danger : warning;
  return [make("vinegar-diluted", place(recipe, isVinegar), message, PUBLICATIONS.brine)];
};

/** Juice pressed at home differs from fruit to fruit; bottled key lime juice is weaker. */
const UNSTEADY_JUICE = /\b(fresh|freshly|squeezed|key lime|meyer)\b/i;
const isBottled = ({ name }: Ingredient) => /\bbottled\b/i.test(name) && !UNSTEADY_JUICE.test(name);

/** Bottled lemon or lime juice as tested: no less of it, and no vinegar in its place. */
export const citrusShort: Rule = (subject) =>
  testedBy(subject).flatMap((one) => {
    const { made, formula } = one;
    const tested = formula.citrusCups;
    if (tested === undefined) return [];
    const bottled = made.ingredients.filter((i) => isCitrus(i) && isBottled(i) && !i.optional);
    const mine = bottled.reduce((sum, i) => sum + (cupsInBatch(made, i, "low") ?? 0), 0);
    const percent = againstTested(one, mine, tested);
    if (percent === undefined || percent >= 100 * (1 - TOLERANCE)) return [];
    const share = Math.round(percent);
    const message = `bottled juice for the produce is ${share} percent of the tested recipe's`;
    return [danger("juice-short", place(made, isCitrus), message, PUBLICATIONS.tomatoes)];
  });

/** Acid needed in a quart of tomatoes, cups; a smaller jar takes its share. */
const TOMATO_QUART_CUPS: [RegExp, number, string][] = [
  [/citric/i, 0.5 / 48, "1/2 teaspoon of citric acid"],
  [/lemon/i, 2 / 16, "2 tablespoons of bottled lemon juice"],
  [/vinegar/i, 4 / 16, "4 tablespoons of vinegar"],
];

function tomatoFault(recipe: Recipe, acid: Ingredient): string | undefined {
  const rule = TOMATO_QUART_CUPS.find(([name]) => name.test(acid.name));
  if (!rule) return `${acid.name} was not tested for tomatoes`;
  if (/lemon/i.test(acid.name) && !/citric/i.test(acid.name) && !isBottled(acid)) {
    return "the acid of fresh juice varies; use bottled juice, and write that it is bottled";
  }
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
    return [danger("tomato-acid", "ingredients", message, PUBLICATIONS.tomatoAcid)];
  }
  const findings = acids.flatMap((acid) => {
    const message = tomatoFault(recipe, acid);
    return message
      ? [danger("tomato-acid", ingredientPlace(acid), message, PUBLICATIONS.tomatoAcid)]
      : [];
  });
  if (!recipe.critical.some((factor) => factor.id === "acid-in-every-jar")) {
    const message = "no stage asks whether every jar got its acid";
    findings.push(danger("tomato-acid", "stages", message, PUBLICATIONS.tomatoAcid));
  }
  return findings;
};
