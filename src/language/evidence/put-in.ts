/** What a sentence says went into the jars: foods, thickeners, another sort, more or less of it. */

import type { Evidence } from "../../kitchen/command.ts";
import { foodsNamed } from "../../recipe/foods/name-foods.ts";
import { isAddition } from "../../recipe/rules/additions.ts";
import { isSeasoningFood } from "../../recipe/rules/produce-weight.ts";

/** Beside a food: that it is what is being put up, or part of it. */
const MIXED = new RegExp(
  "\\b(half(?! (off|on|way|past|full|out))|third|quarter|mostly|instead|really|not|threw|" +
    "tossed|using|use up|used up|" +
    "went in|rid of)\\b|^with\\b|\\bin (it|this|there|these|with|each jar|every jar)\\b|" +
    "\\bpart of (it|this)\\b|" +
    "\\b(made|makes|gave|gives|turned|thickened|stretched|sweetened|swapped|replaced)\\b",
);

const PUT =
  "added|add|threw|tossed|slipped|snuck|dumped|stirred|mixed|put|popped|chucked|whisked|dropped|" +
  "melted|folded|blended|poured|sprinkled|bulked|padded|stretched|thickened";
/** That something went in, whether or not it is known as a food here. */
const ADDED = new RegExp(
  `\\b(${PUT})( \\w+){1,8} (in|into|with|to)\\b|\\b(went|got|fell|dropped|landed) (in|into) ` +
    "(with|it|them|there|these|those|the jars?)\\b|\\b(jars?|pints?|quarts?) got\\b",
);
/** The same of a food that is named: "whisked in a bit of cornstarch", "thickened with flour". */
const PUT_FOOD = new RegExp(`\\b(${PUT})( \\w+){0,2} (in|into|with|up with)\\b`);

/** Butter that stands alone is no food of a recipe's name, as apple butter is. */
const FAT =
  /(?:^|\b(?:some|the|mostly|with|added|in|of|and|melted) )(?<!\bbread and )(butter|margarine)\b/;

/** A sort of the food by its color or origin: "these are the white ones", "they are white". */
const OF_A_SORT = new RegExp(
  "\\b(?:these|those|they|it|some|half|most|few|ones?)(?: \\w+){0,3} (?:are|is|were)" +
    "(?: (?:the|all|really|actually|mostly|of|an?))* (\\w+)(?: (?:ones?|kinds?|sorts?|types?)\\b|" +
    "(?: (?:actually|by the way|though))?$)",
);

/** What a recipe measures and nobody cuts up, so that half of it is less of it. */
const MEASURED = "sugar|salt|honey|pectin|juice";
/** More or less of something than the recipe has. */
const AMOUNT = new RegExp(
  "\\b(?:doubled|halved|tripled|skimped on|heavy on|easy on|twice|double) (?:up )?(?:on )?" +
    "(?:the|as much|as many) (\\w+)\\b|" +
    "\\b(?:extra|twice as much|twice as many|half as much|half as many) (?:of the )?" +
    "(?!jars?\\b)(\\w+)\\b|" +
    "\\b(?:put|added|used|threw|chucked|tossed)(?: \\w+){0,6} more (?!jars?\\b)(\\w+)\\b|" +
    "\\b(?:swapped|replaced|substituted)(?: \\w+){1,4} (?:for|with) the (\\w+)\\b|" +
    `\\b(?:half|cut|less|skipped|left out) (?:back on |of )?(?:the )?(${MEASURED})\\b`,
);
/** A seasoning in an amount too small to matter. */
const IN_BULK = /\b(?:heads?|bulbs?|cups?|pounds?) of \w+/g;

/** Whether something is said to have gone in. */
export function isAdded(all: string): boolean {
  return ADDED.test(all);
}

/** Whether what is named is said to be what is put up, or to be in it. */
function isMixed(all: string): boolean {
  return MIXED.test(all) || PUT_FOOD.test(all) || ADDED.test(all);
}

/** Starch, fat and the like, by their words. */
function additivesIn(all: string): string[] {
  const words = all.split(" ");
  return words.filter((name) => name !== "butter" && isAddition({ id: "", name, role: "other" }));
}

/** The foods, thickeners and fats that are named. */
export function foodsIn(all: string): string[] {
  const [, fat] = FAT.exec(all) ?? [];
  const named = foodsNamed(all).filter(({ kind }) => kind !== "water");
  const bulk = (all.match(IN_BULK) ?? []).filter((one) => foodsNamed(one).some(isSeasoningFood));
  const foods = [...named.map(({ name }) => name), ...bulk];
  return [...new Set([...foods, ...additivesIn(all), ...(fat ? [fat] : [])])];
}

/** Sorts that what goes into the jars is said to be of, and what there is more or less of. */
function otherwiseIn(all: string): Pick<Evidence, "sorts" | "amounts"> {
  const [, sort] = OF_A_SORT.exec(all) ?? [];
  const amount = AMOUNT.exec(all)
    ?.slice(1)
    .find((one) => one !== undefined);
  const sorts = sort && foodsNamed(sort).length === 0 ? { sorts: [sort] } : {};
  return { ...sorts, ...(amount ? { amounts: [amount] } : {}) };
}

/** What is said to be put up, or to have gone in; undefined where nothing is. */
export function putIn(all: string): Pick<Evidence, "foods" | "sorts" | "amounts"> | undefined {
  const foods = isMixed(all) ? foodsIn(all) : [];
  const otherwise = otherwiseIn(all);
  const none = foods.length === 0 && Object.keys(otherwise).length === 0;
  return none ? undefined : { foods, ...otherwise };
}
