/** What is looked at for weeks: told in words, due again from then, and told of where missed. */
import { beforeAll, describe, expect, it } from "vitest";
import { readRehearseCall } from "../../src/commands/rehearse/rehearse.ts";
import { historyOf } from "../../src/kitchen/events.ts";
import type { Library } from "../../src/recipe/library.ts";
import { loadLibrary } from "../../src/session/reading/load-library.ts";
import { readScript } from "../../src/session/rehearsal/rehearsal-script.ts";
import { Rehearsal } from "../../src/session/rehearsal/rehearse.ts";

let library: Library;

beforeAll(async () => {
  library = await loadLibrary(["recipes"], {});
});

/** Kraut begun on the Monday before New Year's Eve, played on by these lines. */
async function kraut(...lines: string[]) {
  const wish = ["sauerkraut", "--from", "2026-12-28T09:00"];
  const call = await readRehearseCall(wish, {
    library: () => library,
    readFile: () => "",
    version: "0.0.0",
  });
  if (!call.ok) throw new Error(call.message);
  const script = readScript(["0:01 [cook until ferment]", ...lines].join("\n"));
  if (!script.ok) throw new Error(script.message);
  const rehearsal = new Rehearsal({ ...call.wish.parts, script: script.lines });
  const { kitchen, trouble } = await rehearsal.play();
  expect(trouble).toBeUndefined();
  const history = historyOf(kitchen.session.state);
  return {
    texts: kitchen.lines.map(({ text }) => text),
    looks: history.filter(({ type }) => type === "looked").length,
    ended: history.some((one) => one.type === "stage-done" && one.stage === "ferment"),
  };
}

const told = (texts: string[], part: string) => texts.filter((one) => one.includes(part));

describe("a check that recurs", () => {
  it.each([
    "skimmed it, it's under the brine",
    "I skimmed the kraut",
    "looked at the crock",
    "checked the kraut",
    "everything is still under the brine",
  ])("is done by words, and ends nothing: %s", async (words) => {
    const { texts, looks, ended } = await kraut(`+2d 0:00 ${words}`);
    expect([looks, ended]).toEqual([1, false]);
    expect(told(texts, "Look again")).toEqual([
      "Noted. Look again at nine in the morning on Friday.",
    ]);
    expect(told(texts, "End it now")).toEqual([]);
  });

  it.each(["did you look at the kraut", "it's not under the brine", "I didn't skim it"])(
    "is not done by: %s",
    async (words) => {
      expect((await kraut(`+2d 0:00 ${words}`)).looks).toBe(0);
    },
  );

  it.each(["I checked the crock, there's mold on it", "I skimmed the kraut and it smells foul"])(
    "is not done where a sign of spoiling stands beside it: %s",
    async (words) => {
      expect((await kraut(`+2d 0:00 ${words}`)).looks).toBe(0);
    },
  );

  it("is not due where somebody looked shortly before", async () => {
    const early = await kraut("+1d 20:00 skimmed it", "+2:30 what now");
    expect(told(early.texts, "Is it under the brine")).toEqual([]);
    const long = await kraut("+1d 0:00 skimmed it", "+23:00 what now");
    expect(told(long.texts, "Is it under the brine")).toHaveLength(1);
  });

  it("is one sentence where several were missed, the latest first", async () => {
    const { texts } = await kraut("+0:05 [closed for 8d 0:00]", "+0:05 what's due this week");
    expect(told(texts, "Is it under the brine")).toEqual([
      expect.stringMatching(/It was due twice before that\. That was .* ago/),
    ]);
    expect(told(texts, "Look at the sauerkraut: overdue since nine")).toHaveLength(1);
  });

  it("is one sentence after a long sleep of the machine, too", async () => {
    const { texts } = await kraut("+0:05 [asleep for 8d 0:00]");
    expect(told(texts, "Is it under the brine")).toEqual([
      expect.stringContaining("It was due twice before that."),
    ]);
  });
});
