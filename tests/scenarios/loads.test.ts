import { describe, expect, it } from "vitest";
import { allSaid, codes, onlyBatch, play, stageOf } from "./play.ts";

const BEANS = "dilled-green-beans";
const BIG = { for: "8lb", "canner-holds": "7" };

/** Two lots of the same beans, filled and beside one canner: five pints and four. */
const TWO_LOTS = `0:00 undo
+0:00 start the Provider dilly beans, 2 pounds
+0:00 start the Dragon Tongue dilly beans, 2 pounds
+0:15 the brine is boiling
+0:00 done with the trimming
+0:45 the canner is ready
+0:20 five pints of the Provider filled
+0:00 four pints of the Dragon Tongue filled
+0:05 the jars are in
`;

describe("two lots beside one canner", () => {
  it("hear that the canner is ready already where it is said twice", async () => {
    const played = await play(BEANS, "1:00 the canner is ready\n+0:01 the canner is ready");
    expect(played.refused.map((one) => one.reason)).toEqual(["The canner is ready already."]);
  });

  it("go in together on one word, and their jars are known by the marks on the lids", async () => {
    const played = await play(
      BEANS,
      `${TWO_LOTS}+0:00 [cook until cool]
+13:00 P 2 didn't seal
+0:00 D 3 and D 4 didn't seal
+0:00 all the others sealed`,
    );
    expect(played.refused).toEqual([]);
    const [load] = played.review.loads;
    expect(load?.batches.map((one) => one.jars)).toEqual([5, 4]);
    const [provider, tongue] = played.review.batches;
    expect(provider?.jars).toMatchObject({ filled: 5, sealed: 4, failed: 1 });
    expect(tongue?.jars).toMatchObject({ filled: 4, sealed: 2, failed: 2 });
  });
});

describe("a jar that did not seal", () => {
  it("is not passed over while it is asked whose it was", async () => {
    const played = await play(
      BEANS,
      `${TWO_LOTS}+0:00 [cook until cool]
+13:00 one didn't seal
+0:00 all the others sealed
+0:00 the Provider
+0:00 all the others sealed`,
    );
    expect(played.refused.map(({ reason }) => reason)).toEqual([
      expect.stringMatching(/^Which (batch|dilled green beans): /),
    ]);
    const [provider, tongue] = played.review.batches;
    expect(provider?.jars).toMatchObject({ sealed: 4, failed: 1 });
    expect(tongue?.jars).toMatchObject({ sealed: 4, failed: 0 });
  });
});

describe("a batch too large for one load", () => {
  it("goes through several, none of more jars than the canner holds", async () => {
    const played = await play(BEANS, undefined, BIG);
    const batch = onlyBatch(played);
    expect(played.review.loads.map((load) => load.jars)).toEqual([7, 7, 2]);
    expect(batch.loads).toEqual(played.review.loads.map((load) => load.id));
    expect(batch.jars).toMatchObject({ filled: 16, processed: 16, sealed: 16 });
    expect(batch).toMatchObject({ verdict: "as-tested", deviations: [], state: "complete" });
    expect(batch.stages.filter((stage) => stage.kind === "process")).toHaveLength(3);
  });

  it("shows the fewest minutes of any load and the sum of their restarts", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until process]
+0:00 it's boiling and the lids are covered
+0:05 it went off the boil
+0:01 it's boiling again
+0:00 [cook until cool]
+0:00 [cook until process]
+0:00 it's boiling and the lids are covered
+0:09 it went off the boil
+0:01 it's boiling again
+0:00 [cook until done]`,
      BIG,
    );
    const batch = onlyBatch(played);
    expect(batch.process).toMatchObject({ achievedMinutes: 15, restarts: 2, state: "complete" });
    expect(played.review.loads.map((load) => load.process?.restarts)).toEqual([1, 1, 0]);
    expect(batch.verdict).toBe("as-tested");
  });

  it("is judged by its worst load, each jar by its own", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until process]
+0:00 [cook until cool]
+0:00 [cook until process]
+0:00 it's boiling and the lids are covered
+0:05 take the jars out
+0:00 yes
+0:00 [cook until done]`,
      BIG,
    );
    const batch = onlyBatch(played);
    expect(played.review.loads.map((load) => load.verdict)).toEqual([
      "as-tested",
      "not-as-tested",
      "as-tested",
    ]);
    expect(batch.verdict).toBe("not-as-tested");
    expect(batch.process?.achievedMinutes).toBe(5);
    expect(batch.jars).toMatchObject({ filled: 16, processed: 9, sealed: 9, setAside: 7 });
    expect(codes(batch)).toEqual(["process-short"]);
  });

  it("is asked about each gap in the load it concerns", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until cool]
