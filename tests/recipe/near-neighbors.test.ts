// data table
/** The foods near a tested one that each table was not tested for, compared with a second list. */
import { describe, expect, it } from "vitest";
import { wholeLibrary } from "./library-files.ts";

const { tables } = wholeLibrary().tables;

const NOT_OF: readonly [table: string, neighbors: string][] = [
  ["bread-and-butter", "okra pickled-vegetable"],
  ["fresh-pack-dills", "summer-squash okra pickled-vegetable"],
  ["fermented-dills", "summer-squash okra pickled-vegetable"],
  ["sweet-gherkins", "summer-squash okra pickled-vegetable"],
  ["quick-sweet-hot", "summer-squash okra pickled-vegetable"],
  ["quick-sweet-raw", "summer-squash okra pickled-vegetable"],
  ["dilled-beans", "dried-bean shelled-bean summer-squash pickled-vegetable"],
  ["pickled-beets", "pickled-vegetable okra"],
  ["sauerkraut-hot", "other-cabbage"],
  ["sauerkraut-raw", "other-cabbage"],
  ["cucumber-relish", "summer-squash okra pickled-vegetable"],
  ["crushed-tomatoes", "tomato-sauce tomatillo tomato-mix"],
  ["tomatoes-in-water", "tomato-sauce tomatillo tomato-mix"],
  ["tomatoes-in-juice", "tomato-sauce tomatillo tomato-mix"],
  ["tomatoes-no-liquid", "tomato-sauce tomatillo tomato-mix"],
  ["tomato-juice", "tomatillo tomato-mix"],
  ["chile-salsa", "salsa-extra"],
  ["choice-salsa", "salsa-extra"],
  ["peaches-hot", "white-peach"],
  ["peaches-raw", "white-peach"],
  ["pears", "asian-pear"],
  ["sliced-apples", "asian-pear"],
  ["applesauce", "asian-pear banana pumpkin-puree"],
  ["apple-butter", "pumpkin-puree banana asian-pear white-peach"],
  [
    "jam",
    "white-peach elderberry mulberry banana fig low-acid-fruit untested-berry asian-pear pumpkin-puree cranberry",
  ],
  ["jelly", "elderberry mulberry fig low-acid-fruit untested-berry white-peach"],
  ["berries-hot", "elderberry mulberry strawberry soft-berry cranberry untested-berry"],
  ["berries-raw", "elderberry mulberry strawberry cranberry untested-berry"],
  ["pasteurized-cucumbers", "okra pickled-vegetable"],
  ["snap-beans-pressure", "dried-bean shelled-bean plain-squash"],
  ["carrots-pressure", "other-root pumpkin-puree plain-squash"],
  ["corn-pressure", "creamed-corn other-corn"],
  ["beets-pressure", "beet-greens"],
  ["dry-beans-pressure", "fresh-bean mashed-bean"],
  ["peas-pressure", "edible-pods fresh-pea"],
  ["lima-beans-pressure", "other-shell-bean"],
  ["potatoes-pressure", "mashed-root"],
  ["sweet-potatoes-pressure", "mashed-root"],
  ["squash-cubes-pressure", "mashed-squash"],
  ["zucchini-bread-and-butters", "okra"],
  ["pickled-cauliflower", "okra"],
  ["pickled-carrots", "okra"],
  ["pickled-hot-peppers", "okra"],
  ["pickled-pearl-onions", "okra"],
  ["pickled-asparagus", "okra"],
  ["apple-juice", "asian-pear"],
  ["tomato-sauce", "tomatillo tomato-mix"],
  ["tomato-sauce-pressure", "tomatillo tomato-mix"],
  ["meat-pieces-pressure", "ground-meat cured-meat"],
  ["ground-meat-pressure", "cured-meat"],
  ["chicken-boned-pressure", "bone-in other-bird"],
  ["chicken-with-bones-pressure", "boneless other-bird"],
  ["fish-pressure", "other-fish"],
  ["soup-pressure", "soup-without-process"],
  ["seafood-soup-pressure", "soup-without-process"],
  ["crushed-tomatoes-pressure", "tomato-sauce tomatillo tomato-mix"],
  ["tomatoes-in-water-pressure", "tomato-sauce tomatillo tomato-mix"],
  ["tomatoes-in-juice-pressure", "tomato-sauce tomatillo tomato-mix"],
  ["tomatoes-no-liquid-pressure", "tomato-sauce tomatillo tomato-mix"],
  ["tomato-juice-pressure", "tomatillo tomato-mix"],
  ["applesauce-pressure", "asian-pear banana pumpkin-puree"],
  [
    "apples-rhubarb-pressure",
    "white-peach elderberry mulberry banana fig low-acid-fruit untested-berry asian-pear",
  ],
  ["berries-hot-pressure", "elderberry mulberry strawberry soft-berry cranberry untested-berry"],
  ["berries-raw-pressure", "elderberry mulberry strawberry cranberry untested-berry"],
  ["stone-fruit-pressure", "white-peach"],
  ["pears-pressure", "asian-pear"],
];

describe("a table was not tested for its near neighbors", () => {
  it.each(NOT_OF)("%s: %s", (id, neighbors) => {
    expect(tables[id]?.notOf.map((one) => one.id)).toEqual(neighbors.split(" "));
  });

  it("and no other table has any", () => {
    const others = Object.keys(tables).filter((id) => NOT_OF.every(([table]) => table !== id));
    expect(others.filter((id) => (tables[id]?.notOf.length ?? 0) > 0)).toEqual([]);
  });
});
