import { describe, expect, it } from "vitest";
import { bigDigits, digitRows, digitsWidth, largestSize } from "../../src/screen/big-digits.ts";

describe("large digits", () => {
  it("are as large as the room allows and never larger", () => {
    for (const width of [3, 13, 30, 60, 120]) {
      for (const rows of [1, 3, 5, 10, 15]) {
        const size = largestSize("9:41", width, rows);
        if (!size) continue;
        const drawn = bigDigits("9:41", size);
        expect(drawn.length).toBe(digitRows(size));
        expect(drawn.length).toBeLessThanOrEqual(rows);
        for (const line of drawn)
          expect(line.length).toBeLessThanOrEqual(digitsWidth("9:41", size));
      }
    }
    expect(largestSize("9:41", 2, 15)).toBeUndefined();
    expect(largestSize("9:41", 200, 15)).toBe(3);
  });

  it("can be told apart by their shapes alone", () => {
    const shapes = [..."0123456789hd-+"].map((one) => bigDigits(one, 1).join("\n"));
    expect(new Set(shapes).size).toBe(shapes.length);
    expect(new Set([..."0123456789"].map((one) => bigDigits(one, "half").join("\n"))).size).toBe(
      10,
    );
  });
});
