import { describe, expect, it } from "vitest";
import { allSaid, codes, onlyBatch, play, stageOf } from "./play.ts";

const BEANS = "dilled-green-beans";
const OUT = "0:00 [cook until cool]\n";

async function cooled(script: string, recipe = BEANS) {
  const played = await play(recipe, OUT + script);
  return { played, batch: onlyBatch(played) };
}

describe("cooling", () => {
  it("says when the seals may be checked before the day is closed", async () => {
    const { played } = await cooled("+0:00 what now");
    expect(allSaid(played)).toMatch(/Check the seals by \w+ tomorrow morning/);
    expect(allSaid(played)).toContain("Leave hot lids and bands alone");
  });

  it("takes a lid that pinged too early as a note, not as a seal", async () => {
    const { batch } = await cooled("+1:00 three sealed");
    expect(batch.jars).toMatchObject({ sealed: 0 });
    expect(batch.notes.map((one) => one.text).join()).toContain("3 sealed");
    expect(stageOf(batch, "cool").state).toBe("running");
  });

  it("counts a failure at once", async () => {
    const { played, batch } = await cooled("+1:00 jar 3 did not seal");
    expect(batch.jars).toMatchObject({ failed: 1 });
    expect(codes(batch)).toEqual(["seal-failed"]);
    expect(played.asked.at(-1)?.text).toContain("What becomes of the jar");
    expect(stageOf(batch, "cool").state).toBe("running");
  });

  it("that is ended before twelve hours is written down, and is not as tested", async () => {
    const { batch } = await cooled("+6:00 the jars have cooled\n+0:00 yes\n+0:01 all sealed");
    expect(codes(batch)).toEqual(["cool-short"]);
    expect(batch.verdict).toBe("not-as-tested");
  });

  it("is not ended by hearing again that the jars are out", async () => {
    const { played, batch } = await cooled("+0:05 the jars are out");
    expect(stageOf(batch, "cool").state).toBe("running");
    expect(played.refused).toHaveLength(1);
  });
});

describe("the seal check", () => {
  it("is complete when every jar is sealed", async () => {
    const { batch } = await cooled("+13:00 all sealed");
    expect(batch).toMatchObject({ state: "complete", verdict: "as-tested", deviations: [] });
    expect(batch.jars).toMatchObject({ filled: 8, processed: 8, sealed: 8, failed: 0 });
  });

  it("takes jars by their numbers, and the others as sealed", async () => {
    const { batch } = await cooled("+13:00 jars 3 and 5 did not seal\n+0:00 all the others sealed");
    expect(batch.jars).toMatchObject({ sealed: 6, failed: 2 });
    expect(batch.deviations).toMatchObject([{ code: "seal-failed", disposition: "undecided" }]);
    expect(batch.deviations[0]?.detail).toContain("3, 5");
    expect(batch.state).toBe("complete");
    expect(batch.verdict).toBe("as-tested");
  });

  it("refuses a number that was not in the load, and the same jar twice", async () => {
    const { played } = await cooled(
      "+13:00 jar 12 did not seal\n+0:00 jar 3 did not seal\n+0:00 jar 3 did not seal",
    );
    expect(played.refused.map((one) => one.reason)).toEqual([
      "Jar 12 was not in that load; it had 1 to 8.",
      "Jar 3 is down as failed already.",
    ]);
  });

  it("refuses more seals than there are jars", async () => {
    const { played, batch } = await cooled("+13:00 twelve sealed");
    expect(played.refused).toHaveLength(1);
    expect(batch.jars).toMatchObject({ sealed: 0 });
  });

  it("after a day is late", async () => {
    const { batch } = await cooled("+26:00 all sealed");
    expect(codes(batch)).toEqual(["seal-check-late"]);
    expect(batch.verdict).toBe("as-tested");
  });

  it("is refused before any jar was in a canner", async () => {
    const played = await play(BEANS, "0:05 all sealed\n+0:00 jar 3 did not seal");
    expect(played.refused).toHaveLength(2);
    expect(played.refused[0]?.reason).toContain("No jars");
  });
});

