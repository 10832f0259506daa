/** Every frame that takes back an order or a report, on its own. */
import { describe, expect, it } from "vitest";
import type { Command } from "../../src/kitchen/command.ts";
import { isStopped } from "../../src/language/frames.ts";
import { utteranceOf } from "../../src/language/words.ts";

const BOILING: Command = { intent: "boiling", slots: {}, confidence: 1 };
const START: Command = { intent: "begin", slots: { recipe: "beets" }, confidence: 1 };
const stopped = (text: string, command: Command, whole = false) =>
  isStopped(command, utteranceOf(text), { whole });

describe("a frame that stops an order", () => {
  it.each([
    "is it true that we start the beets",
    "how would I start the beets",
    "I wish I could start the beets",
    "if only we could start the beets",
    "I want to start the beets some day",
    "if I start the beets it gets late",
    "suppose I start the beets",
    "tell me what happens when I start the beets",
    "please don't start the beets",
    "I won't start the beets",
    "it is not true that we start the beets",
    "my neighbor says start the beets",
    "yesterday we had to start the beets",
    "I had to start the beets last year",
    "back in the spring we started the beets",
    "I used to start the beets",
    "I told the kids to start the beets",
    "no not you start the beets",
    "Ben, could you start the beets",
  ])("%s", (text) => {
    expect(stopped(text, START)).toBe(true);
  });

  it.each([
    "start the beets",
    "the label says five percent, start the beets",
    "if you could, start the beets",
    "never mind, start the beets",
    "Okay, could you start the beets",
    "I told you to start the beets",
  ])("and none: %s", (text) => {
    expect(stopped(text, START)).toBe(false);
  });
});

describe("a report", () => {
  it("is stopped where it is asked, but a doubt never is", () => {
    expect(stopped("it's boiling?", BOILING)).toBe(true);
    const lost: Command = { intent: "boil-lost", slots: {}, confidence: 1 };
    for (const text of ["my neighbor says it stopped boiling", "if only it stopped boiling"]) {
      expect(stopped(text, lost)).toBe(false);
    }
  });

  it("that denies is stopped unless its own wording covers it all", () => {
    expect(stopped("I did not start the beets", START)).toBe(true);
    expect(stopped("I did not start the beets", START, true)).toBe(false);
  });

  it("that a factor does not hold is never stopped", () => {
    const denied: Command = {
      ...{ intent: "factor", slots: { factor: "new-lids", held: "no" }, confidence: 1 },
      confirms: [{ factor: "new-lids", held: "no" }],
    };
    expect(stopped("she said the lids are old", denied)).toBe(false);
    const held: Command = { ...denied, confirms: [{ factor: "new-lids", held: "yes" }] };
    expect(stopped("she said the lids are new", held)).toBe(true);
  });

  it("of what somebody else says is stopped even where quiet is ordered", () => {
    const hush: Command = { intent: "hush", slots: {}, confidence: 1 };
    const help: Command = { intent: "help", slots: {}, confidence: 1 };
    expect(stopped("my neighbor says be quiet", hush)).toBe(true);
    expect(stopped("my neighbor says help me", help)).toBe(false);
  });
});
