import { describe, expect, it } from "vitest";
import { spanOf } from "../../src/review/report-words.ts";

describe("a span of a report", () => {
  it.each([
    [0, "at once"],
    [0.5, "0.5 min"],
    [60, "60 min"],
    [120, "2 h"],
    [2 * 1440, "2 days"],
  ])("of %d minutes is %j, and never none", (minutes, words) => {
    expect(spanOf(minutes)).toBe(words);
  });
});
