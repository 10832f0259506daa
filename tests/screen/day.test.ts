/** Every moment of whole days: what the keys promise, and that the screen fits every window. */
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { decide, decideKeyPress } from "../../src/kitchen/decide/decide.ts";
import { understand } from "../../src/language/understand.ts";
import type { Library } from "../../src/recipe/library.ts";
import { layOut } from "../../src/screen/layout.ts";
import { textOf, widthOf } from "../../src/screen/row.ts";
import { EXAMPLES } from "../../src/screen/welcome-section.ts";
import { contextOf } from "../../src/session/context-of.ts";
import { labeledKeys } from "../../src/session/view/labeled-keys.ts";
import { view } from "../../src/session/view/view.ts";
import { type Moment, momentsOf, recipes } from "./made-up-screen.ts";

let library: Library;
let moments: Moment[];

beforeAll(async () => {
  library = await recipes();
  moments = (
    await Promise.all([
      momentsOf("dilled-green-beans"),
      momentsOf("snap-beans", 1, { begin: { variety: "Blue Lake" } }),
      momentsOf("snap-beans", 1, { begin: { jar: "quart" }, weighted: true }),
      momentsOf("quick-fresh-pack-dills", 1, { begin: { method: "low-temperature" } }),
      momentsOf("bread-and-butter-pickles", 3),
      momentsOf("berry-jam", 3),
      momentsOf("sauerkraut", 40),
    ])
  ).flat();
}, 60_000);

function understood({ state, now }: Moment, words: string) {
  return understand(words, contextOf(state, now, library, undefined));
}

describe("keys, at every moment of seven days", () => {
  it("Space does what the screen says it will, and nothing where it says so", () => {
    const seen = new Set<string>();
    for (const { state, now } of moments) {
      const { key } = view(state, now, { lines: [], notRecorded: false });
      seen.add(key.text);
      const outcome = decideKeyPress(state, now, library);
      if (!key.works) expect(outcome.kind, key.text).toBe("refused");
      else if (key.text.startsWith("asks")) expect(outcome.kind, key.text).toBe("ask");
      else expect(outcome.kind, key.text).toBe("done");
    }
    expect([...seen].filter((text) => text.endsWith("done")).length).toBeGreaterThan(2);
    expect(seen).toContain("heat is off");
    expect(seen).toContain("asks how many jars are filled");
    expect(seen).toContain("the canner is ready");
  });

  it("a labeled key's words are understood and taken as what its label says", () => {
    const wanted: Record<string, string[]> = {
      "!": ["boil", "steam", "rocking", "pressure"],
      "-": ["boil-lost", "pressure-lost", "steam-lost"],
      "=": ["unloaded"],
    };
    const taken = new Set<string>();
    for (const moment of moments) {
      const { state, now } = moment;
      for (const key of labeledKeys(state, now)) {
        const command = understood(moment, key.words);
        const outcome = decide(state, { command }, now, library);
        expect(`${key.words}: ${outcome.kind}`).toBe(`${key.words}: done`);
        const first = outcome.kind === "done" ? (outcome.facts[0]?.type ?? "") : "";
        expect(wanted[key.key]).toContain(first);
        taken.add(`${key.key} ${first}`);
      }
    }
    for (const one of ["! boil", "! steam", "! pressure", "! rocking", "= unloaded"]) {
      expect(taken).toContain(one);
    }
    for (const one of ["- boil-lost", "- pressure-lost", "- steam-lost"]) {
      expect(taken).toContain(one);
    }
  });

  it("taking jars out is never on the bare key", () => {
    for (const { state, now } of moments) {
      const outcome = decideKeyPress(state, now, library);
      if (outcome.kind !== "done") continue;
      const types = outcome.facts.map((fact) => fact.type);
      for (const type of ["unloaded", "boil", "boil-lost", "sealed"]) {
        expect(types).not.toContain(type);
      }
    }
  });
});

describe("a window of any size", () => {
  it("is never overdrawn", () => {
    const size = fc.oneof(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 260 }));
    fc.assert(
      fc.property(
        fc.nat(),
        size,
        size,
        fc.string({ unit: "grapheme", maxLength: 300 }),
        fc.boolean(),
        (pick, columns, rows, typed, notRecorded) => {
          const { state, now, lines } = moments[pick % moments.length]!;
          const input = { text: typed, cursor: [...typed].length };
          const shown = view(state, now, { lines, input, notRecorded });
          const frame = layOut(shown, columns, rows);
          expect(frame.rows.length).toBe(columns === 1 ? 0 : rows - 1);
          for (const row of frame.rows) expect(widthOf(row)).toBeLessThan(columns);
          if (frame.cursor) {
            expect(frame.cursor.x).toBeLessThan(columns);
            expect(frame.cursor.y).toBeLessThan(rows - 1);
          }
        },
      ),
      { numRuns: 400 },
    );
  });

  it("shows what is most needed as long as there is a line for it", () => {
    for (const moment of moments.filter((_, index) => index % 7 === 0)) {
      const shown = view(moment.state, moment.now, { lines: moment.lines, notRecorded: true });
      for (const [columns, rows] of [
        [120, 40],
        [80, 24],
        [60, 20],
        [40, 12],
        [20, 5],
      ] as const) {
        const text = layOut(shown, columns, rows).rows.map(textOf).join("\n");
        expect(text).toContain("NOT RECORDED");
        expect(text).toContain("> ");
        const [first] = [...shown.hands, ...shown.heat, ...shown.rest];
        if (first && rows > 5) expect(text).toContain(first.title.slice(0, 6));
      }
    }
  });
});

describe("an empty kitchen", () => {
  it("names three ways to begin that work exactly as written", async () => {
    const [first] = await momentsOf("berry-jam", 10_000);
    for (const words of EXAMPLES) {
      const command = understood(first!, words);
      expect(command.intent).toBe("begin");
      expect((command.slots as { recipe?: string }).recipe).toBeDefined();
    }
  });
});
