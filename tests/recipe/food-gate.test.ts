import { describe, expect, it } from "vitest";
import { type FoodGate, gateBegin, gateFood, gateTitle } from "../../src/recipe/foods/food-gate.ts";
import { FOODS, isNoFood } from "../../src/recipe/foods/foods.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { added, type Change, found, library, rules } from "./edited-recipe.ts";
import { recipeOf } from "./library-files.ts";

const begin = (said: string) => gateBegin(library, said);
const put = (id: string, said: string, answered?: (food: string, name: string) => boolean) =>
  gateFood(library, recipeOf(library, id), said, answered);
const untested = (gate: FoodGate) => {
  if (gate.is !== "untested") throw new Error(`${gate.is} is not untested`);
  return gate;
};

describe("what is begun by a food's name", () => {
  it.each([
    ["the banana jam", "banana", "berry-jam"],
    ["strawberry banana jam", "banana", "berry-jam"],
    ["banana peach preserves", "banana", "peach-jam"],
    ["okra dills", "okra", "quick-fresh-pack-dills"],
    ["white peaches", "white peach", "peaches"],
    ["donut peaches", "white peach", "peaches"],
    ["the elderberries", "elderberry", "whole-berries"],
    ["creamed corn", "cream-style corn", "whole-kernel-corn"],
    ["asian pears", "Asian pear", "pears"],
    ["pumpkin butter", "pumpkin puree", "apple-butter"],
    ["fig jam", "fig", "berry-jam"],
    ["canned tuna", "seafood", "fish"],
    ["carrots and parsnips", "parsnip", "carrots"],
    ["peach mango salsa", "mango", "choice-salsa"],
    ["turkey", "other bird", "chicken"],
    ["pickled turnips", "turnip", "dilled-green-beans"],
    ["saskatoon jam", "saskatoon", "berry-jam"],
    ["strawberry rhubarb jam", "rhubarb", "berry-jam"],
    ["sauerkraut with apples", "apple", "sauerkraut"],
    ["blueberry syrup", "blueberry", "whole-berries"],
    ["pureed carrots", "carrot", "carrots"],
  ])("%s begins nothing: %s was not tested, %s is near", (said, food, near) => {
    const gate = untested(begin(said));
    expect(gate.food.name).toBe(food);
    expect([...gate.nearby, ...gate.instead]).toContain(near);
    expect(gate.why.length).toBeGreaterThan(40);
    expect(gate.source).not.toBe("");
  });

  it("offers the recipe that was tested for it in another form", () => {
    expect(untested(begin("pickled okra")).instead).toEqual(["okra"]);
    expect(untested(begin("zucchini")).instead).toEqual([
      "bread-and-butter-pickles",
      "zucchini-bread-and-butters",
    ]);
    expect(begin("strawberries")).toEqual(
      expect.objectContaining({ is: "which", recipes: ["berry-jam"] }),
    );
  });

  it.each([
    ["the beets", ["beets", "pickled-beets"]],
    ["Kentucky Wonder beans", ["dilled-green-beans", "snap-beans"]],
    ["chicken", ["chicken", "chicken-with-bones"]],
    ["jam", ["apricot-jam", "berry-jam", "peach-jam"]],
    ["tomato salsa", ["chile-salsa", "choice-salsa"]],
    ["zucchini pickles", ["bread-and-butter-pickles", "zucchini-bread-and-butters"]],
  ])("%s is asked about", (said, recipes) => {
    expect(begin(said)).toEqual({ is: "which", said, recipes });
  });

  it.each([
    ["pickled beets", "pickled-beets"],
    ["corn relish", "corn-relish"],
    ["ground beef", "ground-meat"],
    ["okra", "okra"],
    ["spinach", "greens"],
    ["the plain beets", "beets"],
    ["strawberry jam", "berry-jam"],
    ["dilly beans", "dilled-green-beans"],
    ["crushed roma tomatoes", "crushed-tomatoes"],
    ["peaches", "peaches"],
    ["raspberries", "whole-berries"],
    ["pinto beans", "dry-beans"],
    ["chicken stock", "stock"],
    ["tomato juice", "tomato-juice"],
    ["tomato seed", "tomato-seed"],
  ])("%s is %s", (said, recipe) => {
    expect(begin(said)).toEqual(expect.objectContaining({ is: "tested", recipe }));
  });

  it("a food nobody knows begins nothing", () => {
    expect(begin("zorkberry jam").is).toBe("unknown");
    expect(begin("the zorks").is).toBe("unknown");
    expect(begin("rhubarb leaves")).toEqual(
      expect.objectContaining({ is: "untested", why: expect.stringContaining("poisonous") }),
    );
  });

  it("each recipe is begun by each of its own names, or asked about", () => {
    for (const recipe of library.recipes.values()) {
      for (const name of [recipe.title, ...recipe.names]) {
        const gate = begin(name);
        if (gate.is === "which") expect(gate.recipes, name).toContain(recipe.id);
        else expect(gate, name).toEqual(expect.objectContaining({ recipe: recipe.id }));
      }
    }
  });
});

