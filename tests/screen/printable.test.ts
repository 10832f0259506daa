import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cells, clip, printable, wrap } from "../../src/screen/printable.ts";

const NASTY = [
  "\u001b[2J",
  "\u001b]0;title\u0007",
  "\u001b]52;c;ZXZpbA==\u0007",
  "\u001b]8;;http://a\u001b\\link\u001b]8;;\u001b\\",
  "\u001bP1;2q\u001b\\",
  "\u009b31m",
  "\u202Eevil\u2066",
  "\r\n\t\b\u0007\u0000\u007f",
  "\u200b\u200d\ufeff\u2028",
  "Z\u0300\u0301\u0302\u0303\u0304\u0305",
  "\ud800",
  "\u{e0041}",
];

describe("text for the terminal", () => {
  it("leaves plain text alone", () => {
    expect(printable("8 pints, 1/2 in headspace (~)")).toBe("8 pints, 1/2 in headspace (~)");
    expect(printable("Jalapeño 豆 º")).toBe("Jalapeño 豆 º");
  });

  it("removes whole sequences, with their tails", () => {
    expect(printable("a\u001b[31mb\u001b]0;owned\u0007c")).toBe("abc");
    expect(printable("a\u001b]52;c;ZXZpbA==")).toBe("a");
    expect(printable("one\ntwo\tthree")).toBe("one two three");
    expect(printable("\u202Eabc\u202C")).toBe("abc");
  });

  it("lets nothing through that controls a terminal, whatever comes in", () => {
    const piece = fc.oneof(fc.constantFrom(...NASTY), fc.string({ unit: "binary" }));
    fc.assert(
      fc.property(fc.array(piece), (pieces) => {
        const text = printable(pieces.join(""));
        expect(text).not.toMatch(
          /[\u0000-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/,
        );
        expect(printable(text)).toBe(text);
      }),
    );
  });

  it("cuts to a width and says so", () => {
    expect(clip("dilled green beans", 9)).toBe("dilled g…");
    expect(clip("豆豆豆", 5)).toBe("豆豆…");
    expect(clip("beans", 5)).toBe("beans");
    expect(clip("beans", 0)).toBe("");
  });

  it("never wraps wider than the width nor over more lines than asked", () => {
    const text = fc
      .array(fc.string({ unit: "grapheme" }))
      .map((words) => printable(words.join(" ")));
    fc.assert(
      fc.property(
        text,
        fc.integer({ min: 0, max: 30 }),
        fc.integer({ min: 0, max: 5 }),
        (a, w, n) => {
          const lines = wrap(a, w, n);
          expect(lines.length).toBeLessThanOrEqual(n);
          for (const line of lines) expect(cells(line)).toBeLessThanOrEqual(w);
        },
      ),
    );
  });
});
