/** Lots and their jars as people speak of them: marked, loaded, taken up again, poured, given. */
import { describe, expect, it } from "vitest";
import { type Played, play } from "./play.ts";

const THREE = [
  "0:00  start dilly beans: four pounds of Provider, three of Dragon Tongue, three of Blue Lake",
  "+0:00  [cook until fill]",
];
const EIGHT = [
  ...THREE,
  "+0:05  eight pints of Provider filled",
  "+0:00  half an inch",
  "+0:00  new",
];
const ON_THE_SHELF = [
  "0:00  start dilly beans: two pounds of Provider, one of Dragon Tongue",
  "+0:00  [cook until done]",
  "+60d 0:00  what's on the shelf",
];

async function said(before: readonly string[], ...sentences: string[]): Promise<Played> {
  const script = [...before, ...sentences.map((text) => `+0:01  ${text}`)].join("\n");
  return play([], script, { altitude: "6200ft" });
}

const facts = ({ journal }: Played, type: string) => journal.filter((one) => one.type === type);

/** What the jars of each load are, by their lots. */
function loads(played: Played): unknown[] {
  return facts(played, "loaded").map(({ parts }) =>
    (parts as { jars: number }[]).map(({ jars }) => jars),
  );
}

describe("marks told ahead", () => {
  it.each([
    ["the Provider gets a P on the lid", "270814-1", "P"],
    ["I'm marking the Dragon Tongue with a T", "270814-2", "T"],
    ["Blue Lake lids say BL", "270814-3", "BL"],
  ])("stand on the lids from then on: %s", async (text, batch, mark) => {
    expect(facts(await said(THREE, text), "lids-marked")).toMatchObject([{ batch, mark }]);
  });

  it("are what jars are named by", async () => {
    const played = await said(EIGHT, "the Provider lids get an X", "X three cracked");
    expect(facts(played, "jar-broken")).toMatchObject([{ batch: "270814-1", jars: [3] }]);
  });

  it("are refused where another lot has them", async () => {
    const played = await said(THREE, "the Dragon Tongue lids get a P");
    expect(facts(played, "lids-marked")).toEqual([]);
    expect(played.refused.at(-1)?.reason).toContain("Take another mark.");
  });

  it("are asked about where jars in store have them", async () => {
    const before = [...EIGHT, "+0:00  [cook until done]", "3d 0:00  start the Dragon dilly beans"];
    const asked = await said(before, "the Dragon lids get a P");
    expect(facts(asked, "lids-marked")).toEqual([]);
    expect(asked.said.at(-1)?.text).toContain("in store. P all the same?");
    const yes = await said(before, "the Dragon lids get a P", "yes");
    expect(facts(yes, "lids-marked")).toHaveLength(1);
    const gone = await said(before, "opened eight of the Provider", "the Dragon lids get a P");
    expect(facts(gone, "lids-marked")).toHaveLength(1);
  });

  it("are no short word that is none", async () => {
    const played = await said(THREE, "dill for the Provider", "salt is for the Provider");
    expect(facts(played, "lids-marked")).toEqual([]);
  });
});

describe("several lots in one load", () => {
  it.each([
    ["five Provider and one Dragon Tongue are in", [5, 1]],
    ["all the Provider and one Dragon Tongue are in the canner", [8, 1]],
    ["we loaded eight Provider and one Dragon Tongue", [8, 1]],
  ])("go in by their counts: %s", async (text, jars) => {
    expect(loads(await said(EIGHT, text))).toEqual([jars]);
  });

  it.each([
    "eight Provider and four Dragon Tongue are in",
    "five Provider and one Dragon Tongue go in next",
    "the Provider and the Dragon Tongue aren't in yet",
  ])("do not where there is no room, or not yet: %s", async (text) => {
    expect(loads(await said(EIGHT, text))).toEqual([]);
  });
});

