import { describe, expect, it } from "vitest";
import { FOODS } from "../../src/recipe/foods/foods.ts";
import { foodsNamed } from "../../src/recipe/foods/name-foods.ts";
import { added, type Change, found, library, rules } from "./edited-recipe.ts";

const dangers = (id: string, ...changes: Change[]) => rules(found(id, ...changes));
const names = (name: string) => foodsNamed(name).map((food) => food.name);

describe("the foods of a name", () => {
  it.each([
    ["cucumber and corn medley", ["cucumber", "corn"]],
    ["tender green or yellow beans", ["bean"]],
    ["Dragon Tongue beans", ["bean"]],
    ["pinto beans, soaked overnight", ["dry bean"]],
    ["jalapeños and serranos", ["pepper"]],
    ["Romas and San Marzanos", ["tomato"]],
    ["tomato juice to cover", ["tomato juice"]],
    ["beef bones", ["bone"]],
    ["hard-boiled eggs", ["egg or milk"]],
    ["smoked salmon", ["seafood"]],
  ])("%s", (name, foods) => {
    expect(names(name)).toEqual(foods);
  });

  it("leave out what is denied, and what is only called after a food", () => {
    expect(names("ripe pears, not Asian pears")).toEqual(["pear"]);
    expect(names("citric acid in place of the lemon juice")).toEqual([]);
    expect(names("rice vinegar")).toEqual([]);
    expect(names("celery seed")).toEqual(["seasoning"]);
  });

  it("are all that a table can be tested for", () => {
    const known = new Set(FOODS.flatMap((food) => [food.name, food.kind]));
    for (const table of Object.values(library.tables.tables)) {
      expect(
        table.of.filter((food) => !known.has(food)),
        table.id,
      ).toEqual([]);
      expect(table.of.length, table.id).toBeGreaterThan(0);
    }
  });
});

describe("food the table was not tested for", () => {
  it.each([
    ["bread-and-butter-pickles", "sweet corn", "3 lb", "other"],
    ["crushed-tomatoes", "ground beef", "3 lb", "other"],
    ["crushed-tomatoes", "mushrooms", "2 lb", "spice"],
    ["crushed-tomatoes", "onions and celery", "4 lb", "other"],
    ["peaches", "carrots", "3 lb", "other"],
    ["applesauce", "pumpkin puree", "8 cups", "other"],
    ["apple-jelly", "jalapeño peppers", "2 lb", "other"],
    ["pickled-beets", "hard-boiled eggs", "24 eggs", "other"],
    ["quick-fresh-pack-dills", "cucumber and corn medley", "0.01 lb", "produce"],
    ["dilled-green-beans", "garlic", "4 lb", "spice"],
    ["chile-salsa", "a mystery mix", "3 lb", "other"],
  ])("%s with %s is found in any role", (id, name, amount, role) => {
    expect(dangers(id, added(name, amount, role))).toContain("untested-food");
  });

  it("is found beside the one it was tested for", () => {
    const beets = "beets, 2 to 2 1/2 inches, without tops";
    expect(dangers("pickled-beets", [beets, "beets and potatoes"])).toContain("untested-food");
    expect(dangers("pears", ["ripe pears, not Asian pears", "Asian pears"])).toEqual(
      expect.arrayContaining(["untested-food", "low-acid-boiling-water"]),
    );
  });

  it("is found despite a role or a name that would hide it", () => {
    expect(dangers("peach-jam", added("zucchini", "1 cup", "sugar"))).toContain("untested-food");
    expect(dangers("peach-jam", added("mashed roots", "3 lb", "sugar"))).toContain("untested-food");
    expect(dangers("dilled-green-beans", added("not-too-old corn", "3 lb"))).toContain(
      "untested-food",
    );
    expect(dangers("fish", [/cleaned fish, chilled until packed/, "smoked salmon"])).toContain(
      "untested-food",
    );
  });

  it("and so is what is not sound", () => {
    const dead: Change = ["none from dead or frosted vines", "the last from dead vines"];
    expect(dangers("crushed-tomatoes", dead)).toEqual(["unsound-produce"]);
  });

  it("but fruit may lie in fruit juice", () => {
    expect(found("sliced-apples", ["name: water", "name: apple juice"])).toEqual([]);
    expect(dangers("sliced-apples", ["name: water", "name: carrot juice"])).toContain(
      "untested-food",
    );
  });

  it("but a clove of garlic, a spice, or another variety is none", () => {
    const spiced: Change[] = [
      added("garlic cloves", "8 cloves", "spice"),
      added("bay leaves", "8 leaves", "spice"),
      added("oil-free mustard seed", "1 tsp", "spice"),
      added("calcium chloride crisper", "1 tsp"),
    ];
    for (const one of spiced) expect(found("dilled-green-beans", one)).toEqual([]);
    expect(found("chile-salsa", ["chile peppers", "jalapeños"])).toEqual([]);
    expect(found("chile-salsa", ["chile peppers", "habaneros"])).toEqual([]);
    const tomatoes: Change = [/sound ripe tomatoes, .*vines/, "Romas and San Marzanos"];
    expect(found("crushed-tomatoes", tomatoes)).toEqual([]);
    const squash: Change = ["pickling cucumbers, 4 to 5 inches", "slender zucchini"];
    expect(found("bread-and-butter-pickles", squash)).toEqual([]);
  });
});

