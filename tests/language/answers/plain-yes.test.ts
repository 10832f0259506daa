import { describe, expect, it } from "vitest";
import { hear } from "../../../src/language/hear.ts";
import { kitchenContext } from "../kitchen-context.ts";

const END = { kind: "yes-no", key: "end", guards: true } as const;
const intents = (text: string, context = kitchenContext({ question: END })) =>
  hear(text, context).commands.map(({ intent }) => intent);

describe("a yes to a question that guards safety", () => {
  it.each(["yes", "yes it did", "aye, the whole time", "yes, all the way through"])(
    "is taken where it stands alone: %s",
    (text) => expect(intents(text)).toEqual(["yes"]),
  );

  it.each([
    "yes, some of them",
    "yes, but I thinned it",
    "yes Auntie, I'm coming down",
    "yes, well, on one side",
    "yes, hang on, that is the doorbell",
    "the whole time, near enough",
  ])("clears nothing beside other words: %s", (text) => {
    expect(intents(text)).not.toContain("yes");
  });
});

describe("a report of seals", () => {
  const seals = kitchenContext({ question: { kind: "jars", key: "seals", guards: true } });

  it("is taken where it is plain", () => {
    expect(intents("all the lids are down", seals)).toEqual(["sealed"]);
  });

  it.each(["I think they're all down", "they look sealed", "they should be sealed by now"])(
    "is no report where it is only thought so: %s",
    (text) => expect(intents(text, seals)).not.toContain("sealed"),
  );
});
