/** What is said where no process was tested: why, what is near, and what can be done instead. */
import { describe, expect, it } from "vitest";
import {
  chooseProcess,
  defaultJar,
  lasting,
  methodMeant,
  processOptions,
  refusedAnywhere,
  refusedJar,
  whyOffTheShelf,
} from "../../src/recipe/choose-process.ts";
import { gateBegin, gateFood, gateWith } from "../../src/recipe/foods/food-gate.ts";
import type { ProcessTables } from "../../src/recipe/process-table.ts";
import type { Recipe } from "../../src/recipe/recipe.ts";
import { recipeOf, wholeLibrary } from "./library-files.ts";

const library = wholeLibrary();
const { tables } = library;
const of = (id: string, change: Partial<Recipe> = {}): Recipe => {
  return { ...recipeOf(library, id), ...change };
};
type Option = Recipe["processes"][number];
const options = (recipe: Recipe) => processOptions(recipe).map((one) => named(one));
const named = ({ method, pack, table }: Option) => `${method} ${pack} ${table}`;

describe("the jar of a recipe", () => {
  it("is that of its yield only where the recipe takes that size", () => {
    const beans = of("dilled-green-beans");
    expect(defaultJar({ ...beans, jars: ["half-pint", "quart"] })).toBe("half-pint");
    expect(defaultJar({ ...beans, jars: ["half-pint", "pint"] })).toBe("pint");
    const { jars: _, ...yields } = beans.yield;
    expect(defaultJar({ ...beans, yield: yields, jars: ["quart", "pint"] })).toBe("quart");
  });

  it("is refused above the largest it is canned in, and never of what is not canned", () => {
    const beans = of("dilled-green-beans", { jars: ["half-pint", "pint"] });
    expect(refusedJar(beans, "pint")).toBeUndefined();
    expect(refusedJar(beans, "quart")).toMatch(/quart jars were not tested.*largest is pint/);
    expect(refusedJar({ ...beans, processes: [] }, "quart")).toBeUndefined();
    expect(refusedJar({ ...beans, jars: [] }, "quart")).toBeUndefined();
  });
});

describe("the ways to put a recipe on a shelf", () => {
  const water: Option = { method: "boiling-water", pack: "hot", table: "pickled-beets" };

  it("are its own, and steam for each that is boiling water", () => {
    expect(options(of("pickled-beets", { processes: [water] }))).toEqual([
      "boiling-water hot pickled-beets",
      "steam hot pickled-beets",
    ]);
  });

  it("are no steam of low-acid food, of pressure, or listed a second time", () => {
    expect(options(of("pickled-beets", { processes: [water], class: "low-acid" }))).toHaveLength(1);
    expect(options(of("snap-beans")).every((one) => one.startsWith("pressure"))).toBe(true);
    const both = [water, { ...water, method: "steam" } as const];
    expect(options(of("pickled-beets", { processes: both }))).toHaveLength(2);
  });

  it("are none of what is not tested, which says why", () => {
    const own = of("pickled-beets", { tested: false });
    expect(options(own)).toEqual([]);
    expect(whyOffTheShelf(own)).toMatch(/has no tested source: keep it in the refrigerator$/);
    expect(whyOffTheShelf({ ...own, heldBack: "too little acid" })).toMatch(
      /is not safe on a shelf \(too little acid\): keep it in the refrigerator$/,
    );
  });

  it("are the first of them unless a method or a pressure is named", () => {
    const [first] = processOptions(of("crushed-tomatoes"));
    const all = processOptions(of("crushed-tomatoes"));
    expect(methodMeant(all, {})).toBe(first?.method);
    expect(methodMeant(all, { atPsi: 11 })).toBe("pressure");
    expect(methodMeant(all, { atPsi: 11, method: "steam" })).toBe("steam");
    expect(methodMeant([], {})).toBeUndefined();
  });
});

