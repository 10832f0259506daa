import { describe, expect, it } from "vitest";
import { pairResults, scoreTables, type Vote } from "../../../src/review/shelf/tasting.ts";

function votes(provider: string[], dragon: string[]): Vote[] {
  const one = (thing: string, over: string) => (taster: string, at: number) => {
    return { at, thing, over, taster };
  };
  return [
    ...provider.map(one("Provider", "Dragon Tongue")),
    ...dragon.map(one("Dragon Tongue", "Provider")),
  ];
}

const THINGS = ["Dragon Tongue", "Provider"];

describe("preferences", () => {
  it("call four of six easily chance", () => {
    const [pair] = pairResults(THINGS, votes(["a", "b", "c", "d"], ["e", "f"]));
    expect(pair).toMatchObject({ first: "Provider", forFirst: 4, tasters: 6 });
    expect(pair?.p).toBeCloseTo(0.6875, 4);
    expect(pair?.share.map((one) => Math.round(one * 100))).toEqual([30, 90]);
    expect(pair?.sentence).toBe(
      "4 of 6 liked Provider better than Dragon Tongue: could easily be chance (two-sided " +
        "p = 0.69); preferred by 30 to 90 % of people like these.",
    );
  });

  it("call six of six hard to put down to chance, and say that five can show nothing", () => {
    const [six] = pairResults(THINGS, votes(["a", "b", "c", "d", "e", "f"], []));
    expect(six?.sentence).toContain("hard to put down to chance (two-sided p = 0.031)");
    const [five] = pairResults(THINGS, votes(["a", "b", "c", "d", "e"], []));
    expect(five?.sentence).toContain("this few tasters cannot show a preference");
  });

  it("count one vote per person, the latest, whatever the case of the name", () => {
    const said = votes(["june", "June", "JUNE"], []);
    const changed = { at: 99, thing: "Dragon Tongue", over: "Provider", taster: "June" };
    expect(pairResults(THINGS, said)[0]).toMatchObject({ forFirst: 1, tasters: 1 });
    expect(pairResults(THINGS, [...said, changed])[0]).toMatchObject({
      first: "Dragon Tongue",
      forFirst: 1,
      tasters: 1,
    });
  });

  it("say that votes without a name may be one person's", () => {
    const unnamed = [1, 2].map((at) => ({ at, thing: "Provider", over: null, taster: null }));
    expect(pairResults(THINGS, unnamed)[0]?.sentence).toContain("2 gave no name");
  });

  it("claim no more for many unnamed votes than one person's vote can show", () => {
    const unnamed = [1, 2, 3, 4, 5, 6].map((at) => {
      return { at, thing: "Provider", over: null, taster: null };
    });
    const [pair] = pairResults(THINGS, unnamed);
    expect(pair).toMatchObject({ forFirst: 6, pOneUnnamed: 1 });
    expect(pair?.sentence).toContain("hard to put down to chance if each was a different person");
    const named = votes(["a", "b", "c", "d", "e", "f"], []);
    const [with1] = pairResults(THINGS, [...named, ...unnamed]);
    expect(with1?.sentence).not.toContain("if each was a different person");
  });

  it("never name a best variety", () => {
    const all = pairResults(THINGS, votes(["a", "b", "c", "d", "e", "f", "g"], []));
    expect(JSON.stringify(all)).not.toMatch(/best|winner/i);
  });
});

describe("scores", () => {
  const score = (taster: string | null, thing: string, crunch: number) => {
    return { at: 1, thing, taster, scores: { crunch } };
  };

  it("are listed as given, without an average", () => {
    const [table] = scoreTables(THINGS, [
      score("a", "Provider", 3),
      score("b", "Provider", 5),
      score("a", "Dragon Tongue", 4),
    ]);
    expect(table?.rows).toEqual([
      { thing: "Dragon Tongue", scores: [4] },
      { thing: "Provider", scores: [3, 5] },
    ]);
    expect(table?.p).toBeNull();
    expect(table?.sentence).toContain("Fewer than two named people");
  });

  it("are compared exactly where the same people scored the same lots", () => {
    const things = ["Blue Lake", ...THINGS];
    const given = ["a", "b", "c", "d", "e", "f"].flatMap((taster) => [
      score(taster, "Blue Lake", 1),
      score(taster, "Dragon Tongue", 2),
      score(taster, "Provider", 3),
    ]);
    const [table] = scoreTables(things, given);
    // All six agree on one of six orders: 1 / 6^5.
    expect(table?.p).toBeCloseTo(1 / 6 ** 5, 8);
    expect(table?.sentence).toContain("hard to put down to chance");
  });
});
