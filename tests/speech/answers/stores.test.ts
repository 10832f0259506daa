import { describe, expect, it } from "vitest";
import type { CommandOf } from "../../../src/kitchen/command.ts";
import { initialState } from "../../../src/kitchen/state.ts";
import { converted } from "../../../src/speech/answers/convert.ts";
import type { Known } from "../../../src/speech/answers/known.ts";
import { inPages, pantryAnswer, seedsAnswer } from "../../../src/speech/answers/stores.ts";
import { knownOf } from "./known.ts";

const state = initialState();
const NOW = Date.UTC(2027, 9, 1, 12);
const line = {
  ...{ batch: "b-1", title: "Dilled green beans", variety: "Provider", jar: "pint" },
  ...{ left: 8, place: "pantry", by: "2028-08-14" },
};
const beets = { ...line, batch: "b-2", title: "Pickled beets", variety: null, left: 1 };
const bad = { ...beets, batch: "b-3", place: "refrigerator", by: "2027-09-01" };

function stocked(given: Partial<ReturnType<Known["pantry"]>>): Known {
  const pantry = { lines: [line, beets], eatFirst: ["b-2"], throwOut: [], ...given };
  return { ...knownOf(state), pantry: () => pantry };
}

const ASKED: CommandOf<"pantry"> = { intent: "pantry", slots: {}, confidence: 1 };

describe("the pantry", () => {
  it("says what is left, where, until when, and what to eat first", () => {
    expect(pantryAnswer(state, ASKED, NOW, stocked({}))).toMatchObject({
      pages: [
        "Eat the pickled beets first. " +
          "Eight pints of Provider dilled green beans, in the pantry, best by August 14, 2028. " +
          "One pint of pickled beets, in the pantry, best by August 14, 2028.",
      ],
    });
  });

  it("puts what is past its date first, and never offers it", () => {
    const known = stocked({ lines: [line, bad], eatFirst: ["b-1"], throwOut: ["b-3"] });
    const answer = pantryAnswer(state, ASKED, NOW, known);
    expect(typeof answer === "string" ? answer : answer.pages[0]).toMatch(
      /^Past its date, so don't eat it: pickled beets, in the refrigerator\. Eat the Provider/,
    );
  });

  it("says so where there is none", () => {
    const none = { ...ASKED, slots: { target: "peaches" } };
    expect(pantryAnswer(state, none, NOW, stocked({}))).toBe(
      "I have no jars of peaches on record.",
    );
  });
});

describe("saved seed", () => {
  const lot = { crop: "cucumber", variety: "Boston", saved: "2027-09-10", tests: [] };
  const asked: CommandOf<"seeds"> = { intent: "seeds", slots: {}, confidence: 1 };

  it("is described by its lots and their last test", () => {
    const tests = [{ sentence: "9 of 10 sprouted" }, { sentence: "47 of 50 sprouted" }];
    const known = { ...knownOf(state), seeds: () => [{ ...lot, tests }] };
    expect(seedsAnswer(state, asked, NOW, known)).toMatchObject({
      pages: ["Boston cucumber seed, saved September 10: 47 of 50 sprouted."],
    });
  });

  // Two published seed-life lists and a chart, shortest to longest: onion 1, bean 3 to 4 years.
  it("is described by its published life where it is not on record", () => {
    const told = (target: string) =>
      seedsAnswer(state, { ...asked, slots: { target } }, NOW, knownOf(state));
    expect(told("onion")).toMatch(/^I have no onion seed on record\. .* one year;/);
    expect(told("bean")).toMatch(/3 to 4 years;/);
    expect(told("marble")).toBe("I have no marble seed on record.");
  });
});

describe("a long answer", () => {
  it("is read a few sentences at a time", () => {
    const { pages } = inPages(["a.", "b.", "c.", "d."]);
    expect(pages).toEqual(["A. B. C. Say more for the rest.", "D."]);
  });
});

describe("a conversion", () => {
  const told = (value: number, from: string, to: string, of?: string) =>
    converted({ slots: { value, from, to, ...(of ? { of } : {}) } });

  // NIST Handbook 44, appendix C: 4 cups in a quart, 16 tablespoons in a cup, 453.59 g in a pound.
  it.each([
    [1, "quart", "cup", "1 quart is 4 cups."],
    [0.25, "cup", "tablespoon", "0.25 cups are 4 tablespoons."],
    [7, "pound", "kilo", "7 pounds are 3.18 kilos."],
    [1, "cup", "ounce", "1 cup is 8 fluid ounces."],
    [212, "fahrenheit", "celsius", "212 degrees Fahrenheit is 100 degrees Celsius."],
    [13, "psi", "kpa", "13 pounds of pressure are 89.6 kilopascals."],
    [6200, "foot", "meter", "6200 feet are 1890 meters."],
  ])("of %d %s into %s is %s", (value, from, to, words) => {
    expect(told(value, from, to)).toBe(words);
  });

  // USDA Standard Reference: a cup of granulated sugar weighs 200 g.
  it("between weight and volume depends on the ingredient, with its source", () => {
    expect(told(1, "cup", "gram", "sugar")).toMatch(/^1 cup of sugar is about 200 grams\. By USDA/);
    expect(told(1, "cup", "gram", "marbles")).toMatch(/I don't know what marbles weighs/);
    expect(told(1, "cup", "gram")).toBe("That depends on what it is.");
  });

  it("between two different kinds of things is refused", () => {
    expect(told(1, "cup", "psi")).toBe("Those two don't measure the same thing.");
  });
});