describe("a lot more that nobody weighed", () => {
  it.each([
    "hold on, there's some Jade as well",
    "and a bit of Jade in with them",
    "oh there's a pound of Jade too, I forgot",
  ])("is a lot, and nothing is held: %s", async (text) => {
    const played = await said(THREE, text, "yes");
    expect(facts(played, "held")).toEqual([]);
    expect(facts(played, "lot-added").at(-1)).toMatchObject({ lot: { variety: "Jade" } });
  });

  it("is none where something else is there", async () => {
    const played = await said(THREE, "there's a wasp in here as well", "there's some salt as well");
    expect(facts(played, "lot-added")).toHaveLength(2);
  });
});

describe("a lot that was given up", () => {
  it.each([
    "no, put the Blue Lake back",
    "the Blue Lake is on again",
    "we're doing the Blue Lake after all",
    "carry on with the Blue Lake",
  ])("is taken up again: %s", async (text) => {
    const played = await said(THREE, "forget the Blue Lake", "yes", text);
    expect(facts(played, "lot-restored")).toMatchObject([{ batch: "270814-3" }]);
    expect(played.review.batches.map(({ state }) => state)).toEqual(Array(3).fill("running"));
  });

  it("brings its jars back, and they go through with the others", async () => {
    const played = await said(
      EIGHT,
      "forget the Provider",
      "yes",
      "put the Provider back",
      "[cook until done]",
    );
    expect(played.review.batches[0]).toMatchObject({
      state: "complete",
      verdict: "as-tested",
      jars: { filled: 8, sealed: 8 },
    });
  });

  it("stays out once the load its jars were in is over", async () => {
    const played = await said(
      EIGHT,
      "the jars are in",
      "[cook until process]",
      "forget the Provider",
      "yes",
      "[cook until done]",
      "put the Provider back",
    );
    expect(facts(played, "lot-restored")).toEqual([]);
  });
});

describe("which brew is in which jar", () => {
  const WEAK = ["+0:10  the brine is boiling", "+0:01  four percent", "+0:05  eight pints filled"];
  const BEANS = ["0:00  start the Provider dilly beans, 4 pounds", "+0:00  [cook until fill]"];
  const COUNTED = [...BEANS, "+0:02  five pints filled", "+0:00  the brine ran out", ...WEAK];
  const UNCOUNTED = [...BEANS, "+0:05  I'm making another pot of brine", ...WEAK];
  const reason = async (before: readonly string[], ...sentences: string[]) => {
    const played = await said(before, ...sentences, "[cook until done]");
    return played.review.batches[0]?.reasons[0] ?? "";
  };

  it.each([
    ["P one to P five got the first brine", /^5 as tested, 3 not/],
    ["the first five got the good brine", /^5 as tested, 3 not/],
    ["the first pot did the first five", /^5 as tested, 3 not/],
    ["the last three came out of the second pot", /^critical/],
  ])("is told of jars that nobody counted as one ran out: %s", async (text, wanted) => {
    expect(await reason(UNCOUNTED)).toMatch(/^critical/);
    expect(await reason(UNCOUNTED, text, "yes")).toMatch(wanted);
  });

  it.each(["the first five got the good brine", "the first pot did the first five"])(
    "waits for a yes where the jars are not named: %s",
    async (text) => {
      const played = await said(UNCOUNTED, text);
      expect(facts(played, "brew-told")).toEqual([]);
      expect(played.said.at(-1)?.text).toMatch(
        /^Are P 1, P 2, P 3, P 4 and P 5 from .* number 1\?/,
      );
      expect(await reason(UNCOUNTED, text, "no")).toMatch(/^critical/);
    },
  );

  it.each([
    ["the last three are from the first pot", /^5 as tested, 3 not/],
    ["the first six got the weak brine", /^critical/],
    ["P two got the second brine", /^4 as tested, 4 not/],
  ])("clears nothing against a count, and raises what it may: %s", async (text, wanted) => {
    expect(await reason(COUNTED, "yes")).toMatch(/^5 as tested, 3 not/);
    expect(await reason(COUNTED, "yes", text)).toMatch(wanted);
  });

  it.each([
    "I think the last three are from the first pot",
    "the last three may be from the first pot",
    "the last three are from the first pot, or the second",
  ])("clears nothing where it is not said plainly: %s", async (text) => {
    const played = await said(UNCOUNTED, text);
    expect(facts(played, "brew-told")).toEqual([]);
  });

  it("is not known where only one was made", async () => {
    const played = await said(EIGHT, "the first six got the weak brine");
    expect(facts(played, "brew-told")).toEqual([]);
    expect(played.refused).toHaveLength(1);
  });
});

