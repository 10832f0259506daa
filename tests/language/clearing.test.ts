/** Food is never taken for sound on a guess. */
import { describe, expect, it } from "vitest";
import { hear } from "../../src/language/hear.ts";
import { MEANINGS } from "../../src/language/intents/all.ts";
import { CRITICAL_FACTORS } from "../../src/recipe/critical-factors.ts";
import { kitchenContext } from "./kitchen-context.ts";

const context = kitchenContext({
  factors: CRITICAL_FACTORS,
  running: [{ id: "b-1", recipe: "dilled-green-beans", variety: "Provider" }],
});

/** Said as no wording has it. */
const UNFORESEEN = [
  "right then we've got a proper rolling boil going on in the big canner there",
  "she's going like the clappers, big rolling boil, lids well under",
  "every one of my lids has gone down with a pop overnight, lovely",
  "all nine of those have sealed up a treat",
  "steam is fairly belting out of that petcock in a solid jet now",
  "the little weight has started dancing about on top steadily",
  "that's the beans finished with their trimming at last",
];

describe("a report that clears a doubt and that only the model takes for one", () => {
  it.each(UNFORESEEN)("is not acted on: %s", (text) => {
    const { commands } = hear(text, context);
    expect(commands.map(({ intent }) => MEANINGS[intent].cost)).not.toContain("clearing");
  });

  it("would be, if how sure the model is were enough", () => {
    const sure = UNFORESEEN.flatMap((text) => {
      const [best] = hear(text, context).candidates;
      return best && MEANINGS[best.intent].cost === "clearing" ? [best.confidence] : [];
    });
    expect(sure.filter((confidence) => confidence >= 0.6).length).toBeGreaterThan(2);
  });
});
