/** Lots side by side do not count what was said about something else. */
import { parse } from "csv-parse/sync";
import { beforeAll, describe, expect, it } from "vitest";
import type { KitchenEvent } from "../../src/kitchen/events.ts";
import { replay } from "../../src/kitchen/evolve.ts";
import { compareLots } from "../../src/review/compare.ts";
import { comparisonCsv } from "../../src/review/csv.ts";
import { moved, opening, playedEvents } from "./demo-season.ts";
import { LIBRARY } from "./kitchen-files.ts";

let batches: KitchenEvent[][];

beforeAll(async () => {
  const stuff = [
    { recipe: "dilled-green-beans", variety: "Dragon Tongue", weightLb: 4 },
    { recipe: "dilled-green-beans", variety: "Provider", weightLb: 4 },
    { recipe: "pickled-beets", variety: "Chioggia", weightLb: 7 },
  ];
  const played = await Promise.all(stuff.map((wanted) => playedEvents(LIBRARY, wanted)));
  batches = played.map((events, nth) => moved(events, nth, nth + 1));
});

describe("preferences", () => {
  it("over something that is not compared count for nothing here", () => {
    const events = batches.flat();
    const w = (events.at(-1)?.w ?? 0) + 1000;
    const ids = events.flatMap((event) => (event.type === "batch-begun" ? [event.batch] : []));
    const [dragon = "", provider = "", beets = ""] = ids;
    const liked = (batch: string, over: string, taster: string): KitchenEvent => {
      return { type: "preferred", batch, over, taster, t: w, w, cmd: `${batch} ${taster}` };
    };
    const state = replay([
      ...opening(events[0]?.t ?? 0),
      ...events,
      liked(dragon, provider, "anna"),
      liked(provider, beets, "carl"),
    ]);
    const found = compareLots(state, "dilled-green-beans", w);
    expect(found?.pairs).toMatchObject([{ first: "Dragon Tongue", forFirst: 1, tasters: 1 }]);
    expect(found?.loose).toEqual([]);
  });
});

describe("a comparison as a table", () => {
  it("has the jars opened of each lot, and every score that was given", () => {
    const events = batches.flat();
    const w = (events.at(-1)?.w ?? 0) + 1000;
    const [batch = ""] = events.flatMap((one) => (one.type === "batch-begun" ? [one.batch] : []));
    const told = { batch, t: w, w };
    const state = replay([
      ...opening(events[0]?.t ?? 0),
      ...events,
      { type: "jar-opened", count: 1, jars: [2], cmd: "o", ...told },
      { type: "tasted", taster: "anna", scores: { crunch: 4, flavor: 2 }, cmd: "a", ...told },
      { type: "tasted", taster: "ben", scores: { crunch: 5 }, cmd: "b", ...told },
    ]);
    const found = compareLots(state, "dilled-green-beans", w);
    const rows: Record<string, string>[] = parse(found ? comparisonCsv(found) : "", {
      columns: true,
    });
    const lots = rows.filter(({ row }) => row === "lot");
    expect(lots.map(({ variety, opened }) => [variety, opened])).toEqual([
      ["Dragon Tongue", "1"],
      ["Provider", "0"],
    ]);
    const scores = rows.filter(({ row }) => row === "score");
    expect(scores.map(({ variety, score, value }) => [variety, score, value])).toEqual([
      ["Dragon Tongue", "crunch", "4"],
      ["Dragon Tongue", "crunch", "5"],
      ["Dragon Tongue", "flavor", "2"],
    ]);
  });
});
