import { describe, expect, it } from "vitest";
import { codes, onlyBatch, play } from "./play.ts";

const BEANS = "dilled-green-beans";
const FILLED = "0:00 [cook until fill]\n+0:10 8 pints filled\n";
const ANSWERED = `${FILLED}+0:00 half an inch\n+0:00 new\n`;
const DONE = "\n+0:00 [cook until done]";

async function answered(script: string) {
  const played = await play(BEANS, script);
  return { played, batch: onlyBatch(played) };
}

function factors({ batch }: Awaited<ReturnType<typeof answered>>): string[] {
  return batch.confirmed.map((one) => one.factor);
}

describe("what makes a jar safe", () => {
  it.each(["yes", "yeah it is", "okay", "no", "seven", "never"])(
    "is no answer in another kind: %s",
    async (words) => {
      const day = await answered(`${FILLED}+0:00 ${words}`);
      expect(factors(day)).toEqual(["vinegar-5-percent"]);
      expect(day.batch.deviations).toEqual(words === "seven" ? [expect.anything()] : []);
    },
  );

  it.each(["half an inch", "1/2 inch", "a half inch", "0.5", "we left half an inch"])(
    "is answered by its value: %s",
    async (words) => {
      const day = await answered(`${FILLED}+0:00 ${words}`);
      expect(day.batch.confirmed.find(({ factor }) => factor === "headspace")?.value).toBe(0.5);
    },
  );

  it.each([
    ["a quarter inch", "headspace"],
    ["half an inch\n+0:00 they're used", "critical-unrecorded"],
    ["half an inch\n+0:00 last year's lids", "critical-unrecorded"],
  ])("is a no where it is less than the recipe asks: %s", async (words, code) => {
    const { batch } = await answered(`${FILLED}+0:00 ${words}${DONE}`);
    expect(codes(batch)).toContain(code);
    expect(batch.verdict).toBe("not-as-tested");
  });

  it.each(["about half an inch", "I think so", "I don't know", "not sure", "half an inch I guess"])(
    "stays open after a guess: %s",
    async (words) => {
      const day = await answered(`${FILLED}+0:00 ${words}\n+0:00 new`);
      expect(factors(day)).toEqual(["vinegar-5-percent", "new-lids"]);
    },
  );

  it("is asked once more when the jars are out, and then counts as unrecorded", async () => {
    const { played, batch } = await answered(
      `${FILLED}+0:00 not sure\n+0:00 new\n+0:05 the jars are in\n` +
        "+0:20 it's boiling and the lids " +
        "are covered\n+0:16 yes\n+0:00 the heat is off\n+0:05 the jars are out\n+0:00 no idea\n" +
        "+13:00 all sealed",
    );
    const asked = played.asked.filter(({ text }) => text.includes("How much headspace"));
    expect(asked).toHaveLength(2);
    expect(codes(batch)).toEqual(["critical-unrecorded"]);
    expect(batch.verdict).toBe("not-as-tested");
  });

  it("is asked once for lots that are filled together", async () => {
    const two = `0:00 start the Blue Lake dilly beans, four pounds
+0:00 [cook until process]`;
    const played = await play([BEANS], two);
    for (const words of ["headspace", "Lids:", "strength"]) {
      const asked = played.asked.filter(({ text }) => text.includes(words));
      const lots = played.review.batches.map(({ confirmed }) => confirmed.length);
      expect(asked.length, words).toBeLessThanOrEqual(lots.length);
    }
  });
});

describe("a question that is shown", () => {
  it("takes the yes, and no other question does", async () => {
    const played = await play(
      [BEANS, "bread-and-butter-pickles"],
      `0:00 [cook until process]
+0:00 start the syrup
+0:00 it's boiling
+0:00 yes
+0:00 five percent`,
    );
    expect(played.asked.at(-1)?.text).toMatch(/^Which is boiling/);
    expect(played.refused.map(({ reason }) => /^Which is boiling/.test(reason))).toEqual([true]);
    const [, pickles] = played.review.batches;
    expect(pickles?.confirmed.map(({ factor }) => factor)).toEqual(["vinegar-5-percent"]);
  });
});

describe("an answer that is taken back", () => {
  it.each([
    ["the vinegar was only four percent", "critical-unrecorded"],
    ["the vinegar was four percent", "critical-unrecorded"],
    ["those were last year's lids", "critical-unrecorded"],
    ["they were used lids", "critical-unrecorded"],
    ["I reused the lids", "critical-unrecorded"],
    ["two of the lids were old ones", "critical-unrecorded"],
  ])("is in the log both ways: %s", async (words, code) => {
    for (const when of [`${ANSWERED}+0:05 ${words}${DONE}`, `${ANSWERED}${DONE}\n+9:00 ${words}`]) {
      const { batch, played } = await answered(when);
      expect(codes(batch)).toContain("contradicted");
      expect(codes(batch)).toContain(code);
      expect(batch.verdict).toBe("not-as-tested");
      expect(played.said.some(({ text }) => text.includes("not the tested recipe"))).toBe(true);
    }
  });

  it("is asked for again, and the batch stays contradicted", async () => {
    const { batch, played } = await answered(`${ANSWERED}+0:00 change my answer\n+0:00 new${DONE}`);
    expect(played.asked.filter(({ text }) => text.includes("Lids: new"))).toHaveLength(2);
    expect(codes(batch)).toEqual(["contradicted"]);
    expect(batch.verdict).toBe("not-as-tested");
  });

  it("stands again when the words are taken back, after a yes", async () => {
    const { batch } = await answered(
      `${ANSWERED}+0:05 those were last year's lids\n+0:00 undo\n+0:00 yes${DONE}`,
    );
    expect(codes(batch)).toEqual([]);
    expect(batch.verdict).toBe("as-tested");
  });
});
