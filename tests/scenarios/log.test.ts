import { describe, expect, it } from "vitest";
import { allSaid, codes, onlyBatch, play, stageOf, timesSaid } from "./play.ts";

const BEANS = "dilled-green-beans";
const BOIL = "0:00 [cook until process]\n+0:00 it's boiling and the lids are covered\n";
const DONE = "\n+0:00 [cook until done]";
const NOT_RECORDED = "This is not recorded";

describe("a disk that refuses", () => {
  it("is said at once, the session goes on, and what is missing is written later", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until process]
+0:00 [disk full]
+0:00 it's boiling and the lids are covered
+0:05 [disk ok]${DONE}`,
    );
    const batch = onlyBatch(played);
    expect(timesSaid(played, NOT_RECORDED)).toBeGreaterThan(0);
    expect(allSaid(played)).toContain("The log is written again, with nothing missing");
    expect(codes(batch)).toEqual(["log-not-written"]);
    expect(batch.process).toMatchObject({ achievedMinutes: 15 });
    expect(batch.verdict).toBe("as-tested");
  });

  it("is never answered with a claim that something was written", async () => {
    const played = await play(BEANS, "0:05 [disk full]\n+0:00 note the beans are stringy");
    const said = played.said.filter((one) => one.at >= "2027-08-14T08:05:00");
    expect(said.map((one) => one.text).join()).not.toMatch(/\bNoted\b/);
    expect(said.some((one) => one.text.includes(NOT_RECORDED))).toBe(true);
  });

  it("loses what a crash takes, and says that it is still not recording", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until process]
+0:00 [disk full]
+0:00 it's boiling and the lids are covered
+0:05 [crash]
+0:01 [disk ok]${DONE}`,
    );
    const batch = onlyBatch(played);
    expect(codes(batch)).toContain("log-not-written");
    expect(stageOf(batch, "process").startedAt).not.toContain("T09:25:00");
    expect(batch.verdict).toBe("as-tested");
  });
});

describe("a voice that fails", () => {
  it.each([
    ["[voice gone]", "soundcheck tries it"],
    ["[voice hangs]", "The voice did not answer in time"],
  ])("costs the voice and nothing else: %s", async (direction, told) => {
    const played = await play(BEANS, `${BOIL}+0:01 ${direction}${DONE}`);
    expect(onlyBatch(played)).toMatchObject({ verdict: "as-tested", deviations: [] });
    expect(timesSaid(played, told)).toBe(1);
  });

  it("that works is not reported as broken, however long nothing is said", async () => {
    const played = await play("sauerkraut");
    expect(timesSaid(played, "soundcheck")).toBe(0);
  });

  it("is back when it works again", async () => {
    const played = await play(BEANS, `0:00 [voice gone]\n+0:05 what now\n+0:10 [voice ok]${DONE}`);
    expect(timesSaid(played, "The voice is back")).toBe(1);
  });
});

describe("timers", () => {
  it("ring once at their moment and are answered by the one spoken last", async () => {
    const played = await play(
      BEANS,
      `0:00 timer for ten minutes
+0:01 timer for 10 minutes for the eggs
+0:10:10 got it
+0:00:05 got it`,
    );
    const answers = played.said.filter((one) => one.text.startsWith("Got it: "));
    expect(answers.map((one) => one.text)).toEqual([
      "Got it: the eggs timer.",
      "Got it: the 10 minute timer.",
    ]);
    expect(played.review.timers.map((one) => one.state)).toEqual(["answered", "answered"]);
  });

  it("can be lengthened and cancelled", async () => {
    const played = await play(
      BEANS,
      `0:00 set a timer for 20 minutes for the eggs
+0:05 add five minutes to the eggs timer
+0:05 cancel the eggs timer`,
    );
    expect(played.review.timers).toMatchObject([
      { label: "eggs", minutes: 25, state: "cancelled" },
    ]);
  });

  it("repeat at growing intervals until somebody answers", async () => {
    const played = await play(BEANS, "0:00 timer for one minute\n+0:30 what now");
    const rings = played.said.filter((one) => one.text.startsWith("The 1 minute timer is done"));
    const seconds = rings.map((one) => Date.parse(one.at) / 1000);
    const waits = seconds.slice(1).map((at, index) => at - (seconds[index] ?? 0));
    expect(waits.length).toBeGreaterThan(3);
    expect([...waits].sort((a, b) => a - b)).toEqual(waits);
  });
});

