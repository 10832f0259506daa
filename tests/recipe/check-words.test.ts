import { describe, expect, it } from "vitest";
import { sentences, withDigits } from "../../src/recipe/rules/said-numbers.ts";
import { type Change, found, rules } from "./edited-recipe.ts";

const BEANS = "dilled-green-beans";
const dangers = (...changes: Change[]) => rules(found(BEANS, ...changes));
const process = (say: string): Change => ["- {kind: process}", `- {kind: process, say: "${say}"}`];
const trim = (say: string): Change => ["say: Wash the beans", `say: ${say} Wash the beans`];
const fill = (say: string): Change => ["below the rim.\n", `below the rim. ${say}\n`];

describe("numbers as they are said", () => {
  it.each([
    ["one and a quarter inches", "1.25 inches"],
    ["half an inch", "0.5 inch"],
    ["a half-inch", "0.5-inch"],
    ["1 1/4 inches", "1.25 inches"],
    ["a quarter of an hour", "0.25 hour"],
    ["twenty-five minutes", "25 minutes"],
    ["an hour", "1 hour"],
  ])("%s is %s", (said, digits) => {
    expect(withDigits(said)).toBe(digits);
  });

  it("stay in their sentence", () => {
    expect(sentences("Fill it. Wait 1.5 hours; then go.").length).toBeGreaterThan(2);
  });
});

describe("a time said to the cook", () => {
  it.each([
    process("Process it for five minutes."),
    process("Give them 300 seconds."),
    process("Leave the jars in the boiling canner a quarter of an hour."),
    fill("Then the boiling-water bath for five minutes."),
    ["- {kind: process}", "- {kind: process, title: process 5 minutes}"] as Change,
    trim("Process the pints for ten minutes at every altitude."),
  ])("where a table should give it is found: %j", (...change) => {
    expect(dangers(change as Change)).toContain("minutes-in-stage");
  });

  it.each([
    process("Cover the lids by 1 inch of water."),
    process("Two quarts of hot water ready for topping up, step 1 of 2."),
    trim("Put the canner on 45 minutes before."),
    trim("The water in the canner takes 40 minutes to warm."),
    trim("The whole process takes 90 minutes."),
    trim("Stir it so it can thicken, about 30 minutes."),
    trim("Boil the empty jars ten minutes to sterilize them."),
    ["and to a boil.", "and to a boil in the canner kettle; boiled 10 minutes."] as Change,
  ])("of something else is harmless: %j", (...change) => {
    expect(found(BEANS, change as Change)).toEqual([]);
  });
});

describe("words that contradict the recipe", () => {
  const said = "boiling brine, half an inch below the rim";

  it("another headspace", () => {
    expect(dangers([said, "boiling brine to the very rim"])).toEqual(["headspace"]);
    expect(dangers([said, "boiling brine, a quarter inch below the rim"])).toEqual(["headspace"]);
    expect(found(BEANS, [said, "boiling brine, 1/2 inch of headspace"])).toEqual([]);
  });

  it("a larger jar", () => {
    expect(dangers(["Cover with", "In half-gallon jars. Cover with"])).toEqual(["jar-too-large"]);
  });

  it.each([
    "No need to process, turn them upside down.",
    "Skip the canner and let the jars seal themselves.",
  ])("no process at all: %s", (words) => {
    expect(dangers(fill(words))).toEqual(["process-skipped"]);
    expect(found(BEANS, fill("Never turn them upside down."))).toEqual([]);
  });

  it("another mix", () => {
    const words = "Half the vinegar and twice the water, salt";
    expect(dangers(["Vinegar, water, salt", words])).toEqual(["amounts-in-words"]);
    expect(dangers(["Cover with", "Top up with a cup of water. Cover with"])).toEqual([
      "amounts-in-words",
    ]);
  });
});

describe("names that vouch for nothing", () => {
  it("a common question asked in other words", () => {
    const factor =
      'factors:\n  - {id: sterile-jars, ask: Are the jars nice?, words: ["yes"], source: me}\n';
    expect(dangers(["stages:\n", `${factor}stages:\n`])).toEqual(["factor-rewritten"]);
  });

  it("a publication that tests no recipes", () => {
    const own: Change = ["USDA Complete Guide to Home Canning", "our own kitchen"];
    expect(rules(found(BEANS, own), "warning")).toEqual(["unknown-source"]);
  });

  it("a quart that only the pasteurizing table has", () => {
    expect(rules(found("sweet-gherkins", ["jars: [pint]", "jars: [pint, quart]"]))).toEqual([
      "jar-too-large",
    ]);
  });

  it("garlic and oil as one ingredient", () => {
    expect(dangers(["name: garlic cloves", "name: garlic in olive oil"])).toEqual(
      expect.arrayContaining(["garlic-in-oil"]),
    );
  });
});
