/** Food is never taken to be sound on a guess. */
import { describe, expect, it } from "vitest";
import { hear } from "../../src/language/hear.ts";
import { MEANINGS } from "../../src/language/intents/all.ts";
import { CERTAIN, understand } from "../../src/language/understand.ts";
import { CRITICAL_FACTORS } from "../../src/recipe/critical-factors.ts";
import { kitchenContext } from "./kitchen-context.ts";

const context = kitchenContext({
  factors: CRITICAL_FACTORS,
  running: [{ id: "b-1", recipe: "dilled-green-beans", variety: "Provider" }],
});

/** Said in a way that no wording covers. */
const UNFORESEEN = [
  "right then we've got a proper rolling boil going on in Effie's great preserving pan",
  "there she goes like the clappers, one great rolling boil from here to Christmas",
  "every one of my lids has gone down with a pop overnight, lovely",
  "all nine of those have sealed up a treat",
  "steam is fairly belting out of that petcock in a solid jet now",
  "the little weight has started dancing about on top steadily",
  "that's the beans finished with their trimming at last",
];

describe("a report that clears a doubt and that only the model recognizes", () => {
  it.each(UNFORESEEN)("is not acted on: %s", (text) => {
    expect(understand(text, context).confidence).toBeLessThan(CERTAIN);
    const { commands } = hear(text, context);
    expect(commands.map(({ intent }) => MEANINGS[intent].cost)).not.toContain("clearing");
  });

  it("would be, if the model's certainty were enough", () => {
    const sure = UNFORESEEN.flatMap((text) => {
      const [best] = hear(text, context).candidates;
      return best && MEANINGS[best.intent].cost === "clearing" ? [best.confidence] : [];
    });
    expect(sure.filter((confidence) => confidence >= 0.6).length).toBeGreaterThan(2);
  });
});

describe("a report that begins with a doubt", () => {
  it.each([
    ...["I think", "I believe", "I reckon", "I'm pretty sure"],
    ...["I'm fairly sure", "I'm guessing", "I figure", "I suspect", "pretty sure"],
    ...["as far as I can tell", "from what I can see", "apparently", "I do believe"],
  ])("is known for what it is, and not certain: %s", (hedge) => {
    const { intent, confidence } = understand(`${hedge} it's boiling`, context);
    expect(intent).toBe("boiling");
    expect(confidence).toBeLessThan(CERTAIN);
  });
});
