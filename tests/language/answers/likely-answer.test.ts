import { describe, expect, it } from "vitest";
import { likelyAnswer } from "../../../src/language/answers/likely-answer.ts";
import type { OpenQuestion } from "../../../src/language/context.ts";
import { hear } from "../../../src/language/hear.ts";
import { utteranceOf } from "../../../src/language/words.ts";
import { CRITICAL_FACTORS } from "../../../src/recipe/critical-factors.ts";
import { kitchenContext } from "../kitchen-context.ts";

const PERCENT: OpenQuestion = { kind: "percent", key: "vinegar-5-percent", guards: true };
const LIDS: OpenQuestion = {
  ...{ kind: "choice", key: "new-lids", guards: true },
  ...{ choices: ["new", "used"], right: ["new"] },
};
const asked = (question: OpenQuestion) => kitchenContext({ factors: CRITICAL_FACTORS, question });
const answer = (text: string, question: OpenQuestion) =>
  likelyAnswer(utteranceOf(text), question, asked(question))?.slots;

describe("an answer of safety among other words", () => {
  it.each([
    ["let me tilt it to the light, five, yes, five percent, in tiny print", PERCENT, { value: 5 }],
    ["it is written there five procent", PERCENT, { value: 5 }],
    ["the kids tore the box, new, all of them new", LIDS, { value: "new" }],
  ])("is the one value that is said: %s", (text, question, slots) => {
    expect(answer(text, question)).toMatchObject(slots);
  });

  it.each([
    ["four, then again the other bottle says five", PERCENT],
    ["five, I think, it is hard to see", PERCENT],
    ["is it five?", PERCENT],
    ["new, all but two", LIDS],
    ["some new, some used", LIDS],
  ])("is none where it is said two ways, or not sure: %s", (text, question) => {
    expect(answer(text, question)).toBeUndefined();
  });

  it("is asked back and never taken", () => {
    const heard = hear("let me tilt it to the light, five percent in tiny print", asked(PERCENT));
    expect(heard).toMatchObject({ reading: "ask", commands: [] });
    expect(heard.candidates[0]).toMatchObject({ slots: { value: 5 } });
  });
});
