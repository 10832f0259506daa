import { describe, expect, it } from "vitest";
import { allSaid, codes, onlyBatch, play, stageOf, timesSaid } from "./play.ts";

const BEANS = "dilled-green-beans";
/** At 6,200 ft pints of dilled beans take 15 minutes. */
const BOIL = "0:00 [cook until process]\n+0:00 it's boiling and the lids are covered\n";
const DONE = "\n+0:00 [cook until done]";

async function boiled(script: string, options = {}) {
  const played = await play(BEANS, BOIL + script, options);
  expect(played.trouble).toBeUndefined();
  return { played, batch: onlyBatch(played) };
}

describe("a boiling-water process", () => {
  it("is as tested when an ideal cook plays it, without a deviation", async () => {
    const played = await play(BEANS);
    const batch = onlyBatch(played);
    expect(batch).toMatchObject({ verdict: "as-tested", state: "complete", deviations: [] });
    expect(batch.process).toMatchObject({ testedMinutes: 15, achievedMinutes: 15, restarts: 0 });
    expect(played.refused).toEqual([]);
  });

  it.each([
    "the water stopped boiling",
    "the water bath went off the boil",
    "the big pot stopped boiling",
    "the canner water's not boiling any more",
  ])("stops its clock at once at: %s", async (words) => {
    const { batch } = await boiled(`+0:05 ${words}\n+0:02 the water is boiling again${DONE}`);
    expect(codes(batch)).toEqual(["boil-lost", "process-restarted"]);
  });

  it("does not take the kettle beside it for the canner", async () => {
    const played = await play(BEANS, "0:00 [cook until process]\n+0:00 the kettle is boiling");
    expect(stageOf(onlyBatch(played), "process").state).toBe("waiting");
  });

  it("begins at a boil with the lids covered, and ends when its time is full", async () => {
    const { batch } = await boiled(DONE);
    const process = stageOf(batch, "process");
    expect(process.minutes).toBe(15);
    expect(process.startedAt).toContain("T09:25:00");
    expect(batch.verdict).toBe("as-tested");
  });

  it("starts the whole time again after the boil was lost", async () => {
    const { played, batch } = await boiled(
      `+0:05 it went off the boil\n+0:02 it's boiling again${DONE}`,
    );
    expect(codes(batch)).toEqual(["boil-lost", "process-restarted"]);
    expect(batch.deviations.map((one) => one.disposition)).toEqual(["restarted", "restarted"]);
    expect(batch.process).toMatchObject({ restarts: 1, achievedMinutes: 15, state: "complete" });
    expect(stageOf(batch, "process").restarts).toBe(1);
    expect(batch.verdict).toBe("as-tested");
    expect(allSaid(played)).toContain("the whole fifteen minutes start again");
  });

  it("stops its clock at once when the boil is lost", async () => {
    const { batch } = await boiled("+0:05 it went off the boil\n+1:00 what now");
    expect(batch.process).toMatchObject({ achievedMinutes: 5, state: "running" });
    expect(batch.deviations).toMatchObject([{ code: "boil-lost", disposition: "undecided" }]);
    expect(batch.verdict).toBe("unfinished");
  });

  it("asks whether the lids are covered, and counts from the report once they are", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until process]\n+0:00 it's boiling\n+0:03 yes${DONE}`,
    );
    const batch = onlyBatch(played);
    expect(played.asked.map((one) => one.text)).toContain(
      "Are the lids covered by at least 1 inch of water?",
    );
    expect(stageOf(batch, "process")).toMatchObject({ minutes: 15 });
    expect(stageOf(batch, "process").startedAt).toContain("T09:25:00");
  });

  it("needs two inches over the lids where the process is longer than half an hour", async () => {
    const played = await play(
      "crushed-tomatoes",
      "0:00 [cook until process]\n+0:00 it's boiling\n+0:01 yes",
    );
    expect(onlyBatch(played).process?.testedMinutes).toBeGreaterThan(30);
    expect(allSaid(played)).toContain("at least 2 inches over the lids");
    expect(played.asked.at(-1)?.text).toContain("at least 2 inches");
  });

  it("does not begin while the lids are uncovered, and asks again at the next boil", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until process]
