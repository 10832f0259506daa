import { describe, expect, it } from "vitest";
import { allSaid, codes, onlyBatch, play, stageOf, timesSaid } from "./play.ts";

const BEANS = "dilled-green-beans";
const BOIL = "0:00 [cook until process]\n+0:00 it's boiling and the lids are covered\n";
const DONE = "\n+0:00 [cook until done]";
const GAP = "Did the canner hold a full boil with the lids covered all that time?";

async function boiled(script: string) {
  const played = await play(BEANS, BOIL + script);
  expect(played.trouble).toBeUndefined();
  return { played, batch: onlyBatch(played) };
}

function gapsAsked(played: { asked: { text: string }[] }): number {
  return played.asked.filter((one) => one.text.includes(GAP)).length;
}

describe("time in which nobody watched a process", () => {
  it.each([["[closed for 0:10]"], ["[asleep for 0:10]"]])(
    "counts after %s and a yes",
    async (direction) => {
      const { played, batch } = await boiled(`+0:05 ${direction}\n+0:01 yes${DONE}`);
      expect(gapsAsked(played)).toBe(1);
      expect(batch.deviations).toMatchObject([
        { code: "unwatched", stage: "process", disposition: "carried-on" },
      ]);
      expect(batch.process).toMatchObject({ restarts: 0, state: "complete" });
      expect(batch.process?.achievedMinutes).toBeGreaterThanOrEqual(15);
      expect(batch.verdict).toBe("as-tested");
    },
  );

  it("is none where what was said was taken for it, and is denied", async () => {
    const { played } = await boiled(
      "+0:14 I squeezed two more in just now, there was room\n+0:00:06 no, I was here",
    );
    expect(played.asked.map(({ text }) => text).join()).toContain("Was nobody in the kitchen?");
    expect(gapsAsked(played)).toBe(0);
  });

  it("starts the whole time over after a no", async () => {
    const { played, batch } = await boiled(
      `+0:05 [closed for 0:10]\n+0:01 no\n+0:01 it's boiling and the lids are covered${DONE}`,
    );
    expect(gapsAsked(played)).toBe(1);
    expect(codes(batch)).toEqual(["unwatched", "process-restarted"]);
    expect(batch.deviations.map((one) => one.disposition)).toEqual(["restarted", "restarted"]);
    expect(batch.process).toMatchObject({ restarts: 1, achievedMinutes: 15 });
    expect(batch.verdict).toBe("as-tested");
  });

  it("never ends a process while its question waits, however long", async () => {
    const { played, batch } = await boiled("+0:05 [closed for 0:10]\n+2:00 what now");
    expect(stageOf(batch, "process").state).toBe("running");
    expect(batch.process).toMatchObject({ state: "running", achievedMinutes: 5 });
    expect(played.journal.some((one) => String(one.key).includes("/process/end"))).toBe(false);
    expect(batch.verdict).toBe("unfinished");
  });

  it("lets the time run on while the question waits", async () => {
    const { batch } = await boiled(`+0:05 [closed for 0:10]\n+0:20 yes${DONE}`);
    expect(stageOf(batch, "process").minutes).toBe(15);
    expect(batch.verdict).toBe("as-tested");
  });

  it("is not as tested where nobody ever answered", async () => {
    const { batch } = await boiled(
      "+0:05 [closed for 0:10]\n+0:20 take the jars out\n+0:00 yes\n+13:00 all sealed",
    );
    expect(batch.deviations.map(({ code, disposition }) => [code, disposition])).toEqual([
      ["unwatched", "undecided"],
      ["process-short", "undecided"],
    ]);
    expect(batch.process?.achievedMinutes).toBe(5);
    expect(batch.verdict).toBe("not-as-tested");
  });

  it("asks nothing where it was half a minute or less in total", async () => {
    const { played, batch } = await boiled(
      `+0:03 [closed for 0:00:15]\n+0:03 [closed for 0:00:15]${DONE}`,
    );
    expect(gapsAsked(played)).toBe(0);
    expect(codes(batch)).toEqual([]);
    expect(batch.verdict).toBe("as-tested");
    expect(played.journal.filter((one) => one.type === "gap")).toHaveLength(2);
  });

  it("asks where short times add up to more than half a minute", async () => {
    const { played } = await boiled(
      "+0:03 [closed for 0:00:20]\n+0:03 [closed for 0:00:20]\n+0:01 what now",
    );
    expect(gapsAsked(played)).toBe(1);
  });

  it("asks once, and takes the answer after another crash", async () => {
    const { played, batch } = await boiled(
      `+0:05 [closed for 0:10]\n+0:00:03 [crash]\n+0:00:04 [crash]\n+0:01 yes${DONE}`,
    );
    expect(gapsAsked(played)).toBe(1);
    expect(allSaid(played)).toContain("Still to answer: About 10 minutes");
    expect(batch.verdict).toBe("as-tested");
    expect(batch.deviations[0]).toMatchObject({ code: "unwatched", disposition: "carried-on" });
  });

  it("does not treat a plain crash as a gap: the clocks were written down", async () => {
    const { played, batch } = await boiled(`+0:05 [crash]${DONE}`);
    expect(gapsAsked(played)).toBe(0);
    expect(codes(batch)).toEqual([]);
    expect(batch.process).toMatchObject({ achievedMinutes: 15, restarts: 0 });
  });

  it("does not take a boil report as an answer", async () => {
    const { played, batch } = await boiled("+0:05 [closed for 0:10]\n+0:01 it's boiling again");
    expect(played.refused.at(-1)?.reason).toContain(GAP);
    expect(batch.deviations).toMatchObject([{ code: "unwatched", disposition: "undecided" }]);
  });

  it("leaves nothing open where the boil was lost later and the whole time run", async () => {
    const { batch } = await boiled(
      `+0:05 [closed for 0:10]
+0:01 it went off the boil
+0:01 it's boiling again${DONE}`,
    );
    expect(batch.process).toMatchObject({ restarts: 1, achievedMinutes: 15 });
    expect(batch.deviations.every((one) => one.disposition === "restarted")).toBe(true);
    expect(batch.verdict).toBe("as-tested");
  });

  it("is asked about where a boil was reported, unconfirmed, before it", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until process]
+0:00 it's boiling
+0:01 [closed for 0:10]
+0:00 yes
+0:05 what now`,
    );
    expect(gapsAsked(played)).toBe(1);
    expect(stageOf(onlyBatch(played), "process").state).toBe("running");
  });
});

describe("food that was off its process for over two hours", () => {
  const LONG = "+0:05 [closed for 2:30]\n+0:01 no\n";

  it("is not started over, but disposed of", async () => {
    const { played, batch } = await boiled(
      `${LONG}+0:01 it's boiling and the lids are covered\n+0:01 reprocess them${DONE}`,
    );
    expect(played.refused.map((one) => one.text)).toEqual([
      "it's boiling and the lids are covered",
      "reprocess them",
    ]);
    expect(batch.deviations).toMatchObject([
      { code: "unwatched", disposition: "refrigerate" },
      { code: "process-short", disposition: "refrigerate" },
    ]);
    expect(batch.process).toMatchObject({ achievedMinutes: 5, restarts: 0 });
    expect(batch).toMatchObject({ verdict: "not-as-tested", state: "complete" });
  });

  it("is asked about, without offering to reprocess", async () => {
    const { played } = await boiled(LONG);
    const asked = played.asked.at(-1)?.text ?? "";
    expect(asked).toContain("What becomes of the 8 jars");
    expect(asked).not.toContain("reprocess");
  });

  it("counts the total time off, not only the last", async () => {
    const { played } = await boiled(
      `+0:05 it went off the boil
+1:15 it's boiling again
+0:05 it went off the boil
+1:00 it's boiling again`,
    );
    expect(played.refused.at(-1)?.reason).toContain("over two hours");
  });

  it("may start over just under two hours", async () => {
    const { played, batch } = await boiled(
      `+0:05 it went off the boil\n+1:59 it's boiling again${DONE}`,
    );
    expect(played.refused).toEqual([]);
    expect(batch.verdict).toBe("as-tested");
  });
});

