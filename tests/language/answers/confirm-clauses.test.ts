/** What one clause says of a factor, to its value and to which way a guess leans. */
import { describe, expect, it } from "vitest";
import { confirmInClause, isGuess, partedFrom } from "../../../src/language/answers/confirms.ts";
import { utteranceOf } from "../../../src/language/words.ts";
import { CRITICAL_FACTORS } from "../../../src/recipe/critical-factors.ts";

type Factors = Parameters<typeof confirmInClause>[2];

const said = (text: string, factors: Factors = CRITICAL_FACTORS) => {
  const clause = utteranceOf(text);
  return confirmInClause(clause, clause, factors);
};
const vinegar = (more: object) => ({ factor: "vinegar-5-percent", ...more });

describe("a clause about a factor", () => {
  it.each([
    ["the vinegar is five percent", vinegar({ held: "yes", value: 5 })],
    ["the vinegar is four percent", vinegar({ held: "no", value: 4 })],
    ["the vinegar is six percent", vinegar({ held: "unsure", value: 6 })],
    ["the vinegar is not five percent", vinegar({ held: "no" })],
    ["not new lids", { factor: "new-lids", held: "no" }],
    ["new lids", { factor: "new-lids", held: "yes" }],
  ])("says what holds, with its value: %s", (text, confirm) => {
    expect(said(text)).toEqual(confirm);
  });

  it.each([
    ["I think the lids are new", { factor: "new-lids", held: "unsure", leans: "yes" }],
    ["the lids are new, I think", { factor: "new-lids", held: "unsure", leans: "yes" }],
    ["I think the lids are not new", { factor: "new-lids", held: "unsure", leans: "no" }],
    ["probably not new lids", { factor: "new-lids", held: "unsure", leans: "no" }],
    ["I think the vinegar is five percent", vinegar({ held: "unsure", value: 5, leans: "yes" })],
    ["I think the vinegar is six percent", vinegar({ held: "unsure", value: 6 })],
  ])("is only a guess before or after one, and leans: %s", (text, confirm) => {
    expect(said(text)).toEqual(confirm);
  });

  it.each(["I think", "probably", "", "the lids are new but one", "new lids except two"])(
    "says nothing: %j",
    (text) => {
      expect(said(text)).toBeUndefined();
    },
  );

  it("goes by the words of the recipe that asks, and by none that are empty", () => {
    const own = (...words: string[]) => [{ id: "rind-off", ask: "", words }] as unknown as Factors;
    const yes = { factor: "rind-off", held: "yes" };
    expect(said("the rind is off", own("the rind is off"))).toEqual(yes);
    expect(said("the rind is off", own("the peel is gone"))).toBeUndefined();
    expect(said("the peel is gone", own("the peel is gone"))).toEqual(yes);
    expect(said("the peel is gone", own("", "the peel is gone"))).toEqual(yes);
    expect(said("oh well", own(""))).toBeUndefined();
  });

  it("is a factor that is asked about, and no other", () => {
    const lids = CRITICAL_FACTORS.filter(({ id }) => id === "new-lids");
    expect(said("the vinegar is five percent", lids)).toBeUndefined();
    expect(said("new lids", lids)).toMatchObject({ held: "yes" });
    expect(said("new lids", [])).toBeUndefined();
  });
});

describe("the clauses of a sentence about factors", () => {
  const parted = (text: string, factors: Factors = CRITICAL_FACTORS) => {
    const { confirms, rest } = partedFrom(utteranceOf(text).words, factors);
    return [confirms.map(({ factor, held }) => `${factor}: ${held}`), textOf(rest)];
  };
  const textOf = (rest: readonly { word: string }[]) => rest.map(({ word }) => word).join(" ");

  it("are taken out of it, each once, with what joins them", () => {
    expect(parted("eight pints filled with new lids")).toEqual([
      ["new-lids: yes"],
      expect.stringMatching(/pints filled$/),
    ]);
    expect(parted("the vinegar is five percent and the lids are new")).toEqual([
      expect.arrayContaining(["vinegar-5-percent: yes", "new-lids: yes"]),
      expect.any(String),
    ]);
  });

  it("are none where something is excepted behind them, or in a story", () => {
    expect(parted("new lids except one")[0]).toEqual([]);
    expect(parted(`new lids ${"and then we sang ".repeat(8)}`)[0]).toEqual([]);
    expect(parted("the radio is on")).toEqual([[], "the radio is on"]);
    expect(parted("new lids", [])).toEqual([[], "new lids"]);
  });
});

describe("nothing but a guess", () => {
  it.each(["I think so", "probably", "I think", "well, I think so, probably", "yes, I think so"])(
    "is one: %s",
    (text) => {
      expect(isGuess(utteranceOf(text).words)).toBe(true);
    },
  );

  it.each(["yes", "the lids are new, I think", "no", "", "I think the lids are new"])(
    "is more or less than that: %j",
    (text) => {
      expect(isGuess(utteranceOf(text).words)).toBe(false);
    },
  );
});
