/** Several varieties of one food in one breath, each with its weight. */
import { describe, expect, it } from "vitest";
import { pairedLots } from "../../../src/language/clauses/paired-lots.ts";
import { utteranceOf } from "../../../src/language/words.ts";
import { kitchenContext } from "../kitchen-context.ts";

const beans = { id: "b-1", recipe: "dilled-green-beans", variety: "Provider" };
const beets = { id: "b-2", recipe: "pickled-beets" };
const begun = (text: string, given: Parameters<typeof kitchenContext>[0] = {}) =>
  pairedLots(utteranceOf(text), kitchenContext(given)).map(({ intent, slots }) => ({
    intent,
    ...slots,
  }));
const lot = (variety: string, weightLb: number, recipe = "dilled-green-beans") => {
  return { intent: "begin", recipe, variety, weightLb };
};

describe("several varieties, each with its weight", () => {
  it.each([
    [
      "dilly beans, both sorts, Provider two pounds, Dragon Tongue one and a half",
      [lot("Provider", 2), lot("Dragon Tongue", 1.5)],
    ],
    [
      "dilly beans, four pounds each of Provider and Blue Lake",
      [lot("Provider", 4), lot("Blue Lake", 4)],
    ],
    [
      "start dilly beans: four pounds of Provider, three of Dragon Tongue, three of Blue Lake",
      [lot("Provider", 4), lot("Dragon Tongue", 3), lot("Blue Lake", 3)],
    ],
    [
      "phew, get the dilly beans going, four pound of Provider and three of Dragon Tongue",
      [lot("Provider", 4), lot("Dragon Tongue", 3)],
    ],
    [
      "we do pickled beets, three pounds of Chioggia and five pounds of Detroit Dark",
      [lot("Chioggia", 3, "pickled-beets"), lot("Detroit Dark", 5, "pickled-beets")],
    ],
  ])("are a batch each: %s", (text, wanted) => {
    expect(begun(text)).toEqual(wanted);
  });

  it("are of the recipe that is begun already, the one of their name before the last", () => {
    const text = "Provider two pounds, Blue Lake three";
    expect(begun(text, { running: [beans, beets] })).toEqual([
      lot("Provider", 2),
      lot("Blue Lake", 3),
    ]);
    expect(begun("Contender two pounds, Blue Lake three", { running: [beans] })).toEqual([
      lot("Contender", 2),
      lot("Blue Lake", 3),
    ]);
    expect(begun(text)).toEqual([]);
  });
});

describe("nothing is begun", () => {
  it.each([
    ["by one variety", "dilly beans, Provider two pounds"],
    ["where a variety has no weight", "dilly beans, Provider two pounds, Blue Lake, Contender one"],
    ["without a unit", "dilly beans, Provider two, Blue Lake three"],
    ["by a question", "dilly beans, Provider two pounds, Blue Lake three pounds?"],
    ["by a tale", "last year we did dilly beans, Provider two pounds, Blue Lake three"],
    ["by what is denied", "not dilly beans, Provider two pounds, Blue Lake three"],
    ["by a report of jars", "dilly beans filled, Provider two pounds, Blue Lake three"],
    ["by a taste", "dilly beans, Provider tastes better, two pounds, Blue Lake three"],
  ])("%s", (_why, text) => {
    expect(begun(text)).toEqual([]);
  });

  it("while a question waits for an answer", () => {
    const text = "dilly beans, Provider two pounds, Blue Lake three";
    expect(begun(text)).toHaveLength(2);
    expect(begun(text, { question: { kind: "number" } })).toEqual([]);
  });

  it("of a recipe that the kitchen does not have", () => {
    const recipes = [{ id: "sauerkraut", title: "Sauerkraut", names: [] }];
    expect(begun("pickled beets, Chioggia two pounds, Bulls three", { recipes })).toEqual([]);
  });
});
