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

describe("heat that is told to be back where nobody told of its loss", () => {
  const STILL = "Still boiling, or did it stop?";

  it.each([
    "it's boiling again and the lids are covered",
    "it's come back up to a full boil",
    "back at a hard boil now, lids all under",
    "the flame's relit and it's rolling again",
    "boil's back",
  ])("may have been lost, which is asked: %s", async (words) => {
    const { batch, asked } = await boiled(`+0:05 ${words}\n+1:00 what now`);
    expect(asked.filter((text) => text === STILL)).toHaveLength(1);
    expect(batch.heard).toMatchObject([{ text: words, strength: "suspicion" }]);
  });

  it("starts the time over where it did stop", async () => {
    const { batch } = await boiled(
      "+0:05 boil's back\n+0:00 it stopped\n+0:01 it's boiling again\n+0:10 what now",
    );
    expect(codes(batch)).toEqual(expect.arrayContaining(["boil-lost", "process-restarted"]));
    expect(batch.process).toMatchObject({ achievedMinutes: 10 });
    expect(batch.heard).toHaveLength(1);
  });

  it.each(["still boiling hard, lids covered", "it's boiling on the back burner", "it's boiling"])(
    "was never gone: %s",
    async (words) => {
      const { batch } = await boiled(`+0:05 ${words}\n${rest("yes")}`);
      expect(batch).toMatchObject({ verdict: "as-tested", heard: [] });
    },
  );

  it("is only quoted in the end where it may have been told twice", async () => {
    const soon = await boiled("+0:01 it's boiling again\n+0:14 what now");
    expect(soon.asked).not.toContain(STILL);
    expect(soon.asked.join("\n")).toMatch(/I heard "it's boiling again".*throughout/);
    const arrives = await boiled("+0:05 it's finally boiling\n+0:10 what now");
    expect(arrives.asked).not.toContain(STILL);
    expect(arrives.asked.join("\n")).toMatch(/I heard "it's finally boiling".*throughout/);
  });

  it("is asked about once the jars are out where the end was asked before it", async () => {
    const words = "it's come back up to a hard boil";
    const { asked, batch } = await boiled(
      `+0:16 ${words}\n+0:00 yes\n+0:00 heat's off\n+0:06 the jars are out`,
    );
    expect(asked.join("\n")).toContain(`I heard "${words}". Was all well, or did that happen`);
    expect(batch.heard).toMatchObject([{ text: words, strength: "suspicion", answered: null }]);
  });

  it("is no new doubt after a loss that was told, nor once the heat is off", async () => {
    const told = await boiled("+0:05 the flame went out\n+0:02 it's boiling again\n+0:05 what now");
    expect(told.batch.heard).toMatchObject([{ strength: "loss" }]);
    const off = await boiled(
      "+0:15 yes\n+0:00 heat's off\n+0:01 boil's back\n+0:05 the jars are out\n+13:00 all sealed",
    );
    expect(off.batch).toMatchObject({ verdict: "as-tested", heard: [] });
  });

  it("raises a doubt anew where it is lost a second time without a word", async () => {
    const { asked } = await boiled(
      `+0:05 the flame went out
+0:02 it's boiling again
+0:06 it's boiling again
+0:10 what now`,
    );
    expect(asked).toContain(STILL);
  });

  it("did stop, where that is what was asked", async () => {
    const { batch } = await boiled(
      `+0:05 my neighbor says the flame went out
+0:02 it's boiling again
+0:09 what now`,
    );
    expect(codes(batch)).toContain("boil-lost");
    expect(batch.process).toMatchObject({ achievedMinutes: 9, state: "running" });
  });

  it("is left open by what answers a question about the water", async () => {
    const { batch, asked } = await boiled(
      `+0:05 one lid is sticking out a bit
+0:02 it's boiling again
+0:04 covered
+0:05 what now`,
    );
    expect(asked).toContain("Lids still covered, or are some out of the water?");
    // So soon after that it is left to the closing question.
    expect(asked).not.toContain(STILL);
    expect(asked.join("\n")).toMatch(/I heard "it's boiling again".*throughout/);
    expect(codes(batch)).not.toContain("boil-lost");
    expect(batch.heard).toMatchObject([{ answered: "well" }, { answered: null }]);
  });

  it.each(["it's back up to fifteen pounds", "the pressure is up to fifteen pounds again"])(
    "is asked about under pressure as well: %s",
    async (words) => {
      const UP = "0:00 [cook until process]\n+0:05 fifteen pounds\n";
      const { asked } = await play("snap-beans", `${UP}+0:08 ${words}`);
      expect(asked.map(({ text }) => text)).toContain("Still at pressure, or did it drop?");
    },
  );
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
