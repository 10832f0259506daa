import { describe, expect, it } from "vitest";
import { digitsText, lengthText, whenText } from "../../../src/session/view/clock-text.ts";

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

  it("name the day where it is not today", () => {
    const now = Date.parse("2027-08-14T14:00:00-06:00");
    expect(whenText(now + HOUR, now, "America/Denver")).toBe("15:00");
    expect(whenText(now + 19 * HOUR, now, "America/Denver")).toBe("Sun 09:00");
    expect(whenText(now + 50 * 24 * HOUR, now, "America/Denver")).toBe("3 Oct");
  });
});
