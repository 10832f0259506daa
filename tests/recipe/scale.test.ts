import { describe, expect, it } from "vitest";
import { perJar, scaleAmount, scaleRecipe } from "../../src/recipe/scale.ts";
import { recipeOf, wholeLibrary } from "./library-files.ts";

const library = wholeLibrary();
const recipe = (id: string) => recipeOf(library, id);

function amountOf(id: string, ingredient: string, forLb: number): string | null | undefined {
  const scaled = scaleRecipe(recipe(id), { forLb });
  return scaled.ingredients.find((one) => one.id === ingredient)?.amount;
}

describe("amounts come in measures a kitchen has, with grams beside", () => {
  it.each([
    ["4 1/2 cups", 2, "sugar", "9 cups (1,800 g)"],
    ["1/2 cup", 2, "canning salt", "1 cup (296 g)"],
    ["6 lb", 2, "cucumbers", "12 lb (5,445 g)"],
    ["8 to 16 heads", 1.25, "dill", "10 to 20 heads"],
    ["2 sticks", 1, "cinnamon", "2 sticks"],
    ["2 sticks", 0.5, "cinnamon", "1 stick"],
    ["2 tbsp", 0.5, "mustard seed", "1 tablespoon (11 g)"],
  ])("%s by %s of %s is %s", (text, factor, name, said) => {
    expect(scaleAmount(text, factor, name)).toBe(said);
  });

  it("a cup of crushed fruit is not weighed as a cup of slices", () => {
    expect(scaleAmount("6 cups", 1, "peaches, crushed")).toBe("6 cups");
  });
});

describe("twelve pounds of cucumbers", () => {
  const scaled = scaleRecipe(recipe("bread-and-butter-pickles"), { forLb: 12, cannerHolds: 9 });

  it("double everything together", () => {
    expect(scaled.factor).toBe(2);
    expect(amountOf("bread-and-butter-pickles", "vinegar", 12)).toMatch(/^8 cups/);
    expect(amountOf("bread-and-butter-pickles", "salt", 12)).toMatch(/^1 cup/);
    expect(amountOf("bread-and-butter-pickles", "onions", 12)).toMatch(/^4 quarts/);
  });

  it("make sixteen pints in two loads", () => {
    expect(scaled.jars?.expected).toBe(16);
    expect(scaled.loads).toBe(2);
  });

  it("need vinegar, salt, sugar and lids", () => {
    expect(scaled.buy.map((one) => one.item)).toEqual([
      "vinegar, 5 percent",
      "canning salt",
      "sugar",
      "new lids",
    ]);
    expect(scaled.buy[0]?.amount).toBe("8 cups");
  });
});

describe("acid and salt are never rounded down", () => {
  it("at any weight", () => {
    const cup = 236.588;
    const measures: Record<string, number> = {
      quart: 4 * cup,
      cup,
      tablespoon: cup / 16,
      teaspoon: cup / 48,
    };
    const milliliters = (said: string) =>
      said
        .replace(/ \(.*/, "")
        .split(" + ")
        .reduce((sum, part) => {
          const words = part.split(" ");
          const unit = (words.pop() ?? "").replace(/s$/, "");
          const number = words.reduce((n, word) => {
            const [over = 0, under = 1] = word.split("/").map(Number);
            return n + over / under;
          }, 0);
          return sum + number * (measures[unit] ?? Number.NaN);
        }, 0);
    for (let lb = 1; lb <= 60; lb += 0.7) {
      const said = amountOf("pickled-beets", "vinegar", lb) ?? "";
      expect(milliliters(said), `${lb} lb: ${said}`).toBeGreaterThanOrEqual(
        ((4 * cup * lb) / 7) * (1 - 1e-4),
      );
    }
  });
});

describe("a jam is made one batch at a time", () => {
  it("however much was picked", () => {
    const scaled = scaleRecipe(recipe("berry-jam"), { forLb: 10 });
    expect(scaled).toMatchObject({ factor: 1, batches: 4 });
    expect(scaled.ingredients[0]?.amount).toBe("4 cups");
    expect(scaled.notes.join()).toMatch(/one pot at a time: 4 pots/);
    expect(scaled.jars?.expected).toBe(16);
    expect(scaled.buy.find((one) => one.item === "sugar")?.amount).toMatch(/3,200 g/);
  });

  it("in pots that together take what was picked, and what is bought", () => {
    const butter = recipeOf(library, "apple-butter");
    const { batches, factor, ingredients, buy } = scaleRecipe(butter, { forLb: 9 });
    expect(batches * factor * butter.yield.weightLb).toBeCloseTo(9, 6);
    const sugars = ingredients.filter(({ role }) => role === "sugar");
    const grams = sugars.reduce((sum, one) => sum + (one.grams ?? 0), 0) * batches;
    const bought = buy.find(({ item }) => item === "sugar")?.amount.match(/\(([\d,]+) g\)/)?.[1];
    expect(Math.abs(Number(bought?.replace(",", "")) - grams)).toBeLessThan(6);
  });

  it("and may be made smaller", () => {
    expect(scaleRecipe(recipe("berry-jam"), { forLb: 1.25 })).toMatchObject({
      factor: 0.5,
      batches: 1,
    });
  });
});

describe("what goes in each jar", () => {
  const acid = recipe("crushed-tomatoes").ingredients.find((one) => one.id === "lemon-juice");
  if (!acid) throw new Error("no lemon juice");

  it("is as written for its size", () => {
    expect(perJar(acid, "quart")).toBe("2 tbsp");
    expect(perJar(acid, "pint")).toBe("1 tbsp");
  });

  it("is the next larger size's share for a smaller jar", () => {
    expect(perJar(acid, "half-pint")).toMatch(/^1 1\/2 teaspoons|^1\/2 tablespoon/);
    expect(perJar(acid, "half-gallon")).toBeUndefined();
  });
});

describe("seed", () => {
  it("fills no jars and needs no lids", () => {
    const scaled = scaleRecipe(recipe("cucumber-seed"), { forLb: 6 });
    expect(scaled).toMatchObject({ jar: null, jars: null, loads: null, buy: [] });
  });
});
