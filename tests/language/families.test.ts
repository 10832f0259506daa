/** Reports as people word them: subject, verb, manner, place and what they put around it. */
import { describe, expect, it } from "vitest";
import type { Intent } from "../../src/kitchen/command.ts";
import { CERTAIN, understand } from "../../src/language/understand.ts";
import { kitchenContext } from "./kitchen-context.ts";

const context = kitchenContext({
  running: [
    { id: "b-1", recipe: "dilled-green-beans", variety: "Provider" },
    { id: "b-2", recipe: "pickled-beets" },
  ],
});

describe("a report in its own build", () => {
  it.each<[string, Intent, object]>([
    ["the damn thing's boiling like the clappers", "boiling", {}],
    ["the big canner is boiling its head off", "boiling", {}],
    ["rolling boil, and a good inch and a half over the lids", "boiling", { covered: true }],
    ["it's come to a boil that won't stir down", "boiling", {}],
    ["both pots are galloping away", "boiling", {}],
    ["that little pot at the back is boiling away nicely", "boiling", {}],
    ["it's boiling hard, start the clock", "boiling", {}],
    ["seven quarts in the pressure canner with the lid locked", "loaded", { count: 7 }],
    ["the whole lot has gone into the bath and the lid is on top", "loaded", {}],
    ["I set nine down in the rack", "loaded", { count: 9 }],
    ["we made ten lovely pints, all packed with their lids on", "jars-filled", { count: 10 }],
    ["I pressed each one in turn and they're all sealed", "sealed", { all: true }],
    ["every last lid has been drawn in", "sealed", { all: true }],
    ["I tapped them all and none of them gave", "sealed", { all: true }],
    ["one lid gives under my finger, the rest are firm", "seal-failed", { othersSealed: true }],
    ["two of the bastards didn't take", "seal-failed", { count: 2 }],
    ["jars two and five lifted right off in my hand", "seal-failed", { jars: [2, 5] }],
    ["Provider number three didn't seal", "seal-failed", { jars: [3], target: "provider" }],
    ["the stupid dial's sitting at eleven and a half", "pressure", { value: 11.5 }],
    ["the needle's at thirteen and steady as a rock", "pressure", { value: 13 }],
    ["the pressure has dropped to nothing on its own", "pressure", { value: 0 }],
    ["there's a proper jet of steam coming out of the vent", "venting", {}],
    ["the little weight is rocking three times a minute", "weight-rocking", {}],
    ["I wiped the rims with vinegar", "done", {}],
    ["that's all the trimming over", "done", {}],
    ["time's up and I got them all out on the towel", "done", { target: "jars" }],
    ["the beets are scrubbed, the beans not begun", "done", { target: "beets" }],
  ])("is surely one: %s", (text, intent, slots) => {
    const command = understand(text, context);
    expect(command).toMatchObject({ intent, slots });
    expect(command.confidence).toBeGreaterThanOrEqual(CERTAIN);
  });

  it.each([
    "it's boiling over",
    "it's a long way off a rolling boil",
    "not quite at a galloping boil",
    "it was boiling like mad yesterday",
    "when it's boiling like the clappers",
    "she'll be boiling like mad in a minute",
    "half an inch over the lids and boiling",
    "whole tomatoes, water bath, twenty-one pounds",
    "the kraut is twenty-five pounds",
    "the gauge reads eleven pounds too high",
    "the jars are in the dishwasher",
    "six fit in the fridge",
    "the others are fine",
    "I put the vinegar in",
    "cucumbers in",
    "I measured one",
    "a boil at one thirty-eight",
    "it's rattling",
    "none of them went down",
    "I trimmed none of the beans",
    "I haven't trimmed the beans with the knife",
    "all trimmed but the last pound",
    "the beets had a bath last week",
  ])("is not made of: %s", (text) => {
    const { intent, confidence } = understand(text, context);
    const cleared = [
      "weight-rocking",
      "boiling",
      "pressure",
      "loaded",
      "sealed",
      "done",
      "venting",
      "temperature",
    ];
    expect(cleared.includes(intent) && confidence >= CERTAIN).toBe(false);
  });
});
