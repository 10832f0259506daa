import { describe, expect, it } from "vitest";
import { bigDigits, digitsWidth } from "../../src/screen/big-digits.ts";

describe("large digits", () => {
  it("take the rows and cells that are said of them", () => {
    for (const size of ["half", 1, 2, 3] as const) {
      const drawn = bigDigits("9:41", size);
      expect(drawn.length).toBe(size === "half" ? 3 : 5 * size);
      for (const line of drawn) expect(line.length).toBeLessThanOrEqual(digitsWidth("9:41", size));
    }
  });

  it("can be told apart by their shapes alone", () => {
    const shapes = [..."0123456789+TP"].map((one) => bigDigits(one, 1).join("\n"));
    expect(new Set(shapes).size).toBe(shapes.length);
    expect(new Set([..."0123456789"].map((one) => bigDigits(one, "half").join("\n"))).size).toBe(
      10,
    );
  });
});
