import { describe, expect, it } from "vitest";
import { codes, onlyBatch, play, stageOf } from "./play.ts";

const BEANS = "dilled-green-beans";
const BOIL = "0:00 [cook until process]\n+0:00 it's boiling and the lids are covered\n";
/** The rest of an unbroken run, with the answers at the end. */
const rest = (answer: string) =>
  `+0:10 ${answer}\n+0:00 heat's off\n+0:06 the jars are out\n+13:00 all sealed`;

async function boiled(script: string) {
  const played = await play(BEANS, BOIL + script);
  return { played, batch: onlyBatch(played), asked: played.asked.map(({ text }) => text) };
}

describe("a plain loss", () => {
  it.each([
    "the flame went out",
    "it's only simmering",
    "I turned it off by mistake",
    "the burner went out",
    "the gas ran out",
    "it stopped boiling",
    "the boil stopped",
  ])("stops the clock at once, and asks nothing: %s", async (words) => {
    const { batch, asked } = await boiled(`+0:05 ${words}\n+1:00 what now`);
    expect(batch.process).toMatchObject({ achievedMinutes: 5, state: "running" });
    expect(codes(batch)).toContain("boil-lost");
    expect(asked.filter((text) => /or did it|Which/.test(text))).toEqual([]);
    expect(batch.heard).toMatchObject([{ text: words, strength: "loss", answered: "lost" }]);
  });

  it("stops it whatever question is open, and answers none", async () => {
    const filled = "0:00 [cook until fill]\n+0:10 8 pints filled\n+0:01 the jars are in\n";
    const played = await play(
      BEANS,
      `${filled}+0:20 it's boiling and the lids are covered
+0:05 the flame went out
+0:20 what now`,
    );
    const batch = onlyBatch(played);
    expect(batch.process).toMatchObject({ achievedMinutes: 5 });
    expect(batch.confirmed.map(({ factor }) => factor)).toEqual(["vinegar-5-percent"]);
  });

  it("leaves a doubt about the canner until it is said which pot it was", async () => {
    const two = (answer: string) =>
      play(
        [BEANS, "bread-and-butter-pickles"],
        `${BOIL}+0:00 start the syrup
+0:03 the syrup is boiling
+0:02 it stopped boiling
${answer}`,
      );
    const open = (await two("")).review.batches[0];
    expect(open?.heard).toMatchObject([{ strength: "suspicion", answered: null }]);
    const syrup = (await two("+0:00 the syrup")).review.batches[0];
    expect(syrup?.heard).toMatchObject([{ answered: "well" }]);
    const canner = (await two("+0:00 the canner")).review.batches[0];
    expect(canner && codes(canner)).toContain("boil-lost");
  });
});

describe("heat that is lost before anybody has told of a boil", () => {
  const LOADED = "0:00 [cook until fill]\n+0:10 8 pints filled\n+0:00 yes\n+0:01 the jars are in\n";
  const quoted = async (boil: string) => {
    const tripped = `+0:20 the breaker tripped\n+0:04 ${boil}\n`;
    const { asked } = await play(BEANS, `${LOADED}${tripped}+0:15 yes\n+0:00 heat is off`);
    return asked.filter(({ text }) => text.includes("the breaker tripped")).length;
  };

  it("is no deviation where the boil came after it", async () => {
    const script = `0:00 [cook until process]
+0:03 the lids are covered
+0:05 it's boiling and the lids are covered
+0:15 yes
+0:00 heat's off
+0:06 the jars are out
+13:00 all sealed`;
    const batch = onlyBatch(await play(BEANS, script));
    expect(batch.verdict).toBe("as-tested");
    expect(codes(batch)).not.toContain("unheard");
  });

  it("is asked about in the end where the boil is told to have been there before", async () => {
    expect(await quoted("it's been boiling for six minutes")).toBeGreaterThan(0);
  });

  it("is nothing to a boil that came after it", async () => {
    expect(await quoted("it's boiling and the lids are covered")).toBe(0);
  });
});

