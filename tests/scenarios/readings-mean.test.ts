import { describe, expect, it } from "vitest";
import { questions } from "../../src/kitchen/questions/questions.ts";
import { Story, told } from "../kitchen/story.ts";
import { allSaid, codes, onlyBatch, type Played, play } from "./play.ts";

const BEANS = "dilled-green-beans";

async function said(recipe: string, script: string, altitude: string, more = {}) {
  return allSaid(await play(recipe, script, { altitude, ...more }));
}

function boilsOfCanner({ journal }: Played): number {
  return journal.filter((one) => one.type === "boil" && one.stage === "process").length;
}

describe("a boil read with its temperature", () => {
  const WAIT = "0:00 [cook until process]\n";

  it.each([
    ["204 at a full boil"],
    ["it's 204 degrees at a full boil"],
    ["the water boils at 204"],
    ["boiling at 204"],
  ])("reports the boil and fits the altitude: %s", async (words) => {
    const script = `${WAIT}+0:00 ${words}\n+0:01 yes\n+0:00 204 at a full boil`;
    const played = await play(BEANS, script, { altitude: "4400ft" });
    expect(allSaid(played)).toContain("204 degrees at a full boil: right for 4,400 feet.");
    expect(boilsOfCanner(played)).toBe(1);
    expect(onlyBatch(played).process?.state).toBe("running");
  });

  it("starts nothing where it is far under the boil here", async () => {
    const played = await play(BEANS, `${WAIT}+0:00 190 at a full boil`, { altitude: "4400ft" });
    expect(boilsOfCanner(played)).toBe(0);
    expect(allSaid(played)).toContain("Canner at 190 degrees. It boils at about 204 degrees here.");
  });

  it("doubts the altitude although nothing boils for a batch", () => {
    const story = new Story(900);
    story.says(0, "temperature", { value: 205, unit: "F", boiling: true });
    expect(questions(story.state)[0]?.kind).toBe("altitude-doubt");
  });
});

describe("a temperature says what it means", () => {
  it("for a pot of brine, and past what any brine can be", async () => {
    const words = await said(
      BEANS,
      "0:00 [cook until heat]\n+0:15 the brine is at 199\n+0:01 the brine is at 240",
      "900ft",
    );
    expect(words).toContain("Brine at 199 degrees. It boils at about 210 degrees here.");
    expect(words).toMatch(/Brine at 240 degrees.*Check the thermometer/);
  });

  it("for a canner warming up for its pack", async () => {
    const words = await said(BEANS, "0:00 [cook until heat]\n+0:10 canner's at 100", "900ft");
    expect(words).toContain("Not warm enough yet: it wants 140 for raw packs.");
  });

  it("for a jam approaching the jelling point, and past it", async () => {
    const words = await said(
      "peach-jam",
      "0:00 [cook until heat]\n+0:05 the jam is at 200\n+0:05 the jam is at 220",
      "6200ft",
    );
    expect(words).toContain("About 9 to go: it jells at about 209 here, 8 over the boil.");
    expect(words).toContain("That is past it");
  });

  it("for a crock too warm, which the log notes, or too cold to ferment", async () => {
    const script = "0:00 [cook until ferment]\n+0:01 the crock is at 68 degrees\n";
    const played = await play(
      "fermented-dills",
      `${script}+0:01 the crock is at 90 degrees\n+0:01 the crock is at 45 degrees`,
      { altitude: "900ft" },
    );
    expect(allSaid(played)).toContain("Crock at 68 degrees. Right for it.");
    expect(allSaid(played)).toContain("Over the 75 it wants, so it may go soft.");
    expect(allSaid(played)).toContain("Under 55 it may not ferment.");
    expect(codes(onlyBatch(played))).toEqual(["temperature-high"]);
  });

  it("for the steam in a pressure canner", async () => {
    const words = await said(
      "snap-beans",
      `0:00 [cook until process]\n+0:00 14 psi\n+0:01 the canner is at 240 degrees
+0:01 the canner is at 200 degrees`,
      "6200ft",
    );
    expect(words).toContain("Canner at 240 degrees. Right for steam at 14 pounds here.");
    expect(words).toMatch(/Steam at 14 pounds is about 2\d\d here\..* go by the pressure/);
  });
});

describe("a pressure far above what is asked", () => {
  it("counts, and jars may lose liquid", async () => {
    const played = await play("snap-beans", "0:00 [cook until process]\n+0:00 25 psi", {
      altitude: "6200ft",
    });
    expect(allSaid(played)).toContain("Well above the 14 it wants: the time counts");
    expect(onlyBatch(played).process?.state).toBe("running");
  });
});

describe("jars filled", () => {
  function filling() {
    const story = new Story(6200);
    const batch = story.begins(0, BEANS);
    for (const run of batch.stages) {
      if (run.spec.kind === "fill") break;
      story.happened(30, { type: "stage-done", owner: batch.id, stage: run.id });
    }
    return story;
  }

  it("are asked about where the produce cannot make that many", () => {
    const story = filling();
    const asked = story.says(31, "jars-filled", { count: 40, size: "pint" });
    expect(told(asked)).toMatch(/40 pints are far more than 4 pounds make, about 8. Is it 40\?/);
    const sure = story.says(31, "jars-filled", { count: 40, size: "pint" }, { confirmed: true });
    expect(told(sure)).toContain("jars-filled");
    expect(told(filling().says(31, "jars-filled", { count: 9, size: "pint" }))).toContain(
      "jars-filled",
    );
  });

  it("cannot be none: then nothing is finished", () => {
    const story = filling();
    expect(told(story.says(31, "jars-filled", { count: 0 }))).toMatch(
      /With none filled, nothing is finished/,
    );
    expect(Object.values(story.state.batches)[0]?.state).toBe("running");
  });
});
