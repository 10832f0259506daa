import { describe, expect, it } from "vitest";
import { codes, onlyBatch, play } from "./play.ts";

const BEANS = "dilled-green-beans";
const PROCESS = "0:00 [cook until process]\n+0:00 it's boiling and the lids are covered\n";
const questions = (played: Awaited<ReturnType<typeof play>>) =>
  played.asked.map(({ text }) => text).filter((text) => text.startsWith("I heard:"));

describe("a guess", () => {
  it.each([
    "the kids are out on the porch",
    "the dishwasher is done",
    "the tea kettle is boiling",
    "the radio is off",
  ])("about what stands elsewhere is not asked about: %s", async (text) => {
    expect(questions(await play(BEANS, `${PROCESS}+0:02 ${text}\n+0:00 what now`))).toEqual([]);
  });

  it("that could come to nothing now is not asked about", async () => {
    const text = "that should be about it then, all finished up";
    expect(questions(await play(BEANS, `${PROCESS}+0:02 ${text}`))).toEqual([]);
  });
});

describe("words about what went into the jars", () => {
  const told = (words: string) => play(BEANS, `${PROCESS}+0:02 ${words}\n+0:00 [cook until done]`);

  it("are kept and asked about where they name a food that the recipe has not", async () => {
    const played = await told("the pumpkin smells good in this");
    expect(played.asked.map(({ text }) => text).join("\n")).toContain("the pumpkin smells good");
    expect(onlyBatch(played).heard).toHaveLength(1);
    expect(onlyBatch(await told("the dill smells good in this")).heard).toEqual([]);
  });

  it("may be told when the jars are put away, and leave them unfinished", async () => {
    const late = await play(BEANS, "0:00 [cook until done]\n+1:00 I pulled the jars too soon");
    expect(onlyBatch(late).verdict).toBe("unfinished");
    expect(codes(onlyBatch(late))).toContain("unheard");
    const weeks = await play(BEANS, "0:00 [cook until done]\n+40d 0:00 I pulled the jars too soon");
    expect(onlyBatch(weeks).verdict).toBe("as-tested");
  });
});

describe("a pot that bears its batch's name", () => {
  it("is the one that is meant", async () => {
    const script = "+0:30 scrub and trim done\n+0:01 start the syrup\n+0:10 the beets are boiling";
    const played = await play("pickled-beets", script);
    expect(played.asked.map(({ text }) => text).join("\n")).not.toContain("Which is boiling");
  });
});

describe("what is begun along with a food that was not tested", () => {
  it.each(["start the carrots and cabbage", "start the peaches and bananas"])(
    "may be one mix, and is not begun: %s",
    async (text) => {
      const played = await play("pickled-beets", `0:01 ${text}\n+0:01 what now`);
      expect(played.review.batches.map(({ recipe }) => recipe)).toEqual(["pickled-beets"]);
    },
  );
});

describe("an open doubt of jars that are put away", () => {
  const doubted = "0:00 [cook until done]\n+1:00 I pulled the jars too soon";
  const answered = (between: string, answer = "all was well") => {
    return play(BEANS, `${doubted}\n+0:01 ${between}\n+48:00 ${answer}`);
  };

  it("can be answered days later in a clause, and no more once the jars are labeled", async () => {
    expect(onlyBatch(await answered("what now")).verdict).toBe("as-tested");
    expect(onlyBatch(await answered("what now", "yes")).verdict).toBe("unfinished");
    expect(onlyBatch(await answered("what now", "it was so")).verdict).toBe("not-as-tested");
    const labeled = await answered("the jars are labeled");
    expect(labeled.journal.some(({ type }) => type === "labeled")).toBe(true);
    expect(onlyBatch(labeled).verdict).toBe("unfinished");
    const late = `${doubted}\n+0:01 the jars are labeled\n+0:01 I pulled the jars too soon`;
    expect(onlyBatch(await play(BEANS, late)).heard).toHaveLength(1);
  });

  it("is of nobody's labels where no jars wait for them", async () => {
    const early = await play(BEANS, "0:01 the jars are labeled");
    expect(early.refused.map(({ reason }) => reason)).toEqual([
      "No jars are waiting for their labels.",
    ]);
  });
});
