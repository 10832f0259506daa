import { describe, expect, it } from "vitest";
import { lengthText, secondText, whenText } from "../../../src/session/view/clock-text.ts";

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

describe("clocks in words", () => {
  it("have one style, large and small", () => {
    expect(lengthText(41_000)).toBe("0:41");
    expect(lengthText(2 * MINUTE + 41_000)).toBe("2:41");
    expect(lengthText(59 * MINUTE + 59_000)).toBe("59:59");
    expect(lengthText(-130_000)).toBe("2:10");
    expect(lengthText(2 * HOUR + 5 * MINUTE)).toBe("2 h 05 min");
    expect(lengthText(72 * HOUR)).toBe("3 days");
  });

  it("end to the second", () => {
    const end = Date.parse("2027-08-14T14:00:07.500-06:00");
    expect(secondText(end, "America/Denver")).toBe("14:00:08");
  });

  it("name the day where it is not today", () => {
    const now = Date.parse("2027-08-14T14:00:00-06:00");
    expect(whenText(now + HOUR, now, "America/Denver")).toBe("15:00");
    expect(whenText(now + 19 * HOUR, now, "America/Denver")).toBe("Sun 09:00");
    expect(whenText(now + 50 * 24 * HOUR, now, "America/Denver")).toBe("3 Oct");
  });
});
