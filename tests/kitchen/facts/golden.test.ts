/** Journals that the version before wrote are read as it read them. */
import { describe, expect, it } from "vitest";
import { MemoryDisk } from "../../../src/journal/memory-disk.ts";
import { FACTS } from "../../../src/kitchen/facts/all-facts.ts";
import { review } from "../../../src/review/batch-log.ts";
import { readKitchen } from "../../../src/session/reading/read-kitchen.ts";
import { type GoldenName, goldenJournal, goldenReview } from "./golden-journals.ts";

/** Kinds that came after those journals were written. */
const LATER: ReadonlySet<string> = new Set([
  ...["line-sealed", "line-settled", "spoiled", "heat-off", "altitude-then", "name-settled"],
  ...["batch-changed", "warning-set", "guide-compared", "heard", "heard-settled", "broken-inside"],
  ...["left-open", "factor-reopened", "end-reopened"],
]);

function opened(name: GoldenName) {
  const disk = new MemoryDisk();
  disk.makeFolder("/home");
  disk.plant("/home/journal-2027.jsonl", Buffer.from(goldenJournal(name)));
  return readKitchen("/home", { wallMs: 0, disk });
}

describe("a journal of the version before", () => {
  it.each(["season", "every-kind"] as const)("reads the same: %s", (name) => {
    const { state, nowMs, notices } = opened(name);
    expect(notices).toEqual([]);
    // What a review has gained since is let be.
    expect(review(state, nowMs)).toMatchObject(goldenReview(name));
  });

  it("with every kind of fact has every kind there was", () => {
    const kinds = new Set<string>(opened("every-kind").state.history.map(({ type }) => type));
    const missing = Object.keys(FACTS).filter((type) => !kinds.has(type) && !LATER.has(type));
    expect(missing).toEqual([]);
  });
});
