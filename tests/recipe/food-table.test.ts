import { describe, expect, it } from "vitest";
import { FOOD_KINDS, FOODS, foodCalled, isLowAcid } from "../../src/recipe/foods/foods.ts";
import { foodsNamed } from "../../src/recipe/foods/name-foods.ts";
import { neighborOf, wasTested } from "../../src/recipe/foods/tested-foods.ts";
import { library } from "./edited-recipe.ts";

const names = (text: string) => foodsNamed(text).map(({ name }) => name);
const tables = Object.values(library.tables.tables);

describe("the food table", () => {
  it("has several hundred names, each of one food only", () => {
    const all = FOODS.flatMap((food) => [food.name, ...food.also]);
    expect(FOODS.length).toBeGreaterThan(120);
    expect(all.length).toBeGreaterThan(900);
    const twice = all.filter((name, at) => all.indexOf(name) !== at);
    expect(twice).toEqual([]);
  });

  it("knows every kind it uses, and gives each food a basis", () => {
    for (const food of FOODS) {
      expect(FOOD_KINDS, food.name).toContain(food.kind);
      expect(food.basis, food.name).not.toBe("");
    }
  });

  it("finds each of its names as that food", () => {
    for (const food of FOODS) {
      if (food.kind === "no food") continue;
      for (const name of [food.name, ...food.also]) expect(names(name), name).toEqual([food.name]);
    }
  });

  it.each([
    ["two pounds of berries and cherries", ["berry", "cherry"]],
    ["peaches and nectarines", ["peach", "nectarine"]],
    ["Asian pears", ["Asian pear"]],
    ["beet greens", ["greens"]],
    ["collards and turnip greens", ["greens"]],
    ["pear tomatoes", ["tomato"]],
    ["banana peppers", ["pepper"]],
    ["lemon cucumbers", ["cucumber"]],
    ["butternut squashes", ["winter squash"]],
    ["canteloupe", ["melon"]],
    ["crab", ["seafood"]],
    ["crab apples", ["crabapple"]],
    ["garden huckleberries", ["garden huckleberry"]],
    ["bread dough", []],
  ])("finds in %s what is meant", (text, foods) => {
    expect(names(text)).toEqual(foods);
  });
});

describe("near neighbors of what was tested", () => {
  it("are foods of the food table, each with its reason and source", () => {
    for (const table of tables) {
      for (const { id, foods, words, why, source } of table.notOf) {
        expect(foods.length + words.length, id).toBeGreaterThan(0);
        expect(why.length * source.length, id).toBeGreaterThan(0);
        for (const name of foods) expect(foodCalled(name), `${id}: ${name}`).toBeDefined();
      }
    }
  });

  it("by kind, an acid table takes no food that may pass pH 4.6", () => {
    const purees = library.tables.tables["apples-rhubarb-pressure"];
    const tested = FOODS.filter((food) => purees && wasTested(purees, food));
    expect(tested.filter(isLowAcid).map(({ name }) => name)).toEqual(["fruit"]);
    expect(tested.map(({ name }) => name)).toContain("plum");
  });

  it.each([
    ["peaches-raw", "white peach"],
    ["berries-raw", "elderberry"],
    ["jam", "banana"],
    ["pears", "Asian pear"],
    ["corn-pressure", "cream-style corn"],
    ["dilled-beans", "okra"],
    ["fish-pressure", "seafood"],
  ])("%s says why not %s", (id, name) => {
    const table = library.tables.tables[id];
    const food = foodCalled(name);
    if (!table || !food) throw new Error(`${id} or ${name} is missing`);
    expect(wasTested(table, food)).toBe(false);
    expect(neighborOf(table, food)?.why).toMatch(/\w{3}/);
  });
});
