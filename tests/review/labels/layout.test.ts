import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { LEAST_PT, layoutLabel, type Room } from "../../../src/review/pages/label-layout.ts";
import { labelWords } from "../../../src/review/pages/label-words.ts";
import { COLD, JAR, SEED } from "./sample-labels.ts";

/** A made-up font: bold letters are wider, and no two letters are kerned. */
const measure = (text: string, bold: boolean) => [...text].length * (bold ? 0.6 : 0.52);

const name = fc.oneof(
  fc.string({ maxLength: 90, unit: "grapheme" }),
  fc
    .array(fc.string({ minLength: 1, maxLength: 14 }), { maxLength: 9 })
    .map((all) => all.join(" ")),
);
const label = fc.record({
  base: fc.constantFrom(JAR, COLD, SEED, { ...COLD, keep: "freeze" } as const),
  variety: fc.option(name),
  title: fc.string({ minLength: 1, maxLength: 60 }).filter((text) => text.trim() !== ""),
  mark: fc.option(fc.string({ minLength: 1, maxLength: 3, unit: fc.constantFrom(..."ABCXYZ7") })),
});
const room: fc.Arbitrary<Room> = fc.oneof(
  fc.record({
    width: fc.double({ min: 90, max: 420, noNaN: true }),
    height: fc.double({ min: 40, max: 260, noNaN: true }),
    round: fc.constant(false),
  }),
  fc.double({ min: 100, max: 260, noNaN: true }).map((wide) => {
    return { width: wide, height: wide, round: true };
  }),
);

/** Whether a rectangle lies in the room, its corners too. */
function isIn({ width, height, round }: Room, x: number, y: number, right: number, low: number) {
  const near = 0.01;
  if (!round) return x > -near && y > -near && right < width + near && low < height + near;
  return [x, right].every((at) =>
    [y, low].every((down) => Math.hypot(at - width / 2, down - height / 2) < width / 2 + near),
  );
}

describe("the layout of any label", () => {
  it("keeps all words in the room, none too small, none larger than mark and name", () => {
    let laidOut = 0;
    fc.assert(
      fc.property(label, room, ({ base, ...given }, space) => {
        const words = labelWords({ ...base, ...given }, "us");
        const laid = layoutLabel(words, space, measure);
        if (!laid) return;
        laidOut += 1;
        for (const { x, y, width, size } of laid.pieces) {
          expect(size).toBeGreaterThanOrEqual(LEAST_PT);
          expect(isIn(space, x, y - size, x + width, y + size / 4)).toBe(true);
        }
        for (const { x, y, width, height } of laid.boxes) {
          expect(isIn(space, x, y, x + width, y + height)).toBe(true);
        }
        const plain = (text: string) => text.replace(/\s/g, "");
        const read = plain(laid.pieces.map((piece) => piece.text).join(""));
        const head = [words.mark, words.name, words.title, words.band?.loud, words.band?.until];
        const forms = words.small.flatMap((one) => one.forms);
        expect(forms.map((lines) => plain([...head, ...lines].join("")))).toContain(read);
        const most = Math.max(...laid.pieces.map((piece) => piece.size));
        const largest = laid.pieces.filter((piece) => piece.size === most);
        expect(plain(largest.map((piece) => piece.text).join(""))).toBe(
          plain(`${words.mark ?? ""}${words.name}`),
        );
      }),
      { numRuns: 250 },
    );
    expect(laidOut).toBeGreaterThan(100);
  });

  it("fills the room: nothing laid out would fit in letters half as large again", () => {
    const space = { width: 180, height: 62, round: false };
    const laid = layoutLabel(labelWords(JAR, "us"), space, measure);
    const low = Math.max(...(laid?.pieces.map((piece) => piece.y + piece.size / 4) ?? []));
    const high = Math.min(...(laid?.pieces.map((piece) => piece.y - piece.size) ?? []));
    expect((low - high) * 1.5).toBeGreaterThan(space.height);
  });
});
