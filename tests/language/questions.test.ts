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

describe("how to find what is asked", () => {
  const asking = (key: "altitude" | "gauge") => {
    const kind = key === "altitude" ? "altitude" : "choice";
    return kitchenContext({ recipes, running, question: { kind, key } });
  };

  it.each(["how do I find it", "where do I look that up", "how am I supposed to know that"])(
    "is the altitude where that is asked, and nothing else: %s",
    (text) => {
      expect(understand(text, asking("altitude")).slots).toEqual({ topic: "altitude" });
      expect(understand(text, asking("gauge")).slots).not.toEqual({ topic: "altitude" });
    },
  );
});