describe("a jar that did not seal", () => {
  const FAILED = "+13:00 jar 3 did not seal\n+0:00 all the others sealed\n";

  it.each([
    ["put it in the fridge", "refrigerate"],
    ["freeze it", "freeze"],
    ["throw that jar out", "discard"],
  ])("within a day may be disposed of: %s", async (words, disposition) => {
    const { batch } = await cooled(`${FAILED}+0:01 ${words}`);
    expect(batch.deviations).toMatchObject([{ code: "seal-failed", disposition }]);
    expect(batch.jars).toMatchObject({ sealed: 7, failed: 1 });
  });

  it.each([
    [BEANS, false],
    ["pickled-beets", true],
  ])("is offered to be reprocessed only where a hot pack was tested: %s", async (id, offered) => {
    const { played } = await cooled("+13:00 jar 3 did not seal\n+0:00 yes", id);
    expect(played.asked.at(-1)?.text.includes("reprocess")).toBe(offered);
  });

  it("within a day may be processed again where a hot pack was tested", async () => {
    const { played, batch } = await cooled(
      `${FAILED}+0:01 reprocess it\n+0:00 [cook until done]`,
      "pickled-beets",
    );
    expect(played.trouble).toBeUndefined();
    expect(batch.deviations[0]).toMatchObject({ code: "seal-failed", disposition: "reprocess" });
    expect(batch.loads).toHaveLength(2);
    expect(batch.state).toBe("complete");
    expect(batch.jars?.failed).toBe(0);
    expect(batch.jars?.sealed).toBe(batch.jars?.processed);
    expect(batch.verdict).toBe("as-tested");
  });

  it("after a day can only be discarded, untasted", async () => {
    const { played, batch } = await cooled(
      `+25:00 jar 3 did not seal
+0:00 all the others sealed
+0:01 put it in the fridge
+0:01 reprocess it
+0:01 throw it out`,
    );
    expect(played.refused).toHaveLength(2);
    expect(played.refused[0]?.reason).toContain("untasted");
    const failed = batch.deviations.find((one) => one.code === "seal-failed");
    expect(failed?.disposition).toBe("discard");
    expect(allSaid(played)).toMatch(/boil thirty minutes/);
  });

  it("may be found long after the batch was complete", async () => {
    const { batch } = await cooled("+13:00 all sealed\n+48:00 jar 3 did not seal");
    expect(batch.jars).toMatchObject({ sealed: 7, failed: 1 });
  });
});

describe("counting jars", () => {
  it("sets a part-filled jar aside, and the counts add up", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until fill]
+0:20 8 pints filled
+0:01 set one jar aside
+0:00 [cook until done]`,
    );
    const batch = onlyBatch(played);
    expect(batch.jars).toMatchObject({ filled: 8, setAside: 1, processed: 7, sealed: 7 });
    expect(codes(batch)).toEqual([]);
    expect(batch.verdict).toBe("as-tested");
  });

  it("takes a jar that breaks before the canner, and one that breaks in it", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until fill]
+0:20 8 pints filled
+0:01 a jar broke
+0:00 [cook until process]
+0:00 it's boiling and the lids are covered
+0:05 a jar broke in the canner
+0:00 [cook until done]`,
    );
    const batch = onlyBatch(played);
    expect(batch.jars).toMatchObject({ filled: 8, processed: 7, sealed: 6, broken: 2 });
    expect(codes(batch)).toEqual([]);
  });

  it.each([
    ["the burst one is in the bin now", 1],
    ["another one burst", 2],
  ])("counts a jar that broke once, however often it is told of: %j", async (again, broken) => {
    const played = await play(
      BEANS,
      `0:00 [cook until process]
+0:00 it's boiling and the lids are covered
+0:05 a jar cracked
+0:02 ${again}
+0:00 [cook until done]`,
    );
    expect(onlyBatch(played).jars).toMatchObject({ filled: 8, broken });
    expect(onlyBatch(played).heard).toEqual([]);
  });

  it("asks for a count where none was said", async () => {
    const played = await play(
      BEANS,
      "0:00 [cook until fill]\n+0:20 the jars are filled\n+0:00 eight",
    );
    expect(played.asked.at(-2)?.text ?? "").toMatch(/How many/);
    expect(onlyBatch(played).jars?.filled).toBe(8);
  });

  it("asks about an impossible number of jars", async () => {
    const played = await play(BEANS, "0:00 [cook until fill]\n+0:20 400 pints filled");
    expect(played.refused.length + played.asked.length).toBeGreaterThan(0);
    expect(onlyBatch(played).jars?.filled).toBe(0);
  });

  it("asks whether a second count is the total", async () => {
    const played = await play(
      BEANS,
      "0:00 [cook until fill]\n+0:20 3 pints filled\n+0:01 8 pints filled\n+0:00 yes",
    );
    expect(played.asked.some((one) => /8 in all/.test(one.text))).toBe(true);
    expect(onlyBatch(played).jars?.filled).toBe(8);
  });

  it("refuses jars that are filled before their food is ready", async () => {
    const played = await play(BEANS, "0:05 8 pints filled");
    expect(played.refused[0]?.reason).toContain("wash and trim");
  });

  it("refuses to break or set aside more jars than there are", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until fill]
+0:20 8 pints filled
+0:00 set nine jars aside
+0:00 nine jars broke`,
    );
    expect(played.refused).toHaveLength(2);
    expect(onlyBatch(played).jars).toMatchObject({ filled: 8, setAside: 0, broken: 0 });
  });

  it("gives a smaller jar the time of the next larger tested one, a larger jar none", async () => {
    const small = await play(BEANS, undefined, { jar: "half-pint" });
    expect(onlyBatch(small)).toMatchObject({ jar: "half-pint", verdict: "as-tested" });
    expect(onlyBatch(small).process?.testedMinutes).toBe(15);
    const large = await play(BEANS, undefined, { jar: "quart" });
    expect(large.review.batches).toEqual([]);
    expect(large.refused[0]?.reason).toContain("Quart jars were not tested");
  });

  it("tells how the lids are marked where several lots run", async () => {
    const played = await play(
      BEANS,
      "0:00 start the dilly beans, Provider, 2 pounds\n+0:00 [cook until done]",
    );
    expect(allSaid(played)).toMatch(/lids from P 1/);
  });
});