+0:00 it's boiling
+0:01 no
+0:04 it's boiling
+0:01 yes
+0:00 [cook until done]`,
    );
    const asked = played.asked.filter((one) => one.text.includes("covered by at least"));
    expect(asked).toHaveLength(2);
    expect(stageOf(onlyBatch(played), "process").startedAt).toContain("T09:30:00");
    expect(onlyBatch(played).verdict).toBe("as-tested");
  });

  it("treats uncovered lids as a lost boil", async () => {
    for (const words of ["the lids are uncovered", "the water is below the lids"]) {
      const { batch } = await boiled(
        `+0:05 ${words}\n+0:05 it's boiling and the lids are covered${DONE}`,
      );
      expect(codes(batch)).toEqual(
        expect.arrayContaining(["boil-lost", "process-restarted", "water-low"]),
      );
      expect(batch.process).toMatchObject({ restarts: 1 });
      expect(batch.verdict).toBe("as-tested");
    }
  });

  it("writes low water down as carried on where the lids stayed covered", async () => {
    const { played, batch } = await boiled(`+0:05 the water is low\n+0:01 yes${DONE}`);
    expect(allSaid(played)).toContain("boiling water, around the jars, not on them");
    expect(batch.deviations).toMatchObject([{ code: "water-low", disposition: "carried-on" }]);
    expect(batch.process?.restarts).toBe(0);
    expect(batch.verdict).toBe("as-tested");
  });

  it("asks whether low water still covers the lids, and starts over after a no", async () => {
    const { played, batch } = await boiled(`+0:05 the water is low\n+0:01 no${DONE}`);
    expect(played.asked.map((one) => one.text)).toContain("Are the lids still covered?");
    expect(codes(batch)).toEqual(["water-low", "boil-lost", "process-restarted"]);
    expect(batch.process?.restarts).toBe(1);
  });

  it("says once, halfway, to check the water", async () => {
    const { played } = await boiled(DONE);
    expect(timesSaid(played, "halfway")).toBe(1);
    expect(played.said.find((one) => one.text.includes("halfway"))?.at).toContain("T09:32:30");
  });

  it("is not as tested after a no at its end, and asks what becomes of the jars", async () => {
    const { played, batch } = await boiled(`+0:15 no${DONE}`);
    expect(batch.verdict).toBe("not-as-tested");
    expect(batch.deviations).toMatchObject([{ code: "boil-lost", disposition: "refrigerate" }]);
    expect(played.asked.at(-1)?.text).toContain("What becomes of the 8 jars");
  });

  it("is not as tested where nobody answers the question at its end", async () => {
    const { batch } = await boiled(
      "+0:15 the heat is off\n+0:06 the jars are out\n+13:00 all sealed",
    );
    expect(batch.state).toBe("complete");
    expect(batch.verdict).toBe("not-as-tested");
    expect(batch.reasons.join()).toContain("nobody answered");
  });

  it("waits five minutes with the heat off, which do not count", async () => {
    const { batch } = await boiled(DONE);
    expect(stageOf(batch, "settle").minutes).toBe(5);
    expect(batch.process?.achievedMinutes).toBe(15);
  });

  it("notes a process that ran over by more than ten minutes as a matter of quality", async () => {
    const long = await boiled(`+0:27 yes\n+0:00 the heat is off${DONE}`);
    expect(codes(long.batch)).toEqual(["process-long"]);
    expect(long.batch.verdict).toBe("as-tested");
    const short = await boiled(`+0:24 yes\n+0:00 the heat is off${DONE}`);
    expect(codes(short.batch)).toEqual([]);
  });

  it("rings once at the end of its time, until somebody answers", async () => {
    const { played } = await boiled("+0:20 got it\n+0:10 what now");
    const due = played.journal.filter((one) => one.type === "due" && one.key !== undefined);
    const ends = due.filter((one) => String(one.key).includes("/process/end"));
    expect(ends).toHaveLength(1);
    const alarms = played.said.filter((one) => one.rank === "alarm");
    expect(alarms.length).toBeGreaterThan(2);
    expect(alarms.every((one) => one.at < "2027-08-14T09:45:01")).toBe(true);
  });
});

