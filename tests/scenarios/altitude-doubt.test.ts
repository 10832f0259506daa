import { describe, expect, it } from "vitest";
import { replay } from "../../src/kitchen/evolve.ts";
import { questions } from "../../src/kitchen/questions/questions.ts";
import { Story, told } from "../kitchen/story.ts";
import { allSaid, codes, onlyBatch, play } from "./play.ts";

const BEANS = "dilled-green-beans";
const BOIL = "0:00 [cook until process]\n+0:00 it's boiling and the lids are covered\n";
const DONE = "\n+0:00 [cook until done]";

async function low(script: string, altitude = "900ft") {
  const played = await play(BEANS, script, { altitude });
  const asked = played.asked.map((one) => one.text).join("\n");
  return { played, batch: onlyBatch(played), asked };
}

describe("a boil that reads further off than weather explains", () => {
  it("asks whether the altitude is right, and a yes keeps it and everything running", async () => {
    const { played, batch, asked } = await low(
      `${BOIL}+0:01 the canner is at 208\n+0:01 yes${DONE}`,
    );
    expect(asked).toContain("Is the altitude really 900 feet?");
    expect(allSaid(played)).toContain("At 900 feet water boils at about 210 degrees.");
    expect(codes(batch)).toEqual(["altitude-doubt"]);
    expect(batch).toMatchObject({ verdict: "as-tested", altitudeFt: 900 });
    expect(batch.process).toMatchObject({ testedMinutes: 5, achievedMinutes: 5 });
  });

  it("is a lost boil below what any thermometer would show there", async () => {
    const { batch } = await low(`${BOIL}+0:01 the canner is at 205\n+0:00 yes${DONE}`);
    expect(codes(batch)).toEqual(["altitude-doubt", "boil-lost", "process-restarted"]);
    const again = `${BOIL}+0:01 the canner is at 205\n+0:00 yes
+0:01 it's boiling and the lids are covered\n+0:01 the canner is at 205${DONE}`;
    expect((await low(again)).batch.process).toMatchObject({ restarts: 2 });
  });

  it("is not as tested while nobody answers for it", async () => {
    const { batch } = await low(`${BOIL}+0:01 the canner is at 205
+0:04 heat's off\n+0:05 the jars are out\n+13:00 all sealed`);
    expect(batch.verdict).toBe("not-as-tested");
    expect(codes(batch)).toContain("boil-lost");
  });

  it("asks once, and not again after the altitude was confirmed", async () => {
    const { played } = await low(
      `${BOIL}+0:01 the canner is at 205\n+0:01 the canner is at 205\n+0:00 yes
+0:01 the canner is at 205${DONE}`,
    );
    expect(played.asked.filter((one) => one.text.includes("really 900"))).toHaveLength(1);
  });

  it("asks for the altitude after a no, and raises running processes by the answer", async () => {
    const { batch, asked } = await low(
      `${BOIL}+0:01 the canner is at 205\n+0:01 no\n+0:00 four thousand${DONE}`,
    );
    expect(asked).toContain("What is your altitude in feet?");
    expect(batch).toMatchObject({ verdict: "as-tested", altitudeFt: 4000 });
    expect(batch.process).toMatchObject({ testedMinutes: 10, achievedMinutes: 10 });
  });

  it("is not as tested while nobody says where the kitchen lies", () => {
    const story = new Story(900);
    const batch = story.begins(0, BEANS);
    const load = story.loads(60, batch, 8);
    story.says(70, "boiling", { covered: true });
    story.says(71, "temperature", { value: 205, unit: "F" });
    expect(questions(story.state)[0]?.kind).toBe("altitude-doubt");
    story.says(72, "no");
    expect(questions(story.state)[0]?.kind).toBe("altitude");
    expect(story.load(load.id).terms?.minutes).toBe(5);
    expect(told(story.says(73, "answer", { value: 4000 }))).toEqual(["kitchen-set", "load-terms"]);
    expect(questions(story.state).map((one) => one.kind)).not.toContain("altitude");
    expect(replay(story.events)).toEqual(story.state);
  });
});

describe("a boil that reads far too low to be one", () => {
  it("asks whether it boils, then about the altitude; a loss where both hold", async () => {
    const { batch, asked } = await low(`${BOIL}+0:02 the canner is at 190${DONE}`, "4400ft");
    expect(asked).toContain("Water boils at about 204 degrees here. Is it really at a full boil?");
    expect(batch.process).toMatchObject({ restarts: 1 });
    expect(codes(batch)).toEqual(["altitude-doubt", "boil-lost", "process-restarted"]);
  });

  it("asks that first where the altitude was in doubt before", async () => {
    const { played, asked } = await low(
      `${BOIL}+0:01 the canner is at 199\n+0:01 the canner is at 190${DONE}`,
      "4400ft",
    );
    expect(asked).toMatch(/really 4,400 feet\?[\s\S]*really at a full boil\?/);
    expect(allSaid(played)).toContain("190 degrees is far under a full boil.");
  });

  it("is a lost boil where the answer is no", async () => {
    const { batch } = await low(`${BOIL}+0:02 the canner is at 190\n+0:00 no${DONE}`, "4400ft");
    expect(codes(batch)).toEqual(["altitude-doubt", "boil-lost", "process-restarted"]);
  });

  it("asks for the altitude where the answer is yes", async () => {
    const { asked } = await low(`${BOIL}+0:02 the canner is at 190\n+0:00 yes${DONE}`, "4400ft");
    expect(asked).toContain("Is the altitude really 4,400 feet?");
  });
});
