/** Lids pressed and called one by one: what is written down of which jar, and what stays open. */
import { describe, expect, it } from "vitest";
import { type Played, play } from "./play.ts";

const BEANS = [
  "0:00  start the Provider dilly beans, 3 pounds",
  "+0:00  start the Dragon Tongue dilly beans, 2 pounds",
  "+0:00  [cook until seal-check]",
  "+9:00  what now",
];

/** Six jars of Provider and four of Dragon Tongue stand cold; these sentences are said of them. */
async function called(...sentences: string[]): Promise<Played> {
  const script = [...BEANS, ...sentences.map((text) => `+0:01  ${text}`)].join("\n");
  return play([], script, { altitude: "6200ft" });
}

/** Each lot's jars: s sealed, x failed, a dot where nothing was told. */
function lids({ journal, review }: Played): string[] {
  return review.batches.map(({ id, jarList, jars }) => {
    const failed = jarList?.filter(({ fate }) => fate === "cold").map(({ mark }) => mark) ?? [];
    const told = journal.some(({ type, batch }) => type === "sealed" && batch === id);
    return `${told ? jars?.sealed : 0} sealed, failed: ${failed.join(" ") || "none"}`;
  });
}

describe("lids called by their marks", () => {
  it.each([
    "P one yes, two yes, three no, four yes, five, hm, yes, six yes",
    "P one good P two good P three um no it goes in and out, P four good P five good P six good",
  ])("are written down one by one, and the lot nobody called stays open: %s", async (text) => {
    const played = await called(text);
    expect(lids(played)).toEqual(["5 sealed, failed: P3", "0 sealed, failed: none"]);
    expect(played.review.batches[0]?.state).toBe("running");
  });

  it("are the rest of a lot where one of it failed", async () => {
    const played = await called("providers all good, D two you can push, other dragons are tight");
    expect(lids(played)).toEqual(["6 sealed, failed: none", "3 sealed, failed: D2"]);
  });

  it("are all of a lot but one that gives", async () => {
    const played = await called("Provider all good, Dragon Tongue all but D four which gives");
    expect(lids(played)).toEqual(["6 sealed, failed: none", "3 sealed, failed: D4"]);
  });

  it("leave a lot alone that was not checked", async () => {
    const played = await called(
      "P two clicks, the others of that one are hard, the Dragon Tongue I didn't check yet",
    );
    expect(lids(played)).toEqual(["5 sealed, failed: P2", "0 sealed, failed: none"]);
  });

  it.each([
    "I think the Provider are all good, D two no",
    "Provider all good, my sister's D two no",
    "P one yes, two maybe, three no",
    "the rest are fine, the Dragon Tongue I didn't check yet",
    "Dragon Tongue all but two, I suppose",
    "P one yes, P one no",
  ])("seal nothing where the words leave it open: %s", async (text) => {
    const played = await called(text);
    expect(played.journal.filter(({ type }) => type === "sealed")).toEqual([]);
  });

  it("are put right in the next breath", async () => {
    const played = await called("D two didn't seal", "sorry, D three failed, not two");
    expect(lids(played)).toEqual(["0 sealed, failed: none", "0 sealed, failed: D3"]);
    const other = await called("P four didn't seal", "wait it was D four");
    expect(lids(other)).toEqual(["0 sealed, failed: none", "0 sealed, failed: D4"]);
  });

  it("do not fail where only liquid was lost under them", async () => {
    const played = await called("D one has lost half its juice");
    expect(played.journal.filter(({ type }) => type === "seal-failed")).toEqual([]);
  });

  it("fail by themselves after all: no lid nobody pressed is sealed in their place", async () => {
    const played = await called("P one yes, P two yes", "P one didn't seal");
    expect(lids(played)[0]).toBe("1 sealed, failed: P1");
  });

  it("are never called sealed again by a list once they failed", async () => {
    const played = await called("P four didn't seal", "P three yes, P four yes");
    expect(lids(played)[0]).toContain("failed: P4");
    expect(played.refused.map(({ reason }) => reason)).toContain(
      "Jar 4 is down as failed already.",
    );
  });

  it.each([
    ["all but one of the Provider sealed", [5, 1], [0, 0]],
    ["all sealed but one of the Provider", [5, 1], [4, 0]],
    ["all good except two, one P and one D", [5, 1], [3, 1]],
    ["six Provider and two Dragon Tongue sealed", [6, 0], [2, 0]],
    ["two of the Provider and one Dragon Tongue didn't", [0, 2], [0, 1]],
    ["two failed, P one and D two", [0, 1], [0, 1]],
    ["two duds, both Provider", [0, 2], [0, 0]],
    ["only one didn't take, it's a Dragon", [0, 0], [0, 1]],
    ["none of the Dragon Tongue sealed", [0, 0], [0, 4]],
    ["all the Provider failed", [0, 6], [0, 0]],
    ["two Provider and the Dragon Tongue sealed", [2, 0], [4, 0]],
    ["Provider all sealed, Dragon Tongue too", [6, 0], [4, 0]],
    ["everything but a Dragon Tongue", [6, 0], [3, 1]],
  ])(
    "are counted by lots, and no lot that nobody spoke of is sealed: %s",
    async (text, ...lots) => {
      const { review } = await called(text);
      const counts = review.batches.map(({ jars }) => [jars?.sealed, jars?.failed]);
      expect(counts).toEqual(lots);
    },
  );

  it.each(["all good except three, one P and one D", "Provider six sealed, Dragon Tongue two"])(
    "are not sealed by counts that do not add up or may be numbers: %s",
    async (text) => {
      const played = await called(text);
      expect(played.journal.filter(({ type }) => type === "sealed")).toEqual([]);
    },
  );

  it("of several lots are asked for where only how many failed is told", async () => {
    const played = await called("all but three sealed");
    expect(played.journal.filter(({ type }) => /^seal/.test(type))).toEqual([]);
    expect(played.refused.at(-1)?.reason).toMatch(/^Which 3 did not seal\?/);
  });

  it("are asked for once over all loads, and then whether the others sealed", async () => {
    const told = await called("P one and D four didn't");
    const counts = ({ review }: Played) => review.batches.map(({ jars }) => jars?.sealed);
    expect(counts(told)).toEqual([0, 0]);
    expect(told.asked.at(-1)?.text).toMatch(/Did the other 8 seal\?$/);
    const answers = told.said.map(({ text }) => text).join(" ");
    expect(answers).toMatch(/P 1 did not seal\..*D 4 did not seal\./);
    const after = await called("P one and D four didn't", "yes");
    expect(lids(after)).toEqual(["5 sealed, failed: P1", "3 sealed, failed: D4"]);
    const others = await called("P one didn't seal", "no", "D four didn't either", "yes");
    expect(lids(others)).toEqual(["5 sealed, failed: P1", "3 sealed, failed: D4"]);
  });

  it("go to the refrigerator together from all loads, before the rest is told", async () => {
    const { asked, journal, review } = await called(
      "P one and D four didn't",
      "put them in the fridge",
      "D three too",
      "yes",
    );
    const disposed = journal.flatMap((one) => (one.type === "disposed" ? [one.count] : []));
    expect(disposed).toEqual([1, 1]);
    expect(review.batches.flatMap(({ heard }) => heard ?? [])).toEqual([]);
    expect(asked.at(-1)?.text).toMatch(/^1 did not seal\. What becomes of the jar/);
  });

  it.each([
    ["nine sealed, the odd one is D three", "6 sealed, failed: none", "3 sealed, failed: D3"],
    ["ten sealed", "6 sealed, failed: none", "4 sealed, failed: none"],
    ["P five, sorry, D two didn't seal", "0 sealed, failed: none", "0 sealed, failed: D2"],
  ])("are all of them where the count is what is left: %s", async (text, provider, dragon) => {
    expect(lids(await called(text))).toEqual([provider, dragon]);
  });

  it("failed where nothing but a mark is said to whether the others sealed", async () => {
    const played = await called("P one didn't seal", "D four");
    expect(lids(played)).toEqual(["0 sealed, failed: P1", "0 sealed, failed: D4"]);
  });

  it("of one lot are told in one, whichever loads they were in", async () => {
    const played = await called("the Dragon Tongue all sealed");
    expect(played.said.map(({ text }) => text)).toContain("4 of the Dragon Tongue sealed.");
  });

  it("leave one doubt of a batch where what was said touches several loads", async () => {
    const { review } = await called("hm, some of them look odd to me");
    const [provider, dragon] = review.batches.map(({ deviations }) => deviations);
    for (const list of [provider, dragon]) {
      expect(list?.filter(({ code }) => code === "unheard")).toHaveLength(1);
    }
  });
});