describe("a gift that comes back", () => {
  it.each([
    ["gave Anna P two", "she didn't want it, it's back on the shelf"],
    ["gave Anna P two", "Anna gave P two back"],
    ["gave a jar of the Provider to Anna", "my neighbor brought the Provider back"],
  ])("stands in store again: %s, %s", async (gift, back) => {
    const given = await said(ON_THE_SHELF, gift);
    const fates = ({ review }: Played) => review.batches[0]?.jarList?.map(({ fate }) => fate);
    expect(fates(given)).toContain("given");
    expect(fates(await said(ON_THE_SHELF, gift, back))).toEqual(Array(4).fill("shelf"));
  });

  it("is none where nothing was given, or the jar was eaten", async () => {
    const played = await said(ON_THE_SHELF, "opened P two", "P two came back");
    expect(facts(played, "jars-returned")).toEqual([]);
  });
});

describe("how jars tasted, in words", () => {
  it.each([
    ["the Provider was mushy, the Dragon Tongue lovely", ["mushy", "lovely"]],
    ["the Provider was a bit soft but good", ["a bit soft, good"]],
  ])("is noted of each lot: %s", async (text, words) => {
    const played = await said(ON_THE_SHELF, text);
    expect(facts(played, "tasted").map((one) => one.words)).toEqual(words);
    const shown = played.review.batches.flatMap(({ tastings }) => tastings);
    expect(shown.map((one) => one.words)).toEqual(words);
  });

  it.each(["the Provider was slimy", "the Provider smells off"])(
    "is none where it tells of spoilage: %s",
    async (text) => {
      expect(facts(await said(ON_THE_SHELF, text), "tasted")).toEqual([]);
    },
  );
});

describe("names with letters that English has not", () => {
  it("are lots, marked and counted like others", async () => {
    const played = await said(
      [
        "0:00  start dilly beans: four pounds of Provider, three of Émerite, two of Jaune de Chine",
        "+0:00  [cook until fill]",
      ],
      "four Émerite and two Provider filled",
      "E three cracked",
    );
    const lots = played.review.batches.map(({ lot, mark }) => [lot.variety, mark]);
    expect(lots.slice(1)).toEqual([
      ["Émerite", "E"],
      ["Jaune de Chine", "J"],
    ]);
    expect(played.review.batches.map(({ jars }) => jars?.filled)).toEqual([2, 4, 0]);
    expect(facts(played, "jar-broken")).toMatchObject([{ batch: "270814-2", jars: [3] }]);
  });
});

describe("jars of two sizes in one count", () => {
  it.each([
    "six pints and two half pints filled",
    "six pints and two half pints of Provider filled",
  ])("go by the larger, once that is agreed to: %s", async (text) => {
    expect(facts(await said(THREE, text), "jars-filled")).toEqual([]);
    const filled = facts(await said(THREE, text, "yes"), "jars-filled");
    expect(filled).toMatchObject([{ count: 8, size: "pint" }]);
  });

  it("are not counted at all where the larger was not tested", async () => {
    const played = await said(THREE, "six pints and two quarts filled");
    expect(facts(played, "jars-filled")).toEqual([]);
  });
});

describe("brine that ran out at a jar", () => {
  it.each(["brine ran out at P five", "ran out of brine after P five"])(
    "filled those up to it: %s",
    async (text) => {
      const played = await said(THREE, text);
      expect(facts(played, "jars-filled")).toMatchObject([{ count: 5, brew: 0 }]);
      expect(facts(played, "brew-made")).toHaveLength(1);
    },
  );
});

describe("jars thrown out of store", () => {
  it.each([
    ["threw P four out", "jars-discarded"],
    ["threw out a jar of the Provider", "jars-discarded"],
    ["threw out a Provider, it was leaking", "spoiled"],
  ])("are no food any more: %s", async (text, type) => {
    expect(facts(await said(ON_THE_SHELF, text), type)).toMatchObject([{ batch: "270814-1" }]);
  });
});
