import { describe, expect, it } from "vitest";
import { allSaid, play } from "./play.ts";

const BEANS = ["dilled-green-beans"];
const IN_CANNER = "0:00 [cook until process]\n";

describe("what clears a doubt", () => {
  it("is asked about where it was only thought", async () => {
    const played = await play(BEANS, `${IN_CANNER}+0:01 I think it's boiling\n`);
    expect(played.review.batches[0]?.process?.achievedMinutes).toBe(0);
    expect(allSaid(played)).toMatch(/Is it at a full boil\?/);
  });

  it("is accepted once it is said plainly", async () => {
    const played = await play(
      BEANS,
      `${IN_CANNER}+0:01 it's boiling and the lids are covered\n+0:05 what now\n`,
    );
    expect(played.review.batches[0]?.process?.achievedMinutes).toBeGreaterThan(0);
  });

  it("is not taken before it is asked for, and says when it will be", async () => {
    const played = await play(BEANS, "0:01 the bottle reads five percent\n");
    expect(played.review.batches[0]?.confirmed).toEqual([]);
    expect(allSaid(played)).toMatch(/I'll ask about that when it counts/);
  });

  it("is not a yes if it is a guess", async () => {
    const played = await play(
      BEANS,
      "0:00 [cook until heat]\n+0:01 the brine is boiling\n+0:00 I think so\n",
    );
    expect(played.review.batches[0]?.confirmed).toEqual([]);
  });

  it("is not the wrong number", async () => {
    for (const words of ["it's 4.5%", "4.5", "less than five", "I ran out of the five percent"]) {
      const played = await play(
        BEANS,
        `0:00 [cook until heat]\n+0:01 the brine is boiling\n+0:00 ${words}\n`,
      );
      const held = played.review.batches[0]?.confirmed.map((one) => one.factor);
      expect({ words, held }).toEqual({ words, held: [] });
    }
  });
});