+0:00 [cook until process]
+0:00 it's boiling and the lids are covered
+0:05 [closed for 0:05]
+0:00 yes
+0:00 [cook until done]`,
      BIG,
    );
    const batch = onlyBatch(played);
    expect(codes(batch)).toEqual(["unwatched"]);
    expect(batch.verdict).toBe("as-tested");
  });

  it("is filled only as the canner can take jars, and hears when it can", async () => {
    const played = await play(BEANS, undefined, BIG);
    expect(allSaid(played)).toContain("7 pints. That is a full load; the rest waits");
    expect(allSaid(played)).toContain("Ready for the next jars of the dilled green beans");
    const warm = stageOf(onlyBatch(played), "canner-2");
    const filled = played.journal.filter((one) => one.type === "jars-filled");
    expect(String(filled[1]?.at) > String(warm.endedAt)).toBe(true);
  });

  it("leaves jars that do not fit for the next load", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until fill]
+0:20 8 pints filled
+0:01 the jars are in
+0:00 [cook until done]`,
      { "canner-holds": "7" },
    );
    expect(allSaid(played)).toContain("1 left for the next load");
    expect(played.review.loads.map((load) => load.jars)).toEqual([7, 1]);
    expect(onlyBatch(played).verdict).toBe("as-tested");
  });

  it("refuses more jars in the canner than it holds", async () => {
    const played = await play(
      BEANS,
      "0:00 [cook until fill]\n+0:20 8 pints filled\n+0:01 8 pints are in the canner",
      { "canner-holds": "7" },
    );
    expect(played.refused[0]?.reason).toContain("holds 7 of these jars, not 8");
  });
});

describe("several batches and one canner", () => {
  const LOTS = `0:00 start the dilly beans, Provider, 2 pounds
+0:00 start the dilly beans, Blue Lake, 2 pounds
`;

  it("share a load where their process is the same, and each log says so", async () => {
    const played = await play(BEANS, `${LOTS}+0:00 [cook until done]`);
    const { batches, loads } = played.review;
    expect(loads.map((load) => load.batches.map((one) => one.jars))).toEqual([
      [8, 1],
      [3, 4],
    ]);
    expect(batches.map((one) => one.verdict)).toEqual(["as-tested", "as-tested", "as-tested"]);
    expect(batches[1]?.loads).toEqual(loads.map(({ id }) => id));
    expect(batches[2]?.loads).toEqual([loads[1]?.id]);
    expect(batches.map((one) => one.jars?.sealed)).toEqual([8, 4, 4]);
    expect(batches.map((one) => one.lot.variety)).toEqual([null, "Provider", "Blue Lake"]);
  });

  it("one incident in a shared load is in both logs", async () => {
    const played = await play(
      BEANS,
      `${LOTS}+0:00 [cook until cool]
+0:00 [cook until process]
+0:00 it's boiling and the lids are covered
+0:05 it went off the boil
+0:01 it's boiling again
+0:00 [cook until done]`,
    );
    const [first, second, third] = played.review.batches;
    expect(first && codes(first)).toEqual([]);
    expect(second && codes(second)).toEqual(["boil-lost", "process-restarted"]);
    expect(third && codes(third)).toEqual(["boil-lost", "process-restarted"]);
  });

  it("never share one if they are processed differently", async () => {
    const played = await play([BEANS, "bread-and-butter-pickles", "pickled-beets"]);
    expect(played.review.loads.every((load) => load.batches.length === 1)).toBe(true);
    expect(played.review.batches.map((one) => one.verdict)).toEqual([
      "as-tested",
      "as-tested",
      "as-tested",
    ]);
  });

  it("never have another's jars loaded instead of those that were named", async () => {
    const played = await play(
      [BEANS, "crushed-tomatoes"],
      `0:00 [cook until fill]
+0:10 8 pints of dilly beans filled
+0:00 the tomatoes are in the canner`,
    );
    expect(played.refused.at(-1)?.reason).toContain("No jars of the crushed tomatoes");
    expect(played.review.loads).toEqual([]);
  });

  it("take turns at the canner, whichever is ready first", async () => {
    const played = await play(["bread-and-butter-pickles", BEANS]);
    const [first] = played.review.loads;
    expect(first?.batches[0]?.id).toBe("270814-2");
    expect(played.trouble).toBeUndefined();
  });

  it("of one recipe need a variety to be told apart", async () => {
    const played = await play(BEANS, "0:00 start the dilly beans");
    expect(played.refused[0]?.reason).toContain("Name a variety");
    expect(played.review.batches).toHaveLength(1);
  });

  it("name whose seals are asked about", async () => {
    const played = await play(BEANS, `${LOTS}+0:00 [cook until done]`);
    expect(allSaid(played)).toMatch(
      /Which jars did not seal\? Say their marks, like [DP] 1, or all/,
    );
  });
});
