/** Which color each tone has: with 256 colors, one that reads on dark and on light. */

/** What a color means. The shelves have their own; the others are urgencies. */
export type Tone = "hands" | "heat" | "rest" | "timers" | "stop" | "late" | "ready" | "ask";

export type Palette = Record<Tone, string>;

/** Numbers of the 256, each of them legible on black and on white alike (`palette.test.ts`). */
export const COLORS_256: Record<Tone, number> = {
  hands: 63,
  heat: 130,
  rest: 29,
  timers: 98,
  stop: 196,
  late: 163,
  ready: 28,
  ask: 30,
};

const ON_DARK: Palette = {
  hands: "blueBright",
  heat: "yellow",
  rest: "green",
  timers: "magentaBright",
  stop: "redBright",
  late: "yellowBright",
  ready: "greenBright",
  ask: "cyanBright",
};

/** The bright ones, yellow and green are hard to see on white. */
const ON_LIGHT: Palette = {
  hands: "blue",
  heat: "red",
  rest: "magenta",
  timers: "blue",
  stop: "red",
  late: "red",
  ready: "magenta",
  ask: "blue",
};

/** Those of the 16 that read on black and on white alike, as xterm has them. */
const ON_EITHER: Palette = {
  hands: "blueBright",
  heat: "red",
  rest: "magenta",
  timers: "blueBright",
  stop: "red",
  late: "red",
  ready: "magenta",
  ask: "blueBright",
};

/**
 * The colors for a terminal of so many bits of color; undefined where none are wanted or there are
 * none. Whether the background is light is known only where COLORFGBG says so.
 */
export function paletteFor(
  depth: number,
  { NO_COLOR, COLORFGBG }: { NO_COLOR?: string | undefined; COLORFGBG?: string | undefined },
): Palette | undefined {
  if (NO_COLOR || depth < 4) return undefined;
  if (depth >= 8) {
    const named = Object.entries(COLORS_256).map(([tone, n]) => [tone, `ansi256(${n})`]);
    return Object.fromEntries(named) as Palette;
  }
  if (!COLORFGBG) return ON_EITHER;
  const background = Number(COLORFGBG.split(";").at(-1));
  return background === 7 || background === 15 ? ON_LIGHT : ON_DARK;
}
