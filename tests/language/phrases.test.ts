import { describe, expect, it } from "vitest";
import { type Pattern, parsePattern } from "../../src/language/grammar/pattern.ts";
import { ALL_LISTS, FAMILIES } from "../../src/language/phrases/all-families.ts";
import { RECIPE_NAMES } from "../../src/language/values/recipe-names.ts";
import { SLOT_KINDS } from "../../src/language/values/slots.ts";

const SLOTS: Record<string, string[]> = {
  begin: ["lot", "recipe", "named", "produce", "target"],
  boiling: ["target", "at", "covered"],
  pressure: ["value", "unit", "target", "at"],
  temperature: ["value", "unit", "boiling", "target", "at"],
  "jars-filled": ["count", "size", "target"],
  sealed: ["all", "count", "jars", "target", "number"],
  "seal-failed": ["count", "jars", "othersSealed", "size", "number"],
  disposition: ["what", "count", "jars", "target", "number"],
  altitude: ["feet", "metres", "off", "low", "high"],
  taste: ["target", "taster", "scores", "scoreName", "score"],
  "timer-set": ["minutes", "label"],
  "timer-add": ["minutes", "target"],
  "timer-cancel": ["target"],
  remind: ["when", "text"],
  note: ["text"],
  "correct-time": ["at"],
  "how-much": ["what"],
};

function slotsIn(pattern: Pattern, into: Map<string, string>): void {
  if (pattern.is === "slot") into.set(pattern.slot, pattern.kind);
  else if (pattern.is === "fixed") into.set(pattern.slot, "");
  else if (pattern.is === "list") {
    for (const phrase of ALL_LISTS[pattern.name] ?? []) slotsIn(parsePattern(phrase), into);
  } else if (pattern.is === "sequence") {
    for (const part of pattern.parts) slotsIn(part, into);
  } else if (pattern.is === "choice") {
    for (const one of pattern.of) slotsIn(one, into);
  }
}

describe("the phrases", () => {
  const all = FAMILIES.flatMap((family) => family.phrases.map((phrase) => ({ family, phrase })));

  it("fill only slots of their intent, of kinds that are read", () => {
    for (const { family, phrase } of all) {
      const found = new Map<string, string>();
      slotsIn(parsePattern(phrase), found);
      const known = SLOTS[family.intent];
      for (const [slot, kind] of found) {
        if (known) expect({ phrase, slot, known }).toSatisfy(() => known.includes(slot));
        if (kind) expect(SLOT_KINDS).toContain(kind);
      }
    }
  });

  it("say where they are wrong", () => {
    expect(() => parsePattern("it is (boiling")).toThrow('phrase "it is (boiling"');
    expect(() => parsePattern("it is boiling!")).toThrow('cannot read "!"');
  });
});

describe("names of recipes", () => {
  it("cover every recipe the command line speaks of", () => {
    const ids = Object.keys(RECIPE_NAMES);
    expect(ids).toHaveLength(40);
    for (const id of ids) expect(RECIPE_NAMES[id]?.length).toBeGreaterThan(0);
  });
});
