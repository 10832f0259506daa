import { describe, expect, it } from "vitest";
import { codes, onlyBatch, play } from "./play.ts";

const AT = { altitude: "6200ft" };

/** The ideal cook has answered that the dial was tested and reads true. */
const BEGUN = `+0:00 start the snap beans
+0:00 [cook until process]
+0:00 14 pounds
`;

const END = `heat's off
+0:45 the pressure is down to zero
+0:00 yes
+0:11 the jars are out
+13:00 cooled
+0:01 all sealed`;

const batchOf = async (script: string) => onlyBatch(await play([], script, AT));

describe("a dial that turns out to read high", () => {
  it("while the process runs has its mark raised, and the whole time starts over", async () => {
    const batch = await batchOf(`${BEGUN}+0:05 the dial reads two pounds high
+0:03 16 pounds
+0:21 ${END}`);
    expect(codes(batch)).toEqual(["pressure-lost", "process-restarted"]);
    expect([batch.verdict, batch.process?.restarts]).toEqual(["as-tested", 1]);
  });

  it("leaves the process short where nobody raises the pressure", async () => {
    const batch = await batchOf(`${BEGUN}+0:05 the gauge is off by two pounds
+0:30 ${END}`);
    expect(batch.verdict).not.toBe("as-tested");
  });

  it("is judged by that, too, once its jars are put away", async () => {
    const batch = await batchOf(`+0:00 start the snap beans
+0:00 [cook until done]
+1:00 the dial reads a pound and a half high`);
    expect(codes(batch)).toContain("process-short");
    expect(batch.verdict).toBe("not-as-tested");
  });

  it("times nothing where it is off by more than two pounds", async () => {
    const batch = await batchOf(`${BEGUN}+0:05 the dial reads three pounds high
+0:16 ${END}`);
    expect(batch.verdict).toBe("not-as-tested");
    expect(batch.reasons.join()).toContain("off by more than two pounds");
  });

  it("makes nothing better once it was said to read higher", async () => {
    const batch = await batchOf(`${BEGUN}+0:05 the dial reads two pounds high
+0:01 the dial reads one pound high
+0:20 ${END}`);
    expect(batch.verdict).not.toBe("as-tested");
  });
});

describe("a dial of which not all is known", () => {
  it("is not as tested where it turns out that nobody tested it", async () => {
    const batch = await batchOf(`${BEGUN}+0:05 the gauge was not tested
+0:16 ${END}`);
    expect(codes(batch)).toEqual(["gauge-untested"]);
    expect(batch.verdict).toBe("not-as-tested");
  });

  it("is not as tested where nobody says how far it is off", async () => {
    const script = `+0:00 start the snap beans
+0:01 yes
+0:01 the canner's ready
+0:01 wash and snap done
+0:10 the beans are boiling
+0:06 nine pints filled
+0:00 hot off the boil
+0:00 an inch
+0:00 they're new
+0:01 the jars are in
+0:10 it's venting
+0:11 14 pounds
+0:21 ${END}`;
    const played = await play([], script, AT);
    const batch = onlyBatch(played);
    expect(batch.process?.achievedMinutes).toBeGreaterThanOrEqual(20);
    expect(batch.reasons).toEqual(["gauge-untested: nobody said how far the dial gauge is off"]);
  });

  it("is not told by a pressure of zero", async () => {
    const script = `+0:00 start the snap beans
+0:01 yes
+0:00 the pressure is down to zero`;
    const { journal } = await play([], script, AT);
    expect(journal.map(({ gauge }) => gauge)).not.toContainEqual(
      expect.objectContaining({ readsHighPsi: 0 }),
    );
  });

  it.each(["the dial reads fourteen pounds", "what if the dial reads two pounds high"])(
    "is not told by: %s",
    async (text) => {
      const { journal } = await play([], `${BEGUN}+0:05 ${text}`, AT);
      const set = journal.filter(({ type, t }) => type === "gauge-set" && t > 1818255600000);
      expect(set).toEqual([]);
    },
  );
});

describe("a reading under the mark as soon as the time is full", () => {
  it("is quoted in the question about the whole process", async () => {
    const script = `${BEGUN}+0:20:10 it is at 13 pounds
+0:00 heat's off
+0:45 the pressure is down to zero`;
    const { asked } = await play([], script, AT);
    expect(asked.at(-1)?.text).toContain('"13 pounds"');
  });

  it("is nothing once the heat is off", async () => {
    const script = `${BEGUN}+0:20 heat's off
+0:00 it is at 13 pounds`;
    expect((await batchOf(script)).heard).toEqual([]);
  });
});
