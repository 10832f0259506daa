import { describe, expect, it } from "vitest";
import { allSaid, codes, onlyBatch, play, stageOf } from "./play.ts";

/** Pints of snap beans at 6,200 ft: 20 minutes at 14 pounds by a dial, 15 by a weight. */
const BEANS = "snap-beans";
const DONE = "\n+0:00 [cook until done]";

async function beans(script: string, options = {}) {
  const played = await play(BEANS, script, options);
  return { played, batch: onlyBatch(played) };
}

describe("a pressure process", () => {
  it("is vented ten minutes, timed from its pressure, opened after zero and a wait", async () => {
    const { batch } = await beans("0:00 [cook until done]");
    expect(batch).toMatchObject({ verdict: "as-tested", deviations: [], method: "pressure" });
    expect(batch.process).toMatchObject({ testedMinutes: 20, pressurePsi: 14 });
    expect(stageOf(batch, "vent").minutes).toBe(10);
    expect(stageOf(batch, "process").minutes).toBe(20);
    const zero = stageOf(batch, "depressurize");
    expect(zero.state).toBe("complete");
    const lifted = Date.parse(stageOf(batch, "unload").startedAt ?? "");
    expect(lifted).toBe(Date.parse(zero.endedAt ?? ""));
  });

  it("has its reading, and no weight, where pounds are told as the time is full", async () => {
    const { batch } = await beans(
      "0:00 [cook until process]\n+0:05 fourteen pounds\n+0:20 13 pounds",
    );
    expect(batch.lot.weightLb).toBeNull();
  });

  it("begins at the weight's rocking where the gauge is weighted", async () => {
    const { batch } = await beans(`0:00 [cook until process]\n+0:00 the weight is rocking${DONE}`, {
      gauge: "weighted",
    });
    expect(batch.process).toMatchObject({ pressurePsi: 15, achievedMinutes: 20 });
    expect(batch.verdict).toBe("as-tested");
  });

  it.each([
    [0, 11, 10],
    [1000, 11, 10],
    [1001, 11, 15],
    [2001, 12, 15],
    [4001, 13, 15],
    [6001, 14, 15],
    [8000, 14, 15],
  ])("at %i ft needs %i pounds by a dial and %i by a weight", async (feet, dial, weight) => {
    for (const [gauge, psi] of [
      ["dial", dial],
      ["weighted", weight],
    ] as const) {
      const { batch } = await beans("0:00 [cook until process]", { gauge, altitude: `${feet}ft` });
      expect(batch.process).toMatchObject({ pressurePsi: psi, testedMinutes: 20 });
    }
  });

  it("is refused where no dial was tested, above 8,000 ft", async () => {
    const played = await play(BEANS, undefined, { altitude: "8001ft" });
    expect(played.review.batches).toEqual([]);
    expect(played.refused[0]?.reason).toContain("8,000 ft");
  });

  it("is not timed before ten minutes of steady steam", async () => {
    const { played } = await beans(
      "0:00 [cook until vent]\n+0:00 14 pounds\n+0:00 it's venting\n+0:06 14 pounds",
    );
    expect(played.refused.map((one) => one.reason)).toEqual([
      "Steam has to pour from the open vent for ten minutes first: 10 to go.",
      "Steam has to pour from the open vent for ten minutes first: 4 to go.",
    ]);
  });

  it("does not begin below its pressure", async () => {
    const { played, batch } = await beans("0:00 [cook until process]\n+0:00 13 pounds");
    expect(stageOf(batch, "process").state).toBe("waiting");
    expect(allSaid(played)).toContain("It wants 14 at your altitude");
  });

  it.each([["12 pounds"], ["the pressure dropped"]])(
    "takes the whole time again after: %s",
    async (words) => {
      const { batch } = await beans(
        `0:00 [cook until process]\n+0:00 14 pounds\n+0:05 ${words}\n+0:02 14 pounds${DONE}`,
      );
      expect(codes(batch)).toEqual(["pressure-lost", "process-restarted"]);
      expect(batch.process).toMatchObject({ restarts: 1, achievedMinutes: 20 });
      expect(batch.verdict).toBe("as-tested");
    },
  );

  it("is not begun by a rocking weight where the canner has a dial", async () => {
    const { played, batch } = await beans("0:00 [cook until process]\n+0:00 the weight is rocking");
    expect(stageOf(batch, "process").state).toBe("waiting");
    expect(played.refused[0]?.reason).toBe("That canner has a dial. What does it show?");
  });

  it("is not started over once it was lost for over two hours", async () => {
    const { played, batch } = await beans(
      "0:00 [cook until process]\n+0:00 14 pounds\n+0:05 the pressure dropped\n+2:01 14 pounds",
    );
    expect(played.refused[0]?.reason).toContain("under its pressure for over two hours");
    expect(batch.process?.restarts).toBe(0);
  });

  it("keeps its time where the pressure is above the mark", async () => {
    const { batch } = await beans(
      `0:00 [cook until process]\n+0:00 14 pounds\n+0:05 15 pounds\n+0:05 14 pounds${DONE}`,
    );
    expect(batch.process?.restarts).toBe(0);
    expect(batch.readings.filter((one) => one.what === "pressure").length).toBeGreaterThan(2);
  });

  it("is never opened before it came to zero and had its wait", async () => {
    const { played, batch } = await beans(
      `0:00 [cook until process]
+0:00 14 pounds
+0:21 take the jars out
+0:01 the heat is off
+0:40 the pressure is zero
+0:02 the jars are out
+0:09 the jars are out`,
    );
    expect(played.refused.map((one) => one.text)).toEqual([
      "take the jars out",
      "the jars are out",
    ]);
    expect(played.refused[0]?.reason).toContain("come to zero by itself");
    expect(stageOf(batch, "unload").state).toBe("complete");
    expect(codes(batch)).toEqual([]);
  });

  it("was lost where a zero is corrected to a moment within it, and starts over", async () => {
    const { batch } = await beans(
      `0:00 [cook until process]
+0:00 14 pounds
+0:21 the pressure is zero
+0:01 that was 5 minutes ago${DONE}`,
    );
    expect(codes(batch)).toContain("pressure-lost");
    expect(batch.process).toMatchObject({ restarts: 1, achievedMinutes: 20 });
  });

  it("treats a reading of 300 pounds as a slip, asks again and does not record it", async () => {
    const { played, batch } = await beans("0:00 [cook until process]\n+0:00 300 psi");
    expect(played.refused[0]?.reason).toContain("can't be right");
    expect(batch.readings).toEqual([]);
  });

  it("is asked about in its own words where nobody watched", async () => {
    const { played, batch } = await beans(
      `0:00 [cook until process]\n+0:00 14 pounds\n+0:05 [closed for 0:10]\n+0:00 yes${DONE}`,
    );
    expect(played.asked.some((one) => one.text.includes("pressure stay at or above"))).toBe(true);
    expect(batch.deviations).toMatchObject([{ code: "unwatched", disposition: "carried-on" }]);
    expect(batch.verdict).toBe("as-tested");
  });

  it("vents again for the whole ten minutes where nobody watched the steam", async () => {
    const { batch } = await beans(
      `0:00 [cook until vent]
+0:00 it's venting
+0:05 [closed for 0:08]
+0:01 no
+0:01 it's venting${DONE}`,
    );
    expect(codes(batch)).toEqual(["unwatched", "process-restarted"]);
    expect(batch.verdict).toBe("as-tested");
    expect(stageOf(batch, "vent").restarts).toBe(1);
  });
});

