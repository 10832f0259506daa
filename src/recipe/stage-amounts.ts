/** What goes into the pot or the jars at a stage, for the weight in hand. */
import type { JarSize, Recipe, Stage } from "./recipe.ts";
import { type ScaledIngredient, scaleRecipe } from "./scale.ts";

type StageAmount = { name: string; amount: string };

/**
 * The ingredients that a stage names, with their amounts for a weight of produce in pounds; where
 * nothing was weighed, the recipe's own. What goes into another pot is not its own, and a stage
 * that fills jars asks for what goes into each.
 */
export function stageAmounts(
  recipe: Recipe,
  stage: Named,
  { fills, ...wish }: { forLb?: number; jar?: JarSize; fills: boolean },
): StageAmount[] {
  const { ingredients, jar, batches } = scaleRecipe(recipe, wish);
  return ingredients.flatMap((one): StageAmount[] => {
    // What is measured out is measured out once, however often it is named.
    const first = recipe.stages.find((other) => goesIn(recipe, one, other));
    const again = one.role === "produce" && goesIn(recipe, one, stage);
    const begins = one.role === "produce" && stage.id === recipe.stages[0]?.id;
    if (first?.id !== stage.id && !again && !begins) return [];
    const pots = batches > 1 ? ` in each of ${batches} pots` : "";
    const amount = fills
      ? one.perJar && `${one.perJar} in each ${jar}`
      : one.amount && `${one.amount}${pots}`;
    return amount ? [{ name: one.name, amount }] : [];
  });
}

type Named = Pick<Stage, "id" | "say" | "pot"> & { heat?: Stage["heat"] };

function goesIn({ stages }: Recipe, one: ScaledIngredient, { id, say, heat, pot }: Named): boolean {
  const words = new Set(wordsOf(say));
  const { into } = one;
  const placed = stages.some((stage) => stage.pot === into || stage.id === into);
  const here = into === pot || into === id || (!placed && heat === undefined);
  const own = into === null ? pot !== WATER : here;
  if (!own) return false;
  if (words.has("everything")) return true;
  const isSpice = one.role === "spice";
  // What only covers is not measured, and what is chopped is no spice.
  if (heat === undefined && isSpice && into === null && one.perJar === null) return false;
  if (one.id === WATER && /\b(?:boiling|hot|fresh|warm) water\b/i.test(say)) return false;
  return isNamed(one, words) || (isSpice && /\bspices\b|\bspice in\b/i.test(say));
}

/** A pot of plain water, for covering what is packed raw. */
const WATER = "water";

function wordsOf(text: string): string[] {
  const words = text.toLowerCase().split(/[^a-z]+/);
  return words.filter(Boolean).map((word) => word.replace(/(?:es|s)$/, ""));
}

/** By all the words of its id, or of its name's noun: `tender green or yellow beans, 5 inches`. */
function isNamed({ id, name, role }: ScaledIngredient, words: ReadonlySet<string>): boolean {
  const [phrase = ""] = name.split(/,| (?:for|to|in|without|left|true|at|of|from) /);
  const noun = wordsOf(phrase).at(-1) ?? "";
  const byNoun = !id.includes("-") || role === "sugar";
  return wordsOf(id).every((word) => words.has(word)) || (byNoun && words.has(noun));
}