describe("a wall clock that somebody sets", () => {
  it.each([["+1:00"], ["-0:30"]])("by %s is written down and asks nothing", async (by) => {
    const { played, batch } = await boiled(`+0:05 [clock set ${by}]${DONE}`);
    expect(codes(batch)).toEqual(["clock-changed"]);
    expect(gapsAsked(played)).toBe(0);
    expect(batch.process).toMatchObject({ achievedMinutes: 15, restarts: 0 });
    expect(stageOf(batch, "process").minutes).toBe(15);
    expect(batch.verdict).toBe("as-tested");
  });

  it("while the program is closed is distinguished from the time that passed", async () => {
    const played = await play(
      BEANS,
      `${BOIL}+0:05 [clock set +3:00]\n+0:00 [closed for 0:10]\n+0:00 yes${DONE}`,
    );
    const batch = onlyBatch(played);
    expect(codes(batch)).toEqual(expect.arrayContaining(["clock-changed", "unwatched"]));
    expect(played.asked.some((one) => one.text.startsWith("About 10 minutes"))).toBe(true);
    expect(batch.verdict).toBe("as-tested");
  });
});

describe("what came due while the program was closed", () => {
  it("is announced first, with how long ago, and rings once", async () => {
    const played = await play(BEANS, "0:00 timer for 5 minutes\n+0:00 [closed for 0:20]");
    const back = played.said.filter((one) => one.at >= "2027-08-14T08:20:00");
    expect(back[0]).toMatchObject({ rank: "alarm" });
    expect(back[0]?.text).toContain("fifteen minutes ago");
    const due = played.journal.filter((one) => one.type === "due" && one.key === "270814-T1");
    expect(due).toHaveLength(1);
    expect(due[0]?.at).toContain("T08:05:00");
  });

  it("does not stop what needs nobody: resting, cooling and fermenting go on", async () => {
    const played = await play(
      "bread-and-butter-pickles",
      "0:00 [cook until rest]\n+0:10 [closed for 2:00]\n+1:00 [cook until done]",
    );
    const batch = onlyBatch(played);
    expect(codes(batch)).toEqual([]);
    expect(batch.verdict).toBe("as-tested");
    expect(gapsAsked(played)).toBe(0);
  });

  it("names what runs", async () => {
    const { played } = await boiled("+0:05 [closed for 0:01]");
    expect(timesSaid(played, /Running: .*at process/)).toBe(1);
  });
});

describe("a canner that was to be lit while the program was closed", () => {
  it("is announced first at the opening, and nothing empty is said", async () => {
    const played = await play(
      "bread-and-butter-pickles",
      "0:00 [cook until rest]\n+1:00 [closed for 1:30]\n+0:01 what now",
    );
    expect(played.said.map((one) => one.text.trim())).not.toContain("");
    const back = played.said.find((one) => one.at.includes("T11:10:00"));
    expect(back?.text).toMatch(/^Fill the canner .* light it/);
  });
});
