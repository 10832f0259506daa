import { describe, expect, it } from "vitest";
import { takeBack } from "../../src/kitchen/decide/decide-corrections.ts";
import type { KitchenEvent } from "../../src/kitchen/events.ts";
import { replayed } from "../../src/kitchen/evolve.ts";
import type { State } from "../../src/kitchen/state.ts";
import { placedJars } from "../../src/review/shelf/shelf-jars.ts";
import { allSaid, type Played, play, theLibrary } from "./play.ts";

const BEANS = "dilled-green-beans";

/** Four jars of the Provider and three of the Dragon Tongue, filled and before the canner. */
const TWO_LOTS = `0:00 start the Provider dilly beans, 2 pounds
+0:00 start the Dragon Tongue dilly beans, 2 pounds
+0:00 [cook until fill]
+0:05 four pints of the Provider filled
+0:05 three pints of the Dragon Tongue filled
`;

const row = (played: Played, variety: string) => {
  const found = played.review.batches.find(({ lot }) => lot.variety === variety);
  if (!found) throw new Error(`no ${variety}`);
  return found;
};

/** The kitchen as its journal leaves it. */
function stateOf({ journal }: Played): State {
  const events = journal.map(({ at: _, written: __, ...event }) => event as unknown);
  return replayed(events as KitchenEvent[]).state;
}

const count = (played: Played, type: string) => {
  return played.journal.filter((one) => one.type === type).length;
};

describe("a lot that is given up", () => {
  it("leaves with its jars: the others go on, and their seals alone are asked about", async () => {
    const played = await play(
      [],
      `${TWO_LOTS}+0:00 abandon the Dragon Tongue
+0:00 yes
+0:00 [cook until done]`,
    );
    expect(played.refused).toEqual([]);
    expect(row(played, "Dragon Tongue")).toMatchObject({ state: "abandoned" });
    expect(row(played, "Provider")).toMatchObject({
      state: "complete",
      verdict: "as-tested",
      jars: { filled: 4, sealed: 4 },
    });
  });

  it("leaves its jars in the canner, and nobody has to say how they sealed", async () => {
    const played = await play(
      [],
      `${TWO_LOTS}+0:00 the jars are in
+0:00 [cook until process]
+0:00 abandon the Dragon Tongue
+0:00 yes
+0:00 [cook until seal-check]
+0:05 all sealed`,
    );
    expect(played.refused).toEqual([]);
    expect(played.review.loads).toMatchObject([{ jars: 7 }]);
    expect(row(played, "Dragon Tongue")).toMatchObject({ state: "abandoned", jars: { sealed: 0 } });
    expect(row(played, "Provider")).toMatchObject({ state: "complete", verdict: "as-tested" });
    expect(allSaid(played)).not.toContain("like P 1");
  });
});

describe("a lot that joins late", () => {
  const LATE = `0:00 start the Provider dilly beans, 2 pounds
+0:00 [cook until fill]
+0:05 four pints filled
+0:00 [cook until process]
+0:01 start the Blue Lake dilly beans, 2 pounds
`;

  it("pours from the same pot where there is enough, and is asked about its own lids", async () => {
    const played = await play([], `${LATE}+0:00 yes\n+0:00 [cook until done]`);
    const asked = played.asked.map(({ text }) => text);
    expect(asked).toContain(
      "Is there enough brine for the Blue Lake, too? Yes, or no for its own.",
    );
    expect(asked.filter((text) => text.includes("vinegar"))).toHaveLength(1);
    expect(asked).toContain("For Blue Lake: Lids: new or used?");
    expect(row(played, "Blue Lake")).toMatchObject({ verdict: "as-tested" });
  });

  it("with used lids touches its own jars alone", async () => {
    const played = await play(
      [],
      `${LATE}+0:00 yes
+0:00 [cook until fill]
+0:05 four pints of the Blue Lake filled
+0:00 half an inch
+0:00 used
+0:00 [cook until done]`,
    );
    expect(row(played, "Provider")).toMatchObject({ verdict: "as-tested" });
    expect(row(played, "Blue Lake")).toMatchObject({ verdict: "not-as-tested" });
  });

  it.each(["topped it up with water", "the vinegar was four percent"])(
    "gets its own pot where what is poured is in doubt: %s",
    async (words) => {
      const played = await play(
        [],
        `0:00 start the Provider dilly beans, 2 pounds
+0:00 [cook until fill]
+0:01 four pints filled
+0:00 ${words}
+0:01 start the Blue Lake dilly beans, 2 pounds`,
      );
      expect(count(played, "lot-added")).toBe(0);
      expect(count(played, "batch-begun")).toBe(2);
    },
  );
});

