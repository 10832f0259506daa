import { describe, expect, it } from "vitest";
import { jarsFromProduce } from "../../src/reckon/jars.ts";
import { friedman } from "../../src/reckon/statistics/friedman.ts";
import { good, wrong } from "./good-result.ts";

const beans = { publishedLb: 14, publishedJars: 7, source: "USDA Complete Guide, Guide 4" };

describe("jars from produce", () => {
  it("are the published load's share", () => {
    const made = good(jarsFromProduce({ ...beans, weightLb: 12, cannerHolds: 7 }));
    expect(made).toMatchObject({ value: 6, unit: "jars", loads: 1, estimate: true });
    expect(made.range).toEqual([4, 9]);
    expect(made.jarsToReady).toBe(9);
  });

  it("more than a canner holds are several loads", () => {
    expect(good(jarsFromProduce({ ...beans, weightLb: 30, cannerHolds: 7 })).loads).toBe(3);
    expect(good(jarsFromProduce({ ...beans, weightLb: 30 })).loads).toBeNull();
  });

  it("are at least one, even from a handful", () => {
    expect(good(jarsFromProduce({ ...beans, weightLb: 0.3 })).value).toBe(1);
  });

  it.each([
    [{ weightLb: 0 }, "--for"],
    [{ weightLb: -2 }, "--for"],
    [{ weightLb: 5, cannerHolds: 0 }, "--canner-holds"],
    [{ weightLb: 5, cannerHolds: 2.5 }, "--canner-holds"],
  ])("refuse %j", (change, where) => {
    expect(wrong(jarsFromProduce({ ...beans, ...change }))).toContain(where);
  });
});

describe("tastings that cannot be compared", () => {
  it("are refused with how many can", () => {
    expect(wrong(friedman([[1, 2, 3]]))).toContain("two tasters or more");
    expect(wrong(friedman([[1], [2]]))).toContain("two to five things");
    const uneven = [
      [1, 2, 3],
      [1, 2],
    ];
    expect(wrong(friedman(uneven))).toContain("every taster must score every thing");
  });

  it("with nothing but ties show nothing", () => {
    const tied = Array.from({ length: 4 }, () => [5, 5, 5]);
    expect(good(friedman(tied))).toEqual({ statistic: 0, p: 1 });
  });

  it("count ties by their middle rank, and the p stays exact", () => {
    // Two tasters, each liking the third thing best and the others alike: the third thing is
    // picked by both in one of three ways.
    const scores = [
      [1, 1, 2],
      [1, 1, 2],
    ];
    expect(good(friedman(scores)).p).toBeCloseTo(1 / 3, 12);
  });
});
