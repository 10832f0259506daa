import { describe, expect, it } from "vitest";
import { hear } from "../../src/language/hear.ts";
import { meanings } from "../../src/language/intents/all.ts";
import { askedBack } from "../../src/speech/intents.ts";
import { kitchenContext } from "./kitchen-context.ts";

const context = kitchenContext({ running: [{ id: "b-1", recipe: "dilled-green-beans" }] });
const meant = (text: string) => hear(text, context).commands.map(({ intent }) => intent);

describe("somebody hurt", () => {
  it("comes before whatever else was said, which is done all the same", () => {
    expect(meant("hand's scalded, I turned the heat off")).toEqual(["emergency", "done"]);
  });

  it("comes before a question in the same breath", () => {
    const text = "she ate a spoonful before I saw the fuzz, what do I do";
    expect(hear(text, context).commands).toMatchObject([
      { intent: "emergency", slots: { what: "ill" } },
    ]);
  });

  it.each(["we smoked the fish first", "it's smoked, smoked it yesterday", "the fire is too low"])(
    "is not meant by a small fire, nor by smoked food: %s",
    (text) => expect(meant(text)).not.toContain("emergency"),
  );

  it.each(["could you hand me that towel", "who took my good knife"])(
    "is not asked after where no word says of what: %s",
    (text) => expect(hear(text, context).reading).toBe("unknown"),
  );
});

describe("a meaning that is only asked", () => {
  it("does not answer a statement", () => {
    expect(meant("we're at 90000 feet")).toEqual([]);
  });

  const asked = meanings().filter(([, { asked }]) => asked);
  it.each(asked)("is asked about with a closed question: %s", (intent) => {
    expect(askedBack({ intent, slots: {}, confidence: 0.3 } as never)).toMatch(/^[A-Z].*\?$/);
  });
});
