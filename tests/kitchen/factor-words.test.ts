import { describe, expect, it } from "vitest";
import type { Batch } from "../../src/kitchen/state.ts";
import { play } from "../scenarios/play.ts";
import { Story, told } from "./story.ts";

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

describe("words that are only taken to be about a critical factor", () => {
  const guess = { factor: "vinegar-5-percent", held: "unsure" } as const;

  function brineBoiled(): { story: Story; batch: Batch } {
    const story = new Story();
    const batch = story.begins(0, "dilled-green-beans");
    story.happened(10, { type: "stage-done", owner: batch.id, stage: "brine" });
    return { story, batch };
  }

  it("lead to that factor's question, and confirm nothing", () => {
    const { story, batch } = brineBoiled();
    expect(told(story.says(11, "factor", guess))).toMatch(/^What percent is the vinegar/);
    expect([batch.confirmed, batch.reopened]).toEqual([[], []]);
  });

  it("take back no answer before a yes to that", () => {
    const { story, batch } = brineBoiled();
    const held = { type: "confirmed", batch: batch.id, factor: guess.factor, held: true } as const;
    story.happened(11, { ...held, value: 5 });
    const asked = story.says(12, "factor", guess);
    expect(asked).toMatchObject({ kind: "ask", expects: "yes" });
    expect(batch.confirmed).toHaveLength(1);
  });
});