describe("six, not seven", () => {
  const SEVEN = "0:00 [cook until fill]\n+0:05 seven pints filled\n";

  it("takes away a jar that nobody named", async () => {
    const played = await play(BEANS, `${SEVEN}+0:00 six, not seven`);
    expect(played.review.batches[0]?.jars).toMatchObject({ filled: 6 });
    expect(played.asked.map(({ text }) => text).join()).not.toContain("Which jar");
  });

  it("asks which where one was named, and takes the answer", async () => {
    const played = await play(
      BEANS,
      `${SEVEN}+0:01 jar four broke
+0:01 five, not six
+0:00 two`,
    );
    expect(played.asked.map(({ text }) => text).join()).toContain("Which jar is not there?");
    const filled = played.journal.filter(({ type }) => type === "jars-filled");
    expect(filled.at(-1)).toMatchObject({ count: 5, without: [2] });
  });
});

describe("taking back", () => {
  const THREE =
    "0:00 start dilly beans: four pounds of Provider, three of Dragon Tongue, three of Blue Lake\n";

  it("names every lot that one sentence began", async () => {
    const played = await play([], `${THREE}+0:01 undo\n+0:00 yes`);
    expect(played.asked.map(({ text }) => text)).toContain(
      "Take back beginning the Provider, the Dragon Tongue and the Blue Lake? Say yes or no.",
    );
    expect(played.review.batches).toEqual([]);
  });

  it("is refused where jars were filled since, whatever is taken back first", async () => {
    const played = await play([], `${TWO_LOTS}+0:00 the jars are in`);
    const state = stateOf(played);
    const begun = played.journal.find(({ type }) => type === "batch-begun");
    const present = { state, now: state.lastW, library: theLibrary() };
    expect(takeBack(present, begun?.cmd ?? "")).toMatchObject({
      kind: "refused",
      reason: expect.stringMatching(/^I can't take back beginning .* came after it/),
    });
  });
});

describe("two sizes of jars", () => {
  /** Fresh-pack dills are tested for 10 minutes in pints and 15 in quarts up to 1,000 feet. */
  const SIZES = `0:00 start the Ridge fresh pack dills in pints, 4 pounds
+0:00 start the Valley fresh pack dills in quarts, 4 pounds
+0:00 [cook until fill]
+0:00 the Valley draining is done
+0:05 four pints of the Ridge filled
+0:05 two quarts of the Valley filled
`;

  it("go in together all the same, for the longer time, which is enough for both", async () => {
    const played = await play(
      [],
      `${SIZES}+0:05 they all went in together\n+0:00 yes\n+0:00 [cook until done]`,
      {
        altitude: "500ft",
      },
    );
    const asked = played.asked.map(({ text }) => text);
    expect(asked).toContain(
      "They can't share the canner: one is tested for 15 minutes and the other for 10. " +
        "Are they in together all the same? Say yes or no.",
    );
    for (const name of ["Ridge", "Valley"]) {
      expect(row(played, name)).toMatchObject({
        verdict: "as-tested",
        reasons: [expect.stringContaining("the whole 15 minutes")],
      });
    }
    expect(played.review.loads).toMatchObject([{ jars: 6 }]);
  });

  it("are two loads where nobody says more", async () => {
    const played = await play([], `${SIZES}+0:00 [cook until done]`, { altitude: "500ft" });
    expect(played.review.loads.map(({ jars }) => jars).toSorted()).toEqual([2, 4]);
    expect(played.review.batches.map(({ verdict }) => verdict)).toEqual(["as-tested", "as-tested"]);
  });
});

describe("a headspace that was wrong in one load", () => {
  it("touches the jars of that load", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until process]
+0:00 [cook until fill]
+0:05 seven pints filled
+0:01 the headspace is a quarter inch
+0:00 [cook until done]`,
      { for: "8lb", "canner-holds": "9" },
    );
    expect(played.review.batches[0]?.reasons[0]).toMatch(/^9 as tested, 7 not: headspace: /);
  });
});

describe("jars of one lot that are not alike", () => {
  it("stand on the shelf, but for the one that was filled from a stretched brine", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until fill]
+0:05 seven pints filled
+0:00 I stretched the brine with water
+0:01 eight pints filled
+0:00 yes
+0:00 [cook until done]`,
    );
    const state = stateOf(played);
    const [batch] = Object.values(state.batches);
    const [lot] = batch?.lots ?? [];
    if (!batch || !lot) throw new Error("no lot");
    const keep = placedJars(state, { batch, lot }, state.lastW).map((one) => one.keep);
    expect(keep).toEqual([...Array.from({ length: 7 }, () => "shelf"), "refrigerate"]);
    expect(played.review.batches[0]?.reasons[0]).toMatch(/^7 as tested, 1 not: ingredient-changed/);
  });

  it("fail one by one: a seal that did not hold is that jar's alone", async () => {
    const played = await play(
      BEANS,
      "0:00 [cook until seal-check]\n+0:05 jar three didn't seal\n+0:00 all the others sealed\n" +
        "+0:00 into the fridge",
    );
    expect(played.review.batches[0]).toMatchObject({ verdict: "as-tested", jars: { failed: 1 } });
  });
});
