import { describe, expect, it } from "vitest";
import { localIso, parseIso } from "../../src/kitchen/time.ts";
import { pickChoices } from "../../src/language/answers/choosing.ts";
import { editDistance, soundKey } from "../../src/language/spelling/sound.ts";
import { pastMomentsAt } from "../../src/language/values/clock-times.ts";
import { durationsAt } from "../../src/language/values/durations.ts";
import { futureMomentsAt } from "../../src/language/values/future-times.ts";
import { jarListAt, numbersAt } from "../../src/language/values/spoken-numbers.ts";
import { utteranceOf } from "../../src/language/words.ts";
import { ZONE } from "./kitchen-context.ts";

const now = parseIso("2027-08-14T14:00:00", ZONE) ?? 0;

/** The reading that takes all the words, if there is one. */
function whole<T>(text: string, read: (at: number) => { value: T; next: number }[]): T | undefined {
  const { words } = utteranceOf(text);
  return read(0).find(({ next }) => next === words.length)?.value;
}

describe("numbers", () => {
  it.each([
    ["eleven and a half", 11.5],
    ["one eighty two", 182],
    ["one eight two", 182],
    ["two twenty", 220],
    ["two oh five", 205],
    ["two hundred and twelve", 212],
    ["six thousand two hundred", 6200],
    ["sixty two hundred", 6200],
    ["six two hundred", 6200],
    ["6,200", 6200],
    ["10 1/2", 10.5],
    ["10½", 10.5],
    ["½", 0.5],
    ["ten point five", 10.5],
    ["ten and three quarters", 10.75],
    ["a dozen", 12],
    ["half a dozen", 6],
    ["a hundred and eighty", 180],
    ["0", 0],
  ])("%j is %d", (text, value) => {
    expect(whole(text, (at) => numbersAt(utteranceOf(text).words, at))).toBe(value);
  });

  it.each([
    ["three and seven", [3, 7]],
    ["3, 5 and 8", [3, 5, 8]],
    ["two through five", [2, 3, 4, 5]],
    ["twenty one", [21]],
  ])("jars %j are %j", (text, jars) => {
    expect(whole(text, (at) => jarListAt(utteranceOf(text).words, at))).toEqual(jars);
  });
});

describe("lengths of time", () => {
  it.each([
    ["two and a half hours", 150],
    ["an hour and a half", 90],
    ["ninety minutes", 90],
    ["1h30", 90],
    ["90 min", 90],
    ["a quarter of an hour", 15],
    ["three quarters of an hour", 45],
    ["half an hour", 30],
    ["an hour and twenty minutes", 80],
    ["two minutes and thirty seconds", 2.5],
    ["three weeks", 30240],
    ["a couple of minutes", 2],
    ["a minute and a half", 1.5],
  ])("%j is %d minutes", (text, minutes) => {
    expect(whole(text, (at) => durationsAt(utteranceOf(text).words, at))).toBe(minutes);
  });
});

describe("moments of reports", () => {
  it.each([
    ["two minutes ago", "2027-08-14T13:58:00"],
    ["since ten to two", "2027-08-14T13:50:00"],
    ["at quarter past one", "2027-08-14T13:15:00"],
    ["at 1:30", "2027-08-14T13:30:00"],
    ["at noon", "2027-08-14T12:00:00"],
    ["at nine in the morning", "2027-08-14T09:00:00"],
    ["at eleven pm", "2027-08-13T23:00:00"],
    ["a quarter of an hour ago", "2027-08-14T13:45:00"],
    ["at ten to", "2027-08-14T13:50:00"],
    ["since a quarter past", "2027-08-14T13:15:00"],
    ["at half past", "2027-08-14T13:30:00"],
    ["maybe three minutes back", "2027-08-14T13:57:00"],
  ])("%j was %s", (text, iso) => {
    const found = whole(text, (at) => pastMomentsAt(utteranceOf(text).words, at, now, ZONE));
    expect(found && localIso(found, ZONE)).toBe(iso);
  });
});

it("reads no minutes without their hour out of the middle of what is said", () => {
  const { words } = utteranceOf("at ten to the pot");
  expect(pastMomentsAt(words, 0, now, ZONE).every(({ next }) => next < 3)).toBe(true);
});

describe("moments of reminders", () => {
  it.each([
    ["in two and a half hours", "2027-08-14T16:30:00"],
    ["sunday morning at nine", "2027-08-15T09:00:00"],
    ["tomorrow at eight", "2027-08-15T08:00:00"],
    ["tomorrow", "2027-08-15T09:00:00"],
    ["tomorrow evening", "2027-08-15T19:00:00"],
    ["the day after tomorrow at noon", "2027-08-16T12:00:00"],
    ["at nine", "2027-08-14T21:00:00"],
    ["at half past four", "2027-08-14T16:30:00"],
    ["in three weeks", "2027-09-04T14:00:00"],
    ["in two weeks at noon", "2027-08-28T12:00:00"],
    ["on the first of november at ten", "2027-11-01T10:00:00"],
    ["november 1 at ten", "2027-11-01T10:00:00"],
    ["next tuesday at three", "2027-08-17T15:00:00"],
    ["saturday at ten", "2027-08-21T10:00:00"],
    ["on the 20th", "2027-08-20T09:00:00"],
    ["at nine tonight", "2027-08-14T21:00:00"],
  ])("%j is %s", (text, iso) => {
    const found = whole(text, (at) => futureMomentsAt(utteranceOf(text).words, at, now, ZONE));
    expect(found && localIso(found, ZONE)).toBe(iso);
  });

  it.each(["may", "march", "sat", "process for 1:30", "half hours"])("%j is none", (text) => {
    expect(whole(text, (at) => futureMomentsAt(utteranceOf(text).words, at, now, ZONE))).toBe(
      undefined,
    );
  });
});

describe("names by sound and spelling", () => {
  it("share a key where they sound alike", () => {
    expect(soundKey("sour crowd")).toBe(soundKey("sauerkraut"));
    expect(soundKey("beats")).toBe(soundKey("beets"));
    expect(soundKey("beets")).not.toBe(soundKey("beans"));
  });

  it("count letters changed, added, dropped and swapped", () => {
    expect(editDistance("beets", "beats", 2)).toBe(1);
    expect(editDistance("baets", "beats", 2)).toBe(1);
    expect(editDistance("beets", "jam", 2)).toBeGreaterThan(2);
  });
});

describe("which one?", () => {
  const choices = ["pickled beets", "Provider dilly beans", "Dragon Tongue dilly beans"];

  it.each([
    ["the beets", [0]],
    ["the first", [0]],
    ["the last one", [2]],
    ["number two", [1]],
    ["provider", [1]],
    ["the dragon tung", [2]],
    ["the beets and the provider", [0, 1]],
    ["all of them", [0, 1, 2]],
    ["neither", []],
    ["none of them", []],
    ["i meant the beets", [0]],
  ])("%j picks %j", (text, picked) => {
    expect(pickChoices(text, choices)).toEqual(picked);
  });

  it("picks nothing where the words fit several or none", () => {
    expect(pickChoices("the dilly beans", choices)).toBeUndefined();
    expect(pickChoices("both", choices)).toBeUndefined();
    expect(pickChoices("the weather", choices)).toBeUndefined();
    expect(pickChoices("both", ["beets", "beans"])).toEqual([0, 1]);
  });
});
