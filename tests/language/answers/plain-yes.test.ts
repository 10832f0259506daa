import { describe, expect, it } from "vitest";
import { COVERED_OR_NOT } from "../../../src/kitchen/questions/heard-doubts.ts";
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

describe("a question whether the lids are covered", () => {
  const COVER = { ...END, key: "cover", ...COVERED_OR_NOT, choices: COVERED_OR_NOT.alsoSaid };
  const answers = (text: string) => intents(text, kitchenContext({ question: COVER }));

  it.each(["covered", "they are covered", "yes they're covered", "all covered", "all under"])(
    "is answered in its own words: %s",
    (text) => expect(answers(text)).toEqual(["yes"]),
  );

  it.each(["not covered", "some are out", "uncovered", "some of them are out of the water"])(
    "is denied in them: %s",
    (text) => expect(answers(text)).toEqual(["no"]),
  );

  it.each([
    "I think they're covered",
    "are they covered",
    "were they covered",
    "nearly covered",
    "covered, mostly",
    "covered except one",
    "they should be covered",
    "I covered the pot",
    "cover it",
    "covered in foam",
    "half of them are covered",
    "covered a minute ago",
  ])("is not answered by a piece of them: %s", (text) => {
    expect(answers(text)).not.toContain("yes");
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
