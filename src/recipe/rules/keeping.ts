import { isLowAcid } from "../foods/foods.ts";
import type { Kinds } from "../kind-in-recipe.ts";
import type { Recipe } from "../recipe.ts";
import { either, phrases } from "./phrases.ts";
import { foodsOf } from "./produce-weight.ts";
import { type Statement, statementsOf, toldAt, undenied } from "./statements.ts";

/*
 * Where a recipe's food is kept, by what its words say. `processes: []` promises nothing: a jar
 * put on a shelf, given away or mailed is a shelf jar, and so is a lidded one that nobody chills.
 */

export type Keeping = {
  place: "shelf" | "cold" | "frozen" | "dried";
  /** Where the shelf is spoken of, and its word: `pantry`. */
  said?: { where: string; word: string };
};

const COLD = phrases(
  "refrigerat*|fridges?|ice ?box*|chill(ed)?|coolers?",
  "keep (it |them )?cold",
  "in the cold",
);
const FROZEN = phrases("freez(e|es|er|ers|ing)", "frozen", "deep[- ]freeze");
/** Cold that is not wanted or not there. */
const NO_COLD = either(
  /\b(?:no|without|never|not|don't|doesn't|nor)\b[^,]*\b(?:refrigerat\w*|fridge|ice ?box)\b/,
  /\b(?:no|without|never|not|don't|doesn't|nor)\b[^,]*\b(?:freezer|cooling|cold)\b/,
  phrases("(outside|out of|instead of) the (fridge|refrigerator|icebox)"),
);
/** Cold called needless. */
const NO_NEED = phrases(
  "no (need|refrigerat*|fridge)",
  "(not|\\w*n't|never) (have|has|need|want) to be (refrigerat*|chilled|kept cold)",
  "(without|needs? no|(don't|doesn't|not) need) ~3 (refrigerat*|fridge|icebox|cold)",
);

const SHELF = phrases(
  "shel(f|ves|ved?|ving)|shelf[- ]stable|pantr(y|ies)|larders?|cupboards?|cabinets?|closets?",
  "(root )?cellars?|basements?|store ?rooms?|storage rooms?|fruit rooms?|spring ?house|attic",
  "(?<!crisper )drawers?|counter(top)?s?|on the (bar|sideboard)|by the stove|garage|mudroom",
  "under the (sink|bed|stairs)|window ?sills?|porch|shed|anywhere you like",
  "room temp(erature)?|out of the cold|(cool,? |in a )?dark (place|corner|spot)",
  "camper|trunk|backpack|emergency|long haul|put by|put up|put away for",
  "mail(ed|ing|s)?|post (it|them)|by post|postage|parcels?|ship(ped|ping|s)?",
);
/** Given away: on somebody's shelf, unless it is said to go from cold to cold. */
const GIVEN = phrases(
  "gifts?|stockings?|to (\\w+ )?neighbou?rs?|bake sale|sell|sold|(market|farm) (stall|stand)",
  "(give|hand) (it|them|a jar|1|some|away|every|out)|fairs?",
);
/** A long life, where nothing says that it is a cold one. */
const KEEPS_LONG = new RegExp(
  "\\b(?:keeps?|kept|lasts?|good|stays?|holds?|best)\\b[^,]*" +
    "\\b(?:years?|months?|winter|spring|summer)\\b",
);
/** A counter to cool or set on, and what comes out of a pantry to be cooked. */
const PASSING = either(
  phrases("(cool|set|stand|rest|thaw|soften)* ~4 (on|in) (the |a |your )?(counter(top)?)"),
  phrases("from (the |your )?pantry|(is|are) in the pantry"),
);

/** The word of a place without cold, where the sentence tells of one. */
function warmPlace(said: Statement): string | undefined {
  const { text } = said;
  const chilled = (COLD.test(text) || FROZEN.test(text)) && !NO_COLD.test(text);
  if (chilled || PASSING.test(text)) return undefined;
  const shelf = toldAt(said, SHELF);
  if (shelf) return shelf[0];
  const warm = NO_COLD.test(text) && (KEEPS_LONG.test(text) || NO_NEED.test(text));
  return warm ? "no refrigeration" : undefined;
}

/** Whether it goes into jars, bottles or tumblers that are closed. */
function isLidded(recipe: Recipe, kinds: Kinds): boolean {
  const filled = recipe.stages.some(({ kind }) => kinds[kind].role === "filling");
  const said = statementsOf(recipe).some(({ text }) =>
    /\b(?:jars?|lids?|lidded|caps?|capped|bottles?|tumblers?)\b/.test(text),
  );
  return recipe.jars.length > 0 && (filled || said);
}

/** Foods that spoil; herbs, spices and vinegar alone do not. */
export function hasFood(recipe: Recipe): boolean {
  return recipe.class === "low-acid" || recipe.ingredients.some((one) => foodsOf(one).length > 0);
}

/** True for food that is low in acid by its class or by what is in it. */
export function isLowAcidFood(recipe: Recipe): boolean {
  if (recipe.class === "low-acid") return true;
  const bare = !recipe.ingredients.some(({ role, optional }) => role === "acid" && !optional);
  return bare && recipe.ingredients.some((one) => foodsOf(one).some(isLowAcid));
}

/** Where the food is kept. Stages that only wait (a ferment, a rest, a cure) say nothing of it. */
export function keepingOf(recipe: Recipe, kinds: Kinds): Keeping {
  if (recipe.processes.length > 0) return { place: "shelf" };
  const spoils = recipe.keptAs === "refrigerator" || recipe.keptAs === "ferment";
  if (!spoils) return { place: "dried" };
  const waits = ({ stage }: Statement) => stage !== undefined && kinds[stage.kind].restsAsTested;
  const all = statementsOf(recipe).filter((one) => !waits(one));
  const shelf = (word: string, where: string): Keeping => ({
    place: "shelf",
    said: { where, word },
  });
  for (const one of all) {
    const word = warmPlace(one);
    if (word) return shelf(word, one.where);
  }
  if (all.some(({ text }) => undenied(text, FROZEN))) return { place: "frozen" };
  if (all.some(({ text }) => undenied(text, COLD))) return { place: "cold" };
  for (const one of all) {
    const long = toldAt(one, GIVEN) ?? toldAt(one, KEEPS_LONG);
    if (long) return shelf(long[0], one.where);
  }
  const lidded = isLidded(recipe, kinds) && recipe.class !== "ferment";
  return lidded ? shelf("jars", "jars") : { place: "cold" };
}
