import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { READABLE_MAX, readable } from "../../../src/voice/speaking/readable.ts";
import { nasties } from "../nasties.ts";

const ALPHABET = /^[A-Za-z0-9][A-Za-z0-9 ,.?!':-]*$|^$/;

describe("text reduced to what can be read aloud", () => {
  it.each([
    ["The brine is at 212 °F.", "The brine is at 212 degrees."],
    ["Keep it at 82°C", "Keep it at 82 degrees Celsius"],
    ["Leave ½ in. headspace", "Leave one half in. headspace"],
    ["2½ cups and 1 1/4 tsp", "2 and a half cups and 1 and a quarter tsp"],
    ["3/4 cup, 5/8 inch, 2/7 of it", "three quarters cup, five eighths inch, 2 over 7 of it"],
    ["12–24 hours", "12 to 24 hours"],
    ["5% vinegar & salt", "5 percent vinegar and salt"],
    ["It's 4:10; don't lift the lid", "It's 4:10, don't lift the lid"],
    ["Bread-and-butter pickles — batch 2", "Bread-and-butter pickles, batch 2"],
    ["It’s jalapeño time", "It's jalapeno time"],
    ["kitchen at 6,200 ft", "kitchen at 6,200 ft"],
    ["-40 degrees is −40 degrees", "minus 40 degrees is minus 40 degrees"],
    ['Lot "Blue Lake" (row 3)', "Lot Blue Lake row 3"],
    ["Well... yes?! Now", "Well. yes? Now"],
  ])("%s", (text, spoken) => {
    expect(readable(text)).toBe(spoken);
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
