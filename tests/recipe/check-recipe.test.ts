import { describe, expect, it } from "vitest";
import { KINDS } from "../../src/kitchen/stages/kinds.ts";
import { checkRecipe, passes } from "../../src/recipe/check-recipe.ts";
import { type Change, found, library, rules } from "./edited-recipe.ts";

describe("every recipe of the library", () => {
  it("was read without problems", () => {
    expect(library.problems).toEqual([]);
  });

  for (const recipe of library.recipes.values()) {
    it(`${recipe.id} passes without a finding, except that it may be untested`, () => {
      const findings = checkRecipe(recipe, library.tables, KINDS).map(({ rule }) => rule);
      expect(findings).toEqual(recipe.tested ? [] : ["no-tested-source"]);
    });
  }
});

describe("a finding", () => {
  it("names rule, place with line, reason and source", () => {
    const [finding] = found("pickled-beets", [
      "amount: 4 cups, role: acid",
      "amount: 3 cups, role: acid",
    ]);
    expect(finding).toMatchObject({ rule: "vinegar-diluted", severity: "danger" });
    expect(finding?.where).toMatch(/^ingredients\.vinegar, line \d+$/);
    expect(finding?.message).toMatch(/75 percent of the tested/);
    expect(finding?.source).toMatch(/Guide 6/);
  });
});

