import { describe, expect, it } from "vitest";
import { allSaid, codes, onlyBatch, play, stageOf } from "./play.ts";

const STEAM = { method: "steam" };
const LOW = { method: "low-temperature" };
const DONE = "\n+0:00 [cook until done]";

async function steamed(script: string) {
  const played = await play("dilled-green-beans", script, STEAM);
  return { played, batch: onlyBatch(played) };
}

async function pasteurized(script: string) {
  const played = await play("bread-and-butter-pickles", script, LOW);
  return { played, batch: onlyBatch(played) };
}

describe("an atmospheric steam canner", () => {
  it("needs a full column and the local boiling point before its time starts", async () => {
    const { played, batch } = await steamed(
      `0:00 [cook until process]
+0:00 it's at 201
+0:02 a full column of steam
+0:00 what now${DONE}`,
    );
    expect(stageOf(batch, "process").startedAt).toContain("T09:27:00");
    expect(allSaid(played)).toContain("Tell me when a full column of steam comes out");
    expect(batch).toMatchObject({ verdict: "as-tested", method: "steam" });
  });

  it("does not start below the local boiling point", async () => {
    const { batch } = await steamed(
      "0:00 [cook until process]\n+0:00 a full column of steam\n+0:00 it's at 195",
    );
    expect(stageOf(batch, "process").state).toBe("waiting");
  });

  it("starts over, column and temperature both, after its temperature fell", async () => {
    const { batch } = await steamed(
      `0:00 [cook until process]
+0:00 a full column of steam
+0:00 it's at 201
+0:05 it's at 190
+0:01 it's at 201
+0:01 a full column of steam${DONE}`,
    );
    expect(codes(batch)).toEqual(["boil-lost", "process-restarted"]);
    expect(batch.process).toMatchObject({ restarts: 1, achievedMinutes: 15 });
    expect(stageOf(batch, "process").endedAt).toContain("T09:47:00");
  });

  it("is refused where its time and the altitude's come to more than 45 minutes", async () => {
    const played = await play("crushed-tomatoes", undefined, {
      ...STEAM,
      jar: "quart",
      altitude: "7000ft",
    });
    expect(played.review.batches).toEqual([]);
    expect(played.refused[0]?.reason).toContain("45 min");
  });

  it("is refused for low-acid food", async () => {
    const played = await play("snap-beans", undefined, STEAM);
    expect(played.review.batches).toEqual([]);
    expect(played.refused).toHaveLength(1);
  });

  it("does not go by a boil, and says what it needs", async () => {
    const { played } = await steamed("0:00 [cook until process]\n+0:00 it's boiling");
    expect(played.refused[0]?.reason).toContain("full column of steam");
  });
});

describe("low-temperature pasteurization", () => {
  it("holds 180 to 185 degrees for thirty minutes, read every five", async () => {
    const { batch } = await pasteurized("0:00 [cook until done]");
    expect(batch).toMatchObject({ verdict: "as-tested", deviations: [] });
    expect(batch.process).toMatchObject({ testedMinutes: 30, achievedMinutes: 30 });
    expect(batch.readings).toHaveLength(7);
  });

  it("starts over after a reading below 180", async () => {
    const { batch } = await pasteurized(
      `0:00 [cook until process]
+0:00 it's at 175
+0:01 it's at 181
+0:05 it's at 179
+0:02 it's at 182${DONE}`,
    );
    expect(codes(batch)).toEqual(["temperature-lost", "process-restarted"]);
    expect(batch.process).toMatchObject({ restarts: 1, achievedMinutes: 30 });
    expect(batch.verdict).toBe("as-tested");
  });

  it("notes a reading above 185 as a matter of quality", async () => {
    const { batch } = await pasteurized(
      `0:00 [cook until process]\n+0:00 it's at 182\n+0:05 it's at 187${DONE}`,
    );
    expect(codes(batch)).toEqual(["temperature-high"]);
    expect(batch.verdict).toBe("as-tested");
  });

  it("treats a longer time between readings as unwatched", async () => {
    const { played, batch } = await pasteurized(
      `0:00 [cook until process]
+0:00 it's at 182
+0:05 it's at 182
+0:12 it's at 183
+0:01 yes${DONE}`,
    );
    expect(played.asked.filter((one) => one.text.includes("stay at 180"))).toHaveLength(1);
    expect(batch.deviations).toMatchObject([{ code: "unwatched", disposition: "carried-on" }]);
    expect(batch.verdict).toBe("as-tested");
  });

  it("does not end before a reading at its end", async () => {
    const { batch } = await pasteurized(
      "0:00 [cook until process]\n+0:00 it's at 182\n+0:31 what now",
    );
    expect(batch.process).toMatchObject({ state: "running", achievedMinutes: 0 });
  });

  it("asks for each reading that is missed, and for the one at its end", async () => {
    const { played } = await pasteurized(
      "0:00 [cook until process]\n+0:00 it's at 182\n+0:40 what now",
    );
    const asked = played.said.filter((one) => one.text.includes("read the water's temperature"));
    expect(asked.map((one) => one.at.slice(11, 16))).toEqual([
      "12:30",
      "12:35",
      "12:40",
      "12:45",
      "12:50",
      "12:55",
    ]);
  });

  it("takes the temperature of the water as that of the canner, even when it falls", async () => {
    const { batch } = await pasteurized(
      `0:00 [cook until process]
+0:00 the water is at 182
+0:05 the water is 178
+0:01 the water's 182${DONE}`,
    );
    expect(codes(batch)).toEqual(["temperature-lost", "process-restarted"]);
    expect(batch.readings.slice(0, 3).map((one) => one.value)).toEqual([182, 178, 182]);
  });

  it("does not record a bare number as a reading, and says how to say it", async () => {
    const { played, batch } = await pasteurized("0:00 [cook until process]\n+0:00 182");
    expect(played.refused.at(-1)?.reason).toContain("say 182 degrees");
    expect(batch.readings).toEqual([]);
  });

  it("is refused where the recipe does not allow it", async () => {
    const played = await play("dilled-green-beans", undefined, LOW);
    expect(played.review.batches).toEqual([]);
    expect(played.refused).toHaveLength(1);
  });

  it("asks again about an impossible reading, and records nothing", async () => {
    const { played, batch } = await pasteurized("0:00 [cook until process]\n+0:00 it's at -40");
    expect(played.refused.length + played.asked.length).toBeGreaterThan(0);
    expect(batch.readings).toEqual([]);
  });
});
