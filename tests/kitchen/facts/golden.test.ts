/** Journals that the previous version wrote are read as it read them. */
import { describe, expect, it } from "vitest";
import { MemoryDisk } from "../../../src/journal/memory-disk.ts";
import { FACTS } from "../../../src/kitchen/facts/all-facts.ts";
import { review } from "../../../src/review/batch-log.ts";
import { readKitchen } from "../../../src/session/reading/read-kitchen.ts";
import {
  GOLDEN,
  type GoldenName,
  goldenEvents,
  goldenJournal,
  goldenReview,
  LATER_EVENTS,
} from "./golden-journals.ts";

const LATER: ReadonlySet<string> = new Set(LATER_EVENTS.map(({ type }) => type));

function opened(name: GoldenName) {
  const disk = new MemoryDisk();
  disk.makeFolder("/home");
  disk.plant("/home/journal-2027.jsonl", Buffer.from(goldenJournal(name)));
  return readKitchen("/home", { wallMs: 0, disk });
}

describe("a journal of the version before", () => {
  it.each(GOLDEN)("reads the same: %s", (name) => {
    const { state, nowMs, notices } = opened(name);
    expect(notices).toEqual([]);
    // What reviews have gained since is ignored.
    expect(review(state, nowMs)).toMatchObject(goldenReview(name));
  });

  it("exists for every kind of fact, and none is lost on the way", () => {
    const kinds = new Set<string>();
    for (const name of GOLDEN) {
      const { history } = opened(name).state;
      expect(history).toHaveLength(goldenEvents(name).length);
      for (const { type } of history) kinds.add(type);
    }
    const missing = Object.keys(FACTS).filter((type) => !kinds.has(type) && !LATER.has(type));
    expect(missing).toEqual([]);
  });
});