describe("the dial of a pressure canner", () => {
  it("is asked about each season, and a true one is kept", async () => {
    const { played } = await beans("0:00 yes\n+0:00 zero\n+0:01 [cook until process]");
    expect(played.asked[0]?.text).toContain("tested this season");
    expect(played.asked[1]?.text).toContain("read high");
    expect(allSaid(played)).toContain("shows 14 pounds");
  });

  it("that reads a pound high is asked for a pound more", async () => {
    const { played, batch } = await beans(
      `0:00 yes
+0:00 one pound
+0:01 [cook until process]
+0:00 14 pounds
+0:01 15 pounds${DONE}`,
    );
    expect(allSaid(played)).toContain("shows 15 pounds");
    expect(stageOf(batch, "process").startedAt).toContain(":11:00");
    expect(batch.verdict).toBe("as-tested");
  });

  it("that reads half a pound high is repeated in exactly those words", async () => {
    const { played } = await beans(
      "0:00 yes\n+0:00 it reads half a pound high\n+0:01 [cook until process]",
    );
    expect(played.refused).toEqual([]);
    expect(allSaid(played)).toContain("It reads 0.5 high");
  });

  it("that is off by three pounds is refused, and cannot time anything", async () => {
    const { played, batch } = await beans(
      "0:00 yes\n+0:00 three pounds\n+0:01 [cook until process]\n+0:00 20 pounds",
    );
    expect(played.refused.map((one) => one.text)).toEqual(["three pounds", "20 pounds"]);
    expect(allSaid(played)).not.toContain("I add that to the mark");
    expect(stageOf(batch, "process").state).toBe("waiting");
  });

  it("that was not tested is warned about and written down, and is not as tested", async () => {
    const { played, batch } = await beans(`0:00 no${DONE}`);
    expect(allSaid(played)).toContain("untested dial may read wrong");
    expect(codes(batch)).toEqual(["gauge-untested"]);
    expect(batch.verdict).toBe("not-as-tested");
  });
});

describe("jars taken from a pressure canner early", () => {
  it("come with a warning not to open it under pressure", async () => {
    const { played, batch } = await beans(
      `0:00 [cook until process]
+0:00 14 pounds
+0:05 take the jars out
+0:00 yes
+0:01 freeze them`,
    );
    expect(allSaid(played)).toContain("never open a canner before it has come to zero");
    expect(batch.deviations).toMatchObject([{ code: "process-short", disposition: "freeze" }]);
    expect(batch.verdict).toBe("not-as-tested");
  });
});