describe("notes and readings", () => {
  it("go into the log of the batch in focus", async () => {
    const played = await play(BEANS, "0:05 note the beans are a bit stringy");
    expect(onlyBatch(played).notes.map((one) => one.text)).toEqual(["the beans are a bit stringy"]);
  });

  it("answers from the recipe as it is scaled", async () => {
    const played = await play(
      BEANS,
      "0:01 what headspace\n+0:01 how much dill per jar\n+0:01 read me the ingredients",
      { for: "8lb" },
    );
    const said = allSaid(played);
    expect(said).toContain("half an inch");
    expect(said).toContain("1 to 2 heads");
    expect(said).toContain("8 cups");
    expect(played.refused).toEqual([]);
  });
});

describe("a rehearsal", () => {
  it("gives the same bytes for the same arguments", async () => {
    const script = `${BOIL}+0:05 [crash]\n+0:01 [closed for 0:03]\n+0:00 yes${DONE}`;
    const [first, second] = [await play(BEANS, script), await play(BEANS, script)];
    expect(first.text).toBe(second.text);
  });

  it("accepts times with days, and times since the beginning", async () => {
    const played = await play(
      "sauerkraut",
      "0:00 [cook until ferment]\n1d 3:00 note first bubbles\n22d 0:00 note it is slowing",
    );
    const { notes } = onlyBatch(played);
    expect(notes.map((one) => one.at.slice(0, 16))).toEqual([
      "2027-08-15T11:00",
      "2027-09-05T08:00",
    ]);
  });

  it("names the line whose time lies before what has passed", async () => {
    const played = await play(BEANS, "0:00 [cook until process]\n0:05 it's boiling");
    expect(played.code).toBe(1);
    expect(played.trouble).toContain("line 2");
  });

  it("counts + from when the program is open again after it was closed", async () => {
    const played = await play(BEANS, "0:05 [closed for 0:10]\n+0:05 note later");
    expect(onlyBatch(played).notes[0]?.at).toContain("T08:20:00");
  });

  it.each([
    [BEANS, "hands-on heat fill process cool seal-check store"],
    ["snap-beans", "vent process depressurize cool seal-check"],
    ["bread-and-butter-pickles", "rest cure"],
    ["sauerkraut", "ferment"],
    ["cucumber-seed", "ferment dry store"],
  ])("stops where a stage of a kind is the current one: %s", async (recipe, kinds) => {
    for (const kind of kinds.split(" ")) {
      const played = await play(recipe, `0:00 [cook until ${kind}]`);
      expect(played.trouble).toBeUndefined();
      const batch = onlyBatch(played);
      const running = batch.stages.filter((one) => one.kind === kind && one.state === "running");
      const waits = kind === "process" || kind === "vent";
      expect(running.length > 0 || waits).toBe(true);
      expect(batch.state).toBe(kind === "store" || kind === "cure" ? "complete" : "running");
    }
  });

  it("shows minutes of 0 and no times for a stage that was not begun", async () => {
    const played = await play(BEANS, "0:05 what now");
    const waiting = onlyBatch(played).stages.filter((one) => one.state === "waiting");
    expect(waiting.length).toBeGreaterThan(3);
    expect(waiting.every((one) => one.minutes === 0 && one.startedAt === null)).toBe(true);
  });

  it("shows neither process nor jars where the method has none", async () => {
    const seed = onlyBatch(await play("cucumber-seed"));
    expect(seed).toMatchObject({ process: null, jars: null, verdict: "no-process" });
    const crock = onlyBatch(await play("sauerkraut", undefined, { method: "ferment" }));
    expect(crock).toMatchObject({ process: null, jars: null, verdict: "not-shelf-stable" });
    expect(crock.state).toBe("complete");
  });

  it("says a rest that was too short or too long as a matter of quality", async () => {
    const short = await play(
      "bread-and-butter-pickles",
      `0:00 [cook until rest]\n+1:00 done\n+0:00 yes${DONE}`,
    );
    expect(codes(onlyBatch(short))).toEqual(["rest-short"]);
    expect(onlyBatch(short).verdict).toBe("as-tested");
    const long = await play(
      "bread-and-butter-pickles",
      `0:00 [cook until rest]\n+5:00 done${DONE}`,
    );
    expect(codes(onlyBatch(long))).toEqual(["rest-long"]);
    expect(onlyBatch(long).verdict).toBe("as-tested");
  });
});