describe("whatever food is named, in whatever form", () => {
  const forms = [
    (name: string) => name,
    (name: string) => `${name} jam`,
    (name: string) => `pickled ${name}`,
  ];
  const foods = FOODS.filter((food) => !isNoFood(food)).map(({ name }) => name);

  it("nothing begins that a table does not name, or that a table names as a near neighbor", () => {
    for (const name of foods) {
      for (const said of forms.map((form) => form(name))) {
        const gate = begin(said);
        if (gate.is !== "tested") continue;
        const inCanner = recipeOf(library, gate.recipe).processes.length > 0;
        if (!inCanner) continue;
        expect(Math.min(gate.options.length, gate.foods.length), said).toBeGreaterThan(0);
        for (const { table } of gate.options) {
          const of = library.tables.tables[table]?.of ?? [];
          const broth = gate.foods.every(({ kind }) => kind === "broth");
          expect(broth || gate.foods.every((food) => of.includes(food.name)), said).toBe(true);
        }
      }
    }
  }, 60_000);
});

describe("whatever food is put into whatever recipe", () => {
  it("passes only what one of its tables names", () => {
    for (const recipe of library.recipes.values()) {
      const of = recipe.processes.flatMap(({ table }) => library.tables.tables[table]?.of ?? []);
      for (const food of FOODS.filter((one) => !isNoFood(one) && one.kind !== "broth")) {
        const gate = gateFood(library, recipe, `some ${food.name}`);
        if (gate.is !== "tested" || recipe.processes.length === 0) continue;
        const juice = food.name === "tomato juice" && of.includes("tomato");
        expect(juice || of.includes(food.name), `${recipe.id}: ${food.name}`).toBe(true);
      }
    }
  }, 60_000);
});

