/**
 * What is not a report whatever words it matched, guard by guard; and words that are never skipped.
 */
import { describe, expect, it } from "vitest";
import type { Intent } from "../../src/kitchen/command.ts";
import { isNoReport, TELLING } from "../../src/language/guards.ts";
import { utteranceOf } from "../../src/language/words.ts";

const none = (text: string, intent: Intent = "boiling") => isNoReport(utteranceOf(text), intent);
const words = (...lines: string[]) => lines.flatMap((line) => line.split(" "));

const DOUBTING = words(
  "if whether unless until wish hope hoping hopefully might should would could almost nearly",
  "maybe perhaps probably suppose supposing imagine pretend when tomorrow yesterday used",
  "soon wonder wondering waiting guess supposed",
);

describe("no report is what", () => {
  it.each(DOUBTING)("holds the word %s", (word) => {
    expect(none(`it is boiling ${word}`)).toBe(true);
  });

  it("ends in a question mark", () => {
    expect(none("it's boiling?")).toBe(true);
    expect(none("it's boiling")).toBe(false);
  });

  it.each(words("he she they somebody everybody people book recipe guide mom dad grandma"))(
    "%s said",
    (who) => {
      expect(none(`${who} said it's boiling`)).toBe(true);
    },
  );

  it("is about the room, unless it gives a temperature", () => {
    expect(none("it's boiling in here")).toBe(true);
    expect(none("it's ninety degrees in here", "temperature")).toBe(false);
  });

  it.each(words("after before till"))("waits for what comes %s it", (word) => {
    expect(none(`${word} it is boiling`)).toBe(true);
  });

  it.each(words("is are was do did does has have can could will would should may why who"))(
    "begins with %s and its subject",
    (word) => {
      expect(none(`so ${word} the brine boiling`)).toBe(true);
    },
  );

  it("but a statement may begin with have or were", () => {
    expect(none("have filled nine", "jars-filled")).toBe(false);
    expect(none("were boiling at eleven")).toBe(false);
  });

  it("is asked, where the meaning is never asked for; a request asks for it to be done", () => {
    expect(none("start the beets?", "begin")).toBe(true);
    expect(none("can we start the beets?", "begin")).toBe(false);
  });
});

describe("a word that is never passed over as unexpected", () => {
  const more = words(
    "not no never none nothing without but except instead than because so that who he she his her",
    "they their him them mom dad mother father grandma yesterday last ago week month year years",
    "weeks day days night ever always usually sometimes used was were had did said told thought",
    "think know like love want need hate before after while boil boils boiling boiled seal seals",
    "sealed pressure done finished",
  );
  it.each([...new Set([...more, ...DOUBTING])])("%s", (word) => {
    expect(TELLING.has(word)).toBe(true);
  });
});

describe("no report is what is", () => {
  it.each<[string, Intent]>([
    ["your pot is boiling", "boiling"],
    ["damn all sealed", "sealed"],
    ["bugger all is sealed", "sealed"],
    ["I'll put the jars in the canner", "loaded"],
    ["all but the last one are sealed", "sealed"],
    ["every jar except number two is sealed", "sealed"],
    ["it's just steaming", "venting"],
    ["the boil is going away", "boiling"],
    ["the boil went down", "boiling"],
    ["the steam has gone off", "venting"],
    ["the boil is going out", "boiling"],
  ])("not ours, nothing, to be done, not all, a little, or going away: %s", (text, intent) => {
    expect(none(text, intent)).toBe(true);
  });

  it.each<[string, Intent]>([
    ["bless your heart, it's boiling", "boiling"],
    ["every damn one is sealed", "sealed"],
    ["the lids won't seal", "seal-failed"],
    ["it has just started steaming", "venting"],
  ])("and no more than that: %s", (text, intent) => {
    expect(none(text, intent)).toBe(false);
  });
});
