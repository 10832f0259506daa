import { describe, expect, it } from "vitest";
import { gateAddition } from "../../src/recipe/foods/addition-gate.ts";
import { library } from "./edited-recipe.ts";
import { recipeOf } from "./library-files.ts";

const add = (id: string, said: string) => gateAddition(recipeOf(library, id), library.tables, said);

describe("what is said to be added", () => {
  it.each([
    ["berry-jam", "a banana", /Bananas are low in acid/],
    ["crushed-tomatoes", "an onion", /takes acid/],
    ["crushed-tomatoes", "garlic", /takes acid/],
    ["choice-salsa", "black beans", /takes acid/],
    ["peaches", "cornstarch", /[Ss]tarch/],
    ["snap-beans", "a bit of bacon", /[Ff]at/],
    ["quick-sweet-pickles", "baking soda", /[Ss]oda/],
    ["chile-salsa", "a cup of water", /thins the acid/],
    ["pickled-beets", "hard-boiled eggs", /without it/],
    ["sauerkraut", "an apple", /without it/],
    ["apple-butter", "some pumpkin", /Pumpkin/],
  ])("%s with %s is no longer what was tested", (id, said, why) => {
    const gate = add(id, said);
    expect(gate.is).toBe("changes");
    expect(gate.is === "changes" && gate.why).toMatch(why);
  });

  it.each([
    ["berry-jam", "a handful of raspberries", "berries"],
    ["choice-salsa", "more onions", "onions-peppers"],
    ["dilled-green-beans", "a clove of garlic", "garlic"],
    ["bread-and-butter-pickles", "zucchini", "cucumbers"],
    ["snap-beans", "some water", "water"],
  ])("%s with %s has it already", (id, said, ingredient) => {
    const gate = add(id, said);
    if (id === "snap-beans") expect(gate.is).not.toBe("changes");
    else expect(gate).toEqual({ is: "in-recipe", said, ingredient });
  });

  it.each([
    ["peaches", "cinnamon sticks"],
    ["choice-salsa", "cilantro"],
    ["quick-fresh-pack-dills", "a hot pepper"],
    ["fermented-dills", "grape leaves"],
    ["berry-jam", "lemon juice"],
    ["snap-beans", "salt"],
    ["dilled-green-beans", "raspberry vinegar"],
  ])("%s with %s is only seasoned", (id, said) => {
    expect(add(id, said).is).toBe("seasoning");
  });

  it("an unknown addition is asked about", () => {
    expect(add("berry-jam", "zorkberries").is).toBe("unknown");
    expect(add("berry-jam", "a zork").is).toBe("unknown");
  });
});
