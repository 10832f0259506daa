/** Counts of jars that name no lot, while several lots are filled. */
import { describe, expect, it } from "vitest";
import { type Played, play } from "./play.ts";

const FILLING = [
  "0:00  start the Provider dilly beans, 4 pounds",
  "+0:00  start the Dragon Tongue dilly beans, 3 pounds",
  "+0:00  [cook until fill]",
  "+0:01  7 pints of Provider filled",
  "+0:01  half an inch",
  "+0:01  new",
];

async function filled(...sentences: string[]): Promise<Played> {
  const script = [...FILLING, ...sentences.map((text) => `+0:01  ${text}`)].join("\n");
  return play([], script, { altitude: "6200ft" });
}

function counts({ review }: Played): (number | undefined)[] {
  return review.batches.map(({ jars }) => jars?.filled);
}

describe("a lot named by a color", () => {
  it("is told apart by it from the other lots of its batch", async () => {
    const played = await play([], "0:00  pickled beets. national, chioggia, golden", {
      altitude: "6200ft",
    });
    const names = played.review.batches.map(({ lot }) => lot.variety);
    expect(names).toEqual(["national", "chioggia", "golden"]);
  });
});

describe("a count without a name", () => {
  it("puts right the lot that had the wrong one, whichever is in hand", async () => {
    expect(counts(await filled("six, not seven"))).toEqual([6, 0]);
  });

  it("is asked about where more jars may be of any of them", async () => {
    const played = await filled("3 pints of Dragon Tongue filled", "two more");
    expect(counts(played)).toEqual([7, 3]);
    expect(played.said.at(-1)?.text).toMatch(/Provider .* or the Dragon Tongue/);
  });

  it("loads nothing where it is not what stands filled", async () => {
    const played = await filled("3 pints of Dragon Tongue filled", "five jars are in the canner");
    expect(played.journal.filter(({ type }) => type === "loaded")).toEqual([]);
    expect(played.refused.at(-1)?.reason).toMatch(/^I have 7 of the Provider .* and 3 of the/);
  });

  it("of two sizes is not taken for one", async () => {
    const played = await filled("the Dragon Tongue came to two pints and a half-pint");
    expect(counts(played)).toEqual([7, 0]);
  });

  it("is none where a jar nearly fell", async () => {
    const played = await filled("damn near dropped P three");
    expect(played.journal.filter(({ type }) => type === "jar-broken")).toEqual([]);
  });
});
