import { describe, expect, it } from "vitest";
import type { Command } from "../../src/kitchen/command.ts";
import { MINUTE_MS } from "../../src/kitchen/time.ts";
import type { MadeUpKitchen } from "../../src/session/rehearsal/made-up-kitchen.ts";
import { allSaid, codes, onlyBatch, play, stageOf, timesSaid } from "./play.ts";
import { saturdayKitchen } from "./saturday-kitchen.ts";

const BEETS = "pickled-beets";
const BREAD = "bread-and-butter-pickles";

/** Beets that are peeled and a syrup that boils, with a canner that was lit and is not hot yet. */
function beetsReady(): MadeUpKitchen {
  const kitchen = saturdayKitchen();
  kitchen.session.hear("start the pickled beets");
  for (const [minutes, intent, stage] of [
    [20, "done", "trim"],
    [20, "boiling", "cook"],
    [35, "done", "peel"],
    [0, "begin", "syrup"],
    [5, "boiling", "syrup"],
  ] as const) {
    kitchen.clock.advance(minutes * MINUTE_MS);
    const owner = Object.keys(kitchen.session.state.batches)[0] ?? "";
    const slots = intent === "begin" ? { named: stage } : {};
    const command = { intent, slots, confidence: 1 } as Command;
    kitchen.session.carry({ wish: { command, chosen: [{ owner, stage }] }, words: stage });
  }
  return kitchen;
}

function simmerOf(kitchen: MadeUpKitchen) {
  const [batch] = Object.values(kitchen.session.state.batches);
  return batch?.stages.find((run) => run.id === "simmer");
}

describe("food that is packed hot", () => {
  it("is not heated before the canner is hot, and the kitchen says so once", () => {
    const kitchen = beetsReady();
    expect(simmerOf(kitchen)?.state).toBe("waiting");
    kitchen.clock.advance(5 * MINUTE_MS);
    const said = kitchen.lines.filter((line) => {
      return line.text.includes("Simmer in the syrup once the canner is hot");
    });
    expect(said).toHaveLength(1);
    const { lines } = kitchen.session.hear("the canner's ready");
    expect(lines.join(" ")).toContain("Beets and onions into the syrup");
    expect(simmerOf(kitchen)?.startedAt).toBe(kitchen.session.now());
  });

  it("boils when somebody says it does, whatever it should have waited for", () => {
    const kitchen = beetsReady();
    const { refused, lines } = kitchen.session.hear("the syrup is boiling");
    expect(refused).toBe(false);
    expect(lines.join(" ")).toContain("The canner is not hot yet: keep the pot hot");
    expect(simmerOf(kitchen)?.state).toBe("running");
    kitchen.clock.advance(5 * MINUTE_MS);
    expect(simmerOf(kitchen)?.state).toBe("complete");
  });

  it("is heated the moment the canner is said to be ready", async () => {
    const played = await play(BEETS);
    const batch = onlyBatch(played);
    const canner = played.journal.find(
      (one) => one.type === "stage-done" && one.stage === "canner",
    );
    expect(Date.parse(stageOf(batch, "simmer").startedAt ?? "")).toBeGreaterThanOrEqual(
      Date.parse(canner?.at ?? ""),
    );
    expect(batch.verdict).toBe("as-tested");
  });

  it("is filled within minutes of its boil by an ideal cook", async () => {
    const played = await play(BREAD);
    const batch = onlyBatch(played);
    const heated = Date.parse(stageOf(batch, "combine").endedAt ?? "");
    const filled = Date.parse(stageOf(batch, "fill").startedAt ?? "");
    expect(filled - heated).toBeLessThan(10 * 60_000);
    expect(codes(batch)).toEqual([]);
  });
});

describe("a hot pack of two loads", () => {
  it("heats its second half in time for the canner, and is told so once", async () => {
    const played = await play("crushed-tomatoes", undefined, { for: "28lb" });
    expect(timesSaid(played, /heat what is left now: boil gently/i)).toBe(1);
    const at = played.said.find(({ text }) => /heat what is left/i.test(text))?.at ?? "";
    const out = played.journal.find(({ type }) => type === "unloaded")?.at ?? "";
    const ahead = (Date.parse(out) - Date.parse(at)) / MINUTE_MS;
    expect(ahead).toBeGreaterThan(5);
    expect(ahead).toBeLessThan(30);
  });
});

describe("a raw pack", () => {
  it("has its brine boiled without waiting for the canner", async () => {
    const script = [
      "0:00 we're at 6200 feet",
      "+0:01 start the brine",
      "+0:10 the brine is boiling",
      "+0:01 what now",
    ].join("\n");
    const played = await play("dilled-green-beans", script);
    expect(stageOf(onlyBatch(played), "brine").state).toBe("complete");
    expect(allSaid(played)).not.toContain("once the canner is hot");
  });
});

describe("a canner that was just unloaded", () => {
  it("is topped up and hot again in ten minutes", async () => {
    const played = await play(BEETS, undefined, { "canner-holds": "4" });
    const opened = played.journal.filter((one) => one.type === "load-opened");
    expect(opened.length).toBeGreaterThan(1);
    expect(timesSaid(played, /Top up and light the canner/)).toBe(opened.length - 1);
    const second = opened[1]?.load;
    const ready = played.journal.find(
      (one) => one.type === "stage-done" && one.stage === "canner" && one.owner === second,
    );
    expect(Date.parse(ready?.at ?? "") - Date.parse(opened[1]?.at ?? "")).toBe(10 * 60_000);
  });
});
