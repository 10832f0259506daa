import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { READABLE_MAX, readable } from "../../../src/voice/speaking/readable.ts";
import { nasties } from "../nasties.ts";

const ALPHABET = /^[A-Za-z0-9][A-Za-z0-9 ,.?!':-]*$|^$/;

describe("text reduced to what can be read aloud", () => {
  it.each([
    ["The brine is at 212 °F.", "The brine is at 212 degrees."],
    ["Keep it at 82°C", "Keep it at 82 degrees Celsius"],
    ["Leave ½ in. headspace", "Leave one half inch headspace"],
    ["2½ cups and 1 1/4 tsp", "2 and a half cups and 1 and a quarter teaspoons"],
    ["3/4 cup, 5/8 inch, 2/7 of it", "three quarters cup, five eighths inch, 2 over 7 of it"],
    ["12–24 hours", "12 to 24 hours"],
    ["5% vinegar & salt", "5 percent vinegar and salt"],
    ["It's 4:10; don't lift the lid", "It's 4:10, don't lift the lid"],
    ["Bread-and-butter pickles — batch 2", "Bread-and-butter pickles, batch 2"],
    ["It’s jalapeño time", "It's jalapeno time"],
    ["kitchen at 6,200 ft", "kitchen at 6,200 feet"],
    ["-40 degrees is −40 degrees", "minus 40 degrees is minus 40 degrees"],
    ['Lot "Blue Lake" (row 3)', "Lot Blue Lake row 3"],
    ["Well... yes?! Now", "Well. yes? Now"],
  ])("%s", (text, spoken) => {
    expect(readable(text)).toBe(spoken);
  });

  it.each([
    ["11 psi", "11 pounds per square inch"],
    ["6 ft", "6 feet"],
    ["1/4 in", "a quarter inch"],
    ["1/4 in. headspace", "a quarter inch headspace"],
    ["20-25 min", "20 to 25 minutes"],
    ["5 %", "5 percent"],
    ["212°F, 212 ºF and 212 F", "212 degrees, 212 degrees and 212 degrees"],
    ["95 °C or 95C", "95 degrees Celsius or 95 degrees Celsius"],
    ["1/16 in off the blossom end", "a sixteenth inch off the blossom end"],
    ["3/16 in slices", "three sixteenths inch slices"],
    ["1/4-1/2 in cubes", "a quarter to one half inch cubes"],
    ["1-1/2 cups, 2-1/4 tsp", "1 and a half cups, 2 and a quarter teaspoons"],
    ["1 1/4 in below the rim", "1 and a quarter inches below the rim"],
    ["Cut 1-in pieces.", "Cut 1 inch pieces."],
    ["Cover by 1 to 2 in. Wait.", "Cover by 1 to 2 inches. Wait."],
    ["2 c sugar, 2 C water", "2 cups sugar, 2 cups water"],
    ["1 T salt and 3 t dill", "1 tablespoon salt and 3 teaspoons dill"],
    ["2 tbsp. salt per qt", "2 tablespoons salt per qt"],
    ["a 5-lb bag, 12 lbs, 1 lb", "a 5 pound bag, 12 pounds, 1 pound"],
    [
      "8 fl oz, 12oz, 1.5L, 500 mL, 2 kg",
      "8 fluid ounces, 12 ounces, 1.5 liters, 500 milliliters, 2 kilograms",
    ],
    ["Boil 5 min. Then 1 h, 2 hrs, 30 sec.", "Boil 5 minutes. Then 1 hour, 2 hours, 30 seconds."],
    ["7 qts or 9 pts w/ dill @ 180F", "7 quarts or 9 pints with dill at 180 degrees"],
    ["~3 lb, ≥ 5 %, 75 kPa", "about 3 pounds, at least 5 percent, 75 kilopascals"],
  ])("a unit is said in words: %s", (text, spoken) => {
    expect(readable(text)).toBe(spoken);
    expect(readable(spoken)).toBe(spoken);
  });

  it.each([
    "Put 2 in the pot and 4 in each jar.",
    "Half the beans go in, then 1 in every jar.",
    "Batch 3 is done, 10 in all.",
    "Vitamin C, plan T and row 2 F's seed",
    "Jars 1 to 9 sealed at 4:10",
  ])("what only looks like a unit is left alone: %s", (text) => {
    expect(readable(text)).toBe(text);
  });

  it("keeps nothing that a speech program could take for an instruction", () => {
    for (const nasty of nasties("/tmp/marker")) expect(readable(nasty)).toMatch(ALPHABET);
  });

  it("drops whole terminal sequences, not only their first character", () => {
    expect(readable("\u001b[31mhot\u001b[0m jars")).toBe("hot jars");
    expect(readable("\u001b]0;owned\u0007jars")).toBe("jars");
  });

  it("cuts a long text at a sentence, and one without sentences at a word", () => {
    const sentences = readable("Lift the jars straight up. ".repeat(100));
    expect(sentences.length).toBeLessThanOrEqual(READABLE_MAX);
    expect(sentences).toMatch(/up\.$/);
    const words = readable("beans ".repeat(1000));
    expect(words.length).toBeLessThanOrEqual(READABLE_MAX);
    expect(words).toMatch(/beans$/);
  });

  it("holds for any text at all, and reading twice changes nothing", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 900 }), (text) => {
        const once = readable(text);
        expect(once).toMatch(ALPHABET);
        expect(once.length).toBeLessThanOrEqual(READABLE_MAX);
        expect(readable(once)).toBe(once);
      }),
      { numRuns: 500 },
    );
  });

  it("holds for texts made of signs that have a spoken name", () => {
    const sign = fc.constantFrom(..."½¼1234 /°FC%&×+-–—−.,;:!?'()\"abc…°");
    fc.assert(
      fc.property(fc.array(sign, { maxLength: 60 }), (signs) => {
        const once = readable(signs.join(""));
        expect(once).toMatch(ALPHABET);
        expect(readable(once)).toBe(once);
      }),
      { numRuns: 2000 },
    );
  });

  it("takes bounded time for a gigantic text", () => {
    const started = performance.now();
    for (const unit of ["-", "1/2", "\u001b]", " ", "a-", "½", "'"]) readable(unit.repeat(1e6));
    expect(performance.now() - started).toBeLessThan(2000);
  });
});
