import { describe, expect, it } from "vitest";
import { acceptance, afterSecondHearing } from "../../../src/voice/listening/acceptance.ts";
import {
  commandTest,
  grammarWords,
  wholeGrammar,
} from "../../../src/voice/listening/listening-grammar.ts";
import { soundAlikes } from "../../../src/voice/listening/sound-alikes.ts";

const good = {
  text: "next",
  wakeFit: -1,
  fit: -1,
  commandFit: -1,
  longestGap: 0,
  frames: 120,
};

describe("whether a command is taken", () => {
  it("depends on the wake words and on the sentence separately", () => {
    expect(acceptance(good, 25, true)).toMatchObject({ taken: true });
    expect(acceptance({ ...good, wakeFit: -6 }, 25, true)).toMatchObject({ why: "no-wake-words" });
    expect(acceptance({ ...good, fit: -6 }, 25, true)).toMatchObject({ why: "unsure" });
    expect(acceptance({ ...good, commandFit: -6 }, 25, true)).toMatchObject({ why: "unsure" });
    expect(acceptance({ ...good, frames: 900 }, 25, true)).toMatchObject({ why: "too-long" });
    expect(acceptance({ ...good, text: "" }, 25, true)).toMatchObject({ why: "nothing" });
  });

  it("is stricter without wake words", () => {
    const fair = { ...good, wakeFit: -2.9, fit: -2.9, commandFit: -2.9 };
    expect(acceptance(fair, 25, true)).toMatchObject({ taken: true });
    expect(acceptance(fair, 25, false)).toMatchObject({ taken: false });
    expect(acceptance({ ...good, frames: 400 }, 25, false)).toMatchObject({ why: "too-long" });
  });

  it("is refused with a pause in the middle of the command", () => {
    expect(acceptance({ ...good, longestGap: 20 }, 25, true)).toMatchObject({ taken: true });
    expect(acceptance({ ...good, longestGap: 40 }, 25, true)).toMatchObject({ why: "unsure" });
  });

  it("is stricter in loud noise", () => {
    const poor = { ...good, wakeFit: -3, fit: -3, commandFit: -3 };
    expect(acceptance(poor, 20, true)).toMatchObject({ taken: true });
    expect(acceptance(poor, 8, true)).toMatchObject({ taken: false });
    expect(acceptance(good, 8, true)).toMatchObject({ taken: true });
  });

  it("is more certain the better the command fits", () => {
    const confidences = [-2.5, -2, -1.5, -1].map(
      (commandFit) => acceptance({ ...good, commandFit }, 25, true).confidence,
    );
    expect(confidences).toEqual([...confidences].sort((a, b) => a - b));
    expect(confidences.at(-1)).toBeGreaterThan(0.9);
  });

  it("requires speech to rise above the noise", () => {
    expect(acceptance(good, 2, true)).toMatchObject({ taken: false, why: "unsure" });
  });

  it("is unsure of a number with a near rival", () => {
    const settled = (leadOver: number) =>
      afterSecondHearing({ ...good, again: "next", rival: { text: "text", leadOver } }, 25, 0.95);
    expect(settled(10).confidence).toBeLessThan(0.3);
    expect(settled(150)).toEqual({ taken: true, confidence: 0.95, orElse: "text" });
  });

  it("is never certain where two hearings disagree, and then refuses what fits poorly", () => {
    const settled = (more: object) => afterSecondHearing({ ...good, ...more }, 25, 0.95);
    expect(settled({ again: "the next" })).toEqual({ taken: true, confidence: 0.95 });
    expect(settled({ again: "text" })).toEqual({ taken: true, confidence: 0.4, orElse: "text" });
    expect(settled({ again: "text", commandFit: -3.2 })).toMatchObject({
      taken: false,
      why: "unsure",
    });
  });
});

describe("what sounds alike", () => {
  it("is the same sentence with one number changed", () => {
    const any = () => true;
    expect(soundAlikes("hush for fifteen minutes", any)).toContain("hush for fifty minutes");
    expect(soundAlikes("carry on", any)).toEqual([]);
    expect(soundAlikes("nine nine nine nine nine", any).length).toBeLessThanOrEqual(12);
  });

  it("is only what can be said now", () => {
    const upTo = (text: string) => !text.includes("fifty");
    expect(soundAlikes("hush for fifteen minutes", upTo)).toEqual(["hush for five minutes"]);
  });
});

describe("the grammar of a moment", () => {
  const grammar = {
    command: "c",
    rules: "<n> = /0.5/ one | two {tag}; <c> = [set a] (timer)+ <n>*;",
  };

  it("has the words of its rules and nothing else", () => {
    expect([...grammarWords(grammar.rules)]).toEqual(["one", "two", "set", "a", "timer"]);
  });

  it("distinguishes its commands from other words", () => {
    const isCommand = commandTest(grammar);
    expect(["timer", "set a timer", "timer timer one two"].every(isCommand)).toBe(true);
    expect(["set timer", "one", "timers", "timer three"].some(isCommand)).toBe(false);
  });

  it("puts the wake words in front of the command", () => {
    expect(wholeGrammar(grammar, ["brine", "bell"])).toContain("= brine bell <c>;");
    expect(wholeGrammar(grammar, [])).toContain("=  <c>;");
  });
});
