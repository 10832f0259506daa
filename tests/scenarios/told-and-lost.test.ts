/** Things that are told once, in passing or late: each of them changes or keeps something. */
import { describe, expect, it } from "vitest";
import { codes, onlyBatch, type Played, play } from "./play.ts";

const BEANS = "dilled-green-beans";
const CANNER = "0:00 [cook until process]\n";
const BOILS = "it's boiling and the lids are covered";
const BOIL = `${CANNER}+0:00 ${BOILS}\n`;
/** Its time is full, the question about it has its yes, and the heat is off. */
const OFF = `${BOIL}+0:15:20 yes\n+0:00 heat's off\n`;
const OUT = "+0:06 the jars are out\n+13:00 all sealed";

const answers = (played: Played) => onlyBatch(played).heard.map(({ answered }) => answered);

describe("whoever turned the heat off while the time ran", () => {
  it.each([
    "my boy switched the stove off",
    "my daughter turned the burner off",
    "the kids turned off the stove",
    "grandpa cut the gas",
    "somebody switched off the hob",
    "my wife killed the flame",
    "our neighbor turned off the range",
    "he shut the burner off",
  ])("stopped the clock at once: %s", async (words) => {
    const batch = onlyBatch(await play(BEANS, `${BOIL}+0:06 ${words}\n+0:10 what now`));
    expect(codes(batch)).toContain("boil-lost");
    expect(batch.process).toMatchObject({ achievedMinutes: 6, state: "running" });
  });

  it.each(["my boy switched the stove off", "she turned the burner off"])(
    "ended nothing but the heat once it was full: %s",
    async (words) => {
      const done = `${BOIL}+0:15:20 yes\n+0:00 ${words}\n${OUT}`;
      expect(onlyBatch(await play(BEANS, done)).verdict).toBe("as-tested");
    },
  );

  it.each(["did my boy switch the stove off", "my sister says turn the burner off"])(
    "did nothing where nobody did: %s",
    async (words) => {
      const batch = onlyBatch(await play(BEANS, `${BOIL}+0:06 ${words}\n+0:10 what now`));
      expect(codes(batch)).not.toContain("boil-lost");
    },
  );
});

describe("the heat being off while a process waits for it", () => {
  const OFF_WORDS = [
    "the heat is off",
    "the burner is off",
    "I turned the heat off",
    "the stove's off now",
    "I've switched off the gas",
    "I shut the burner off",
    "my boy switched the stove off",
  ];

  it.each(OFF_WORDS)("is written down where the boil was lost: %s", async (words) => {
    const played = await play(BEANS, `${BOIL}+0:04 the flame went out\n+0:02 ${words}`);
    expect(played.refused).toEqual([]);
    expect(played.journal.at(-2)).toMatchObject({ type: "heat-off" });
    expect(onlyBatch(played).process).toMatchObject({ achievedMinutes: 4, state: "running" });
  });

  it.each(OFF_WORDS)("is written down before there was a boil: %s", async (words) => {
    const played = await play(BEANS, `${CANNER}+0:04 ${words}\n+0:09 ${BOILS}\n+0:15:20 what now`);
    expect(played.refused).toEqual([]);
    expect(played.journal.some(({ type }) => type === "heat-off")).toBe(true);
    expect(onlyBatch(played).process).toMatchObject({ achievedMinutes: 15, state: "complete" });
  });

  it("is lost under pressure, too, and the whole time runs anew", async () => {
    const script = `${CANNER}+0:00 15 pounds\n+0:08 the pressure dropped\n+0:02 the heat is off
+0:05 15 pounds\n+0:20:20 what now`;
    const played = await play("snap-beans", script, { gauge: "dial" });
    expect(played.refused).toEqual([]);
    expect(onlyBatch(played).process).toMatchObject({ restarts: 1, state: "complete" });
  });
});

