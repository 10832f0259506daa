import { describe, expect, it } from "vitest";
import { allSaid, codes, onlyBatch, play, stageOf, theLibrary } from "./play.ts";

const BEANS = "dilled-green-beans";
const BOIL = "0:00 [cook until process]\n+0:00 it's boiling and the lids are covered\n";
const DONE = "\n+0:00 [cook until done]";

async function day(script: string, recipe = BEANS, options = {}) {
  const played = await play(recipe, script, options);
  return { played, batch: onlyBatch(played) };
}

describe("the altitude", () => {
  it.each([
    [0, 5],
    [1000, 5],
    [1001, 10],
    [3001, 10],
    [6000, 10],
    [6001, 15],
    [8000, 15],
    [10000, 15],
  ])("of %i ft gives dilled beans %i minutes", async (feet, minutes) => {
    const { batch } = await day("0:00 [cook until done]", BEANS, { altitude: `${feet}ft` });
    expect(batch).toMatchObject({ altitudeFt: feet, verdict: "as-tested" });
    expect(batch.process).toMatchObject({ testedMinutes: minutes, achievedMinutes: minutes });
  });

  it("above 10,000 ft has no tested time, and the reason is said", async () => {
    const played = await play(BEANS, undefined, { altitude: "10001ft" });
    expect(played.review.batches).toEqual([]);
    expect(played.refused[0]?.reason).toContain("10,000 ft");
  });

  it("may be changed until the process runs, and its time is looked up again", async () => {
    const { batch } = await day(
      `0:00 we're at 500 feet
+0:00 [cook until process]
+0:00 it's boiling and the lids are covered${DONE}`,
    );
    expect(batch.process).toMatchObject({ testedMinutes: 5 });
    expect(batch.altitudeFt).toBe(500);
  });

  it("changes nothing of what already runs", async () => {
    const { batch } = await day(`${BOIL}+0:01 we're at 500 feet${DONE}`);
    expect(batch.process).toMatchObject({ testedMinutes: 15, achievedMinutes: 15 });
    expect(batch.altitudeFt).toBe(6200);
  });

  it("is doubted where a full boil reads far from what it should", async () => {
    const { batch } = await day(`${BOIL}+0:02 the canner is at 212${DONE}`);
    expect(codes(batch)).toEqual(["altitude-doubt"]);
  });

  it("is asked for again where nobody can live that high", async () => {
    const { played } = await day("0:00 we're at 90000 feet");
    expect(played.refused).toHaveLength(1);
  });
});

describe("critical factors", () => {
  const ASKED = ["percent is the vinegar", "headspace", "Lids: new"];

  it("are each asked once in the flow of the work", async () => {
    const { played, batch } = await day("0:00 [cook until done]");
    for (const words of ASKED) {
      expect(played.asked.filter((one) => one.text.includes(words))).toHaveLength(1);
    }
    expect(batch.confirmed.map((one) => one.factor)).toEqual([
      "vinegar-5-percent",
      "headspace",
      "new-lids",
    ]);
  });

  it("ask for sterile jars only where the process is under ten minutes", async () => {
    const low = await day("0:00 [cook until done]", BEANS, { altitude: "0ft" });
    expect(low.batch.confirmed.map((one) => one.factor)).toContain("sterile-jars");
    const high = await day("0:00 [cook until done]");
    expect(high.batch.confirmed.map((one) => one.factor)).not.toContain("sterile-jars");
  });

  it("answered no are a deviation, and the batch is never as tested", async () => {
    const { batch } = await day(
      `0:00 [cook until fill]\n+0:10 8 pints filled\n+0:00 a quarter inch${DONE}`,
    );
    expect(codes(batch)).toEqual(["headspace"]);
    expect(batch.verdict).toBe("not-as-tested");
    const lids = await day(
      `0:00 [cook until fill]\n+0:10 8 pints filled\n+0:00 half an inch\n+0:00 used${DONE}`,
    );
    expect(codes(lids.batch)).toEqual(["critical-unrecorded"]);
    expect(lids.batch.verdict).toBe("not-as-tested");
  });

  it("that nobody confirmed are a deviation, and the batch is never as tested", async () => {
    const { played, batch } = await day(
      `0:00 start the brine
+0:15 the brine is boiling
+0:10 trimming's done
+0:35 the canner is ready
+0:20 8 pints filled
+0:05 the jars are in
+0:20 it's boiling and the lids are covered
+0:15 yes
+0:00 the heat is off
+0:10 the jars are out
+13:00 all sealed`,
    );
    expect(batch.state).toBe("complete");
    const unrecorded = batch.deviations.filter((one) => one.code === "critical-unrecorded");
    expect(unrecorded.length).toBeGreaterThanOrEqual(2);
    expect(batch.verdict).toBe("not-as-tested");
    const texts = played.asked.map((one) => one.text);
    expect(new Set(texts).size).toBe(texts.length);
    for (const words of ASKED) expect(texts.some((text) => text.includes(words))).toBe(true);
  });

  it("are not confirmed by a clause that the wording does not cover", async () => {
    const { batch } = await day(
      "0:00 [cook until fill]\n+0:10 8 pints filled with some headspace and new lids",
    );
    expect(batch.confirmed.map((one) => one.factor)).not.toContain("headspace");
    const other = await day("0:00 [cook until fill]\n+0:10 8 pints filled with one inch headspace");
    expect(other.batch.confirmed.map((one) => one.factor)).not.toContain("headspace");
  });

  it("are not confirmed by an okay", async () => {
    const { batch } = await day("0:00 [cook until fill]\n+0:10 8 pints filled\n+0:00 okay");
    expect(batch.confirmed.map((one) => one.factor)).toEqual(["vinegar-5-percent"]);
  });

  it("of a ferment ask whether it is sound", async () => {
    const { played } = await day("0:00 [cook until done]", "sauerkraut");
    expect(allSaid(played)).toContain("The ferment: sound, or");
  });
});