describe("a likely loss", () => {
  const LIKELY = "+0:05 my neighbor says the flame went out\n";
  const STILL = "Still boiling, or did it stop?";

  it("interrupts with an either/or question, which a yes does not answer", async () => {
    const { asked, played, batch } = await boiled(`${LIKELY}+0:00 yes\n+0:00 no`);
    expect(asked.filter((text) => text === STILL)).toHaveLength(1);
    expect(played.refused.map(({ reason }) => reason)).toEqual([STILL, STILL]);
    expect(batch.heard).toMatchObject([{ strength: "suspicion", asked: true, answered: null }]);
  });

  it.each(["still boiling", "it's still boiling", "it never stopped"])(
    "lets the minutes run where it did not stop: %s",
    async (words) => {
      const { batch } = await boiled(`${LIKELY}+0:01 ${words}\n${rest("yes")}`);
      expect(batch.verdict).toBe("as-tested");
      expect(batch.heard).toMatchObject([{ answered: "well" }]);
    },
  );

  it.each(["it stopped", "stopped", "it stopped boiling"])(
    "stops the clock at the words where it did: %s",
    async (words) => {
      const { batch } = await boiled(`${LIKELY}+0:01 ${words}\n+1:00 what now`);
      expect(codes(batch)).toContain("boil-lost");
      expect(batch.process?.achievedMinutes).toBeLessThanOrEqual(6);
      expect(stageOf(batch, "process").state).toBe("running");
    },
  );

  it("is included in the closing question where nobody answered, and then is unheard", async () => {
    const settled = await boiled(`${LIKELY}${rest("yes")}`);
    expect(settled.asked.join("\n")).toMatch(
      /I heard "my neighbor says the flame went out".*throughout/,
    );
    expect(settled.batch.verdict).toBe("as-tested");
    const open = await boiled(
      `${LIKELY}+0:10 heat's off\n+0:06 the jars are out\n+13:00 all sealed`,
    );
    expect(codes(open.batch)).toContain("unheard");
    expect(open.batch.verdict).not.toBe("as-tested");
  });

  it("interrupts once in ten minutes and twice in all, and loses no doubt", async () => {
    const said = "my neighbor says the flame went out";
    const { asked, batch } = await boiled(
      `+0:01 ${said}
+0:00 still boiling
+0:02 ${said}
+0:11 the flame went out
+0:01 it's boiling and the lids are covered
+0:01 ${said}
+0:00 still boiling
+0:12 ${said}
+0:00 still boiling`,
    );
    expect(asked.filter((text) => text === STILL)).toHaveLength(2);
    expect(batch.heard.filter(({ answered }) => answered === null)).toHaveLength(1);
  });
});

describe("words that fit nothing", () => {
  it("are kept, interrupt nothing, and are quoted with their time at the end", async () => {
    const { asked, batch } = await boiled(`+0:05 it's spitting all over\n${rest("yes")}`);
    const end = asked.find((text) => text.includes("throughout")) ?? "";
    expect(end).toMatch(/^At \d\d:\d\d I heard "it's spitting all over"\. Was it a full boil/);
    expect(batch.heard).toMatchObject([{ strength: "trace", asked: true, answered: "well" }]);
    expect(batch.verdict).toBe("as-tested");
  });

  it.each(["190", "one ninety", "a hundred and ninety"])(
    "are a bare number, too, which a thermometer may show: %s",
    async (number) => {
      const { asked, batch } = await boiled(`+0:05 ${number}\n${rest("yes")}`);
      expect(asked.some((text) => text.includes(`I heard "${number}"`))).toBe(true);
      expect(batch.heard).toMatchObject([{ strength: "trace", asked: true, answered: "well" }]);
    },
  );

  it("are not settled by an answer to a question that was shown before them", async () => {
    const late = rest("what now").replace("what now", "the water is dancing funny\n+0:00 yes");
    const { asked, batch } = await boiled(`+0:05 it's spitting all over\n${late}`);
    expect(batch.heard.map(({ answered }) => answered)).toEqual(["well", null]);
    expect(asked.at(-1)).toContain('"the water is dancing funny". Was everything all right');
    expect(batch.verdict).toBe("unfinished");
  });

  it("quote three at most; after a no to them, the record is not as tested", async () => {
    const { asked, batch } = await boiled(
      `+0:03 it's spitting all over\n+0:01 the water is dancing funny\n+0:01 big noise from the ` +
        `burner\n+0:01 the flame is sort of blue and yellow\n${rest("no")}`,
    );
    const end = asked.find((text) => text.includes("throughout")) ?? "";
    expect(end.match(/I heard/g)?.length).toBe(3);
    expect(batch.heard.length).toBeGreaterThanOrEqual(4);
    expect(batch.verdict).toBe("not-as-tested");
  });

  it("do not matter before anything boils, or about the kettle", async () => {
    const before = await play(BEANS, "0:00 [cook until process]\n+0:00 it's spitting all over");
    expect(onlyBatch(before).heard).toEqual([]);
    const { batch } = await boiled("+0:05 the kettle is spitting all over");
    expect(batch.heard).toEqual([]);
  });
});
