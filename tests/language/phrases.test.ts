import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { alternatives, type Pattern, parsePattern } from "../../src/language/grammar/pattern.ts";
import { lists, phrases } from "../../src/language/grammar/phrase-book.ts";
import { MEANINGS, meanings } from "../../src/language/intents/all.ts";
import { SHARED_LISTS } from "../../src/language/intents/shared-lists.ts";
import { RECIPE_NAMES } from "../../src/language/values/recipe-names.ts";
import { SLOT_KINDS } from "../../src/language/values/slots.ts";

const LISTS = lists();

function slotsIn(pattern: Pattern, into: Map<string, string>): void {
  if (pattern.is === "slot") into.set(pattern.slot, pattern.kind);
  else if (pattern.is === "fixed") into.set(pattern.slot, "");
  else if (pattern.is === "list") {
    slotsIn(parsePattern(LISTS[pattern.name] ?? ""), into);
  } else if (pattern.is === "sequence") {
    for (const part of pattern.parts) slotsIn(part, into);
  } else if (pattern.is === "choice") {
    for (const one of pattern.of) slotsIn(one, into);
  }
}

describe("the phrases", () => {
  const bags = meanings().flatMap(([intent, { bags = [] }]) =>
    bags.flatMap(({ must, may }) => [...must, may].map((source) => ({ intent, source }))),
  );

  it("fill only slots of their meaning, of kinds that are read", () => {
    const wrong = [...phrases(), ...bags].flatMap(({ intent, source }) => {
      const found = new Map<string, string>();
      slotsIn(parsePattern(source), found);
      const { slots, parts = [] } = MEANINGS[intent];
      const known = [...Object.keys(slots), ...parts, "number"];
      const strange = [...found].filter(
        ([slot, kind]) => !known.includes(slot) || (kind && !SLOT_KINDS.includes(kind)),
      );
      return strange.map(([slot, kind]) => `${intent}: {${slot}:${kind}} in ${source}`);
    });
    expect(wrong).toEqual([]);
  });

  it("name only existing lists, each by a unique name", () => {
    const named = [
      ...Object.keys(SHARED_LISTS),
      ...meanings().flatMap(([, { lists = {} }]) => Object.keys(lists)),
    ];
    expect(named.toSorted()).toEqual([...new Set(named)].toSorted());
    const used = [...phrases(), ...bags].map(({ source }) => source).concat(Object.values(LISTS));
    const uses = new Set(used.flatMap((source) => source.match(/(?<=<)[\w-]+(?=>)/g) ?? []));
    expect(named.filter((name) => !uses.has(name))).toEqual([]);
  });

  it("come apart at the bars outside all brackets", () => {
    expect(alternatives("a (b|c)|[d|e] {f=g}| h")).toEqual(["a (b|c)", "[d|e] {f=g}", " h"]);
  });

  it("say where they are wrong", () => {
    expect(() => parsePattern("it is (boiling")).toThrow('phrase "it is (boiling"');
    expect(() => parsePattern("it is boiling!")).toThrow('cannot read "!"');
  });
});

describe("names of recipes", () => {
  it("name recipes of the library, and none without words", () => {
    const library = readdirSync("recipes").map((file) => file.replace(".yaml", ""));
    for (const [id, names] of Object.entries(RECIPE_NAMES)) {
      expect(library).toContain(id);
      expect(names.length).toBeGreaterThan(0);
    }
  });
});
