import { describe, expect, it } from "vitest";
import { brine, saltFor } from "../../src/reckon/salt.ts";
import { syrup } from "../../src/reckon/syrup.ts";
import { ML_PER_CUP } from "../../src/reckon/units.ts";
import { good, wrong } from "./good-result.ts";

const grams = (value: number) => ({ kind: "mass" as const, value });
const litres = (value: number) => ({ kind: "volume" as const, value: value * 1000 });
const cups = (value: number) => ({ kind: "volume" as const, value: value * ML_PER_CUP });

describe("salt for a percent", () => {
  it("of produce is that share of its weight", () => {
    const salt = good(saltFor(2.5, grams(1000)));
    expect(salt.value).toBeCloseTo(25, 10);
    expect(salt.basis).toBe("produce");
    expect(salt.notes[0]).toContain("produce's weight");
    expect(salt.tablespoons).toBeCloseTo(25 / 18.5, 10);
  });

  it("of a brine made from water is a share of salt and water together", () => {
    const salt = good(saltFor(5, litres(1)));
    expect(salt.basis).toBe("brine");
    expect(good(brine(grams(salt.value), litres(1))).value).toBeCloseTo(5, 10);
  });

  it("of water is grams for each 100 mL", () => {
    const salt = good(saltFor(5, litres(1), "water"));
    expect(salt.value).toBeCloseTo(50, 10);
    expect(salt.notes[0]).toContain("100 mL of water");
  });

  it.each([
    [120, grams(1000), undefined],
    [0, grams(1000), undefined],
    [-2, grams(1000), undefined],
    [27, litres(1), undefined],
    [Number.NaN, grams(1000), undefined],
  ] as const)("refuses %d percent", (percent, amount, basis) => {
    expect(wrong(saltFor(percent, amount, basis))).toContain("--percent");
  });

  it("refuses nothing to salt, and produce by volume", () => {
    expect(wrong(saltFor(2, grams(0)))).toContain("--for");
    expect(wrong(saltFor(2, litres(1), "produce"))).toContain("by weight");
  });
});

describe("a brine", () => {
  it("of weighed salt is exact, of a cup an estimate with the cup's range", () => {
    expect(good(brine(grams(50), litres(1)))).toMatchObject({ estimate: false, range: null });
    const byCup = good(brine(cups(0.5), cups(8)));
    expect(byCup.estimate).toBe(true);
    expect(byCup.range?.[0]).toBeLessThan(byCup.value);
    expect(byCup.notes.join(" ")).toContain("weigh it");
  });

  it("of flake salt is less than half as strong as of canning salt by its range", () => {
    const flake = good(brine(cups(0.5), cups(8), "flake-salt"));
    const canning = good(brine(cups(0.5), cups(8)));
    expect(flake.range?.[0]).toBeLessThan(canning.value / 2);
  });

  it("refuses more salt than water holds, and no water", () => {
    expect(wrong(brine(grams(500), litres(1)))).toContain("water holds no more");
    expect(wrong(brine(grams(5), litres(0)))).toContain("--water");
  });
});

describe("a syrup", () => {
  it("is sugar over sugar and water", () => {
    expect(good(syrup(grams(300), grams(700))).value).toBeCloseTo(30, 10);
  });

  it("says when the sugar stays dissolved only while hot", () => {
    expect(good(syrup(grams(700), grams(300))).notes.join(" ")).toContain("only while hot");
    expect(wrong(syrup(grams(700), grams(0)))).toContain("--water");
  });
});
