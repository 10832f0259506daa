import { describe, expect, it } from "vitest";
import { bigDigits, digitRows, digitsWidth, largestSize } from "../../src/screen/big-digits.ts";
import { digitsText, lengthText, whenText } from "../../src/screen/clock-text.ts";

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

describe("clocks in words", () => {
  it("show seconds only where they matter", () => {
    expect(lengthText(41_000)).toBe("41 s");
    expect(lengthText(2 * MINUTE + 41_000)).toBe("2 min 41 s");
    expect(lengthText(12 * MINUTE + 1)).toBe("13 min");
    expect(lengthText(2 * HOUR + 5 * MINUTE)).toBe("2 h 05 min");
    expect(lengthText(72 * HOUR)).toBe("3 days");
  });

  it("cannot be mistaken for a time of day", () => {
    expect(digitsText(59 * MINUTE + 59_000)).toBe("59:59");
    expect(digitsText(2 * HOUR + 5 * MINUTE)).toBe("2h05");
    expect(digitsText(-130_000)).toBe("2:10");
  });

  it("name the day where it is another", () => {
    const now = Date.parse("2027-08-14T14:00:00-06:00");
    expect(whenText(now + HOUR, now, "America/Denver")).toBe("15:00");
    expect(whenText(now + 19 * HOUR, now, "America/Denver")).toBe("Sun 09:00");
    expect(whenText(now + 50 * 24 * HOUR, now, "America/Denver")).toBe("3 Oct");
  });
});

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

  it("are told apart by their shapes alone", () => {
    const shapes = [..."0123456789hd-+"].map((one) => bigDigits(one, 1).join("\n"));
    expect(new Set(shapes).size).toBe(shapes.length);
    expect(new Set([..."0123456789"].map((one) => bigDigits(one, "half").join("\n"))).size).toBe(
      10,
    );
  });
});
