import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { MemoryDisk } from "../../src/journal/memory-disk.ts";
import { loadLibrary } from "../../src/session/reading/load-library.ts";
import { MadeUpKitchen } from "../../src/session/rehearsal/made-up-kitchen.ts";
import { Speaker } from "../../src/voice/speaking/speaker.ts";

setFlagsFromString("--expose-gc");
const gc: () => void = runInNewContext("gc");

const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;
const BREADS = 12;

function heapMb(): number {
  gc();
  gc();
  return process.memoryUsage().heapUsed / 1e6;
}

describe("a kitchen that is open for thirty days", () => {
  it("with a ferment, twelve clocks and a probe, does not grow", { timeout: 120_000 }, async () => {
    const library = await loadLibrary(["recipes"], {});
    const disk = new MemoryDisk();
    const engine = {
      name: "quick",
      start: () => ({ done: Promise.resolve({ kind: "spoken" as const }), stop: () => {} }),
    };
    const kitchen = new MadeUpKitchen({
      library,
      disk,
      startMs: Date.UTC(2027, 7, 14, 14),
      zone: "America/Denver",
      setUp: [{ type: "kitchen-set", altitudeFt: 6200, t: 0 }],
      version: "0.0.0",
      voice: (clock, notice) =>
        new Speaker({ engine, bell: { ring: () => {} }, clock, advice: "", onProblem: notice }),
    });
    const { session } = kitchen;
    session.hear("start a batch of sauerkraut");
    const ferments = () =>
      Object.values(session.state.batches).some((batch) =>
        batch.stages.some((run) => run.spec.kind === "ferment" && run.state === "running"),
      );
    for (let tries = 0; tries < 20 && !ferments(); tries++) {
      kitchen.clock.advance(30 * MINUTE_MS);
      session.hear(tries % 2 === 0 ? "done" : "yes");
    }
    expect(ferments()).toBe(true);
    const heaps: number[] = [];
    const events: number[] = [];
    for (let day = 0; day < 30; day++) {
      for (let at = 1; at <= BREADS; at++)
        session.hear(`set a timer for ${at + 2} minutes for bread`);
      for (let minute = 0; minute < 24 * 60; minute += 12) {
        kitchen.clock.advance(12 * MINUTE_MS);
        kitchen.probe.hear(`crock ${(68 + (minute % 7) * 0.1).toFixed(1)}F`);
        if (minute === 60) for (let at = 0; at < BREADS; at++) session.hear("got it");
        if (minute % 120 === 0) await Promise.resolve();
      }
      kitchen.lines.length = 0;
      heaps.push(heapMb());
      events.push(session.state.history.length);
    }
    expect(session.now() - Date.UTC(2027, 7, 14, 14)).toBeGreaterThanOrEqual(29.9 * DAY_MS);
    expect(Object.values(session.state.timers).every((timer) => timer.state !== "running")).toBe(
      true,
    );
    // What grows is the log itself: some kilobytes for each event, on the disk and in memory.
    const grown = (heaps.at(-1) ?? 0) - (heaps[4] ?? 0);
    const written = (events.at(-1) ?? 0) - (events[4] ?? 0);
    const heap = `${heaps[4]?.toFixed(1)} to ${heaps.at(-1)?.toFixed(1)} MB`;
    console.log(`30 days: ${events.at(-1)} events, heap ${heap}`);
    expect(grown - written * 0.004).toBeLessThan(4);
    session.close();
  });
});
