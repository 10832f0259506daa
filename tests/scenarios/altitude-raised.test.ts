import { describe, expect, it } from "vitest";
import { replay } from "../../src/kitchen/evolve.ts";
import { at, Story, told } from "../kitchen/story.ts";
import { allSaid, codes, onlyBatch, play, stageOf } from "./play.ts";

/** Dilled beans: 5 minutes to 1,000 ft, 10 to 6,000 ft, 15 above. */
const BEANS = "dilled-green-beans";
const BOIL = "0:00 [cook until process]\n+0:00 it's boiling and the lids are covered\n";
const DONE = "\n+0:00 [cook until done]";

async function low(script: string, recipe = BEANS, options = {}) {
  const played = await play(recipe, script, { altitude: "900ft", ...options });
  return { played, batch: onlyBatch(played) };
}

describe("an altitude corrected upward while a load boils", () => {
  it("lets it boil for the longer time from its own start, and says so at once", async () => {
    const { played, batch } = await low(`${BOIL}+0:02 we're at four thousand feet${DONE}`);
    expect(batch).toMatchObject({ verdict: "as-tested", altitudeFt: 4000 });
    expect(batch.process).toMatchObject({ testedMinutes: 10, achievedMinutes: 10, restarts: 0 });
    expect(stageOf(batch, "process").minutes).toBe(10);
    expect(allSaid(played)).toMatch(/At 4,000 feet the tested process is ten minutes, not five/);
  });

  it("lets it boil on where the time seemed full and the heat is still on", async () => {
    const { played, batch } = await low(`${BOIL}+0:05 we're at four thousand feet${DONE}`);
    expect(batch).toMatchObject({ verdict: "as-tested" });
    expect(batch.process).toMatchObject({ testedMinutes: 10, achievedMinutes: 10, restarts: 0 });
    expect(played.said.filter((one) => one.text.includes("the time is full"))).toHaveLength(2);
  });

  it("asks about its end again: the answer was about a shorter time", async () => {
    const raised = `${BOIL}+0:05 yes\n+0:00 we're at four thousand feet`;
    const { played, batch } = await low(`${raised}${DONE}`);
    expect(played.journal.filter(({ type }) => type === "end-answer")).toHaveLength(2);
    expect(batch.verdict).toBe("as-tested");
    const silent = await low(`${raised}\n+0:06 heat's off\n+0:06 the jars are out`);
    expect(silent.batch.verdict).not.toBe("as-tested");
  });

  it("requires the whole time again where the heat was off by then", async () => {
    const { batch } = await low(
      `${BOIL}+0:05 yes\n+0:01 heat's off\n+0:02 we're at four thousand feet${DONE}`,
    );
    expect(codes(batch)).toEqual(["boil-lost", "process-restarted", "altitude-raised"]);
    expect(batch.process).toMatchObject({ testedMinutes: 10, achievedMinutes: 10, restarts: 1 });
  });

  it("asks whether the boil held since, where the time was full a while ago", async () => {
    const asked = "The time had been full for 3 minutes. Did the canner hold a full boil";
    const late = `${BOIL}+0:08 we're at four thousand feet`;
    const held = await low(`${late}\n+0:00 yes${DONE}`);
    expect(held.played.asked.map((one) => one.text).join()).toContain(asked);
    expect(held.batch).toMatchObject({ verdict: "as-tested" });
    expect(held.batch.process).toMatchObject({ achievedMinutes: 10, restarts: 0 });
    const lost = await low(`${late}\n+0:00 no${DONE}`);
    expect(lost.batch.process).toMatchObject({ achievedMinutes: 10, restarts: 1 });
    const silent = await low(`${late}\n+0:20 the jars are out\n+0:00 yes${DONE}`);
    expect(silent.batch.verdict).toBe("not-as-tested");
  });

  it("finds the process too short where the jars are out already", async () => {
    const { played, batch } = await low(
      `${BOIL}+0:00 [cook until cool]\n+0:05 we're at four thousand feet${DONE}`,
    );
    expect(codes(batch)).toContain("process-short");
    expect(batch).toMatchObject({ verdict: "not-as-tested" });
    expect(allSaid(played)).toMatch(/Those jars had less/);
    expect(played.asked.map((one) => one.text).join()).toMatch(/too short to count/);
  });

  it("changes nothing within the band, nor downward, and says so", async () => {
    for (const feet of ["one thousand", "one hundred"]) {
      const { played, batch } = await low(`${BOIL}+0:02 we're at ${feet} feet${DONE}`);
      expect(batch.process).toMatchObject({ testedMinutes: 5, achievedMinutes: 5 });
      expect(allSaid(played)).toContain("The load in the canner keeps its five minutes.");
    }
  });

  it("is not as tested where nothing was tested that high", async () => {
    const { batch } = await low(`${BOIL}+0:02 we're at twelve thousand feet${DONE}`);
    expect(batch.verdict).toBe("not-as-tested");
    expect(batch.reasons.join()).toMatch(/altitude-doubt: no tested time .* above 10,000 ft/);
    const meant = await low(
      `${BOIL}+0:01 we're at twelve thousand feet\n+0:01 we're at one thousand feet${DONE}`,
    );
    expect(meant.batch.verdict).toBe("as-tested");
  });
});