describe("a yes or a no with nothing asked", () => {
  it("records nothing", async () => {
    const { played } = await day("0:00 yes\n+0:00 no");
    expect(played.journal.filter((one) => one.cmd.startsWith("c"))).toHaveLength(2);
    expect(allSaid(played)).toContain("I have not asked anything just now.");
  });
});

describe("corrections", () => {
  it("undo names what it takes back, and undoes the latest report", async () => {
    const { played, batch } = await day(`${BOIL}+0:01 undo`);
    expect(allSaid(played)).toContain("Taken back: the boil of the canner");
    expect(stageOf(batch, "process").state).toBe("waiting");
    expect(batch.process?.achievedMinutes).toBe(0);
  });

  it("undoing a loss needs a yes that names it", async () => {
    const { played, batch } = await day(
      `${BOIL}+0:05 it went off the boil\n+0:01 undo\n+0:00 yes${DONE}`,
    );
    expect(played.asked.some((one) => one.text.startsWith("Take back the lost boil"))).toBe(true);
    expect(codes(batch)).toEqual([]);
    expect(batch.process).toMatchObject({ restarts: 0, achievedMinutes: 15 });
  });

  it("of more than five minutes back need a yes, smaller ones do not", async () => {
    const big = await day(
      `0:00 [cook until process]
+0:12 it's boiling and the lids are covered
+0:02 that was ten minutes ago
+0:00 yes${DONE}`,
    );
    expect(big.played.asked.some((one) => one.text.includes("back by 8 minutes"))).toBe(true);
    expect(stageOf(big.batch, "process").startedAt).toContain("T09:29:00");
    const small = await day(
      `0:00 [cook until process]
+0:12 it's boiling and the lids are covered
+0:02 that was five minutes ago${DONE}`,
    );
    expect(small.played.asked.some((one) => one.text.includes("back by"))).toBe(false);
    expect(stageOf(small.batch, "process").startedAt).toContain("T09:34:00");
    expect(small.batch.verdict).toBe("as-tested");
  });

  it("never move a start before the loading, nor across a loss", async () => {
    const early = await day(`${BOIL}+0:05 that was twenty minutes ago`);
    expect(early.played.refused[0]?.reason).toContain("before the loading");
    const across = await day(
      `${BOIL}+0:05 it went off the boil
+0:05 it's boiling again
+0:01 that was eight minutes ago`,
    );
    expect(across.played.refused[0]?.reason).toContain("before it was lost");
  });

  it("mark in the log what was written late, and keep in the journal what was said", async () => {
    const { played, batch } = await day(
      `${BOIL}+0:08 it went off the boil five minutes ago\n+0:01 it's boiling again${DONE}`,
    );
    expect(codes(batch)).toEqual(["boil-lost", "written-late", "process-restarted"]);
    expect(batch.deviations[0]?.detail).toContain("3 of 15 min");
    expect(played.journal.find((one) => one.type === "boil-lost")?.written).toContain("T09:33");
  });

  it("a loss reported late reopens a process that had seemed full", async () => {
    const { batch } = await day(
      `${BOIL}+0:16 it went off the boil five minutes ago\n+0:02 it's boiling again${DONE}`,
    );
    expect(batch.process).toMatchObject({ restarts: 1, achievedMinutes: 15 });
    expect(batch.verdict).toBe("as-tested");
    expect(stageOf(batch, "process").minutes).toBeGreaterThan(15);
  });

  it("ask the question at the end again after the time was run again", async () => {
    const { played } = await day(
      `${BOIL}+0:16 it went off the boil five minutes ago\n+0:02 it's boiling again${DONE}`,
    );
    expect(played.asked.filter((one) => /full boil throughout/i.test(one.text))).toHaveLength(2);
  });
});

