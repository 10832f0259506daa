import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { PickleMix } from "../../src/reckon/acid.ts";
import { acidAgainstTested, acidAtEquilibrium } from "../../src/reckon/acid.ts";
import { CITRIC, solvePh, strongIonsAt } from "../../src/reckon/charge-balance.ts";
import { PRODUCE_BUFFERS } from "../../src/reckon/produce-buffers.ts";
import { good, wrong } from "./good-result.ts";

const beans: PickleMix = {
  vinegarMl: 946,
  strengthPercent: 5,
  waterG: 944,
  produce: [{ name: "green beans", grams: 1814 }],
};

describe("acid at equilibrium", () => {
  it("is the vinegar's acid over the weight of everything", () => {
    const made = good(acidAtEquilibrium(beans));
    const total = 946 * 1.0052 + 944 + 1814;
    expect(made.value).toBeCloseTo((100 * 47.3) / total, 6);
    expect(made.acidGramsPerKg).toBeCloseTo(47.3 / 1.814, 6);
  });

  it("gives the pH to one decimal, inside a range of at least 0.3", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...PRODUCE_BUFFERS.map(({ names }) => names[0] ?? "")),
        fc.integer({ min: 100, max: 5000 }),
        fc.integer({ min: 100, max: 3000 }),
        fc.integer({ min: 0, max: 3000 }),
        (name, grams, vinegarMl, waterG) => {
          const mix = { vinegarMl, strengthPercent: 5, waterG, produce: [{ name, grams }] };
          const { ph, phRange } = good(acidAtEquilibrium(mix));
          const [low, high] = phRange ?? [0, 0];
          expect(Math.round((ph ?? 0) * 10)).toBeCloseTo((ph ?? 0) * 10, 9);
          expect(high - low).toBeGreaterThanOrEqual(0.3);
          expect(ph).toBeGreaterThanOrEqual(low);
          expect(ph).toBeLessThanOrEqual(high);
        },
      ),
      { numRuns: 30 },
    );
  });

  it("never falls in acid nor rises in pH with more vinegar", () => {
    let before = good(acidAtEquilibrium({ ...beans, vinegarMl: 100 }));
    for (let vinegarMl = 200; vinegarMl <= 2000; vinegarMl += 100) {
      const now = good(acidAtEquilibrium({ ...beans, vinegarMl }));
      expect(now.value).toBeGreaterThan(before.value);
      expect(now.ph ?? 9).toBeLessThanOrEqual(before.ph ?? 0);
      before = now;
    }
  });

  it("gives no pH for produce it knows nothing about, and says so", () => {
    const made = good(acidAtEquilibrium({ ...beans, produce: [{ name: "okra", grams: 900 }] }));
    expect(made.ph).toBeNull();
    expect(made.phRange).toBeNull();
    expect(made.value).toBeGreaterThan(1);
    expect(made.notes.join(" ")).toContain("nothing is known here about okra");
  });

  it("warns of weak vinegar and of more water than vinegar", () => {
    const weak = good(acidAtEquilibrium({ ...beans, strengthPercent: 4, waterG: 2000 }));
    expect(weak.notes.join(" ")).toContain("this is weaker");
    expect(weak.notes.join(" ")).toContain("only a tested recipe may be diluted so far");
  });

  it.each([0, 0.5, 50, -5, Number.NaN])("refuses vinegar of %d %%", (strengthPercent) => {
    expect(wrong(acidAtEquilibrium({ ...beans, strengthPercent }))).toContain("--strength");
  });

  it("never phrases a number as an approval", () => {
    for (const vinegarMl of [50, 500, 5000]) {
      const said = good(acidAtEquilibrium({ ...beans, vinegarMl })).notes.join(" ");
      expect(said).toContain("estimate for the record; never a reason to change a tested process");
      expect(said).not.toMatch(/\b(?:is safe|safe to|approved|enough acid|acidic enough)\b/);
    }
  });
});

describe("acid against the tested recipe", () => {
  const tested = { vinegarMl: 946, strengthPercent: 5, produceG: 4082 };

  it("is exact: a third less vinegar is two thirds of the acid", () => {
    const cut = good(acidAgainstTested({ ...tested, vinegarMl: (946 * 2) / 3 }, tested));
    expect(cut.value).toBeCloseTo(66.667, 2);
    expect(cut.notes[0]).toContain("not shelf-stable");
  });

  it("counts weaker vinegar and more produce alike", () => {
    expect(good(acidAgainstTested({ ...tested, strengthPercent: 4 }, tested)).value).toBeCloseTo(
      80,
    );
    const heaped = good(acidAgainstTested({ ...tested, produceG: 5102.5 }, tested));
    expect(heaped.value).toBeCloseTo(80);
  });

  it("calls the same recipe the same, whatever its size", () => {
    const doubled = { ...tested, vinegarMl: 1892, produceG: 8164 };
    const same = good(acidAgainstTested(doubled, tested));
    expect(same.value).toBeCloseTo(100, 10);
    expect(same.notes[0]).toContain("everything else must be as tested too");
  });

  it("cannot compare with nothing", () => {
    expect(wrong(acidAgainstTested({ ...tested, produceG: 0 }, tested))).toContain("by weight");
  });
});

describe("the balance of charges", () => {
  it("returns the pH whose strong ions were computed", () => {
    for (const ph of [3, 4.2, 5.6, 7]) {
      const solutes = [{ acid: CITRIC, molal: 0.02 }];
      const strong = strongIonsAt(ph, solutes);
      expect(solvePh(solutes, strong).ph).toBeCloseTo(ph, 5);
    }
  });
});
