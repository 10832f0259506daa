import { describe, expect, it } from "vitest";
import { play } from "./play.ts";

/** A kitchen in which seed was put away, so that a script may begin something else too. */
const IN_A_KITCHEN = "cucumber-seed";

async function said(...lines: string[]) {
  const played = await play(IN_A_KITCHEN, lines.map((line) => `+0:01 ${line}`).join("\n"));
  const batches = played.review.batches.filter(({ recipe }) => recipe !== IN_A_KITCHEN);
  const lots = batches.map(({ recipe, lot, jar }) => [recipe, lot.variety, lot.weightLb, jar]);
  return {
    ...{ played, batches, lots },
    asked: played.asked.map(({ text }) => text),
    refused: played.refused.map(({ reason }) => reason),
    answers: played.said.filter(({ rank }) => rank === "answer").map(({ text }) => text),
  };
}

const BEANS = "start the Provider dilly beans, four pounds";
const beans = (variety: string | null, weightLb: number | null) => [
  ...["dilled-green-beans", variety, weightLb, "pint"],
];

describe("what is changed of a batch", () => {
  it.each([
    "make that seven pounds",
    "it's seven pounds after all",
    "change the beans to seven pounds",
  ])("its weight, and with it the jars to expect: %s", async (words) => {
    const { lots, answers } = await said(BEANS, words);
    expect(lots).toEqual([beans("Provider", 7)]);
    expect(answers.at(-1)).toMatch(/Expect about 14 pints/);
  });

  it("its jar, only where it was tested, and asked about where the time changes", async () => {
    const larger = await said(BEANS, "use quarts instead");
    expect(larger.lots).toEqual([beans("Provider", 4)]);
    expect(larger.refused.join(" ")).toMatch(/Quart jars were not tested/);
    const tomatoes = await said("start the crushed tomatoes", "we're using quarts instead");
    expect(tomatoes.asked.at(-1)).toMatch(/In quarts the process takes \d+ minutes instead of \d+/);
    expect(tomatoes.lots[0]?.[3]).toBe("pint");
    const yes = await said("start the crushed tomatoes", "we're using quarts instead", "yes");
    expect(yes.lots[0]?.[3]).toBe("quart");
  });

  it("not its jar once jars are filled", async () => {
    const { lots, refused } = await said(
      "start the crushed tomatoes",
      "[cook until process]",
      "use half pints instead",
    );
    expect(lots[0]?.[3]).toBe("pint");
    expect(refused.join(" ")).toMatch(/filled already/);
  });

  it("its variety, which is checked against the recipe like any other", async () => {
    expect((await said(BEANS, "call it the Blue Lake")).lots).toEqual([beans("Blue Lake", 4)]);
    const okra = await said(BEANS, "call it okra");
    expect(okra.lots).toEqual([beans("Provider", 4)]);
    const pear = await said(BEANS, "call it the Yellow Pear", "yes");
    expect(pear.asked).toContain("Yellow Pear: a bean?");
    expect(pear.lots).toEqual([beans("Yellow Pear", 4)]);
  });
});

describe("a stage that is left out", () => {
  it("is left out after a yes, and in the log; its jars are not as tested", async () => {
    const { batches, asked } = await said(
      "start the bread and butter pickles",
      "skip this step",
      "yes",
      "[cook until done]",
    );
    expect(asked.some((text) => text.startsWith("Leave out wash and slice"))).toBe(true);
    expect(batches[0]?.stages.find(({ id }) => id === "slice")?.state).toBe("skipped");
    expect(batches[0]?.deviations.map(({ code }) => code)).toContain("skipped");
    expect(batches[0]?.verdict).toBe("not-as-tested");
  });

  it.each(["skip the process", "skip the canner", "skip the brine"])(
    "is never one that safety rests on: %s",
    async (words) => {
      const { batches } = await said(BEANS, "[cook until process]", words, "yes");
      expect(batches[0]?.stages.filter(({ state }) => state === "skipped")).toEqual([]);
    },
  );
});

describe("what was taken back", () => {
  it("can be put back, and taken back again", async () => {
    const { lots, answers } = await said(BEANS, "make that seven pounds", "undo", "redo that");
    expect(lots).toEqual([beans("Provider", 7)]);
    expect(answers.slice(-2).map((text) => text.split(":")[0])).toEqual(["Taken back", "Put back"]);
    const again = await said(BEANS, "make that seven pounds", "undo", "put that back", "undo");
    expect(again.lots).toEqual([beans("Provider", 4)]);
  });

  it("a second undo asks before it reaches into another batch", async () => {
    const { asked, lots } = await said(BEANS, "start the pickled beets", "undo", "undo");
    expect(asked.at(-1)).toBe(
      "Take back beginning the Provider dilled green beans? That was in another batch. " +
        "Say yes or no.",
    );
    expect(lots).toEqual([beans("Provider", 4)]);
  });

  it.each(["forget it", "never mind"])(
    "is nothing by %s alone: it is asked about",
    async (words) => {
      const { asked, lots } = await said(BEANS, words);
      expect(asked.at(-1)).toMatch(/^Take back beginning the Provider dilled green beans\?/);
      expect(lots).toEqual([beans("Provider", 4)]);
      expect((await said(BEANS, words, "no")).lots).toEqual([beans("Provider", 4)]);
      expect((await said(BEANS, words, "yes")).lots).toEqual([]);
    },
  );

  it("does nothing where a question is open, except drop it", async () => {
    const { lots } = await said(BEANS, "abandon the beans", "never mind");
    expect(lots).toEqual([beans("Provider", 4)]);
  });
});

