import { describe, expect, it } from "vitest";
import { nextMatch } from "../../src/kitchen/cron.ts";
import {
  instantOf,
  isoWithOffset,
  isZone,
  localIso,
  offsetMs,
  parseIso,
} from "../../src/kitchen/time.ts";

const DENVER = "America/Denver";
const HOUR = 3_600_000;

describe("wall time in a zone", () => {
  it("is written with its offset, and read back", () => {
    const instant = Date.UTC(2027, 7, 14, 14);
    expect(isoWithOffset(instant, DENVER)).toBe("2027-08-14T08:00:00-06:00");
    expect(parseIso("2027-08-14T08:00:00-06:00", DENVER)).toBe(instant);
    expect(parseIso("2027-08-14T08:00", DENVER)).toBe(instant);
    expect(localIso(instant, DENVER)).toBe("2027-08-14T08:00:00");
  });

  it("moves a time that never happens forward; of one that happens twice it is the first", () => {
    const spring = { year: 2027, month: 3, day: 14, hour: 2, minute: 30, second: 0 };
    expect(localIso(instantOf(spring, DENVER), DENVER)).toBe("2027-03-14T03:30:00");
    const autumn = { year: 2027, month: 11, day: 7, hour: 1, minute: 30, second: 0 };
    expect(offsetMs(instantOf(autumn, DENVER), DENVER)).toBe(-6 * HOUR);
  });

  it("takes no text for a time that is none", () => {
    for (const text of ["", "noon", "2027-13-01", "2027-02-30T08:00", "2027-08-14T25:00"]) {
      expect(parseIso(text, DENVER)).toBeUndefined();
    }
  });

  it("knows a zone by its name", () => {
    expect(isZone(DENVER)).toBe(true);
    expect(isZone("Mars/Olympus")).toBe(false);
  });
});

describe("a recurring time", () => {
  const from = Date.UTC(2027, 7, 14, 14);
  const next = (expression: string, after = from) => {
    const found = nextMatch(expression, after, DENVER);
    return found === undefined ? undefined : localIso(found, DENVER);
  };

  it.each([
    ["0 9 * * *", "2027-08-14T09:00:00"],
    ["0 8 * * *", "2027-08-15T08:00:00"],
    ["0 9 * * 1,3,5", "2027-08-16T09:00:00"],
    ["0 9 * * 7", "2027-08-15T09:00:00"],
    ["*/20 8 * * *", "2027-08-14T08:20:00"],
    ["15 10 1 1 *", "2028-01-01T10:15:00"],
    ["0 9 29 2 *", "2028-02-29T09:00:00"],
  ])("%s is next at %s", (expression, expected) => {
    expect(next(expression)).toBe(expected);
  });

  it("keeps the hour of the wall when the clocks change", () => {
    const before = parseIso("2027-11-06T10:00", DENVER) as number;
    expect(next("0 9 * * *", before)).toBe("2027-11-07T09:00:00");
  });

  it("is none where the expression is none, or never comes", () => {
    for (const text of ["", "9 * * *", "61 9 * * *", "0 9 * * mon", "0 9 30 2 *", "0 0 */0 * *"]) {
      expect(next(text)).toBeUndefined();
    }
  });
});