describe("an altitude past every table while a load waits for its boil", () => {
  it("is not as tested, whatever time runs then", async () => {
    const { batch } = await low(
      `0:00 [cook until process]\n+0:00 we're at twelve thousand feet${DONE}`,
    );
    expect(batch.verdict).toBe("not-as-tested");
  });
});

describe("an altitude corrected upward under pressure", () => {
  const options = { gauge: "weighted", jar: "quart" };

  it("starts over at the higher setting: time under the lower does not count", async () => {
    const { played, batch } = await low(
      `0:00 [cook until process]\n+0:00 the weight is rocking\n+0:20 we're at five thousand feet
+0:01 10 psi${DONE}`,
      "snap-beans",
      options,
    );
    expect(codes(batch)).toEqual(["altitude-raised", "process-restarted"]);
    expect(batch.process).toMatchObject({ testedMinutes: 25, pressurePsi: 15, restarts: 1 });
    expect(batch).toMatchObject({ verdict: "as-tested" });
    expect(batch.process?.achievedMinutes).toBe(25);
    expect(allSaid(played)).toContain("10 pounds. It wants 15 at your altitude.");
  });

  it("does not count a process that was over by then", async () => {
    const { batch } = await low(
      `0:00 [cook until cool]\n+0:05 we're at five thousand feet${DONE}`,
      "snap-beans",
      options,
    );
    expect(batch.verdict).toBe("not-as-tested");
    expect(batch.reasons.join()).toContain("process-short: 0 of 25 minutes");
  });
});

describe("an altitude corrected days after the jars were put away", () => {
  const later = `0:00 [cook until done]\n+48:00 we're at four thousand feet`;

  it("asks whether it held on that day, and is not as tested until it is answered", async () => {
    const { played, batch } = await low(later);
    expect(played.asked.at(-1)?.text).toMatch(/^Was the kitchen at 4,000 feet too on 20/);
    expect(batch.verdict).toBe("not-as-tested");
  });

  it("judges again after a yes, and leaves the verdict after a no", async () => {
    const yes = await low(`${later}\n+0:00 yes`);
    expect(yes.batch).toMatchObject({ verdict: "not-as-tested", altitudeFt: 4000 });
    expect(codes(yes.batch)).toEqual(expect.arrayContaining(["process-short", "altitude-raised"]));
    const no = await low(`${later}\n+0:00 no`);
    expect(no.batch.verdict).toBe("as-tested");
  });
});

describe("a raised process in the journal", () => {
  function boiling() {
    const story = new Story(900);
    const batch = story.begins(0, BEANS);
    const load = story.loads(60, batch, 8);
    story.says(70, "boiling", { covered: true });
    return { story, load: () => story.load(load.id) };
  }

  it("is worked out from what was written, without looking anything up", () => {
    const { story, load } = boiling();
    const said = story.says(72, "altitude", { feet: 4000 });
    expect(told(said)).toEqual(["kitchen-set", "load-terms"]);
    story.passes(81);
    expect(load().stages.find((run) => run.id === "process")?.endedAt).toBe(at(80));
    expect(replay(story.events)).toEqual(story.state);
  });

  it("is taken back only by a yes to a lesser process", () => {
    const { story, load } = boiling();
    story.says(72, "altitude", { feet: 4000 });
    expect(told(story.says(73, "undo"))).toMatch(/Take back the altitude\?.*less/);
    expect(told(story.says(73, "undo", {}, { confirmed: true }))).toEqual(["withdrawn"]);
    expect(load().terms?.minutes).toBe(5);
  });

  it("keeps a boil that was reported and waits for an answer about the water", () => {
    const story = new Story(900);
    const batch = story.begins(0, BEANS);
    const load = story.loads(60, batch, 8);
    story.says(70, "boiling");
    story.says(71, "altitude", { feet: 4000 });
    story.happened(72, { type: "cover", load: load.id, covered: true });
    const process = story.load(load.id).stages.find((run) => run.id === "process");
    expect(process?.kept).toMatchObject({ needMinutes: 10, stretches: [{ from: at(70) }] });
  });
});