describe("another food's table", () => {
  const hot = (id: string, from: string, to: string, ...more: Change[]) => {
    const raw: Change = [
      new RegExp(` {2}- \\{method: pressure, pack: raw, table: ${from}\\}\n`),
      "",
    ];
    return dangers(id, [`table: ${from}`, `table: ${to}`], raw, ...more);
  };

  it.each([
    ["meat-chunks", "meat-pieces-pressure", "stock-pressure"],
    ["meat-chunks", "meat-pieces-pressure", "mexican-tomato-sauce-pressure"],
    ["whole-kernel-corn", "corn-pressure", "mexican-tomato-sauce-pressure"],
    ["whole-kernel-corn", "corn-pressure", "soup-pressure"],
  ])("%s by %s is not %s", (id, from, to) => {
    expect(hot(id, from, to)).toContain("untested-food");
  });

  it("chicken is not stock, and without bones not chicken with bones", () => {
    const headspace: Change = ["headspaceIn: 1.25", "headspaceIn: 1"];
    expect(hot("chicken", "chicken-boned-pressure", "stock-pressure", headspace)).toContain(
      "untested-food",
    );
    expect(hot("chicken", "chicken-boned-pressure", "chicken-with-bones-pressure")).toContain(
      "untested-food",
    );
  });

  it("fish is not soup, dry beans are not snap beans, creamed corn is not whole corn", () => {
    const soup: Change = ["pack: raw, table: fish-pressure", "pack: hot, table: soup-pressure"];
    expect(dangers("fish", soup)).toContain("untested-food");
    expect(dangers("snap-beans", ["tender, crisp snap beans", "pinto beans, soaked"])).toContain(
      "untested-food",
    );
    expect(dangers("whole-kernel-corn", ["Whole-kernel corn", "Cream-style corn"])).toContain(
      "untested-food",
    );
  });

  it("tomatoes in juice, without liquid and whole are not those in water or crushed", () => {
    for (const [id, from, to] of [
      ["whole-tomatoes-in-juice", "table: tomatoes-in-juice", "table: tomatoes-in-water"],
      ["whole-tomatoes-no-liquid", "table: tomatoes-no-liquid", "table: tomatoes-in-water"],
      ["whole-tomatoes", "hot, table: tomatoes-in-water}", "hot, table: crushed-tomatoes}"],
    ] as const) {
      expect(dangers(id, [from, to]), id).toContain("untested-food");
    }
  });
});
