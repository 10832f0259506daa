import { describe, expect, it } from "vitest";
import { poundsOff } from "../../src/kitchen/decide/gauge-answers.ts";

describe("how far off a dial is", () => {
  it.each([
    ["a pound", 1],
    ["half a pound", 0.5],
    ["it reads one pound high", 1],
    ["it's a pound and a half high", 1.5],
    ["one and a half pounds high", 1.5],
    ["it's two pounds low", -2],
    ["1.5 pounds high", 1.5],
    ["it reads true", 0],
    ["it's spot on", 0],
  ])("is heard in so many words: %s", (words, pounds) => {
    expect(poundsOff(words)).toBe(pounds);
  });

  it.each(["is it a pound high?", "it isn't a pound", "a pound of beans in the sink", "maybe"])(
    "is not heard in: %s",
    (words) => {
      expect(poundsOff(words)).toBeUndefined();
    },
  );
});
