import { describe, expect, it } from "vitest";
import { GLOSSARY } from "../../src/kitchen/glossary.ts";
import { initialState } from "../../src/kitchen/state.ts";
import { MEANINGS, meanings } from "../../src/language/intents/all.ts";
import { understand } from "../../src/language/understand.ts";
import { CRITICAL_FACTORS } from "../../src/recipe/critical-factors.ts";
import { askedBack, telling } from "../../src/speech/intents.ts";
import { knownOf } from "../speech/answers/known.ts";
import { kitchenContext, underWayOf } from "./kitchen-context.ts";

const context = kitchenContext({
  running: [
    { id: "b-1", recipe: "dilled-green-beans", variety: "Provider" },
    { id: "b-2", recipe: "pickled-beets" },
    { id: "b-3", recipe: "sauerkraut", stages: [{ ...underWayOf("ferment"), checked: true }] },
  ],
  timers: [{ id: "t-1", label: "rice" }],
  factors: CRITICAL_FACTORS,
});
const examples = meanings().flatMap(([intent, { cost, example }]) =>
  example === undefined ? [] : [{ intent, cost, example }],
);

describe("a meaning", () => {
  it.each(examples)("has an example that means it: $intent, $example", ({ intent, example }) => {
    expect(understand(example, context).intent).toBe(intent);
  });

  it("has no example only where no sentence means it", () => {
    const without = meanings().filter(([, { example }]) => example === undefined);
    expect(without.map(([intent]) => intent)).toEqual(["seed-saved", "germination", "unknown"]);
    for (const [, { wordings, bags, spoken }] of without) {
      expect([wordings, bags, spoken]).toEqual([undefined, undefined, undefined]);
    }
  });

  const costly = examples.filter(({ cost }) => cost !== "harmless");
  it.each(costly)(
    "is asked about where a mistake may cost something: $example",
    ({ intent, example }) => {
      const question = askedBack(understand(example, context));
      // Any noise silences an alarm; asking about that would only make more noise.
      if (intent === "acknowledge") expect(question).toBeUndefined();
      else expect(question).toMatch(/^[A-Z\d].*\?$/);
    },
  );

  it("is asked about with what was heard of it", () => {
    const asked = (text: string) => askedBack(understand(text, context));
    expect(asked("set a timer for ten minutes")).toBe("A timer for ten minutes?");
    expect(asked("eleven pounds on the gauge")).toBe("Does the gauge read 11 pounds?");
    expect(asked("jars three and five didn't seal")).toBe("Did jars 3 and 5 not seal?");
    expect(asked("start the pickled beets")).toBe("Shall I start pickled beets?");
    expect(asked("hush")).toBeUndefined();
  });
});

describe("a word of the trade", () => {
  const terms = Object.keys(GLOSSARY);

  it("is explained if it can be asked about, and vice versa", () => {
    const asked = MEANINGS.explain.lists?.term?.match(/(?<={term=)[^}]+/g) ?? [];
    expect([...new Set(asked)].toSorted()).toEqual(terms.toSorted());
  });

  it.each([
    ["what is headspace", "headspace"],
    ["what's a pressure canner for", "pressure-canner"],
    ["what does siphoning mean", "siphoning"],
    ["what do you mean by come up time", "come-up-time"],
    ["what is a low-acid food", "low-acid"],
    ["how do i know it's boiling hard", "full-boil"],
    ["explain the seal check to me", "seal"],
  ])("is recognized in the question: %s", (text, term) => {
    expect(understand(text, context)).toMatchObject({ intent: "explain", slots: { term } });
  });

  it.each([
    ["what's the headspace", "how-much"],
    ["it's boiling hard", "boiling"],
    ["how long is the process", "time-left"],
  ])("leaves other meanings alone: %s", (text, intent) => {
    expect(understand(text, context).intent).toBe(intent);
  });

  it("is answered by what it means", () => {
    const state = initialState();
    const said = telling(state, understand("what is headspace", context), 0, knownOf(state));
    expect(said).toMatch(/^Headspace is the air left in a jar/);
  });
});
