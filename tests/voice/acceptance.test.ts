import { describe, expect, it } from "vitest";
import { acceptance, afterSecondHearing } from "../../src/voice/acceptance.ts";
import { grammarWords, wholeGrammar } from "../../src/voice/listening-grammar.ts";
import { soundAlikes } from "../../src/voice/sound-alikes.ts";

const good = { text: "next", wakeFit: -1, fit: -1, frames: 120 };

describe("whether a command is taken", () => {
  it("depends on the wake words and on the sentence, each by itself", () => {
    expect(acceptance(good, 25, true)).toMatchObject({ taken: true });
    expect(acceptance({ ...good, wakeFit: -6 }, 25, true)).toMatchObject({ why: "no-wake-words" });
    expect(acceptance({ ...good, fit: -6 }, 25, true)).toMatchObject({ why: "unsure" });
    expect(acceptance({ ...good, frames: 900 }, 25, true)).toMatchObject({ why: "too-long" });
    expect(acceptance({ ...good, text: "" }, 25, true)).toMatchObject({ why: "nothing" });
  });

  it("is stricter without wake words", () => {
    const fair = { ...good, wakeFit: -2.4, fit: -2.4 };
    expect(acceptance(fair, 25, true)).toMatchObject({ taken: true });
    expect(acceptance(fair, 25, false)).toMatchObject({ taken: false });
    expect(acceptance({ ...good, frames: 300 }, 25, false)).toMatchObject({ why: "too-long" });
  });

  it("is surer the better the sentence fits", () => {
    const confidences = [-2.5, -2, -1.5, -1].map(
      (fit) => acceptance({ ...good, fit }, 25, true).confidence,
    );
    expect(confidences).toEqual([...confidences].sort((a, b) => a - b));
    expect(confidences.at(-1)).toBeGreaterThan(0.9);
  });

  it("wants speech to rise above the noise", () => {
    expect(acceptance(good, 2, true)).toMatchObject({ taken: false, why: "unsure" });
  });

  it("is unsure of a number with a near rival", () => {
    const settled = (leadOver: number) =>
      afterSecondHearing({ ...good, again: "next", rival: { text: "text", leadOver } }, 0.95);
    expect(settled(10).confidence).toBeLessThan(0.3);
    expect(settled(100)).toEqual({ taken: true, confidence: 0.95, orElse: "text" });
  });

  it("is never sure where two hearings disagree, and refuses then what fits poorly", () => {
    const settled = (more: object) => afterSecondHearing({ ...good, ...more }, 0.95);
    expect(settled({ again: "the next" })).toEqual({ taken: true, confidence: 0.95 });
    expect(settled({ again: "text" })).toEqual({ taken: true, confidence: 0.4, orElse: "text" });
    expect(settled({ again: "text", fit: -2.8 })).toMatchObject({ taken: false, why: "unsure" });
  });
});

describe("what sounds alike", () => {
  it("is the same sentence with one number changed", () => {
    expect(soundAlikes("hush for fifteen minutes")).toContain("hush for fifty minutes");
    expect(soundAlikes("carry on")).toEqual([]);
    expect(soundAlikes("nine nine nine nine nine").length).toBeLessThanOrEqual(12);
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

  it("puts the wake words in front of the command", () => {
    expect(wholeGrammar(grammar, ["brine", "bell"])).toContain("= brine bell <c>;");
    expect(wholeGrammar(grammar, [])).toContain("=  <c>;");
  });
});
