/** Reports of what has been so for a while, and several facts in one sentence. */
import { describe, expect, it } from "vitest";
import { localIso, MINUTE_MS } from "../../src/kitchen/time.ts";
import { hear } from "../../src/language/hear.ts";
import { CRITICAL_FACTORS } from "../../src/recipe/critical-factors.ts";
import { kitchenContext, underWayOf, ZONE } from "./kitchen-context.ts";

/** A kitchen at two o'clock in which this stage of a load runs. */
function during(kind: string, inside = true) {
  const stages = [underWayOf(kind)];
  return kitchenContext({
    factors: CRITICAL_FACTORS,
    running: [{ id: "b-1", recipe: "dilled-green-beans", variety: "Provider" }],
    loads: [{ id: "L1", canner: "canner", stages, ...(inside ? { inside } : {}) }],
  });
}

const ago = (minutes: number) => {
  const { nowMs } = during("process");
  return localIso(nowMs - minutes * MINUTE_MS, ZONE);
};

describe("a report that is told late", () => {
  it.each([
    ["the boil came back maybe ten minutes ago", "process", "boiling", 10],
    ["it's been rocking since about quarter to", "process", "weight-rocking", 15],
    ["been boiling six minutes", "heat", "boiling", 6],
    ["it boiled seven or eight minutes ago, I never let on", "heat", "boiling", 7],
    ["we were at a full boil by ten to two", "heat", "boiling", 10],
    ["the boil quit at five to two, I only just noticed", "process", "boil-lost", 5],
    ["the water was low when I looked at ten to", "process", "water-low", 10],
    ["took the heat off three minutes ago", "process", "done", 3],
    ["I forgot to say, steam's been coming out since ten to two", "vent", "venting", 10],
    ["we're at eleven pounds since twelve minutes", "process", "pressure", 12],
  ])("has its moment: %s", (text, stage, intent, minutes) => {
    const { reading, commands } = hear(text, during(stage));
    expect(reading).toBe("sure");
    expect(commands.map((one) => one.intent)).toEqual([intent]);
    expect(commands[0]?.slots).toMatchObject({ at: ago(minutes) });
  });

  it.each([
    "put the jars in at twenty to two, clean forgot to say",
    "I put them in at twenty to two, sorry, love",
    "the jars have been in the canner for twenty minutes now",
  ])("tells of the loading where nothing is in yet: %s", (text) => {
    const { commands } = hear(text, during("fill", false));
    expect(commands).toMatchObject([{ intent: "loaded", slots: { at: ago(20) } }]);
  });

  it("corrects a time where the jars are in", () => {
    const { commands } = hear("I put them in at twenty to two", during("process"));
    expect(commands).toMatchObject([{ intent: "correct-time", slots: { at: ago(20) } }]);
  });

  it.each([
    "it was boiling ten minutes ago",
    "the weight was rocking at ten to two",
    "I had it boiling earlier",
    "it started boiling when the news came on",
    "it was boiling a while ago",
    "a bit past ten to two it boiled",
    "the boil was nearly there ten minutes ago",
    "I didn't say it's boiling since ten to two",
  ])("clears nothing where no moment is told, or it may be over: %s", (text) => {
    expect(hear(text, during("heat")).commands).toEqual([]);
  });

  it("takes no bare number of a gauge for an hour", () => {
    const { commands } = hear("the dial's been at eleven for ten minutes", during("process"));
    expect(commands).toMatchObject([{ intent: "pressure", slots: { value: 11, at: ago(10) } }]);
    expect(hear("maybe eleven and a half pounds of pressure", during("process")).commands).toEqual(
      [],
    );
  });

  it("moves no earlier report where its own was not understood", () => {
    const { commands } = hear("the doohickey went wonky, three minutes ago", during("process"));
    expect(commands.map(({ intent }) => intent)).not.toContain("correct-time");
  });
});

describe("several facts in one sentence", () => {
  const factsIn = (text: string, stage = "fill") => {
    const { commands } = hear(text, during(stage, stage !== "fill"));
    return commands.flatMap(({ intent, confirms = [] }) => {
      const held = confirms.map((one) => `${one.factor} ${one.held}`);
      return intent === "factor" ? held : [intent, ...held];
    });
  };

  it.each([
    [
      "seven pints filled, new lids, half an inch, and they're in the canner",
      ["jars-filled", "new-lids yes", "headspace yes", "loaded"],
    ],
    ["the canner is boiling, the jars are in", ["boiling", "loaded"]],
    ["start the dilly beans and set a timer for five minutes", ["begin", "timer-set"]],
  ])("are all done: %s", (text, facts) => {
    expect(factsIn(text)).toEqual(facts);
  });

  it("are done as far as they are plain, and what was not used is told", () => {
    const { commands, unused } = hear(
      "six jars filled, and the whatsit on the left is leaning over the edge",
      during("fill", false),
    );
    expect(commands.map(({ intent }) => intent)).toEqual(["jars-filled"]);
    expect(unused).toEqual(["the whatsit on the left is leaning over the edge"]);
  });

  it("confirm nothing beside what was not understood", () => {
    const text = "six jars filled, new lids, two of them from the old drawer";
    expect(factsIn(text)).not.toContain("new-lids yes");
  });

  it("take half an inch for no headspace where nothing was filled", () => {
    expect(factsIn("half an inch")).not.toContain("headspace yes");
    expect(factsIn("the water is low, half an inch", "process")).not.toContain("headspace yes");
  });
});

describe("words that only hurry", () => {
  it.each(["chop chop", "get a move on", "quick as you like", "if you please"])(
    "are no part of a variety: %s",
    (words) => {
      const { commands } = hear(`start the dilly beans, Contender, ${words}`, kitchenContext());
      expect(commands).toMatchObject([{ intent: "begin", slots: { variety: "Contender" } }]);
    },
  );
});
