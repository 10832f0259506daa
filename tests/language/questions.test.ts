import { describe, expect, it } from "vitest";
import { understand } from "../../src/language/understand.ts";
import { theLibrary } from "../scenarios/play.ts";
import { kitchenContext } from "./kitchen-context.ts";
import { QUESTIONS } from "./wordings/questions.ts";

const recipes = [...theLibrary().recipes.values()].map(({ id, title, names }) => {
  return { id, title, names };
});
const running = [
  { id: "b-1", recipe: "dilled-green-beans", variety: "Provider" },
  { id: "b-2", recipe: "pickled-beets" },
];
const context = kitchenContext({ recipes, running, timers: [{ id: "t-1", label: "rice" }] });

describe.each(QUESTIONS)("%s", (intent, wordings) => {
  it("is recognized in ten wordings and more", () => {
    expect(wordings.length).toBeGreaterThanOrEqual(10);
  });

  it.each(wordings)("is meant by %j", (text, value) => {
    const { intent: meant, slots, confidence } = understand(text, context);
    expect([meant, confidence >= 0.9]).toEqual([intent, true]);
    if (value !== undefined) expect(Object.values(slots).map(String)).toContain(value);
  });
});
