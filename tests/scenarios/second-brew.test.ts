import { describe, expect, it } from "vitest";
import { onlyBatch, type Played, play } from "./play.ts";

const BEANS = "dilled-green-beans";

/** Eight pints of beans, five filled from the first brine, which then runs out. */
const FIVE = `0:00 [cook until fill]
+0:02 five pints filled
+0:00 the brine ran out
`;
const THREE_MORE = `+0:01 eight pints filled
+0:00 yes
+0:00 [cook until done]`;

/** The codes that count against the jars, with how the verdict begins. */
function told(played: Played): { codes: string[]; verdict: string; reason: string | undefined } {
  const { deviations, verdict, reasons } = onlyBatch(played);
  return { codes: deviations.map(({ code }) => code), verdict, reason: reasons[0] };
}

describe("brine that runs out", () => {
  it("is made anew, with a boil and a vinegar of its own", async () => {
    const played = await play(
      BEANS,
      `${FIVE}+0:10 the brine is boiling\n+0:01 five percent\n${THREE_MORE}`,
    );
    expect(played.refused).toEqual([]);
    const asked = played.asked.filter(({ text }) => text.includes("vinegar"));
    expect(asked.map(({ text }) => text)).toEqual([
      "What percent is the vinegar?",
      "For the new brine: What percent is the vinegar?",
    ]);
    expect(played.journal.filter(({ type }) => type === "brew-made")).toHaveLength(1);
    expect(played.journal.filter(({ type }) => type === "boil")).toHaveLength(3);
    expect(told(played)).toMatchObject({ codes: [], verdict: "as-tested" });
    expect(onlyBatch(played).stages.map(({ id }) => id)).toContain("brine-2");
  });

  it("is too weak the second time: only the jars filled from it are not as tested", async () => {
    const played = await play(
      BEANS,
      `${FIVE}+0:10 the brine is boiling\n+0:01 four percent\n${THREE_MORE}`,
    );
    expect(told(played)).toEqual({
      codes: ["critical-unrecorded"],
      verdict: "not-as-tested",
      reason: "5 as tested, 3 not: critical-unrecorded: vinegar-5-percent: answered no",
    });
  });

  it("touches all jars where nobody counted them as it ran out", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until fill]
+0:05 I'm making another pot of brine
+0:10 the brine is boiling
+0:01 four percent
+0:05 eight pints filled
+0:00 [cook until done]`,
    );
    expect(played.asked.map(({ text }) => text)).toContain(
      "How many jars of the dilled green beans are filled so far?",
    );
    expect(told(played).reason).toBe("critical-unrecorded: vinegar-5-percent: answered no");
  });

  it("leaves no jar as tested that may hold the weak one before it", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until fill]
+0:01 the vinegar was four percent
+0:04 I'm making another pot of brine
+0:10 the brine is boiling
+0:01 five percent
+0:05 eight pints filled
+0:00 [cook until done]`,
    );
    expect(told(played)).toMatchObject({ verdict: "not-as-tested" });
    expect(told(played).reason).not.toContain("as tested,");
  });

  it("is asked how many it filled, and the count is an answer", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until fill]
+0:05 we're out of brine
+0:00 five
+0:10 the brine is boiling
+0:01 four percent
${THREE_MORE}`,
    );
    expect(told(played).reason).toMatch(/^5 as tested, 3 not: /);
  });

  it("counts jars told of before the new one boils to the one before", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until fill]
+0:05 we ran out of brine after four jars
+0:02 five filled
+0:00 yes
+0:05 the brine is boiling
+0:01 four percent
${THREE_MORE}`,
    );
    expect(played.asked.map(({ text }) => text)).toContain(
      "Brine for the next jars has not boiled yet. " +
        "Is it 5 jars in all, of the one before it? Say yes or no.",
    );
    expect(told(played).reason).toMatch(/^5 as tested, 3 not: /);
  });

  it("is too weak where nobody says which: both are in doubt", async () => {
    const played = await play(
      BEANS,
      `${FIVE}+0:10 the brine is boiling
+0:01 five percent
${THREE_MORE}
+0:01 the vinegar was only four percent`,
    );
    expect(told(played)).toMatchObject({ verdict: "not-as-tested" });
    expect(told(played).reason).toMatch(/^contradicted: vinegar-5-percent: /);
  });

  it("leaves a batch finished where no more was needed", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until fill]
+0:05 eight pints filled
+0:02 I'm making another pot of brine
+0:00 yes
+0:00 all filled
+0:00 [cook until done]`,
    );
    expect(onlyBatch(played)).toMatchObject({ state: "complete", verdict: "as-tested" });
  });
});

describe("brine that is stretched with water", () => {
  it.each([
    "topped it up with water",
    "I stretched the brine with a cup of water",
    "I thinned the brine with some water",
  ])("touches the jars filled after it, not those before: %s", async (words) => {
    const played = await play(
      BEANS,
      `0:00 [cook until fill]
+0:02 five pints filled
+0:00 ${words}
${THREE_MORE}`,
    );
    expect(told(played).codes).toEqual(["ingredient-changed"]);
    expect(told(played).reason).toMatch(/^5 as tested, 3 not: ingredient-changed: /);
  });

  it("touches every jar where the jars were topped up", async () => {
    const played = await play(
      BEANS,
      `0:00 [cook until fill]
+0:02 five pints filled
+0:00 I topped up the jars with water
${THREE_MORE}`,
    );
    expect(told(played).reason).toMatch(/^ingredient-changed: /);
  });
});
