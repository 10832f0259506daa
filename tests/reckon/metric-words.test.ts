import { describe, expect, it } from "vitest";
import { metricText, metricWords } from "../../src/reckon/metric-words.ts";
import { wholeLibrary } from "../recipe/library-files.ts";

/** Units that a metric kitchen does not use; a gauge's pounds stand in brackets. */
const LEFT =
  /\b(?:inch(?:es)?|feet|ft|psi|lb|ounces?|Fahrenheit|gallons?|(?:cups?|pounds?)(?!\)| weight))\b/i;

describe("quantities in metric units", () => {
  it.each([
    // NIST SP 811: 1 in = 2.54 cm, 1 ft = 0.3048 m, 1 lb = 0.45359237 kg, 1 psi = 6.894757 kPa.
    ["half an inch below the rim", "1.3 centimeters below the rim"],
    ["one-inch pieces", "2.5-centimeter pieces"],
    ["one and a quarter inches", "3.2 centimeters"],
    ["four to five inches", "10 to 13 centimeters"],
    ["at 6,200 feet", "at 1,890 meters"],
    ["At 140 degrees it is ready", "At 60 degrees it is ready"],
    ["at seventy to seventy-five degrees", "at 21 to 24 degrees"],
    ["eight degrees above boiling water", "4.4 Celsius degrees above boiling water"],
    ["five pounds at a time", "2.27 kilograms at a time"],
    ["two gallons of water", "7.58 liters of water"],
    ["four to four and a half cups", "0.95 to 1.07 liters"],
    ["canning salt: 1/2 cup (148 g)", "canning salt: 148 g"],
    ["apples: 13 lb 8 oz (6,125 g)", "apples: 6.13 kg"],
    ["twenty minutes at 14 pounds", "twenty minutes at 97 kilopascals (14 pounds)"],
    ["Put the 15 pound weight on.", "Put the 15 pound weight (104 kilopascals) on."],
    ["8 pints, 4 quarts", "8 pints, 4 quarts"],
    ["1 tablespoon in each pint", "1 tablespoon in each pint"],
  ])("%s: %s", (us, metric) => {
    expect(metricWords(us)).toBe(metric);
  });

  it("are never less pressure than was tested", () => {
    for (let psi = 5; psi <= 20; psi += 1) {
      const kPa = Number(/(\d+) kilopascals/.exec(metricWords(`${psi} pounds`))?.[1]);
      expect(kPa / 6.894757293168).toBeGreaterThanOrEqual(psi);
    }
  });

  it("are said once: what is metric already stays as it is", () => {
    for (const text of ["Two cups are 473 milliliters.", "at 97 kilopascals (14 pounds)"]) {
      expect(metricWords(text)).toBe(text);
      expect(metricWords(metricWords(text))).toBe(text);
    }
  });

  it("leave no inch, pound or Fahrenheit in any stage of any recipe", () => {
    for (const recipe of wholeLibrary().recipes.values()) {
      for (const { say, short = "", cautions } of recipe.stages) {
        const text = metricWords([say, short, ...cautions].join(" "));
        const rest = text.replace(/the last cup\b|level cups/g, "");
        expect(rest, `${recipe.id}: ${text}`).not.toMatch(LEFT);
      }
    }
  });

  it("of a page change only what is read", () => {
    const page = '<svg width="2 in"><text data-at="4 ft">6200 ft</text></svg>';
    expect(metricText(page)).toBe(
      '<svg width="2 in"><text data-at="4 ft">1,890 meters</text></svg>',
    );
  });
});
