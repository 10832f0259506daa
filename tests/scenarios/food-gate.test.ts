import { describe, expect, it } from "vitest";
import { allSaid, codes, onlyBatch, play } from "./play.ts";

/** A kitchen in which seed was put away, so that a script may begin something else too. */
const IN_A_KITCHEN = "cucumber-seed";

async function said(...lines: string[]) {
  const played = await play(IN_A_KITCHEN, lines.map((line) => `+0:01 ${line}`).join("\n"));
  const batches = played.review.batches.filter(({ recipe }) => recipe !== IN_A_KITCHEN);
  const asked = played.asked.map(({ text }) => text);
  return { played, batches, asked, refused: played.refused.map(({ reason }) => reason) };
}

describe("what nothing was tested for", () => {
  it.each([
    ["start the banana jam", /Bananas are low in acid.*Tested nearby: .*berry jam/s],
    ["let's make okra dills", /Okra was tested.*not in this recipe/s],
    [
      "start the white peaches",
      /White-fleshed peaches.*Freeze white ones.*peaches in light syrup/s,
    ],
    ["start the elderberries", /lderberr.*Tested nearby/s],
    ["we're making creamed corn", /corn/i],
    ["start the garlic in oil", /under oil can make botulism.*four days at most/],
    ["start the pickled broccoli", /Nothing was started/],
    ["start the asparagus dilly beans", /sparagus/],
  ])("begins nothing: %s", async (words, reason) => {
    const { batches, refused } = await said(words);
    expect(batches).toEqual([]);
    expect(refused).toHaveLength(1);
    expect(refused[0]).toMatch(reason);
    expect(refused[0]).toMatch(/^Nothing was started/);
  });

  it("is said before anybody has to choose among recipes", async () => {
    const { batches, asked, refused } = await said("I want to put up chicken and noodles");
    expect(batches).toEqual([]);
    expect(asked).toEqual([]);
    expect(refused[0]).toMatch(/^Nothing was started/);
  });

  it("leaves the recipes that would be refused out of the choice", async () => {
    const { asked, batches } = await said("make us a batch of squash pickles", "yes");
    expect(asked).toEqual(["Only this one fits: bread-and-butter pickles?"]);
    expect(batches.map(({ recipe }) => recipe)).toEqual(["bread-and-butter-pickles"]);
  });

  it("does not get a neighbor's recipe either, even after a yes to the refusal", async () => {
    const { batches } = await said("start the banana jam", "yes", "okay");
    expect(batches).toEqual([]);
  });

  it("a food that nobody knows begins nothing", async () => {
    const { batches, refused } = await said("start the zorkberry jam");
    expect(batches).toEqual([]);
    expect(refused).toHaveLength(1);
  });
});

describe("a food that several recipes fit", () => {
  it("is asked about, and the weight is kept", async () => {
    const { asked, batches } = await said("start the beets, seven pounds", "the pickled ones");
    expect(asked).toContain("Which recipe: pickled beets or plain beets?");
    expect(batches.map(({ recipe, lot }) => [recipe, lot.weightLb])).toEqual([
      ["pickled-beets", 7],
    ]);
  });

  it("only by the pack it was tested in: raspberries go in raw", async () => {
    const { batches } = await said("start the raspberries");
    expect(batches.map(({ recipe, pack }) => [recipe, pack])).toEqual([["whole-berries", "raw"]]);
    const hot = await said("start the raspberries, hot pack");
    expect(hot.batches).toEqual([]);
    expect(hot.refused.join(" ")).toMatch(/raw pack by boiling-water/);
  });
});

describe("a name that is also a food's", () => {
  it("is asked once, kept whole, and remembered for that food", async () => {
    const { asked, batches } = await said(
      "start the crushed tomatoes, Yellow Pear, ten pounds",
      "yes",
      "abandon the crushed tomatoes",
      "yes",
      "start the crushed tomatoes, Yellow Pear",
      "start the dilly beans, Yellow Pear",
    );
    const names = asked.filter((text) => text.startsWith("Yellow Pear"));
    expect(names).toEqual(["Yellow Pear: a tomato?", "Yellow Pear: a bean?"]);
    expect(batches.map(({ lot }) => lot.variety)).toEqual(["Yellow Pear", "Yellow Pear"]);
  });

  it("a no makes it the other food, and nothing begins, nor is it asked again", async () => {
    const { asked, batches, refused, played } = await said(
      "start the crushed tomatoes, Yellow Pear",
      "no",
      "start the crushed tomatoes, Yellow Pear",
    );
    expect(asked.filter((text) => text.startsWith("Yellow Pear"))).toHaveLength(1);
    expect(batches).toEqual([]);
    expect(refused).toHaveLength(2);
    expect(played.journal.filter(({ type }) => type === "name-settled")).toHaveLength(1);
  });

  it("an answer to something else begins nothing", async () => {
    const { batches } = await said("start the crushed tomatoes, Strawberry", "seven", "okay");
    expect(batches).toEqual([]);
  });
});

describe("words of pack, jar and method", () => {
  it("are slots, and never a variety", async () => {
    const { batches } = await said("start the peaches, raw pack, in pints");
    expect(batches.map(({ lot, pack, jar }) => [lot.variety, pack, jar])).toEqual([
      [null, "raw", "pint"],
    ]);
    const quarts = await said("start the Provider snap beans in quarts, twelve pounds");
    expect(quarts.batches.map(({ lot, jar }) => [lot.variety, lot.weightLb, jar])).toEqual([
      ["Provider", 12, "quart"],
    ]);
  });

  it("that no process was tested for begin nothing", async () => {
    const { batches, refused } = await said("start the snap beans in the water bath");
    expect(batches).toEqual([]);
    expect(refused.join(" ")).toMatch(/pressure/);
  });
});

describe("what is named in a call", () => {
  it("passes the same gate: no banana jam is rehearsed", async () => {
    await expect(play(["banana jam"])).rejects.toThrow(/code 1: .*Bananas are low in acid/);
  });

  it("an ordinary day is as before", async () => {
    const played = await play("dilled-green-beans");
    const batch = onlyBatch(played);
    expect([batch.verdict, codes(batch), played.refused]).toEqual(["as-tested", [], []]);
    expect(allSaid(played)).not.toMatch(/Nothing was started/);
  });
});
