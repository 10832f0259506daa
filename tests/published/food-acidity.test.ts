import { describe, expect, it } from "vitest";
import { FOODS, foodCalled, isLowAcid } from "../../src/recipe/foods/foods.ts";

/** pH 4.6 separates acid from low-acid food: 21 CFR 114.3. */
const LIMIT = 4.6;

/** FDA, Approximate pH of Foods and Food Products, 2003: highest figure printed for the food. */
const FDA: [food: string, highest: number][] = [
  ["apple", 4.0],
  ["blackberry", 4.5],
  ["blueberry", 3.33],
  ["cherry", 4.54],
  ["grape", 3.82],
  ["grapefruit", 3.75],
  ["lemon", 2.6],
  ["lime fruit", 2.8],
  ["loganberry", 3.5],
  ["nectarine", 4.18],
  ["pomegranate", 3.2],
  ["asparagus", 6.7],
  ["avocado", 6.58],
  ["baby corn", 5.2],
  ["bamboo shoot", 6.2],
  ["banana", 5.2],
  ["bean", 5.7],
  ["beet", 6.6],
  ["broccoli", 6.85],
  ["brussels sprout", 6.3],
  ["cabbage", 6.8],
  ["cactus", 4.7],
  ["carrot", 6.4],
  ["cauliflower", 5.6],
  ["celery", 6.0],
  ["corn", 7.5],
  ["cucumber", 5.78],
  ["eggplant", 5.3],
  ["fig", 5.98],
  ["horseradish", 5.35],
  ["leek", 6.17],
  ["mango", 6.0],
  ["melon", 6.67],
  ["mushroom", 6.7],
  ["potato", 5.9],
  ["pumpkin", 5.5],
  ["shell bean", 6.5],
  ["sunchoke", 6.0],
];

/**
 * Fruits that the national center and extension services name as not acid enough, whatever their
 * taste: NCHFP fruit purees (banana, fig, Asian pear, tomato, melons, papaya, ripe mango, coconut)
 * and peaches (white ones); Kansas State 2022 (date, elderberry, persimmon, white nectarine);
 * University of Wisconsin 2020 (elderberry, white peach and nectarine); UC Master Food Preservers
 * (ripe pineapple, persimmon).
 */
const NAMED_LOW = [
  ...["banana", "fig", "Asian pear", "melon", "watermelon", "papaya", "mango", "coconut"],
  ...["white peach", "white nectarine", "elderberry", "date", "persimmon", "pineapple"],
];

/** Foods whose boiling-water process in the Complete Guide adds no acid: Guide 2 and Guide 7. */
const GUIDE_ACID = [
  ...["apple", "crabapple", "peach", "pear", "plum", "cherry", "grape", "rhubarb", "cranberry"],
  ...["berry", "blueberry", "currant", "gooseberry", "huckleberry", "blackberry", "dewberry"],
  ...["loganberry", "raspberry", "strawberry", "boysenberry", "youngberry"],
];

const known = (name: string) => {
  const food = foodCalled(name);
  if (!food) throw new Error(`no food ${name}`);
  return food;
};

describe("which side of pH 4.6 a food is on", () => {
  it.each(FDA)("%s, printed up to %f, is on the side of its worst reading", (name, highest) => {
    expect(isLowAcid(known(name))).toBe(highest > LIMIT);
  });

  it.each(NAMED_LOW)("%s is not acid enough by itself", (name) => {
    expect(isLowAcid(known(name))).toBe(true);
  });

  it.each(GUIDE_ACID)("%s has a boiling-water process without added acid", (name) => {
    expect(known(name).acidity).toBe("acid");
  });

  it("apricots pass 4.6 and tomatoes do: acid by their own processes only", () => {
    // FDA prints apricots at 3.30-4.80; Guide 1 says tomatoes pass 4.6 and need acid.
    for (const name of ["apricot", "tomato", "tomato juice", "tomatillo"]) {
      expect(known(name).acidity).toBe("by-process");
    }
  });

  it("nothing is called acid from memory or common practice", () => {
    const published = /^(?:FDA|BBB|ARS|G[1-7]|NCHFP|UWEX|KSRE|UC)\b/;
    for (const { name, acidity, basis } of FOODS) {
      if (acidity !== "acid" && acidity !== "by-process") continue;
      expect(basis, name).toMatch(published);
    }
  });

  it("no printed range that passes 4.6 is called acid", () => {
    for (const { name, acidity, basis } of FOODS) {
      const highest = Math.max(0, ...[...basis.matchAll(/\d\.\d+/g)].map(Number));
      if (acidity === "acid") expect(highest, name).toBeLessThanOrEqual(LIMIT);
    }
  });

  it("what no publication covers counts as low in acid", () => {
    for (const food of FOODS) {
      if (food.kind === "no food" || food.kind === "herb" || food.kind === "water") continue;
      if (food.acidity === "unknown") expect(isLowAcid(food), food.name).toBe(true);
    }
  });
});
