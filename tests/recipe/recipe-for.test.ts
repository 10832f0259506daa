import { describe, expect, it } from "vitest";
import { KINDS } from "../../src/kitchen/stages/kinds.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { recipeFor } from "../../src/recipe/recipe-for.ts";
import { recipeOf, wholeLibrary } from "./library-files.ts";

const library = wholeLibrary();
const ids = (recipe: Recipe) => recipe.stages.map((stage) => stage.id);
const afterOf = (recipe: Recipe, id: string) =>
  recipe.stages.find((stage) => stage.id === id)?.after.map((link) => link.stage);

describe("a recipe as one batch makes it", () => {
  const beans = recipeOf(library, "snap-beans");

  it("has the stages of its pack only", () => {
    const hot = recipeFor(beans, KINDS, "pressure", "hot");
    expect(ids(hot).slice(0, 3)).toEqual(["trim", "boil", "fill"]);
    const raw = recipeFor(beans, KINDS, "pressure", "raw");
    expect(ids(raw).slice(0, 3)).toEqual(["trim", "water", "fill"]);
    expect(afterOf(raw, "fill")).toEqual(["trim", "water"]);
  });

  it("kept by fermenting has no canner stages, and asks nothing of them", () => {
    const kraut = recipeFor(recipeOf(library, "sauerkraut"), KINDS, "ferment");
    expect(ids(kraut)).toEqual(["shred", "pack-crock", "ferment", "taste-crock", "keep-cold"]);
    expect(kraut.critical.map((factor) => factor.id)).toEqual(["full-salt", "sound-ferment"]);
  });

  it("canned after fermenting ends in the pantry", () => {
    const kraut = recipeFor(recipeOf(library, "sauerkraut"), KINDS, "boiling-water", "raw");
    expect(ids(kraut).slice(4)).toEqual(["fill", "process", "cool", "seal-check", "store"]);
    expect(afterOf(kraut, "fill")).toEqual(["taste-crock"]);
  });

  it("kept in the refrigerator still ends in storing", () => {
    const cold = recipeFor(recipeOf(library, "pickled-beets"), KINDS, "refrigerator");
    expect(ids(cold)).not.toContain("process");
    expect(afterOf(cold, "store")).toEqual(["fill"]);
  });

  it("without its process is never sent to the shelf", () => {
    const beets = recipeOf(library, "pickled-beets");
    for (const cold of [
      recipeFor(beets, KINDS, "refrigerator"),
      recipeFor({ ...beets, tested: false }, KINDS, "refrigerator"),
    ]) {
      expect(cold.stages.at(-1)?.say).toMatch(/in the refrigerator.*not for the shelf/);
    }
    const said = (tested: boolean) => {
      return JSON.stringify(recipeFor({ ...beets, tested }, KINDS, "refrigerator").stages);
    };
    expect(said(true)).toContain("this mix was tested");
    expect(said(false)).not.toContain("this mix was tested");
  });

  it("with nothing to leave out is the recipe itself", () => {
    const beets = recipeOf(library, "pickled-beets");
    expect(recipeFor(beets, KINDS, "boiling-water", "hot")).toBe(beets);
  });

  it("for every recipe, pack and method: stages follow stages that are there", () => {
    for (const recipe of library.recipes.values()) {
      for (const { method, pack } of [
        ...recipe.processes,
        { method: recipe.keptAs, pack: undefined },
      ]) {
        const chosen = recipeFor(recipe, KINDS, method, pack);
        const there = new Set(ids(chosen));
        const loose = chosen.stages.flatMap((s) => s.after).filter((a) => !there.has(a.stage));
        expect(loose, `${recipe.id} ${method} ${pack}`).toEqual([]);
        expect(chosen.stages.length).toBeGreaterThan(1);
      }
    }
  });
});
