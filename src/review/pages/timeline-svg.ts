/** The timeline of a batch as an inline drawing: planned outlined, actual filled. */
import { offsetMs } from "../../kitchen/time.ts";
import { clockTime, spanOf } from "../report-words.ts";
import type { Timeline, TimelineMark, TimelineRow } from "../timeline.ts";
import { html, type Markup } from "./html.ts";
import { drawing, element, hint, svgText } from "./svg.ts";
import { axisTicks, type TimeAxis, timeAxis } from "./time-axis.ts";

const WIDTH = 960;
const LEFT = 190;
const RIGHT = 20;
const ROW = 30;
const TOP = 34;
const MINUTE = 60_000;
const MOST_TITLE = 26;

/** The axis of a timeline: everything that begins or ends on it is a point of it. */
export function axisOf({ rows }: Timeline): TimeAxis {
  return timeAxis(rows.flatMap((row) => [row.from, row.to]));
}

function cut(text: string): string {
  return text.length > MOST_TITLE ? `${text.slice(0, MOST_TITLE - 1)}…` : text;
}

type Across = (at: number) => number;

/** The drawing; a line of text where nothing was begun. */
export function timelineSvg(timeline: Timeline, name: string): Markup {
  const { rows, zone } = timeline;
  if (rows.length === 0) return html`<p>Nothing was begun.</p>`;
  const axis = axisOf(timeline);
  const height = TOP + rows.length * ROW + 8;
  const x: Across = (at) => LEFT + axis.at(at) * (WIDTH - LEFT - RIGHT);
  const ticks = axisTicks(axis, offsetMs(axis.from, zone), 9).flatMap((at) => [
    element("path", { class: "axis", d: `M${x(at).toFixed(1)} ${TOP - 8}V${height - 6}` }),
    svgText(x(at), TOP - 14, clockTime(at, zone), "middle", true),
  ]);
  const breaks = axis.breaks.map((wait) => {
    const middle = Math.round((x(wait.from) + x(wait.to)) / 2);
    const strokes = `M${middle - 5} ${height - 4}l4 -10M${middle + 1} ${height - 4}l4 -10`;
    const words = `${spanOf((wait.to - wait.from) / MINUTE)} drawn short`;
    return element("g", {}, hint(words), element("path", { class: "break", d: strokes }));
  });
  const bars = rows.map((row, index) => bar(row, TOP + index * ROW, x, zone));
  const label = `Timeline of ${name}; the table of stages has the same in figures`;
  return drawing(label, WIDTH, height, hatch(), ticks, bars, breaks);
}

function hatch(): Markup {
  const lines = element("path", { class: "hatch", d: "M0 0V6" });
  const turned = { patternUnits: "userSpaceOnUse", patternTransform: "rotate(45)" };
  const pattern = element("pattern", { id: "hatch", width: 6, height: 6, ...turned }, lines);
  return element("defs", {}, pattern);
}

function bar(row: TimelineRow, top: number, x: Across, zone: string): Markup {
  const left = x(row.from);
  const long = (ms: number) => Math.max(2, x(row.from + ms) - left);
  const plan = (name: string, ms: number) => {
    const place = { x: left, y: top + 6, width: long(ms), height: 20, rx: 3 };
    return element("rect", { class: name, ...place });
  };
  const took = spanOf((row.to - row.from) / MINUTE);
  const so = row.open ? " so far" : "";
  const done = { x: left, y: top + 9, width: Math.max(2, x(row.to) - left), height: 14, rx: 2 };
  return element(
    "g",
    {},
    hint(`${row.title}: ${clockTime(row.from, zone)}, ${took}${so}`),
    svgText(LEFT - 10, top + 20, cut(row.title), "end"),
    element("rect", { class: "done", ...done }),
    row.plannedMaxMs > row.plannedMinMs ? plan("plan-max", row.plannedMaxMs) : null,
    plan("plan", row.plannedMinMs),
    row.gaps.map((gap) => gapMark(gap, top, x)),
    row.marks.map((mark) => signMark(mark, top, x, zone)),
  );
}

function gapMark(gap: TimelineRow["gaps"][number], top: number, x: Across): Markup {
  const from = x(gap.from);
  const said = gap.held === null ? "" : gap.held ? ", it held" : ", it did not hold";
  const place = { x: from, y: top + 9, width: Math.max(3, x(gap.to) - from), height: 14 };
  const words = `unwatched ${spanOf((gap.to - gap.from) / MINUTE)}${said}`;
  return element("rect", { class: "gap", ...place }, hint(words));
}

function signMark(mark: TimelineMark, top: number, x: Across, zone: string): Markup {
  const at = Math.round(x(mark.at) * 10) / 10;
  const again = mark.kind === "restart";
  const d = again ? `M${at} ${top + 6}l-5 -8h10z` : `M${at - 4} ${top + 12}l8 8m0 -8l-8 8`;
  const words = hint(`${mark.text} at ${clockTime(mark.at, zone)}`);
  if (again) return element("path", { class: "again", d }, words);
  const halo = element("path", { class: "halo", d });
  return element("g", {}, words, halo, element("path", { class: "lost", d }));
}
