import { describe, expect, it } from "vitest";
import { understand } from "../../src/language/understand.ts";
import { kitchenContext } from "./kitchen-context.ts";

const context = kitchenContext({ running: [] });

describe("an altitude that may be off", () => {
  it.each([
    ["we're at six thousand feet give or take two hundred", 6000, 200],
    ["six thousand feet, give or take 200 feet", 6000, 200],
    ["we're between nine hundred and eleven hundred feet", 1000, 100],
    ["the altitude is somewhere between nine hundred and a thousand feet", 950, 50],
    ["it's nine hundred to eleven hundred feet up here", 1000, 100],
    ["between five and six thousand feet", 5500, 500],
    ["we are between 300 and 350 meters", 1066, 82],
  ])("is understood with how far: %s", (said, feet, uncertaintyFt) => {
    const understood = understand(said, context);
    expect(understood).toMatchObject({ intent: "altitude", slots: { feet, uncertaintyFt } });
  });

  it("is only approximate where no other number was said", () => {
    const about = (feet: number) => ({ feet, about: true });
    expect(understand("we're at about six thousand feet", context).slots).toEqual(about(6000));
    expect(understand("a thousand feet more or less", context).slots).toEqual(about(1000));
    expect(understand("we're at six thousand feet", context).slots).toEqual({ feet: 6000 });
  });
});
