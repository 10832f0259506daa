import { describe, expect, it } from "vitest";
import { allSaid, codes, onlyBatch, play } from "./play.ts";

const BEANS = "dilled-green-beans";
const PRESSED = "snap-beans";
const PROCESS = "0:00 [cook until process]\n+0:00 11 pounds\n+0:00 14 pounds\n";

describe("a jar that breaks in a closed pressure canner", () => {
  it("is left there, and counted when the jars are out", async () => {
    const script = `${PROCESS}+0:05 a jar just broke\n+0:00 [cook until done]`;
    const played = await play(PRESSED, script);
    const batch = onlyBatch(played);
    expect(allSaid(played)).toContain("do not open the canner");
    expect(played.asked.map(({ text }) => text)).toContain("How many jars broke in the canner?");
    expect(batch.jars?.broken).toBe(1);
    expect(codes(batch)).not.toContain("jar-count");
  });
});

describe("a flame that goes out under pressure", () => {
  it("is answered by its source: the whole time again, or by how long it was off", async () => {
    const played = await play(PRESSED, `${PROCESS}+0:05 the flame went out\n+0:01 what now`);
    expect(allSaid(played)).toMatch(/Bring it back to pressure.*the whole .* start again/);
    expect(allSaid(played)).toMatch(/leave it shut until it has come down.*two hours.*new lids/);
    expect(codes(onlyBatch(played))).toContain("pressure-lost");
  });
});

describe("jars", () => {
  const OUT =
    "0:00 [cook until process]\n+0:00 it's boiling and the lids are covered\n+0:16 yes\n" +
    "+0:00 heat's off\n+0:06 the jars are out\n";

  it.each(["seven jars", "seven pints filled", "8 pints filled"])(
    "that cool are counted once: %s opens no second load",
    async (words) => {
      const played = await play(BEANS, `${OUT}+0:10 ${words}\n+13:00 all sealed`);
      const batch = onlyBatch(played);
      expect(played.review.loads).toHaveLength(1);
      expect(batch.jars).toMatchObject({ filled: 8, sealed: 8 });
    },
  );

  it.each(["nine sealed", "12 didn't seal", "jar fifteen did not seal"])(
    "are never more than were filled: %s",
    async (words) => {
      const played = await play(BEANS, `${OUT}+13:00 ${words}`);
      const { filled = 0, sealed = 0, failed = 0, broken = 0 } = onlyBatch(played).jars ?? {};
      expect(sealed + failed + broken).toBeLessThanOrEqual(filled);
    },
  );
});

describe("time away", () => {
  const BOIL = "0:00 [cook until process]\n+0:00 it's boiling and the lids are covered\n";

  it.each(["I was on the phone for ten minutes", "I was out for ten minutes"])(
    "is a gap to be vouched for: %s",
    async (words) => {
      const run = (answer: string) =>
        play(BEANS, `${BOIL}+0:11 ${words}\n+0:00 ${answer}\n+0:05 yes\n+0:00 [cook until done]`);
      const held = await run("yes");
      expect(held.asked.some(({ text }) => text.startsWith("About 10 minutes went by"))).toBe(true);
      expect(onlyBatch(held).verdict).toBe("as-tested");
      const not = await run("no");
      expect(onlyBatch(not).process?.restarts).toBe(1);
    },
  );

  it("counts since the last report where nobody says how long", async () => {
    const played = await play(BEANS, `${BOIL}+0:09 I was asleep`);
    expect(played.asked.at(-1)?.text).toMatch(/^About 9 minutes went by unwatched/);
  });

  it("does not matter while nothing has to be watched", async () => {
    const played = await play(BEANS, "0:05 I was on the phone for twenty minutes");
    expect(onlyBatch(played).deviations).toEqual([]);
  });
});

describe("what goes in besides the recipe", () => {
  it.each([
    "I threw in a banana",
    "I added some flour",
    "I put a few mushrooms in too",
    "I added some kelp",
    "there's mangoes in it",
  ])("is a change to what was tested: %s", async (words) => {
    const played = await play(
      BEANS,
      `0:00 [cook until fill]\n+0:01 ${words}\n+0:00 [cook until done]`,
    );
    const batch = onlyBatch(played);
    expect(codes(batch)).toEqual(["ingredient-changed"]);
    expect(batch.verdict).toBe("not-as-tested");
    expect(allSaid(played)).toContain("not the tested recipe");
  });

  it.each([
    "I added some dill",
    "I threw in a clove of garlic",
    "I put the jars in",
    "there is a crack in it",
  ])("is not a change where it belongs: %s", async (words) => {
    const played = await play(BEANS, `0:00 [cook until fill]\n+0:01 ${words}`);
    expect(onlyBatch(played).deviations).toEqual([]);
  });

  it.each(["I stretched the brine with cider", "I topped them up with water"])(
    "is a change where a brine is stretched: %s",
    async (words) => {
      const played = await play(BEANS, `0:00 [cook until fill]\n+0:01 ${words}`);
      expect(codes(onlyBatch(played))).toEqual(["ingredient-changed"]);
    },
  );
});

describe("counts and heights", () => {
  it.each(["I think we filled eight pints", "about eight jars are filled I guess"])(
    "are read back where they are no plain words: %s",
    async (words) => {
      const played = await play(BEANS, `0:00 [cook until fill]\n+0:10 ${words}`);
      expect(onlyBatch(played).jars?.filled).toBe(0);
    },
  );
});
