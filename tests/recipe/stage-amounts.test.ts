/**
 * What is shown to go in at each stage. The table beside this test was read stage by stage; run
 * with `-u`, this test writes it anew, and whoever does so reads it again.
 */
import { describe, expect, it } from "vitest";
import { hasRole } from "../../src/kitchen/stages/kinds.ts";
import type { JarSize, Recipe, Stage } from "../../src/recipe/recipe.ts";
import { scaleRecipe } from "../../src/recipe/scale.ts";
import { stageAmounts } from "../../src/recipe/stage-amounts.ts";
import { theLibrary } from "../scenarios/play.ts";

const RECIPES = [...theLibrary().recipes.values()];

function amounts(recipe: Recipe, stage: Stage, forLb: number) {
  const jar = recipe.jars[0] as JarSize;
  return stageAmounts(recipe, stage, { forLb, jar, fills: hasRole(stage, "filling") });
}

/** A volume said in words or digits. */
const VOLUME = /\b(?:\w+|\d[\d /]*) (?:cups?|quarts?|gallons?|tablespoons?|teaspoons?)\b(?! jar)/i;
/** It holds for any weight where it is said of each jar, or of each of something. */
const OF_EACH = /\b(?:each|every|to the|a pint|a quart|at a time)\b/;

describe("the amounts of a stage", () => {
  it("are those of the ingredients that go in there", async () => {
    const table = RECIPES.flatMap((recipe) => {
      const weight = recipe.yield.weightLb;
      const lines = recipe.stages.flatMap((stage) => {
        const list = amounts(recipe, stage, weight);
        if (list.length === 0) return [];
        return [
          `  ${stage.id}: ${stage.say}`,
          ...list.map((one) => `    ${one.name}: ${one.amount}`),
        ];
      });
      return [`${recipe.id}, ${weight} lb`, ...lines];
    });
    await expect(`${table.join("\n")}\n`).toMatchFileSnapshot("stage-amounts.txt");
  });

  it.each(RECIPES)("are those of $id for the weight of the batch", (recipe) => {
    const forLb = recipe.yield.weightLb * 1.75;
    const jar = recipe.jars[0] as JarSize;
    const { ingredients, batches } = scaleRecipe(recipe, { forLb, jar });
    const pots = batches > 1 ? ` in each of ${batches} pots` : "";
    for (const stage of recipe.stages) {
      for (const { name, amount } of amounts(recipe, stage, forLb)) {
        const one = ingredients.find((each) => each.name === name);
        const fills = hasRole(stage, "filling");
        expect(amount).toBe(fills ? `${one?.perJar} in each ${jar}` : `${one?.amount}${pots}`);
      }
    }
  });

  it.each(RECIPES)("leave out nothing of $id that acid or salt depends on", (recipe) => {
    const shown = recipe.stages.flatMap((stage) =>
      amounts(recipe, stage, recipe.yield.weightLb).map(({ name }) => name),
    );
    const guarding = recipe.ingredients.filter(({ role, optional }) => {
      return (role === "acid" || role === "salt") && !optional;
    });
    for (const { name } of guarding) expect(shown.filter((one) => one === name)).toEqual([name]);
  });

  it.each(RECIPES.filter(({ scaling }) => scaling === "proportional"))(
    "are not said of $id in figures that hold for one weight alone",
    ({ stages }) => {
      const sentences = stages.flatMap(({ say }) => say.split(/(?<=[.!?;:]) /));
      const fixed = sentences.filter((one) => VOLUME.test(one) && !OF_EACH.test(one));
      expect(fixed).toEqual([]);
    },
  );
});