describe("a process that was not tested says so", () => {
  const refusal = (recipe: Recipe, wish: object = {}, all: ProcessTables = tables) => {
    const choice = chooseProcess(recipe, all, { altitudeFt: 0, ...wish });
    return choice.ok ? "" : choice.reason;
  };
  const table = (id: string, change: object): ProcessTables => {
    const known = tables.tables[id];
    if (!known) throw new Error(`no ${id}`);
    return { ...tables, tables: { ...tables.tables, [id]: { ...known, ...change } } };
  };

  it("where pounds are asked of boiling water", () => {
    expect(refusal(of("pickled-beets"), { method: "boiling-water", atPsi: 11 })).toBe(
      "11 psi can be set only in a pressure canner, not in a boiling-water process",
    );
  });

  it("with the methods and packs that it has", () => {
    expect(refusal(of("pickled-beets"), { method: "low-temperature" })).toMatch(
      /it has: boiling water, atmospheric steam$/,
    );
    expect(refusal(of("pickled-beets"), { pack: "raw" })).toMatch(/raw pack.*the pack is: hot$/);
  });

  it("where its table was tested for another method or pack", () => {
    const recipe = of("pickled-beets");
    const said = /pickled-beets was not tested for hot pack in boiling water$/;
    expect(refusal(recipe, {}, table("pickled-beets", { method: "pressure" }))).toMatch(said);
    expect(refusal(recipe, {}, table("pickled-beets", { packs: ["raw"] }))).toMatch(said);
  });

  it("in steam, for low-acid food, a jar that was not tried, or too long a time", () => {
    const beets = of("pickled-beets", { class: "low-acid" });
    const steamed = { ...beets, processes: [{ ...STEAM, table: "pickled-beets" }] };
    const all = table("pickled-beets", { classes: ["low-acid"] });
    expect(refusal(steamed, { method: "steam" }, all)).toMatch(/never processed in a steam canner/);
    const wish = { method: "steam", jar: "pint-and-half" };
    expect(refusal(of("crushed-tomatoes"), wish)).toBe(
      "pint-and-half jars were not tested in a steam canner",
    );
    expect(refusal(of("pickled-beets"), { method: "steam", altitudeFt: 0 })).toBe("");
    expect(refusal(of("pickled-beets"), { method: "steam", altitudeFt: 6200 })).toBe("");
    expect(
      refusal(of("crushed-tomatoes"), { method: "steam", jar: "quart", altitudeFt: 6200 }),
    ).toMatch(/a steam canner runs dry/);
  });

  it("and a broken table is an error, no refusal", () => {
    const broken = { ...tables, tables: undefined } as unknown as ProcessTables;
    expect(() => refusal(of("pickled-beets"), {}, broken)).toThrow(TypeError);
  });

  it("anywhere, only where it is refused at every altitude and by either gauge", () => {
    expect(refusedAnywhere(of("snap-beans"), tables, {})).toBeUndefined();
    expect(refusedAnywhere(of("pickled-beets"), tables, {})).toBeUndefined();
    expect(refusedAnywhere(of("pickled-beets"), tables, { pack: "raw" })).toMatch(/no raw pack/);
    // The setting is printed for the higher bands of a weighted gauge only.
    const weighted = { method: "pressure", atPsi: 15, gauge: "weighted" } as const;
    expect(refusedAnywhere(of("snap-beans"), tables, weighted)).toBeUndefined();
    const dial = { method: "pressure", atPsi: 15, gauge: "dial" } as const;
    expect(refusedAnywhere(of("snap-beans"), tables, dial)).toMatch(/15 psi is not a tested/);
    const twelve = { method: "pressure", atPsi: 12 } as const;
    expect(refusedAnywhere(of("snap-beans"), tables, twelve)).toBeUndefined();
  });

  it("but a time that lasts longer takes the jars and the water of its length", () => {
    const jam = chooseProcess(of("berry-jam"), tables, { altitudeFt: 0 });
    if (!jam.ok) throw new Error(jam.reason);
    expect(jam.terms).toMatchObject({ minutes: 5, sterileJars: true, coverIn: 1 });
    expect(lasting(jam.terms, 10)).toEqual({ ...jam.terms, minutes: 10, sterileJars: false });
    expect(lasting(jam.terms, 31)).toMatchObject({ minutes: 31, coverIn: 2, sterileJars: false });
  });
});