describe("dangers of the process", () => {
  it("low-acid food in boiling water", () => {
    const bath = "{method: boiling-water, pack: hot, table: pickled-beets}";
    const findings = found("snap-beans", [
      "{method: pressure, pack: hot, table: snap-beans-pressure}",
      bath,
    ]);
    expect(rules(findings)).toContain("low-acid-boiling-water");
    expect(rules(findings)).toContain("untested-food");
  });

  it("plain vegetables called acidified, with no acid in them", () => {
    const findings = found("dilled-green-beans", [/ {2}- \{id: vinegar.*\n/, ""]);
    expect(rules(findings)).toContain("low-acid-boiling-water");
  });

  it("a time no table has", () => {
    expect(rules(found("pickled-beets", ["table: pickled-beets", "minutes: 10"]))).toEqual([
      "untested-time",
    ]);
    expect(rules(found("pickled-beets", ["table: pickled-beets", "table: my-beets"]))).toEqual([
      "untested-time",
    ]);
  });

  it("a pack, a method or a food the table was not tested for", () => {
    expect(
      rules(found("pears", ["pack: hot, table: pears}", "pack: raw, table: pears}"])),
    ).toContain("untested-pack");
    expect(
      rules(
        found("carrots", ["method: pressure, pack: hot", "method: low-temperature, pack: hot"]),
      ),
    ).toContain("untested-method");
    expect(rules(found("peaches", ["table: peaches-hot", "table: jam"]))).toContain(
      "untested-food",
    );
  });

  it("the time of another food", () => {
    const from = /table: [a-z-]+-pressure/g;
    const meat = found("meat-chunks", [from, "table: snap-beans-pressure"]);
    expect(rules(meat)).toEqual(["untested-food"]);
    expect(meat[0]?.where).toMatch(/^ingredients\.meat, line/);
    const dried = found("snap-beans", ["tender, crisp snap beans", "dried pinto beans"]);
    expect(rules(dried)).toEqual(["untested-food"]);
    const mushrooms = found("dilled-green-beans", [/tender green or yellow beans/, "mushrooms"]);
    expect(rules(mushrooms)).toEqual(["untested-food"]);
    expect(found("snap-beans", ["tender, crisp snap beans", "Dragon Tongue beans"])).toEqual([]);
  });

  it("onions and peppers put into tomatoes: the lemon juice is for the tomatoes alone", () => {
    const more = "ingredients:\n  - {id: more, name: onions, amount: 6 cups, role: produce}";
    const findings = found("crushed-tomatoes", ["ingredients:", more]);
    expect(rules(findings)).toEqual(["low-acid-boiling-water", "untested-food"]);
  });

  it("a jar larger than tested", () => {
    expect(rules(found("dilled-green-beans", ["jars: [pint]", "jars: [pint, quart]"]))).toEqual([
      "jar-too-large",
    ]);
    expect(
      rules(found("pickled-beets", ["jars: [pint, quart]", "jars: [quart, half-gallon]"])),
    ).toEqual(["jar-too-large"]);
  });

  it("headspace other than tested", () => {
    expect(rules(found("berry-jam", ["headspaceIn: 0.25", "headspaceIn: 0.5"]))).toEqual([
      "headspace",
    ]);
    expect(rules(found("snap-beans", ["headspaceIn: 1", "headspaceIn: 0.5"]))).toEqual([
      "headspace",
    ]);
  });

  it("steam past 45 minutes", () => {
    const steam =
      "- {method: steam, pack: hot, table: tomatoes-in-juice}\n  - {method: pressure, pack: hot";
    const never = found("whole-tomatoes-in-juice", ["- {method: pressure, pack: hot", steam]);
    expect(rules(never)).toEqual(["steam-too-long"]);
    const high = found("crushed-tomatoes", [
      "- {method: pressure",
      "- {method: steam, pack: hot, table: crushed-tomatoes}\n  - {method: pressure",
    ]);
    expect(rules(high)).toEqual([]);
    expect(rules(high, "warning")).toEqual(["steam-too-long"]);
  });

  it("pasteurization where it is not offered", () => {
    const added = "- {method: low-temperature, pack: hot, table: pasteurized-cucumbers}\nstages:\n";
    expect(rules(found("pickled-beets", ["stages:\n", `  ${added}`]))).toContain("pasteurization");
  });

  it("no sterile jars where the process may be under ten minutes", () => {
    expect(rules(found("dilled-green-beans", ["sterile-jars, ", ""]))).toEqual(["sterile-jars"]);
  });

  it("minutes written into a stage", () => {
    const into = (to: string) => found("pickled-beets", ["- {kind: process}", to]);
    expect(rules(into("- {kind: process, minutes: 10}"))).toEqual(["minutes-in-stage"]);
    expect(rules(into("- {kind: process, typical: 10 min}"))).toEqual(["minutes-in-stage"]);
    expect(rules(into("- {kind: process, say: Boil the jars 10 minutes.}"))).toEqual([
      "minutes-in-stage",
    ]);
  });

  it("no source: a refrigerator food and never shelf-stable", () => {
    const cut: [RegExp, string] = [/source:.*\n(?=note)/, ""];
    const shelf = found("pickled-beets", cut);
    expect(rules(shelf)).toEqual(["no-tested-source"]);
    const cold = found(
      "pickled-beets",
      cut,
      [/processes:\n.*\n/, ""],
      [/ {2}- \{kind: process\}\n.*\n.*\n/, ""],
    );
    expect(passes(cold)).toBe(true);
    expect(rules(cold, "note")).toEqual(["no-tested-source"]);
  });
});

describe("dangers of the mix", () => {
  it("vinegar under 5 percent, or of no known strength", () => {
    expect(rules(found("pickled-beets", ["strengthPercent: 5", "strengthPercent: 4"]))).toContain(
      "vinegar-strength",
    );
    expect(rules(found("pickled-beets", [", strengthPercent: 5", ""]))).toContain(
      "vinegar-strength",
    );
    for (const name of ["homemade vinegar", '"rice vinegar, 4 percent"']) {
      const findings = found("pickled-beets", ['"vinegar, 5 percent"', name]);
      expect(rules(findings)).toContain("vinegar-strength");
    }
  });

  it("more water than the tested recipe", () => {
    const change: [string, string] = ["amount: 2 cups, role: water", "amount: 4 cups, role: water"];
    expect(rules(found("pickled-beets", change))).toEqual(["vinegar-diluted"]);
  });

  it("more produce than the tested recipe for its vinegar", () => {
    expect(rules(found("chile-salsa", ["amount: 2 lb", "amount: 4 lb"]))).toEqual([
      "vinegar-diluted",
      "low-acid-share",
    ]);
    expect(rules(found("bread-and-butter-pickles", ["amount: 6 lb", "amount: 12 lb"]))).toEqual([
      "vinegar-diluted",
      "pasteurization",
    ]);
  });

  it("but a whole recipe doubled passes", () => {
    const doubled = found(
      "dilled-green-beans",
      ["amount: 4 lb", "amount: 8 lb"],
      ["amount: 4 cups, role: acid", "amount: 8 cups, role: acid"],
      ["amount: 4 cups, role: water", "amount: 8 cups, role: water"],
    );
    expect(doubled).toEqual([]);
  });

  it("a home-devised brine under one to one", () => {
    const findings = found(
      "dilled-green-beans",
      ["table: dilled-beans", "table: my-beans"],
      ["amount: 4 cups, role: acid", "amount: 3 cups, role: acid"],
    );
    expect(rules(findings)).toContain("vinegar-diluted");
  });

  it("too little bottled juice, or vinegar in its place", () => {
    expect(rules(found("choice-salsa", ["1 1/2 cups, role: acid", "1 cup, role: acid"]))).toEqual([
      "juice-short",
    ]);
    const swapped = found("choice-salsa", ["name: bottled lemon or lime juice", "name: vinegar"]);
    expect(rules(swapped)).toContain("juice-short");
    const pressed = found("choice-salsa", ["bottled lemon or lime", "freshly squeezed lime"]);
    expect(rules(pressed)).toEqual(["juice-short"]);
    const lemons = found("crushed-tomatoes", ["bottled lemon juice", "fresh lemon juice"]);
    expect(rules(lemons)).toEqual(["tomato-acid"]);
  });

  it("too little acid for tomatoes, by pint and quart", () => {
    expect(rules(found("crushed-tomatoes", ["quart: 2 tbsp", "quart: 1 tbsp"]))).toEqual([
      "tomato-acid",
    ]);
    expect(rules(found("crushed-tomatoes", ["pint: 1 tbsp", "pint: 1 tsp"]))).toEqual([
      "tomato-acid",
    ]);
    expect(rules(found("crushed-tomatoes", ["quart: 1/2 tsp", "quart: 1/4 tsp"]))).toEqual([
      "tomato-acid",
    ]);
    expect(rules(found("crushed-tomatoes", [/ {2}- \{id: lemon-juice.*\n/, ""]))).toEqual([
      "tomato-acid",
    ]);
    expect(rules(found("crushed-tomatoes", ["acid-in-every-jar, ", ""]))).toEqual(["tomato-acid"]);
  });

  it("tomatoes called plain acid food, with no acid added", () => {
    const findings = found(
      "crushed-tomatoes",
      ["class: tomato", "class: acid"],
      [/ {2}- \{id: lemon-juice.*\n/, ""],
      [/ {2}- \{id: citric-acid.*\n/, ""],
    );
    expect(rules(findings)).toContain("tomato-acid");
  });

  it("less salt in a ferment", () => {
    expect(rules(found("sauerkraut", ["amount: 3/4 cup", "amount: 1/2 cup"]))).toEqual([
      "ferment-salt",
    ]);
    expect(rules(found("sauerkraut", ["name: canning salt", "name: flake kosher salt"]))).toEqual([
      "ferment-salt",
    ]);
    expect(rules(found("fermented-dills", ["amount: 8 cups", "amount: 12 cups"]))).toEqual([
      "vinegar-diluted",
      "ferment-salt",
    ]);
  });

  it("lime without its three rinses", () => {
    const lime = "- {id: lime, name: pickling lime, amount: 1 cup, role: lime}\nprocesses:";
    const limed: [string, string] = ["processes:", `  ${lime}`];
    expect(rules(found("bread-and-butter-pickles", limed))).toEqual(["lime-rinses"]);
    const byName = lime
      .replace("pickling lime", "calcium hydroxide")
      .replace("e: lime", "e: other");
    expect(rules(found("bread-and-butter-pickles", ["processes:", `  ${byName}`]))).toEqual([
      "lime-rinses",
    ]);
    const rinsed = "say: Rinse it and soak it an hour in fresh water, three times over.";
    const change: [RegExp, string] = [/say: Tip the cucumbers.*/, rinsed];
    expect(found("bread-and-butter-pickles", limed, change)).toEqual([]);
  });

  it("flour or starch", () => {
    const flour = "  - {id: flour, name: flour, amount: 1 cup, role: other}\nprocesses:";
    expect(rules(found("chile-salsa", ["processes:", flour]))).toEqual(["thickener"]);
    for (const name of ["arrowroot powder", "potato starch", "cooked rice", "egg noodles"]) {
      const starchy = flour.replace("name: flour", `name: ${name}`);
      expect(rules(found("chile-salsa", ["processes:", starchy]))).toEqual(["thickener"]);
    }
  });

  it("oil, and garlic in oil", () => {
    const fat = "  - {id: oil, name: olive oil, amount: 1 cup, role: fat}\nprocesses:";
    expect(rules(found("chile-salsa", ["processes:", fat]))).toEqual(["oil"]);
    expect(rules(found("dilled-green-beans", ["processes:", fat]))).toEqual([
      "garlic-in-oil",
      "oil",
    ]);
  });
});

describe("times and questions", () => {
  it("a rest outside its tested window", () => {
    const longer = found("bread-and-butter-pickles", ["window: 3 h to 4 h", "window: 3 h to 12 h"]);
    expect(rules(longer, "warning")).toEqual(["rest-window"]);
    expect(passes(longer)).toBe(true);
  });

  it("cooling outside 12 to 24 hours", () => {
    const cool = (to: string) => found("pickled-beets", ["- {kind: cool}", to]);
    const short = cool("- {kind: cool, window: 1 h to 2 h, typical: 1 h}");
    expect(rules(short)).toEqual(["cool-window"]);
    const long = cool("- {kind: cool, window: 12 h to 48 h, typical: 12 h}");
    expect(rules(long, "warning")).toEqual(["cool-window"]);
  });

  it.each<[string, string, Change]>([
    ["the headspace", "pickled-beets", ["headspace, ", ""]],
    ["the lids", "pickled-beets", [", new-lids", ""]],
    ["a hot pack", "pickled-beets", ["hot-pack-hot, ", ""]],
    ["the vinegar", "pickled-beets", ["asks: [vinegar-5-percent]", "asks: []"]],
  ])("a question nobody asks, of %s", (_, id, change) => {
    expect(rules(found(id, change), "warning")).toEqual(["critical-unasked"]);
  });

  it("a jam that is scaled", () => {
    expect(rules(found("berry-jam", ["scaling: one-batch\n", ""]), "warning")).toEqual([
      "one-batch",
    ]);
  });
});
