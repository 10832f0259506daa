import { describe, expect, it } from "vitest";
import { hear } from "../../src/language/hear.ts";
import { kitchenContext, underWayOf } from "./kitchen-context.ts";

function heardAt(instructions: string, text: string) {
  const stages = [{ ...underWayOf("hands-on"), instructions }];
  const running = [{ id: "b-1", recipe: "dilled-green-beans", names: ["beans"], stages }];
  return hear(text, kitchenContext({ running })).commands;
}

const TRIM = "wash and trim wash the beans and heat a kettle.";

describe("where something is put ends a step", () => {
  it.each([
    ["fill one head of dill in each jar.", "the beans are in the jars"],
    ["chill put it in the refrigerator.", "the beans are in the fridge"],
    ["rest cover with two inches of ice.", "the beans are all in the ice"],
    ["chill the jars go into the refrigerator.", "the jars are in the fridge"],
  ])("that puts it there: %s", (instructions, text) => {
    expect(heardAt(instructions, text)).toMatchObject([{ intent: "done" }]);
  });

  it.each([
    "the garlic is in the crock",
    "the salt is in the fridge",
    "the ice is in the freezer",
    "all the jars are in the fridge",
    "the beans are in the dehydrator",
    "the lids are all in the refrigerator",
  ])("and no other: %s", (text) => {
    expect(heardAt(TRIM, text).map(({ intent }) => intent)).not.toContain("done");
  });
});