describe("taking jars out early", () => {
  const EARLY = "+0:05 take the jars out\n";

  it("is asked about with a plain warning, and does nothing after a no", async () => {
    const { played, batch } = await boiled(`${EARLY}+0:01 no${DONE}`);
    expect(played.asked.map((one) => one.text).join()).toContain("5 of 15 minutes");
    expect(allSaid(played)).toContain("not shelf-stable");
    expect(batch).toMatchObject({ verdict: "as-tested", deviations: [] });
  });

  it("is written down as too short after a yes, and the jars are disposed of", async () => {
    const { batch } = await boiled(`${EARLY}+0:00 yes\n+0:01 put them in the fridge${DONE}`);
    expect(batch.deviations).toMatchObject([
      { code: "process-short", stage: "process", disposition: "refrigerate" },
    ]);
    expect(batch.verdict).toBe("not-as-tested");
    expect(batch.process).toMatchObject({ achievedMinutes: 5, testedMinutes: 15 });
    expect(batch.jars).toMatchObject({ filled: 8, processed: 0, sealed: 0, setAside: 8 });
    expect(batch.state).toBe("complete");
  });

  it("leaves the deviation undecided where nobody says what becomes of the jars", async () => {
    const { batch } = await boiled(`${EARLY}+0:00 yes\n+13:00 all sealed`);
    expect(batch.deviations).toMatchObject([{ code: "process-short", disposition: "undecided" }]);
    expect(batch.verdict).toBe("not-as-tested");
  });

  it("refuses to reprocess where no hot pack was tested", async () => {
    const { played, batch } = await boiled(`${EARLY}+0:00 yes\n+0:01 reprocess them`);
    expect(played.refused.at(-1)?.reason).toContain("No hot pack was tested");
    expect(batch.deviations[0]?.disposition).toBe("undecided");
  });

  it("processes the jars again as the tested hot pack where there is one", async () => {
    const played = await play(
      "peaches",
      `0:00 [cook until process]
+0:00 it's boiling and the lids are covered
+0:05 take the jars out
+0:00 yes
+0:01 reprocess them
+0:00 [cook until done]`,
      { pack: "raw" },
    );
    expect(played.trouble).toBeUndefined();
    const batch = onlyBatch(played);
    expect(batch.deviations).toMatchObject([{ code: "process-short", disposition: "reprocess" }]);
    expect(batch).toMatchObject({ pack: "hot", state: "complete", verdict: "as-tested" });
    expect(batch.loads).toHaveLength(2);
    expect(played.review.loads.map((load) => load.verdict)).toEqual(["not-as-tested", "as-tested"]);
    const { filled, processed, sealed, setAside } = batch.jars ?? {};
    expect(processed).toBe(sealed);
    expect(filled).toBe((processed ?? 0) + (setAside ?? 0));
  });

  it("is refused before any jar is in a canner", async () => {
    const played = await play(BEANS, "0:05 take the jars out");
    expect(played.refused).toHaveLength(1);
    expect(onlyBatch(played).deviations).toEqual([]);
  });
});

describe("a boil with several things waiting", () => {
  it("is asked about, never settled by focus", async () => {
    const played = await play(
      [BEANS, "bread-and-butter-pickles"],
      `0:00 [cook until process]
+0:00 start the syrup
+0:00 it's boiling
+0:00 the canner`,
    );
    expect(played.asked.some((one) => one.text.startsWith("Which is boiling"))).toBe(true);
    const [beans] = played.review.batches;
    expect(beans && stageOf(beans, "process").state).not.toBe("complete");
    expect(allSaid(played)).toMatch(/A full boil|Are the lids covered/);
  });

  it("asks which where the words name only a pot", async () => {
    const played = await play(
      [BEANS, "bread-and-butter-pickles"],
      `0:00 [cook until process]
+0:00 start the syrup
+0:00 the pot is boiling`,
    );
    expect(played.asked.at(-1)?.text).toMatch(/^Which is boiling/);
  });

  it("is settled by the name of a lot and of its pot together", async () => {
    const played = await play(
      BEANS,
      `0:00 start the Dragon Tongue dilly beans in half pints
+0:01 the Dragon Tongue brine is boiling`,
    );
    expect(played.refused).toEqual([]);
    const [first, tongue] = played.review.batches;
    expect(first && stageOf(first, "brine").state).toBe("waiting");
    expect(tongue && stageOf(tongue, "brine").state).not.toBe("waiting");
  });

  it("is settled by words that can only mean the canner", async () => {
    const played = await play(
      [BEANS, "bread-and-butter-pickles"],
      `0:00 [cook until process]
+0:00 start the syrup
+0:00 it's boiling and the lids are covered`,
    );
    expect(allSaid(played)).toContain("Fifteen minutes, until ");
  });
});