const STEAM = { method: "steam", pack: "hot" } as const;

describe("a food that was not tested", () => {
  const begin = (said: string) => gateBegin(library, said);
  const put = (id: string, said: string) => gateFood(library, of(id), said);
  const near = (gate: object) => {
    const { nearby, instead } = gate as { nearby?: string[]; instead?: string[] };
    return [nearby, instead];
  };

  it.each([
    ["the banana jam", ["apricot-jam", "berry-jam", "peach-jam"], []],
    ["pickled okra", 3, ["okra"]],
    ["pumpkin butter", ["apple-butter"], []],
    ["white peaches", ["peaches", "peach-jam"], []],
    ["peach mango salsa", ["chile-salsa", "choice-salsa"], []],
    ["garlic in oil", [], []],
    ["foxglove", [], []],
  ])("is offered the recipes next to it, three at most: %s", (said, nearby, instead) => {
    const gate = begin(said);
    expect(gate.is).toBe("untested");
    const [found, other] = near(gate);
    if (typeof nearby === "number") expect(found).toHaveLength(nearby);
    else expect(found).toEqual(nearby);
    expect(other).toEqual(instead);
  });

  it.each([
    ["the banana jam", /^Bananas are low in acid/, /^FDA/],
    ["pickled okra", /brine of its own that is not here/, /Guide 6$/],
    ["garlic in oil", /under oil can make botulism.*four days at most/, /garlic in oil/],
    ["foxglove", /poisonous, and not to be put up in any way/, /^$/],
    ["seaweed", /^No process here was tested for seaweed in this way\. Freeze it/, /^$/],
  ])("says why, and by which source: %s", (said, why, source) => {
    expect(begin(said)).toMatchObject({
      why: expect.stringMatching(why),
      source: expect.stringMatching(source),
    });
  });

  it("in a chosen recipe is near that recipe, and not offered it instead", () => {
    expect(near(put("berry-jam", "banana"))).toEqual([["berry-jam"], []]);
    const [nearby, instead] = near(put("crushed-tomatoes", "tomato sauce"));
    expect(nearby).toEqual(["crushed-tomatoes"]);
    expect(instead).toContain("tomato-juice");
    expect(instead).not.toContain("crushed-tomatoes");
    expect(put("crushed-tomatoes", "some pears")).toMatchObject({
      why: expect.stringMatching(/closest that was tested is crushed tomatoes/),
      source: expect.stringMatching(/Crushed Tomatoes, p\. 3-7$/),
      instead: ["pears"],
    });
  });

  it.each([
    ["crushed-tomatoes", "some pears", "untested"],
    ["crushed-tomatoes", "a pear", "untested"],
    ["crushed-tomatoes", "pears", "untested"],
    ["crushed-tomatoes", "Yellow Pears", "name-or-food"],
    ["crushed-tomatoes", "pear", "name-or-food"],
    ["crushed-tomatoes", "pear jam", "untested"],
    ["sliced-apples", "sweet potatoes", "untested"],
    ["cucumber-seed", "pear", "name-or-food"],
    ["pears", "asian", "untested"],
    ["peaches", "white", "untested"],
    ["snap-beans", "", "tested"],
  ] as const)(
    "may be a variety's name only in the singular, or with more words: %s of %s",
    (id, said, is) => {
      expect(put(id, said).is).toBe(is);
    },
  );

  it.each([
    ["peaches", "bacon", "untested"],
    ["peaches", "honey", "tested"],
    ["peaches", "zorkberries", "unknown"],
    ["dilled-green-beans", "dill", "tested"],
  ] as const)("along with a recipe's own is no variety: %s with %s", (id, said, is) => {
    const gate = gateWith(library, of(id), said);
    expect(gate).toMatchObject({ is });
    expect(gate).not.toHaveProperty("variety");
    if (is === "untested") {
      expect(gate).toMatchObject({ nearby: [id], instead: [], said, food: { name: "peach" } });
    }
    if (is === "tested") expect(gate).toMatchObject({ foods: [], recipe: id });
  });
});
