import { describe, expect, it } from "vitest";
import { play } from "../scenarios/play.ts";

const START = "0:00 [cook until heat]\n+0:01 the brine is boiling\n";

async function confirmedAfter(words: string): Promise<string[]> {
  const { review } = await play(["dilled-green-beans"], `${START}+0:00 ${words}\n`);
  return review.batches[0]?.confirmed.map((one) => one.factor) ?? [];
}

describe("a critical factor answered by its own words", () => {
  it("is confirmed by naming it", async () => {
    expect(await confirmedAfter("it's five percent")).toEqual(["vinegar-5-percent"]);
  });

  it("is not confirmed by a question or a denial", async () => {
    expect(await confirmedAfter("is it five percent?")).toEqual([]);
    expect(await confirmedAfter("it isn't five percent")).toEqual([]);
  });
});
