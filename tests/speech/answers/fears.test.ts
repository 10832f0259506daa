import { describe, expect, it } from "vitest";
import { initialState } from "../../../src/kitchen/state.ts";
import { understand } from "../../../src/language/understand.ts";
import { telling } from "../../../src/speech/intents.ts";
import { kitchenContext } from "../../language/kitchen-context.ts";
import { knownOf } from "./known.ts";

function answered(text: string): string {
  const state = initialState();
  return String(telling(state, understand(text, kitchenContext()), 0, knownOf(state)));
}

describe("somebody who is afraid of botulism", () => {
  it.each([
    ["what is headspace", /air left in a jar/],
    ["what is a canner", /deep pot with a rack/],
    ["what is a pressure canner for", /hotter than boiling water/],
    ["what is botulism", /cannot see it, smell it or taste it/],
    ["what is low acid food", /needs a pressure canner/],
    ["how do I know it's boiling hard", /rolls over the whole surface/],
    ["can I get botulism from pickles", /tested recipe.*By the USDA/],
    ["what if it doesn't set", /as safe as set/],
    ["how do I find my altitude", /elevation on a map/],
    ["are you sure it is fifteen minutes", /goes with its recipe, jar, pack and altitude/],
    ["can I taste it", /Never taste/],
    ["is my grandmother's recipe safe", /Only if it was tested/],
    ["will the canner explode", /holds no pressure/],
    ["is a bulging jar safe to eat", /^No\. Don't taste it/],
    ["is it safe if it didn't seal", /new lid, for the whole time/],
    ["what happens if the power goes out", /Back within 2 hours/],
    ["is it safe to use old lids", /used once/],
    ["one of the jars is cloudy", /fizzing, a raised lid/],
    ["they sealed so they're safe", /proves nothing/],
    ["is it safe to can white peaches", /above pH 4\.6, and no process was tested.*By National/],
    ["is it safe to can peaches", /^I don't know that here/],
    ["are elderberries safe", /^Most elderberries are above pH 4\.6/],
    ["is it safe to can an elephant", /don't know that here\. Ask your extension service/],
  ])("gets an answer: %s", (text, answer) => {
    expect(answered(text)).toMatch(answer);
  });
});

describe("trouble", () => {
  it("is answered with what its source says", () => {
    expect(answered("two of the jars lost liquid")).toMatch(
      /less than half.*By the National Center/,
    );
  });

  it("says what to check where nobody said what is odd", () => {
    const state = initialState();
    const command = { intent: "trouble", slots: {}, confidence: 0.5 } as const;
    expect(telling(state, command, 0, knownOf(state))).toMatch(
      /^I don't know that here\. Look at the lid/,
    );
  });
});
