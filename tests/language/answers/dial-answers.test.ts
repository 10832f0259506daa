import { describe, expect, it } from "vitest";
import { understand } from "../../../src/language/understand.ts";
import { kitchenContext } from "../kitchen-context.ts";

const context = kitchenContext({ question: { kind: "gauge-off" } });

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
  ])("is heard in exactly those words: %s", (words, readsHighPsi) => {
    expect(understand(words, context)).toMatchObject({ intent: "answer", slots: { readsHighPsi } });
  });

  it.each([
    "never",
    "not ever",
    "not this year",
    "never tested it",
    "nobody has tested it",
    "nobody did",
    "we never had it tested",
    "I didn't test it",
    "it has never been checked",
    "no, we never did",
  ])("is not known of one that was never tested: %s", (words) => {
    expect(understand(words, context)).toMatchObject({
      intent: "answer",
      slots: { value: "never", untested: true },
    });
  });

  it.each(["I didn't get that", "not a pound", "never mind", "nobody is at the door"])(
    "says nothing of a test: %s",
    (words) => {
      expect(understand(words, context).slots).not.toHaveProperty("untested");
    },
  );

  it.each([
    "is it a pound high?",
    "it isn't a pound",
    "a pound of beans in the sink",
    "maybe",
    "about a pound high",
    "it should be a pound high",
    "it reads a pound high when it is cold",
  ])("is not heard in: %s", (words) => {
    expect(understand(words, context).slots).not.toHaveProperty("readsHighPsi");
  });
});
