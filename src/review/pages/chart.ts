/** Rows with a name and a drawing each, over one scale; as wide as the paper or the screen is. */
import { html, type Markup } from "./html.ts";
import { element, share } from "./svg.ts";

/** A row `tall` enough for a curve has its name above it. */
export type ChartRow = { name: string; height: number; tall?: boolean; parts: Markup[] };

/** A line through all rows, 0 to 1, with its words, and what they lie within: an hour's day. */
export type Tick = { at: number; words: string; within?: string };

/** Labels this near to each other, as shares of the width, would touch on paper or on a phone. */
const APART = { paper: 0.14, phone: 0.24 };

/** A chart; ticks that come first are kept where there is not room for all. */
export function chart(label: string, rows: readonly ChartRow[], ticks: readonly Tick[]): Markup {
  const sets = (["paper", "phone"] as const).map((use) => {
    return element("g", { class: use }, tickMarks(spread(ticks, APART[use])));
  });
  const grid = element("svg", { class: "grid" }, hatch(), sets);
  const drawn = rows.map(({ name, height, tall, parts }) => {
    const svg = element("svg", { height }, parts);
    return html`<div class="${tall ? "tall row" : "row"}"><p>${name}</p>${svg}</div>\n`;
  });
  const kind = ticks.length === 0 ? "chart" : "chart ticked";
  return html`<div class="${kind}" role="img" aria-label="${label}">
${ticks.length > 0 && grid}
${drawn}</div>
`;
}

function spread(ticks: readonly Tick[], apart: number): Tick[] {
  const kept: Tick[] = [];
  for (const tick of ticks) {
    if (kept.every((one) => Math.abs(one.at - tick.at) >= apart)) kept.push(tick);
  }
  return kept.sort((a, b) => a.at - b.at);
}

/** Lines with their words; what they lie within is said where it changes. */
function tickMarks(ticks: readonly Tick[]): Markup[] {
  return ticks.map(({ at, words, within }, index) => {
    const x = share(at);
    const anchor = at < 0.06 ? "start" : at > 0.94 ? "end" : "middle";
    const text = (y: number, said: string) => {
      return element("text", { x, y, "text-anchor": anchor }, said);
    };
    const changed = within !== undefined && within !== ticks[index - 1]?.within;
    return element(
      "g",
      {},
      changed ? text(12, within) : null,
      text(27, words),
      element("line", { x1: x, x2: x, y1: 32, y2: "100%" }),
    );
  });
}

/** The pattern of times nobody watched. */
function hatch(): Markup {
  const lines = element("path", { class: "hatch", d: "M0 0V6" });
  const turned = { patternUnits: "userSpaceOnUse", patternTransform: "rotate(45)" };
  const pattern = element("pattern", { id: "hatch", width: 6, height: 6, ...turned }, lines);
  return element("defs", {}, pattern);
}