describe("holding, going on and abandoning", () => {
  it("a hold stops hands-on work and lets the clocks run", async () => {
    const { batch } = await day(
      "0:00 [cook until rest]\n+0:10 hold\n+0:30 what now\n+0:00 resume\n+0:00 [cook until done]",
      "bread-and-butter-pickles",
    );
    expect(batch.verdict).toBe("as-tested");
    expect(stageOf(batch, "salt-and-chill").minutes).toBe(180);
  });

  it("a held batch is called held when asked about, and at an opening", async () => {
    const { played } = await day(
      "0:05 hold\n+0:01 what now\n+0:01 overview\n+0:01 [closed for 0:05]",
    );
    expect(allSaid(played)).toContain("is held. Say resume to go on.");
    expect(allSaid(played)).toContain("is held, at wash and trim");
    expect(allSaid(played)).toContain("at wash and trim, held");
  });

  it("a held batch says so in its log", async () => {
    const { batch } = await day("0:05 hold");
    expect(batch.state).toBe("held");
    expect(stageOf(batch, "trim").state).toBe("held");
  });

  it("a process cannot be held, only lost", async () => {
    const { played, batch } = await day(`${BOIL}+0:02 hold the canner\n+0:02 hold${DONE}`);
    expect(played.refused.map((one) => one.reason).join()).toMatch(/held, only lost|did not get/);
    expect(batch.process?.achievedMinutes).toBe(15);
  });

  it("abandoning needs a yes", async () => {
    const kept = await day("0:05 abandon the batch\n+0:00 no");
    expect(kept.batch.state).toBe("running");
    const gone = await day("0:05 abandon the batch\n+0:00 yes\n+0:01 what now");
    expect(gone.batch).toMatchObject({ state: "abandoned", verdict: "unfinished" });
    expect(codes(gone.batch)).toEqual([]);
  });
});

describe("reports that cannot be true now", () => {
  it.each([
    ["all sealed"],
    ["jar 3 did not seal"],
    ["8 pints filled"],
    ["the jars are in"],
    ["it went off the boil"],
    ["14 pounds"],
    ["the weight is rocking"],
    ["it's venting"],
    ["put them in the fridge"],
  ])("are refused with a reason: %s", async (words) => {
    const { played } = await day(`0:02 ${words}`);
    expect(played.refused).toHaveLength(1);
    expect(played.refused[0]?.reason.length).toBeGreaterThan(10);
    expect(played.journal.filter((one) => one.cmd.startsWith("c"))).toHaveLength(2);
  });

  it("name what comes first where jars are filled too soon", async () => {
    const { played } = await day("0:00 done\n+0:00 the canner is ready\n+0:01 8 pints filled");
    expect(played.refused.map((one) => one.reason)).toEqual([
      "The dilled green beans: boil the brine comes first.",
    ]);
  });

  it("do not lose the minus before an impossible reading", async () => {
    const { played } = await day("0:02 the brine is -40 degrees\n+0:00 minus fifty degrees");
    expect(played.refused.map((one) => one.reason)).toEqual([
      "-40 degrees can't be right. What does the thermometer show?",
      "-50 degrees can't be right. What does the thermometer show?",
    ]);
    expect(onlyBatch(played).readings).toEqual([]);
  });

  it("and unknown words get a short question back, and record nothing", async () => {
    const { played } = await day("0:02 the moon is made of thin paper");
    expect(played.refused).toHaveLength(1);
    expect(played.journal.filter((one) => one.cmd.startsWith("c"))).toHaveLength(2);
  });
});

describe("a recipe held back by the check", () => {
  it("is begun as a refrigerator food with the reason said, and never canned", async () => {
    const beans = theLibrary().recipes.get(BEANS);
    if (!beans) throw new Error("no beans");
    const heldBack = "vinegar for the produce is 25 percent of the tested recipe's";
    const recipes = new Map([[BEANS, { ...beans, tested: false, heldBack }]]);
    const library = () => ({ ...theLibrary(), recipes });
    const cold = await play(BEANS, "0:00 [cook until done]", {}, library);
    expect(allSaid(cold)).toMatch(/25 percent.*keep it in the refrigerator/);
    expect(onlyBatch(cold)).toMatchObject({ process: null, verdict: "not-shelf-stable" });
    const canned = await play(BEANS, undefined, { method: "boiling-water" }, library);
    expect(canned.review.batches).toEqual([]);
    expect(canned.refused[0]?.reason).toMatch(/25 percent/);
  });
});
