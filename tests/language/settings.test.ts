import { describe, expect, it } from "vitest";
import { saturdayKitchen } from "../scenarios/saturday-kitchen.ts";

const SAID: readonly [words: string, talk: string | undefined, night: string | undefined][] = [
  ["keep it short", "short", undefined],
  ["please keep things brief from now on", "short", undefined],
  ["you don't need to explain everything", "short", undefined],
  ["just the short version", "short", undefined],
  ["explain everything again", "whole", undefined],
  ["quiet from ten to six", undefined, "22:00-06:00"],
  ["be quiet from half past nine at night to six thirty", undefined, "21:30-06:30"],
  ["be quiet every night between eleven and seven", undefined, "23:00-07:00"],
  ["make the quiet hours ten thirty to five", undefined, "22:30-05:00"],
  ["set the quiet hours to twelve to six", undefined, "00:00-06:00"],
  ["the quiet hours are from one to five", undefined, "01:00-05:00"],
];

describe("how the kitchen is to speak", () => {
  it.each(SAID)("is set by %j", (words, talk, night) => {
    const { session } = saturdayKitchen();
    session.hear("tell me everything");
    session.hear(words);
    const { kitchen } = session.state;
    if (talk !== undefined) expect(kitchen.talk).toBe(talk);
    const clock = (minute = 0) => new Date(minute * 60_000).toISOString().slice(11, 16);
    const { fromMinute, toMinute } = kitchen.quiet ?? {};
    if (night !== undefined) expect(`${clock(fromMinute)}-${clock(toMinute)}`).toBe(night);
  });

  it.each(["quiet for ten minutes", "be quiet", "tell me more", "what's running"])(
    "is not touched by %j",
    (words) => {
      const { session } = saturdayKitchen();
      const before = structuredClone(session.state.kitchen);
      session.hear(words);
      expect(session.state.kitchen).toEqual(before);
    },
  );
}, 60_000);