describe("what is put into the jars of a recipe", () => {
  it.each([
    ["crushed-tomatoes", "Roma", "Roma"],
    ["crushed-tomatoes", "pear tomatoes", "pear"],
    ["crushed-tomatoes", "Yellow Pear tomatoes", "Yellow Pear"],
    ["crushed-tomatoes", "Mortgage Lifter, about 20 pounds", "Mortgage Lifter"],
    ["snap-beans", "Kentucky Wonder", "Kentucky Wonder"],
    ["quick-fresh-pack-dills", "Boston Pickling", "Boston Pickling"],
    ["pears", "Bosc pears", "Bosc"],
    ["whole-kernel-corn", "Silver Queen", "Silver Queen"],
  ])("%s of %s: a variety, kept whole", (id, said, variety) => {
    expect(put(id, said)).toEqual(expect.objectContaining({ is: "tested", variety }));
  });

  it.each(["raw pack, in pints", "ripe peaches", "quarts, hot pack", "yellow peaches"])(
    "%s names no variety",
    (said) => {
      expect(put("peaches", said)).not.toHaveProperty("variety");
      expect(put("peaches", said).is).toBe("tested");
    },
  );

  it.each(["foxglove", "Foxglove", "deadly nightshade", "rhubarb leaf"])(
    "%s is never asked about as a name: it is poisonous",
    (said) => {
      const gate = untested(put("crushed-tomatoes", said));
      expect(gate.why).toMatch(/poisonous/);
    },
  );

  it.each([
    ["crushed-tomatoes", "Yellow Pear", "Yellow Pear", "pear"],
    ["crushed-tomatoes", "Strawberry", "Strawberry", "strawberry"],
    ["quick-fresh-pack-dills", "Lemon", "Lemon", "lemon"],
    ["sliced-apples", "Winter Banana", "Winter Banana", "banana"],
    ["peaches", "Strawberry peaches", "Strawberry", "strawberry"],
  ])("%s of %s: asked whether it is a name", (id, said, name, other) => {
    const gate = put(id, said);
    if (gate.is !== "name-or-food") throw new Error(gate.is);
    expect([gate.name, gate.other.name]).toEqual([name, other]);
  });

  it("asks once: the answer is remembered for that food and name only", () => {
    const asked: string[] = [];
    const yes = (food: string, name: string) => asked.push(`${food}: ${name}`) > 0;
    expect(put("crushed-tomatoes", "Yellow Pear", yes)).toEqual(
      expect.objectContaining({ is: "tested", variety: "Yellow Pear" }),
    );
    expect(asked).toEqual(["tomato: yellow pear"]);
    expect(put("crushed-tomatoes", "Yellow Pear", () => false).is).toBe("untested");
  });

  it.each([
    ["peaches", "white peaches", "white peach"],
    ["peaches", "white", "white peach"],
    ["pears", "Asian", "Asian pear"],
    ["snap-beans", "dried beans", "dry bean"],
    ["whole-kernel-corn", "creamed corn", "cream-style corn"],
    ["meat-chunks", "ground venison", "ground meat"],
    ["berry-jam", "banana", "banana"],
    ["berry-jam", "peaches", "peach"],
    ["dilled-green-beans", "okra", "okra"],
    ["choice-salsa", "tomatoes and corn", "corn"],
    ["crushed-tomatoes", "tomato sauce", "tomato"],
    ["dry-beans", "fresh peas", "pea"],
  ])("%s of %s: not what was tested", (id, said, food) => {
    expect(untested(put(id, said)).food.name).toBe(food);
  });

  it("names the processes that were tested: raspberries go in raw only", () => {
    const packs = (said: string) => {
      const gate = put("whole-berries", said);
      return gate.is === "tested" ? [...new Set(gate.options.map(({ pack }) => pack))] : gate.is;
    };
    expect(packs("raspberries")).toEqual(["raw"]);
    expect(packs("blueberries")).toEqual(["hot", "raw"]);
  });

  it("passes no food whose name is unknown as a variety", () => {
    expect(put("berry-jam", "zorkberries").is).toBe("unknown");
  });
});

describe("a recipe's own title", () => {
  const titled = (id: string, title: string): Recipe => ({ ...recipeOf(library, id), title });

  it("names what its tables were tested for, in the whole library", () => {
    for (const recipe of library.recipes.values()) {
      expect(gateTitle(recipe, library.tables)?.name, recipe.id).toBeUndefined();
    }
  });

  it.each([
    ["berry-jam", "Banana jam", "banana"],
    ["peaches", "White peaches in light syrup", "white peach"],
    ["dilled-green-beans", "Okra dills", "okra"],
    ["whole-berries", "Elderberries in syrup", "elderberry"],
  ])("%s called %s is detected", (id, title, food) => {
    expect(gateTitle(titled(id, title), library.tables)?.name).toBe(food);
  });

  it("and makes the check call the recipe a danger", () => {
    const change: Change = ["title: Berry jam without added pectin", "title: Banana jam"];
    expect(rules(found("berry-jam", change))).toEqual(["untested-food"]);
    expect(rules(found("berry-jam", added("bananas", "1 lb", "produce")))).toContain(
      "untested-food",
    );
  });
});
