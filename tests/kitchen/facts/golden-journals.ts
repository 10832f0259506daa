/**
 * Journals that earlier versions wrote: a season, one with every kind of fact there was, one with
 * those that came later, and the day of a first opening with a probe and words of the person's own.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gunzipSync } from "node:zlib";
import type { KitchenEvent } from "../../../src/kitchen/events.ts";
import { OF_THE_JOURNAL } from "../../../src/kitchen/facts/gate.ts";

const FOLDER = join(import.meta.dirname, "../../journal/golden");

export const GOLDEN = ["season", "every-kind", "later-kinds", "first-opening"] as const;
export type GoldenName = (typeof GOLDEN)[number];

function text(file: string): string {
  return gunzipSync(readFileSync(join(FOLDER, file))).toString("utf8");
}

/** The journal's file as it was written. */
export function goldenJournal(name: GoldenName): string {
  return text(`${name}.jsonl.gz`);
}

/** The review that the version which wrote it made of it, save the words of its reasons. */
export function goldenReview(name: GoldenName): object {
  return JSON.parse(text(`${name}.review.json.gz`), (key, value) => {
    return key === "reasons" ? undefined : value;
  });
}

/** Its events, without the fields that are the journal's own. */
export function goldenEvents(name: GoldenName): KitchenEvent[] {
  const [, ...lines] = goldenJournal(name).trimEnd().split("\n");
  return lines.map((line) => {
    const record = JSON.parse(line);
    for (const field of OF_THE_JOURNAL) delete record[field];
    return record;
  });
}

const stamp = { cmd: "c1", t: 1818252000000, w: 1818252000000 };

/** One of each kind that came after those journals were written. */
export const LATER_EVENTS: readonly KitchenEvent[] = [
  {
    ...stamp,
    type: "lot-added",
    batch: "B1",
    id: "B2",
    lot: { variety: "Dragon Tongue", weightLb: 3, pickedAt: null },
    mark: "D",
    expectedJars: 6,
  },
  { ...stamp, type: "looked", owner: "B1", stage: "ferment" },
  { ...stamp, type: "lot-abandoned", batch: "B2" },
  { ...stamp, type: "lot-restored", batch: "B2" },
  { ...stamp, type: "lids-marked", batch: "B2", mark: "DT" },
  { ...stamp, type: "brew-told", batch: "B1", jars: [1, 2], brew: 1 },
  { ...stamp, type: "jars-returned", batch: "B1", count: 1, jars: [2] },
  { ...stamp, type: "jars-given", batch: "B1", count: 1, jars: [2], to: "the neighbors" },
  { ...stamp, type: "jars-discarded", batch: "B1", count: 1, jars: [3] },
  { ...stamp, type: "brew-made", batch: "B1", counted: true },
  { ...stamp, type: "joined", branch: "3fa9c01d", parent: "", after: "0b1c2d3e4f506172.1" },
  { ...stamp, type: "merged", until: 1_700_000_000_000 },
] as KitchenEvent[];