describe("a boil that was lost before the heat went off, told after it", () => {
  it.each([
    "it went off the boil a while back",
    "we lost the boil a quarter of an hour back",
    "the boil dropped out several minutes ago",
    "the boil quit some time ago",
    "it stopped boiling for a bit",
    "the flame was out for a spell earlier",
    "we lost the boil for a minute in the middle",
  ])("leaves no record as tested: %s", async (words) => {
    const batch = onlyBatch(await play(BEANS, `${OFF}+0:02 ${words}\n${OUT}`));
    expect(batch.verdict).not.toBe("as-tested");
    expect(batch.heard.length + codes(batch).length).toBeGreaterThan(0);
  });

  it.each(["it stopped boiling", "the boil stopped"])(
    "is none where it only cooled down: %s",
    async (words) => {
      const batch = onlyBatch(await play(BEANS, `${OFF}+0:02 ${words}\n${OUT}`));
      expect(batch.verdict).toBe("as-tested");
    },
  );
});

describe("nobody who is not sure that it held", () => {
  it.each([
    "I'm not sure it kept going",
    "I couldn't swear it held the whole time",
    "I'm not certain it stayed at a boil",
    "I can't say it kept rolling",
    "not sure the pot stayed hot enough",
    "I don't know whether it kept up",
  ])("is overheard: %s", async (words) => {
    const played = await play(BEANS, `${BOIL}+0:08 ${words}\n+0:07:20 heat's off\n${OUT}`);
    expect(onlyBatch(played).heard).toMatchObject([{ text: words, answered: null }]);
    expect(onlyBatch(played).verdict).not.toBe("as-tested");
  });

  it("answers a question about something else with it", async () => {
    const fill = "0:00 [cook until fill]\n+0:10 8 pints filled\n+0:01 sterilized\n";
    const options = { altitude: "900ft" };
    const unsure = "I'm not sure the jars were boiled long enough";
    const script = `${fill}+0:00 ${unsure}\n+0:00 half an inch
+0:05 the jars are in`;
    const played = await play(BEANS, script, options);
    expect(onlyBatch(played).confirmed.map(({ factor }) => factor)).toContain("headspace");
    expect(onlyBatch(played).heard).toMatchObject([{ text: unsure, answered: null }]);
  });
});

describe("first aid", () => {
  it.each(["grandpa cut the gas", "I smell gas by the burner", "there's a gas leak at the stove"])(
    "comes first, and what was said of the heat is kept: %s",
    async (words) => {
      const played = await play(BEANS, `${BOIL}+0:06 ${words}\n+0:10 what now`);
      const { heard, deviations } = onlyBatch(played);
      expect(heard.length + deviations.length).toBeGreaterThan(0);
    },
  );
});

describe("a report that is taken back by its name", () => {
  const TAKEN_BACK = [
    "I take back what I said about the boil",
    "take back the boil",
    "forget what I told you about the boil",
    "I was wrong about the boil",
    "what I said about the boil wasn't true",
    "scratch what I said about boiling",
    "that about the boil was wrong",
    "I spoke too soon about the boil",
  ];

  it.each(TAKEN_BACK)("is that boil, not what was said since: %s", async (words) => {
    const script = `${BOIL}+0:02 note the beets are in the cellar\n+0:02 ${words}`;
    const played = await play(BEANS, script);
    const batch = onlyBatch(played);
    expect(batch.process).toMatchObject({ achievedMinutes: 0 });
    expect(batch.notes.map(({ text }) => text)).toContain("the beets are in the cellar");
  });

  it.each(TAKEN_BACK.slice(0, 4))("is judged by that once the jars are out: %s", async (words) => {
    const batch = onlyBatch(await play(BEANS, `${OFF}+0:06 the jars are out\n+0:10 ${words}`));
    expect(codes(batch)).toContain("process-short");
    expect(batch.verdict).toBe("not-as-tested");
  });

  it("is a pressure, where that is named", async () => {
    const script = `${CANNER}+0:00 15 pounds\n+0:02 note the beets are in the cellar
+0:02 strike what I said about the pressure`;
    const batch = onlyBatch(await play("snap-beans", script, { gauge: "dial" }));
    expect(batch.process).toMatchObject({ achievedMinutes: 0 });
    expect(batch.notes).toHaveLength(1);
  });

  it("asks first where a loss is taken back", async () => {
    const lost = `${BOIL}+0:04 the flame went out\n+0:02 I take back what I said about the boil`;
    const played = await play(BEANS, lost);
    expect(played.asked.at(-1)?.text).toMatch(/lost boil\? Its time would count as unbroken/);
    expect(codes(onlyBatch(played))).toContain("boil-lost");
  });

  it("leaves a doubt where there is no such report", async () => {
    const played = await play(BEANS, `${BOIL}+0:02 strike what I said about the pressure`);
    expect(onlyBatch(played).heard).toMatchObject([{ strength: "suspicion" }]);
  });

  it.each([
    ["take back what I said about the vinegar", "vinegar-5-percent"],
    ["forget what I told you about the headspace", "headspace"],
    ["I was wrong about the lids", "new-lids"],
    ["what I said about the lids was not true", "new-lids"],
    ["scratch that about the vinegar", "vinegar-5-percent"],
    ["I take back my answer about the headspace", "headspace"],
  ])("reopens an answer, whichever was the last: %s", async (words, factor) => {
    const played = await play(BEANS, `${BOIL}+0:04 ${words}`);
    const reopened = played.journal.filter(({ type }) => type === "factor-reopened");
    expect(reopened).toMatchObject([{ factor }]);
    expect(onlyBatch(played).process).toMatchObject({ state: "running" });
    expect(codes(onlyBatch(played))).not.toContain("boil-lost");
  });

  it.each(["I take back what I said about the cellar", "forget what I said about the radio"])(
    "is asked about where it names nothing that is known: %s",
    async (words) => {
      const played = await play(BEANS, `${BOIL}+0:04 ${words}`);
      expect(played.asked.at(-1)?.text).toMatch(/^Take back .*\? .*Say yes or no/);
      expect(onlyBatch(played).process).toMatchObject({ state: "running" });
    },
  );
});

