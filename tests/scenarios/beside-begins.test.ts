import { describe, expect, it } from "vitest";
import { play } from "./play.ts";

/** The batches that lines begin, and what is refused or asked, in a kitchen for pressure too. */
async function begun(...lines: string[]) {
  const script = lines.map((line, at) => `${at === 0 ? "0:00" : "+0:01"} ${line}`).join("\n");
  const played = await play([], script, { altitude: "4200ft", gauge: "dial" });
  return {
    batches: played.review.batches,
    refused: played.refused.map(({ reason }) => reason),
    asked: played.asked.map(({ text }) => text),
  };
}

describe("an order to begin with something in it that was not tested", () => {
  it.each([
    "start dilly beans but with asparagus",
    "start the berry jam, but figs",
    "start the rhubarb but celery",
    "start the cukes as bread and butters but with daikon",
    "start the peaches, white ones",
    "start the peaches - they're the white kind",
    "start the pears, the round asian type",
    "start the stock, thickened with flour",
    "start meat chunks, it's a meatloaf",
    "start green bean casserole",
    "start a batch of peach salsa",
    "start fermented green beans",
    "start brandied peaches",
    "start the chile salsa and add black beans",
    "start berry jam, same recipe different fruit: dates",
    "start the quick sweet pickles with watermelon",
    "start the rhubarb as rhubarb cake jam",
  ])("begins nothing, and says why: %s", async (words) => {
    const { batches, refused } = await begun(words);
    expect(batches).toEqual([]);
    expect(refused.join(" ")).toMatch(/^Nothing was started/);
  });

  it("says what is tested of it instead", async () => {
    const { refused } = await begun("start the peaches but white ones");
    expect(refused[0]).toMatch(/White-fleshed.*Tested nearby: peaches in light syrup/s);
  });

  it("is answered before it is asked which recipe is meant", async () => {
    const { batches, refused, asked } = await begun("start the chicken with rice");
    expect(asked).toEqual([]);
    expect(batches).toEqual([]);
    expect(refused.join(" ")).toMatch(/Starch and flour/);
  });
});

describe("words beside an order that nothing is known of", () => {
  const ORDER = "start the dilly beans but with zorks";

  it("are asked about, and nothing begins before the answer", async () => {
    const { batches, asked } = await begun(ORDER);
    expect(batches).toEqual([]);
    expect(asked).toEqual(['"zorks": does that go into the jars? Say yes or no.']);
  });

  it("begin nothing after a yes, nor where the order is only said again", async () => {
    expect((await begun(ORDER, "yes")).batches).toEqual([]);
    expect((await begun(ORDER, "start the dilly beans")).batches).toEqual([]);
  });

  it("begin after a no, which answers nothing else", async () => {
    const { batches } = await begun(ORDER, "no");
    expect(batches.map(({ recipe }) => recipe)).toEqual(["dilled-green-beans"]);
    const named = await begun("start the Yellow Pear crushed tomatoes, he wants carrots", "no");
    expect(named.batches).toEqual([]);
    expect(named.asked.at(-1)).toBe("Yellow Pear: a tomato?");
  });

  it("are asked about where a food is named in talk of something else", async () => {
    const { batches, asked } = await begun("start the dilly beans, she had carrots");
    expect(batches).toEqual([]);
    expect(asked).toEqual(['"carrots": does that go into the jars? Say yes or no.']);
  });

  it("are asked about where what only seasons takes the place of the food", async () => {
    const { batches, asked } = await begun("start the dilly beans, but jalapenos");
    expect(batches).toEqual([]);
    expect(asked).toEqual(['"jalapenos": does that go into the jars? Say yes or no.']);
  });
});

describe("an order to begin what was tested", () => {
  it.each([
    ["start the dilly beans, the kids are coming at noon", null],
    ["start the dilly beans, Blue Lake, six pounds", "Blue Lake"],
    ["start the Dragon Tongue dilly beans, four pounds", "Dragon Tongue"],
    ["start the pickled beets, Golden, seven pounds", "Golden"],
    ["start the pickled beets, Purple Top", "Purple Top"],
    ["start the crushed tomatoes, Amish Paste, nine pounds", "Amish Paste"],
    ["start the dilly beans but in quarts", null],
    ["start the dilly beans with a clove of garlic in each jar", null],
    ["start the crushed tomatoes with bottled lemon juice", null],
    ["start the choice salsa with jalapenos", null],
    ["start the peaches, ten pounds, they're freestone", "freestone"],
    ["start the rhubarb, six pounds, it's from the neighbor", null],
    ["start the pickled beets, red ones", null],
    ["start dilly beans with the good vinegar", null],
  ])("begins at once: %s", async (words, variety) => {
    const { batches } = await begun(words);
    expect(batches).toHaveLength(1);
    if (variety !== null) expect(batches[0]?.lot.variety).toBe(variety);
  });

  it("keeps a name of several words while it is asked which recipe is meant", async () => {
    const { batches } = await begun("start the tomatoes, Amish Paste, nine pounds", "crushed");
    expect(batches.map(({ lot }) => lot.variety)).toEqual(["Amish Paste"]);
  });
});

describe("what is said to have gone in once a batch is begun", () => {
  it.each([
    ["apple butter", "with a third of it pumpkin"],
    ["peaches", "these are the white ones by the way"],
    ["pears", "oh and a few are the asian sort"],
    ["stock", "there's rice and noodles in it"],
    ["stock", "thickened with cornstarch"],
    ["berry jam", "was runny so I whisked in a bit of cornstarch"],
    ["berry jam", "thickened it with a spoon of flour"],
    ["berry jam", "used half as much sugar as it says"],
    ["berry jam", "swapped honey for the sugar"],
    ["choice salsa", "put in some extra onion and two more peppers"],
    ["choice salsa", "doubled the onions"],
    ["choice salsa", "chucked in cilantro and a whole head of garlic"],
    ["pickled beets", "put eggs in with the beets"],
  ])("is kept as a doubt about its food: %s, %s", async (recipe, words) => {
    const script = `0:00 start the ${recipe}\n0:05 ${words}`;
    const { journal } = await play([], script, { altitude: "4200ft", gauge: "dial" });
    const kept = journal.filter(({ type }) => type === "heard");
    expect(kept).toMatchObject([{ about: "food", strength: "suspicion", text: words }]);
  });

  it.each([
    ["peaches", "these are the small ones"],
    ["peaches", "the white bowl is full"],
    ["choice salsa", "the onions are chopped"],
    ["choice salsa", "I'm crying from the onions"],
    ["pickled beets", "half the beets are peeled"],
    ["dilly beans", "there's garlic in each jar"],
  ])("leaves none where it is the recipe's own: %s, %s", async (recipe, words) => {
    const script = `0:00 start the ${recipe}\n0:05 ${words}`;
    const { journal } = await play([], script, { altitude: "4200ft", gauge: "dial" });
    expect(journal.filter(({ type }) => type === "heard")).toEqual([]);
  });
});
