/** A report is not acted on where its own meaning's file says what makes it less than plain. */
import { describe, expect, it } from "vitest";
import { hear } from "../../src/language/hear.ts";
import { MEANINGS } from "../../src/language/intents/all.ts";
import { CRITICAL_FACTORS } from "../../src/recipe/critical-factors.ts";
import { kitchenContext, underWayOf } from "./kitchen-context.ts";

function heard(text: string, stage: string, key?: string) {
  const factor = CRITICAL_FACTORS.find(({ id }) => id === key);
  const answer = factor && "answer" in factor ? factor.answer : undefined;
  const { right = [], wrong = [] } = answer?.type === "choice" ? answer : {};
  const kind = answer?.type === "choice" ? ("choice" as const) : ("yes-no" as const);
  const question = key && {
    kind,
    key,
    guards: true as const,
    choices: [...right, ...wrong],
    right,
  };
  return hear(
    text,
    kitchenContext({
      running: [{ id: "b-1", recipe: "dilled-green-beans", variety: "Provider" }],
      loads: [
        { id: "L1", canner: "canner", inside: stage !== "fill", stages: [underWayOf(stage)] },
      ],
      factors: factor ? [factor] : [],
      ...(question ? { question } : {}),
    }),
  );
}

/** Whether something was acted on that would clear a doubt. */
function cleared(text: string, stage: string, key?: string): boolean {
  const { reading, commands } = heard(text, stage, key);
  const clears = commands.some(
    ({ intent, confirms }) =>
      MEANINGS[intent].cost === "clearing" || MEANINGS[intent].plainly || confirms,
  );
  return reading === "sure" && clears;
}

describe("a report", () => {
  it.each([
    ["it's boiling", "process"],
    ["eleven pounds", "process"],
    ["all the jars are in", "hands-on"],
    ["all sealed", "seal-check"],
    ["it's venting", "heat"],
    ["eight pints filled", "fill"],
  ])("is acted on where it is plain: %s", (text, stage) => {
    expect(cleared(text, stage)).toBe(true);
  });

  it.each([
    ["it's boiling in the middle", "process"],
    ["it's boiling, coming up to it", "process"],
    ["it is boiling in this kitchen", "process"],
    ["just under eleven pounds", "process"],
    ["coming up on eleven pounds", "process"],
    ["climbing to eleven pounds", "process"],
    ["just under two hundred degrees", "process"],
    ["all in", "hands-on"],
    ["jars are in, two to go", "hands-on"],
    ["the jars are going in", "hands-on"],
    ["all sealed to me", "seal-check"],
    ["all sealed, rings hard", "seal-check"],
    ["it's venting, a wisp of steam", "heat"],
    ["venting, weak", "heat"],
    ["the feeders are filled, two of them", "fill"],
    ["eight pints filled, only half", "fill"],
    ["no it's rocking", "process"],
    ["the weight is rocking, once", "process"],
    ["it's done, half", "heat"],
    ["that's done, man", "heat"],
    ["jars are out, lids on the counter", "cool"],
  ])("is not acted on where it is shaken: %s", (text, stage) => {
    expect(cleared(text, stage)).toBe(false);
  });
});

describe("a choice", () => {
  it.each([
    ["new", "new-lids"],
    ["bottled", "bottled-juice"],
    ["hot", "hot-pack-hot"],
  ])("is taken where it says no more: %s", (text, key) => {
    expect(cleared(text, "fill", key)).toBe(true);
  });

  it("denies nothing by what is said of something else", () => {
    const denies = (text: string) =>
      heard(text, "fill", "new-lids").commands.some(({ slots }) => "held" in slots);
    expect(["used", "they're the old ones"].map(denies)).toEqual([true, true]);
    expect(["the bands are the old ones", "old jars"].map(denies)).toEqual([false, false]);
  });

  it.each([
    ["the jars are new", "new-lids"],
    ["bottled the lot", "bottled-juice"],
    ["hot ones", "hot-pack-hot"],
  ])("is not taken from what is said of something else: %s", (text, key) => {
    expect(cleared(text, "fill", key)).toBe(false);
  });
});
