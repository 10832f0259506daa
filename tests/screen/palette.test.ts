import { describe, expect, it } from "vitest";
import { COLORS_256, paletteFor } from "../../src/screen/palette.ts";

/** The levels of the 6x6x6 cube that terminals of 256 colors share. */
const LEVELS = [0, 95, 135, 175, 215, 255];

/** Relative luminance (WCAG 2.1, "relative luminance"), from 0 to 1. */
function luminance(index: number): number {
  const n = index - 16;
  const channels = [Math.floor(n / 36), Math.floor(n / 6) % 6, n % 6].map((at) => {
    const share = (LEVELS[at] ?? 0) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  const [r = 0, g = 0, b = 0] = channels;
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

describe("colors", () => {
  it("of the 256 read on black and on white: WCAG 2.1 wants 3 to 1 for large or bold text", () => {
    for (const [tone, index] of Object.entries(COLORS_256)) {
      const own = luminance(index);
      expect((own + 0.05) / 0.05, `${tone} on black`).toBeGreaterThan(3.9);
      expect(1.05 / (own + 0.05), `${tone} on white`).toBeGreaterThan(3.9);
    }
  });

  it("tell the shelves and the urgencies apart in every terminal that has 256", () => {
    expect(new Set(Object.values(COLORS_256)).size).toBe(Object.keys(COLORS_256).length);
  });

  it("follow the background with 16 colors, where the terminal tells it", () => {
    expect(paletteFor(4, { COLORFGBG: "0;15" })).not.toEqual(paletteFor(4, { COLORFGBG: "15;0" }));
    const unknown = Object.values(paletteFor(4, {}) ?? {});
    for (const name of unknown) expect(["red", "magenta", "blueBright"]).toContain(name);
    const onWhite = Object.values(paletteFor(4, { COLORFGBG: "0;15" }) ?? {});
    for (const name of onWhite) expect(name).not.toMatch(/yellow|green|cyan|Bright/);
  });

  it("are left out where none are wanted or there are none", () => {
    expect(paletteFor(8, { NO_COLOR: "1" })).toBeUndefined();
    expect(paletteFor(1, {})).toBeUndefined();
    expect(paletteFor(8, { NO_COLOR: "" })).toBeDefined();
  });
});
