import { describe, expect, it } from "vitest";
import { spokenGrammar } from "../../src/language/grammar/spoken-grammar.ts";
import { numberInWords } from "../../src/language/grammar/spoken-words.ts";
import { GrammarSentences } from "./grammar-sentences.ts";
import { kitchenContext } from "./kitchen-context.ts";

describe("the grammar for the recognizer", () => {
  const running = [{ id: "b-1", recipe: "pickled-beets" }];

  it("has every rule it names, pairs its brackets and holds what is running", () => {
    const { rules, command } = spokenGrammar(kitchenContext({ running }));
    const defined = new Set([...rules.matchAll(/^<(\w+)> =/gm)].map((match) => match[1]));
    const used = [...rules.matchAll(/<(\w+)>/g)].map((match) => match[1]);
    for (const name of used) expect(name === "VOID" || defined.has(name)).toBe(true);
    expect(defined.has(command)).toBe(true);
    expect(rules.split("(").length).toBe(rules.split(")").length);
    expect(rules.split("[").length).toBe(rules.split("]").length);
    expect(rules).toContain("pickled beets");
    expect(rules).not.toMatch(/\(\s*\)|\[\s*\]|\|\s*\||\|\s*\)|\(\s*\|/);
  });

  it("can be limited to a few intents", () => {
    const { rules } = spokenGrammar(kitchenContext({ running }), { intents: ["boiling", "hush"] });
    expect(rules).toContain("rolling");
    expect(rules).not.toContain("slot_lot");
  });

  it("can be limited to the commonest phrases of each meaning", () => {
    const forms = [1, 2, undefined].map((phrasesEach) => {
      const { rules, command } = spokenGrammar(kitchenContext({ running }), { phrasesEach });
      return new GrammarSentences(rules).forms(command);
    });
    expect(forms).toEqual([...forms].sort((a, b) => a - b));
    expect(new Set(forms).size).toBe(3);
  });

  it("says words run together as people do", () => {
    const { rules } = spokenGrammar(kitchenContext({ running }));
    expect(rules).toContain("it's boiling");
    expect(rules).toContain("didn't seal");
    expect(rules).not.toContain("it is boiling");
  });

  it("limits numbers to plausible ones", () => {
    const { rules } = spokenGrammar(kitchenContext({ running }), {
      mostJars: 7,
      temperature: [180, 185],
      pressure: [10, 12],
    });
    expect(rules).toMatch(/<slot_whole> = \( one .* \| seven \);/);
    expect(rules).toContain("<slot_value_number> = ( ten | eleven | twelve );");
    expect(rules).not.toContain("one hundred eighty six");
  });

  it("uses is for one thing and are for several", () => {
    const { rules } = spokenGrammar(kitchenContext({ running }), { things: ["brine", "canner"] });
    expect(rules).toMatch(/<slot_target_being> = \( .*pickled beets are .*brine is .*\);/);
    expect(rules).not.toMatch(/beets is|brine are/);
    expect(rules).toContain("the <slot_target_being> boiling");
  });

  it("counts jars and pints from two", () => {
    const { rules } = spokenGrammar(kitchenContext({ running }), { mostJars: 3 });
    expect(rules).toContain("<slot_whole_several> = ( two | three );");
    expect(rules).toContain("<slot_whole_several> <slot_size> filled");
    expect(rules).toContain("<slot_whole> sealed");
  });

  it("writes numbers in words", () => {
    expect([0, 9, 15, 40, 82, 100, 182].map(numberInWords)).toEqual([
      "zero",
      "nine",
      "fifteen",
      "forty",
      "eighty two",
      "one hundred",
      "one hundred eighty two",
    ]);
  });
});
