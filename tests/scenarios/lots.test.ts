/** A day with lots that share a brine, told as people tell it: what the log says jar by jar. */
import { beforeAll, describe, expect, it } from "vitest";
import { type Played, play } from "./play.ts";

const DAY = `
0:00 let's do dilly beans today, got four pound of Provider, three of Dragon Tongue
+0:01 oh and throw two pounds of Blue Lake in with them
+0:01 put a pound and a half of Contender in as well
0:04 start the brine
+0:00:20 five percent
0:24 the brine is boiling
0:52 the beans are trimmed
# A lot that was no good.
0:54 should I chuck the Contender
+0:00:10 give up on the Contender, they're all stringy
+0:00:10 yes
1:00 water's hot in the canner
1:10 six Provider, one Dragon Tongue
+0:00:30 half an inch
+0:00:20 the lids are new
1:12 no, five of the Provider
1:14 two more of the Provider
1:15 did I do one Dragon Tongue yet
1:16 three more Dragon Tongue and four Blue Lake filled
1:18 three, not four of the Blue Lake
1:24 the jars are in
1:40 it's boiling and the lids are covered
1:56 got it
+0:00:10 yes
+0:00:10 the heat's off
2:02 got it
2:05 the jars are out
2:15 one forty in the canner
2:20 plus one Dragon Tongue
2:24 the jars are in
`;

let played: Played;

beforeAll(async () => {
  played = await play([], DAY, { altitude: "6200ft" });
}, 60_000);

/** The facts of a type, with the variety of the lot in place of its id. */
function facts(...types: readonly string[]) {
  const { journal } = played;
  const varieties = new Map(
    journal.flatMap(({ type, lot, id, batch }) => {
      if (type !== "batch-begun" && type !== "lot-added") return [];
      const { variety } = lot as { variety: string };
      return [[type === "lot-added" ? id : batch, variety] as const];
    }),
  );
  return { list: journal.filter(({ type }) => types.includes(type)), varieties };
}

describe("a day with four lots in one brine", () => {
  it("begins one batch, and adds the others to it", () => {
    const { list } = facts("batch-begun", "lot-added");
    expect(list.map(({ type, lot }) => ({ type, lot }))).toMatchObject([
      { type: "batch-begun", lot: { variety: "Provider", weightLb: 4 } },
      { type: "lot-added", lot: { variety: "Dragon Tongue", weightLb: 3 } },
      { type: "lot-added", lot: { variety: "Blue Lake", weightLb: 2 } },
      { type: "lot-added", lot: { variety: "Contender", weightLb: 1.5 } },
    ]);
  });

  it("gives up one lot after a yes by its name", () => {
    const { list, varieties } = facts("lot-abandoned", "abandoned");
    expect(list.map(({ type, batch }) => [type, varieties.get(batch)])).toEqual([
      ["lot-abandoned", "Contender"],
    ]);
    const asked = played.asked.filter(({ text }) => text.startsWith("Give up"));
    expect(asked.map(({ text }) => text)).toEqual([
      "Give up the Contender for good? Say yes or no.",
    ]);
  });

  it("writes down what stands of each lot after every count and correction", () => {
    const { list, varieties } = facts("jars-filled");
    expect(list.map(({ batch, count }) => [varieties.get(batch), count])).toEqual([
      ["Provider", 6],
      ["Dragon Tongue", 1],
      ["Provider", 5],
      ["Provider", 7],
      ["Dragon Tongue", 4],
      ["Blue Lake", 4],
      ["Blue Lake", 3],
      ["Dragon Tongue", 3],
    ]);
  });

  it("puts every jar into one load, by its number", () => {
    const { list, varieties } = facts("loaded");
    type Part = { batch: string; numbers: number[] };
    const loads = list.map(({ parts }) =>
      (parts as Part[]).map(({ batch, numbers }) => [varieties.get(batch), ...numbers]),
    );
    expect(loads).toEqual([
      [
        ["Provider", 1, 2, 3, 4, 5, 6, 7],
        ["Dragon Tongue", 1, 2],
      ],
      [
        ["Dragon Tongue", 3, 4, 5],
        ["Blue Lake", 1, 2, 3],
      ],
    ]);
  });

  it("shows in its log what was filled of each", () => {
    const filled = played.review.batches.map(({ lot, jars }) => [lot.variety, jars?.filled]);
    expect(filled).toEqual([
      ["Provider", 7],
      ["Dragon Tongue", 5],
      ["Blue Lake", 3],
      ["Contender", 0],
    ]);
  });

  it("understood everything that was said, and asked for no total", () => {
    const heard = played.refused.map(({ text }) => text);
    expect(heard.filter((text) => !/^(should|did) I/.test(text))).toEqual([]);
    expect(played.asked.filter(({ text }) => text.includes("in all"))).toEqual([]);
  });
});
