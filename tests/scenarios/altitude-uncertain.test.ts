import { describe, expect, it } from "vitest";
import { replay } from "../../src/kitchen/evolve.ts";
import { initialState } from "../../src/kitchen/state.ts";
import { Story } from "../kitchen/story.ts";
import { allSaid, onlyBatch, play } from "./play.ts";

/** Dilled beans: 5 minutes to 1,000 ft, 10 to 6,000 ft, 15 above. */
const BEANS = "dilled-green-beans";

describe("an altitude that may be off", () => {
  it.each([
    ["we're at a thousand feet", 5],
    ["we're at about a thousand feet", 10],
    ["we're at exactly a thousand feet", 5],
    ["we're at about eight hundred feet", 5],
    ["we're between nine hundred and eleven hundred feet", 10],
    ["we're at six thousand feet give or take two hundred", 15],
    ["we're at about fifty three hundred feet", 10],
    ["we're at about fifty eight hundred feet", 15],
  ])("takes the higher band across a band's edge: %s", async (said, minutes) => {
    const played = await play(BEANS, `0:00 ${said}\n+0:00 [cook until done]`);
    expect(onlyBatch(played).process).toMatchObject({ testedMinutes: minutes });
    expect(onlyBatch(played).verdict).toBe("as-tested");
  });

  it("is repeated with the feet it is taken as", async () => {
    const played = await play(BEANS, "0:00 we're at about a thousand feet");
    expect(allSaid(played)).toContain("Give or take 100 feet, so I go by 1,100 feet.");
  });

  it("raises running processes, as a higher altitude does", async () => {
    const played = await play(
      BEANS,
      `0:00 we're at nine hundred feet\n+0:00 [cook until process]
+0:00 it's boiling and the lids are covered\n+0:01 we're at about a thousand feet
+0:00 [cook until done]`,
    );
    expect(onlyBatch(played).process).toMatchObject({ testedMinutes: 10, achievedMinutes: 10 });
  });

  it("is asked for in a bare number and may be vague there too", () => {
    const story = new Story(null);
    story.begins(0, BEANS);
    story.says(1, "answer", { value: 1000, about: true });
    expect(story.state.kitchen).toMatchObject({ altitudeFt: 1000, altitudeUncertaintyFt: 100 });
    expect(replay(story.events)).toEqual(story.state);
  });

  it("is exact in a journal from before it was written down", () => {
    const story = new Story(1000);
    expect(story.state.kitchen.altitudeUncertaintyFt).toBe(0);
    expect(initialState().kitchen.altitudeUncertaintyFt).toBe(0);
  });
});
