import { describe, expect, it } from "vitest";
import { added, type Change, found, rules } from "./edited-recipe.ts";

const dangers = (id: string, ...changes: Change[]) => rules(found(id, ...changes));
const BEANS = "dilled-green-beans";
const VINEGAR = "amount: 4 cups, role: acid";

describe("vinegar", () => {
  it.each([
    ["hidden by its role", added("water", "4 cups")],
    ["said to be optional", added("more water to cover", "8 cups", "water", ", optional: true")],
    ["of a soak that nobody drains", added("water", "8 cups", "water", ", into: soak")],
    ["melting from ice", added("ice", "4 cups")],
    ["in another liquid", added("cucumber brine", "6 cups")],
    ["called salt", added("salt water", "8 cups", "salt")],
    ["in bottles of no size", added("water", "4 bottles", "water")],
  ])("is thinned by water %s", (_where, change) => {
    expect(dangers(BEANS, change)).toContain("vinegar-diluted");
  });

  it("is thinned by water given jar by jar", () => {
    const line = '  - {id: w2, name: water, perJar: {pint: "1/2 cup"}, role: water}\n';
    expect(dangers(BEANS, ["ingredients:\n", `ingredients:\n${line}`])).toContain(
      "vinegar-diluted",
    );
  });

  it.each([
    ["optional", added("more green beans", "8 lb", "produce", ", optional: true")],
    ["of another role", added("more green beans", "8 lb")],
  ])("is too little for produce that is %s", (_where, change) => {
    expect(dangers(BEANS, change)).toContain("vinegar-diluted");
  });

  it("cannot be weighed against pieces of no known weight", () => {
    expect(dangers(BEANS, added("more beans", "400 beans", "produce"))).toContain(
      "produce-unweighed",
    );
    expect(dangers("pickled-beets", ["4 to 6 onions", "60 onions"])).toContain("vinegar-diluted");
  });

  it("must be in the pack that is processed", () => {
    const raw: Change = ["5, into: syrup", "5, into: syrup, pack: raw"];
    expect(dangers("bread-and-butter-pickles", raw)).toContain("vinegar-diluted");
  });

  it.each([
    "white vinegar, four percent",
    "cider vinegar we made ourselves",
    "vinegar diluted half with water",
    "kombucha vinegar",
  ])("called %s is too weak or of unknown strength", (name) => {
    expect(dangers(BEANS, ["white vinegar, 5 percent", name])).toContain("vinegar-strength");
  });

  it("counts for no more than its name says", () => {
    const strong: Change = [
      /amount: 4 cups, role: acid, strengthPercent: 5/,
      "amount: 1 cup, role: acid, strengthPercent: 20",
    ];
    expect(dangers(BEANS, strong)).toContain("vinegar-diluted");
  });

  it("may be weighed", () => {
    expect(found(BEANS, [VINEGAR, "amount: 960 g, role: acid"])).toEqual([]);
  });
});

describe("every table's formula", () => {
  it("is compared, not only the first's", () => {
    const two: Change[] = [
      [VINEGAR, "amount: 6 cups, role: acid"],
      added("water", "8 cups", "water"),
      [
        /processes:\n/,
        "processes:\n  - {method: boiling-water, pack: raw, table: fresh-pack-dills}\n",
      ],
      [/ {2}- \{id: onions.*\n/, ""],
    ];
    expect(dangers("bread-and-butter-pickles", ...two)).toContain("vinegar-diluted");
  });

  it("keeps the share of what brings no acid", () => {
    const swapped: Change[] = [
      ["tomatoes, amount: 5 lb", "tomatoes, amount: 1 lb"],
      ["chile peppers, amount: 2 lb", "chile peppers, amount: 6 lb"],
    ];
    expect(dangers("chile-salsa", ...swapped)).toEqual(["low-acid-share"]);
    expect(dangers("choice-salsa", ["amount: 6 cups", "amount: 1 cup"])).toEqual([
      "low-acid-share",
    ]);
  });

  it("takes lemon juice only where it is written to be bottled", () => {
    expect(dangers("crushed-tomatoes", ["bottled lemon juice", "juice of a lemon"])).toContain(
      "tomato-acid",
    );
  });

  it("needs its salt where a pickle is pasteurized", () => {
    const salt: Change = [/ {2}- \{id: salt,.*\n/, ""];
    expect(dangers("bread-and-butter-pickles", salt)).toEqual(["pasteurization"]);
    const warm: Change = [/ {2}- \{method: low-temp.*\n/, ""];
    expect(found("bread-and-butter-pickles", salt, warm)).toEqual([]);
  });
});

describe("a ferment", () => {
  it.each([
    ["more water", "fermented-dills", added("water", "8 cups")],
    ["more produce", "sauerkraut", added("cabbage", "20 lb")],
    ["a substitute", "sauerkraut", ["canning salt", "salt substitute"] as Change],
    ["salt that is poured off", "sauerkraut", ["role: salt}", "role: salt, into: soak}"] as Change],
  ])("has too little salt with %s", (_why, id, change) => {
    expect(dangers(id, change)).toContain("ferment-salt");
  });

  it("keeps its vinegar, its weeks, its warmth and its question", () => {
    expect(dangers("fermented-dills", ["1/4 cup", "1/4 tsp"])).toContain("vinegar-diluted");
    const short: Change[] = [
      ["typical: 25 d", "typical: 2 d"],
      ["window: 3 wk to 6 wk", "window: 1 d to 3 d"],
    ];
    expect(dangers("sauerkraut", ...short)).toEqual(["rest-window"]);
    const hot: Change = ["{min: 60, max: 75}", "{min: 90, max: 110}"];
    expect(dangers("sauerkraut", hot)).toEqual(["ferment-temperature"]);
    expect(dangers("sauerkraut", ["asks: [sound-ferment]", "asks: []"])).toEqual([
      "critical-unasked",
    ]);
  });
});

describe("what has no place in the jar", () => {
  it.each(["cornflour", "masa harina", "bread crumbs", "quinoa and couscous"])(
    "%s thickens",
    (name) => {
      expect(dangers("chile-salsa", added(name, "1 cup", "spice"))).toEqual(["thickener"]);
    },
  );

  it.each(["butter", "bacon drippings", "ghee", "heavy cream"])("%s is fat", (name) => {
    expect(dangers("stock", added(name, "1 cup"))).toEqual(["oil"]);
  });

  it("a little butter against a jam's foam is only warned of", () => {
    const findings = found("peach-jam", added("butter to keep down foam", "1/2 tsp"));
    expect(rules(findings)).toEqual([]);
    expect(rules(findings, "warning")).toEqual(["oil"]);
  });

  it("soda and lye use up acid", () => {
    expect(dangers(BEANS, added("baking soda", "1/4 cup"))).toEqual(["alkali"]);
    expect(found("dry-beans", added("baking soda", "1 tsp"))).toEqual([]);
  });

  it.each([
    ["stirring", "Stir three times and rinse."],
    ["rinsing a colander", "Rinse the colander three times."],
    ["rinses without an hour's soak", "Rinse quickly three times."],
  ])("lime is not rinsed off by %s", (_what, words) => {
    const limed: Change[] = [
      added("lime, food grade, for crispness", "1 cup", "other", ", into: soak"),
      ["let them drain well.", `let them drain well. ${words}`],
    ];
    expect(dangers("bread-and-butter-pickles", ...limed)).toEqual(["lime-rinses"]);
  });
});
