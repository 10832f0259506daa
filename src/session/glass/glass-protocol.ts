/**
 * How a second window looks into a kitchen that is open: over the socket of `tell`, a line of JSON
 * at a time. The glass says hello; the kitchen answers with what kind of glass it is, then sends
 * what is to be seen; the glass sends what is typed. A kitchen of another build sends lines only.
 */
import { isZone } from "../../kitchen/time.ts";
import type { LabeledKey, Line, View } from "../../ports/view.ts";

/** Begins a line that opens a glass; people's words never contain this character. */
export const GLASS_MARK = "\u0003";

/** Names the build the glass is of, and whether it wants lines whatever the kitchen is of. */
export type Hello = { build: string; plain: boolean };

/** What the kitchen sends; what has not changed is left out. */
export type Seen = {
  /** Sent first, once. */
  kind?: "view" | "lines";
  /** Kitchen time, ms, and the zone that times of day are told in. */
  now: number;
  zone: string;
  view?: View;
  keys?: LabeledKey[];
  /** Lines that are new. */
  lines: Line[];
  running: string[];
  /** The person at this glass asked to leave. */
  left?: boolean;
};

/** What is typed at a glass. */
export type Typed = { hear: string } | { press: true };

/** The longest message from a glass; a longer one ends the glass. */
export const LONGEST_TYPED = 20_000;

export function helloLine(hello: Hello): string {
  return `${GLASS_MARK}${JSON.stringify(hello)}\n`;
}

/** The hello in a line; one that cannot be read is of an unknown build. */
export function helloIn(line: string): Hello {
  const { build, plain } = objectIn(line.slice(GLASS_MARK.length));
  return { build: typeof build === "string" ? build : "", plain: plain === true };
}

/** What was typed; undefined where the line says nothing of the kind. */
export function typedIn(line: string): Typed | undefined {
  const { hear, press } = objectIn(line);
  if (typeof hear === "string") return { hear };
  return press === true ? { press } : undefined;
}

/**
 * What is seen; a stopped clock is due at infinity, which JSON does not have. Throws where a
 * kitchen of another build sends something else.
 */
export function seenIn(line: string): Seen {
  const seen = JSON.parse(line, (key, value) => {
    return key === "dueAt" && value === null ? Number.POSITIVE_INFINITY : value;
  });
  const { now, zone, lines, running } = seen;
  const fine =
    Number.isFinite(now) && isZone(zone) && lines.every(isLine) && Array.isArray(running);
  if (!fine) throw new Error("the kitchen sent what this window cannot show");
  return seen;
}

function isLine({ text, wallMs }: Line): boolean {
  return typeof text === "string" && Number.isFinite(wallMs);
}

function objectIn(text: string): Record<string, unknown> {
  try {
    const found: unknown = JSON.parse(text);
    return typeof found === "object" && found !== null ? { ...found } : {};
  } catch {
    return {};
  }
}

/** Cuts a stream into lines; calls with each whole one, and ends at one that is too long. */
export function lineCutter(longest: number, take: (line: string) => void, tooLong: () => void) {
  let rest = "";
  return (chunk: string): void => {
    const lines = (rest + chunk).split("\n");
    rest = lines.pop() ?? "";
    for (const line of lines) take(line);
    if (rest.length > longest) tooLong();
  };
}
