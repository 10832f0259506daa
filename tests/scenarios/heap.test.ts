import { describe, expect, it } from "vitest";
import { onlyBatch, play } from "./play.ts";

const KITCHEN = "0:00 we're at six thousand two hundred feet\n";

describe("a heap that is told of", () => {
  it("is answered with what can be made of it, and the choice begins it", async () => {
    const played = await play(
      [],
      `${KITCHEN}0:01 I have ten pounds of tomatoes\n0:02 the crushed ones`,
    );
    expect(played.asked[0]?.text).toMatch(/^Ten pounds of tomatoes: .*crushed tomatoes, six pints/);
    const batch = onlyBatch(played);
    expect(batch.recipe).toBe("crushed-tomatoes");
    expect(batch.lot.weightLb).toBe(10);
  });

  it("has a weight of its own among several", async () => {
    const played = await play(
      [],
      `${KITCHEN}0:01 we've got ten pounds of tomatoes and eight pounds of cucumbers\n` +
        "0:02 the bread and butter pickles",
    );
    expect(onlyBatch(played).lot.weightLb).toBe(8);
  });

  it("begins nothing by itself, and nothing after a no", async () => {
    const played = await play(
      [],
      `${KITCHEN}0:01 what can I make with ten pounds of tomatoes\n0:02 no`,
    );
    expect(played.review.batches).toEqual([]);
  });

  it("tells why where nothing was tested", async () => {
    const played = await play([], `${KITCHEN}0:01 I have six pounds of bananas`);
    expect(played.review.batches).toEqual([]);
    expect(played.refused[0]?.reason).toMatch(/Nothing here was tested for bananas.*low in acid/i);
  });

  it("of what is under way is its weight, and no second batch", async () => {
    const played = await play(
      "crushed-tomatoes",
      `${KITCHEN}0:01 I have twelve pounds of tomatoes`,
    );
    expect(onlyBatch(played).lot.weightLb).toBe(12);
  });
});

describe("what a pot is called and a recipe too", () => {
  it.each([
    ["start the tomato juice", "tomato-juice"],
    ["start the apple juice", "apple-juice"],
    ["put the apple juice on", "apple-juice"],
  ])("begins the recipe: %s", async (words, recipe) => {
    expect(onlyBatch(await play([], `${KITCHEN}0:01 ${words}`)).recipe).toBe(recipe);
  });

  it("asks which, where several are called so", async () => {
    const { asked } = await play([], `${KITCHEN}0:01 start the juice`);
    expect(asked[0]?.text).toMatch(/apple juice.*tomato juice/i);
  });
});