describe("an act that was meant of another batch", () => {
  it("is moved there: no, the Blue Lake", async () => {
    const { batches } = await said(
      BEANS,
      "start the Blue Lake dilly beans in half pints",
      "hold the Provider",
      "no, the Blue Lake",
    );
    expect(batches.map(({ lot, state }) => [lot.variety, state])).toEqual([
      ["Provider", "running"],
      ["Blue Lake", "held"],
    ]);
  });

  it("stays where it is if it cannot be done there", async () => {
    const { batches, refused } = await said(BEANS, "hold the beans", "no, the beets");
    expect(batches.map(({ state }) => state)).toEqual(["held"]);
    expect(refused.length).toBeGreaterThan(0);
  });
});

describe("beginnings that leave out what was said before", () => {
  it.each([
    ["and pickled beets, seven pounds", [["pickled-beets", null, 7, "pint"]]],
    ["same for the Blue Lake", [beans("Blue Lake", null)]],
    [
      "also the Dragon Tongue and the Blue Lake, three pounds each",
      [beans("Dragon Tongue", 3), beans("Blue Lake", 3)],
    ],
  ])("%s", async (words, more) => {
    const { lots } = await said(BEANS, words);
    expect(lots).toEqual([beans("Provider", 4), ...more]);
  });

  it("ask which of two recipes, and keep the weight: the beets too", async () => {
    const { lots, asked } = await said(BEANS, "the beets too, seven pounds", "the pickled ones");
    expect(asked).toContain("Which recipe: pickled beets or plain beets?");
    expect(lots[1]).toEqual(["pickled-beets", null, 7, "pint"]);
  });

  it("begin several in one sentence", async () => {
    const { lots } = await said("start the dilly beans and the pickled beets");
    expect(lots.map(([recipe]) => recipe)).toEqual(["dilled-green-beans", "pickled-beets"]);
  });

  it.each([
    "also the lids are new",
    "and the phone rang",
    "and the water is hot too",
    "also the dog wants out",
    "and it's boiling",
  ])("are not these: %s", async (words) => {
    expect((await said(BEANS, words)).lots).toEqual([beans("Provider", 4)]);
  });

  it("go by the gate too", async () => {
    const { lots, refused } = await said(BEANS, "and the banana jam, three pounds");
    expect(lots).toHaveLength(1);
    expect(refused.join(" ")).toMatch(/Bananas are low in acid/);
    const pear = await said(BEANS, "also the Yellow Pear, three pounds");
    expect(pear.asked.at(-1)).toBe("Yellow Pear: a bean?");
    expect(pear.lots).toHaveLength(1);
  });
});

describe("going away", () => {
  it("is answered with what has to be watched, and what comes due meanwhile", async () => {
    const stay = await said(BEANS, "[cook until process]", "it's boiling and the lids are covered");
    expect(stay.refused).toEqual([]);
    const { answers } = await said(
      BEANS,
      "[cook until process]",
      "it's boiling and the lids are covered",
      "I'm out for an hour",
    );
    expect(answers.at(-1)).toMatch(/^Stay: somebody has to watch .*Meanwhile: /);
    const cooling = await said(BEANS, "[cook until cool]", "I'm out for an hour", "I'm back");
    expect(cooling.answers.at(-2)).toMatch(/^Nothing needs watching/);
  });

  it("a warning comes that long before the end, and moves with it", async () => {
    const { played, answers } = await said(
      BEANS,
      "[cook until process]",
      "warn me five minutes before it ends",
      "it's boiling and the lids are covered",
      "it's lost the boil",
      "it's boiling and the lids are covered",
      "[cook until cool]",
    );
    expect(answers.some((text) => text.startsWith("I'll tell you five minutes before"))).toBe(true);
    const warned = played.said.filter(({ text }) => /process ends in five minutes/.test(text));
    expect(warned.length).toBeGreaterThan(0);
  });

  it("quitting asks while something must be kept", async () => {
    const { asked } = await said(
      BEANS,
      "[cook until process]",
      "it's boiling and the lids are covered",
      "quit the program",
    );
    expect(asked.at(-1)).toMatch(/must be watched\. Close all the same\?/);
  });
});
