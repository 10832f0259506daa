import { describe, expect, it } from "vitest";
import { asksThroughout } from "../../../src/language/clauses/whole-clauses.ts";
import { hear } from "../../../src/language/hear.ts";
import { utteranceOf } from "../../../src/language/words.ts";
import { kitchenContext } from "../kitchen-context.ts";

const context = kitchenContext({
  running: [{ id: "b-1", recipe: "dilled-green-beans", variety: "Provider" }],
});

describe("a question mark", () => {
  it.each([
    ["the brine has come to the boil, shall I turn it down?", false],
    ["it's gone up to eighteen, what do I do?", false],
    ["it's boiling and the lids are covered?", true],
    ["is it boiling?", true],
  ])("asks all of it, or only what is said last: %s", (text, all) => {
    expect(asksThroughout(utteranceOf(text))).toBe(all);
  });

  it("hides no report before it", () => {
    const text = "the pickling liquor has come up to the boil, shall I turn it down a touch?";
    const { commands, candidates, asked } = hear(text, context);
    const meant = [...commands, ...candidates, ...(asked ? [asked] : [])];
    expect(meant.map(({ intent }) => intent)).toEqual(expect.arrayContaining(["boiling"]));
    expect(commands.map(({ intent }) => intent)).not.toContain("boiling");
  });

  it("makes a report that is asked none", () => {
    expect(hear("it's boiling and the lids are covered?", context).commands).toEqual([]);
  });
});

describe("a question", () => {
  it("is answered by what the whole sentence is about", () => {
    const { commands } = hear("the lid won't go down over the rim, it sits crooked", context);
    expect(commands).toMatchObject([{ intent: "trouble", slots: { what: "lid-wont-close" } }]);
  });

  it("does not hear a no in a word that begins like one", () => {
    const { commands } = hear("may I use a now and then shaken vinegar", context);
    expect(commands.some(({ slots }) => "act" in slots && slots.act === "less-acid")).toBe(false);
  });
});
