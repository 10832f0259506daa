import { describe, expect, it } from "vitest";
import { codes, onlyBatch, play } from "./play.ts";

const AT = { altitude: "6200ft" };

const batchOf = async (script: string) => onlyBatch(await play([], script, AT));

describe("what is doubted of the food before a canner is lit", () => {
  it("goes with the jars, whatever else is asked and answered meanwhile", async () => {
    const played = await play(
      [],
      `+0:00 start the pickled beets
+0:10 there may be some turnips in there
+0:00 [cook until seal-check]`,
      AT,
    );
    expect(played.asked.map(({ text }) => text).join()).toContain("there may be some turnips");
  });

  it("is settled by a plain answer about the same thing", async () => {
    const script = `+0:00 start the pickled beets
+0:10 it might be the weak kind of vinegar
+0:01 these lids might be old
+0:00 [cook until done]`;
    const batch = await batchOf(script);
    expect([batch.verdict, batch.heard]).toEqual(["as-tested", []]);
  });

  it("stands where nobody says how it was", async () => {
    const script = `+0:00 start the applesauce
+0:10 there may be some turnips in there
+0:00 [cook until process]
+0:00 it's boiling and the lids are covered
+0:25 heat's off
+0:00 yes
+0:06 the jars are out
+13:00 cooled
+0:00 all sealed`;
    const batch = await batchOf(script);
    expect([batch.verdict, codes(batch)]).toEqual(["unfinished", ["unheard"]]);
  });
});

describe("another food named for a running batch", () => {
  it("is a change of the recipe, and no variety", async () => {
    const script = `+0:00 start the applesauce
+0:10 these are sweet potatoes, not apples
+0:00 [cook until done]`;
    const batch = await batchOf(script);
    expect([batch.verdict, codes(batch)]).toEqual(["not-as-tested", ["ingredient-changed"]]);
  });
});

describe("a food that goes in with another", () => {
  it.each([
    "start the crushed tomatoes with eggplant",
    "start the snap beans with bacon",
    "start the snap beans and bacon",
    "start the beans with pork",
    "start the violet jam",
    "start the peaches in brandy",
    "start the corn on the cob",
  ])("begins nothing and is no variety: %s", async (text) => {
    const played = await play([], `+0:00 ${text}\n+0:01 yes`, AT);
    expect([played.review.batches, played.asked]).toEqual([[], []]);
    expect(played.refused.length).toBeGreaterThan(0);
  });

  it.each([
    "start the dilly beans with garlic",
    "start the peaches in light syrup",
    "start the pickled beets with onions",
    "start the dilly beans with Provider",
  ])("is no matter where the recipe has it: %s", async (text) => {
    const { review } = await play([], `+0:00 ${text}`, AT);
    expect(review.batches).toHaveLength(1);
  });
});

describe("words about something else", () => {
  const OUT = `+0:00 start the pickled beets
+0:00 [cook until process]
+0:00 it's boiling and the lids are covered
+0:45 heat's off
+0:00 yes
+0:06 `;

  it.each(["the dishwasher is done", "my homework is done", "the laundry is finished"])(
    "take no jars out of the canner: %s",
    async (text) => {
      const { journal } = await play([], `${OUT}${text}`, AT);
      expect(journal.map(({ type }) => type)).not.toContain("unloaded");
    },
  );

  it("answer no question about the jars, and leave a doubt of their own", async () => {
    const script = `+0:00 start the pickled beets
+0:00 [cook until fill]
+0:10 eight pints filled
+0:05 the jars are in
+0:01 I may have overfilled a few`;
    const batch = await batchOf(script);
    expect(batch.heard.map(({ text }) => text)).toEqual(["I may have overfilled a few"]);
  });
});

describe("a headspace in parts of an inch", () => {
  const FILLED = `+0:00 start the pickled beets
+0:00 [cook until fill]
+0:10 eight pints filled
+0:00 hot off the boil
+0:00 `;

  it.each([
    ["an eighth of an inch", ["headspace"]],
    ["an inch and a quarter", ["headspace"]],
    ["about half an inch", []],
    ["half an inch", []],
    ["one half inch", []],
  ])("is taken for what was said: %s", async (said, found) => {
    const { journal, review } = await play([], `${FILLED}${said}`, AT);
    const held = journal.find(({ factor }) => factor === "headspace")?.held;
    expect(review.batches[0]?.deviations.map(({ code }) => code)).toEqual(found);
    expect(held).toBe(said.startsWith("about") ? undefined : found.length === 0);
  });
});

describe("a food that is none of the recipe's", () => {
  it.each([
    "I've a bowl of celery root to get rid of in this",
    "there may be some hard-boiled eggs in there",
    "I ran out of beets so it's mostly bacon",
    "half of it is bacon",
    "I'm using hard-boiled eggs instead",
  ])("is kept with the jars, whatever else is asked: %s", async (text) => {
    const script = `+0:00 start the pickled beets
+0:00 [cook until process]
+0:00 it's boiling and the lids are covered
+0:05 ${text}`;
    expect((await batchOf(script)).heard.map((one) => one.text)).toEqual([text]);
  });

  it.each(["should I put okra in with it?", "can I add okra to this?"])(
    "is not told by a question: %s",
    async (text) => {
      const script = `+0:00 start the pickled beets\n+0:20 ${text}`;
      const batch = await batchOf(script);
      expect([batch.heard, codes(batch)]).toEqual([[], []]);
    },
  );
});

describe("what is remembered once the jars are put away", () => {
  const AWAY = `+0:00 start the pickled beets
+0:00 [cook until done]
+1:00 `;

  it.each([
    "the boil stopped for a bit in the middle",
    "come to think of it the beets had cooled before I packed them",
    "about the vinegar, it was the homemade stuff",
  ])("leaves a doubt that is asked about: %s", async (text) => {
    const batch = await batchOf(`${AWAY}${text}`);
    expect(batch.heard.map((one) => [one.text, one.asked])).toEqual([[text, true]]);
    expect(batch.verdict).toBe("unfinished");
  });
});