describe("a food that was told beside the heat", () => {
  const HEAT_YES = `+0:11 yes\n+0:00 heat's off\n${OUT}`;

  it.each([
    "some boiled corn got into it",
    "a few jars got mushrooms too",
    "I slipped an avocado in",
    "some butter went in with it",
    "I put a spoon of simmered beef in with the beans",
    "one jar got some rolled oats in it",
    "a handful of guajillo went in with the boiling brine",
    "I snuck some zibzob in with the boiling brine",
  ])("is not settled by a yes to the heat: %s", async (words) => {
    const played = await play(BEANS, `${BOIL}+0:04 ${words}\n${HEAT_YES}`);
    expect(answers(played)).toContain(null);
    expect(onlyBatch(played).verdict).not.toBe("as-tested");
  });

  it("is nothing where the recipe has it", async () => {
    const played = await play(BEANS, `${BOIL}+0:04 the dill is boiling around nicely\n${HEAT_YES}`);
    expect(onlyBatch(played).verdict).toBe("as-tested");
  });
});

describe("a gauge that nobody tested", () => {
  it.each([
    "the gauge was not tested",
    "that dial hasn't been tested in years",
    "nobody ever tested the gauge",
    "I never had the dial checked",
    "the canner's gauge has never been checked",
    "the gauge test was skipped this year",
    "I didn't get the gauge looked at this season",
  ])("is in the record, whatever is answered in the end: %s", async (words) => {
    const script = `${CANNER}+0:00 15 pounds\n+0:04 ${words}\n+0:16:20 heat's off
+0:40 zero pounds\n+0:00 yes\n+0:11 the jars are out\n+13:00 all sealed`;
    const batch = onlyBatch(await play("snap-beans", script, { gauge: "dial" }));
    expect(batch.verdict).not.toBe("as-tested");
    expect(batch.heard.length + codes(batch).length).toBeGreaterThan(0);
  });
});

describe("a name that is asked about and not answered", () => {
  it.each([
    "we're making bread and butter pickles today",
    "start the bread and butter pickles",
    "let's begin the bread and butter pickles",
  ])("begins nothing when the recipe is begun without it: %s", async (words) => {
    const script = `0:00 start the cantaloupe bread and butter pickles\n+0:00 ${words}`;
    const played = await play([], script);
    expect(played.review.batches).toEqual([]);
    expect(played.refused.at(-1)?.reason).toBe("Cantaloupe: a cucumber?");
  });

  it("begins with another name, or another recipe", async () => {
    const script = `0:00 start the cantaloupe bread and butter pickles
+0:00 start the pickled beets`;
    const { batches } = (await play([], script)).review;
    expect(batches.map(({ recipe }) => recipe)).toEqual(["pickled-beets"]);
  });
});
